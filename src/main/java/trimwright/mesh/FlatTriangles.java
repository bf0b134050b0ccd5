package trimwright.mesh;

import java.util.Arrays;

/**
 * Does away with triangles whose vertices lie in a line, without moving a vertex or opening an edge: the neighbour on the
 * longest side is cut in two at the vertex that lies on it. At a border the triangle is simply left out, which
 * leaves the border where it was.
 */
final class FlatTriangles {

    /** A row of flat triangles needs a pass for each. */
    private static final int MOST_PASSES = 16;

    private FlatTriangles() {}

    /** The mesh without flat triangles, as far as they can go; the same object where there are none that can. */
    static TriangleMesh mended(TriangleMesh mesh) {
        TriangleMesh current = mesh;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            TriangleMesh next = pass(current);
            if (next == current) {
                break;
            }
            current = next;
        }
        return current;
    }

    static int count(TriangleMesh mesh) {
        int count = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            count += Triangles.isFlat(mesh, t) ? 1 : 0;
        }
        return count;
    }

    private static TriangleMesh pass(TriangleMesh mesh) {
        if (count(mesh) == 0) {
            return mesh;
        }
        int[] twin = HalfEdges.of(mesh, SoundnessCheck.withVertexTwice(mesh)).twin;
        int[] corners = mesh.corners().clone();
        EdgeSet edges = new EdgeSet(corners);
        boolean[] touched = new boolean[mesh.triangleCount()];
        boolean[] keep = new boolean[mesh.triangleCount()];
        Arrays.fill(keep, true);
        boolean changed = false;
        for (int t = 0; t < touched.length; t++) {
            if (touched[t] || !Triangles.isFlat(mesh, t)) {
                continue;
            }
            int longest = longestSide(mesh, t);
            int other = twin[longest];
            if (other == HalfEdges.OPEN) {
                keep[t] = false;
                touched[t] = true;
                changed = true;
            } else if (other >= 0
                    && !touched[other / 3]
                    && !HalfEdges.sameWay(mesh.corners(), longest, other)
                    && flip(corners, longest, other, edges)) {
                touched[t] = true;
                touched[other / 3] = true;
                changed = true;
            }
        }
        return changed ? TriangleMesh.owning(mesh.xyz(), corners).only(keep) : mesh;
    }

    /** Turns the edge between two triangles to join their other two vertices; false where such an edge is there already. */
    private static boolean flip(int[] corners, int h, int other, EdgeSet edges) {
        int c = corners[h];
        int a = corners[HalfEdges.next(h)];
        int b = corners[HalfEdges.next(HalfEdges.next(h))];
        int d = corners[HalfEdges.next(HalfEdges.next(other))];
        if (b == d || edges.contains(b, d)) {
            return false;
        }
        edges.add(b, d);
        set(corners, h / 3, a, b, d);
        set(corners, other / 3, b, c, d);
        return true;
    }

    private static void set(int[] corners, int t, int a, int b, int c) {
        corners[3 * t] = a;
        corners[3 * t + 1] = b;
        corners[3 * t + 2] = c;
    }

    private static int longestSide(TriangleMesh mesh, int t) {
        int longest = 3 * t;
        double most = -1;
        for (int h = 3 * t; h < 3 * t + 3; h++) {
            double length =
                    OpenLoops.distance(mesh.xyz(), 3 * mesh.corners()[h], 3 * mesh.corners()[HalfEdges.next(h)]);
            if (length > most) {
                most = length;
                longest = h;
            }
        }
        return longest;
    }
}
