package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/** The height below which a volume lies: how it is found, plane by plane, on bodies whose volume below a height is plain. */
class LevelSearchTest {

    /** 200 × 60 × 50 mm from z = 10 on. */
    private static final Displacer BOX = TestBoats.box(0, -30, 10, 200, 30, 60).solid();

    /** A pyramid of steps: the same, and on it another of 100 × 60 mm, with 20 mm of air between them. */
    private static final Displacer UPPER =
            TestBoats.box(0, -30, 80, 100, 30, 120).solid();

    private final List<Double> asked = new ArrayList<>();

    private double found(double volume, double guess, double tolerance, Displacer... bodies) {
        asked.clear();
        Immersion sums = LevelSearch.plane(
                WaterPlane.level(999),
                plane -> {
                    asked.add(plane.heightMm());
                    Immersion sum = Immersion.below(plane, new Vector3D(100, 0, 40));
                    for (Displacer body : bodies) {
                        sum = sum.add(body);
                    }
                    return sum;
                },
                volume,
                0,
                130,
                guess,
                tolerance);
        assertEquals(asked.get(asked.size() - 1), sums.plane().heightMm());
        return sums.plane().heightMm();
    }

    @ParameterizedTest
    @ValueSource(doubles = {11, 25, 40, 59})
    void uprightSidesTakeTwoPlanesFromAnywhere(double guess) {
        assertEquals(35, found(200 * 60 * 25, guess, LevelSearch.TOLERANCE, BOX), 1e-11);
        assertEquals(guess, asked.get(0));
        assertEquals(2, asked.size());
    }

    @Test
    void aGuessThatIsRightIsTaken() {
        found(200 * 60 * 25, 35, LevelSearch.TOLERANCE, BOX);
        assertEquals(List.of(35.0), asked);
    }

    /** Without a guess, or with one where there is nothing or everything, it begins in the middle. */
    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, 130, -5, 400, Double.POSITIVE_INFINITY})
    void aGuessThatIsNoneBeginsInTheMiddle(double guess) {
        assertEquals(35, found(200 * 60 * 25, guess, LevelSearch.TOLERANCE, BOX), 1e-11);
        assertEquals(65, asked.get(0));
    }

    /** What may be missing is a share of the volume wanted: 4 % of 25 mm are 1 mm. */
    @Test
    void aRoughAnswerIsTakenWhereOneIsAskedFor() {
        assertEquals(35.9, found(200 * 60 * 25, 35.9, 0.04, BOX));
        assertEquals(34.1, found(200 * 60 * 25, 34.1, 0.04, BOX));
        assertEquals(35, found(200 * 60 * 25, 36.1, 0.04, BOX), 1e-11);
        assertEquals(35, found(200 * 60 * 25, 33.9, 0.04, BOX), 1e-11);
    }

    /** From a height in the air or all under no slope leads on; halves do. */
    @ParameterizedTest
    @ValueSource(doubles = {5, 70, 75, 121, 129})
    void airAndDeepWaterAreLeftByHalves(double guess) {
        double volume = 200 * 60 * 50 + 100 * 60 * 30;
        assertEquals(110, found(volume, guess, LevelSearch.TOLERANCE, BOX, UPPER), 1e-9);
        assertTrue(asked.size() <= 12, asked.toString());
        for (double height : asked) {
            assertTrue(height > 0 && height < 130, asked.toString());
        }
    }

    /** Exactly the lower body: any height of the air between is right. */
    @Test
    void theAirBetweenTwoBodiesIsAsGood() {
        double height = found(200 * 60 * 50, 100, LevelSearch.TOLERANCE, BOX, UPPER);
        assertTrue(height >= 60 - 1e-9 && height <= 80 + 1e-9, "height " + height);
        assertTrue(asked.size() < 60, asked.toString());
    }

    /** The last volume that a double can tell: it ends, though the tolerance cannot be met. */
    @Test
    void itEndsWhereDoublesEnd() {
        assertEquals(35, found(200 * 60 * 25, 50, 0, BOX), 1e-12);
        assertTrue(asked.size() < 100, "planes: " + asked.size());
    }
}
