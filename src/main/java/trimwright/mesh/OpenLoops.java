package trimwright.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The borders of an open mesh: its open half-edges chained into loops that pass no vertex twice. */
final class OpenLoops {

    private final TriangleMesh mesh;
    private final int[] open;
    private final AtVertex byStart;
    private final AtVertex byEnd;
    private final boolean[] used;
    /** Per vertex 1 + its position on the path at hand, or 0. */
    private final int[] onPath;

    private final IntList path = new IntList(16);
    private final List<Loop> loops = new ArrayList<>();

    /**
     * A border.
     *
     * @param halfEdges in the order of the walk, which runs as the triangles do, so that the hole lies to the other side
     * @param isRing whether it comes back to its start, always along the way of its half-edges
     * @param length summed over its edges
     * @param place the lowest of its half-edges, at which it is shown
     */
    record Loop(int[] halfEdges, boolean isRing, double length, int place) {}

    private OpenLoops(TriangleMesh mesh, int[] open) {
        this.mesh = mesh;
        this.open = open;
        this.used = new boolean[open.length];
        this.byStart = new AtVertex(false);
        this.byEnd = new AtVertex(true);
        this.onPath = new int[mesh.vertexCount()];
    }

    /** All borders, the longest first, equally long ones by their place. */
    static List<Loop> of(TriangleMesh mesh, HalfEdges edges) {
        OpenLoops walk = new OpenLoops(mesh, edges.open);
        for (int i = 0; i < walk.open.length; i++) {
            if (!walk.used[i]) {
                walk.walkFrom(i);
            }
        }
        walk.loops.sort(
                Comparator.comparingDouble((Loop loop) -> -loop.length()).thenComparingInt(Loop::place));
        return walk.loops;
    }

    private void walkFrom(int first) {
        int[] corners = mesh.corners();
        int edge = first;
        int from = corners[open[first]];
        while (edge >= 0) {
            used[edge] = true;
            path.add(open[edge]);
            onPath[from] = path.size();
            int h = open[edge];
            int to = corners[h] == from ? corners[HalfEdges.next(h)] : corners[h];
            if (onPath[to] > 0) {
                cutOff(onPath[to] - 1, true);
            }
            from = to;
            edge = byStart.unused(from);
            if (edge < 0) {
                edge = byEnd.unused(from);
            }
        }
        if (path.size() > 0) {
            cutOff(0, false);
        }
    }

    /** Takes the end of the path, from a position on, as a loop of its own. */
    private void cutOff(int position, boolean comesBack) {
        int[] corners = mesh.corners();
        int[] halfEdges = new int[path.size() - position];
        for (int i = 0; i < halfEdges.length; i++) {
            halfEdges[i] = path.get(position + i);
        }
        boolean ring = comesBack && halfEdges.length > 2;
        double length = 0;
        int place = halfEdges[0];
        for (int i = 0; i < halfEdges.length; i++) {
            int h = halfEdges[i];
            int a = corners[h];
            int b = corners[HalfEdges.next(h)];
            onPath[a] = onPath[a] > position ? 0 : onPath[a];
            onPath[b] = onPath[b] > position ? 0 : onPath[b];
            ring &= b == corners[halfEdges[(i + 1) % halfEdges.length]];
            length += distance(mesh.xyz(), 3 * a, 3 * b);
            place = Math.min(place, h);
        }
        loops.add(new Loop(halfEdges, ring, length, place));
        path.truncate(position);
    }

    static double distance(double[] xyz, int a, int b) {
        double dx = xyz[b] - xyz[a];
        double dy = xyz[b + 1] - xyz[a + 1];
        double dz = xyz[b + 2] - xyz[a + 2];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** Finds unused half-edges by the vertex at which they start, or end. */
    private final class AtVertex {

        private final boolean atEnd;
        /** Indices into {@link #open}, by vertex and then ascending. */
        private final int[] sorted;
        /** For the first position of each vertex, how many of its half-edges are known to be used. */
        private final int[] usedUp;

        AtVertex(boolean atEnd) {
            this.atEnd = atEnd;
            long[] order = new long[open.length];
            for (int i = 0; i < open.length; i++) {
                order[i] = (long) vertexOf(i) << 32 | i;
            }
            Arrays.sort(order);
            sorted = Arrays.stream(order).mapToInt(entry -> (int) entry).toArray();
            usedUp = new int[open.length];
        }

        /** Index of the lowest unused one at the vertex; −1 where there is none. */
        int unused(int vertex) {
            int low = 0;
            int high = sorted.length;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (vertexOf(sorted[middle]) < vertex) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            for (int i = low < sorted.length ? low + usedUp[low] : low;
                    i < sorted.length && vertexOf(sorted[i]) == vertex;
                    i++) {
                if (!used[sorted[i]]) {
                    return sorted[i];
                }
                usedUp[low]++;
            }
            return -1;
        }

        private int vertexOf(int index) {
            int h = open[index];
            return mesh.corners()[atEnd ? HalfEdges.next(h) : h];
        }
    }
}
