package trimwright.immersion;

import java.util.Arrays;

/**
 * Where an upright line meets a mesh. Neighbouring triangles judge their common edge by the same bits, so that a line through an edge meets exactly
 * one of them and inside and outside always alternate in a closed mesh.
 */
public final class Column {

    private double[] heights = new double[16];
    private int[] turns = new int[16];
    private int count;

    /** The crossings of one line, lowest first; the object may be used again for the next line. */
    public Column through(MeshTree tree, double xMm, double yMm) {
        count = 0;
        double x = xMm - tree.originX;
        double y = yMm - tree.originY;
        int node = 0;
        while (node < tree.skip.length) {
            int at = node * MeshTree.STRIDE;
            if (Math.abs(x - tree.nodes[at]) > tree.nodes[at + 3] + tree.margin
                    || Math.abs(y - tree.nodes[at + 1]) > tree.nodes[at + 4] + tree.margin) {
                node = tree.skip[node];
                continue;
            }
            if (tree.first[node] >= 0) {
                int end = 3 * tree.leafEnd(tree.first[node]);
                for (int k = 3 * tree.first[node]; k < end; k += 3) {
                    cross(tree.xyz, tree.corners[k], tree.corners[k + 1], tree.corners[k + 2], x, y, tree.originZ);
                }
            }
            node++;
        }
        sort();
        return this;
    }

    /** How often the line meets the mesh. */
    public int count() {
        return count;
    }

    /** Height of a crossing, mm. */
    public double heightMm(int i) {
        return heights[i];
    }

    /** +1 where the line, going up, enters the solid; -1 where it leaves. */
    public int turn(int i) {
        return turns[i];
    }

    private void cross(double[] p, int a, int b, int c, double x, double y, double originZ) {
        double ab = side(p, a, b, x, y);
        double bc = side(p, b, c, x, y);
        double ca = side(p, c, a, x, y);
        boolean up = ab > 0 && bc > 0 && ca > 0;
        boolean down = ab < 0 && bc < 0 && ca < 0;
        if (!up && !down) {
            return;
        }
        double sum = ab + bc + ca;
        double z = (bc * p[a + 2] + ca * p[b + 2] + ab * p[c + 2]) / sum;
        if (count == heights.length) {
            heights = Arrays.copyOf(heights, 2 * count);
            turns = Arrays.copyOf(turns, 2 * count);
        }
        heights[count] = z + originZ;
        turns[count++] = up ? -1 : 1;
    }

    /** Twice the area of (a, b, point), the same bits but for the sign when the edge is named the other way round. */
    private static double side(double[] p, int a, int b, double x, double y) {
        return isBefore(p, a, b) ? edge(p, a, b, x, y) : -edge(p, b, a, x, y);
    }

    /** By place, since each leaf of the tree has vertices of its own. */
    private static boolean isBefore(double[] p, int a, int b) {
        if (p[a] != p[b]) {
            return p[a] < p[b];
        }
        if (p[a + 1] != p[b + 1]) {
            return p[a + 1] < p[b + 1];
        }
        return p[a + 2] < p[b + 2];
    }

    private static double edge(double[] p, int a, int b, double x, double y) {
        double value = (p[a] - x) * (p[b + 1] - y) - (p[b] - x) * (p[a + 1] - y);
        // A point on the line of an edge belongs to its left, whoever asks.
        return value == 0 ? Double.MIN_VALUE : value;
    }

    private void sort() {
        for (int i = 1; i < count; i++) {
            double h = heights[i];
            int t = turns[i];
            int j = i - 1;
            while (j >= 0 && heights[j] > h) {
                heights[j + 1] = heights[j];
                turns[j + 1] = turns[j];
                j--;
            }
            heights[j + 1] = h;
            turns[j + 1] = t;
        }
    }
}
