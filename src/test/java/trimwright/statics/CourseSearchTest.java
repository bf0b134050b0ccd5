package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Kind;
import trimwright.finding.Code;
import trimwright.finding.Finding;

/**
 * A round bar whose G moves on the way from below its axis, where M is whatever her list, to above it: she lists by the angle to G, tan φ = y ∕ z, and her GM upright is
 * how far G is below the axis.
 */
class CourseSearchTest {

    /** @param below how far G is below the axis at a progress of the way */
    private static Course course(double toPort, DoubleUnaryOperator below) {
        CourseSearch search = new CourseSearch(
                along -> Condition.of(DiveBoats.boat(TestParts.weighed(
                        "tube",
                        Kind.CYLINDER,
                        DiveBoats.bar(0, 500, 40, 80),
                        1000,
                        new Vector3D(250, toPort, 40 - below.applyAsDouble(along))))),
                along -> 0.2 + 0.6 * along);
        Condition start = Condition.of(DiveBoats.boat(TestParts.weighed(
                "tube", Kind.CYLINDER, DiveBoats.bar(0, 500, 40, 80), 1000, new Vector3D(250, 0, 33))));
        return search.follow(10, Balance.upright(start));
    }

    /** G comes to the axis at 0.43 of the way, a hair to port: she turns over at once, and is told to at the fill there, 0.2 + 0.6 · 0.43. */
    @Test
    void aFallAtOnce() {
        Course course = course(1e-6, along -> 4.3 - 10 * along);
        assertEquals(11, course.steps().size());
        assertEquals(1, course.falls().size());
        FallsOver fall = course.falls().get(0);
        assertEquals(0.458, fall.fill(), 0.6 * 2e-4);
        assertEquals(0, fall.fromHeelDeg(), 3);
        assertEquals(-180, fall.toHeelDeg(), 3);
        // Upright is unstable from there to the end, where she lies bottom up.
        assertEquals(1, course.unstable().size());
        assertEquals(0.458, course.unstable().get(0).fromFill(), 0.6 * 2e-4);
        assertEquals(0.8, course.unstable().get(0).toFill(), 1e-12);
        assertEquals(180, course.unstable().get(0).greatestListDeg(), 1e-3);
        for (DiveStep step : course.steps()) {
            double along = (step.fill() - 0.2) / 0.6;
            assertEquals(4.3 - 10 * along, step.uprightGmMm().orElseThrow(), 1e-6);
        }
        // She stands least firmly at the end.
        assertEquals(-5.7, course.critical().orElseThrow().gmMm(), 1e-6);
        assertEquals(0.8, course.critical().get().fill(), 1e-9);
        List<Finding> findings = CourseFindings.of(course);
        assertEquals(
                List.of(Code.UPRIGHT_UNSTABLE, Code.FALLS_OVER),
                findings.stream().map(Finding::code).toList());
        assertEquals(45.8, (Double) findings.get(0).values().get("fromPercent"), 0.02);
        assertEquals(80, (Double) findings.get(0).values().get("toPercent"), 1e-9);
        assertEquals(45.8, (Double) findings.get(1).values().get("fillPercent"), 0.02);
    }

    /** With G half a millimetre to port she turns as far, but by and by: nothing at once. */
    @Test
    void aTurnByAndBy() {
        Course course = course(0.5, along -> 4.3 - 10 * along);
        assertEquals(List.of(), course.falls());
        for (DiveStep step : course.steps()) {
            double below = 4.3 - 10 * (step.fill() - 0.2) / 0.6;
            assertEquals(
                    -Math.toDegrees(Math.atan2(0.5, below)),
                    step.settled().orElseThrow().heelDeg(),
                    1e-4);
        }
    }

    /** G rises to 1 below the axis at 0.37 of the way and sinks again: that is where she stands least firmly, though no step lies there. */
    @Test
    void leastFirmBetweenTwoSteps() {
        Course course = course(0, along -> 1 + 20 * (along - 0.37) * (along - 0.37));
        assertEquals(1, course.critical().orElseThrow().gmMm(), 1e-4);
        assertEquals(0.2 + 0.6 * 0.37, course.critical().get().fill(), 0.6 * 2e-3);
        assertTrue(course.unstable().isEmpty());
        assertTrue(course.falls().isEmpty());
    }

    /** Unstable for a while: from 0.25 to 0.55 of the way G is above the axis. Exactly on her centreline she may stay as she is; the range is told all the same. */
    @Test
    void unstableForAWhile() {
        Course course = course(1e-6, along -> 40 * (along - 0.25) * (along - 0.55));
        assertEquals(1, course.unstable().size());
        assertEquals(0.35, course.unstable().get(0).fromFill(), 0.6 * 2e-4);
        assertEquals(0.53, course.unstable().get(0).toFill(), 0.6 * 2e-4);
        assertEquals(180, course.unstable().get(0).greatestListDeg(), 0.1);
        // Over and back again.
        assertEquals(2, course.falls().size());
        assertEquals(0.35, course.falls().get(0).fill(), 0.6 * 2e-4);
        assertEquals(0.53, course.falls().get(1).fill(), 0.6 * 2e-4);
        assertEquals(0, course.falls().get(1).toHeelDeg(), 3);
    }
}
