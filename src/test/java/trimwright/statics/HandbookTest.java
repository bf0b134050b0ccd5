package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Water;
import trimwright.mesh.Solids;

/**
 * Worked examples of Barrass and Derrett, Ship Stability for Masters and Mates, in salt water of 1.025 t/m³: metres stand as mm × 10, tonnes
 * as grams. Tolerances are half of the last digit given.
 */
class HandbookTest {

    private static final double SCALE = 10;

    private static Boat box(double length, double beam, double depth, double mass, double kg) {
        return TestBoats.boat(
                Water.ofDensity(1.025),
                TestBoats.hull(
                        Solids.box(0, -beam / 2 * SCALE, 0, length * SCALE, beam / 2 * SCALE, depth * SCALE),
                        mass,
                        new Vector3D(length / 2 * SCALE, 0, kg * SCALE)));
    }

    /** Box 65 × 12 × 8 m, draught 4 m, KG 4 m: 3198 t, GM 1 m; at 5° and 25° by the wall-sided formula 0.08816 and 0.56046 m. */
    @Test
    void boxShapedVessel() {
        Condition condition = Condition.of(box(65, 12, 8, 3198, 4));
        Equilibrium e = Flotation.of(condition).settled().orElseThrow();
        assertEquals(4 * SCALE, e.plane().heightMm(), 1e-9);
        assertEquals(1 * SCALE, e.gmTransverseMm(), 1e-9);
        double fiveDegrees = Math.toRadians(5);
        double small = e.gmTransverseMm() * Math.sin(fiveDegrees);
        assertEquals(0.0872 * SCALE, small, 0.00005 * SCALE);
        assertEquals(278.9 * SCALE, 3198 * small, 0.25 * SCALE);
        assertEquals(0.08816 * SCALE, TestBoats.leverMm(condition, fiveDegrees), 0.000005 * SCALE);
        assertEquals(0.56046 * SCALE, TestBoats.leverMm(condition, Math.toRadians(25)), 0.000005 * SCALE);
    }

    /** 6000 t, KB 3, KM 6, KG 5.5 m: at 25° a lever of 0.35 m. A box has this KB and KM when T is 6 m and B² = 12 · 6 · 3. */
    @Test
    void wallSidedVessel() {
        double beam = Math.sqrt(12 * 6 * 3);
        double length = 6000 / 1.025 / (6 * beam);
        Condition condition = Condition.of(box(length, beam, 12, 6000, 5.5));
        assertEquals(0.5 * SCALE, TestBoats.gmTransverseMm(condition, Vector3D.PLUS_K), 1e-9);
        assertEquals(0.35 * SCALE, TestBoats.leverMm(condition, Math.toRadians(25)), 0.005 * SCALE);
    }

    /**
     * 8153.75 t, KM 8, KG 7.5 m, a double-bottom tank 15 × 10 × 2 m of salt water pumped to half: G rises 0.1153 m, free surface takes
     * 0.1602 m, GM 0.2245 m. The box has KM 8 m at the 8000 t that are left: T 5 m, B² = 12 · 5 · 5.5.
     */
    @Test
    void tankPumpedToHalf() {
        double beam = Math.sqrt(12 * 5 * 5.5);
        double length = 8000 / 1.025 / (5 * beam);
        double tankful = 15 * 10 * 2 * 1.025;
        double dry = 8153.75 - tankful;
        double kg = (8153.75 * 7.5 - tankful * 1) / dry;
        double middle = length / 2;
        Boat empty = box(length, beam, 12, dry, kg);
        Boat boat = TestBoats.boat(
                empty.water(),
                empty.parts().get(0),
                TestBoats.tank(
                        "double bottom",
                        TestBoats.box(
                                (middle - 7.5) * SCALE, -5 * SCALE, 0, (middle + 7.5) * SCALE, 5 * SCALE, 2 * SCALE),
                        0.5));
        Condition condition = Condition.of(boat);
        assertEquals(8000, condition.massG(), 1e-9);
        Trial upright = TestBoats.held(condition, Vector3D.PLUS_K);
        assertEquals((7.5 + 0.1153) * SCALE, upright.centreOfGravityMm().getZ(), 0.00005 * SCALE);
        double solid = 8 * SCALE - upright.centreOfGravityMm().getZ();
        double gm = upright.reducedPort() / condition.massG();
        assertEquals(0.1602 * SCALE, solid - gm, 0.00005 * SCALE);
        assertEquals(0.2245 * SCALE, gm, 0.00005 * SCALE);
        assertEquals(gm, Flotation.of(condition).settled().orElseThrow().gmTransverseMm(), 1e-9);
    }
}
