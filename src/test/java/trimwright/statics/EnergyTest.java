package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
import trimwright.immersion.WaterPlane;

/**
 * The slopes and curvatures that the solver uses are those of the energy, by finite differences on boats with two tanks each.
 * Central differences over ε miss terms of ε² (relative to a radian, or to the size), and rounding 1e-15/ε² of the energy.
 */
class EnergyTest {

    private static final double STEP = 1e-3;

    private static Trial at(Condition condition, Vector3D up, Vector3D pivot, double heightMm) {
        WaterPlane plane = WaterPlane.of(up, 0);
        return Trial.of(condition, condition.below(plane.at(plane.up().dotProduct(pivot) + heightMm)), null);
    }

    private static double energy(Condition condition, Trial trial) {
        return trial.energyAbout(condition.middleMm(), condition.densityGPerMm3());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void slopesAndCurvatures(int seed) {
        Condition condition = Condition.of(RandomBoats.of(seed));
        Random random = new Random(seed);
        Vector3D up = TestMeshes.direction(random);
        double size = condition.lengthMm();
        Vector3D near = condition.middleMm().add(0.05 * size * random.nextGaussian(), up);
        Trial still = at(condition, up, near, 0);
        Vector3D pivot = still.sums().referenceMm();
        Vector3D ahead = still.plane().ahead();
        Vector3D port = still.plane().port();
        double rise = STEP * size;
        double scale = condition.densityGPerMm3() * condition.volumeMm3() * size;
        double tolerance = 2e-4 * scale;
        double here = energy(condition, still);

        Trial higher = at(condition, up, pivot, rise);
        Trial lower = at(condition, up, pivot, -rise);
        assertEquals(
                still.force, (energy(condition, higher) - energy(condition, lower)) / (2 * rise), tolerance / size);
        assertEquals(still.curveHeight, (higher.force - lower.force) / (2 * rise), 20 * tolerance / size / size);

        Trial fore = at(condition, turned(up, ahead, STEP), pivot, 0);
        Trial aft = at(condition, turned(up, ahead, -STEP), pivot, 0);
        assertEquals(still.slopeAhead, (energy(condition, fore) - energy(condition, aft)) / (2 * STEP), tolerance);
        assertEquals(
                still.curveAhead,
                (energy(condition, fore) - 2 * here + energy(condition, aft)) / (STEP * STEP),
                10 * tolerance);
        assertEquals(still.curveHeightAhead, (fore.force - aft.force) / (2 * STEP), 10 * tolerance / size);

        Trial left = at(condition, turned(up, port, STEP), pivot, 0);
        Trial right = at(condition, turned(up, port, -STEP), pivot, 0);
        assertEquals(still.slopePort, (energy(condition, left) - energy(condition, right)) / (2 * STEP), tolerance);
        assertEquals(
                still.curvePort,
                (energy(condition, left) - 2 * here + energy(condition, right)) / (STEP * STEP),
                10 * tolerance);
        assertEquals(still.curveHeightPort, (left.force - right.force) / (2 * STEP), 10 * tolerance / size);

        Vector3D diagonal = ahead.add(port).normalize();
        Trial plus = at(condition, turned(up, diagonal, STEP), pivot, 0);
        Trial minus = at(condition, turned(up, diagonal, -STEP), pivot, 0);
        double along = (energy(condition, plus) - 2 * here + energy(condition, minus)) / (STEP * STEP);
        assertEquals(still.curveMixed, along - 0.5 * (still.curveAhead + still.curvePort), 10 * tolerance);
    }

    private static Vector3D turned(Vector3D up, Vector3D toward, double angle) {
        return new Vector3D(Math.cos(angle), up, Math.sin(angle), toward);
    }

    /**
     * GM is the second slope of the potential height e = n · (G − B) at constant displacement: at rest, over ± 1e-3 rad, tank water and all.
     * And e has no first slope there.
     */
    @ParameterizedTest
    @ValueSource(ints = {11, 12, 13, 14, 15, 16})
    void gmIsTheCurvatureOfTheEnergy(int seed) {
        Condition condition = Condition.of(RandomBoats.of(seed));
        Equilibrium e = Flotation.of(condition).settled().orElseThrow();
        Vector3D up = e.plane().up();
        double size = condition.lengthMm();
        double here = TestBoats.held(condition, up).potentialHeightMm();
        assertEquals(e.energyMm(), here, 1e-10 * size);
        for (Vector3D toward : new Vector3D[] {e.plane().ahead(), e.plane().port()}) {
            double plus = TestBoats.held(condition, turned(up, toward, STEP)).potentialHeightMm();
            double minus = TestBoats.held(condition, turned(up, toward, -STEP)).potentialHeightMm();
            double gm = toward == e.plane().ahead() ? e.gmLongitudinalMm() : e.gmTransverseMm();
            assertEquals(gm, (plus - 2 * here + minus) / (STEP * STEP), 5e-3 * size);
            assertEquals(0, (plus - minus) / (2 * STEP), 1e-4 * size);
        }
        assertTrue(e.gmLeastMm() > 0);
        assertTrue(e.gmLeastMm() <= Math.min(e.gmTransverseMm(), e.gmLongitudinalMm()) + 1e-12 * size);
    }
}
