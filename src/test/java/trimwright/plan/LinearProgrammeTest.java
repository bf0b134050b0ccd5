package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The solver layer against programmes whose answers are published or follow by hand. */
class LinearProgrammeTest {

    private static final double NONE = Double.POSITIVE_INFINITY;

    private static double[] none(int n) {
        double[] most = new double[n];
        Arrays.fill(most, NONE);
        return most;
    }

    /** Wyndor Glass: greatest 3 x + 5 y under x ≤ 4, 2 y ≤ 12, 3 x + 2 y ≤ 18 is 36 at (2, 6), prices 0, 3/2, 1 (Hillier and Lieberman; from memory). */
    @Test
    void wyndorGlass() {
        LinearProgramme.Solution s = new LinearProgramme(new double[] {-3, -5}, none(2))
                .row("plant 1", new double[] {1, 0}, LinearProgramme.Sense.AT_MOST, 4)
                .row("plant 2", new double[] {0, 2}, LinearProgramme.Sense.AT_MOST, 12)
                .row("plant 3", new double[] {3, 2}, LinearProgramme.Sense.AT_MOST, 18)
                .solveWithPrices();
        assertEquals(-36, s.value(), 1e-9);
        assertArrayEquals(new double[] {2, 6}, s.x(), 1e-9);
        assertArrayEquals(new double[] {0, -1.5, -1}, s.prices(), 1e-9);
        assertEquals(0, s.gap(), 1e-9);
    }

    /** The same with one unknown counted in millionths, the other in millions, and rows and cost in units of their own: gram and mm³ differ as much. */
    @Test
    void unitsDoNotMatter() {
        LinearProgramme.Solution s = new LinearProgramme(new double[] {-3e-21, -5e-9}, new double[] {4e6, 6e-6})
                .row("plant 3", new double[] {3e8, 2e20}, LinearProgramme.Sense.AT_MOST, 18e14)
                .solveWithPrices();
        assertArrayEquals(new double[] {2, 6}, new double[] {1e-6 * s.x()[0], 1e6 * s.x()[1]}, 1e-9);
        assertEquals(-36e-15, s.value(), 1e-24);
        assertEquals(-1e-29, s.prices()[0], 1e-38);
        assertEquals(0, s.gap(), 1e-24);
    }

    /** Beale's programme, on which a careless simplex circles: the answer is -0.05 (Beale 1955; from memory). */
    @Test
    void bealeDoesNotCircle() {
        LinearProgramme.Solution s = new LinearProgramme(new double[] {-0.75, 150, -0.02, 6}, none(4))
                .row("1", new double[] {0.25, -60, -0.04, 9}, LinearProgramme.Sense.AT_MOST, 0)
                .row("2", new double[] {0.5, -90, -0.02, 3}, LinearProgramme.Sense.AT_MOST, 0)
                .row("3", new double[] {0, 0, 1, 0}, LinearProgramme.Sense.AT_MOST, 1)
                .solveWithPrices();
        assertEquals(-0.05, s.value(), 1e-9);
        assertEquals(0, s.gap(), 1e-9);
    }

    /** Transport from 20 and 30 to 10, 25 and 15 at costs 8 6 10 / 9 12 13: by hand 465. */
    @Test
    void transport() {
        LinearProgramme p = new LinearProgramme(new double[] {8, 6, 10, 9, 12, 13}, none(6))
                .row("from 1", new double[] {1, 1, 1, 0, 0, 0}, LinearProgramme.Sense.EQUAL, 20)
                .row("from 2", new double[] {0, 0, 0, 1, 1, 1}, LinearProgramme.Sense.EQUAL, 30)
                .row("to 1", new double[] {1, 0, 0, 1, 0, 0}, LinearProgramme.Sense.EQUAL, 10)
                .row("to 2", new double[] {0, 1, 0, 0, 1, 0}, LinearProgramme.Sense.EQUAL, 25)
                .row("to 3", new double[] {0, 0, 1, 0, 0, 1}, LinearProgramme.Sense.EQUAL, 15);
        LinearProgramme.Solution s = p.solveWithPrices();
        // 20 at 6 from the first, then 10 at 9, 5 at 12 and 15 at 13 from the second.
        assertEquals(20 * 6 + 10 * 9 + 5 * 12 + 15 * 13, s.value(), 1e-9);
        assertEquals(0, s.gap(), 1e-9);
    }

    @Test
    void upperBoundsHoldAndArePaidFor() {
        LinearProgramme.Solution s = new LinearProgramme(new double[] {1, 3}, new double[] {4, 10})
                .row("enough", new double[] {1, 1}, LinearProgramme.Sense.AT_LEAST, 6)
                .solveWithPrices();
        assertArrayEquals(new double[] {4, 2}, s.x(), 1e-9);
        assertEquals(10, s.value(), 1e-9);
        assertEquals(3, s.prices()[0], 1e-9);
        assertEquals(0, s.gap(), 1e-9);
    }

    @Test
    void infeasibleIsAnOutcome() {
        LinearProgramme.Solution s = new LinearProgramme(new double[] {1}, new double[] {1})
                .row("too much", new double[] {1}, LinearProgramme.Sense.AT_LEAST, 2)
                .solve();
        assertEquals(LinearProgramme.Outcome.INFEASIBLE, s.outcome());
    }

    @Test
    void unboundedIsAnOutcome() {
        LinearProgramme.Solution s = new LinearProgramme(new double[] {-1}, none(1))
                .row("some", new double[] {1}, LinearProgramme.Sense.AT_LEAST, 2)
                .solve();
        assertEquals(LinearProgramme.Outcome.UNBOUNDED, s.outcome());
    }

    /** Random programmes that have an answer: the dual closes the gap, and every row and bound holds. */
    @Test
    void theDualClosesTheGap() {
        Random random = new Random(7);
        int solved = 0;
        for (int round = 0; round < 40; round++) {
            int n = 3 + random.nextInt(12);
            double[] cost = new double[n];
            double[] most = new double[n];
            double[] inside = new double[n];
            for (int i = 0; i < n; i++) {
                cost[i] = random.nextDouble() * 5;
                most[i] = 1 + random.nextDouble() * 200;
                inside[i] = random.nextDouble() * most[i];
            }
            LinearProgramme p = new LinearProgramme(cost, most);
            int rows = 1 + random.nextInt(5);
            double[][] table = new double[rows][n];
            double[] bound = new double[rows];
            for (int r = 0; r < rows; r++) {
                for (int i = 0; i < n; i++) {
                    table[r][i] = random.nextGaussian();
                    bound[r] += table[r][i] * inside[i];
                }
                p.row("r" + r, table[r], LinearProgramme.Sense.AT_LEAST, bound[r]);
            }
            LinearProgramme.Solution s = p.solveWithPrices();
            assertTrue(s.isOptimal());
            solved++;
            double size = 1 + Math.abs(s.value());
            assertEquals(0, s.gap(), 1e-9 * size);
            for (int r = 0; r < rows; r++) {
                double sum = 0;
                for (int i = 0; i < n; i++) {
                    sum += table[r][i] * s.x()[i];
                    assertTrue(s.x()[i] >= -1e-9 * most[i] && s.x()[i] <= most[i] * (1 + 1e-9));
                }
                assertTrue(sum >= bound[r] - 1e-6 * (1 + Math.abs(bound[r])));
            }
        }
        assertEquals(40, solved);
    }
}
