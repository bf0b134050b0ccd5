package trimwright.immersion;

/** Length of the line along which a plane cuts a surface: the sum of the segments in which it cuts the triangles. */
final class OutlineLength extends PlaneWalk {

    private double sum;

    private OutlineLength(MeshTree tree, WaterPlane plane) {
        super(tree, plane.up(), tree.height(plane), 0);
    }

    static double of(MeshTree tree, WaterPlane plane) {
        OutlineLength walk = new OutlineLength(tree, plane);
        walk.run(0);
        return walk.sum;
    }

    @Override
    void node(int at, double share, double perMm) {
        // Nothing of it is cut.
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
            double da = height(a);
            double db = height(b);
            double dc = height(c);
            if (da < 0 == db < 0) {
                if (da < 0 != dc < 0) {
                    inLeaf += segment(c, dc, a, da, b, db);
                }
            } else if (da < 0 == dc < 0) {
                inLeaf += segment(b, db, c, dc, a, da);
            } else {
                inLeaf += segment(a, da, b, db, c, dc);
            }
        }
        sum += inLeaf;
    }

    /** The cut of a triangle of which vertex p lies on one side and q, r on the other. */
    private double segment(int p, double dp, int q, double dq, int r, double dr) {
        double[] xyz = tree.xyz;
        double tq = dp / (dp - dq);
        double tr = dp / (dp - dr);
        double x = tq * (xyz[q] - xyz[p]) - tr * (xyz[r] - xyz[p]);
        double y = tq * (xyz[q + 1] - xyz[p + 1]) - tr * (xyz[r + 1] - xyz[p + 1]);
        double z = tq * (xyz[q + 2] - xyz[p + 2]) - tr * (xyz[r + 2] - xyz[p + 2]);
        return Math.sqrt(x * x + y * y + z * z);
    }
}
