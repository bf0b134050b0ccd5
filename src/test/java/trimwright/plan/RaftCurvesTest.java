package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Zone;
import trimwright.mesh.Solids;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/**
 * What stability costs on a raft, by hand: lead 5 mm under her and foam at her sides carry each other, l (1 − 1 ∕ 11.34) = 0.97 f with l in g and f in cm³.
 */
class RaftCurvesTest {

    private static final double WET_LEAD = 1 - 1 / 11.34;
    static final Vector3D MIDDLE = TestParts.at(200, 0, 25);
    static final Zone KEEL = PlanBoats.zone("keel", Zone.Use.BALLAST, TestParts.box(150, -10, -10, 250, 10, 0), false);

    /** Foam on both sides over 10 mm of her height, as many cm³ in all. */
    private static Zone foam(String id, double fromZ, double cm3) {
        double half = cm3 * 1000 / (2 * 10 * 10) / 2;
        return PlanBoats.zone(
                id, Zone.Use.FOAM, TestParts.box(200 - half, 50, fromZ, 200 + half, 60, fromZ + 10), true);
    }

    /** Held to her line to a hair, so that nothing is gained by being off it. */
    private static PlanRequest request(Boat boat, Goal goal) {
        return PlanBoats.request(boat, new Wanted(6, 4, new Targets.Band(20, 40), 1e-3, 0.3, 1.5), goal);
    }

    /** GM with lead, and foam at heights. */
    private static double gm(double lead, double high, double low) {
        double upright = 1600 * 20
                + lead / 11.34 * -5
                + high * 35
                + low * 15
                + 400e6 / 12 / 1000
                - (1600 * 25 + lead * -5 + 0.03 * (high * 35 + low * 15));
        return upright / (1600 + lead + 0.03 * (high + low));
    }

    /** The foam at 35 mm is used first: 40 mm from the lead it sets her up twice as much as that at 15 mm. Where it ends the curve bends. */
    @Test
    void theCurveAndItsKnee() {
        Boat boat = PlanBoats.raft(1600, MIDDLE, List.of(KEEL, foam("high", 30, 20), foam("low", 10, 40)));
        TradeOff curve = TradeOff.of(request(boat, Goal.LEAST_MASS), 9);
        assertEquals(9, curve.points().size());
        double highLead = 20 * 0.97 / WET_LEAD;
        double allLead = 60 * 0.97 / WET_LEAD;
        double from = gm(0, 0, 0);
        double to = gm(allLead, 20, 40);
        for (int i = 0; i < 9; i++) {
            TradeOff.Point p = curve.points().get(i);
            // The firmest is found by halving twelve times, from a step as large as her GM.
            assertEquals(from + (to - from) * i / 8, p.gmMm(), 16 / 4096.0 * i / 8 + 1e-6);
            // The added mass by halving: the curve rises with it.
            double low = 0;
            double high = allLead;
            while (high - low > 1e-9) {
                double lead = 0.5 * (low + high);
                double f = lead * WET_LEAD / 0.97;
                if (gm(lead, Math.min(20, f), Math.max(0, f - 20)) < p.gmMm()) {
                    low = lead;
                } else {
                    high = lead;
                }
            }
            // She is held to 0.04 g at the most, which moves either by as much.
            assertEquals(low + 0.03 * low * WET_LEAD / 0.97, p.addedG(), 0.1, "point " + i);
        }
        // The point farthest from the chord is the one nearest to where the foam at 35 mm ends.
        double gain = (gm(highLead, 20, 0) - from) / (to - from);
        assertEquals(Math.rint(8 * gain), curve.knee());
    }

    @Test
    void aStraightCurveHasNoKnee() {
        Boat boat = PlanBoats.raft(1600, MIDDLE, List.of(KEEL, foam("high", 30, 20)));
        TradeOff curve = TradeOff.of(request(boat, Goal.LEAST_MASS), 5);
        assertEquals(5, curve.points().size());
        assertEquals(-1, curve.knee());
        assertEquals(20 * 0.97 / WET_LEAD + 0.6, curve.points().get(4).addedG(), 0.25);
        Boat heavy = PlanBoats.raft(1900, MIDDLE, List.of(KEEL, foam("high", 30, 20)));
        assertEquals(new TradeOff(List.of(), -1), TradeOff.of(request(heavy, Goal.LEAST_MASS), 5));
    }

