package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Triangles through each other, against whole-number arithmetic: the point where an edge meets the other's plane, as a fraction, and on which side of the
 * other's edges it lies. All pairs are tried, where the search tries those that share a cell.
 */
class CrossingsTest {

    /** Whether an edge of one triangle meets the inside of the other, neither end of it in the other's plane; a triangle without area has no inside and no plane. */
    private static boolean crosses(long[][] one, long[][] other) {
        if (isLine(one) || isLine(other)) {
            return false;
        }
        for (int k = 0; k < 3; k++) {
            if (meets(one[k], one[(k + 1) % 3], other) || meets(other[k], other[(k + 1) % 3], one)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isLine(long[][] t) {
        long[] normal = cross(minus(t[1], t[0]), minus(t[2], t[0]));
        return dot(normal, normal) == 0;
    }

    private static boolean meets(long[] p, long[] q, long[][] t) {
        long[] normal = cross(minus(t[1], t[0]), minus(t[2], t[0]));
        long above = dot(normal, minus(p, t[0]));
        long below = dot(normal, minus(q, t[0]));
        if (above == 0 || below == 0 || above > 0 == below > 0) {
            return false;
        }
        // The point is p + (q − p) above / (above − below); everything times the denominator.
        long denominator = above - below;
        for (int k = 0; k < 3; k++) {
            long[] edge = minus(t[(k + 1) % 3], t[k]);
            long[] from = new long[3];
            for (int i = 0; i < 3; i++) {
                from[i] = denominator * (p[i] - t[k][i]) + above * (q[i] - p[i]);
            }
            if (dot(normal, cross(edge, from)) * Long.signum(denominator) <= 0) {
                return false;
            }
        }
        return true;
    }

    private static long[] minus(long[] a, long[] b) {
        return new long[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static long[] cross(long[] a, long[] b) {
        return new long[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static long dot(long[] a, long[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static long[][] triangle(TriangleMesh mesh, int t) {
        long[][] result = new long[3][3];
        for (int i = 0; i < 9; i++) {
            result[i / 3][i % 3] = (long) mesh.xyz()[3 * mesh.corners()[3 * t + i / 3] + i % 3];
        }
        return result;
    }

    @Test
    void twoTrianglesOfWholeNumbers() {
        Random random = new Random(3);
        int crossing = 0;
        for (int i = 0; i < 20_000; i++) {
            int range = 2 + i % 5;
            double[] xyz = IntStream.range(0, 18)
                    .mapToDouble(k -> random.nextInt(range))
                    .toArray();
            TriangleMesh mesh = TriangleMesh.owning(xyz, new int[] {0, 1, 2, 3, 4, 5});
            boolean truth = crosses(triangle(mesh, 0), triangle(mesh, 1));
            assertEquals(truth, new CrossingTest(xyz, 0).cross(0, 3, 6, 9, 12, 15));
            crossing += truth ? 1 : 0;
        }
        assertTrue(crossing > 1000, "only " + crossing + " of them cross");
    }

    /** An edge that comes 0.9 and 1.1 of the tolerance through a triangle, or that much inside its border, however the triangles are written down. */
    @Test
    void nearerThanTheToleranceThingsTouch() {
        int[][] orders = {{0, 1, 2}, {1, 2, 0}, {2, 0, 1}, {0, 2, 1}, {2, 1, 0}, {1, 0, 2}};
        double tolerance = 0.5;
        for (double share : new double[] {0.9, 1.1}) {
            double d = share * tolerance;
            double inside = 50 - d * Math.sqrt(0.5);
            double[][] thorns = {
                // Through the middle, the tip so far below; then right through, one edge so far from each side.
                {30, 30, -d, 20, 20, 70, 40, 20, 70},
                {30, d, -50, 30, d, 70, 30, -90, 70},
                {d, 30, -50, d, 30, 70, -90, 30, 70},
                {inside, inside, -50, inside, inside, 90, 130, 130, 20}
            };
            for (double[] thorn : thorns) {
                double[] all = {0, 0, 0, 100, 0, 0, 0, 100, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
                System.arraycopy(thorn, 0, all, 9, 9);
                for (int turn = 0; turn < 3; turn++) {
                    double[] xyz = new double[18];
                    for (int i = 0; i < 18; i++) {
                        xyz[i / 3 * 3 + (i + turn) % 3] = all[i];
                    }
                    CrossingTest test = new CrossingTest(xyz, tolerance);
                    for (int[] a : orders) {
                        for (int[] b : orders) {
                            assertEquals(
                                    share > 1,
                                    test.cross(3 * a[0], 3 * a[1], 3 * a[2], 9 + 3 * b[0], 9 + 3 * b[1], 9 + 3 * b[2]));
                            assertEquals(
                                    share > 1,
                                    test.cross(9 + 3 * b[0], 9 + 3 * b[1], 9 + 3 * b[2], 3 * a[0], 3 * a[1], 3 * a[2]));
                        }
                    }
                }
            }
        }
    }

    /** Small triangles strewn in a box, each a shell of its own. */
    private static TriangleMesh strewn(int count, int range, int size, long seed) {
        Random random = new Random(seed);
        double[] xyz = new double[9 * count];
        for (int t = 0; t < count; t++) {
            for (int k = 0; k < 3; k++) {
                int from = random.nextInt(range);
                for (int v = 0; v < 3; v++) {
                    xyz[9 * t + 3 * v + k] = from + random.nextInt(size);
                }
            }
        }
        return TriangleMesh.owning(xyz, IntStream.range(0, 3 * count).toArray());
    }

    private static Crossings search(TriangleMesh mesh, long mostPairs) {
        return Crossings.of(mesh, Soundness.quick(mesh).numbering(), 0, mostPairs);
    }

    @Test
    void allPairsOfStrewnTrianglesAreFound() {
        TriangleMesh mesh = strewn(500, 30, 8, 11);
        Shells shells = Soundness.quick(mesh).numbering();
        Map<Long, Long> truth = new TreeMap<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int other = t + 1; other < mesh.triangleCount(); other++) {
                if (crosses(triangle(mesh, t), triangle(mesh, other))) {
                    long shell = Math.min(shells.shellOf(t), shells.shellOf(other));
                    long otherShell = Math.max(shells.shellOf(t), shells.shellOf(other));
                    truth.put(shell << 32 | otherShell, (long) t << 32 | other);
                }
            }
        }
        assertTrue(truth.size() > 200, "only " + truth.size());
        Crossings found = search(mesh, Crossings.MOST_PAIRS);
        assertEquals(truth.keySet(), found.between().keySet());
        truth.forEach((key, pair) -> {
            Crossings.Between between = found.between().get(key);
            assertEquals(1, between.count());
            assertEquals(pair, (long) between.triangle() << 32 | between.other());
        });
        assertEquals(0, found.crossingsWithin());
        assertEquals(found.pairs(), found.pairsTested());
    }

    /** A ball whose points were pushed about, and the same ball moved by a little: within each, and of the two the number and the first. */
    @Test
    void aCrumpledBallGoesThroughItselfAndAnother() {
        Random random = new Random(5);
        TriangleMesh ball = Shapes.ball(0, 0, 0, 12, 12, 16);
        for (int i = 0; i < ball.xyz().length; i++) {
            ball.xyz()[i] = Math.rint(ball.xyz()[i]) + random.nextInt(5) - 2;
        }
        TriangleMesh mesh = Shapes.together(ball, Shapes.moved(ball, 9, 3, 2));
        Shells shells = Soundness.quick(mesh).numbering();
        TreeSet<Long> within = new TreeSet<>();
        TreeSet<Long> between = new TreeSet<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int other = t + 1; other < mesh.triangleCount(); other++) {
                if (shared(mesh, t, other) < 2 && crosses(triangle(mesh, t), triangle(mesh, other))) {
                    (shells.shellOf(t) == shells.shellOf(other) ? within : between).add((long) t << 32 | other);
                }
            }
        }
        assertTrue(within.size() > 100 && between.size() > 100, within.size() + " and " + between.size());
        Crossings found = search(mesh, Crossings.MOST_PAIRS);
        assertEquals(within.size(), found.crossingsWithin());
        assertEquals(within.size(), found.withinKept());
        int k = 0;
        for (long pair : within) {
            assertEquals(pair, (long) found.withinTriangle(k) << 32 | found.withinOther(k));
            k++;
        }
        Crossings.Between one = found.between().get(1L << 32 | 2);
        assertEquals(1, found.between().size());
        assertEquals(between.size(), one.count());
        assertEquals((long) between.first(), (long) one.triangle() << 32 | one.other());
    }

    private static int shared(TriangleMesh mesh, int t, int other) {
        int shared = 0;
        for (int i = 0; i < 9; i++) {
            shared += mesh.corners()[3 * t + i / 3] == mesh.corners()[3 * other + i % 3] ? 1 : 0;
        }
        return shared;
    }

    /** One pair fewer than there are: every second is looked at, of a heap in one cell and of one in many. */
    @Test
    void aLimitIsKeptToAboutAPairInAThousand() {
        for (TriangleMesh mesh : new TriangleMesh[] {strewn(300, 1, 9, 1), strewn(3000, 20, 9, 1)}) {
            long pairs = search(mesh, Long.MAX_VALUE / 4).pairs();
            assertEquals(pairs, search(mesh, pairs).pairsTested());
            assertEquals(pairs / 2.0, search(mesh, pairs - 1).pairsTested(), 0.05 * pairs);
            assertEquals(pairs / 7.0, search(mesh, pairs / 7 + 1).pairsTested(), 0.03 * pairs);
            assertFalse(search(mesh, pairs / 7).between().isEmpty());
        }
        assertEquals(300 * 299 / 2, search(strewn(300, 1, 9, 1), 1000).pairs());
    }
}
