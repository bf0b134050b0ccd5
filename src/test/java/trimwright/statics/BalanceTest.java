package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.boat.Part;
import trimwright.immersion.WaterPlane;

/**
 * Where boxes and bars come to rest, from starts near and far, good and impossible. A box of breadth b at draught d, its walls in the water: with t = tan φ its B lies
 * BM t across and d ∕ 2 + ½ BM t² up, BM = b² ∕ 12 d (the wall-sided formula of any textbook), so that it rests where y = t (z − d ∕ 2 − BM − ½ BM t²) for
 * G at y and z, with the metacentric height BM ∕ cos³ φ − e, e the height of G over B.
 */
class BalanceTest {

    private static final double LENGTH = 400;
    private static final double BEAM = 100;
    private static final double DRAUGHT = 40;
    private static final double MASS = LENGTH * BEAM * DRAUGHT / 1000;

    private static Condition block(double x, double y, double z) {
        return Condition.of(TestBoats.block(LENGTH, BEAM, 80, MASS, new Vector3D(x, y, z)));
    }

    /** The tangent of the angle at which a box of this size in the plane of turning rests, by halving. */
    private static double tangent(double across, double size, double z) {
        double bm = size * size / 12 / DRAUGHT;
        double low = -0.5;
        double high = 0.5;
        for (int i = 0; i < 200; i++) {
            double t = 0.5 * (low + high);
            boolean beyond = t * (z - DRAUGHT / 2 - bm - 0.5 * bm * t * t) < across;
            low = beyond ? low : t;
            high = beyond ? t : high;
        }
        return low;
    }

    private static void assertAtRest(Condition boat, Balance.Rest rest, double share) {
        assertTrue(rest.found());
        double mass = boat.massG();
        assertEquals(0, rest.trial().force / mass, share);
        assertEquals(0, Math.hypot(rest.trial().slopeAhead, rest.trial().slopePort) / (mass * boat.lengthMm()), share);
    }

    @Test
    void aBoxListsAsItsWeightLies() {
        double z = 15;
        double t = tangent(4, BEAM, z);
        double phi = Math.atan(t);
        Condition boat = block(0, 4, z);
        for (double list : new double[] {0, -60, -25, 5, 40, 120, 179}) {
            for (double height : new double[] {40, 1e-3, 79, -200, 3000}) {
                Balance.Rest rest = Balance.rest(boat, WaterPlane.of(Equilibrium.up(list, 3), height));
                assertAtRest(boat, rest, 1e-12);
                Equilibrium there = rest.equilibrium();
                assertEquals(Math.toDegrees(phi), there.heelDeg(), 1e-8, "from " + list + " at " + height);
                assertEquals(0, there.trimDeg(), 1e-8);
                double bm = BEAM * BEAM / 12 / DRAUGHT;
                double e = Math.sin(phi) * (4 + bm * t) + Math.cos(phi) * (z - DRAUGHT / 2 - 0.5 * bm * t * t);
                assertEquals(e, there.energyMm(), 1e-9);
                assertEquals(bm / Math.pow(Math.cos(phi), 3) - e, there.gmTransverseMm(), 1e-7);
                assertEquals(there.gmTransverseMm(), there.gmLeastMm(), 1e-7);
                assertEquals(rest.cuts(), there.cuts());
            }
        }
    }

