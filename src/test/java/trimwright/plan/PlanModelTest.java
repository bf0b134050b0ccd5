package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.Targets;
import trimwright.statics.Condition;

/**
 * Rows of the programme, one at a time: a single unknown that acts on one aim alone, a gram or a g·mm to the unit, is used exactly as much as the aim, its tolerance and the raft's hydrostatics say by
 * hand. 40 g and 533 333 g·mm to the mm and radian at the line; the line may be off by 0.5 mm, the list 0.3°, the trim dived 1.5°, GM is at least 4, BG 6 mm, and 20 to
 * 40 g are left dived.
 */
class PlanModelTest {

    static final double INERTIA = 100 * Math.pow(400, 3) / 12 / 1000;
    static final double KM = 20 + 100 * 100 / 480.0;

    static Choice one(Influence perUnit) {
        return Choice.plain(new Unknown("one", perUnit, 1e5, 1));
    }

    static Choice moment(double x, double y, double z) {
        return one(Influence.ofLoad(0, TestParts.at(x, y, z)));
    }

    private static Choice tankMoment(double x, double y, double z) {
        return one(Influence.ofTankWater(0, TestParts.at(x, y, z)));
    }

    static PlanModel model(Boat boat, Wanted wanted, Choice... choices) {
        PlanRequest request = PlanBoats.request(boat, wanted, Goal.LEAST_MASS);
        return new PlanModel(PlanBasis.of(Condition.of(boat), request), List.of(choices), List.of());
    }

    static PlanModel model(Boat boat, Choice... choices) {
        return model(boat, PlanBoats.WANTED, choices);
    }

    static Boat raft(double massG, Vector3D centre) {
        return PlanBoats.raft(massG, centre, List.of());
    }

    static Boat diver(double tankMm) {
        return PlanBoats.divingRaft(1600, TestParts.at(200, 0, 25), tankMm, List.of());
    }

    private static double used(PlanModel model, PlanModel.Hold hold) {
        LinearProgramme.Solution solution =
                model.programme(hold, Goal.LEAST_MASS).solve();
        assertTrue(solution.isOptimal());
        return solution.x()[0];
    }

    private static double exactly(PlanModel model) {
        return used(model, PlanModel.Hold.EXACT);
    }

    @ParameterizedTest
    @CsvSource({"EXACT, 0.001", "BAND, 0.5", "WIDE, 0.95"})
    void weightForTheLine(PlanModel.Hold hold, double share) {
        Choice gram = one(Influence.ofMass(1, TestParts.at(200, 0, 25)));
        assertEquals(300 - share * 20, used(model(raft(1300, TestParts.at(200, 0, 25)), gram), hold), 1e-6);
        Choice lift = one(Influence.ofMass(-1, TestParts.at(200, 0, 25)));
        assertEquals(300 - share * 20, used(model(raft(1900, TestParts.at(200, 0, 25)), lift), hold), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"EXACT, 0.001", "BAND, 0.5", "WIDE, 0.95"})
    void momentForTheTrim(PlanModel.Hold hold, double share) {
        double tolerance = share * 0.5 / 200 * INERTIA;
        assertEquals(8000 - tolerance, used(model(raft(1600, TestParts.at(205, 0, 25)), moment(-1, 0, 0)), hold), 1e-6);
        assertEquals(8000 - tolerance, used(model(raft(1600, TestParts.at(195, 0, 25)), moment(1, 0, 0)), hold), 1e-6);
    }

    /** 8 g too heavy, she lies 0.2 mm deep: only at the widest, where 0.475 mm are allowed at either end, this leaves 0.275 mm for the trim by the bow, and as much by the stern. */
    @Test
    void eachEndOfTheLineForItself() {
        double tolerance = 0.275 / 200 * INERTIA;
        for (double massG : new double[] {1608, 1592}) {
            double by = massG * 5;
            assertEquals(
                    by - tolerance,
                    used(model(raft(massG, TestParts.at(205, 0, 25)), moment(-1, 0, 0)), PlanModel.Hold.WIDE),
                    1e-6);
            assertEquals(
                    by - tolerance,
                    used(model(raft(massG, TestParts.at(195, 0, 25)), moment(1, 0, 0)), PlanModel.Hold.WIDE),
                    1e-6);
            assertEquals(
                    by - 0.5 * 0.5 / 200 * INERTIA,
                    used(model(raft(massG, TestParts.at(205, 0, 25)), moment(-1, 0, 0)), PlanModel.Hold.BAND),
                    1e-6);
        }
    }

