package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/** Rafts as they float held against what is wanted, and what is wanted itself; by hand. */
class VerdictTest {

    private static final double KM = 20 + 100 * 100 / 480.0;

    private static List<Miss> misses(Boat boat, Wanted wanted) {
        Condition condition = Condition.of(boat);
        Optional<Flotation> dived = condition.tankVolumeMm3() > 0
                ? Optional.of(Flotation.settling(condition.withAllTanksAt(1)))
                : Optional.empty();
        return Verdict.misses(PlanBoats.request(boat, wanted, Goal.LEAST_MASS), Flotation.settling(condition), dived);
    }

    private static Boat raft(double massG, double x, double y, double z) {
        return PlanBoats.raft(massG, TestParts.at(x, y, z), List.of());
    }

    private static void misses(Aim aim, double amount, double tolerance, Boat boat, Wanted wanted) {
        List<Miss> misses = misses(boat, wanted);
        assertEquals(List.of(aim), misses.stream().map(Miss::aim).toList(), misses.toString());
        assertEquals(amount, misses.get(0).amount(), tolerance);
        assertEquals(Optional.empty(), misses.get(0).cause());
    }

    /** 40 g put the raft 1 mm deeper; half a mm is allowed. */
    @Test
    void tooDeepAndTooHigh() {
        misses(Aim.LINE, 0.5, 1e-6, raft(1640, 200, 0, 25), PlanBoats.WANTED);
        misses(Aim.LINE, -0.5, 1e-6, raft(1560, 200, 0, 25), PlanBoats.WANTED);
        assertEquals(List.of(), misses(raft(1619, 200, 0, 25), PlanBoats.WANTED));
        assertEquals(List.of(), misses(raft(1581, 200, 0, 25), PlanBoats.WANTED));
    }

    /** One g·mm in 533 333 of trim, less the 5 mm of G above B; the end that is farther off counts. */
    @Test
    void offAtOneEnd() {
        double inertia = 100 * Math.pow(400, 3) / 12 / 1000;
        double ends = 200 * 1600 * 4 / (inertia - 1600 * 5);
        for (int way : new int[] {1, -1}) {
            misses(Aim.LINE, ends - 0.5, 1e-3, raft(1600, 200 + 4 * way, 0, 25), PlanBoats.WANTED);
            // 4 g deeper: the end that lies deeper is the farther off, too deep.
            misses(Aim.LINE, ends + 0.1 - 0.5, 0.01, raft(1604, 200 + 4 * way, 0, 25), PlanBoats.WANTED);
            misses(Aim.LINE, -(ends + 0.1 - 0.5), 0.01, raft(1596, 200 + 4 * way, 0, 25), PlanBoats.WANTED);
        }
    }

    /** Wall-sided: tan φ (GM + BM tan² φ ∕ 2) = the way of G to the side. */
    @Test
    void listing() {
        double gm = KM - 25;
        double tan = 0.0;
        for (int i = 0; i < 50; i++) {
            tan = 0.5 / (gm + 100 * 100 / 480.0 * tan * tan / 2);
        }
        double list = Math.toDegrees(Math.atan(tan));
        misses(Aim.LIST, -(list - 0.3), 1e-4, raft(1600, 200, 0.5, 25), PlanBoats.WANTED);
        misses(Aim.LIST, list - 0.3, 1e-4, raft(1600, 200, -0.5, 25), PlanBoats.WANTED);
    }

    @Test
    void tooSoft() {
        misses(Aim.GM, KM - 25 - 16, 1e-6, raft(1600, 200, 0, 25), PlanBoats.WANTED.withStability(6, 16));
        assertEquals(List.of(), misses(raft(1600, 200, 0, 25), PlanBoats.WANTED.withStability(6, 15.8)));
    }

    /** 2500 g are more than all of her carries: she lies deeper than by the 20 mm from her line to her deck. */
    @Test
    void sunk() {
        misses(Aim.LINE, 19.5, 1e-9, raft(2500, 200, 0, 25), PlanBoats.WANTED);
    }

