package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.immersion.WaterPlane;

/** Walks along the one valley of long bars, whose rests are known in closed form, and past what is no valley. */
class ValleysTest {

    private int looks;

    private List<WaterPlane> rests(Condition condition, Vector3D... from) {
        List<Trial> trials = List.of(from).stream()
                .map(up -> TestBoats.held(condition, up.normalize()))
                .toList();
        return Valleys.starts(condition, trials, (plane, near) -> {
            looks++;
            return TestBoats.held(condition, plane.up());
        });
    }

    private static Condition bar(double s) {
        return Condition.of(TestBoats.block(2000, 100, 100, s * 2000 * 100 * 100 / 1000.0, new Vector3D(0, 0, 50)));
    }

    /**
     * A long square bar rolls along the floor of a valley; seen from one direction near it, every rest along it is foretold (angles printed by Reid, Am. J.
     * Phys. 31, 565, 1963), in one round of 90 looks of 4° each way from the start.
     */
    @ParameterizedTest
    @CsvSource({"0.15, 0, 4", "0.25, 26.5651, 8", "0.4, 45, 4", "0.74, 29.6305, 8"})
    void everyRestOfABarIsSeenFromOneDirection(double s, double angleDeg, int count) {
        List<WaterPlane> rests = rests(bar(s), new Vector3D(0.03, 0.35, 1));
        for (int side = 0; side < 4; side++) {
            for (double turned : new double[] {angleDeg, -angleDeg}) {
                double roll = Math.toRadians(90 * side + turned);
                Vector3D up = new Vector3D(0, Math.sin(roll), Math.cos(roll));
                double nearest = rests.stream()
                        .mapToDouble(rest -> Vector3D.angle(rest.up(), up))
                        .min()
                        .orElseThrow();
                assertEquals(0, Math.toDegrees(nearest), 9, "foretold from two looks away at most");
            }
        }
        assertTrue(rests.size() <= 2 * count, "foretold: " + rests.size());
        assertTrue(looks > 80 && looks < 120, "looks: " + looks);
    }

    /** The second direction near the same floor needs no look at all. */
    @Test
    void oneFloorIsWalkedOnce() {
        rests(bar(0.3), new Vector3D(0.03, 0.35, 1));
        int once = looks;
        looks = 0;
        rests(bar(0.3), new Vector3D(0.03, 0.35, 1), new Vector3D(-0.05, -0.6, 0.8), new Vector3D(0, 0.2, -1));
        assertEquals(once, looks);
    }

    /** A cube is as stiff one way as the other, and across the end of the bar there is a ridge: neither is a floor. */
    @Test
    void thereIsNoFloorWhereNothingIsNarrow() {
        Condition cube = Condition.of(TestBoats.block(100, 100, 100, 0.1 * 1000, new Vector3D(0, 0, 50)));
        assertEquals(List.of(), rests(cube, new Vector3D(0.03, 0.05, 1)));
        assertEquals(List.of(), rests(bar(0.3), new Vector3D(1, 0.01, 0.01)));
        assertEquals(0, looks);
    }
}
