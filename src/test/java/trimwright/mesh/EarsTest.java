package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A polygon of n corners falls into n − 2 triangles that are all turned as it is and together have its area, by the shoelace formula: so none of
 * them lies outside or over another.
 */
class EarsTest {

    private static double shoelace(double[] flat, int... corners) {
        double twice = 0;
        for (int i = 0; i < corners.length; i++) {
            int a = 2 * corners[i];
            int b = 2 * corners[(i + 1) % corners.length];
            twice += flat[a] * flat[b + 1] - flat[b] * flat[a + 1];
        }
        return twice / 2;
    }

    private static int[] all(int count) {
        int[] ring = new int[count];
        for (int i = 0; i < count; i++) {
            ring[i] = i;
        }
        return ring;
    }

    private static void assertCut(double... flat) {
        int corners = flat.length / 2;
        int[] ring = all(corners);
        IntList out = new IntList(16);
        assertTrue(new Ears(flat, ring, corners).cut(out));
        assertEquals(3 * (corners - 2), out.size());
        double area = shoelace(flat, ring);
        double sum = 0;
        boolean[] used = new boolean[corners];
        for (int k = 0; k < out.size(); k += 3) {
            double triangle = shoelace(flat, out.get(k), out.get(k + 1), out.get(k + 2));
            assertTrue(triangle >= -1e-12 * area, "a triangle of " + triangle);
            sum += triangle;
            for (int i = k; i < k + 3; i++) {
                used[out.get(i)] = true;
            }
        }
        assertEquals(area, sum, 1e-9 * area);
        for (boolean corner : used) {
            assertTrue(corner);
        }
    }

    /** Round a middle with any radii: corners bend in and out. */
    @Test
    void stars() {
        Random random = new Random(1);
        for (int corners = 3; corners < 60; corners++) {
            double[] flat = new double[2 * corners];
            for (int i = 0; i < corners; i++) {
                double angle = 2 * Math.PI * i / corners;
                double radius = 1 + 30 * random.nextDouble();
                flat[2 * i] = 500 + radius * Math.cos(angle);
                flat[2 * i + 1] = -200 + radius * Math.sin(angle);
            }
            assertCut(flat);
        }
    }

    /** A comb with long teeth: nearly every corner's triangle has others in it at first. */
    @Test
    void combs() {
        for (int teeth = 1; teeth < 20; teeth++) {
            double[] flat = new double[2 * (2 * teeth + 3)];
            int next = 0;
            flat[next++] = 0;
            flat[next++] = -1;
            flat[next++] = 2 * teeth;
            flat[next++] = -1;
            for (int i = 2 * teeth; i >= 0; i--) {
                flat[next++] = i;
                flat[next++] = i % 2 == 0 ? 100 : 0;
            }
            assertCut(flat);
        }
    }

    /** A band wound round itself three times. */
    @Test
    void aSpiral() {
        int half = 40;
        double[] flat = new double[4 * half];
        for (int i = 0; i < half; i++) {
            double angle = 6 * Math.PI * i / half;
            double radius = 10 + 3 * angle;
            flat[2 * i] = (radius + 4) * Math.cos(angle);
            flat[2 * i + 1] = (radius + 4) * Math.sin(angle);
            int back = 2 * half - 1 - i;
            flat[2 * back] = radius * Math.cos(angle);
            flat[2 * back + 1] = radius * Math.sin(angle);
        }
        assertCut(flat);
    }

    /** Corners on straight sides take triangles without area away, or serve as corners of others. */
    @Test
    void cornersOnStraightSides() {
        assertCut(0, 0, 1, 0, 2, 0, 3, 0, 3, 1, 3, 2, 2, 2, 1, 2, 0, 2, 0, 1);
        assertCut(0, 0, 4, 0, 4, 4, 2, 4, 2, 2, 2, 1, 1, 1, 0, 1);
    }

    /** A slit from the rim to a hole, whose two banks lie on each other: as writers of files cut holes open. */
    @Test
    void aSlitToAHole() {
        assertCut(0, 0, 6, 0, 6, 6, 0, 6, 0, 0, 2, 2, 2, 4, 4, 4, 4, 2, 2, 2);
    }

    /** A bow tie is no polygon; it is told, and still no corner is lost. */
    @Test
    void aRingThatCrossesItself() {
        double[] flat = {0, 0, 4, 4, 4, 0, 0, 4, -2, 2};
        IntList out = new IntList(16);
        assertFalse(new Ears(flat, all(5), 5).cut(out));
        assertEquals(9, out.size());
    }

    /** The ring says which numbers the corners have in the mesh. */
    @Test
    void cornersGoByTheNumbersOfTheRing() {
        IntList out = new IntList(16);
        assertTrue(new Ears(new double[] {0, 0, 1, 0, 1, 1, 0, 1}, new int[] {70, 80, 90, 100}, 4).cut(out));
        assertEquals(6, out.size());
        for (int i = 0; i < 6; i++) {
            assertTrue(out.get(i) >= 70 && out.get(i) % 10 == 0, "corner " + out.get(i));
        }
    }
}