    private static Boat diver(double tankMm) {
        return PlanBoats.divingRaft(1600, TestParts.at(200, 0, 25), tankMm, List.of());
    }

    /** 800 cm³ stand above the line, 2 cm³ to the mm of the tank; 20 to 40 g may be left. */
    @Test
    void residual() {
        misses(Aim.RESIDUAL, 10, 1e-6, diver(375), PlanBoats.WANTED);
        misses(Aim.RESIDUAL, -10, 1e-6, diver(395), PlanBoats.WANTED);
        assertEquals(List.of(), misses(diver(381), PlanBoats.WANTED));
        assertEquals(List.of(), misses(diver(389), PlanBoats.WANTED));
    }

    @Test
    void bgDived() {
        double bg = (1600 * 5 + 770 * 10) / 2370.0;
        misses(Aim.BG, bg - 8, 1e-6, diver(385), PlanBoats.WANTED.withStability(8, 4));
        assertEquals(List.of(), misses(diver(385), PlanBoats.WANTED.withStability(6.6, 4)));
    }

    /**
     * Under water, all of it: she hangs with B over G, which stands 770 · d ∕ 2370 off the middle and 6.62 mm under it. Sunk, so that nothing is left above.
     * Her list is held to what is wanted of it, as when surfaced.
     */
    @Test
    void hangingAskew() {
        Boat boat = diver(400.5);
        double bg = (1600 * 5 + 801 * 10) / 2401.0;
        double off = 801 * 0.4 / 2401;
        Wanted wanted = new Wanted(6, 4, new Targets.Band(-5, 5), 0.5, 0.3, 0.5);
        double tilt = Math.toDegrees(Math.atan(off / bg));
        for (int way : new int[] {1, -1}) {
            Boat along = Shifted.along(boat, "tank", 0.4 * way);
            misses(Aim.DIVED_TRIM, -way * (tilt - 0.5), 1e-3, along, wanted);
            List<Part> parts = new ArrayList<>(boat.parts());
            Part tank = boat.part("tank").orElseThrow();
            parts.set(
                    parts.indexOf(tank),
                    PlanBoats.tank(
                            "tank", "raft", TestParts.box(-0.25, 0.4 * way - 40, 7.5, 400.25, 0.4 * way + 40, 32.5)));
            misses(Aim.DIVED_LIST, -way * (tilt - 0.5), 1e-3, boat.withParts(parts), wanted);
        }
    }

    @Test
    void whatIsLeftOpenIsCommonPractice() {
        Wanted open = Wanted.of(Targets.NONE, 1000);
        assertEquals(new Wanted(5, 5, new Targets.Band(5, 15), 1, 0.5, 2), open);
        Targets given = new Targets(
                Optional.of(7.0),
                Optional.of(8.0),
                Optional.of(new Targets.Band(1, 3)),
                Optional.of(0.2),
                Optional.of(0.3),
                Optional.of(0.4));
        Wanted all = Wanted.of(given, 1000);
        assertEquals(new Wanted(7, 8, new Targets.Band(1, 3), 0.2, 0.3, 0.4), all);
        assertEquals(2, all.middleResidualG());
    }

