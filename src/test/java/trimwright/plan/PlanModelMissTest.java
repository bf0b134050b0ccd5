package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.plan.PlanModelTest.INERTIA;
import static trimwright.plan.PlanModelTest.KM;
import static trimwright.plan.PlanModelTest.diver;
import static trimwright.plan.PlanModelTest.model;
import static trimwright.plan.PlanModelTest.one;
import static trimwright.plan.PlanModelTest.raft;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.Targets;
import trimwright.statics.Condition;

/** What the rafts of PlanModelTest miss, limits, and what is added. */
class PlanModelMissTest {

    private static List<Miss> missed(PlanModel model, Set<Aim> yielding) {
        LinearProgramme.Solution solution = model.elastic(yielding).solve();
        assertTrue(solution.isOptimal());
        return model.misses(solution.x(), yielding);
    }

    private static void missesOnly(Aim aim, double amount, PlanModel model) {
        for (Set<Aim> yielding : List.of(EnumSet.allOf(Aim.class), EnumSet.of(aim))) {
            List<Miss> misses = missed(model, yielding);
            assertEquals(1, misses.size(), misses.toString());
            assertEquals(aim, misses.get(0).aim());
            assertEquals(amount, misses.get(0).amount(), 1e-6 * Math.abs(amount) + 1e-9);
        }
        EnumSet<Aim> others = EnumSet.complementOf(EnumSet.of(aim));
        assertFalse(model.elastic(others).solve().isOptimal());
        assertFalse(model.holding(EnumSet.of(aim)).solve().isOptimal());
        others.remove(Aim.LINE);
        others.remove(Aim.TRIM);
        assertTrue(model.holding(others).solve().isOptimal());
    }

    /** Nothing may be added, and she is told by how much she misses beyond 95 % of what is allowed; what she has too much of is positive. */
    @Test
    void whatIsMissedSurfaced() {
        missesOnly(Aim.LINE, 1 - 0.475, model(raft(1640, TestParts.at(200, 0, 25))));
        missesOnly(Aim.LINE, -(1 - 0.475), model(raft(1560, TestParts.at(200, 0, 25))));
        double trim = Math.toDegrees(8000 / INERTIA - 0.475 / 200);
        missesOnly(Aim.TRIM, -trim, model(raft(1600, TestParts.at(205, 0, 25))));
        missesOnly(Aim.TRIM, trim, model(raft(1600, TestParts.at(195, 0, 25))));
        double list = Math.toDegrees(3200.0 / 6400) - 0.285;
        missesOnly(Aim.LIST, -list, model(raft(1600, TestParts.at(200, 2, 25))));
        missesOnly(Aim.LIST, list, model(raft(1600, TestParts.at(200, -2, 25))));
        missesOnly(Aim.GM, KM - 38 - 4, model(raft(1600, TestParts.at(200, 0, 38))));
        assertEquals(List.of(), missed(model(raft(1600, TestParts.at(200, 0, 25))), EnumSet.allOf(Aim.class)));
    }

    @Test
    void whatIsMissedDived() {
        missesOnly(Aim.RESIDUAL, 60 - 39.6, model(diver(370)));
        missesOnly(Aim.RESIDUAL, 10 - 20.4, model(diver(395)));
        double bg = (1600 * 5 + 770 * 10) / 2370.0;
        missesOnly(Aim.BG, bg - 8, model(diver(385), PlanBoats.WANTED.withStability(8, 4)));
        double tilt = 770 * 7 / 2370.0 / 6;
        missesOnly(Aim.DIVED_TRIM, -(Math.toDegrees(tilt) - 0.95 * 1.5), model(Shifted.along(diver(385), "tank", 7)));
        missesOnly(Aim.DIVED_TRIM, Math.toDegrees(tilt) - 0.95 * 1.5, model(Shifted.along(diver(385), "tank", -7)));
        PlanModel corrected = model(diver(385), PlanBoats.WANTED.withStability(8, 4));
        corrected.correct(Aim.BG, 1);
        missesOnly(Aim.BG, bg - 9, corrected);
        PlanModel soft = model(raft(1600, TestParts.at(200, 0, 38)));
        soft.correct(Aim.GM, 1);
        missesOnly(Aim.GM, KM - 38 - 5, soft);
    }

