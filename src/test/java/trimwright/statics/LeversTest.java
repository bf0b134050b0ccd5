package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.TestParts.box;
import static trimwright.TestParts.compact;
import static trimwright.TestParts.weighed;
import static trimwright.statics.DiveBoats.bar;
import static trimwright.statics.DiveBoats.boat;
import static trimwright.statics.DiveBoats.skin;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.mesh.Solids;

/** Levers where boats list at rest, go over to another trim, or have their deck under. */
class LeversTest {

    private static final Condition ROUND =
            Condition.of(boat(weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 1000, new Vector3D(250, 0, 33))));

    /** A floating ball of radius 40 with G at (−d, 0, −a) from its middle: GZ = a² sin φ cos φ ∕ √(d² + a² cos² φ) (metacentre in the middle). */
    private static Condition ball(double d, double a) {
        BarShape ball = new BarShape(new Vector3D(-40, 0, 0), new Vector3D(40, 0, 0), 80, BarShape.Ends.ROUND);
        return Condition.of(boat(weighed("ball", Kind.CYLINDER, ball, 150, new Vector3D(-d, 0, -a))));
    }

    /** A round hull: GZ = 7 sin φ at any one list; none for a boat that sinks. */
    @Test
    void theLeverAtOneList() {
        for (double deg : new double[] {-40, 0, 3, 100}) {
            assertEquals(
                    7 * Math.sin(Math.toRadians(deg)),
                    RightingCurve.leverMm(ROUND, deg).orElseThrow(),
                    1e-7);
        }
        Condition sunk =
                Condition.of(boat(weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 3000, new Vector3D(250, 0, 33))));
        assertTrue(RightingCurve.leverMm(sunk, 3).isEmpty());
    }

    /** A torque on a ball that trims by 45° at rest: the moment is W GZ, of which the trim takes its part. */
    @ParameterizedTest
    @ValueSource(doubles = {30, -20})
    void torqueOnATrimmedBoat(double deg) {
        double phi = Math.toRadians(deg);
        double gz = 100 * Math.sin(phi) * Math.cos(phi) / Math.hypot(10, 10 * Math.cos(phi));
        SteadyHeel heel = SteadyHeel.underTorque(ball(10, 10), 150 * gz).orElseThrow();
        assertEquals(deg, heel.heelDeg(), 1e-5);
        assertEquals(Math.toDegrees(Math.atan2(10, 10 * Math.cos(phi))), heel.trimDeg(), 1e-5);
    }

    /** Beyond 60° and close to on end her trim changes fast, but nowhere at once: no jump is told. */
    @Test
    void aSteepBoatDoesNotJump() {
        assertEquals(
                List.of(), RightingCurve.surfaced(ball(20, 2), 5).orElseThrow().findings());
    }

    /**
     * A box that lolls by 37.575° either way (closed form), with G a hair or half a millimetre to port: she settles to port. Where the two rests are as good as
     * equal the starboard one is told, where they are not the one that she settles to.
     */
    @Test
    void ofTwoEqualRestsTheStarboardOne() {
        RightingCurve even = loll(1e-6);
        assertEquals(37.575, even.equilibrium().heelDeg(), 1e-2);
        RightingCurve uneven = loll(0.2);
        double rest = uneven.equilibrium().heelDeg();
        assertTrue(rest < -37.575 && rest > -40, "she rests at " + rest);
        // There her lever vanishes.
        assertEquals(0, RightingCurve.leverMm(lolling(0.2), rest).orElseThrow(), 1e-6);
    }

    private static Condition lolling(double toPort) {
        return Condition.of(boat(
                weighed("barge", Kind.CYLINDER, box(0, -5, 0, 100, 5, 12), 6, new Vector3D(50, toPort / 10, 4.8))));
    }

    private static RightingCurve loll(double toPort) {
        return RightingCurve.surfaced(lolling(toPort), 5).orElseThrow();
    }

    /**
     * A short broad box, held at a list of 29.8°, goes over from one trim to another. It is told on both sides with the list and the trims beside it, whatever rows
     * are asked for, and the area is what fine rows sum to by the trapezoid rule: what she falls in between does not right her.
     */
    @Test
    void aTrimThatJumps() {
        Condition condition = shortBox(157, 60, 190, 5, 28);
        RightingCurve fine = RightingCurve.surfaced(condition, 0.5).orElseThrow();
        for (RightingCurve curve :
                List.of(fine, RightingCurve.surfaced(condition, 7).orElseThrow())) {
            assertEquals(2, curve.findings().size());
            for (int k = 0; k < 2; k++) {
                Finding jump = curve.findings().get(k);
                int side = k == 0 ? 1 : -1;
                assertEquals(Code.TRIM_JUMPS, jump.code());
                double list = (Double) jump.values().get("heelDeg");
                assertEquals(side * 29.77, list, 0.01);
                // Where a trim ends it turns ever faster (by the root of what is left of the list): 6° over the last
                // 0.27° here.
                assertEquals(
                        at(fine, side * 29.5).trimDeg(), (Double) jump.values().get("fromTrimDeg"), 7);
                assertEquals(
                        at(fine, side * 30).trimDeg(), (Double) jump.values().get("toTrimDeg"), 2);
            }
            assertEquals(rowSum(fine), curve.summary().areaMmRad(), 4e-3 * rowSum(fine));
        }
    }

    /** Her trim grows from 34° to 65° within five degrees of list, but by and by: nothing goes over, and the area does not hang on the rows. */
    @Test
    void aTrimThatGrowsFast() {
        Condition condition = shortBox(139, 69, 197, 3, 21);
        RightingCurve coarse = RightingCurve.surfaced(condition, 5).orElseThrow();
        assertTrue(at(coarse, 45).trimDeg() - at(coarse, 50).trimDeg() > 30);
        assertEquals(List.of(), coarse.findings());
        RightingCurve fine = RightingCurve.surfaced(condition, 0.5).orElseThrow();
        assertEquals(List.of(), fine.findings());
        assertEquals(
                fine.summary().areaMmRad(),
                coarse.summary().areaMmRad(),
                1e-4 * fine.summary().areaMmRad());
        assertEquals(rowSum(fine), coarse.summary().areaMmRad(), 1e-3 * rowSum(fine));
    }

    /** On an even keel until she trims by one end or, as well, the other: that is no jump either. */
    @Test
    void aTrimByEitherEnd() {
        assertEquals(
                List.of(),
                RightingCurve.surfaced(shortBox(162, 150, 1836, 0, 106), 5)
                        .orElseThrow()
                        .findings());
    }

    private static Condition shortBox(double beam, double depth, double massG, double gx, double kg) {
        return Condition.of(boat(weighed(
                "box", Kind.CYLINDER, box(-50, -beam / 2, 0, 50, beam / 2, depth), massG, new Vector3D(gx, 0, kg))));
    }

    /** From upright to where the curve ends, over rows of half a degree. */
    private static double rowSum(RightingCurve fine) {
        double end = fine.summary().rangeDeg();
        double area = 0;
        double list = 0;
        for (; list + 0.5 <= end; list += 0.5) {
            area += Math.toRadians(0.25)
                    * (at(fine, list).gzMm() + at(fine, list + 0.5).gzMm());
        }
        return area + Math.toRadians(end - list) * at(fine, list).gzMm();
    }

    private static RightingCurve.Row at(RightingCurve curve, double heelDeg) {
        return curve.rows().stream()
                .filter(row -> Math.abs(row.heelDeg() - heelDeg) < 1e-9)
                .findFirst()
                .orElseThrow();
    }

    /** A hull that lists to starboard with her edge under: that is told at the list she rests at. One that never puts it under says nothing. */
    @Test
    void aDeckThatIsUnderAtRest() {
        Boat low = new Boat(
                "low",
                Water.ofDensity(1),
                Optional.empty(),
                List.of(
                        skin("hull", Solids.box(0, -50, 0, 400, 50, 60), 1, 1),
                        weighed("core", Kind.CYLINDER, box(1, -49, 1, 399, 49, 59), 1500, new Vector3D(200, 0, 10)),
                        compact("w", 500, new Vector3D(200, -45, 10))),
                List.of(),
                Targets.NONE);
        RightingCurve curve = RightingCurve.surfaced(Condition.of(low), 5).orElseThrow();
        assertTrue(curve.equilibrium().heelDeg() > 12, "she rests at " + curve.equilibrium());
        assertEquals(curve.equilibrium().heelDeg(), curve.deckEdgeUnderDeg().orElseThrow(), 1e-12);
        assertTrue(RightingCurve.surfaced(ROUND, 15)
                .orElseThrow()
                .deckEdgeUnderDeg()
                .isEmpty());
    }

    /** A fall is told as list and trim. */
    @Test
    void aFallInDegrees() {
        FallsOver fall = new FallsOver(0.3, Equilibrium.up(10, 5), Equilibrium.up(-50, -20));
        assertEquals(10, fall.fromHeelDeg(), 1e-12);
        assertEquals(5, fall.fromTrimDeg(), 1e-12);
        assertEquals(-50, fall.toHeelDeg(), 1e-12);
        assertEquals(-20, fall.toTrimDeg(), 1e-12);
    }

    /** Half to one and a half per cent of her weight with empty tanks is left where nothing is stated (common practice, no source), or what is stated. */
    @Test
    void theBuoyancyThatIsWanted() {
        ResidualWanted usual = ResidualWanted.of(ROUND);
        assertEquals(new ResidualWanted(5, 15, false), usual);
        assertEquals(10, usual.middleG(), 1e-12);
        Targets stated = new Targets(
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Targets.Band(20, 50)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Boat plain = ROUND.boat();
        Boat boat = new Boat(plain.name(), plain.water(), plain.paintedLine(), plain.parts(), plain.zones(), stated);
        assertEquals(new ResidualWanted(20, 50, true), ResidualWanted.of(Condition.of(boat)));
        assertEquals(35, ResidualWanted.of(Condition.of(boat)).middleG(), 1e-12);
    }
}
