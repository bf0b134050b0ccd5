package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/** Plans against problems solved by hand, and every plan against the nonlinear solver. */
class PlannerTest {

    @Test
    void aSubmarineIsPlannedAndFloats() {
        BallastPlan plan =
                Planner.plan(PlanBoats.request(PlanBoats.submarine(88, 1250, 1.5), PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        holds(plan, PlanBoats.WANTED);
        assertTrue(plan.rounding().roundedMassG() >= plan.rounding().idealMassG() - 2);
    }

    /** Floating the planned boat from scratch gives what the plan foretold. */
    static void holds(BallastPlan plan, Wanted wanted) {
        Flotation afloat = Flotation.of(plan.planned());
        Equilibrium rest = afloat.settled().orElseThrow();
        assertEquals(0, afloat.fromPaintedLine().orElseThrow().bowMm(), wanted.offLineMm());
        assertEquals(0, afloat.fromPaintedLine().orElseThrow().sternMm(), wanted.offLineMm());
        assertEquals(0, rest.heelDeg(), wanted.listDeg());
        assertTrue(rest.gmTransverseMm() >= wanted.gmMm());
        assertTrue(afloat.submerged().bgMm() >= wanted.bgMm());
        assertTrue(afloat.submerged().residualG() >= wanted.residualG().least());
        assertTrue(afloat.submerged().residualG() <= wanted.residualG().greatest());
        Equilibrium dived =
                Flotation.of(plan.planned().withAllTanksAt(1)).settled().orElseThrow();
        assertEquals(0, dived.trimDeg(), wanted.divedTrimDeg());
    }

    /** A tank that is 55 cm³ too small: said so, with how much larger it would have to be, and the plan with such a tank holds. */
    @Test
    void aTankTooSmallIsNamedAndTheWayOutHolds() {
        Boat boat = PlanBoats.submarine(70, 1250, 0);
        PlanRequest request = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        BallastPlan plan = Planner.plan(request);
        assertFalse(plan.feasible());
        Miss miss = plan.misses().stream()
                .filter(m -> m.aim() == Aim.RESIDUAL)
                .findFirst()
                .orElseThrow();
        assertTrue(miss.amount() > 0);
        Cause cause = miss.cause().orElseThrow();
        assertEquals(Cause.Kind.TANK_TOO_SMALL, cause.kind());
        assertEquals(Math.PI * 35 * 35 * 70 / 1000, cause.figure("tankCm3"), 1e-6);
        // By hand above 84 mm: the walls of 1.5 mm and the deck, the tower, and the cylinder's segment over its 500 mm.
        double segment = 38 * 38 * Math.acos(34 / 38.0) - 34 * Math.sqrt(38 * 38 - 34 * 34);
        double above = 1.5 * (2 * (800 + 120) * (110 - 84) + 800 * 120) + 80 * 24 * 40 + segment * 500;
        assertEquals(above / 1000, cause.figure("aboveCm3"), 1e-3 * above / 1000);
        assertEquals(above / 1000 - 40 / boat.water().densityGPerCm3(), cause.figure("neededCm3"), 1e-3 * above / 1000);
        WayOut tank = Planner.answer(request).waysOut().stream()
                .filter(w -> w.kind() == WayOut.Kind.TANK_VOLUME)
                .findFirst()
                .orElseThrow();
        assertTrue(tank.amount() > 0);
        double section = Math.PI * 35 * 35;
        Boat larger = PlanBoats.submarine(70 + tank.amount() * 1000 / section + 0.5, 1250, 0);
        assertTrue(Planner.plan(PlanBoats.request(larger, PlanBoats.WANTED, Goal.LEAST_MASS))
                .feasible());
    }

    /** Common practice, no source: lead and the foam that carries it leave the line alone and raise GM and BG. */
    @Test
    void aPairLeavesTheLineAlone() {
        BallastPlan trimmed =
                Planner.plan(PlanBoats.request(PlanBoats.submarine(88, 1250, 0), PlanBoats.WANTED, Goal.LEAST_MASS));
        Boat boat = trimmed.planned();
        Flotation before = Flotation.of(boat);
        PlanRequest request = Pairing.keepingLine(boat, Goal.firmestWithLead(200), 11.34, 0.03)
                .orElseThrow();
        BallastPlan pair = Planner.plan(request);
        assertTrue(pair.feasible());
        assertEquals(200, pair.addedLeadG(), 1);
        // Lead weighs (1 − ρ/11.34) of its mass in the water, foam carries ρ − 0.03 per cm³.
        double rho = boat.water().densityGPerCm3();
        assertEquals(200 * (1 - rho / 11.34) / (rho - 0.03), pair.addedFoamMm3() / 1000, 1.5);
        Equilibrium was = before.settled().orElseThrow();
        Equilibrium now = pair.surfaced().settled().orElseThrow();
        assertEquals(was.plane().heightMm(), now.plane().heightMm(), 0.1);
        assertTrue(now.gmTransverseMm() > was.gmTransverseMm());
        assertTrue(pair.surfaced().submerged().bgMm() > before.submerged().bgMm());
    }

    /** A boat that lists, trims and dives at a slant keeps all of that when a pair is added. */
    @Test
    void aPairKeepsAListAndATrim() {
        Boat boat = PlanBoats.submarine(88, 1250, 1.5);
        Flotation before = Flotation.of(boat);
        Equilibrium was = before.settled().orElseThrow();
        assertTrue(Math.abs(was.heelDeg()) > 0.5, "a boat without a list shows nothing");
        BallastPlan pair = Planner.plan(Pairing.keepingLine(boat, Goal.firmestWithLead(100), 11.34, 0.03)
                .orElseThrow());
        assertTrue(pair.feasible(), pair.misses().toString());
        Equilibrium now = Flotation.of(pair.planned()).settled().orElseThrow();
        assertEquals(was.heelDeg(), now.heelDeg(), 0.1);
        assertEquals(was.trimDeg(), now.trimDeg(), 0.05);
        assertEquals(was.plane().heightMm(), now.plane().heightMm(), 0.2);
        assertEquals(before.submerged().residualG(), pair.surfaced().submerged().residualG(), 1.5);
        Equilibrium dived = Flotation.of(boat.withAllTanksAt(1)).settled().orElseThrow();
        Equilibrium divedNow =
                Flotation.of(pair.planned().withAllTanksAt(1)).settled().orElseThrow();
        assertEquals(dived.trimDeg(), divedNow.trimDeg(), 0.5);
        assertEquals(dived.heelDeg(), divedNow.heelDeg(), 0.5);
    }

    /** Each reason with its figures, where it is the reason. */
    @Test
    void reasonsArePhysical() {
        assertTrue(causes(Shifted.along(PlanBoats.submarine(88, 1250, 0), "tank", 160), PlanBoats.WANTED)
                .contains(Cause.Kind.TANK_ALONG));
        assertEquals(
                Cause.Kind.TOO_HEAVY,
                causes(PlanBoats.submarine(88, 4000, 0), PlanBoats.WANTED).get(0));
        assertEquals(
                Cause.Kind.TOO_LIGHT,
                causes(PlanBoats.submarine(88, 100, 0), PlanBoats.WANTED).get(0));
        assertEquals(
                List.of(Cause.Kind.GREATEST),
                causes(PlanBoats.submarine(88, 1250, 0), new Wanted(60, 4, new Targets.Band(20, 40), 0.5, 0.3, 1.5)));
        assertEquals(
                Cause.Kind.WEIGHT_ACROSS,
                causes(PlanBoats.submarine(88, 1250, 60), PlanBoats.WANTED).get(0));
        assertEquals(
                Cause.Kind.TANK_TOO_LARGE,
                causes(PlanBoats.submarine(300, 1250, 0), PlanBoats.WANTED).get(0));
    }

    private static List<Cause.Kind> causes(Boat boat, Wanted wanted) {
        BallastPlan plan = Planner.plan(PlanBoats.request(boat, wanted, Goal.LEAST_MASS));
        assertFalse(plan.feasible());
        return plan.misses().stream().map(m -> m.cause().orElseThrow().kind()).toList();
    }

    @Test
    void anInterruptedPlanStops() {
        PlanRequest request = PlanBoats.request(PlanBoats.submarine(88, 1250, 0), PlanBoats.WANTED, Goal.LEAST_MASS);
        Thread.currentThread().interrupt();
        try {
            assertThrows(CancellationException.class, () -> Planner.plan(request));
            assertTrue(Thread.currentThread().isInterrupted());
        } finally {
            Thread.interrupted();
        }
    }

    @Test
    void moreMassStandsFirmer() {
        Boat boat = PlanBoats.submarine(88, 1250, 0);
        BallastPlan little = Planner.plan(PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS));
        BallastPlan much = Planner.plan(PlanBoats.request(
                boat, PlanBoats.WANTED, Goal.firmestFor(little.rounding().roundedMassG() + 200)));
        assertTrue(much.feasible());
        assertTrue(much.surfaced().submerged().bgMm()
                > little.surfaced().submerged().bgMm() + 1);
        assertTrue(much.rounding().roundedMassG() <= little.rounding().roundedMassG() + 205);
    }

    @Test
    void foamOnBoardMayBeTakenOut() {
        BallastPlan trimmed =
                Planner.plan(PlanBoats.request(PlanBoats.submarine(88, 1250, 0), PlanBoats.WANTED, Goal.LEAST_MASS));
        List<Part> parts = new ArrayList<>(trimmed.planned().parts());
        parts.add(TestParts.solid("too much foam", Kind.FOAM, TestParts.box(300, -20, 90, 500, 20, 100), 0.03));
        Boat boat = new Boat(
                "box",
                Water.FRESH,
                trimmed.planned().paintedLine(),
                parts,
                List.of(trimmed.planned().zones().get(0)),
                Targets.NONE);
        PlanRequest stuck = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        assertFalse(Planner.plan(stuck).feasible());
        PlanRequest loose = new PlanRequest(
                boat, stuck.line(), stuck.wanted(), Goal.LEAST_MASS, 11.34, 0.03, Set.of("too much foam"));
        BallastPlan plan = Planner.plan(loose);
        assertTrue(plan.feasible());
        assertTrue(plan.removals().get("too much foam") > 0.5);
        holds(plan, PlanBoats.WANTED);
    }

    @Test
    void theTradeOffRisesAndItsEndsHold() {
        PlanRequest request = PlanBoats.request(PlanBoats.submarine(88, 1250, 0), PlanBoats.WANTED, Goal.LEAST_MASS);
        TradeOff curve = TradeOff.of(request, 6);
        assertEquals(6, curve.points().size());
        for (int i = 1; i < 6; i++) {
            TradeOff.Point a = curve.points().get(i - 1);
            TradeOff.Point b = curve.points().get(i);
            assertTrue(b.addedG() >= a.addedG() - 1e-6);
            assertTrue(b.bgMm() > a.bgMm());
            // Each further millimetre costs no less than the last: the curve of a linear programme is convex.
            if (i > 1) {
                TradeOff.Point before = curve.points().get(i - 2);
                assertTrue((b.addedG() - a.addedG()) / (b.bgMm() - a.bgMm())
                        >= (a.addedG() - before.addedG()) / (a.bgMm() - before.bgMm()) - 0.01);
            }
        }
    }

    /** A line painted higher asks for more weight: about the waterplane times the water times the rise, here within the foam that comes with it. */
    @Test
    void aHigherLineAsksForMoreWeight() {
        PlanRequest request = PlanBoats.request(
                PlanBoats.submarine(88, 1250, 0),
                new Wanted(6, 4, new Targets.Band(5, 90), 0.5, 0.3, 1.5),
                Goal.LEAST_MASS);
        LineRange range = LineRange.of(request, 2, 1);
        assertTrue(range.places().size() >= 3);
        for (int i = 1; i < range.places().size(); i++) {
            assertTrue(
                    range.places().get(i).addedG() > range.places().get(i - 1).addedG());
        }
    }

    @Test
    void movingTheCylinderSavesMass() {
        Boat heavyBow = Shifted.along(PlanBoats.submarine(88, 1250, 0), "wtc", 25);
        PlanRequest request = PlanBoats.request(heavyBow, PlanBoats.WANTED, Goal.LEAST_MASS);
        Optional<Shifted.Best> best = Shifted.best(request, "wtc", -40, 20);
        assertTrue(best.isPresent());
        BallastPlan moved = Planner.plan(request.withBoat(best.get().boat()));
        assertTrue(moved.feasible());
        BallastPlan asIs = Planner.plan(request);
        assertTrue(!asIs.feasible()
                || moved.rounding().idealMassG() <= asIs.rounding().idealMassG() + 1e-6);
    }

    /** Where firmness is striven for, no place within the limits stands firmer than the one chosen, to what rounding to 1 mm costs. */
    @Test
    void movingTheCylinderForStabilityIsJudgedByIt() {
        Boat heavyBow = Shifted.along(PlanBoats.submarine(88, 1250, 0), "wtc", 12);
        PlanRequest request = PlanBoats.request(heavyBow, PlanBoats.WANTED, Goal.firmestFor(1200));
        Shifted.Best best = Shifted.best(request, "wtc", -30, 10).orElseThrow();
        double firmest =
                CellProgramme.of(request.withBoat(best.boat())).outline().firmnessMm();
        for (double shift : new double[] {-25, -15, -12, -5, 0}) {
            CellProgramme.Outline other = CellProgramme.of(request.withBoat(Shifted.along(heavyBow, "wtc", shift)))
                    .outline();
            assertTrue(!other.meetsAll() || other.firmnessMm() <= firmest + 0.1, "shift " + shift);
        }
    }

    /** Every plan that is called feasible holds when floated: random boats, fixed seed. */
    @Test
    void everyFeasiblePlanHolds() {
        Random random = new Random(11);
        int feasible = 0;
        for (int i = 0; i < 12; i++) {
            Boat boat = PlanBoats.submarine(
                    84 + 8 * random.nextDouble(), 1000 + 500 * random.nextDouble(), 4 * random.nextDouble() - 2);
            Wanted wanted = new Wanted(
                    3 + 6 * random.nextDouble(), 3, new Targets.Band(10, 60), 0.5, 0.3, 1 + random.nextDouble());
            BallastPlan plan = Planner.plan(PlanBoats.request(boat, wanted, Goal.LEAST_MASS));
            if (plan.feasible()) {
                feasible++;
                holds(plan, wanted);
            } else {
                assertFalse(plan.misses().isEmpty());
            }
        }
        assertTrue(feasible >= 8, "only " + feasible + " of 12 random boats had a plan");
    }
}
