package trimwright.immersion;

import java.util.Arrays;
import trimwright.mesh.Bounds;
import trimwright.mesh.TriangleMesh;

/** Builds a {@link MeshTree}: sorts the triangles along a Morton curve, then sums leaves and nodes upward. */
final class MeshTreeBuilder {

    private static final int BITS_PER_AXIS = 10;
    private static final int RADIX_BITS = 10;

    private final double[] xyz;
    private final int[] corners;
    private final double[] faces;
    private final double[] nodes;
    private final int[] skip;
    private final int[] first;
    private int nextNode;

    private MeshTreeBuilder(double[] xyz, int[] corners) {
        this.xyz = xyz;
        this.corners = corners;
        int triangles = corners.length / 3;
        faces = new double[Math.multiplyExact(triangles, 4)];
        int leaves = (triangles + MeshTree.leafSize() - 1) / MeshTree.leafSize();
        int count = 2 * leaves - 1;
        nodes = new double[Math.multiplyExact(count, MeshTree.STRIDE)];
        skip = new int[count];
        first = new int[count];
    }

    static MeshTree build(TriangleMesh mesh) {
        if (mesh.triangleCount() == 0) {
            throw new IllegalArgumentException("a mesh without triangles has no inside");
        }
        Bounds bounds = mesh.bounds();
        int[] order = mortonOrder(mesh);
        int[] corners = new int[mesh.corners().length];
        double[] xyz = gather(mesh, order, corners);
        MeshTreeBuilder builder = new MeshTreeBuilder(xyz, corners);
        int leaves = (order.length + MeshTree.leafSize() - 1) / MeshTree.leafSize();
        builder.node(0, leaves);
        return new MeshTree(
                builder.nodes,
                builder.skip,
                builder.first,
                xyz,
                corners,
                builder.faces,
                bounds.centreX(),
                bounds.centreY(),
                bounds.centreZ(),
                bounds);
    }

