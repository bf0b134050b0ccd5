package trimwright.mesh;

import java.util.Arrays;

/**
 * Which sides of triangles lie on each other: the half-edge {@code h = 3t + k} runs from corner k of triangle t to the next
 * corner. In a sound closed surface every half-edge has one partner, which runs the other way.
 *
 * <p>Half-edges are put into buckets by their lower vertex and sorted there by the higher one, so that those on one edge
 * become neighbours: flat arrays, linear time for any sensible mesh.
 */
final class HalfEdges {

    /** In {@link #twin}: nothing lies on this edge but this one triangle. */
    static final int OPEN = -1;
    /** In {@link #twin}: more than two triangles meet here. */
    static final int MANY = -2;
    /** In {@link #twin}: the triangle takes no part. */
    static final int SKIPPED = -3;

    private static final int SMALL_BUCKET = 24;

    /** For each half-edge its partner, which may run either way, or one of the constants above. */
    final int[] twin;
    /** The half-edges without a partner, ascending. */
    final int[] open;
    /** Of each two partners that run the same way the lower, ascending. */
    final int[] disagreeing;
    /** The edges with more than two triangles, one after the other: how many, then their half-edges, ascending. */
    final int[] many;

    private HalfEdges(int[] twin, int[] open, int[] disagreeing, int[] many) {
        this.twin = twin;
        this.open = open;
        this.disagreeing = disagreeing;
        this.many = many;
    }

    /** @param skipped triangles to leave out, which must include those that have a vertex twice */
    static HalfEdges of(TriangleMesh mesh, boolean[] skipped) {
        int[] corners = mesh.corners();
        int[] twin = new int[corners.length];
        // Where the bucket of each vertex starts; while filling, where its next entry goes.
        int[] next = new int[mesh.vertexCount() + 1];
        for (int t = 0; t < skipped.length; t++) {
            if (!skipped[t]) {
                int a = corners[3 * t];
                int b = corners[3 * t + 1];
                int c = corners[3 * t + 2];
                next[Math.min(a, b)]++;
                next[Math.min(b, c)]++;
                next[Math.min(c, a)]++;
            }
        }
        int sum = 0;
        for (int v = 0; v < next.length; v++) {
            int size = next[v];
            next[v] = sum;
            sum += size;
        }
        // Higher vertex, half-edge, and whether it runs upward, from the highest bit down: sorting groups them by edge.
        long[] entries = new long[sum];
        for (int t = 0; t < skipped.length; t++) {
            int h = 3 * t;
            if (skipped[t]) {
                twin[h] = SKIPPED;
                twin[h + 1] = SKIPPED;
                twin[h + 2] = SKIPPED;
                continue;
            }
            int a = corners[h];
            int b = corners[h + 1];
            int c = corners[h + 2];
            entries[next[Math.min(a, b)]++] = entry(a, b, h);
            entries[next[Math.min(b, c)]++] = entry(b, c, h + 1);
            entries[next[Math.min(c, a)]++] = entry(c, a, h + 2);
        }
        return paired(entries, next, twin);
    }

    /** @param ends where the bucket of each vertex ends */
    private static HalfEdges paired(long[] entries, int[] ends, int[] twin) {
        Pairing pairing = new Pairing(entries, twin);
        int start = 0;
        for (int end : ends) {
            pairing.bucket(start, end);
            start = end;
        }
        return new HalfEdges(twin, sorted(pairing.open), sorted(pairing.disagreeing), pairing.many.toArray());
    }

    /**
     * Pairs the half-edges of one bucket after the other. A bucket a call: as one loop over all buckets, the optimising compiler of Java 17.0.15 lost
     * the lists now and then (a null within them), and a short method is compiled sooner besides.
     */
    private static final class Pairing {

        private final long[] entries;
        private final int[] twin;
        private final IntList open = new IntList(16);
        private final IntList disagreeing = new IntList(16);
        private final IntList many = new IntList(16);

        Pairing(long[] entries, int[] twin) {
            this.entries = entries;
            this.twin = twin;
        }

        void bucket(int start, int end) {
            sort(entries, start, end);
            int i = start;
            while (i < end) {
                long edge = entries[i] >>> 32;
                int j = i + 1;
                while (j < end && entries[j] >>> 32 == edge) {
                    j++;
                }
                pair(i, j);
                i = j;
            }
        }

        /** The half-edges of one edge. */
        private void pair(int from, int to) {
            int h = halfEdge(entries[from]);
            if (to - from == 2) {
                int other = halfEdge(entries[from + 1]);
                twin[h] = other;
                twin[other] = h;
                if (((entries[from] ^ entries[from + 1]) & 1) == 0) {
                    disagreeing.add(h);
                }
            } else if (to - from == 1) {
                twin[h] = OPEN;
                open.add(h);
            } else {
                many.add(to - from);
                for (int k = from; k < to; k++) {
                    twin[halfEdge(entries[k])] = MANY;
                    many.add(halfEdge(entries[k]));
                }
            }
        }
    }

    /** The half-edge that follows in its triangle. */
    static int next(int h) {
        return h % 3 == 2 ? h - 2 : h + 1;
    }

    /** Whether two half-edges on one edge run the same way. */
    static boolean sameWay(int[] corners, int h, int other) {
        return corners[h] == corners[other];
    }

    private static long entry(int from, int to, int h) {
        return from < to ? (long) to << 32 | (long) h << 1 | 1 : (long) from << 32 | (long) h << 1;
    }

    private static int halfEdge(long entry) {
        return (int) entry >>> 1;
    }

    private static void sort(long[] entries, int start, int end) {
        if (end - start > SMALL_BUCKET) {
            Arrays.sort(entries, start, end);
            return;
        }
        for (int i = start + 1; i < end; i++) {
            long entry = entries[i];
            int j = i - 1;
            while (j >= start && entries[j] > entry) {
                entries[j + 1] = entries[j];
                j--;
            }
            entries[j + 1] = entry;
        }
    }

    private static int[] sorted(IntList list) {
        int[] result = list.toArray().clone();
        Arrays.sort(result, 0, list.size());
        return list.size() == result.length ? result : Arrays.copyOf(result, list.size());
    }
}
