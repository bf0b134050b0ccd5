package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Targets;

/** Ways out, each carried out by hand as its words say and planned anew. */
class WaysOutTest {

    private static final double TANK_SECTION_MM2 = Math.PI * 35 * 35;

    private static Planner.Answer answer(Boat boat, Wanted wanted) {
        return Planner.answer(PlanBoats.request(boat, wanted, Goal.LEAST_MASS));
    }

    private static boolean hasPlan(Boat boat, Wanted wanted) {
        return Planner.plan(PlanBoats.request(boat, wanted, Goal.LEAST_MASS)).feasible();
    }

    private static Boat withLine(Boat boat, double raisedMm) {
        List<Vector3D> points = boat.paintedLine().orElseThrow().pointsMm().stream()
                .map(p -> p.add(TestParts.at(0, 0, raisedMm)))
                .toList();
        return new Boat(
                boat.name(),
                boat.water(),
                Optional.of(new PaintedLine(points)),
                boat.parts(),
                boat.zones(),
                boat.targets());
    }

    /** A tank too small and one too large: lengthened or shortened, or the line painted elsewhere, by what is said. */
    @Test
    void everyWayOutHoldsWhenItIsGone() {
        List<WayOut.Kind> gone = new ArrayList<>();
        for (double tankMm : new double[] {70, 170}) {
            Boat boat = PlanBoats.submarine(tankMm, 1250, 0);
            Planner.Answer answer = answer(boat, PlanBoats.WANTED);
            assertFalse(answer.plan().feasible(), "tank of " + tankMm);
            for (WayOut way : answer.waysOut()) {
                if (way.kind() == WayOut.Kind.TANK_VOLUME) {
                    gone.add(way.kind());
                    double longer = tankMm + 1000 * way.amount() / TANK_SECTION_MM2;
                    assertTrue(hasPlan(PlanBoats.submarine(longer, 1250, 0), PlanBoats.WANTED), way.toString());
                } else if (way.kind() == WayOut.Kind.LINE_RAISED) {
                    gone.add(way.kind());
                    assertTrue(hasPlan(withLine(boat, way.amount()), PlanBoats.WANTED), way.toString());
                } else if (way.kind() == WayOut.Kind.AIM_EASED && way.subject().equals("residual")) {
                    gone.add(way.kind());
                    Targets.Band band = way.amount() > 0
                            ? new Targets.Band(20, 40 + way.amount())
                            : new Targets.Band(20 + way.amount(), 40);
                    assertTrue(hasPlan(boat, new Wanted(6, 4, band, 0.5, 0.3, 1.5)), way.toString());
                }
            }
        }
        assertTrue(gone.contains(WayOut.Kind.TANK_VOLUME) && gone.contains(WayOut.Kind.LINE_RAISED), gone.toString());
    }

    /** A BG that the room does not allow: with as much less there is a plan, and with clearly more than that less there was none. */
    @Test
    void anAimThatIsEasedCanBeHad() {
        Boat boat = PlanBoats.submarine(88, 1250, 0);
        Wanted high = new Wanted(30, 4, new Targets.Band(20, 40), 0.5, 0.3, 1.5);
        WayOut less = answer(boat, high).waysOut().stream()
                .filter(w -> w.kind() == WayOut.Kind.AIM_EASED && w.subject().equals("bg"))
                .findFirst()
                .orElseThrow();
        double left = 30 - Math.abs(less.amount());
        assertTrue(hasPlan(boat, new Wanted(left, 4, new Targets.Band(20, 40), 0.5, 0.3, 1.5)), "BG " + left);
        // Pieces take up to seven tenths of (1 mm and a tenth of what is wanted).
        assertFalse(hasPlan(boat, new Wanted(left + 4, 4, new Targets.Band(20, 40), 0.5, 0.3, 1.5)), "BG " + left);
    }

    /**
     * A tank in the open above the line that is made larger stands just as much more above the line: that is no way out when too much stands there,
     * by the definition of the residual: buoyancy of all there is, less weight, less the water in the tank.
     */
    @Test
    void aTankInTheOpenIsNoWayOutByItsSize() {
        Boat boat = PlanBoats.submarine(40, 1250, 0);
        List<Part> parts = new ArrayList<>(boat.parts());
        parts.removeIf(Part::isTank);
        parts.add(TestParts.tank(
                "tank",
                new BarShape(TestParts.at(410, 0, 99), TestParts.at(450, 0, 99), 18, BarShape.Ends.FLAT),
                Optional.empty()));
        Planner.Answer answer = answer(boat.withParts(parts), PlanBoats.WANTED);
        assertEquals(
                Cause.Kind.TANK_TOO_SMALL,
                answer.plan().misses().get(0).cause().orElseThrow().kind());
        assertFalse(answer.waysOut().stream().anyMatch(w -> w.kind() == WayOut.Kind.TANK_VOLUME), answer.toString());
    }
}