    /** Triangles by the place of their centroid on a Morton curve, equal places in the order of the mesh. */
    private static int[] mortonOrder(TriangleMesh mesh) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        Bounds b = mesh.bounds();
        double extent = Math.max(Math.max(b.sizeX(), b.sizeY()), b.sizeZ());
        // The centroid is a third of the sum of three corners.
        double scale = extent > 0 ? ((1 << BITS_PER_AXIS) - 1) / (3 * extent) : 0;
        int n = mesh.triangleCount();
        int[] keys = new int[n];
        int[] order = new int[n];
        for (int t = 0; t < n; t++) {
            int a = 3 * corners[3 * t];
            int c = 3 * corners[3 * t + 1];
            int e = 3 * corners[3 * t + 2];
            int x = (int) (scale * (xyz[a] - b.minX() + xyz[c] - b.minX() + xyz[e] - b.minX()));
            int y = (int) (scale * (xyz[a + 1] - b.minY() + xyz[c + 1] - b.minY() + xyz[e + 1] - b.minY()));
            int z = (int) (scale * (xyz[a + 2] - b.minZ() + xyz[c + 2] - b.minZ() + xyz[e + 2] - b.minZ()));
            keys[t] = spread(x) | spread(y) << 1 | spread(z) << 2;
            order[t] = t;
        }
        return radixSorted(keys, order);
    }

    /** Puts two empty bits between each of ten. */
    private static int spread(int v) {
        int s = (v | v << 16) & 0x030000FF;
        s = (s | s << 8) & 0x0300F00F;
        s = (s | s << 4) & 0x030C30C3;
        return (s | s << 2) & 0x09249249;
    }

    private static int[] radixSorted(int[] keys, int[] order) {
        int[] keysFrom = keys;
        int[] from = order;
        int[] keysTo = new int[keys.length];
        int[] to = new int[order.length];
        int mask = (1 << RADIX_BITS) - 1;
        for (int shift = 0; shift < 3 * BITS_PER_AXIS; shift += RADIX_BITS) {
            int[] place = new int[mask + 2];
            for (int key : keysFrom) {
                place[(key >>> shift & mask) + 1]++;
            }
            for (int i = 1; i < place.length; i++) {
                place[i] += place[i - 1];
            }
            for (int i = 0; i < from.length; i++) {
                int p = place[keysFrom[i] >>> shift & mask]++;
                keysTo[p] = keysFrom[i];
                to[p] = from[i];
            }
            int[] swap = keysFrom;
            keysFrom = keysTo;
            keysTo = swap;
            swap = from;
            from = to;
            to = swap;
        }
        return from;
    }

    /**
     * Vertices about the mesh's centre and the corners as offsets to them. Each leaf has its own, in the order of their first use, so that they lie side by
     * side and their heights are found once.
     */
    private static double[] gather(TriangleMesh mesh, int[] order, int[] newCorners) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        Bounds b = mesh.bounds();
        double cx = b.centreX();
        double cy = b.centreY();
        double cz = b.centreZ();
        // Offset of the vertex by its number, if not lower than where the leaf's own begin: those of leaves before are.
        int[] place = new int[mesh.vertexCount()];
        Arrays.fill(place, -1);
        int next = 0;
        int begin = 0;
        for (int i = 0; i < order.length; i++) {
            begin = i % MeshTree.leafSize() == 0 ? next : begin;
            for (int k = 0; k < 3; k++) {
                int v = corners[3 * order[i] + k];
                if (place[v] < begin) {
                    place[v] = next;
                    next = Math.addExact(next, 3);
                }
                newCorners[3 * i + k] = place[v];
            }
        }
        double[] gathered = new double[next];
        for (int i = 0; i < newCorners.length; i++) {
            int to = newCorners[i];
            int v = 3 * corners[3 * order[i / 3] + i % 3];
            gathered[to] = xyz[v] - cx;
            gathered[to + 1] = xyz[v + 1] - cy;
            gathered[to + 2] = xyz[v + 2] - cz;
        }
        return gathered;
    }

    /** Builds the node over the leaves {@code from}…{@code to} - 1 and everything under it; returns its index. */
    private int node(int from, int to) {
        int index = nextNode++;
        int at = index * MeshTree.STRIDE;
        if (to - from == 1) {
            first[index] = from * MeshTree.leafSize();
            sumLeaf(at, first[index]);
        } else {
            first[index] = -1;
            int middle = (from + to) >>> 1;
            int left = node(from, middle) * MeshTree.STRIDE;
            int right = node(middle, to) * MeshTree.STRIDE;
            join(at, left, right);
        }
        skip[index] = nextNode;
        return index;
    }

    private void join(int at, int left, int right) {
        joinBoxes(at + MeshTree.BOX_X, left + MeshTree.BOX_X, right + MeshTree.BOX_X);
        joinBoxes(at + MeshTree.NORMAL, left + MeshTree.NORMAL, right + MeshTree.NORMAL);
        for (int k = MeshTree.S; k < MeshTree.AREA_MM + 6; k++) {
            nodes[at + k] = nodes[left + k] + nodes[right + k];
        }
    }

    /** Boxes stand as three middles and three half sizes. */
    private void joinBoxes(int at, int left, int right) {
        for (int axis = 0; axis < 3; axis++) {
            double lowest = Math.min(
                    nodes[left + axis] - nodes[left + 3 + axis], nodes[right + axis] - nodes[right + 3 + axis]);
            double highest = Math.max(
                    nodes[left + axis] + nodes[left + 3 + axis], nodes[right + axis] + nodes[right + 3 + axis]);
            put(at + axis, lowest, highest);
        }
    }

    private void put(int at, double lowest, double highest) {
        nodes[at] = 0.5 * (lowest + highest);
        nodes[at + 3] = 0.5 * (highest - lowest);
    }

    private void sumLeaf(int at, int firstTriangle) {
        int end = Math.min(firstTriangle + MeshTree.leafSize(), corners.length / 3);
        double minX = Double.POSITIVE_INFINITY;
        double minY = minX;
        double minZ = minX;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = maxX;
        double maxZ = maxX;
        double minNx = 1;
        double minNy = 1;
        double minNz = 1;
        double maxNx = -1;
        double maxNy = -1;
        double maxNz = -1;
        for (int t = firstTriangle; t < end; t++) {
            int a = corners[3 * t];
            int b = corners[3 * t + 1];
            int c = corners[3 * t + 2];
            double ax = xyz[a];
            double ay = xyz[a + 1];
            double az = xyz[a + 2];
            double bx = xyz[b];
            double by = xyz[b + 1];
            double bz = xyz[b + 2];
            double cx = xyz[c];
            double cy = xyz[c + 1];
            double cz = xyz[c + 2];
            minX = Math.min(minX, Math.min(ax, Math.min(bx, cx)));
            minY = Math.min(minY, Math.min(ay, Math.min(by, cy)));
            minZ = Math.min(minZ, Math.min(az, Math.min(bz, cz)));
            maxX = Math.max(maxX, Math.max(ax, Math.max(bx, cx)));
            maxY = Math.max(maxY, Math.max(ay, Math.max(by, cy)));
            maxZ = Math.max(maxZ, Math.max(az, Math.max(bz, cz)));
            double sx = 0.5 * ((by - ay) * (cz - az) - (bz - az) * (cy - ay));
            double sy = 0.5 * ((bz - az) * (cx - ax) - (bx - ax) * (cz - az));
            double sz = 0.5 * ((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
            // a · (b × c) = 2 s · a, since a · (a × anything) vanishes.
            double d = (sx * ax + sy * ay + sz * az) / 3;
            double gx = 0.25 * (ax + bx + cx);
            double gy = 0.25 * (ay + by + cy);
            double gz = 0.25 * (az + bz + cz);
            nodes[at + MeshTree.S] += sx;
            nodes[at + MeshTree.S + 1] += sy;
            nodes[at + MeshTree.S + 2] += sz;
            nodes[at + MeshTree.D] += d;
            nodes[at + MeshTree.F] += d * gx;
            nodes[at + MeshTree.F + 1] += d * gy;
            nodes[at + MeshTree.F + 2] += d * gz;
            nodes[at + MeshTree.T] += sx * gx;
            nodes[at + MeshTree.T + 1] += sx * gy;
            nodes[at + MeshTree.T + 2] += sx * gz;
            nodes[at + MeshTree.T + 3] += sy * gx;
            nodes[at + MeshTree.T + 4] += sy * gy;
            nodes[at + MeshTree.T + 5] += sy * gz;
            nodes[at + MeshTree.T + 6] += sz * gx;
            nodes[at + MeshTree.T + 7] += sz * gy;
            nodes[at + MeshTree.T + 8] += sz * gz;
            double area = Math.sqrt(sx * sx + sy * sy + sz * sz);
            if (area > 0) {
                double unitX = sx / area;
                double unitY = sy / area;
                double unitZ = sz / area;
                faces[4 * t] = unitX;
                faces[4 * t + 1] = unitY;
                faces[4 * t + 2] = unitZ;
                faces[4 * t + 3] = area;
                minNx = Math.min(minNx, unitX);
                minNy = Math.min(minNy, unitY);
                minNz = Math.min(minNz, unitZ);
                maxNx = Math.max(maxNx, unitX);
                maxNy = Math.max(maxNy, unitY);
                maxNz = Math.max(maxNz, unitZ);
            }
            nodes[at + MeshTree.AREA] += area;
            nodes[at + MeshTree.AREA_M] += area * gx * (4.0 / 3);
            nodes[at + MeshTree.AREA_M + 1] += area * gy * (4.0 / 3);
            nodes[at + MeshTree.AREA_M + 2] += area * gz * (4.0 / 3);
            // (a + b + c) (a + b + c)ᵀ + a aᵀ + b bᵀ + c cᵀ, a twelfth of the area of it.
            double twelfth = area * (1.0 / 12);
            nodes[at + MeshTree.AREA_MM] += twelfth * (16 * gx * gx + ax * ax + bx * bx + cx * cx);
            nodes[at + MeshTree.AREA_MM + 1] += twelfth * (16 * gx * gy + ax * ay + bx * by + cx * cy);
            nodes[at + MeshTree.AREA_MM + 2] += twelfth * (16 * gx * gz + ax * az + bx * bz + cx * cz);
            nodes[at + MeshTree.AREA_MM + 3] += twelfth * (16 * gy * gy + ay * ay + by * by + cy * cy);
            nodes[at + MeshTree.AREA_MM + 4] += twelfth * (16 * gy * gz + ay * az + by * bz + cy * cz);
            nodes[at + MeshTree.AREA_MM + 5] += twelfth * (16 * gz * gz + az * az + bz * bz + cz * cz);
        }
        put(at + MeshTree.BOX_X, minX, maxX);
        put(at + MeshTree.BOX_Y, minY, maxY);
        put(at + MeshTree.BOX_Z, minZ, maxZ);
        put(at + MeshTree.NORMAL, minNx, maxNx);
        put(at + MeshTree.NORMAL + 1, minNy, maxNy);
        put(at + MeshTree.NORMAL + 2, minNz, maxNz);
    }
}