    /** One that dives is judged by BG: 1600 g 5 mm and 770 g 10 mm under the middle, lead 35 mm under it and foam 5 or 15 mm off it. */
    @Test
    void theCurveOfOneThatDives() {
        Boat boat = PlanBoats.divingRaft(1600, MIDDLE, 385, List.of(KEEL, foam("high", 30, 20), foam("low", 10, 40)));
        TradeOff curve = TradeOff.of(request(boat, Goal.LEAST_MASS), 5);
        assertEquals((1600 * 5 + 770 * 10) / 2370.0, curve.points().get(0).bgMm(), 1e-3);
        double lead = 60 * 0.97 / WET_LEAD;
        // B of all of it against its weights, about the middle of the raft.
        double bg = (1600 * 5 + 770 * 10 + lead * 35 * WET_LEAD + 20 * 0.97 * 5 - 40 * 0.97 * 15) / (2370 + lead + 1.8);
        assertEquals(bg, curve.points().get(4).bgMm(), 2e-3 * bg);
        assertEquals(
                gm(lead, 20, 40) * (1600 + lead + 1.8) / (1600 + lead + 1.8),
                curve.points().get(4).gmMm(),
                0.05);
        for (int i = 1; i < 5; i++) {
            assertEquals(
                    curve.points().get(1).bgMm() - curve.points().get(0).bgMm(),
                    curve.points().get(i).bgMm() - curve.points().get(i - 1).bgMm(),
                    1e-3);
        }
    }

    /** As much lead as is said with the foam that carries it; less where there is no room for so much foam. */
    @ParameterizedTest
    @CsvSource({"30, 30", "100, 42"})
    void leadWithItsFoam(double asked, double added) {
        Boat boat = PlanBoats.raft(1600, MIDDLE, List.of(KEEL, foam("high", 30, 40)));
        BallastPlan plan = Planner.plan(PlanBoats.request(boat, PlanBoats.WANTED, Goal.firmestWithLead(asked)));
        assertTrue(plan.feasible());
        assertEquals(added, plan.addedLeadG(), 1);
        // Foam is cut to a mm of 0.2 cm³; the line leaves 20 g of room.
        assertEquals(added * WET_LEAD / 0.97, plan.addedFoamMm3() / 1000, 2);
    }

    /** A raft as she floats: her own plane, half of GM and BG, her residual to 1.5 g, and a share of her list. */
    @Test
    void whatAPairKeeps() {
        Boat raft = PlanBoats.raft(1640, TestParts.at(200, 0.5, 25), List.of());
        Equilibrium rest = Flotation.settling(trimwright.statics.Condition.of(raft))
                .settled()
                .orElseThrow();
        PlanRequest request =
                Pairing.keepingLine(raft, Goal.LEAST_MASS, 11, 0.05).orElseThrow();
        assertEquals(rest.plane(), request.line());
        assertEquals(0.5 * rest.gmTransverseMm(), request.wanted().gmMm(), 1e-9);
        assertEquals(0.3 * Math.abs(rest.heelDeg()), request.wanted().listDeg(), 1e-9);
        assertEquals(0.1, request.wanted().offLineMm());
        assertEquals(0.5, request.wanted().divedTrimDeg());
        assertEquals(2400 - 1640 - 1.5, request.wanted().residualG().least(), 1e-6);
        assertEquals(2400 - 1640 + 1.5, request.wanted().residualG().greatest(), 1e-6);
        // B over G of all of it, under water: 5 mm up and half a mm aside.
        assertEquals(0.5 * Math.hypot(5, 0.5), request.wanted().bgMm(), 1e-6);
        assertEquals(11, request.leadGPerCm3());
        assertEquals(0.05, request.foamGPerCm3());
        assertEquals(Optional.empty(), request.divedUp());
        Boat level = PlanBoats.raft(1640, MIDDLE, List.of());
        assertEquals(
                0.1,
                Pairing.keepingLine(level, Goal.LEAST_MASS, 11, 0.05)
                        .orElseThrow()
                        .wanted()
                        .listDeg());
        assertEquals(
                Optional.empty(),
                Pairing.keepingLine(PlanBoats.raft(2500, MIDDLE, List.of()), Goal.LEAST_MASS, 11, 0.05));
    }

