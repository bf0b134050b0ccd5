package trimwright.mesh;

/** Closed meshes of simple solids, outward oriented. */
public final class Solids {

    private static final int[] BOX_CORNERS = {
        0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5
    };

    private Solids() {}

    /** An axis-parallel box between two opposite corners, in any order. */
    public static TriangleMesh box(double x0, double y0, double z0, double x1, double y1, double z1) {
        double[] xyz = new double[24];
        for (int i = 0; i < 8; i++) {
            xyz[3 * i] = (i & 1) == 0 ? Math.min(x0, x1) : Math.max(x0, x1);
            xyz[3 * i + 1] = (i & 2) == 0 ? Math.min(y0, y1) : Math.max(y0, y1);
            xyz[3 * i + 2] = (i & 4) == 0 ? Math.min(z0, z1) : Math.max(z0, z1);
        }
        return TriangleMesh.owning(xyz, BOX_CORNERS.clone());
    }
}
