package trimwright.immersion;

/** Length of the line along which a plane cuts a surface: the sum of the segments in which it cuts the triangles. */
final class OutlineLength {

    private OutlineLength() {}

    static double of(MeshTree t, WaterPlane plane) {
        double nx = plane.up().getX();
        double ny = plane.up().getY();
        double nz = plane.up().getZ();
        double h = plane.heightMm() - nx * t.originX - ny * t.originY - nz * t.originZ;
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
            if (Math.abs(height) > reach) {
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
            if (da < 0 == db < 0) {
                if (da < 0 != dc < 0) {
                    sum += segment(xyz, c, dc, a, da, b, db);
                }
            } else if (da < 0 == dc < 0) {
                sum += segment(xyz, b, db, c, dc, a, da);
            } else {
                sum += segment(xyz, a, da, b, db, c, dc);
            }
        }
        return sum;
    }

    /** The cut of a triangle of which vertex p lies on one side and q, r on the other. */
    private static double segment(double[] xyz, int p, double dp, int q, double dq, int r, double dr) {
        double tq = dp / (dp - dq);
        double tr = dp / (dp - dr);
        double x = tq * (xyz[q] - xyz[p]) - tr * (xyz[r] - xyz[p]);
        double y = tq * (xyz[q + 1] - xyz[p + 1]) - tr * (xyz[r + 1] - xyz[p + 1]);
        double z = tq * (xyz[q + 2] - xyz[p + 2]) - tr * (xyz[r + 2] - xyz[p + 2]);
        return Math.sqrt(x * x + y * y + z * z);
    }
}
