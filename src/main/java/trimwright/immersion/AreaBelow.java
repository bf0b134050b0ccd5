package trimwright.immersion;

import trimwright.mesh.Triangles;

/** Wetted area: what of a surface lies strictly below the plane. */
final class AreaBelow {

    private AreaBelow() {}

    static double of(MeshTree t, WaterPlane plane) {
        double nx = plane.up().getX();
        double ny = plane.up().getY();
        double nz = plane.up().getZ();
        double h = t.cutHeight(plane);
        double absX = Math.abs(nx);
        double absY = Math.abs(ny);
        double absZ = Math.abs(nz);
        double[] nodes = t.nodes;
        double sum = 0;
        int node = 0;
        while (node < t.skip.length) {
            int at = node * MeshTree.STRIDE;
            double height = nx * nodes[at] + ny * nodes[at + 1] + nz * nodes[at + 2] - h;
            double reach = absX * nodes[at + 3] + absY * nodes[at + 4] + absZ * nodes[at + 5] + t.margin;
            if (height > reach) {
                node = t.skip[node];
            } else if (height < -reach) {
                sum += nodes[at + MeshTree.AREA];
                node = t.skip[node];
            } else {
                if (t.first[node] >= 0) {
                    sum += ofLeaf(t, t.first[node], nx, ny, nz, h);
                }
                node++;
            }
        }
        return sum;
    }

    private static double ofLeaf(MeshTree t, int firstTriangle, double nx, double ny, double nz, double h) {
        double[] xyz = t.xyz;
        double sum = 0;
        int end = 3 * t.leafEnd(firstTriangle);
        for (int k = 3 * firstTriangle; k < end; k += 3) {
            int a = t.corners[k];
            int b = t.corners[k + 1];
            int c = t.corners[k + 2];
            double da = nx * xyz[a] + ny * xyz[a + 1] + nz * xyz[a + 2] - h;
            double db = nx * xyz[b] + ny * xyz[b + 1] + nz * xyz[b + 2] - h;
            double dc = nx * xyz[c] + ny * xyz[c + 1] + nz * xyz[c + 2] - h;
            double share = shareBelow(da, db, dc);
            if (share > 0) {
                sum += share * Triangles.area(xyz, a, b, c);
            }
        }
        return sum;
    }

    /** Share of a triangle's area below the plane, from the heights of its vertices. */
    static double shareBelow(double da, double db, double dc) {
        int immersed = (da < 0 ? 1 : 0) | (db < 0 ? 2 : 0) | (dc < 0 ? 4 : 0);
        switch (immersed) {
            case 0:
                return 0;
            case 1:
                return tip(da, db, dc);
            case 2:
                return tip(db, dc, da);
            case 3:
                return 1 - tip(dc, da, db);
            case 4:
                return tip(dc, da, db);
            case 5:
                return 1 - tip(db, dc, da);
            case 6:
                return 1 - tip(da, db, dc);
            default:
                return 1;
        }
    }

    /** Share of the corner at height {@code d} that the plane cuts off from the two others. */
    private static double tip(double d, double other, double another) {
        return d / (d - other) * (d / (d - another));
    }
}