    /** Those of a line painted from x = 50 to 250; without one those of the boat. */
    @Test
    void theEndsAreThoseOfThePaintedLine() {
        Boat raft = raft(1600, TestParts.at(205, 0, 25));
        Boat painted = new Boat(
                raft.name(),
                raft.water(),
                java.util.Optional.of(
                        new trimwright.boat.PaintedLine(List.of(TestParts.at(50, 0, 40), TestParts.at(250, 0, 40)))),
                raft.parts(),
                List.of(),
                Targets.NONE);
        // Half a mm over half the line of 200 mm; at the widest the stern end, 150 mm from the middle of flotation,
        // allows less.
        assertEquals(
                8000 - 0.5 * 0.5 / 100 * INERTIA, used(model(painted, moment(-1, 0, 0)), PlanModel.Hold.BAND), 1e-6);
        assertEquals(8000 - 0.475 / 150 * INERTIA, used(model(painted, moment(-1, 0, 0)), PlanModel.Hold.WIDE), 1e-6);
        Boat bare =
                new Boat(raft.name(), raft.water(), java.util.Optional.empty(), raft.parts(), List.of(), Targets.NONE);
        PlanRequest request = new PlanRequest(
                bare,
                trimwright.immersion.WaterPlane.level(40),
                PlanBoats.WANTED,
                Goal.LEAST_MASS,
                11.34,
                0.03,
                Set.of());
        PlanModel unpainted =
                new PlanModel(PlanBasis.of(Condition.of(bare), request), List.of(moment(-1, 0, 0)), List.of());
        assertEquals(8000 - 0.5 * 0.5 / 200 * INERTIA, used(unpainted, PlanModel.Hold.BAND), 1e-6);
        assertEquals(8000 - 0.475 / 200 * INERTIA, used(unpainted, PlanModel.Hold.WIDE), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"EXACT, 0.001", "BAND, 0.5", "WIDE, 0.95"})
    void momentForTheList(PlanModel.Hold hold, double share) {
        double tolerance = share * Math.toRadians(0.3) * 1600 * 4;
        assertEquals(3200 - tolerance, used(model(raft(1600, TestParts.at(200, 2, 25)), moment(0, -1, 0)), hold), 1e-6);
        assertEquals(3200 - tolerance, used(model(raft(1600, TestParts.at(200, -2, 25)), moment(0, 1, 0)), hold), 1e-6);
    }

    /** Where no GM is wanted degrees of list are counted with 1 mm. */
    @Test
    void momentForTheListOfASoftBoat() {
        Wanted soft = PlanBoats.WANTED.withStability(0, 0);
        assertEquals(
                3200 - 0.5 * Math.toRadians(0.3) * 1600,
                used(model(raft(1600, TestParts.at(200, 2, 25)), soft, moment(0, -1, 0)), PlanModel.Hold.BAND),
                1e-6);
    }

    @Test
    void momentForGm() {
        Wanted firm = PlanBoats.WANTED.withStability(6, 20);
        PlanModel model = model(raft(1600, TestParts.at(200, 0, 25)), firm, moment(0, 0, -1));
        assertEquals(1600 * (20 - (KM - 25)), exactly(model), 1e-6);
        assertEquals(20, model.stability(new double[] {1600 * (20 - (KM - 25))}).gmMm(), 1e-9);
        model.correct(Aim.GM, 1);
        assertEquals(1600 * (21 - (KM - 25)), exactly(model), 1e-6);
    }

    /** A gram more 12 mm above the keel, the line still met: the moments of GM count it with its weight. */
    @Test
    void weightForGm() {
        Wanted firm = PlanBoats.WANTED.withStability(6, 16);
        Choice gram = one(Influence.ofMass(1, TestParts.at(200, 0, 2)));
        PlanModel model = model(raft(1590, TestParts.at(200, 0, 25)), firm, gram);
        double x = used(model, PlanModel.Hold.WIDE);
        // Moments about the keel at the line: 1600 · 40.83 as the water carries, less weights, at least 16 mm of her
        // weight about the line's centre at 40 mm.
        double upright = 1600 * 20 + 400 * 100 * 100 * 100 / 12.0 / 1000 - 1590 * 25 - 2 * x - 40 * (1600 - 1590 - x);
        assertEquals(16 * (1590 + x), upright, 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"EXACT, 2", "BAND, 2", "WIDE, 0.4"})
    void waterForTheResidual(PlanModel.Hold hold, double margin) {
        Choice water = one(Influence.ofTankWater(1, TestParts.at(200, 0, 30)));
        assertEquals(800 - 2 * 370 - 40 + margin, used(model(diver(370), water), hold), 1e-6);
        Choice less = one(Influence.ofTankWater(-1, TestParts.at(-200, 0, -30)));
        assertEquals(20 - (800 - 2 * 395) + margin, used(model(diver(395), less), hold), 1e-6);
        PlanModel corrected = model(diver(395), less);
        corrected.correct(Aim.RESIDUAL, 5);
        assertEquals(20 - (800 - 2 * 395) + margin + 5, used(corrected, hold), 1e-6);
        PlanModel lowered = model(diver(370), water);
        lowered.correct(Aim.RESIDUAL, -5);
        assertEquals(800 - 2 * 370 - 40 + margin + 5, used(lowered, hold), 1e-6);
    }

