package trimwright.report.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Dashes keep their length however a curve is sampled. */
class DashesTest {

    private static final double[] DASH_DOT = {12, 4, 2, 4};

    private static List<Double> lengths(Dashes.Cut cut, double pxPerX, double pxPerY) {
        List<Double> lengths = new ArrayList<>();
        double length = 0;
        for (int i = 1; i < cut.x.length; i++) {
            if (Double.isNaN(cut.y[i])) {
                lengths.add(length);
                length = 0;
            } else if (!Double.isNaN(cut.y[i - 1])) {
                length += Math.hypot((cut.x[i] - cut.x[i - 1]) * pxPerX, (cut.y[i] - cut.y[i - 1]) * pxPerY);
            }
        }
        return lengths;
    }

    /** A slope of 440 px length, as 3 points and as 3000: 20 periods of 22 px, each with a dash of 12 and a dot of 2. */
    @Test
    void dashesDoNotDependOnTheSampling() {
        for (int points : new int[] {3, 3000}) {
            double[] x = new double[points];
            double[] y = new double[points];
            for (int i = 0; i < points; i++) {
                double share = i / (points - 1.0);
                x[i] = 2 + share * 440 * 0.6 / 5;
                y[i] = 7 - share * 440 * 0.8 / 3;
            }
            List<Double> lengths = lengths(Dashes.of(x, y, DASH_DOT, 5, 3), 5, 3);
            assertTrue(lengths.size() >= 39 && lengths.size() <= 41, "dashes " + lengths.size());
            for (int i = 0; i < 39; i++) {
                assertEquals(i % 2 == 0 ? 12 : 2, lengths.get(i), 1e-9);
            }
        }
    }

    @Test
    void aGapStaysAGap() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = {0, 0, Double.NaN, 0, 0};
        Dashes.Cut cut = Dashes.of(x, y, DASH_DOT, 10, 10);
        for (int i = 0; i < cut.x.length; i++) {
            boolean inGap = cut.x[i] > 1 && cut.x[i] < 3;
            assertTrue(!inGap || Double.isNaN(cut.y[i]), "at " + cut.x[i]);
        }
        assertEquals(4, cut.x[cut.x.length - 1], 1);
    }

    @Test
    void solidIsLeftAsItIs() {
        double[] x = {0, 1};
        double[] y = {2, 3};
        Dashes.Cut cut = Dashes.of(x, y, new double[0], 1, 1);
        assertArrayEquals(x, cut.x);
        assertArrayEquals(y, cut.y);
    }
}