    /** The same along her, 8 mm ahead: bow down. With the list held there she trims alike, and the moment across is what the wall-sided formula leaves. */
    @Test
    void aBoxTrimsAsItsWeightLies() {
        double z = 15;
        double t = tangent(8, LENGTH, z);
        Condition boat = block(8, 0, z);
        Balance.Rest free = Balance.rest(boat, WaterPlane.level(50));
        assertAtRest(boat, free, 1e-12);
        assertEquals(Math.toDegrees(Math.atan(t)), free.equilibrium().trimDeg(), 1e-8);
        Trial before = free.trial();
        Balance.Rest held = Balance.restHeld(boat, WaterPlane.level(50), before);
        assertTrue(held.found());
        assertEquals(Math.toDegrees(Math.atan(t)), held.equilibrium().trimDeg(), 1e-6);
        double bm = LENGTH * LENGTH / 12 / DRAUGHT;
        double cos = Math.cos(Math.atan(t));
        double e = Math.sin(Math.atan(t)) * (8 + bm * t) + cos * (z - DRAUGHT / 2 - 0.5 * bm * t * t);
        assertEquals(bm / Math.pow(cos, 3) - e, held.gmLeastMm(), 1e-4 * bm);
        for (double list : new double[] {5, -12}) {
            Condition central = block(0, 0, z);
            Balance.Rest upright = Balance.restHeld(central, WaterPlane.of(Equilibrium.up(list, 2), 40), before);
            assertTrue(upright.found());
            assertEquals(0, upright.equilibrium().trimDeg(), 1e-6);
            assertEquals(list, upright.equilibrium().heelDeg(), 0.02 * Math.abs(list));
            double phi = Math.toRadians(upright.equilibrium().heelDeg());
            double bmAcross = BEAM * BEAM / 12 / DRAUGHT;
            double gm = DRAUGHT / 2 + bmAcross - z;
            double lever = (gm + 0.5 * bmAcross * Math.tan(phi) * Math.tan(phi)) * Math.sin(phi);
            assertEquals(Math.abs(lever), Math.abs(upright.trial().slopePort) / MASS, 1e-6);
        }
    }

    /** G 1.5 and 0.2 mm above M: upright she is on a ridge, and lolls to tan² φ = −2 GM ∕ BM on either side, where her metacentric height is −2 GM ∕ cos φ. */
    @ParameterizedTest
    @ValueSource(doubles = {1.5, 0.2})
    void fromARidgeSheFallsToOneSide(double above) {
        double bm = BEAM * BEAM / 12 / DRAUGHT;
        Condition boat = block(0, 0, DRAUGHT / 2 + bm + above);
        double phi = Math.atan(Math.sqrt(2 * above / bm));
        for (WaterPlane start :
                List.of(WaterPlane.level(40), WaterPlane.level(10), WaterPlane.of(Equilibrium.up(1, 0), 40))) {
            Balance.Rest rest = Balance.rest(boat, start);
            assertAtRest(boat, rest, 1e-12);
            assertEquals(Math.toDegrees(phi), Math.abs(rest.equilibrium().heelDeg()), 1e-6);
            assertEquals(2 * above / Math.cos(phi), rest.gmLeastMm(), 1e-6);
        }
    }

