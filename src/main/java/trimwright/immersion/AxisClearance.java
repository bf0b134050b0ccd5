package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The least distance from a line parallel to x to the inner surface of a hull, over a stretch of the boat's length: what a cylinder lying along
 * that line may have for a radius.
 *
 * <p>Each triangle stands for its copy moved inward by the shell's thickness. It is clipped to the stretch; then its distance from the line is measured in
 * the y–z plane for a cylinder with flat ends. For round ends the distance is taken in space from the stretch between the
 * centres of the two half balls.
 */
public final class AxisClearance {

    private final MeshTree tree;
    private final double thickness;
    private final double from;
    private final double to;
    private final double coreFrom;
    private final double coreTo;
    private final double[] ring = new double[3 * 8];
    private final double[] clipped = new double[3 * 8];

    private double y;
    private double z;
    private double best;
    private double bestX;
    private double bestY;
    private double bestZ;

    private AxisClearance(MeshTree tree, double thickness, double from, double to, double coreFrom, double coreTo) {
        this.tree = tree;
        this.thickness = thickness;
        this.from = from - tree.originX;
        this.to = to - tree.originX;
        this.coreFrom = coreFrom - tree.originX;
        this.coreTo = coreTo - tree.originX;
    }

    /**
     * For a cylinder with flat ends.
     *
     * @param thicknessMm how far the inner surface lies inside the mesh; 0 where the mesh is the inner surface itself
     * @param fromXMm after end of the cylinder
     * @param toXMm fore end
     */
    public static AxisClearance flat(MeshTree tree, double thicknessMm, double fromXMm, double toXMm) {
        return new AxisClearance(tree, thicknessMm, fromXMm, toXMm, fromXMm, toXMm);
    }

    /** For a cylinder whose ends are half balls of the radius; the distance then counts from its core between their centres. */
    public static AxisClearance round(
            MeshTree tree, double thicknessMm, double fromXMm, double toXMm, double radiusMm) {
        return new AxisClearance(tree, thicknessMm, fromXMm, toXMm, fromXMm + radiusMm, toXMm - radiusMm);
    }

    /** A distance and the point of the inner surface that sets it. */
    public record Nearest(double distanceMm, Vector3D pointMm) {}

    /** The nearest point of the inner surface; infinitely far where there is none along the stretch. */
    public Nearest nearest(double axisYMm, double axisZMm) {
        return nearest(axisYMm, axisZMm, null);
    }

    /**
     * The same when a point of the inner surface along the stretch is known: nothing farther need be looked at.
     *
     * @param known such a point, as found for a neighbouring axis; may be null
     */
    public Nearest nearest(double axisYMm, double axisZMm, Vector3D known) {
        y = axisYMm - tree.originY;
        z = axisZMm - tree.originZ;
        best = Double.POSITIVE_INFINITY;
        if (known != null) {
            bestX = known.getX() - tree.originX;
            bestY = known.getY() - tree.originY;
            bestZ = known.getZ() - tree.originZ;
            double beyond = Math.max(0, Math.max(coreFrom - bestX, bestX - coreTo));
            best = Math.sqrt(beyond * beyond + (bestY - y) * (bestY - y) + (bestZ - z) * (bestZ - z));
        }
        search(0);
        return new Nearest(best, new Vector3D(bestX + tree.originX, bestY + tree.originY, bestZ + tree.originZ));
    }

    /** Whether every point of the inner surface is at least so far away; quicker than asking for the nearest. */
    public boolean keepsClear(double axisYMm, double axisZMm, double distanceMm) {
        y = axisYMm - tree.originY;
        z = axisZMm - tree.originZ;
        best = distanceMm;
        search(distanceMm);
        return best >= distanceMm;
    }

    /** Looks for points nearer than the best so far, until one is nearer than so much. */
    private void search(double enough) {
        int node = 0;
        while (node < tree.skip.length && best >= enough) {
            if (boxDistance(node * MeshTree.STRIDE) >= best) {
                node = tree.skip[node];
                continue;
            }
            if (tree.first[node] >= 0) {
                int end = 3 * tree.leafEnd(tree.first[node]);
                for (int k = 3 * tree.first[node]; k < end; k += 3) {
                    triangle(tree.corners[k], tree.corners[k + 1], tree.corners[k + 2]);
                }
            }
            node++;
        }
    }

    /** A bound of the distance; a box that reaches beyond the axis is no distance away from it, hence the zeros. */
    private double boxDistance(int at) {
        double[] n = tree.nodes;
        double farX = Math.max(from - n[at] - n[at + 3], n[at] - n[at + 3] - to) - thickness;
        if (farX > 0) {
            return Double.POSITIVE_INFINITY;
        }
        double dy = Math.max(0, Math.abs(y - n[at + 1]) - n[at + 4] - thickness);
        double dz = Math.max(0, Math.abs(z - n[at + 2]) - n[at + 5] - thickness);
        return Math.hypot(dy, dz);
    }

