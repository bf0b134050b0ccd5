package trimwright.mesh;

/**
 * Triangles that have the same three vertices as an earlier one, turned either way.
 *
 * @param copies the later ones, ascending
 * @param originals for each copy the first triangle with its vertices
 * @param sameWay for each copy whether it is turned as its original is
 */
record Duplicates(IntList copies, IntList originals, IntList sameWay) {

    static Duplicates in(TriangleMesh mesh, HalfEdges edges) {
        int[] corners = mesh.corners();
        boolean[] candidate = new boolean[mesh.triangleCount()];
        int candidates = 0;
        for (int t = 0; t < candidate.length; t++) {
            int a = edges.twin[3 * t];
            int b = edges.twin[3 * t + 1];
            // A copy meets its original on all three edges: either the first two have it for their one partner, or one
            // of them has many.
            candidate[t] = a == HalfEdges.MANY || b == HalfEdges.MANY || (a >= 0 && b >= 0 && a / 3 == b / 3);
            candidates += candidate[t] ? 1 : 0;
        }
        Duplicates result = new Duplicates(new IntList(16), new IntList(16), new IntList(16));
        if (candidates > 0) {
            result.find(corners, candidate, candidates);
        }
        return result;
    }

    /** How many copies are turned as their originals are. */
    int sameWayCount() {
        int count = 0;
        for (int i = 0; i < sameWay.size(); i++) {
            count += sameWay.get(i);
        }
        return count;
    }

    private void find(int[] corners, boolean[] candidate, int candidates) {
        // Equal triples of vertex numbers are found just as equal points are.
        VertexMerger triples = new VertexMerger(candidates);
        IntList first = new IntList(candidates);
        for (int t = 0; t < candidate.length; t++) {
            if (!candidate[t]) {
                continue;
            }
            int a = corners[3 * t];
            int b = corners[3 * t + 1];
            int c = corners[3 * t + 2];
            int least = Math.min(a, Math.min(b, c));
            int most = Math.max(a, Math.max(b, c));
            int triple = triples.add(least, (double) a + b + c - least - most, most);
            if (triple == first.size()) {
                first.add(t);
            } else {
                copies.add(t);
                originals.add(first.get(triple));
                sameWay.add(isCyclicShift(corners, t, first.get(triple)) ? 1 : 0);
            }
        }
    }

    private static boolean isCyclicShift(int[] corners, int t, int other) {
        int k = 0;
        while (corners[3 * other + k] != corners[3 * t]) {
            k++;
        }
        return corners[3 * other + (k + 1) % 3] == corners[3 * t + 1];
    }
}