    /** A bar floats with its axis level and G below the axis, by whose distance it is steady however deep it lies. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.5, 0.9})
    void aBarTurnsItsWeightDown(double share) {
        double mass = share * Math.PI * 50 * 50 * 400 / 1000;
        Vector3D g = new Vector3D(0, 6, 8);
        Condition boat = Condition.of(TestBoats.boat(
                TestBoats.body("bar", TestBoats.bar(new Vector3D(-200, 0, 0), new Vector3D(200, 0, 0), 100), mass, g)));
        // Up points away from G: listed so far to port that 6 to port and 8 up are straight down.
        double list = Math.toDegrees(Math.atan2(-6, -8));
        for (double from : new double[] {0, 30, 53.13, -100, 180}) {
            Balance.Rest rest = Balance.rest(boat, WaterPlane.of(Equilibrium.up(from, 1), 0));
            assertAtRest(boat, rest, 1e-12);
            double turn = Math.IEEEremainder(rest.equilibrium().heelDeg() - list, 360);
            assertEquals(0, turn, 1e-7, "from " + from);
            assertEquals(10, rest.equilibrium().gmTransverseMm(), 1e-7);
        }
    }

    /** A raft of two boxes one above the other, the lower under water and a gram to a tenth of the upper carried by it; started in the gap, where no waterplane tells the way. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-4, 1, 80})
    void fromTheGapBetweenTwoBodies(double more) {
        List<Part> parts = new ArrayList<>();
        double lower = 400 * 100 * 20 / 1000.0;
        parts.add(
                TestBoats.body("lower", TestBoats.box(-200, -50, 0, 200, 50, 20), lower + more, new Vector3D(0, 0, 4)));
        parts.add(TestBoats.body("upper", TestBoats.box(-200, -50, 60, 200, 50, 80), 0, new Vector3D(0, 0, 4)));
        Condition boat = Condition.of(TestBoats.boat(parts.toArray(new Part[0])));
        for (double height : new double[] {40, 30, 59, 10, 75}) {
            Balance.Rest rest = Balance.rest(boat, WaterPlane.level(height));
            assertAtRest(boat, rest, 1e-12);
            assertEquals(
                    60 + more * 1000 / (400 * 100), rest.equilibrium().plane().heightMm(), 1e-7);
            assertEquals(0, rest.equilibrium().heelDeg(), 1e-6);
        }
    }

    /** A rest that is known is recognised a tenth of a radian away, and not where it is only near by. */
    @Test
    void aKnownRestIsRecognised() {
        Condition boat = block(0, 4, 15);
        Vector3D there = Equilibrium.up(Math.toDegrees(Math.atan(tangent(4, BEAM, 15))), 0);
        WaterPlane near = WaterPlane.of(Equilibrium.up(Equilibrium.heelDeg(there) + 4, 0), 40);
        assertEquals(
                Optional.empty(),
                Balance.restNear(boat, near, Math.PI, plane -> Vector3D.angle(plane.up(), there) < 0.01));
        Balance.Rest rest =
                Balance.restNear(boat, near, Math.PI, plane -> false).orElseThrow();
        assertAtRest(boat, rest, 1e-12);
        // A step of more than a tenth is no sign yet.
        List<Double> asked = new ArrayList<>();
        WaterPlane far = WaterPlane.of(Equilibrium.up(Equilibrium.heelDeg(there) + 60, 0), 40);
        Balance.restNear(boat, far, Math.PI, plane -> {
            asked.add(Vector3D.angle(plane.up(), there));
            return false;
        });
        assertFalse(asked.isEmpty());
        assertTrue(asked.get(0) < 0.15, asked::toString);
    }

    /** Given up once she has turned farther than she may, which a step of 0.3 at most tells; within it she is followed to the end. */
    @Test
    void sheIsFollowedNoFartherThanAsked() {
        Condition boat = block(0, 4, 15);
        WaterPlane start = WaterPlane.of(Equilibrium.up(80, 0), 40);
        Balance.Rest lost = Balance.restNear(boat, start, 0.4, plane -> false).orElseThrow();
        assertFalse(lost.found());
        double turned = Vector3D.angle(lost.trial().plane().up(), start.up());
        assertTrue(turned > 0.4 && turned < 0.71, "turned by " + turned);
        assertTrue(
                Balance.restNear(boat, start, 1.8, plane -> false).orElseThrow().found());
    }

    /** On the way from one condition to another the answer is told to a billionth of weight and length, for fewer planes. */
    @Test
    void onTheWayABillionthIsEnough() {
        Balance.Rest before = Balance.rest(block(3, 2, 15), WaterPlane.level(40));
        int cuts = 0;
        int cutsOfTruth = 0;
        for (double step : new double[] {1e-4, 1e-3, 0.01, 0.1, 1, 3}) {
            Condition next = block(3 + 0.7 * step, 2 + step, 15 + 0.3 * step);
            Balance.Rest rest = Balance.restOnTheWay(next, before.trial().plane(), before.trial());
            Balance.Rest truth = Balance.rest(next, before.trial().plane());
            assertAtRest(next, rest, 1e-9);
            assertEquals(
                    0,
                    Vector3D.angle(
                            truth.trial().plane().up(), rest.trial().plane().up()),
                    1e-7);
            assertEquals(truth.gmLeastMm(), rest.gmLeastMm(), 1e-3);
            cuts += rest.cuts();
            cutsOfTruth += truth.cuts();
        }
        assertTrue(cuts < cutsOfTruth, cuts + " and " + cutsOfTruth);
    }
}
