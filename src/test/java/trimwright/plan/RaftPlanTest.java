package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Zone;

/** Plans for rafts, solved by hand. */
class RaftPlanTest {

    /**
     * The raft weighs 1300 g and is to displace 1600 cm³. A keel zone hangs under it. Lead of 11.34 g/cm³ in the water weighs (1 − 1/11.34) of its mass, so 300 g ÷ (1 − 1/11.34) = 329.01 g is needed; its
     * centre must lie under the middle.
     */
    @Test
    void leadUnderARaftByHand() {
        Boat boat = PlanBoats.raft(
                1300,
                TestParts.at(200, 0, 25),
                List.of(PlanBoats.zone("under", Zone.Use.BALLAST, TestParts.box(50, -10, -12, 350, 10, 0), false)));
        BallastPlan plan = Planner.plan(PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        // The line is held to a thousandth of its tolerance: 0.0005 mm of 40 g/mm.
        assertEquals(300 / (1 - 1 / 11.34), plan.rounding().idealMassG(), 0.025);
        // Cast to a gram.
        assertEquals(300 / (1 - 1 / 11.34), plan.addedLeadG(), 0.5);
        assertEquals(1, plan.pieces().size());
        BoxShape piece = (BoxShape) plan.pieces().get(0).shape().orElseThrow();
        assertEquals(200, 0.5 * (piece.fromMm().getX() + piece.toMm().getX()), 0.5);
    }

    /** Two foams against a trim, by hand: the raft's weight stands 10 mm forward of the middle, so the lead must stand aft by 1300 · 10 / 300 mm. */
    @Test
    void leadAgainstATrimByHand() {
        Boat boat = PlanBoats.raft(
                1300,
                TestParts.at(210, 0, 25),
                List.of(PlanBoats.zone("under", Zone.Use.BALLAST, TestParts.box(20, -20, -12, 380, 20, 0), false)));
        BallastPlan plan = Planner.plan(PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        BoxShape piece = (BoxShape) plan.pieces().get(0).shape().orElseThrow();
        assertEquals(
                200 - 1300.0 * 10 / 300,
                0.5 * (piece.fromMm().getX() + piece.toMm().getX()),
                0.6);
    }

    /**
     * One lead and two foams by hand. A box of 400 × 100 mm and 1650 g, G 8 mm forward of its middle, is to float at 40 mm, where it displaces 1600 g. With
     * net lifts a at the bow (207 mm ahead of the middle) and b at the stern (207 mm behind it) and net weight m of lead under the stern (170 mm behind):
     * a + b − m = 50, 207 a − 207 b + 170 m = 13200. Without lead b would be negative; lead is dearer than foam, so b = 0, and
     * 207 (50 + m) + 170 m = 13200 gives m = 7.560 g in the water, a = 57.560 g.
     */
    @Test
    void oneLeadAndTwoFoamsByHand() {
        Boat boat = PlanBoats.raft(
                1650,
                TestParts.at(208, 0, 25),
                List.of(
                        PlanBoats.zone("stern lead", Zone.Use.BALLAST, TestParts.box(24, -15, -12, 36, 15, 0), false),
                        PlanBoats.zone("bow", Zone.Use.FOAM, TestParts.box(400, -60, 0, 414, 60, 40), false),
                        PlanBoats.zone("stern", Zone.Use.FOAM, TestParts.box(-14, -60, 0, 0, 60, 40), false)));
        PlanRequest request = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        CellProgramme programme = CellProgramme.of(request);
        CellProgramme.Outline outline = programme.outline();
        assertTrue(outline.meetsAll());
        double[] amounts = programme.amountsMm3(outline);
        double lead = 0;
        double bow = 0;
        double stern = 0;
        for (int i = 0; i < amounts.length; i++) {
            String zone = programme.cells().get(i).zone();
            lead += zone.equals("stern lead") ? amounts[i] / 1000 * 11.34 : 0;
            bow += zone.equals("bow") ? amounts[i] / 1000 : 0;
            stern += zone.equals("stern") ? amounts[i] / 1000 : 0;
        }
        double m = (13200 - 207 * 50) / (207 + 170.0);
        // The line is held to a thousandth of its tolerance of 0.5 mm: 0.02 g, and as much again in the moment.
        assertEquals(m / (1 - 1 / 11.34), lead, 0.05);
        assertEquals((50 + m) / 0.97, bow, 0.05);
        assertEquals(0, stern, 0.05);
        BallastPlan plan = Planner.plan(request);
        assertTrue(plan.feasible());
        assertEquals(lead, plan.addedLeadG(), 1);
        assertEquals(bow, plan.addedFoamMm3() / 1000, 5);
    }

    /** A raft of 1300 g that must weigh 1600 in the water, with a post that parts the zone under her: port and starboard together hold what the zone may, not each. */
    @Test
    void theLimitOfAZoneCountsBothItsSides() {
        Part post = TestParts.weighed(
                "post", Kind.CYLINDER, TestParts.box(40, -2, -12, 360, 2, 0), 1, TestParts.at(200, 0, -6));
        List<Boolean> feasible = new ArrayList<>();
        for (double mostG : new double[] {345, 200}) {
            Zone zone = new Zone(
                    "under", Zone.Use.BALLAST, TestParts.box(50, -12, -12, 350, 12, 0), Optional.of(mostG), false);
            Boat boat = PlanBoats.raft(1300, TestParts.at(200, 0, 25), List.of(zone), post);
            BallastPlan plan = Planner.plan(PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS));
            feasible.add(plan.feasible());
            // The post displaces 320 · 4 · 12 = 15.36 cm³ and weighs 1 g.
            if (plan.feasible()) {
                assertEquals((300 + 14.36) / (1 - 1 / 11.34), plan.addedLeadG(), 1);
                assertEquals(
                        2,
                        plan.pieces().stream()
                                .map(p -> Math.signum(
                                        p.shape().orElseThrow().bounds().centreY()))
                                .distinct()
                                .count());
            }
        }
        assertEquals(List.of(true, false), feasible);
    }
}
