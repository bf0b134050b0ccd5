package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.boat.Water;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;

/** Hydrostatics of a box by hand: V = L B T, BM = B² ∕ 12 T across and L² ∕ 12 T along. */
class WaterlineTest {

    private static final WaterPlane LEVEL = WaterPlane.level(0);

    @Test
    void aBoxAtThreeDraughts() {
        Condition condition = Condition.of(TestBoats.boat(
                Water.ofDensity(1.025),
                TestBoats.hull(Solids.box(-100, -50, 0, 300, 50, 60), 500, new Vector3D(100, 0, 20))));
        List<Waterline> table = Waterline.table(condition, WaterPlane.level(17), List.of(20.0, 30.0, 45.5));
        assertEquals(3, table.size());
        for (Waterline at : table) {
            double t = at.plane().heightMm();
            assertEquals(40000 * t, at.sums().volumeMm3(), 1e-6);
            assertEquals(1.025e-3 * 40000 * t, at.displacementG(), 1e-9);
            assertEquals(41, at.gramsPerMmImmersion(), 1e-9);
            assertEquals(40000 + 1000 * t, at.wettedMm2(), 1e-6);
            assertEquals(0, at.waterplaneJumpMm2(), 0);
            assertEquals(100 * 100 / 12.0 / t, at.bmTransverseMm().orElseThrow(), 1e-9);
            assertEquals(400 * 400 / 12.0 / t, at.bmLongitudinalMm().orElseThrow(), 1e-9);
            assertEquals(t / 2, at.centreOfBuoyancyMm().orElseThrow().getZ(), 1e-9);
            assertEquals(100, at.centreOfBuoyancyMm().get().getX(), 1e-9);
            assertEquals(t, at.centreOfFlotationMm().orElseThrow().getZ(), 1e-9);
            assertEquals(100, at.centreOfFlotationMm().get().getX(), 1e-9);
        }
        assertEquals(
                List.of(20.0, 30.0, 45.5),
                table.stream().map(w -> w.plane().heightMm()).toList());
    }

    /** Below her keel nothing is immersed; above her deck all is, but there is no waterplane. */
    @Test
    void outOfTheWaterAndUnderIt() {
        Condition condition = Condition.of(TestBoats.block(400, 100, 60, 500, new Vector3D(0, 0, 20)));
        Waterline out = Waterline.of(condition, LEVEL.at(-5));
        assertEquals(0, out.displacementG(), 0);
        assertTrue(out.centreOfBuoyancyMm().isEmpty());
        assertTrue(out.centreOfFlotationMm().isEmpty());
        assertTrue(out.bmTransverseMm().isEmpty());
        assertTrue(out.bmLongitudinalMm().isEmpty());
        Waterline under = Waterline.of(condition, LEVEL.at(65));
        assertEquals(2400, under.displacementG(), 1e-9);
        assertEquals(30, under.centreOfBuoyancyMm().orElseThrow().getZ(), 1e-9);
        assertTrue(under.centreOfFlotationMm().isEmpty());
        assertEquals(0, under.bmTransverseMm().orElseThrow(), 0);
    }

    /** Where flat faces lie in the water the waterplane jumps by their area: at the bottom up, at the deck down, at a step by what it is narrower or wider. */
    @ParameterizedTest
    @CsvSource({"0, 40000", "40, -16000", "40.001, 0", "39.999, 0", "60, 8000", "80, -32000"})
    void flatFacesInTheWater(double height, double jump) {
        Condition condition = Condition.of(TestBoats.boat(
                TestBoats.body("low", TestBoats.box(0, -50, 0, 400, 50, 40), 100, new Vector3D(200, 0, 10)),
                TestBoats.body("middle", TestBoats.box(0, -30, 40, 400, 30, 60), 100, new Vector3D(200, 0, 50)),
                TestBoats.body("high", TestBoats.box(0, -40, 60, 400, 40, 80), 100, new Vector3D(200, 0, 70))));
        assertEquals(jump, Waterline.of(condition, LEVEL.at(height)).waterplaneJumpMm2(), 1e-2);
    }
}
