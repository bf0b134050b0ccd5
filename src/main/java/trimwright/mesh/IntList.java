package trimwright.mesh;

import java.util.Arrays;

/** A growing list of ints without boxing. */
final class IntList {

    private int[] items;
    private int size;

    IntList(int expected) {
        items = new int[Math.max(expected, 16)];
    }

    void add(int item) {
        if (size == items.length) {
            items = Arrays.copyOf(items, Growth.next(size));
        }
        items[size++] = item;
    }

    int get(int index) {
        return items[index];
    }

    void set(int index, int item) {
        items[index] = item;
    }

    int size() {
        return size;
    }

    void truncate(int newSize) {
        size = newSize;
    }

    int[] toArray() {
        return size == items.length ? items : Arrays.copyOf(items, size);
    }
}