    /** Sunk to the last gram she hangs with B over G: 801 g of water 0.4 mm ahead of the middle. That is how she is to lie again, and is no trim against it. */
    @Test
    void aPairKeepsHowSheHangs() {
        Boat boat = Shifted.along(PlanBoats.divingRaft(1600, MIDDLE, 400.5, List.of()), "tank", 0.4);
        PlanRequest request =
                Pairing.keepingLine(boat, Goal.LEAST_MASS, 11, 0.05).orElseThrow();
        double tilt = Math.atan(801 * 0.4 / (1600 * 5 + 801 * 10));
        Vector3D up = request.divedUp().orElseThrow();
        assertEquals(-Math.sin(tilt), up.getX(), 1e-6);
        assertEquals(Math.cos(tilt), up.getZ(), 1e-6);
        Flotation dived =
                Flotation.settling(trimwright.statics.Condition.of(boat).withAllTanksAt(1));
        assertEquals(0, request.divedTrimOffDeg(dived), 1e-6);
        assertEquals(0, request.divedListOffDeg(dived), 1e-6);
        double bg = Math.hypot(801 * 0.4, 1600 * 5 + 801 * 10) / 2401;
        assertEquals(bg, request.divedBgMm(Flotation.settling(trimwright.statics.Condition.of(boat))), 1e-6);
        PlanRequest level = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        assertEquals(-Math.toDegrees(tilt), level.divedTrimOffDeg(dived), 1e-6);
        assertEquals(
                bg * Math.cos(tilt), level.divedBgMm(Flotation.settling(trimwright.statics.Condition.of(boat))), 1e-6);
    }

    /** With 30 g out of the water she lies dived as she floats, not as she would hang; her list and trim there are those told against level. */
    @Test
    void howSheLiesWithSomethingOutOfTheWater() {
        Part tank = PlanBoats.tank("tank", "raft", TestParts.box(8, -39.6, 7.5, 393, 40.4, 32.5));
        Boat boat = PlanBoats.raft(1600, MIDDLE, List.of(), tank);
        Flotation dived =
                Flotation.settling(trimwright.statics.Condition.of(boat).withAllTanksAt(1));
        Equilibrium rest = dived.settled().orElseThrow();
        double hanging = Math.toDegrees(Math.atan(770 * 0.5 / (1600 * 5 + 770 * 10)));
        assertTrue(Math.abs(rest.trimDeg()) > 0.01 && Math.abs(rest.trimDeg()) < 0.9 * hanging);
        PlanRequest level = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        assertEquals(rest.trimDeg(), level.divedTrimOffDeg(dived), 1e-9);
        assertEquals(rest.heelDeg(), level.divedListOffDeg(dived), 1e-9);
        PlanRequest same = Pairing.keepingLine(boat, Goal.LEAST_MASS, 11, 0.05).orElseThrow();
        assertEquals(rest.plane().up(), same.divedUp().orElseThrow());
        assertTrue(Math.abs(rest.heelDeg()) > 0.01);
        assertEquals(0, same.divedTrimOffDeg(dived), 1e-9);
        assertEquals(0, same.divedListOffDeg(dived), 1e-9);
    }

