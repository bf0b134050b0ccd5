package trimwright.samples;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/**
 * Sews patches of quads into one mesh. Points are rounded to single precision, as a binary STL keeps them, and joined where
 * they are equal; triangles that have shrunk to a line are left out, so patches may close onto a stem or a point.
 */
final class Patchwork {

    private record Point(float x, float y, float z) {

        static Point of(Vector3D p) {
            // Adding zero turns -0 into 0, so that both sides meet on the centreline.
            return new Point((float) p.getX() + 0f, (float) p.getY() + 0f, (float) p.getZ() + 0f);
        }
    }

    private final Map<Point, Integer> numbers = new HashMap<>();
    private double[] xyz = new double[3072];
    private int[] corners = new int[6144];
    private int cornerCount;

    /** Counter-clockwise seen from outside. */
    void triangle(Vector3D a, Vector3D b, Vector3D c) {
        int i = number(a);
        int j = number(b);
        int k = number(c);
        if (i == j || j == k || k == i) {
            return;
        }
        if (cornerCount == corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[cornerCount++] = i;
        corners[cornerCount++] = j;
        corners[cornerCount++] = k;
    }

    /**
     * Counter-clockwise seen from outside, cut along its shorter diagonal. A diagonal in the middle plane is avoided: the
     * mirror image would cut along the same line, and four triangles would meet there.
     */
    void quad(Vector3D a, Vector3D b, Vector3D c, Vector3D d) {
        boolean shorter = a.distanceSq(c) <= b.distanceSq(d);
        if (shorter ? !inMiddle(a, c) : inMiddle(b, d)) {
            triangle(a, b, c);
            triangle(a, c, d);
        } else {
            triangle(a, b, d);
            triangle(b, c, d);
        }
    }

    private static boolean inMiddle(Vector3D p, Vector3D q) {
        return p.getY() == 0 && q.getY() == 0;
    }

    /** A quad and its mirror image at y = 0. */
    void bothSides(Vector3D a, Vector3D b, Vector3D c, Vector3D d) {
        quad(a, b, c, d);
        quad(mirrored(d), mirrored(c), mirrored(b), mirrored(a));
    }

    /** A band between two closed loops of equally many points: outside is where the first, seen below the second, runs counter-clockwise. */
    void band(Vector3D[] lower, Vector3D[] upper) {
        for (int m = 0; m < lower.length; m++) {
            int next = (m + 1) % lower.length;
            quad(lower[m], lower[next], upper[next], upper[m]);
        }
    }

    /** The triangles of another patchwork, turned inside out. */
    void addTurned(Patchwork inner) {
        for (int k = 0; k < inner.cornerCount; k += 3) {
            triangle(inner.point(k), inner.point(k + 2), inner.point(k + 1));
        }
    }

    private Vector3D point(int corner) {
        int v = 3 * corners[corner];
        return new Vector3D(xyz[v], xyz[v + 1], xyz[v + 2]);
    }

    TriangleMesh build() {
        return TriangleMesh.owning(Arrays.copyOf(xyz, 3 * numbers.size()), Arrays.copyOf(corners, cornerCount));
    }

    static Vector3D mirrored(Vector3D p) {
        return new Vector3D(p.getX(), -p.getY(), p.getZ());
    }

    private int number(Vector3D p) {
        Point point = Point.of(p);
        Integer known = numbers.get(point);
        if (known != null) {
            return known;
        }
        int next = numbers.size();
        if (3 * next == xyz.length) {
            xyz = Arrays.copyOf(xyz, 2 * xyz.length);
        }
        xyz[3 * next] = point.x();
        xyz[3 * next + 1] = point.y();
        xyz[3 * next + 2] = point.z();
        numbers.put(point, next);
        return next;
    }
}
