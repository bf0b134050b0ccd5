package trimwright.report.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Round numbers for rulers and axes. */
class StepsTest {

    private static final double RELATIVE = 1e-12;

    @Test
    void upAndDownToOneTwoFive() {
        double[][] cases = {{0.9, 1, 0.5}, {1.1, 2, 1}, {2, 2, 2}, {3, 5, 2}, {7, 10, 5}, {0.013, 0.02, 0.01}};
        for (double[] c : cases) {
            assertEquals(c[1], Steps.atLeast(c[0]), RELATIVE * c[1]);
            assertEquals(c[2], Steps.atMost(c[0]), RELATIVE * c[2]);
        }
    }

    @Test
    void anglesDivideARightAngle() {
        assertEquals(30, Steps.degreesAtLeast(30), 0);
        assertEquals(15, Steps.degreesAtLeast(11), 0);
        assertEquals(45, Steps.degreesAtLeast(36), 0);
        assertEquals(2, Steps.degreesAtLeast(1.5), RELATIVE);
    }

    @Test
    void textHasTheDigitsOfItsStep() {
        assertEquals("−40", Steps.text(-40, 20));
        assertEquals("0.5", Steps.text(0.5, 0.5));
        assertEquals("0.30", Steps.text(0.1 + 0.2, 0.05));
        assertEquals("0.0", Steps.text(-1e-17, 0.5));
    }

    @Test
    void axisSurroundsItsCurves() {
        Plot.Panel panel = new Plot.Panel(
                "x", "y", List.of(new Plot.Curve("", new double[] {3, 17}, new double[] {2.2, 9.1})), List.of());
        PlotScale up = PlotScale.up(panel, 5);
        assertEquals(new PlotScale(0, 10, 2), up);
        PlotScale across = PlotScale.across(List.of(panel), 10);
        assertEquals(3, across.least(), 0);
        assertEquals(17, across.greatest(), 0);
        assertEquals(List.of(4.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0), across.ticks());
    }

    /** Values far from zero keep their distance; values below zero end at it where they come near. */
    @Test
    void axisTakesZeroOnlyWhenNear() {
        assertEquals(100, scale(101, 109).least(), 0);
        assertEquals(0, scale(-9, -1).greatest(), 0);
        assertEquals(-10, scale(-9, -1).least(), 0);
    }

    private static PlotScale scale(double... y) {
        return PlotScale.up(
                new Plot.Panel("x", "y", List.of(new Plot.Curve("", new double[] {0, 1}, y)), List.of()), 5);
    }
}
