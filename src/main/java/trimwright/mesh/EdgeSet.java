package trimwright.mesh;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/** The edges of a mesh, and those that a repair adds, so that none comes to lie on another. */
final class EdgeSet {

    private final long[] edges;
    private final Set<Long> added = new HashSet<>();

    EdgeSet(int[] corners) {
        edges = new long[corners.length];
        for (int h = 0; h < corners.length; h++) {
            edges[h] = edge(corners[h], corners[HalfEdges.next(h)]);
        }
        Arrays.sort(edges);
    }

    boolean contains(int a, int b) {
        return Arrays.binarySearch(edges, edge(a, b)) >= 0 || added.contains(edge(a, b));
    }

    void add(int a, int b) {
        added.add(edge(a, b));
    }

    private static long edge(int a, int b) {
        return (long) Math.min(a, b) << 32 | Math.max(a, b);
    }
}
