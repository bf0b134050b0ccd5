package trimwright.mesh;

/** Scalar formulae of a triangle, over flat arrays; offsets point to a vertex's x. */
public final class Triangles {

    /** Height over length below which single precision cannot tell a triangle from a line. */
    private static final double FLAT = 1e-7;

    private Triangles() {}

    /** a · (b × c). */
    public static double tripleProduct(
            double ax, double ay, double az, double bx, double by, double bz, double cx, double cy, double cz) {
        return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    }

    /** Area of the triangle whose vertices start at the offsets {@code a}, {@code b}, {@code c}. */
    public static double area(double[] xyz, int a, int b, int c) {
        double ux = xyz[b] - xyz[a];
        double uy = xyz[b + 1] - xyz[a + 1];
        double uz = xyz[b + 2] - xyz[a + 2];
        double vx = xyz[c] - xyz[a];
        double vy = xyz[c + 1] - xyz[a + 1];
        double vz = xyz[c + 2] - xyz[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        return 0.5 * Math.sqrt(nx * nx + ny * ny + nz * nz);
    }

    /** Whether a triangle of the mesh is as good as a line. */
    static boolean isFlat(TriangleMesh mesh, int t) {
        double[] xyz = mesh.xyz();
        int a = 3 * mesh.corners()[3 * t];
        int b = 3 * mesh.corners()[3 * t + 1];
        int c = 3 * mesh.corners()[3 * t + 2];
        double ux = xyz[b] - xyz[a];
        double uy = xyz[b + 1] - xyz[a + 1];
        double uz = xyz[b + 2] - xyz[a + 2];
        double vx = xyz[c] - xyz[a];
        double vy = xyz[c + 1] - xyz[a + 1];
        double vz = xyz[c + 2] - xyz[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double uu = ux * ux + uy * uy + uz * uz;
        double vv = vx * vx + vy * vy + vz * vz;
        double ww = (ux - vx) * (ux - vx) + (uy - vy) * (uy - vy) + (uz - vz) * (uz - vz);
        double longest = Math.max(uu, Math.max(vv, ww));
        // |u × v| = height × longest side.
        return nx * nx + ny * ny + nz * nz <= FLAT * FLAT * longest * longest;
    }
}
