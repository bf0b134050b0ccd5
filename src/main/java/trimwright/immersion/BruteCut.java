package trimwright.immersion;

import trimwright.mesh.TriangleMesh;

/** The sums of {@link MeshSolid} without the tree, triangle by triangle: the reference that the tree is held against. */
public final class BruteCut {

    /** Triangles per block; sums of blocks are added up, which keeps rounding small in a mesh of millions. */
    private static final int BLOCK = 2048;

    private BruteCut() {}

    /** Adds what a closed, outward oriented mesh encloses below the plane. */
    public static void addBelow(Immersion sum, TriangleMesh mesh) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        double h = sum.plane().heightMm() - TriangleCut.loweringMm(mesh.bounds());
        for (int start = 0; start < corners.length; start += 3 * BLOCK) {
            Immersion block = sum.emptied();
            addBlock(block, xyz, corners, start, Math.min(corners.length, start + 3 * BLOCK), h);
            sum.addScaled(block, 1);
        }
    }

    private static void addBlock(Immersion s, double[] xyz, int[] corners, int from, int to, double h) {
        for (int k = from; k < to; k += 3) {
            int a = 3 * corners[k];
            int b = 3 * corners[k + 1];
            int c = 3 * corners[k + 2];
            double da = s.nx * xyz[a] + s.ny * xyz[a + 1] + s.nz * xyz[a + 2] - h;
            double db = s.nx * xyz[b] + s.ny * xyz[b + 1] + s.nz * xyz[b + 2] - h;
            double dc = s.nx * xyz[c] + s.ny * xyz[c + 1] + s.nz * xyz[c + 2] - h;
            if (da >= 0 && db >= 0 && dc >= 0) {
                continue;
            }
            TriangleCut.any(
                    s,
                    xyz[a] - s.rx,
                    xyz[a + 1] - s.ry,
                    xyz[a + 2] - s.rz,
                    da,
                    xyz[b] - s.rx,
                    xyz[b + 1] - s.ry,
                    xyz[b + 2] - s.rz,
                    db,
                    xyz[c] - s.rx,
                    xyz[c + 1] - s.ry,
                    xyz[c + 2] - s.rz,
                    dc);
        }
    }
}
