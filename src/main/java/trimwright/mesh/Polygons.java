package trimwright.mesh;

/**
 * Polygons in space, as rings of vertex numbers, and how they are cut into triangles. Convex ones become a fan about their
 * first corner; others are cut ear by ear in the coordinate plane that faces them most.
 */
final class Polygons {

    private Polygons() {}

    /**
     * Twice the area vector of the ring (Newell's formula): its direction is the mean normal, counter-clockwise seen from its
     * tip, whatever the shape of the ring.
     */
    static double[] areaVector(double[] xyz, int[] ring, int size) {
        double[] sum = new double[3];
        int first = 3 * ring[0];
        for (int i = 1; i + 1 < size; i++) {
            int b = 3 * ring[i];
            int c = 3 * ring[i + 1];
            double ux = xyz[b] - xyz[first];
            double uy = xyz[b + 1] - xyz[first + 1];
            double uz = xyz[b + 2] - xyz[first + 2];
            double vx = xyz[c] - xyz[first];
            double vy = xyz[c + 1] - xyz[first + 1];
            double vz = xyz[c + 2] - xyz[first + 2];
            sum[0] += uy * vz - uz * vy;
            sum[1] += uz * vx - ux * vz;
            sum[2] += ux * vy - uy * vx;
        }
        return sum;
    }

    /** The largest distance of a corner from the plane with the mean normal through the mean of the corners. */
    static double gap(double[] xyz, int[] ring, int size) {
        double[] n = areaVector(xyz, ring, size);
        double length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
        if (length == 0) {
            return 0;
        }
        double mean = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        int origin = 3 * ring[0];
        for (int i = 0; i < size; i++) {
            int v = 3 * ring[i];
            double height = (n[0] * (xyz[v] - xyz[origin])
                            + n[1] * (xyz[v + 1] - xyz[origin + 1])
                            + n[2] * (xyz[v + 2] - xyz[origin + 2]))
                    / length;
            mean += height / size;
            least = Math.min(least, height);
            most = Math.max(most, height);
        }
        return Math.max(most - mean, mean - least);
    }

    /** The longest side of the box around the corners. */
    static double longestSide(double[] xyz, int[] ring, int size) {
        double[] points = new double[3 * size];
        for (int i = 0; i < size; i++) {
            System.arraycopy(xyz, 3 * ring[i], points, 3 * i, 3);
        }
        return Bounds.of(points).longestSide();
    }

    /**
     * Cuts the ring into {@code size − 2} triangles, wound as the ring is, and adds their corners to {@code out}.
     *
     * @return false where the ring crosses itself, so that no more ears were found; what was left is then cut as a fan
     */
    static boolean triangulate(double[] xyz, int[] ring, int size, IntList out) {
        if (size == 3) {
            fan(ring, size, out);
            return true;
        }
        if (isZero(areaVector(xyz, ring, size))) {
            fan(ring, size, out);
            return isAlongALine(xyz, ring, size);
        }
        double[] flat = flattened(xyz, ring, size);
        if (isConvex(flat, size)) {
            fan(ring, size, out);
            return true;
        }
        return new Ears(flat, ring, size).cut(out);
    }

    /** Otherwise what a ring without area winds round one way it winds round the other way too. */
    private static boolean isAlongALine(double[] xyz, int[] ring, int size) {
        for (int i = 1; i + 1 < size; i++) {
            if (!isZero(areaVector(xyz, new int[] {ring[0], ring[i], ring[i + 1]}, 3))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isZero(double[] vector) {
        return vector[0] == 0 && vector[1] == 0 && vector[2] == 0;
    }

    static void fan(int[] ring, int size, IntList out) {
        for (int i = 1; i + 1 < size; i++) {
            out.add(ring[0]);
            out.add(ring[i]);
            out.add(ring[i + 1]);
        }
    }

    /** The ring in the coordinate plane that faces it most, as u, v, u, v, …, counter-clockwise. */
    private static double[] flattened(double[] xyz, int[] ring, int size) {
        double[] n = areaVector(xyz, ring, size);
        int drop = Math.abs(n[0]) >= Math.abs(n[1]) && Math.abs(n[0]) >= Math.abs(n[2])
                ? 0
                : Math.abs(n[1]) >= Math.abs(n[2]) ? 1 : 2;
        int u = (drop + 1) % 3;
        int v = (drop + 2) % 3;
        double turn = n[drop] < 0 ? -1 : 1;
        double[] flat = new double[2 * size];
        for (int i = 0; i < size; i++) {
            flat[2 * i] = turn * xyz[3 * ring[i] + u];
            flat[2 * i + 1] = xyz[3 * ring[i] + v];
        }
        return flat;
    }

    private static boolean isConvex(double[] flat, int size) {
        for (int i = 0; i < size; i++) {
            // The second holds by itself, but for stars that turn left at every corner and go round twice.
            if (turn(flat, i, (i + 1) % size, (i + 2) % size) < 0 || turn(flat, 0, i, (i + 1) % size) < 0) {
                return false;
            }
        }
        return true;
    }

    static double turn(double[] flat, int a, int b, int c) {
        return (flat[2 * b] - flat[2 * a]) * (flat[2 * c + 1] - flat[2 * a + 1])
                - (flat[2 * b + 1] - flat[2 * a + 1]) * (flat[2 * c] - flat[2 * a]);
    }
}