    private void triangle(int a, int b, int c) {
        double[] p = tree.xyz;
        double ux = p[b] - p[a];
        double uy = p[b + 1] - p[a + 1];
        double uz = p[b + 2] - p[a + 2];
        double vx = p[c] - p[a];
        double vy = p[c + 1] - p[a + 1];
        double vz = p[c + 2] - p[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
        if (size == 0) {
            return;
        }
        double inward = -thickness / size;
        put(0, p, a, inward * nx, inward * ny, inward * nz);
        put(1, p, b, inward * nx, inward * ny, inward * nz);
        put(2, p, c, inward * nx, inward * ny, inward * nz);
        int corners = clip(ring, 3, clipped, from, 1);
        corners = clip(clipped, corners, ring, to, -1);
        measure(corners);
    }

    private void put(int corner, double[] p, int at, double dx, double dy, double dz) {
        ring[3 * corner] = p[at] + dx;
        ring[3 * corner + 1] = p[at + 1] + dy;
        ring[3 * corner + 2] = p[at + 2] + dz;
    }

    /** Keeps the side of x = limit where sign · (x − limit) is not negative. */
    private static int clip(double[] in, int corners, double[] out, double limit, int sign) {
        int kept = 0;
        for (int i = 0; i < corners; i++) {
            int a = 3 * i;
            int b = 3 * ((i + 1) % corners);
            double da = sign * (in[a] - limit);
            double db = sign * (in[b] - limit);
            if (da >= 0) {
                System.arraycopy(in, a, out, 3 * kept++, 3);
            }
            if (da >= 0 != db >= 0) {
                double t = da / (da - db);
                out[3 * kept] = in[a] + t * (in[b] - in[a]);
                out[3 * kept + 1] = in[a + 1] + t * (in[b + 1] - in[a + 1]);
                out[3 * kept + 2] = in[a + 2] + t * (in[b + 2] - in[a + 2]);
                kept++;
            }
        }
        return kept;
    }

    private void measure(int corners) {
        if (corners < 2) {
            return;
        }
        faceUnder(corners, Double.NaN);
        faceUnder(corners, coreFrom);
        faceUnder(corners, coreTo);
        for (int i = 0; i < corners; i++) {
            edge(3 * i, 3 * ((i + 1) % corners));
        }
    }

    /**
     * The inside of the polygon: where the axis runs through it (centre NaN), or below the point of the axis at {@code centreX} if the foot of
     * the plumb line from there falls on it.
     */
    private void faceUnder(int corners, double centreX) {
        if (corners < 3) {
            return;
        }
        double ux = ring[3] - ring[0];
        double uy = ring[4] - ring[1];
        double uz = ring[5] - ring[2];
        double vx = ring[6] - ring[0];
        double vy = ring[7] - ring[1];
        double vz = ring[8] - ring[2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        boolean axis = Double.isNaN(centreX);
        double square = axis ? nx : nx * nx + ny * ny + nz * nz;
        if (square == 0) {
            return;
        }
        double ex = (axis ? 0 : centreX) - ring[0];
        double ey = y - ring[1];
        double ez = z - ring[2];
        double t = (nx * ex + ny * ey + nz * ez) / square;
        double px = (axis ? 0 : centreX) - t * (axis ? 1 : nx);
        double py = y - (axis ? 0 : t * ny);
        double pz = z - (axis ? 0 : t * nz);
        if (holds(corners, nx, ny, nz, px, py, pz)) {
            double beyond = px < coreFrom ? coreFrom - px : px > coreTo ? px - coreTo : 0;
            consider(Math.sqrt(beyond * beyond + (py - y) * (py - y) + (pz - z) * (pz - z)), px, py, pz);
        }
    }

    /** Whether a point of the polygon's plane lies on the inner side of every edge. */
    private boolean holds(int corners, double nx, double ny, double nz, double px, double py, double pz) {
        for (int i = 0; i < corners; i++) {
            int a = 3 * i;
            int b = 3 * ((i + 1) % corners);
            double dx = ring[b] - ring[a];
            double dy = ring[b + 1] - ring[a + 1];
            double dz = ring[b + 2] - ring[a + 2];
            double ex = px - ring[a];
            double ey = py - ring[a + 1];
            double ez = pz - ring[a + 2];
            double side = nx * (dy * ez - dz * ey) + ny * (dz * ex - dx * ez) + nz * (dx * ey - dy * ex);
            if (side < 0) {
                return false;
            }
        }
        return true;
    }

    /** Nearest point of an edge: in the y–z plane over the core, in space about the centres of the round ends. */
    private void edge(int a, int b) {
        nearestTo(a, b, Double.NaN);
        nearestTo(a, b, coreFrom);
        nearestTo(a, b, coreTo);
    }

    /** Nearest to the axis as a line (centre NaN), or to the point of the axis at {@code centreX}. */
    private void nearestTo(int a, int b, double centreX) {
        boolean line = Double.isNaN(centreX);
        double dx = line ? 0 : ring[b] - ring[a];
        double dy = ring[b + 1] - ring[a + 1];
        double dz = ring[b + 2] - ring[a + 2];
        double ex = line ? 0 : centreX - ring[a];
        double ey = y - ring[a + 1];
        double ez = z - ring[a + 2];
        double square = dx * dx + dy * dy + dz * dz;
        double t = square == 0 ? 0 : (dx * ex + dy * ey + dz * ez) / square;
        double s = t < 0 ? 0 : t > 1 ? 1 : t;
        double px = ring[a] + s * (ring[b] - ring[a]);
        double py = ring[a + 1] + s * dy;
        double pz = ring[a + 2] + s * dz;
        double beyond = px < coreFrom ? coreFrom - px : px > coreTo ? px - coreTo : 0;
        consider(Math.sqrt(beyond * beyond + (py - y) * (py - y) + (pz - z) * (pz - z)), px, py, pz);
    }

    private void consider(double distance, double px, double py, double pz) {
        if (distance < best) {
            best = distance;
            bestX = px;
            bestY = py;
            bestZ = pz;
        }
    }
}
