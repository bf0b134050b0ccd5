package trimwright.mesh;

import java.util.Arrays;

/** Which triangles must be turned over so that neighbours agree on which side is outside. */
final class Orientation {

    /** For each triangle whether it is one of the fewer that disagree with the rest of their shell. */
    final boolean[] turned;
    /** Half-edges over which no turning can make the neighbours agree: the surface has one side only. */
    final int[] impossible;

    private Orientation(boolean[] turned, int[] impossible) {
        this.turned = turned;
        this.impossible = impossible;
    }

    static Orientation of(TriangleMesh mesh, HalfEdges edges) {
        int[] corners = mesh.corners();
        int[] twin = edges.twin;
        int triangles = mesh.triangleCount();
        boolean[] turned = new boolean[triangles];
        boolean[] seen = new boolean[triangles];
        IntList impossible = new IntList(16);
        IntList shell = new IntList(64);
        for (int start = 0; start < triangles; start++) {
            if (seen[start]) {
                continue;
            }
            // The list is both the queue of the walk and, at its end, the whole shell.
            shell.truncate(0);
            shell.add(start);
            seen[start] = true;
            int turnedCount = 0;
            for (int i = 0; i < shell.size(); i++) {
                int t = shell.get(i);
                turnedCount += turned[t] ? 1 : 0;
                for (int h = 3 * t; h < 3 * t + 3; h++) {
                    int other = twin[h];
                    if (other < 0) {
                        continue;
                    }
                    boolean otherTurned = turned[t] ^ HalfEdges.sameWay(corners, h, other);
                    if (!seen[other / 3]) {
                        seen[other / 3] = true;
                        turned[other / 3] = otherTurned;
                        shell.add(other / 3);
                    } else if (turned[other / 3] != otherTurned && h < other) {
                        impossible.add(h);
                    }
                }
            }
            if (2 * turnedCount > shell.size()) {
                for (int i = 0; i < shell.size(); i++) {
                    turned[shell.get(i)] ^= true;
                }
            }
        }
        int[] sorted = Arrays.copyOf(impossible.toArray(), impossible.size());
        Arrays.sort(sorted);
        return new Orientation(turned, sorted);
    }
}