    /** 1600 g 5 mm and 770 g 10 mm under the middle of everything; 10 mm of BG for all of it are wanted. */
    @Test
    void momentForBg() {
        PlanModel model = model(diver(385), PlanBoats.WANTED.withStability(10, 4), moment(0, 0, -1));
        double wanted = 10 * 2370 - (1600 * 5 + 770 * 10);
        assertEquals(wanted, exactly(model), 1e-6);
        assertEquals(10, model.stability(new double[] {wanted}).bgMm(), 1e-9);
        assertEquals(
                (1600 * 5 + 770 * 10) / 2370.0,
                model.stability(new double[] {0}).bgMm(),
                1e-9);
        model.correct(Aim.BG, 0.5);
        assertEquals(10.5 * 2370 - (1600 * 5 + 770 * 10), exactly(model), 1e-6);
        assertTrue(model.dives());
        assertFalse(model(raft(1600, TestParts.at(200, 0, 25))).dives());
    }

    /** A weight whose water counts too: BG for a boat that gains mass in the tank. */
    @Test
    void tankWaterForBg() {
        Choice water = one(Influence.ofTankWater(1, TestParts.at(200, 0, 5)));
        Wanted wanted = new Wanted(7, 4, new Targets.Band(-1000, 1000), 0.5, 0.3, 1.5);
        double x = exactly(model(diver(385), wanted, water));
        assertEquals(7 * (2370 + x), 1600 * 5 + 770 * 10 + 25 * x, 1e-6);
    }

    /** The tank's weight stands 10 mm off the middle: 7700 g·mm less the share of 1.5° with BG 6 mm; across that, or of the list allowed surfaced. */
    @ParameterizedTest
    @CsvSource({"EXACT, 0.5, 0.3", "BAND, 0.5, 0.3", "WIDE, 0.95, 1.5"})
    void momentDived(PlanModel.Hold hold, double share, double listDeg) {
        Boat diver = diver(385);
        for (int side : new int[] {1, -1}) {
            Boat ahead = Shifted.along(diver, "tank", 5 * side);
            // As far as the raft is long; the tank hangs over by nothing.
            double along = 770 * 5 - share * Math.toRadians(1.5) * 2370 * 6;
            assertEquals(along, used(model(ahead, tankMoment(-side, 0, 0)), hold), 1e-3);
            List<trimwright.boat.Part> parts = new java.util.ArrayList<>(diver.parts());
            parts.set(
                    parts.indexOf(diver.part("tank").orElseThrow()),
                    PlanBoats.tank("tank", "raft", TestParts.box(7.5, side - 40, 7.5, 392.5, side + 40, 32.5)));
            double across = 770 - share * Math.toRadians(listDeg) * 2370 * 6;
            assertEquals(across, used(model(diver.withParts(parts), tankMoment(0, -side, 0)), hold), 1e-3);
        }
    }

    /** Corrections are asked for in the unit of their aim. */
    @Test
    void corrections() {
        PlanModel line =
                model(raft(1600, TestParts.at(200, 0, 25)), one(Influence.ofMass(-1, TestParts.at(200, 0, 25))));
        line.correct(Aim.LINE, 0.25);
        line.correct(Aim.LINE, 0.25);
        assertEquals(20 - 0.02, exactly(line), 1e-6);
        assertEquals(20 - 19, used(line, PlanModel.Hold.WIDE), 1e-6);
        PlanModel trim = model(raft(1600, TestParts.at(200, 0, 25)), moment(-1, 0, 0));
        trim.correct(Aim.TRIM, 0.5);
        assertEquals(Math.toRadians(0.5) * INERTIA - 0.001 * 0.5 / 200 * INERTIA, exactly(trim), 1e-6);
        assertEquals(Math.toRadians(0.5) * INERTIA - 0.95 * 0.5 / 200 * INERTIA, used(trim, PlanModel.Hold.WIDE), 1e-6);
        PlanModel list = model(raft(1600, TestParts.at(200, 0, 25)), moment(0, -1, 0));
        list.correct(Aim.LIST, 0.5);
        assertEquals(Math.toRadians(0.5 - 0.0003) * 6400, exactly(list), 1e-6);
        PlanModel dived = model(diver(385), tankMoment(-1, 0, 0));
        dived.correct(Aim.DIVED_TRIM, 1);
        assertEquals(Math.toRadians(1 - 0.75) * 2370 * 6, exactly(dived), 1e-3);
        PlanModel divedList = model(diver(385), tankMoment(0, -1, 0));
        divedList.correct(Aim.DIVED_LIST, 1);
        assertEquals(Math.toRadians(1 - 0.15) * 2370 * 6, exactly(divedList), 1e-3);
    }