    /** Eased by as much as is missed, in the direction in which it is missed; a trim is half its rise over the line's length at each end. */
    @Test
    void easing() {
        Wanted w = PlanBoats.WANTED;
        assertEquals(new Wanted(6, 4, w.residualG(), 0.75, 0.3, 1.5), w.eased(Aim.LINE, -0.25, 400));
        assertEquals(
                new Wanted(6, 4, w.residualG(), 0.5 + 200 * Math.tan(Math.toRadians(1)), 0.3, 1.5),
                w.eased(Aim.TRIM, -1, 400));
        assertEquals(new Wanted(6, 4, w.residualG(), 0.5, 0.55, 1.5), w.eased(Aim.LIST, -0.25, 400));
        assertEquals(new Wanted(6, 4, w.residualG(), 0.5, 0.3, 1.75), w.eased(Aim.DIVED_LIST, 0.25, 400));
        assertEquals(new Wanted(6, 4, new Targets.Band(20, 43), 0.5, 0.3, 1.5), w.eased(Aim.RESIDUAL, 3, 400));
        assertEquals(new Wanted(6, 4, new Targets.Band(17, 40), 0.5, 0.3, 1.5), w.eased(Aim.RESIDUAL, -3, 400));
        assertEquals(new Wanted(6, 4, w.residualG(), 0.5, 0.3, 2), w.eased(Aim.DIVED_TRIM, -0.5, 400));
        assertEquals(new Wanted(4, 4, w.residualG(), 0.5, 0.3, 1.5), w.eased(Aim.BG, -2, 400));
        assertEquals(new Wanted(0, 4, w.residualG(), 0.5, 0.3, 1.5), w.eased(Aim.BG, -20, 400));
        assertEquals(new Wanted(6, 1, w.residualG(), 0.5, 0.3, 1.5), w.eased(Aim.GM, -3, 400));
        assertEquals(new Wanted(6, 0, w.residualG(), 0.5, 0.3, 1.5), w.eased(Aim.GM, -30, 400));
    }

    private static List<String> contradictions(Wanted wanted) {
        return wanted.contradictions().stream()
                .map(f -> f.code() + " " + f.values().get("aim"))
                .toList();
    }

    @Test
    void whatNoBoatCanMeet() {
        Targets.Band band = new Targets.Band(0, 0);
        assertEquals(List.of(), contradictions(new Wanted(0, 0, band, 1e-9, 1e-9, 1e-9)));
        assertEquals(
                List.of(
                        "AIM_OUT_OF_RANGE residualG",
                        "AIM_OUT_OF_RANGE bgMm",
                        "AIM_OUT_OF_RANGE gmMm",
                        "AIM_OUT_OF_RANGE offLineMm",
                        "AIM_OUT_OF_RANGE listDeg",
                        "AIM_OUT_OF_RANGE divedTrimDeg"),
                contradictions(new Wanted(-1, -1, new Targets.Band(-1, 0), 0, 0, 0)));
        assertEquals(
                List.of("AIM_BAND_REVERSED residualG", "AIM_OUT_OF_RANGE bgMm", "AIM_OUT_OF_RANGE offLineMm"),
                contradictions(new Wanted(Double.NaN, 0, new Targets.Band(2, 1), Double.POSITIVE_INFINITY, 1, 1)));
        Finding reversed = new Wanted(0, 0, new Targets.Band(2, 1), 1, 1, 1)
                .contradictions()
                .get(0);
        assertEquals(Code.AIM_BAND_REVERSED, reversed.code());
        assertEquals(2.0, reversed.values().get("leastG"));
        assertEquals(1.0, reversed.values().get("greatestG"));
    }

    /** Names and units that scripts rely on. */
    @Test
    void namesOfAims() {
        assertEquals(
                List.of(
                        "line mm",
                        "trim deg",
                        "list deg",
                        "residual g",
                        "dived_trim deg",
                        "dived_list deg",
                        "bg mm",
                        "gm mm"),
                Arrays.stream(Aim.values()).map(a -> a.key() + " " + a.unit()).toList());
    }

