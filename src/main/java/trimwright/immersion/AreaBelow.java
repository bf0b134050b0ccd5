package trimwright.immersion;

import trimwright.mesh.Triangles;

/** Wetted area: what of a surface lies strictly below the plane. */
final class AreaBelow extends PlaneWalk {

    private double sum;

    private AreaBelow(MeshTree tree, WaterPlane plane) {
        super(tree, plane.up(), tree.cutHeight(plane), 0);
    }

    static double of(MeshTree tree, WaterPlane plane) {
        AreaBelow walk = new AreaBelow(tree, plane);
        walk.run(0);
        return walk.sum;
    }

    @Override
    void node(int at, double share, double perMm) {
        sum += share * tree.nodes[at + MeshTree.AREA];
    }

    @Override
    boolean isOnePatch(int at) {
        return true;
    }

    @Override
    void leaf(int firstTriangle, int endTriangle) {
        int[] corners = tree.corners;
        double inLeaf = 0;
        for (int k = 3 * firstTriangle; k < 3 * endTriangle; k += 3) {
            int a = corners[k];
            int b = corners[k + 1];
            int c = corners[k + 2];
            double share = shareBelow(height(a), height(b), height(c));
            if (share > 0) {
                inLeaf += share * Triangles.area(tree.xyz, a, b, c);
            }
        }
        sum += inLeaf;
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
