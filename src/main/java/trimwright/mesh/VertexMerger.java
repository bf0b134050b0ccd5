package trimwright.mesh;

import java.util.Arrays;

/**
 * Numbers points so that equal coordinates share a number: in the order of first appearance, exact, with −0 equal to 0. An
 * open-addressing hash table of vertex numbers over the coordinates themselves.
 */
final class VertexMerger {

    private double[] xyz;
    private int vertices;
    /** Vertex number + 1, or 0 for a free slot; the length is a power of two. */
    private int[] slots;

    private int shift;
    private int mostVertices;

    VertexMerger(int expectedVertices) {
        xyz = new double[3 * Math.max(16, expectedVertices)];
        allocate(Math.max(16, expectedVertices));
    }

    /** The number of the point; its coordinates must be finite. */
    int add(double rawX, double rawY, double rawZ) {
        // Adding zero turns −0 into 0 and nothing else.
        double x = rawX + 0.0;
        double y = rawY + 0.0;
        double z = rawZ + 0.0;
        int mask = slots.length - 1;
        int slot = slotOf(x, y, z);
        while (slots[slot] != 0) {
            int vertex = slots[slot] - 1;
            if (isAt(vertex, x, y, z)) {
                return vertex;
            }
            slot = (slot + 1) & mask;
        }
        if (vertices == mostVertices) {
            grow();
            return add(x, y, z);
        }
        if (3 * vertices == xyz.length) {
            xyz = Arrays.copyOf(xyz, 3 * Growth.next(vertices));
        }
        xyz[3 * vertices] = x;
        xyz[3 * vertices + 1] = y;
        xyz[3 * vertices + 2] = z;
        slots[slot] = ++vertices;
        return vertices - 1;
    }

    double[] toArray() {
        return xyz.length == 3 * vertices ? xyz : Arrays.copyOf(xyz, 3 * vertices);
    }

    private boolean isAt(int vertex, double x, double y, double z) {
        return xyz[3 * vertex] == x && xyz[3 * vertex + 1] == y && xyz[3 * vertex + 2] == z;
    }

    private int slotOf(double x, double y, double z) {
        // Each coordinate is folded before the next comes in: in a plain sum of products the signs of two would cancel,
        // and
        // mirror images, of which hulls are full, would all meet in one slot.
        long h = Double.doubleToRawLongBits(x) * 0x9E3779B97F4A7C15L;
        h = ((h ^ (h >>> 32)) + Double.doubleToRawLongBits(y)) * 0xC2B2AE3D27D4EB4FL;
        h = ((h ^ (h >>> 32)) + Double.doubleToRawLongBits(z)) * 0x165667B19E3779F9L;
        return (int) ((h ^ (h >>> 32)) >>> shift);
    }

    private void allocate(int forVertices) {
        int bits = 5;
        while (bits < 30 && (1L << bits) < 2L * forVertices) {
            bits++;
        }
        slots = new int[1 << bits];
        shift = 64 - bits;
        mostVertices = (int) ((1L << bits) * 5 / 8);
    }

    private void grow() {
        allocate(vertices);
        int mask = slots.length - 1;
        for (int v = 0; v < vertices; v++) {
            int slot = slotOf(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
            while (slots[slot] != 0) {
                slot = (slot + 1) & mask;
            }
            slots[slot] = v + 1;
        }
    }
}
