package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.TestParts.box;
import static trimwright.TestParts.compact;
import static trimwright.TestParts.tank;
import static trimwright.TestParts.weighed;
import static trimwright.statics.DiveBoats.boat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.DivePlan;
import trimwright.boat.Kind;
import trimwright.finding.Code;
import trimwright.finding.UnusableInputException;

class DiveRunTest {

    private static final double L = 400;
    private static final double B = 100;

    /** A box barge with a box tank of half her breadth, 30 mm high. */
    private static Boat barge(double massG, double gMm, double floorMm) {
        return boat(
                weighed("barge", Kind.CYLINDER, box(0, -B / 2, 0, L, B / 2, 120), massG, new Vector3D(L / 2, 0, gMm)),
                tank(
                        "tank",
                        box(L / 2 - 100, -B / 4, floorMm, L / 2 + 100, B / 4, floorMm + 30),
                        Optional.of("barge")));
    }

    /** KB = T/2, BM = B²/12T, the tank's water at half its height, loss by its free surface i/V with i = l b³/12 (closed forms). */
    @Test
    void bargeFillsHerTank() {
        double mass = 1600;
        Course course = DiveRun.of(Condition.of(barge(mass, 30, 0)), 10).course();
        double tankMm3 = 200 * 50 * 30;
        double i = 200 * Math.pow(50, 3) / 12;
        for (int k = 0; k <= 10; k++) {
            DiveStep step = course.steps().get(k);
            double fill = k / 10.0;
            double water = fill * tankMm3 / 1000;
            double weight = mass + water;
            double draught = weight * 1000 / (L * B);
            double kg = (mass * 30 + water * fill * 15) / weight;
            double loss = fill == 0 || fill == 1 ? 0 : i / (weight * 1000);
            assertEquals(fill, step.fill(), 1e-15);
            assertEquals(fill, step.fillById().get("tank"), 1e-15);
            assertEquals(weight, step.flotation().condition().massG(), 1e-9);
            assertEquals(draught, step.draughts().orElseThrow().bowMm(), 1e-8);
            double gm = draught / 2 + B * B / 12 / draught - kg - loss;
            assertEquals(gm, step.settled().orElseThrow().gmTransverseMm(), 1e-8);
            assertEquals(gm, step.uprightGmMm().orElseThrow(), 1e-8);
            assertEquals(kg - draught / 2, -step.settled().get().bgMm(), 1e-8);
            Standing standing = step.standing().get(0);
            assertEquals("barge", standing.part());
            assertEquals(120 - draught, standing.aboveMm(), 1e-8);
        }
        assertTrue(course.unstable().isEmpty());
        assertTrue(course.falls().isEmpty());
    }

    /**
     * A barge that is upright only without the free surface lies over while the tank fills. Ship and tank are both wall-sided, so that
     * GZ = sin φ (GM + ½ (BM − i/V) tan² φ) and the loll is tan² φ = −2 GM / (BM − i/V) as long as no edge of either is crossed (the
     * wall-sided formula, for the ship and for the water that moves in her).
     */
    @Test
    void lollsWhileTheTankFills() {
        double mass = 1600;
        double kg0 = 38.7;
        DiveRun run = DiveRun.of(Condition.of(barge(mass, kg0, 40)), 40);
        double i = 200 * Math.pow(50, 3) / 12;
        int lolling = 0;
        for (DiveStep step : run.course().steps()) {
            double fill = step.fill();
            double water = fill * 300;
            double v = (mass + water) * 1000;
            double t = v / (L * B);
            double loss = fill == 0 || fill == 1 ? 0 : i / v;
            double gm = t / 2 + B * B / 12 / t - (mass * kg0 + water * (40 + fill * 15)) / (mass + water) - loss;
            assertEquals(gm, step.uprightGmMm().orElseThrow(), 1e-7);
            double heel = Math.abs(Math.toRadians(step.settled().orElseThrow().heelDeg()));
            // The tank's water must leave neither its floor nor its roof dry: 25 tan φ < 30 fill and < 30 (1 − fill).
            boolean wallSided = 25 * Math.tan(heel) < 30 * Math.min(fill, 1 - fill);
            if (gm < -1e-3 && wallSided) {
                double tan2 = -2 * gm / (B * B / 12 / t - loss);
                assertEquals(Math.atan(Math.sqrt(tan2)), heel, 1e-6);
                lolling++;
            }
        }
        assertTrue(lolling >= 5, "lolling states compared: " + lolling);
        assertEquals(1, run.course().unstable().size());
        UnstableRange range = run.course().unstable().get(0);
        CriticalPoint critical = run.course().critical().orElseThrow();
        assertTrue(critical.gmMm() < 0);
        assertTrue(range.fromFill() < critical.fill() && critical.fill() < range.toFill());
        assertEquals(
                Steadiness.Stance.RESTS_ON_EITHER_SIDE, critical.steadiness().stance());
        assertTrue(run.findings().stream().anyMatch(f -> f.code() == Code.UPRIGHT_UNSTABLE));
    }