    @Test
    void tolerances() {
        PlanModel model = model(raft(1600, TestParts.at(200, 0, 25)));
        assertEquals(0.5, model.tolerance(Aim.LINE));
        assertEquals(Math.toDegrees(0.5 / 200), model.tolerance(Aim.TRIM), 1e-12);
        assertEquals(0.3, model.tolerance(Aim.LIST));
        assertEquals(1.5, model.tolerance(Aim.DIVED_LIST));
        assertEquals(10, model.tolerance(Aim.RESIDUAL));
        assertEquals(1.5, model.tolerance(Aim.DIVED_TRIM));
        assertEquals(1.5, model.tolerance(Aim.BG));
        assertEquals(1, model.tolerance(Aim.GM));
        PlanModel other =
                model(raft(1600, TestParts.at(200, 0, 25)), new Wanted(2, 8, new Targets.Band(20, 21), 0.5, 0.3, 1.5));
        assertEquals(1, other.tolerance(Aim.RESIDUAL));
        assertEquals(1, other.tolerance(Aim.BG));
        assertEquals(2, other.tolerance(Aim.GM));
    }

    /** Of two weights that serve the line alike the lower is taken; a firmest plan takes the most that lowers her, and of what brings nothing none. */
    @Test
    void whatIsAlikeIsTakenWhereItSetsHerUp() {
        Choice high = one(Influence.ofMass(1, TestParts.at(200, 0, 20)));
        Choice low = one(Influence.ofMass(1, TestParts.at(200, 0, 10)));
        for (List<Choice> order : List.of(List.of(high, low), List.of(low, high))) {
            PlanModel model = model(raft(1300, TestParts.at(200, 0, 25)), order.toArray(Choice[]::new));
            double[] x = model.programme(PlanModel.Hold.EXACT, Goal.LEAST_MASS)
                    .solve()
                    .x();
            assertEquals(299.98, x[order.indexOf(low)], 1e-4);
            assertEquals(0, x[order.indexOf(high)], 1e-9);
        }
        Choice lowering = Choice.plain(new Unknown("low", Influence.ofLoad(0, TestParts.at(0, 0, -1)), 77, 1));
        Choice idle = Choice.plain(new Unknown("idle", Influence.NOTHING, 77, 1));
        Choice raising = Choice.plain(new Unknown("high", Influence.ofLoad(0, TestParts.at(0, 0, 1)), 77, 1));
        for (Boat boat : List.of(diver(385), raft(1600, TestParts.at(200, 0, 25)))) {
            PlanModel model = model(boat, lowering, idle, raising);
            double[] x = model.programme(PlanModel.Hold.EXACT, Goal.firmestFor(1e6))
                    .solve()
                    .x();
            assertEquals(77, x[0], 1e-9);
            assertEquals(0, x[1], 1e-9);
            assertEquals(0, x[2], 1e-9);
            x = model.programme(PlanModel.Hold.EXACT, Goal.LEAST_MASS).solve().x();
            assertEquals(0, x[0], 1e-9);
        }
    }

    /** A tank that can be lowered sets up a boat that dives, and no other. */
    @Test
    void aFirmestPlanIsJudgedDivedWhereSheDives() {
        for (Boat boat : List.of(diver(385), raft(1600, TestParts.at(200, 0, 25)))) {
            Choice lowered = Choice.plain(new Unknown("tank", Influence.ofTankWater(0, TestParts.at(0, 0, -1)), 77, 1));
            double[] x = model(boat, lowered)
                    .programme(PlanModel.Hold.EXACT, Goal.firmestFor(1e6))
                    .solve()
                    .x();
            assertEquals(boat.part("tank").isPresent() ? 77 : 0, x[0], 1e-9);
        }
    }

    /** Asked to lie 0.2 mm higher, which she need not, and to trim 0.5°: her stern may stay 0.475 − 0.2 mm short of that. */
    @Test
    void theEndsAreHeldToTheCorrections() {
        PlanModel model = model(raft(1600, TestParts.at(200, 0, 25)), moment(-1, 0, 0));
        model.correct(Aim.LINE, 0.2);
        model.correct(Aim.TRIM, 0.5);
        assertEquals((Math.toRadians(0.5) - 0.275 / 200) * INERTIA, used(model, PlanModel.Hold.WIDE), 1e-6);
    }
}
