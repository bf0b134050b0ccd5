package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.Zone;

class LineRangeTest {

    /**
     * The raft with 1300 g: at a line r mm higher she displaces 1600 + 40 r g, so that lead of
     * (300 + 40 r) ∕ (1 − 1 ∕ 11.34) g belongs under her. Nothing is to be added at r = −7.5; the zone of 72 cm³ is full at 72 · 10.34 = 744.48 g in the water, r =
     * 11.11. The line may be off by 0.5 mm. It does not matter how far apart the lines are that are tried, nor whether they add up to a round number.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 2, 3.3})
    void aRaftByHand(double step) {
        Boat boat = PlanBoats.raft(
                1300,
                TestParts.at(200, 0, 25),
                List.of(PlanBoats.zone("under", Zone.Use.BALLAST, TestParts.box(50, -10, -12, 350, 10, 0), false)));
        List<LineRange.Place> places = LineRange.of(
                        PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS), 16, step)
                .places();
        // Closed in on to a sixty-fourth of a step; the room is measured to 1 %, which is 0.3 mm.
        assertEquals(-7.75, places.get(0).raisedMm(), 0.26 + step / 64);
        assertEquals(11.36, places.get(places.size() - 1).raisedMm(), 0.56 + step / 64);
        for (int i = 0; i < places.size(); i++) {
            LineRange.Place p = places.get(i);
            double inWater = 300 + 40 * p.raisedMm();
            // To a thousandth of the tolerance; beyond what can be reached exactly with all of it.
            double off = p.raisedMm() < -7.5 || p.raisedMm() > 10.8 ? 20 : 0.1;
            assertEquals(inWater / (1 - 1 / 11.34), p.addedG(), 1.1 * off, "raised " + p.raisedMm());
            if (i > 0) {
                double apart = p.raisedMm() - places.get(i - 1).raisedMm();
                assertTrue(apart > 0 && apart <= step + 1e-9, "lines " + apart + " apart");
            }
        }
    }
}
