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
        double nx = s.nx;
        double ny = s.ny;
        double nz = s.nz;
        double rx = s.rx;
        double ry = s.ry;
        double rz = s.rz;
        double volume = 0;
        double mx = 0;
        double my = 0;
        double mz = 0;
        for (int k = from; k < to; k += 3) {
            int a = 3 * corners[k];
            int b = 3 * corners[k + 1];
            int c = 3 * corners[k + 2];
            double ax = xyz[a];
            double ay = xyz[a + 1];
            double az = xyz[a + 2];
            double bx = xyz[b];
            double by = xyz[b + 1];
            double bz = xyz[b + 2];
            double cx = xyz[c];
            double cy = xyz[c + 1];
            double cz = xyz[c + 2];
            // Adding 0 leaves no -0.
            double da = nx * ax + ny * ay + nz * az - h + 0.0;
            double db = nx * bx + ny * by + nz * bz - h + 0.0;
            double dc = nx * cx + ny * cy + nz * cz - h + 0.0;
            if (!TriangleCut.anyBelow(da, db, dc)) {
                continue;
            }
            ax -= rx;
            ay -= ry;
            az -= rz;
            bx -= rx;
            by -= ry;
            bz -= rz;
            cx -= rx;
            cy -= ry;
            cz -= rz;
            if (TriangleCut.allBelow(da, db, dc)) {
                // As TriangleCut.whole, with the sums in registers: this is where the time goes.
                double six = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
                volume += six;
                mx += six * (ax + bx + cx);
                my += six * (ay + by + cy);
                mz += six * (az + bz + cz);
            } else {
                TriangleCut.any(s, ax, ay, az, da, bx, by, bz, db, cx, cy, cz, dc);
            }
        }
        s.volume += volume / 6;
        s.mx += mx / 24;
        s.my += my / 24;
        s.mz += mz / 24;
    }
}
