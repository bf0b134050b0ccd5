package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The material of a thin shell: each triangle of the mesh stands for the prism between it and its copy moved inward by the thickness
 * along its normal. The prism itself is cut, not the face, so that a flat deck goes under over its thickness. The surface may be open.
 *
 * @param tree the outer surface, outward oriented
 * @param thicknessMm thickness of the shell; not negative
 */
public record MeshSkin(MeshTree tree, double thicknessMm) implements Displacer {

    public MeshSkin {
        if (!(thicknessMm >= 0)) {
            throw new IllegalArgumentException("a shell of thickness " + thicknessMm + " mm");
        }
    }

    @Override
    public double volumeMm3() {
        return thicknessMm * tree.areaMm2();
    }

    @Override
    public Vector3D centroidMm() {
        double area = tree.areaMm2();
        Vector3D inward = new Vector3D(tree.nodes[MeshTree.S], tree.nodes[MeshTree.S + 1], tree.nodes[MeshTree.S + 2]);
        return new Vector3D(1, tree.areaCentroidMm(), -thicknessMm / (2 * area), inward);
    }

    /** A bound: the highest vertex of the outer surface and the thickness, since an inner face may stand higher than its outer one. */
    @Override
    public double topMm(Vector3D up) {
        return tree.topMm(up) + thicknessMm;
    }

    @Override
    public Vector3D highestMm(Vector3D up) {
        return tree.highestMm(up);
    }

    @Override
    public double outlineMm(WaterPlane plane) {
        return tree.outlineMm(plane);
    }

    @Override
    public void addBelow(Immersion sum) {
        if (thicknessMm > 0) {
            Walk walk = new Walk(tree, thicknessMm, sum);
            walk.run(thicknessMm);
            walk.prisms.finish();
        }
    }

    /** Adds to the sums what of the prisms lies below the plane. */
    private static final class Walk extends PlaneWalk {

        final PrismCut prisms;
        private final double thickness;
        private final Immersion s;
        /** The reference, seen from the tree's origin. */
        private final double rx;

        private final double ry;
        private final double rz;

        Walk(MeshTree tree, double thickness, Immersion s) {
            super(tree, s.plane().up(), tree.cutHeight(s.plane()), s.grainMm());
            this.thickness = thickness;
            this.s = s;
            this.prisms = new PrismCut(s, thickness);
            rx = s.rx - tree.originX;
            ry = s.ry - tree.originY;
            rz = s.rz - tree.originZ;
        }

        @Override
        void node(int at, double share, double perMm) {
            double[] nodes = tree.nodes;
            double area = nodes[at + MeshTree.AREA];
            double half = 0.5 * thickness;
            int m = at + MeshTree.AREA_M;
            int n = at + MeshTree.S;
            // First moment over the thickness, about the reference.
            double x = nodes[m] - area * rx - half * nodes[n];
            double y = nodes[m + 1] - area * ry - half * nodes[n + 1];
            double z = nodes[m + 2] - area * rz - half * nodes[n + 2];
            double volume = thickness * share;
            s.volume += volume * area;
            s.mx += volume * x;
            s.my += volume * y;
            s.mz += volume * z;
            if (perMm > 0 && area > 0) {
                double u = (s.ux * x + s.uy * y + s.uz * z) / area;
                double v = (s.vx * x + s.vy * y + s.vz * z) / area;
                s.waterplanePatch(thickness * area * perMm, u, v);
            }
        }

        @Override
        boolean isOnePatch(int at) {
            return true;
        }

        @Override
        void leaf(int firstTriangle, int endTriangle, double downward, double upward) {
            int[] corners = tree.corners;
            for (int k = 3 * firstTriangle; k < 3 * endTriangle; k += 3) {
                int a = corners[k];
                int b = corners[k + 1];
                int c = corners[k + 2];
                double aw = height(a);
                double bw = height(b);
                double cw = height(c);
                if (aw >= downward && bw >= downward && cw >= downward) {
                    continue;
                }
                if (aw < -upward && bw < -upward && cw < -upward) {
                    wholePrism(a, b, c);
                } else {
                    prisms.add(ahead(a), port(a), aw, ahead(b), port(b), bw, ahead(c), port(c), cw);
                }
            }
        }

        private void wholePrism(int a, int b, int c) {
            double[] xyz = tree.xyz;
            double ax = xyz[a];
            double ay = xyz[a + 1];
            double az = xyz[a + 2];
            double ux = xyz[b] - ax;
            double uy = xyz[b + 1] - ay;
            double uz = xyz[b + 2] - az;
            double vx = xyz[c] - ax;
            double vy = xyz[c + 1] - ay;
            double vz = xyz[c + 2] - az;
            double sx = uy * vz - uz * vy;
            double sy = uz * vx - ux * vz;
            double sz = ux * vy - uy * vx;
            double volume = 0.5 * thickness * Math.sqrt(sx * sx + sy * sy + sz * sz);
            double inward = 0.25 * thickness * thickness;
            s.volume += volume;
            s.mx += volume * (ax - rx + (ux + vx) * (1.0 / 3)) - inward * sx;
            s.my += volume * (ay - ry + (uy + vy) * (1.0 / 3)) - inward * sy;
            s.mz += volume * (az - rz + (uz + vz) * (1.0 / 3)) - inward * sz;
        }

        private double ahead(int vertex) {
            double[] xyz = tree.xyz;
            return s.ux * (xyz[vertex] - rx) + s.uy * (xyz[vertex + 1] - ry) + s.uz * (xyz[vertex + 2] - rz);
        }

        private double port(int vertex) {
            double[] xyz = tree.xyz;
            return s.vx * (xyz[vertex] - rx) + s.vy * (xyz[vertex + 1] - ry) + s.vz * (xyz[vertex + 2] - rz);
        }
    }
}
