package trimwright.mesh;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * Looks for triangles of a mesh that pass through each other. A uniform grid finds the pairs that are near enough: triangles
 * are listed in each cell that their box touches, and a pair is tested in the one cell where the common part of their boxes
 * begins. Where the cells hold more pairs than the limit, only every k-th pair is looked at.
 */
final class Crossings {

    /** Pairs in one cell whose boxes are compared: a minute's worth of a bad mesh is cut to a second or so. */
    static final long MOST_PAIRS = 200_000_000L;

    /** Pairs whose boxes meet and which are tested before every further one is passed over: some seconds of a heap of triangles. */
    private static final long MOST_TESTS = 5_000_000L;

    /** The same for each triangle of a large mesh: a sound one has six pairs that share a corner, and some more that come near. */
    private static final long MOST_TESTS_EACH = 20;

    private static final double CELL_IN_TRIANGLES = 3;
    private static final int MOST_KEPT = 100_000;

    private final Shells shells;
    private final CrossingTest test;
    private final double[] xyz;
    private final int[] corners;
    private final BoxGrid grid;

    private long pairs;
    private long pairsTested;
    private long tests;
    private final long testsAtOnce;
    private long testsAllowed;
    /** Of the pairs in a cell one in so many is looked at. */
    private int stride;

    private long crossingsWithin;
    private long[] within = new long[16];
    private int withinCount;
    private final Map<Long, Between> between = new TreeMap<>();

    /** Crossings between two shells: how many pairs of triangles, and the first pair. */
    static final class Between {
        private long count;
        private long first = Long.MAX_VALUE;

        long count() {
            return count;
        }

        int triangle() {
            return (int) (first >>> 32);
        }

        int other() {
            return (int) first;
        }
    }

    private Crossings(TriangleMesh mesh, Shells shells, double tolerance) {
        this.shells = shells;
        this.xyz = mesh.xyz();
        this.corners = mesh.corners();
        this.test = new CrossingTest(xyz, tolerance);
        testsAtOnce = Math.max(MOST_TESTS, MOST_TESTS_EACH * mesh.triangleCount());
        testsAllowed = testsAtOnce;
        double cell = CELL_IN_TRIANGLES * Math.sqrt(mesh.area() / mesh.triangleCount());
        this.grid = new BoxGrid(mesh.triangleCount(), (t, box) -> box(t, box, 0), mesh.bounds(), cell, -1);
    }

    /**
     * @param tolerance distance below which triangles touch rather than cross
     * @param mostPairs how many pairs may be looked at
     */
    static Crossings of(TriangleMesh mesh, Shells shells, double tolerance, long mostPairs) {
        Crossings result = new Crossings(mesh, shells, tolerance);
        result.search(mostPairs);
        Arrays.sort(result.within, 0, result.withinCount);
        return result;
    }

    /** How many pairs share a cell. */
    long pairs() {
        return pairs;
    }

    /** How many of them were looked at. */
    long pairsTested() {
        return pairsTested;
    }

    /** How many pairs of triangles of one shell cross. */
    long crossingsWithin() {
        return crossingsWithin;
    }

    /** Of those pairs that were kept, which are all but in a wreck, the k-th by its lower triangle. */
    int withinTriangle(int k) {
        return (int) (within[k] >>> 32);
    }

    int withinOther(int k) {
        return (int) within[k];
    }

    int withinKept() {
        return withinCount;
    }

    /** The pairs of shells that cross, keyed by lower number × 2³² + higher number, ascending. */
    Map<Long, Between> between() {
        return between;
    }

    private void search(long mostPairs) {
        int largest = 0;
        for (int cell = 0; cell < grid.cellCount(); cell++) {
            long size = grid.start(cell + 1) - grid.start(cell);
            pairs += size * (size - 1) / 2;
            largest = Math.max(largest, (int) size);
        }
        stride = (int) Math.min(Integer.MAX_VALUE / 2, Math.max(1, (pairs + mostPairs - 1) / mostPairs));
        double[] boxes = new double[6 * largest];
        for (int cell = 0; cell < grid.cellCount(); cell++) {
            int start = grid.start(cell);
            int size = grid.start(cell + 1) - start;
            for (int i = 0; i < size; i++) {
                box(grid.entry(start + i), boxes, 6 * i);
            }
            search(cell, size, boxes);
        }
    }

    private void search(int cell, int size, double[] boxes) {
        for (int i = 0; i < size; i++) {
            if (tests > testsAllowed) {
                stride = Math.min(2 * stride, Integer.MAX_VALUE / 4);
                testsAllowed += testsAtOnce;
            }
            int at = 6 * i;
            for (int j = i + 1 + i % stride; j < size; j += stride) {
                int other = 6 * j;
                pairsTested++;
                if (boxes[at] <= boxes[other + 3]
                        && boxes[other] <= boxes[at + 3]
                        && boxes[at + 1] <= boxes[other + 4]
                        && boxes[other + 1] <= boxes[at + 4]
                        && boxes[at + 2] <= boxes[other + 5]
                        && boxes[other + 2] <= boxes[at + 5]
                        && cell
                                == grid.cell(
                                        Math.max(boxes[at], boxes[other]),
                                        Math.max(boxes[at + 1], boxes[other + 1]),
                                        Math.max(boxes[at + 2], boxes[other + 2]))) {
                    test(grid.entry(grid.start(cell) + i), grid.entry(grid.start(cell) + j));
                }
            }
        }
    }

    private void box(int t, double[] boxes, int at) {
        for (int k = 0; k < 3; k++) {
            double a = xyz[3 * corners[3 * t] + k];
            double b = xyz[3 * corners[3 * t + 1] + k];
            double c = xyz[3 * corners[3 * t + 2] + k];
            boxes[at + k] = Math.min(a, Math.min(b, c));
            boxes[at + 3 + k] = Math.max(a, Math.max(b, c));
        }
    }

    private void test(int t, int other) {
        tests++;
        int a = corners[3 * t];
        int b = corners[3 * t + 1];
        int c = corners[3 * t + 2];
        int p = corners[3 * other];
        int q = corners[3 * other + 1];
        int r = corners[3 * other + 2];
        int shared = (a == p || a == q || a == r ? 1 : 0)
                + (b == p || b == q || b == r ? 1 : 0)
                + (c == p || c == q || c == r ? 1 : 0);
        if (shared < 2 && test.cross(3 * a, 3 * b, 3 * c, 3 * p, 3 * q, 3 * r)) {
            note(t, other);
        }
    }

    private void note(int t, int other) {
        long pair = (long) Math.min(t, other) << 32 | Math.max(t, other);
        int shell = shells.shellOf(t);
        int otherShell = shells.shellOf(other);
        if (shell == otherShell) {
            crossingsWithin++;
            if (withinCount < MOST_KEPT) {
                if (withinCount == within.length) {
                    within = Arrays.copyOf(within, 2 * withinCount);
                }
                within[withinCount++] = pair;
            }
            return;
        }
        long key = (long) Math.min(shell, otherShell) << 32 | Math.max(shell, otherShell);
        if (between.size() < MOST_KEPT || between.containsKey(key)) {
            Between crossings = between.computeIfAbsent(key, k -> new Between());
            crossings.count++;
            crossings.first = Math.min(crossings.first, pair);
        }
    }
}
