package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;

/** Water that is free to move in tanks (closed forms). */
class FreeSurfaceTest {

    /** The hull has a beam of 200, so that she stands well upright with any of the tanks. */
    private static Boat withTanks(Part... tanks) {
        List<Part> parts = new ArrayList<>();
        parts.add(TestBoats.hull(Solids.box(-300, -100, 0, 300, 100, 120), 5000, new Vector3D(0, 0, 50)));
        parts.addAll(List.of(tanks));
        return TestBoats.boat(parts.toArray(Part[]::new));
    }

    /** Loss of GM = ρ i / Δ, i = l b³/12; and n divisions fore and aft divide it by n². */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5})
    void boxTankInDivisions(int n) {
        Part[] tanks = new Part[n];
        for (int i = 0; i < n; i++) {
            double y = -60 + 120.0 * i / n;
            tanks[i] = TestBoats.tank("tank " + i, TestBoats.box(-100, y, 5, 100, y + 120.0 / n, 45), 0.4);
        }
        Condition condition = Condition.of(withTanks(tanks));
        double water = 200 * 120 * 40 * 0.4 / 1000;
        assertEquals(5000 + water, condition.massG(), 1e-9);
        double draught = condition.massG() * 1000 / (600 * 200);
        double kg = (5000 * 50 + water * (5 + 8)) / condition.massG();
        double loss = 200 * Math.pow(120, 3) / 12 / (n * n) / 1000 / condition.massG();
        double bm = 600 * Math.pow(200, 3) / 12 / 1000 / condition.massG();
        Equilibrium e = Flotation.of(condition).settled().orElseThrow();
        assertEquals(draught, e.plane().heightMm(), 1e-9);
        assertEquals(kg, e.centreOfGravityMm().getZ(), 1e-9);
        assertEquals(draught / 2 + bm - kg - loss, e.gmTransverseMm(), 1e-8);
        double lengthwise = 120 * Math.pow(200, 3) / 12 / 1000 / condition.massG();
        double bmLong = 200 * Math.pow(600, 3) / 12 / 1000 / condition.massG();
        assertEquals(draught / 2 + bmLong - kg - lengthwise, e.gmLongitudinalMm(), 1e-7);
    }

    /** Empty or full to the top a tank has no surface. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1})
    void pressedUpOrEmpty(double fill) {
        Condition condition =
                Condition.of(withTanks(TestBoats.tank("t", TestBoats.box(-100, -60, 5, 100, 60, 45), fill)));
        double water = 960 * fill;
        double mass = 5000 + water;
        double kg = (5000 * 50 + water * 25) / mass;
        double draught = mass / 120;
        double bm = 600 * Math.pow(200, 3) / 12 / 1000 / mass;
        Equilibrium e = Flotation.of(condition).settled().orElseThrow();
        assertEquals(draught / 2 + bm - kg, e.gmTransverseMm(), 1e-9);
    }

    /** In a round tank lying fore and aft the water acts, at any list, as if hung from the tank's axis: exact. */
    @ParameterizedTest
    @CsvSource({"0.1,0", "0.5,0", "0.5,25", "0.5,-70", "0.93,40", "0.02,10", "0.3,179"})
    void roundTankActsAtItsAxis(double fill, double heelDeg) {
        Vector3D axis = new Vector3D(20, -11, 33);
        Vector3D half = new Vector3D(90, 0, 0);
        Part tank = TestBoats.tank("mbt", TestBoats.bar(axis.subtract(half), axis.add(half), 50), fill);
        Condition free = Condition.of(withTanks(tank));
        double water = fill * Math.PI * 625 * 180 / 1000;
        Condition hung = Condition.of(withTanks(TestBoats.weight("hung", water, axis)));
        assertEquals(hung.massG(), free.massG(), 1e-9 * free.massG());
        double phi = Math.toRadians(heelDeg);
        Vector3D up = new Vector3D(0, Math.sin(phi), Math.cos(phi));
        assertEquals(TestBoats.leverMm(hung, phi), TestBoats.leverMm(free, phi), 1e-9);
        assertEquals(TestBoats.gmTransverseMm(hung, up), TestBoats.gmTransverseMm(free, up), 1e-8);
        TankLoad load = free.tankLoad(WaterPlane.of(up, 0));
        Vector3D centroid = load.momentGmm().scalarMultiply(1 / load.massG());
        Vector3D level = new Vector3D(0, Math.cos(phi), -Math.sin(phi));
        assertEquals(0, centroid.subtract(axis).dotProduct(level), 1e-9);
        assertTrue(centroid.subtract(axis).dotProduct(up) < 0);
    }

    /** A tank fills to a plane that keeps its volume whatever way up she is. */
    @Test
    void waterKeepsItsVolume() {
        Part tank = TestBoats.tank("t", TestBoats.box(-100, -60, 5, 100, 60, 45), 0.37);
        Condition condition = Condition.of(withTanks(tank));
        for (Vector3D up : List.of(
                Vector3D.PLUS_K,
                Vector3D.MINUS_K,
                Vector3D.PLUS_I,
                new Vector3D(1, -2, 3),
                new Vector3D(-1, 5, -0.1))) {
            TankLoad load = condition.tankLoad(WaterPlane.of(up, 0));
            assertEquals(0.37 * 960, load.massG(), 1e-9);
        }
        TankLoad overturned = condition.tankLoad(WaterPlane.of(Vector3D.MINUS_K, 0));
        assertEquals(45 - 0.37 * 20, overturned.momentGmm().getZ() / overturned.massG(), 1e-9);
        TankLoad onEnd = condition.tankLoad(WaterPlane.of(Vector3D.PLUS_I, 0));
        assertEquals(-100 + 0.37 * 100, onEnd.momentGmm().getX() / onEnd.massG(), 1e-9);
    }

    /** A free surface that takes more than all of GM: she lolls, and rests on one side or the other. */
    @Test
    void freeSurfaceMakesHerLoll() {
        Part wide = TestBoats.tank("wide", TestBoats.box(-290, -98, 5, 290, 98, 30), 0.5);
        Part high = TestBoats.weight("high", 2000, new Vector3D(0, 0, 175));
        Condition condition = Condition.of(withTanks(wide, high));
        assertTrue(TestBoats.gmTransverseMm(condition, Vector3D.PLUS_K) < 0);
        Part fixed = TestBoats.weight("fixed", 580 * 196 * 12.5 / 1000, new Vector3D(0, 0, 5 + 6.25));
        assertTrue(TestBoats.gmTransverseMm(Condition.of(withTanks(fixed, high)), Vector3D.PLUS_K) > 0);
        Equilibrium e = Flotation.of(condition).settled().orElseThrow();
        assertTrue(Math.abs(e.heelDeg()) > 1, "heel " + e.heelDeg());
        assertEquals(0, TestBoats.leverMm(condition, Math.toRadians(e.heelDeg())), 1e-8);
    }
}
