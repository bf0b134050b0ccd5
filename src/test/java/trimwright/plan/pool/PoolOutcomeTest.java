package trimwright.plan.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.WeightMoved;
import trimwright.plan.BallastPlan;
import trimwright.statics.Condition;

/** When a plan is made of what the readings say, and of which boat; which lists are one inclining test. */
class PoolOutcomeTest {

    private static final Boat BOAT = PoolBoats.boat();

    private static PoolTest test(Reading... readings) {
        return new PoolTest("test", "", List.of(readings));
    }

    private static Reading list(String id, double fill, Vector3D move, double listDeg) {
        List<WeightMoved> moved = move.getNorm() == 0 ? List.of() : List.of(new WeightMoved(20, move));
        return PoolBoats.reading(id, fill, List.of(), moved, PoolBoats.of(Quantity.LIST, listDeg));
    }

    @Test
    void aPlanTakesALineAndReadingsThatAgree() {
        Reading list = list("list", 0, Vector3D.ZERO, 0);
        BallastPlan plan = PoolOutcome.of(BOAT, test(list)).change().orElseThrow();
        // A boat that is as her file says: what comes on top of her is lead and foam.
        assertEquals(
                Condition.of(BOAT).dryMassG() + plan.addedLeadG() + plan.addedFoamG(),
                Condition.of(plan.planned()).dryMassG(),
                1e-6);
        Boat lineless =
                new Boat(BOAT.name(), BOAT.water(), Optional.empty(), BOAT.parts(), BOAT.zones(), BOAT.targets());
        assertEquals(Optional.empty(), PoolOutcome.of(lineless, test(list)).change());
        Reading other = list("other", 0, Vector3D.ZERO, 12);
        PoolOutcome against = PoolOutcome.of(BOAT, test(list, other, list("third", 0, Vector3D.ZERO, -9)));
        assertTrue(against.estimate().isContradictory());
        assertEquals(Optional.empty(), against.change());
    }

    /** Four lists of one state make a line; what was moved ahead or up as well, what was read with other fills, and what has no list, is none of them. */
    @Test
    void readingsOfOneIncliningTest() {
        List<Reading> readings = new ArrayList<>();
        // tan φ = w d ∕ W GM for 20 g on a boat of 1962 g with a GM of 10 mm.
        double[] ways = {0, 10, 20, -20};
        for (double way : ways) {
            double phi = Math.toDegrees(Math.atan(20 * way / (1962 * 10.0)));
            readings.add(list("way " + way, 0, new Vector3D(0, -way, 0), phi));
        }
        Inclining plain = Inclining.of(BOAT, readings).orElseThrow();
        assertEquals(10, plain.gmMm(), 1e-9);
        assertEquals(0, plain.gmErrorMm(), 1e-9);
        assertEquals(4, plain.readings());
        readings.add(0, list("full", 1, new Vector3D(0, -10, 0), 7));
        readings.add(1, list("ahead too", 0, new Vector3D(5, -10, 0), 7));
        readings.add(2, list("up too", 0, new Vector3D(0, -10, 5), 7));
        readings.add(3, PoolBoats.reading("trim", 0, List.of(), List.of(), PoolBoats.of(Quantity.TRIM, 7)));
        Inclining found = Inclining.of(BOAT, readings).orElseThrow();
        assertEquals(10, found.gmMm(), 1e-9);
        assertEquals(4, found.readings());
        // Three readings of two moments are no line with a scatter.
        assertEquals(
                Optional.empty(),
                Inclining.of(
                        BOAT,
                        List.of(
                                list("a", 0, Vector3D.ZERO, 0),
                                list("b", 0, Vector3D.ZERO, 0.1),
                                list("c", 0, new Vector3D(0, -10, 0), 1))));
        assertEquals(
                3,
                Inclining.of(
                                BOAT,
                                List.of(
                                        list("a", 0, Vector3D.ZERO, 0),
                                        list("b", 0, new Vector3D(0, 10, 0), -1),
                                        list("c", 0, new Vector3D(0, -10, 0), 1)))
                        .orElseThrow()
                        .readings());
    }
}
