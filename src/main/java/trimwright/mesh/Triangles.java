package trimwright.mesh;

/** Scalar formulae of a triangle, over flat arrays; offsets point to a vertex's x. */
public final class Triangles {

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
}
