package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Zone;

/** Lead and foam on board that is not fixed: taken out, moved, and its room used again. */
class LooseTest {

    /** A boat that a plan has put right; her pieces are parts of hers now. */
    private static Boat trimmed() {
        BallastPlan plan =
                Planner.plan(PlanBoats.request(PlanBoats.submarine(88, 1250, 0), PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        return plan.planned();
    }

    private static Boat with(Boat boat, String id, Part other) {
        return boat.withParts(
                boat.parts().stream().map(p -> p.id().equals(id) ? other : p).toList());
    }

    private static Part keelLead(Boat boat) {
        return boat.parts().stream()
                .filter(p -> p.kind() == Kind.BALLAST)
                .max((a, b) -> Double.compare(
                        a.shape().orElseThrow().bounds().sizeX(),
                        b.shape().orElseThrow().bounds().sizeX()))
                .orElseThrow();
    }

    private static Part shifted(Part part, double mm) {
        BoxShape box = (BoxShape) part.shape().orElseThrow();
        return part.withBody(
                Optional.of(new BoxShape(
                        box.fromMm().add(TestParts.at(mm, 0, 0)), box.toMm().add(TestParts.at(mm, 0, 0)))),
                part.weighedMassG(),
                part.givenCentreMm());
    }

    /** Her keel lead lies 14 mm too far forward and is loose: it is moved back, and nothing worth mentioning is added. */
    @Test
    void looseLeadIsMovedBackToWhereItBelongs() {
        Boat good = trimmed();
        Part lead = keelLead(good);
        Boat off = with(good, lead.id(), shifted(lead, 14).loose());
        BallastPlan plan = Planner.plan(PlanRequest.of(off, PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        PlannerTest.holds(plan, PlanBoats.WANTED);
        assertEquals(-14, plan.moves().get(lead.id()), 6);
        assertTrue(plan.addedLeadG() + plan.addedFoamG() < 10, plan.toString());
        Part now = plan.planned().part(lead.id()).orElseThrow();
        assertEquals(
                14 + plan.moves().get(lead.id()),
                now.shape().orElseThrow().bounds().centreX()
                        - lead.shape().orElseThrow().bounds().centreX(),
                1e-9);
    }

    @Test
    void fixedLeadStaysWhereItIs() {
        Boat good = trimmed();
        Part lead = keelLead(good);
        Boat off = with(good, lead.id(), shifted(lead, 14));
        BallastPlan plan = Planner.plan(PlanRequest.of(off, PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.moves().isEmpty() && plan.removals().isEmpty());
        BallastPlan taken = Planner.plan(new PlanRequest(
                off,
                off.paintedLine().orElseThrow().plane(),
                PlanBoats.WANTED,
                Goal.LEAST_MASS,
                11.34,
                0.03,
                Set.of(lead.id())));
        assertTrue(taken.moves().isEmpty());
    }

    /** The keel is full of a light alloy, and only there may lead go: nothing helps while it is fixed; loose, it makes room for lead. */
    @Test
    void theRoomOfWhatIsTakenOutIsUsedAgain() {
        Boat plain = PlanBoats.submarine(88, 1250, 0);
        List<Part> parts = new ArrayList<>(plain.parts());
        Part alloy = TestParts.solid("alloy", Kind.BALLAST, TestParts.box(60, -9, 2, 740, 9, 11), 1.8);
        parts.add(alloy);
        Boat boat = plain.withParts(parts);
        assertFalse(Planner.plan(PlanRequest.of(boat, PlanBoats.WANTED, Goal.LEAST_MASS))
                .feasible());
        Boat loose = with(boat, "alloy", alloy.loose());
        BallastPlan plan = Planner.plan(PlanRequest.of(loose, PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        PlannerTest.holds(plan, PlanBoats.WANTED);
        assertEquals(1.0, plan.removals().get("alloy"));
        assertTrue(plan.planned().part("alloy").isEmpty());
        assertTrue(plan.addedLeadG() > 100);
    }

    /** A bar in a box hull of 1.5 mm slides until its end meets the end wall, and no farther than another part lets it. */
    @Test
    void howFarAPartSlides() {
        Boat plain = PlanBoats.submarine(88, 1250, 0);
        List<Part> parts = new ArrayList<>(plain.parts());
        Part lead = TestParts.solid("lead", Kind.BALLAST, TestParts.box(100, -5, 2, 200, 5, 8), 11.34)
                .loose();
        parts.add(lead);
        SlideRoom free = SlideRoom.of(plain.withParts(parts).pieces(), lead);
        assertEquals(100 - 1.5, free.asternMm(), 1);
        assertEquals(798.5 - 200, free.aheadMm(), 1);
        parts.add(TestParts.solid("stop", Kind.BALLAST, TestParts.box(260, -1, 2, 270, 1, 8), 11.34));
        assertEquals(60, SlideRoom.of(plain.withParts(parts).pieces(), lead).aheadMm(), 1);
    }

    /** Two bars side by side in the keel, one loose: no new piece lies where the loose one ends up. */
    @Test
    void newPiecesKeepClearOfWhatIsMoved() {
        Boat good = trimmed();
        Part lead = keelLead(good);
        Boat off = with(good, lead.id(), shifted(lead, 40).loose());
        BallastPlan plan = Planner.plan(PlanRequest.of(off, PlanBoats.WANTED, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        List<Part> all = plan.planned().parts().stream()
                .filter(p -> p.kind() == Kind.BALLAST || p.kind() == Kind.FOAM)
                .toList();
        for (Part a : all) {
            for (Part b : all) {
                if (!a.id().equals(b.id())) {
                    var shared = a.shape()
                            .orElseThrow()
                            .bounds()
                            .intersection(b.shape().orElseThrow().bounds());
                    boolean apart = shared.sizeX() <= 1 || shared.sizeY() <= 1e-6 || shared.sizeZ() <= 1e-6;
                    assertTrue(apart, a.id() + " in " + b.id());
                }
            }
        }
    }

    @Test
    void aZoneOfThePlanIsNeverItsOwnObstacle() {
        List<Room> rooms = Room.of(
                List.of(PlanBoats.zone("z", Zone.Use.FOAM, TestParts.box(700, -50, 20, 780, 50, 80), false)),
                PlanBoats.submarine(88, 1250, 0).pieces(),
                PlanBoats.submarine(88, 1250, 0).paintedLine().orElseThrow().plane());
        assertEquals(80 * 100 * 60, rooms.get(0).freeMm3(), 1e-6);
        assertEquals(List.of(), rooms.get(0).takenBy());
    }
}