    /** Told a little farther than the programme thinks, rounded away from nothing: mm to tenths, volumes and grams to two digits. */
    @ParameterizedTest
    @CsvSource({
        "LINE_RAISED, '', 2.01, 0, 2.1",
        "LINE_RAISED, '', -2.01, 0, -2.1",
        "LINE_RAISED, '', 2.1, 0, 2.1",
        "LINE_RAISED, '', 2, 0.1, 2.2",
        "LINE_RAISED, '', -8, 0.1, -8.4",
        "TANK_SHIFT, '', 0.01, 0, 0.1",
        "TANK_VOLUME, '', 123.4, 0, 130",
        "TANK_VOLUME, '', -12.34, 0, -13",
        "TANK_REPLACED, '', 0.01234, 0, 0.013",
        "MORE_ROOM, lead, 99, 0, 99",
        "AIM_EASED, residual, 99.5, 0, 100",
        "AIM_EASED, bg, -1.234, 0.3, -1.7"
    })
    void farther(WayOut.Kind kind, String subject, double amount, double more, double told) {
        WayOut way = new WayOut(kind, subject, amount, -5.01, 77, 3);
        // No step is counted as more than 4.
        WayOut farther = way.farther(more, 4);
        assertEquals(told, farther.amount(), 1e-9);
        assertEquals(Math.copySign(Math.ceil(50.1 * (1 + more)) / 10, -1), farther.shiftMm(), 1e-9);
        assertEquals(77, farther.addedG());
        assertEquals(subject, farther.subject());
        double gone = amount + Math.copySign(more * Math.min(4, Math.abs(amount)), amount);
        assertEquals(3 * gone / amount, farther.effort(), 1e-9);
    }

    @Test
    void waysOutInOrder() {
        assertEquals(new WayOut(WayOut.Kind.TAKEN_OUT, "a", 20, 0, 0, 4), WayOut.takingOut("a", 20));
        assertEquals(1, WayOut.takingOut("a", 2).effort());
        assertEquals(
                new WayOut(WayOut.Kind.TAKEN_OUT, "a", 20, 0, 9, 4),
                WayOut.takingOut("a", 20).adding(9));
        WayOut nothing = new WayOut(WayOut.Kind.TANK_VOLUME, "", 0, 0, 0, 3).farther(0.5, 4);
        assertEquals(0, nothing.amount());
        assertEquals(3, nothing.effort());
        assertTrue(Comparator.comparingDouble(WayOut::effort).compare(nothing, WayOut.takingOut("a", 20)) < 0);
    }

    private static PlanRequest painted(Vector3D aft, Vector3D fore) {
        Boat raft = raft(1600, 200, 0, 25);
        return PlanBoats.request(
                new Boat(
                        raft.name(),
                        raft.water(),
                        Optional.of(new trimwright.boat.PaintedLine(List.of(aft, fore))),
                        raft.parts(),
                        List.of(),
                        Targets.NONE),
                PlanBoats.WANTED,
                Goal.LEAST_MASS);
    }

    /** The ends of the line are the painted points, or those of the boat on the plane asked for; raised by mm along the boat's height. */
    @Test
    void theLineAndItsEnds() {
        PlanRequest request = painted(TestParts.at(100, 0, 41), TestParts.at(300, 0, 43));
        assertEquals(0, request.foreMm().distance(TestParts.at(300, 0, 43)), 1e-9);
        assertEquals(0, request.aftMm().distance(TestParts.at(100, 0, 41)), 1e-9);
        PlanRequest raised = request.withLineRaised(3);
        assertEquals(0, raised.foreMm().distance(TestParts.at(300, 0, 46)), 1e-9);
        assertEquals(0, raised.aftMm().distance(TestParts.at(100, 0, 44)), 1e-9);
        assertEquals(3, request.offset(raised.line()).bowMm(), 1e-9);
        Boat bare = raft(1600, 200, 0, 25);
        PlanRequest unpainted = new PlanRequest(
                new Boat(bare.name(), bare.water(), Optional.empty(), bare.parts(), List.of(), Targets.NONE),
                request.line(),
                PlanBoats.WANTED,
                Goal.LEAST_MASS,
                11.34,
                0.03,
                java.util.Set.of());
        assertEquals(0, unpainted.foreMm().distance(TestParts.at(400, 0, 44)), 1e-9);
        assertEquals(0, unpainted.aftMm().distance(TestParts.at(0, 0, 40)), 1e-9);
    }
}
