package trimwright.mesh;

/**
 * Whether two triangles pass through each other: an edge of one pierces the other, clear of its plane and its edges by more
 * than a tolerance. Triangles that only touch, lie in one plane or share a vertex do not cross by that alone.
 */
final class CrossingTest {

    private final double[] xyz;
    private final double tolerance;

    /** @param tolerance distance below which things touch rather than cross */
    CrossingTest(double[] xyz, double tolerance) {
        this.xyz = xyz;
        this.tolerance = tolerance;
    }

    /** Vertices by offset to their x. */
    boolean cross(int a, int b, int c, int p, int q, int r) {
        double sideP = side(a, b, c, p);
        double sideQ = side(a, b, c, q);
        double sideR = side(a, b, c, r);
        if (onOneSide(sideP, sideQ, sideR)) {
            return false;
        }
        double sideA = side(p, q, r, a);
        double sideB = side(p, q, r, b);
        double sideC = side(p, q, r, c);
        if (onOneSide(sideA, sideB, sideC)) {
            return false;
        }
        return (sideP * sideQ < 0 && pierces(p, q, a, b, c))
                || (sideQ * sideR < 0 && pierces(q, r, a, b, c))
                || (sideR * sideP < 0 && pierces(r, p, a, b, c))
                || (sideA * sideB < 0 && pierces(a, b, p, q, r))
                || (sideB * sideC < 0 && pierces(b, c, p, q, r))
                || (sideC * sideA < 0 && pierces(c, a, p, q, r));
    }

    /** Distance of d from the plane of a, b, c; zero within the tolerance or where there is no plane. */
    private double side(int a, int b, int c, int d) {
        double ux = xyz[b] - xyz[a];
        double uy = xyz[b + 1] - xyz[a + 1];
        double uz = xyz[b + 2] - xyz[a + 2];
        double vx = xyz[c] - xyz[a];
        double vy = xyz[c + 1] - xyz[a + 1];
        double vz = xyz[c + 2] - xyz[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double product = nx * (xyz[d] - xyz[a]) + ny * (xyz[d + 1] - xyz[a + 1]) + nz * (xyz[d + 2] - xyz[a + 2]);
        double limit = tolerance * tolerance * (nx * nx + ny * ny + nz * nz);
        return product * product > limit ? product : 0;
    }

    private static boolean onOneSide(double one, double other, double third) {
        return (one >= 0 && other >= 0 && third >= 0) || (one <= 0 && other <= 0 && third <= 0);
    }

    /** Whether the line through p and q passes the three edges clearly on one side. */
    private boolean pierces(int p, int q, int a, int b, int c) {
        double ab = turn(p, q, a, b);
        double bc = turn(p, q, b, c);
        double ca = turn(p, q, c, a);
        return (ab > 0 && bc > 0 && ca > 0) || (ab < 0 && bc < 0 && ca < 0);
    }

    /** Sense in which the line p q passes the line a b; zero where they pass within the tolerance. */
    private double turn(int p, int q, int a, int b) {
        double ux = xyz[q] - xyz[p];
        double uy = xyz[q + 1] - xyz[p + 1];
        double uz = xyz[q + 2] - xyz[p + 2];
        double vx = xyz[b] - xyz[a];
        double vy = xyz[b + 1] - xyz[a + 1];
        double vz = xyz[b + 2] - xyz[a + 2];
        // u × v is square to both lines: the product over its length is their distance.
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double product = nx * (xyz[a] - xyz[p]) + ny * (xyz[a + 1] - xyz[p + 1]) + nz * (xyz[a + 2] - xyz[p + 2]);
        double limit = tolerance * tolerance * (nx * nx + ny * ny + nz * nz);
        return product * product > limit ? product : 0;
    }
}
