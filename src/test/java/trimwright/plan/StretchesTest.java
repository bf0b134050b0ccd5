package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Stretches against a row of boxes that are ticked one by one. */
class StretchesTest {

    private static final int LENGTH = 120;

    private static List<List<Double>> listed(Stretches stretches) {
        List<List<Double>> all = new ArrayList<>();
        for (int i = 0; i < stretches.count(); i++) {
            all.add(List.of(stretches.low(i), stretches.high(i)));
        }
        return all;
    }

    private static List<List<Double>> runs(boolean[] ticked) {
        List<List<Double>> all = new ArrayList<>();
        for (int i = 0; i < ticked.length; i++) {
            int from = i;
            while (i < ticked.length && ticked[i]) {
                i++;
            }
            if (i > from) {
                all.add(List.of((double) from, (double) i));
            }
        }
        return all;
    }

    /** Long ones are rare, so that up to some thirty lie side by side. */
    @Test
    void addedAndTakenAwayAtRandom() {
        Random random = new Random(4);
        Stretches stretches = new Stretches();
        boolean[] ticked = new boolean[LENGTH];
        int most = 0;
        for (int n = 0; n < 20_000; n++) {
            int from = random.nextInt(LENGTH);
            int to = Math.min(LENGTH, from + (random.nextInt(8) == 0 ? random.nextInt(40) : random.nextInt(3)));
            boolean add = random.nextInt(3) > 0;
            if (add) {
                stretches.add(from, to);
            } else {
                stretches.remove(from, to);
            }
            for (int i = from; i < to; i++) {
                ticked[i] = add;
            }
            assertEquals(runs(ticked), listed(stretches));
            most = Math.max(most, stretches.count());
        }
        assertEquals(true, most > 20, "at most " + most + " at once");
        stretches.clear();
        assertEquals(0, stretches.count());
    }

    @Test
    void whatHasNoLengthIsNothing() {
        Stretches stretches = new Stretches();
        stretches.add(3, 3);
        stretches.add(5, 4);
        stretches.add(Double.NaN, 4);
        assertEquals(List.of(), listed(stretches));
        stretches.add(0, 10);
        stretches.remove(5, 5);
        stretches.remove(7, 6);
        assertEquals(List.of(List.of(0.0, 10.0)), listed(stretches));
        stretches.remove(Double.NEGATIVE_INFINITY, 2);
        stretches.remove(8, Double.POSITIVE_INFINITY);
        assertEquals(List.of(List.of(2.0, 8.0)), listed(stretches));
    }
}
