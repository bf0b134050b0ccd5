package trimwright.bench;

import trimwright.mesh.TriangleMesh;

/** Hull-like meshes of any size. */
final class BenchMeshes {

    private BenchMeshes() {}

    /** A closed spindle 1000 mm long and 200 mm thick about the x axis, of about so many triangles, in rings from end to end. */
    static TriangleMesh spindle(int triangles) {
        int around = (int) Math.sqrt(triangles / 4.0);
        int rings = triangles / (2 * around);
        double[] xyz = new double[3 * (around * rings + 2)];
        int[] corners = new int[6 * around * rings];
        int last = around * rings + 1;
        xyz[0] = -500;
        xyz[3 * last] = 500;
        int next = 0;
        for (int ring = 0; ring <= rings; ring++) {
            for (int k = 0; k < around; k++) {
                if (ring < rings) {
                    put(xyz, 1 + ring * around + k, Math.PI * (ring + 1) / (rings + 1), 2 * Math.PI * k / around);
                }
                int a = ring == 0 ? 0 : 1 + (ring - 1) * around + k;
                int b = ring == 0 ? 0 : 1 + (ring - 1) * around + (k + 1) % around;
                int c = ring == rings ? last : 1 + ring * around + k;
                int d = ring == rings ? last : 1 + ring * around + (k + 1) % around;
                if (ring > 0) {
                    corners[next++] = a;
                    corners[next++] = b;
                    corners[next++] = c;
                }
                if (ring < rings) {
                    corners[next++] = b;
                    corners[next++] = d;
                    corners[next++] = c;
                }
            }
        }
        return TriangleMesh.owning(xyz, corners);
    }

    private static void put(double[] xyz, int vertex, double latitude, double longitude) {
        xyz[3 * vertex] = -500 * Math.cos(latitude);
        xyz[3 * vertex + 1] = 100 * Math.sin(latitude) * Math.cos(longitude);
        xyz[3 * vertex + 2] = 100 * Math.sin(latitude) * Math.sin(longitude);
    }
}
