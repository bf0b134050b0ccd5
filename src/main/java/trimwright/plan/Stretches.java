package trimwright.plan;

import java.util.Arrays;

/** Stretches of an upright line, kept apart and in order: what is free of it, or what is taken. Confined to one thread. */
final class Stretches {

    private double[] low = new double[16];
    private double[] high = new double[16];
    private int count;

    void clear() {
        count = 0;
    }

    int count() {
        return count;
    }

    double low(int i) {
        return low[i];
    }

    double high(int i) {
        return high[i];
    }

    /** Adds a stretch and joins it with those it touches. */
    void add(double from, double to) {
        if (!(to > from)) {
            return;
        }
        double start = from;
        double end = to;
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (high[i] < start || low[i] > end) {
                low[kept] = low[i];
                high[kept++] = high[i];
            } else {
                start = Math.min(start, low[i]);
                end = Math.max(end, high[i]);
            }
        }
        count = kept;
        insert(start, end);
    }

    /** Takes a stretch away. */
    void remove(double from, double to) {
        if (!(to > from) || !meets(from, to)) {
            return;
        }
        int before = count;
        double[] oldLow = Arrays.copyOf(low, before);
        double[] oldHigh = Arrays.copyOf(high, before);
        count = 0;
        for (int i = 0; i < before; i++) {
            if (oldHigh[i] <= from || oldLow[i] >= to) {
                insert(oldLow[i], oldHigh[i]);
            } else {
                if (oldLow[i] < from) {
                    insert(oldLow[i], from);
                }
                if (oldHigh[i] > to) {
                    insert(to, oldHigh[i]);
                }
            }
        }
    }

    private boolean meets(double from, double to) {
        for (int i = 0; i < count; i++) {
            if (high[i] > from && low[i] < to) {
                return true;
            }
        }
        return false;
    }

    private void insert(double from, double to) {
        if (count == low.length) {
            low = Arrays.copyOf(low, 2 * count);
            high = Arrays.copyOf(high, 2 * count);
        }
        int at = count;
        while (at > 0 && low[at - 1] > from) {
            low[at] = low[at - 1];
            high[at] = high[at - 1];
            at--;
        }
        low[at] = from;
        high[at] = to;
        count++;
    }
}
