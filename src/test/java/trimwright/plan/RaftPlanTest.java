package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    private static Zone keel() {
        return PlanBoats.zone("keel", Zone.Use.BALLAST, TestParts.box(150, -10, -15, 250, 10, 0), false);
    }

    /** Loose lead of 200 g where 109.67 g are wanted: its share that goes is told, and the boat of the plan has the rest. To take all of it out and cast as much anew is no better. */
    @Test
    void looseLeadIsTakenOutInPart() {
        Part pig = TestParts.solid(
                "pig", Kind.BALLAST, TestParts.box(260, -10, -200 / 11.34e-3 / 2000, 360, 10, 0), 11.34);
        Boat boat = PlanBoats.raft(1500, TestParts.at(200 - 110 * 100 / 1500.0, 0, 25), List.of(keel()), pig.loose());
        BallastPlan plan = Planner.plan(PlanRequest.of(boat, PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        double left = 100 / (1 - 1 / 11.34);
        assertEquals(200 - left, 200 * plan.removals().get("pig"), 0.5);
        assertEquals(0, plan.moves().size());
        assertEquals(0, plan.addedLeadG());
        assertEquals(
                Math.rint(left) / 200 * 100,
                plan.planned()
                        .part("pig")
                        .orElseThrow()
                        .shape()
                        .orElseThrow()
                        .bounds()
                        .sizeX(),
                1e-6);
        assertEquals(
                List.of("raft", "pig"),
                plan.planned().parts().stream().map(Part::id).toList());
    }

    /** The only room for lead is full of a loose alloy of 1.8: all of that goes, and 329 g of lead come. */
    @Test
    void alloyMakesRoomForLead() {
        Part alloy = TestParts.solid("alloy", Kind.BALLAST, TestParts.box(150, -10, -16, 250, 10, 0), 1.8);
        Boat boat = PlanBoats.raft(1300, TestParts.at(200, 0, 25), List.of(keel()), alloy.loose());
        BallastPlan plan = Planner.plan(PlanRequest.of(boat, PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        assertEquals(Map.of("alloy", 1.0), plan.removals());
        assertEquals(329, plan.addedLeadG(), 0.5);
        assertTrue(plan.planned().part("alloy").isEmpty());
        assertEquals(
                false,
                Planner.plan(PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS))
                        .feasible());
    }

    private static double gm(double lead) {
        double foam = lead * (1 - 1 / 11.34) / 0.97;
        double upright = 1600 * 20
                + lead / 11.34 * -5
                + foam * 35
                + 400e6 / 12 / 1000
                - (1600 * 25 + lead * -5 + 0.03 * foam * 35);
        return upright / (1600 + lead + 0.03 * foam);
    }

    private static double leadFor(double gm) {
        double low = 0;
        double high = 1000;
        while (high - low > 1e-9) {
            double lead = 0.5 * (low + high);
            if (gm(lead) < gm) {
                low = lead;
            } else {
                high = lead;
            }
        }
        return low;
    }

    /** GM 16 mm where 15.83 are there without: what a mm more costs is the lead and foam from 16 to 17. Where 4 mm are wanted it costs nothing. */
    @Test
    void whatAMillimetreOfGmCosts() {
        Zone under = PlanBoats.zone("keel", Zone.Use.BALLAST, TestParts.box(100, -20, -10, 300, 20, 0), false);
        Zone sides = PlanBoats.zone("sides", Zone.Use.FOAM, TestParts.box(-100, 50, 30, 500, 60, 40), true);
        Boat boat = PlanBoats.raft(1600, TestParts.at(200, 0, 25), List.of(under, sides));
        PlanRequest request = PlanBoats.request(boat, PlanBoats.WANTED.withStability(6, 16), Goal.LEAST_MASS);
        BallastPlan plan = Planner.plan(request);
        assertTrue(plan.feasible());
        assertEquals(Set.of(Aim.GM), plan.worth().keySet());
        double grams = (leadFor(17) - leadFor(16)) * (1 + 0.03 * (1 - 1 / 11.34) / 0.97);
        assertEquals(grams, plan.worth().get(Aim.GM), 0.1);
        BallastPlan easy = Planner.plan(PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS));
        assertEquals(0, easy.worth().get(Aim.GM), 1e-6);
        BallastPlan firmest = Planner.plan(PlanBoats.request(boat, PlanBoats.WANTED, Goal.firmestFor(50)));
        assertEquals(Map.of(), firmest.worth());
        assertEquals(50, firmest.addedLeadG() + firmest.addedFoamG(), 1.5);
        // Under water B of lead and foam and G of both: as told of the boat as floated.
        assertEquals(firmest.surfaced().settled().orElseThrow().gmTransverseMm(), firmest.firmnessMm());
        assertEquals(gm(48.7), firmest.firmnessMm(), 0.05);
    }

    /** Of a boat that dives BG is priced too, where a mm more than what is wanted can be had: 6.62 mm can, 7 cannot. */
    @Test
    void oneThatDivesPricesBoth() {
        Boat boat = PlanBoats.divingRaft(1600, TestParts.at(200, 0, 25), 385, List.of(keel()));
        for (double bg : new double[] {5, 6}) {
            BallastPlan plan =
                    Planner.plan(PlanBoats.request(boat, PlanBoats.WANTED.withStability(bg, 4), Goal.LEAST_MASS));
            assertTrue(plan.feasible());
            assertEquals(
                    bg == 5 ? Set.of(Aim.BG, Aim.GM) : Set.of(Aim.GM),
                    plan.worth().keySet());
            assertEquals(plan.surfaced().submerged().bgMm(), plan.firmnessMm());
            assertEquals((1600 * 5 + 770 * 10) / 2370.0, plan.firmnessMm(), 1e-6);
        }
    }
}
