package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
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
            assertEquals(afloat(Vector3D.PLUS_K), trial.energyAfloat(BOX), 1e-6);
        }
        // All under: no waterplane tells anything.
        Trial under = at(Vector3D.PLUS_K, 90);
        assertEquals(under.energyAbout(BOX.middleMm(), BOX.densityGPerMm3()), under.energyAfloat(BOX));
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

    /** Of rough bodies, whose waterplane lies anywhere: a little off the height that carries her, the slopes with the height following are those there. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void aLittleOffTheHeightChangesNoSlope(int seed) {
        Condition boat = Condition.of(RandomBoats.of(seed));
        double scale = boat.massG() * boat.lengthMm();
        Trial carried = TestBoats.held(boat, TestMeshes.direction(new Random(seed)));
        WaterPlane plane = carried.plane();
        double off = 1e-5 * boat.lengthMm();
        Trial trial = Trial.of(boat, boat.below(plane.at(plane.heightMm() + off)), null);
        assertEquals(carried.slopeAhead, trial.reducedSlopeAhead(), 1e-8 * scale);
        assertEquals(carried.slopePort, trial.reducedSlopePort(), 1e-8 * scale);
        assertEquals(
                carried.energyAbout(boat.middleMm(), boat.densityGPerMm3()), trial.energyAfloat(boat), 1e-11 * scale);
    }

    /** The mixed curvature is what the one between the two directions has more than their mean. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void theMixedCurvatureIsThatBetween(int seed) {
        Condition boat = Condition.of(RandomBoats.of(seed));
        double scale = boat.massG() * boat.lengthMm();
        Vector3D up = TestMeshes.direction(new Random(seed));
        Trial still = TestBoats.held(boat, up);
        WaterPlane plane = still.plane();
        double eps = 1e-3;
        double[] energy = new double[2];
        for (int i = 0; i < 2; i++) {
            double angle = i == 0 ? eps : -eps;
            Vector3D between = plane.ahead().add(plane.port()).normalize();
            Trial turned = TestBoats.held(boat, new Vector3D(Math.cos(angle), up, Math.sin(angle), between));
            energy[i] = turned.energyAbout(boat.middleMm(), boat.densityGPerMm3());
        }
        double here = still.energyAbout(boat.middleMm(), boat.densityGPerMm3());
        double curvature = (energy[0] - 2 * here + energy[1]) / (eps * eps);
        assertEquals(
                curvature - 0.5 * (still.reducedAhead() + still.reducedPort()), still.reducedMixed(), 2e-3 * scale);
    }

    /** What is missing after a turn grows with its square, for any waterplane. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void aTurnKeepsHerCarried(int seed) {
        Condition boat = Condition.of(RandomBoats.of(seed));
        Trial still = TestBoats.held(boat, TestMeshes.direction(new Random(seed)));
        for (double angle : new double[] {1e-3, 1e-4}) {
            for (int side = 0; side < 4; side++) {
                double turn = side * Math.PI / 2 + 0.4;
                WaterPlane next = still.turned(angle * Math.cos(turn), angle * Math.sin(turn));
                Trial after = Trial.of(boat, boat.below(next), still);
                assertEquals(0, after.force / boat.massG(), 100 * angle * angle);
            }
        }
    }

    /** The effect of a change is what is different after it, on a boat that lists and trims before. */
    @Test
    void aChangeIsADifference() {
        Condition before = Condition.of(TestBoats.block(400, 100, 80, 1600, new Vector3D(6, 3, 30)));
        Equilibrium first = Flotation.settling(before).settled().orElseThrow();
        Equilibrium second = Flotation.settling(before.carrying(10, new Vector3D(90, -20, 50)))
                .settled()
                .orElseThrow();
        GramEffect effect = GramEffect.afloat(first, second, 180, -170);
        assertEquals(second.heelDeg(), first.heelDeg() + effect.heelDeg(), 1e-12);
        assertEquals(second.trimDeg(), first.trimDeg() + effect.trimDeg(), 1e-12);
        assertEquals(second.gmTransverseMm(), first.gmTransverseMm() + effect.firmnessMm(), 1e-12);
        assertOnLine(first, second, 180, effect.lineAtBowMm());
        assertOnLine(first, second, -170, effect.lineAtSternMm());
        Submerged under = Submerged.of(before);
        Submerged later = Submerged.of(before.carrying(10, new Vector3D(90, -20, 50)));
        GramEffect dived = GramEffect.dived(under, later);
        assertTrue(Math.abs(under.heelDeg()) > 1 && Math.abs(under.trimDeg()) > 1, under.toString());
        assertEquals(later.heelDeg(), under.heelDeg() + dived.heelDeg(), 1e-12);
        assertEquals(later.trimDeg(), under.trimDeg() + dived.trimDeg(), 1e-12);
        assertEquals(later.bgMm(), under.bgMm() + dived.firmnessMm(), 1e-12);
        assertEquals(0, dived.lineAtBowMm());
    }

    /** A point of the centreline in the first surface, raised by the change, lies in the second. */
    private static void assertOnLine(Equilibrium first, Equilibrium second, double x, double change) {
        Vector3D up = first.plane().up();
        Vector3D ground = new Vector3D(x, 0, 0);
        double z = (first.plane().heightMm() - up.dotProduct(ground)) / up.getZ();
        assertEquals(second.plane().heightMm(), second.plane().up().dotProduct(new Vector3D(x, 0, z + change)), 1e-9);
    }

    /** List and trim make the direction that says them. */
    @ParameterizedTest
    @CsvSource({"20, 10", "-35, 4", "170, -60"})
    void listAndTrimThereAndBack(double heel, double trim) {
        Vector3D up = Equilibrium.up(heel, trim);
        assertEquals(1, up.getNorm(), 1e-15);
        assertEquals(heel, Equilibrium.heelDeg(up), 1e-12);
        assertEquals(trim, Equilibrium.trimDeg(up), 1e-12);
    }
}