    /** The unstable range begins where GM, in closed form, passes through zero. */
    @Test
    void unstableRangeBeginsWhereGmVanishes() {
        double mass = 1600;
        double kg0 = 38.7;
        DiveRun run = DiveRun.of(Condition.of(barge(mass, kg0, 40)), 40);
        double from = run.course().unstable().get(0).fromFill();
        assertTrue(from > 0.1 && from < 0.9);
        double water = from * 300;
        double v = (mass + water) * 1000;
        double t = v / (L * B);
        double gm = t / 2
                + B * B / 12 / t
                - (mass * kg0 + water * (40 + from * 15)) / (mass + water)
                - 200 * Math.pow(50, 3) / 12 / v;
        // Found within 1e-4 of the way; GM changes by some mm over the whole.
        assertEquals(0, gm, 1e-3);
    }

    /**
     * Water in a round tank lying fore and aft acts, at any list, as if hung from the tank's axis (exact). A boat with a half full tank
     * lists under a moved weight as the same boat does with that water as a weight on the axis.
     */
    @Test
    void roundTankActsAtItsAxis() {
        for (double fill : new double[] {0.2, 0.5, 0.8}) {
            Boat wet = boat(
                    weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 120), 1600, new Vector3D(200, 0, 20)),
                    tank("tank", DiveBoats.bar(100, 300, 35, 50), Optional.of("barge")));
            double water = fill * Math.PI * 625 * 200 / 1000;
            Boat solid = boat(
                    weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 120), 1600, new Vector3D(200, 0, 20)),
                    compact("water", water, new Vector3D(200, 0, 35)));
            for (double way : new double[] {0, 40, 90}) {
                SteadyHeel moving = SteadyHeel.withWeightMoved(Condition.of(wet.withAllTanksAt(fill)), 100, way)
                        .orElseThrow();
                SteadyHeel still = SteadyHeel.withWeightMoved(Condition.of(solid), 100, way)
                        .orElseThrow();
                assertEquals(still.heelDeg(), moving.heelDeg(), 1e-6);
                assertTrue(way == 0 || moving.heelDeg() > 1);
            }
        }
    }

    /** A tank divided lengthwise into n loses 1/n² of what it loses undivided (closed form). */
    @Test
    void dividedTank() {
        double undivided = lossOfGm(1);
        assertEquals(300 * Math.pow(90, 3) / 12 / 1.6e6 * 1.6e6 / (1.6e6 + 0.5 * 300 * 90 * 20), undivided, 1e-8);
        assertEquals(undivided / 4, lossOfGm(2), 1e-8);
        assertEquals(undivided / 9, lossOfGm(3), 1e-8);
    }

    private static double lossOfGm(int compartments) {
        trimwright.boat.Part[] parts = new trimwright.boat.Part[compartments + 1];
        parts[0] = weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 120), 1600, new Vector3D(200, 0, 5));
        double breadth = 90.0 / compartments;
        for (int k = 0; k < compartments; k++) {
            double y = -45 + k * breadth;
            parts[k + 1] = tank("t" + k, box(50, y, 5, 350, y + breadth, 25), Optional.of("barge"));
        }
        Equilibrium half =
                Flotation.of(boat(parts).withAllTanksAt(0.5)).settled().orElseThrow();
        double kg = (1600 * 5 + 270 * 10) / 1870.0;
        double draught = 1870.0 * 1000 / 40000;
        return draught / 2 + 1e4 / 12 / draught - kg - half.gmTransverseMm();
    }

    /**
     * Barrass and Derrett, Ship Stability for Masters and Mates, the free-surface example: 8153.75 t, KM 8 m, KG 7.5 m; a double-bottom tank
     * 15 × 10 × 2 m of salt water is pumped out to half. Inputs as printed; results from them: GG₁ 0.1153, loss 0.1602, GM 0.2245 m. Metres
     * stand for millimetres and tonnes for grams here; the box ship is given the KM.
     */
    @Test
    void tankPumpedToHalf() {
        double breadth = 18;
        // KM = T/2 + B²/12T = 8 at the final draught.
        double draught = 8 + Math.sqrt(64 - breadth * breadth / 6);
        double length = 8000 / 1.025 / breadth / draught;
        double dry = 8153.75 - 307.5;
        double kgDry = (8153.75 * 7.5 - 307.5 * 1) / dry;
        Boat ship = new Boat(
                "ship",
                trimwright.boat.Water.ofDensity(1025),
                Optional.empty(),
                List.of(
                        weighed(
                                "ship",
                                Kind.CYLINDER,
                                box(0, -breadth / 2, 0, length, breadth / 2, 30),
                                dry,
                                new Vector3D(length / 2, 0, kgDry)),
                        tank("tank", box(length / 2 - 7.5, -5, 0, length / 2 + 7.5, 5, 2), Optional.of("ship"))),
                List.of(),
                trimwright.boat.Targets.NONE);
        Condition half = Condition.of(ship.withAllTanksAt(0.5));
        assertEquals(8000, half.massG(), 1e-9);
        Equilibrium e = Flotation.of(half).settled().orElseThrow();
        assertEquals(7.5 + 0.1153, e.centreOfGravityMm().getZ(), 5e-5);
        assertEquals(0.2245, e.gmTransverseMm(), 5e-5);
    }

    /** She goes down when the tank has swallowed the reserve: fill = reserve / water of a full tank. */
    @Test
    void sinksOnTheWay() {
        Boat heavy = DiveBoats.submarine(40, 24);
        Condition empty = Condition.of(heavy);
        double tankG = empty.tankVolumeMm3() * empty.densityGPerMm3();
        double extra = empty.reserveG() - 0.6 * tankG;
        Boat loaded = heavy.withParts(concat(heavy, compact("extra", extra, new Vector3D(500, 0, 20))));
        DiveRun run = DiveRun.of(Condition.of(loaded), 7);
        assertEquals(0.6, run.failSafe().sinksFromFill().orElseThrow(), 1e-9);
        assertEquals(-0.4 * tankG, run.failSafe().residualG(), 1e-6);
        assertTrue(run.failSafe().staysOut().isEmpty());
        assertTrue(run.course().steps().get(4).settled().isPresent());
        assertTrue(run.course().steps().get(5).settled().isEmpty());
        assertTrue(run.findings().stream().anyMatch(f -> f.code() == Code.SINKS_ON_THE_WAY));
    }

    /** Too heavy only while the tanks are fuller than at the end, and between two steps. */
    @Test
    void sinksBetweenTwoStepsOfASchedule() {
        Boat heavy = DiveBoats.submarine(40, 24);
        Condition empty = Condition.of(heavy);
        double tankG = empty.tankVolumeMm3() * empty.densityGPerMm3();
        double extra = empty.reserveG() - 0.6 * tankG;
        String tank = heavy.parts().stream()
                .filter(p -> p.kind() == Kind.TANK)
                .findFirst()
                .orElseThrow()
                .id();
        Boat loaded = heavy.withParts(concat(heavy, compact("extra", extra, new Vector3D(500, 0, 20))))
                .diving(new DivePlan(List.of(Map.of(tank, 0.0), Map.of(tank, 1.0), Map.of(tank, 0.5))));
        DiveRun run = DiveRun.of(Condition.of(loaded), 3);
        assertTrue(
                run.course().steps().stream().limit(2).allMatch(s -> s.settled().isPresent()));
        assertEquals(0.6, run.failSafe().sinksFromFill().orElseThrow(), 1e-9);
        assertEquals(0.1 * tankG, run.failSafe().residualG(), 1e-6);
        assertTrue(run.findings().stream().anyMatch(f -> f.code() == Code.SINKS_ON_THE_WAY));
        DiveRun coarse = DiveRun.of(Condition.of(loaded), 1);
        assertEquals(0.6, coarse.failSafe().sinksFromFill().orElseThrow(), 1e-9);
    }

    /** G and tank on the axis of a round body: GM is zero at every fill, and what rounding leaves of it is no finding. */
    @Test
    void aNeutralBoatDoesNotFall() {
        Boat round = boat(
                weighed("tube", Kind.CYLINDER, DiveBoats.bar(0, 300, 0, 50), 250, new Vector3D(150, 0, 0)),
                tank("tank", DiveBoats.bar(115, 185, 0, 40), Optional.of("tube")));
        DiveRun run = DiveRun.of(Condition.of(round), 40);
        assertTrue(run.course().steps().stream()
                .allMatch(s -> Math.abs(s.uprightGmMm().orElseThrow()) < 1e-6));
        assertTrue(run.course().unstable().isEmpty(), run.course().unstable().toString());
    }

    @Test
    void sinksBeforeTheDive() {
        Boat heavy = DiveBoats.submarine(40, 24);
        Boat loaded = heavy.withParts(concat(heavy, compact("extra", 1000, new Vector3D(500, 0, 20))));
        DiveRun run = DiveRun.of(Condition.of(loaded), 4);
        assertEquals(0, run.failSafe().sinksFromFill().orElseThrow(), 0);
        assertEquals(Code.SINKS_SURFACED, run.findings().get(0).code());
        assertTrue(run.course().critical().isEmpty());
        assertTrue(run.course().largestTrim().isEmpty());
    }

    private static List<trimwright.boat.Part> concat(Boat boat, trimwright.boat.Part part) {
        List<trimwright.boat.Part> parts = new java.util.ArrayList<>(boat.parts());
        parts.add(part);
        return parts;
    }

    /** What stands out at the end displaces what is left; and every step goes deeper than the last, by no more than its water can do. */
    @Test
    void submarineDivesToHerTower() {
        Condition condition = Condition.of(DiveBoats.submarine(60, 40));
        DiveRun run = DiveRun.of(condition, 50);
        List<DiveStep> steps = run.course().steps();
        assertEquals(51, steps.size());
        assertEquals(condition.withAllTanksAt(1).reserveG(), run.failSafe().residualG(), 1e-9);
        assertEquals(run.submerged().residualG(), run.failSafe().residualG(), 1e-9);
        assertEquals("tower", run.failSafe().staysOut().orElseThrow().part());
        DiveStep last = steps.get(50);
        Equilibrium end = last.settled().orElseThrow();
        double outMm3 = condition.volumeMm3() - end.sums().volumeMm3();
        assertEquals(run.failSafe().residualG(), outMm3 * condition.densityGPerMm3(), 1e-6);
        assertEquals(last.standing().get(0), run.failSafe().staysOut().get());
        assertTrue(run.findings().isEmpty());
        for (int i = 1; i < steps.size(); i++) {
            Equilibrium before = steps.get(i - 1).settled().orElseThrow();
            Equilibrium now = steps.get(i).settled().orElseThrow();
            assertTrue(now.sums().volumeMm3() > before.sums().volumeMm3());
            assertTrue(Vector3D.angle(before.plane().up(), now.plane().up()) < Math.toRadians(0.5));
        }
    }

    /** Finer steps do not change the states that both have: each is an equilibrium of its own. */
    @Test
    void stepsDoNotMatter() {
        Condition condition = Condition.of(DiveBoats.submarine(40, 24));
        Course coarse = DiveRun.of(condition, 5).course();
        Course fine = DiveRun.of(condition, 20).course();
        for (int i = 0; i <= 5; i++) {
            Equilibrium a = coarse.steps().get(i).settled().orElseThrow();
            Equilibrium b = fine.steps().get(4 * i).settled().orElseThrow();
            assertEquals(a.plane().heightMm(), b.plane().heightMm(), 1e-6);
            assertEquals(a.trimDeg(), b.trimDeg(), 1e-6);
        }
        assertEquals(
                coarse.critical().orElseThrow().gmMm(),
                fine.critical().orElseThrow().gmMm(),
                0.05);
    }

    @Test
    void tanksOneAfterTheOther() {
        Boat twoTanks = boat(
                weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 120), 1600, new Vector3D(200, 0, 20)),
                tank("fore", box(260, -20, 10, 360, 20, 40), Optional.of("barge")),
                tank("aft", box(40, -20, 10, 90, 20, 40), Optional.of("barge")));
        Condition condition = Condition.of(twoTanks.diving(DivePlan.inOrder(List.of(List.of("fore"), List.of("aft")))));
        Course course = DiveRun.of(condition, 3).course();
        List<DiveStep> steps = course.steps();
        // The fore tank holds two thirds of the water.
        assertEquals(Map.of("fore", 0.0, "aft", 0.0), steps.get(0).fillById());
        assertEquals(0.5, steps.get(1).fillById().get("fore"), 1e-12);
        assertEquals(1, steps.get(2).fillById().get("fore"), 1e-12);
        assertEquals(0, steps.get(2).fillById().get("aft"), 1e-12);
        assertEquals(Map.of("fore", 1.0, "aft", 1.0), steps.get(3).fillById());
        assertEquals(2 / 3.0, steps.get(2).fill(), 1e-12);
        assertTrue(steps.get(2).settled().orElseThrow().trimDeg() < -1, "bow down with the fore tank full");
        assertEquals(steps.get(2), course.largestTrim().orElseThrow());
        double together = DiveRun.of(Condition.of(twoTanks), 3)
                .course()
                .steps()
                .get(3)
                .settled()
                .get()
                .trimDeg();
        assertEquals(together, steps.get(3).settled().get().trimDeg(), 1e-6);
    }

    @Test
    void scheduleWithPumpingOver() {
        Boat twoTanks = boat(
                weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 120), 1600, new Vector3D(200, 0, 20)),
                tank("fore", box(260, -20, 10, 360, 20, 40), Optional.of("barge")),
                tank("aft", box(40, -20, 10, 140, 20, 40), Optional.of("barge")));
        DivePlan plan = new DivePlan(
                List.of(Map.of("fore", 1.0, "aft", 0.0), Map.of("fore", 0.5, "aft", 0.5), Map.of("fore", 0.0)));
        List<DiveStep> steps =
                DiveRun.of(Condition.of(twoTanks.diving(plan)), 6).course().steps();
        // Two thirds of the way go into pumping over, one third into emptying.
        assertEquals(0.5, steps.get(2).fill(), 1e-12);
        assertEquals(0.75, steps.get(2).fillById().get("fore"), 1e-12);
        assertEquals(0.25, steps.get(2).fillById().get("aft"), 1e-12);
        assertEquals(Map.of("fore", 0.0, "aft", 0.5), steps.get(6).fillById());
    }

    @Test
    void whatCannotBeDived() {
        Boat noTank =
                boat(weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 120), 1600, new Vector3D(200, 0, 20)));
        assertEquals(Code.DIVE_NO_TANK, refused(noTank));
        Boat barge = barge(1600, 20, 0);
        assertEquals(Code.FILL_OF_NO_TANK, refused(barge.diving(DivePlan.inOrder(List.of(List.of("tnak"))))));
        assertEquals(
                Code.DIVE_MOVES_NO_WATER,
                refused(barge.diving(new DivePlan(List.of(Map.of("tank", 0.5), Map.of("tank", 0.5))))));
    }

    private static Code refused(Boat boat) {
        UnusableInputException e = assertThrows(UnusableInputException.class, () -> DiveRun.of(Condition.of(boat), 5));
        assertFalse(e.findings().isEmpty());
        return e.findings().get(0).code();
    }
}