    /** A boat 2 mm off her line and 160 g off in the dive, where one weight mends either: the line is kept, and what weight it allows is used. */
    @Test
    void theLineIsDearest() {
        Choice gram = one(Influence.ofMass(1, TestParts.at(200, 0, 25)));
        Boat boat = PlanBoats.divingRaft(1520, TestParts.at(200, 0, 25), 350, List.of());
        List<Miss> misses = missed(model(boat, gram), EnumSet.allOf(Aim.class));
        // At the line 1600 g and 19 g more at most; dived 2400 − 700 − 1619 g are left.
        assertEquals(List.of(Aim.RESIDUAL), misses.stream().map(Miss::aim).toList());
        assertEquals(2400 - 700 - 1619 - 39.6, misses.get(0).amount(), 1e-6);
    }

    /** A miss of less than a thousandth of the tolerance is rounding. */
    @ParameterizedTest
    @CsvSource({"0.0004, 0", "0.001, 1"})
    void missesThatCount(double mm, int told) {
        PlanModel model = model(raft(1600 + 40 * (0.475 + mm), TestParts.at(200, 0, 25)));
        assertEquals(told, missed(model, EnumSet.allOf(Aim.class)).size());
    }

    @Test
    void capsHold() {
        Choice high = one(Influence.ofMass(1, TestParts.at(200, 0, 20)));
        Choice low = one(Influence.ofMass(1, TestParts.at(200, 0, 10)));
        Boat boat = raft(1300, TestParts.at(200, 0, 25));
        PlanRequest request = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        PlanBasis basis = PlanBasis.of(Condition.of(boat), request);
        PlanModel model =
                new PlanModel(basis, List.of(high, low), List.of(new PlanModel.Cap("low", new double[] {0, 2}, 200)));
        double[] x =
                model.programme(PlanModel.Hold.EXACT, Goal.LEAST_MASS).solve().x();
        assertEquals(100, x[1], 1e-6);
        assertEquals(199.98, x[0], 1e-4);
        assertEquals(1, model.caps().size());
        assertEquals(List.of(high, low), model.choices());
        PlanModel less =
                new PlanModel(basis, List.of(high, low), List.of(new PlanModel.Cap("both", new double[] {1, 1}, 200)));
        List<Miss> misses = missed(less, EnumSet.allOf(Aim.class));
        assertEquals(-(100 / 40.0 - 0.475), misses.get(0).amount(), 1e-6);
    }

    /** What an answer adds counts lead and foam alone, pairs twice. */
    @Test
    void gramsAdded() {
        Unknown u = new Unknown("u", Influence.NOTHING, 10, 1);
        Choice.Spot spot = new Choice.Spot("z", trimwright.boat.Zone.Use.BALLAST, false);
        Choice pair = new Choice(u, List.of(spot, spot), 0.5);
        Choice single = new Choice(u, List.of(spot), 2);
        PlanModel model = model(raft(1300, TestParts.at(200, 0, 25)), pair, single, Choice.plain(u));
        assertEquals(3 + 2 * 4, model.addedG(new double[] {3, 4, 100}), 1e-12);
    }

    @ParameterizedTest
    @EnumSource(Aim.class)
    void aimsThatOnlyABoatThatDivesHas(Aim aim) {
        assertEquals(
                Set.of(Aim.RESIDUAL, Aim.BG, Aim.DIVED_TRIM, Aim.DIVED_LIST).contains(aim), aim.isDived());
        // A boat that does not dive misses none of those, whatever is wanted of her.
        Wanted deep = new Wanted(1000, 4, new Targets.Band(5000, 6000), 0.5, 0.3, 1.5);
        PlanModel model = model(raft(1600, TestParts.at(200, 0, 25)), deep);
        assertTrue(model.holding(EnumSet.of(aim)).solve().isOptimal());
        assertEquals(List.of(), missed(model, EnumSet.of(aim)));
    }
}
