package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.boat.Boat;
import trimwright.boat.PaintedLine;
import trimwright.immersion.WaterPlane;

/** What a trial foretells of others, on a box whose sides the water never leaves: there the local model is exact but for its third order. */
class TrialTest {

    /** 400 × 100 × 80 mm, carrying half of her volume, G off to a corner. */
    private static final Condition BOX = Condition.of(TestBoats.block(400, 100, 80, 1600, new Vector3D(6, 3, 30)));

    private static Trial at(Vector3D up, double heightMm) {
        return Trial.of(BOX, BOX.below(WaterPlane.of(up, heightMm)), null);
    }

    private static double afloat(Vector3D up) {
        Trial held = TestBoats.held(BOX, up);
        return held.energyAbout(BOX.middleMm(), BOX.densityGPerMm3());
    }

    /** A level box 10 mm too deep is pushed up by 400 cm² of waterplane: the energy falls by ½ ρ A d², which for upright sides is all of it. */
    @Test
    void theEnergyAfloatIsForetoldFromAnotherHeight() {
        for (double height : new double[] {30, 36, 48, 55}) {
            Trial trial = at(Vector3D.PLUS_K, height);
            double own = trial.energyAbout(BOX.middleMm(), BOX.densityGPerMm3());
            assertEquals(afloat(Vector3D.PLUS_K), own - 0.5e-3 * 40_000 * (height - 40) * (height - 40), 1e-6);
            assertEquals(afloat(Vector3D.PLUS_K), trial.energyAfloat(BOX.middleMm(), BOX.densityGPerMm3()), 1e-6);
        }
        // All under: no waterplane tells anything.
        Trial under = at(Vector3D.PLUS_K, 90);
        assertEquals(
                under.energyAbout(BOX.middleMm(), BOX.densityGPerMm3()),
                under.energyAfloat(BOX.middleMm(), BOX.densityGPerMm3()));
    }

    /** Slopes with the height following, from heights at which she is not carried, against differences of the energy at which she is. */
    @ParameterizedTest
    @CsvSource({"0, 0, 40", "0.05, -0.02, 41", "-0.08, 0.03, 38"})
    void slopesWithTheHeightFollowing(double ahead, double port, double height) {
        Vector3D up = new Vector3D(ahead, port, 1).normalize();
        Trial trial = at(up, height);
        WaterPlane plane = trial.plane();
        double eps = 1e-4;
        double[] slope = new double[2];
        Vector3D[] toward = {plane.ahead(), plane.port()};
        for (int i = 0; i < 2; i++) {
            double plus = afloat(new Vector3D(Math.cos(eps), up, Math.sin(eps), toward[i]));
            double minus = afloat(new Vector3D(Math.cos(eps), up, -Math.sin(eps), toward[i]));
            slope[i] = (plus - minus) / (2 * eps);
        }
        // What is left out is the second power of how far she is from being carried.
        double off = trial.force / trial.curveHeight;
        double tolerance = 1e-6 * 1600 * 400 + 1.6 * off * off * 400;
        assertEquals(slope[0], trial.reducedSlopeAhead(), tolerance);
        assertEquals(slope[1], trial.reducedSlopePort(), tolerance);
    }

    /** Of a box the water plane turns about its middle, which lies on the axis of the box: after any turn she is still carried. */
    @Test
    void aTurnTakesTheHeightAlong() {
        Trial trial = at(Vector3D.PLUS_K, 45);
        assertEquals(0.2, trial.force / 1000, 1e-9);
        WaterPlane turned = trial.turned(0.06, -0.08);
        assertEquals(0.1, Vector3D.angle(turned.up(), Vector3D.PLUS_K), 1e-12);
        // Bow up is toward ahead, and the surface passes through the middle line at the height that carries her.
        assertEquals(Math.sin(0.1) * 0.6, turned.up().getX(), 1e-12);
        assertEquals(-Math.sin(0.1) * 0.8, turned.up().getY(), 1e-12);
        Trial after = Trial.of(BOX, BOX.below(turned), trial);
        assertEquals(0, after.force / 1600, 3e-3);
        // Nearer to nothing the shorter the turn: the height is right to second order.
        Trial close = at(Vector3D.PLUS_K, 40);
        for (double angle : new double[] {0.02, 0.01}) {
            Trial next = Trial.of(BOX, BOX.below(close.turned(angle, angle)), close);
            assertTrue(Math.abs(next.force) < 1600 * angle * angle, "left over: " + next.force);
        }
        assertEquals(Vector3D.PLUS_K, close.turned(0, 0).up());
    }

    /** A painted line that runs down to the bow: half way along the boat it stands at the mean height of its ends. */
    @Test
    void theFirstGuessIsThePaintedLineAmidships() {
        Boat plain = TestBoats.block(400, 100, 80, 1600, new Vector3D(0, 0, 30));
        assertEquals(40, Balance.upright(Condition.of(plain)).heightMm(), 1e-12);
        PaintedLine line = new PaintedLine(List.of(new Vector3D(200, 0, 20), new Vector3D(-100, 0, 50)));
        Boat painted =
                new Boat("test", plain.water(), Optional.of(line), plain.parts(), plain.zones(), plain.targets());
        WaterPlane guess = Balance.upright(Condition.of(painted));
        assertEquals(Vector3D.PLUS_K, guess.up());
        assertEquals(40, guess.heightMm(), 1e-12);
        PaintedLine higher = new PaintedLine(List.of(new Vector3D(200, 0, 30), new Vector3D(-100, 0, 66)));
        Boat other =
                new Boat("test", plain.water(), Optional.of(higher), plain.parts(), plain.zones(), plain.targets());
        assertEquals(54, Balance.upright(Condition.of(other)).heightMm(), 1e-12);
    }

    /** A gram or a ton: what counts as nothing is a share of her weight, and is reached in a few planes from far away. */
    @ParameterizedTest
    @CsvSource({"0.04", "1", "40"})
    void anySizeComesToRestInAFewPlanes(double scale) {
        double mass = 1600 * scale * scale * scale;
        Condition boat = Condition.of(TestBoats.block(
                400 * scale, 100 * scale, 80 * scale, mass, new Vector3D(6, 3, 15).scalarMultiply(scale)));
        Balance.Rest rest = Balance.rest(boat, WaterPlane.of(Equilibrium.up(12, 5), 70 * scale));
        assertTrue(rest.found());
        assertTrue(rest.cuts() <= 14, "planes: " + rest.cuts());
        assertEquals(0, rest.trial().force / mass, 1e-12);
        assertEquals(0, rest.trial().slopeAhead / (mass * 400 * scale), 1e-12);
        assertEquals(0, rest.trial().slopePort / (mass * 400 * scale), 1e-12);
        // Once at rest, one plane says so.
        assertEquals(1, Balance.rest(boat, rest.trial().plane()).cuts());
    }
}