    /** A cylinder moved takes with it what stands in it, and what stands in that; nothing else. */
    @Test
    void whatMovesAlong() {
        Part motor = TestParts.inside("tank", TestParts.compact("motor", 10.0, TestParts.at(100, 1, 2)));
        BarShape bar = new BarShape(TestParts.at(0, 3, 80), TestParts.at(9, 4, 80), 4, BarShape.Ends.ROUND);
        Part rod = TestParts.solid("rod", Kind.CYLINDER, bar, 1);
        Part cap = TestParts.inside("rod", TestParts.solid("cap", Kind.FITTING, TestParts.box(0, 0, 0, 1, 1, 1), 1));
        Boat boat = PlanBoats.divingRaft(1600, MIDDLE, 385, List.of(), motor, rod, cap);
        Boat moved = Shifted.along(boat, "raft", 7);
        assertEquals(
                TestParts.box(7, -50, 0, 407, 50, 60),
                moved.part("raft").orElseThrow().shape().orElseThrow());
        assertEquals(
                TestParts.box(14.5, -40, 7.5, 399.5, 40, 32.5),
                moved.part("tank").orElseThrow().shape().orElseThrow());
        assertEquals(
                TestParts.at(107, 1, 2),
                moved.part("motor").orElseThrow().givenCentreMm().orElseThrow());
        assertEquals(rod, moved.part("rod").orElseThrow());
        assertEquals(cap, moved.part("cap").orElseThrow());
        assertEquals(
                List.of("raft", "motor", "tank"),
                Shifted.changed(boat, moved).stream().map(Part::id).toList());
        Boat turned = Shifted.along(boat, "rod", -2);
        BarShape there = (BarShape) turned.part("rod").orElseThrow().shape().orElseThrow();
        assertEquals(new BarShape(TestParts.at(-2, 3, 80), TestParts.at(7, 4, 80), 4, BarShape.Ends.ROUND), there);
        assertTrue(Shifted.canMove(rod));
        assertTrue(Shifted.canMove(boat.part("tank").orElseThrow()));
        assertFalse(Shifted.canMove(motor));
        Part hull = TestParts.hull("h", Solids.box(0, 0, 0, 1, 1, 1), new HullBuild.Skin(1), 1);
        assertFalse(Shifted.canMove(hull));
        assertFalse(
                Shifted.canMove(TestParts.solid("m", Kind.CYLINDER, hull.shape().orElseThrow(), 1)));
    }

    /** A tank 5 mm too far ahead may stand 0.24 mm off the middle: it is found where one of nine tries falls there, and not where none does. */
    @Test
    void theBestPlaceOfATank() {
        Boat boat = Shifted.along(PlanBoats.divingRaft(1600, MIDDLE, 385, List.of()), "tank", 5);
        PlanRequest request = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        Shifted.Best best = Shifted.best(request, "tank", -20, 20).orElseThrow();
        assertEquals(-5, best.shiftMm());
        assertEquals("tank", best.id());
        assertEquals(Shifted.along(boat, "tank", -5), best.boat());
        assertEquals(Optional.empty(), Shifted.best(request, "tank", 0, 20));
        assertEquals(
                -5.1, Shifted.best(request, "tank", -5.1, -5.1).orElseThrow().shiftMm(), 1e-12);
    }

    /**
     * 400 g on deck stand 7.3 mm too far ahead; lead at one end and foam at the other make up for what is left. Nothing is to be added with them 7.3 mm back, told in whole mm where that is within the
     * limits. A post 1 mm behind them stops them there.
     */
    @Test
    void theBestPlaceIsWhereLeastIsAdded() {
        List<Zone> ends = new java.util.ArrayList<>();
        for (double x : new double[] {-20, 400}) {
            ends.add(PlanBoats.zone("lead" + x, Zone.Use.BALLAST, TestParts.box(x, -10, -10, x + 20, 10, 0), false));
            ends.add(PlanBoats.zone("foam" + x, Zone.Use.FOAM, TestParts.box(x, -30, 0, x + 20, 30, 40), false));
        }
        Part pod = TestParts.weighed(
                "pod", Kind.CYLINDER, TestParts.box(150, -5, 60, 250, 5, 70), 400, TestParts.at(207.3, 0, 60));
        Boat boat = PlanBoats.raft(1200, MIDDLE, ends, pod);
        PlanRequest request = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        assertEquals(-7, Shifted.best(request, "pod", -20, 20).orElseThrow().shiftMm());
        assertEquals(-7, Shifted.best(request, "pod", -7, 20).orElseThrow().shiftMm());
        assertEquals(-8, Shifted.best(request, "pod", -20, -8).orElseThrow().shiftMm());
        assertEquals(
                -7.3, Shifted.best(request, "pod", -7.4, -7.2).orElseThrow().shiftMm(), 0.01);
        Part post = TestParts.solid("post", Kind.FITTING, TestParts.box(139, -5, 60, 149, 5, 70), 1e-9);
        PlanRequest stopped = request.withBoat(PlanBoats.raft(1200, MIDDLE, ends, pod, post));
        assertEquals(-1, Shifted.best(stopped, "pod", -20, 20).orElseThrow().shiftMm());
    }
}
