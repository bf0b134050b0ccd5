package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Targets;

/** A box of 400 × 100 × 60 that draws 30: KB 15, BM = 100² ∕ 12 ∕ 30 = 27.78, so M stands 42.78 above her bottom. */
class SteadinessTest {

    private static final double BM = 1e4 / 12 / 30;

    private static Boat block(double kg) {
        return TestBoats.block(400, 100, 60, 1200, new Vector3D(0, 0, kg));
    }

    private static Steadiness of(Boat boat) {
        return Steadiness.afloat(Condition.of(boat)).orElseThrow();
    }

    @Test
    void standsFirm() {
        Steadiness s = of(block(20));
        assertEquals(Steadiness.Stance.STANDS_FIRM, s.stance());
        assertEquals(15 + BM - 20, s.gmMm(), 1e-9);
        assertEquals(-5, s.bgMm(), 1e-9);
        assertEquals(0, s.heelDeg(), 1e-9);
        // 3 % of her beam of 100.
        assertEquals(3, s.wantedGmMm(), 1e-12);
        // With M where it is, B stands BM under it: that is how far G may be above B.
        assertEquals(-BM, s.bgToStandMm(), 1e-9);
        assertEquals(3 - BM, s.bgToStandFirmMm(), 1e-9);
    }

    /** Between nothing and what is wanted, be that 3 % of her beam or the builder's own. */
    @Test
    void isTender() {
        assertEquals(Steadiness.Stance.TENDER, of(block(15 + BM - 2.9)).stance());
        assertEquals(Steadiness.Stance.STANDS_FIRM, of(block(15 + BM - 3.1)).stance());
        Boat plain = block(20);
        Targets gm30 = new Targets(
                Optional.empty(),
                Optional.of(30.0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Steadiness s =
                of(new Boat(plain.name(), plain.water(), plain.paintedLine(), plain.parts(), plain.zones(), gm30));
        assertEquals(30, s.wantedGmMm(), 0);
        assertEquals(Steadiness.Stance.TENDER, s.stance());
    }

    /** 1 mm too high she rests where tan² φ = −2 GM ∕ BM (wall-sided, closed form). */
    @Test
    void restsOnEitherSide() {
        Steadiness s = of(block(15 + BM + 1));
        assertEquals(Steadiness.Stance.RESTS_ON_EITHER_SIDE, s.stance());
        assertEquals(-1, s.gmMm(), 1e-9);
        assertEquals(Math.toDegrees(Math.atan(Math.sqrt(2 / BM))), Math.abs(s.heelDeg()), 1e-4);
    }

    /** A round bar with G above its axis turns all the way. */
    @Test
    void fallsOver() {
        Boat bar = TestBoats.boat(TestBoats.body(
                "bar",
                TestBoats.bar(new Vector3D(-250, 0, 40), new Vector3D(250, 0, 40), 80),
                1000,
                new Vector3D(0, 0, 45)));
        Steadiness s = of(bar);
        assertEquals(Steadiness.Stance.FALLS_OVER, s.stance());
        assertEquals(-5, s.gmMm(), 1e-9);
        assertEquals(180, Math.abs(s.heelDeg()), 1e-4);
    }

    @Test
    void aSunkenBoatDoesNotStand() {
        assertTrue(Steadiness.afloat(Condition.of(TestBoats.block(400, 100, 60, 2500, new Vector3D(0, 0, 20))))
                .isEmpty());
    }
}
