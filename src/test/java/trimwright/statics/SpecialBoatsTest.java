package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.statics.TestBoats.block;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.immersion.MeshSolid;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Boats at the edges: nearly sunk, sunk, thin-skinned, deck awash, far from the origin, top-heavy. */
class SpecialBoatsTest {

    /** Top-heavy but wide: she stays upright, though upside down would be lower. */
    @Test
    void settlesToTheNearRest() {
        Flotation f = Flotation.of(block(300, 200, 60, 300 * 200 * 30 / 1000.0, new Vector3D(0, 0, 50)));
        Equilibrium settled = f.settled().orElseThrow();
        assertEquals(1, settled.plane().up().getZ(), 1e-12);
        assertEquals(50 - 15, settled.energyMm(), 1e-9);
        Equilibrium lowest = f.attitudes().get(0);
        assertEquals(-1, lowest.plane().up().getZ(), 1e-12);
        assertEquals(10 - 15, lowest.energyMm(), 1e-9);
    }

    /** Next to no reserve: a box goes down to its deck, a ball to its crown, and both are still found at rest. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-2, 1e-4, 1e-6, 1e-9})
    void hardlyAnyReserve(double share) {
        double full = 400 * 100 * 60 / 1000.0;
        Flotation box = Flotation.of(block(400, 100, 60, full * (1 - share), new Vector3D(0, 0, 20)));
        Equilibrium e = box.settled().orElseThrow();
        assertEquals(60 * (1 - share), e.plane().heightMm(), 1e-9);
        assertEquals(share * full, box.reserveG(), 1e-9);
        assertAtRest(e, box.condition());

        BarShape shape = new BarShape(new Vector3D(-50, 0, 0), new Vector3D(50, 0, 0), 100, BarShape.Ends.ROUND);
        double ball = shape.solid().volumeMm3() / 1000;
        Vector3D low = new Vector3D(2, 3, -10);
        Flotation crown = Flotation.of(TestBoats.boat(TestBoats.body("ball", shape, ball * (1 - share), low)));
        e = crown.settled().orElseThrow();
        assertAtRest(e, crown.condition());
        assertEquals(0, Vector3D.angle(low.negate(), e.plane().up()), 1e-6);
        // The cap left dry: π h² R to first order, h³/3 less.
        double h = 50 - e.plane().heightMm();
        assertEquals(
                share * ball * 1000, Math.PI * h * h * (150 - h) / 3, 1e-5 * share * ball * 1000 + 1e-9 * ball * 1000);

        TriangleMesh mesh = TestMeshes.ellipsoid(150, 30, 40, 4);
        MeshSolid hull = MeshSolid.of(mesh);
        Vector3D g = new Vector3D(1, 0.5, -8);
        Flotation f = Flotation.of(TestBoats.boat(TestBoats.hull(mesh, hull.volumeMm3() / 1000 * (1 - share), g)));
        e = f.settled().orElseThrow();
        assertAtRest(e, f.condition());
        // The less stands out of the water, the nearer she is to hanging with B above G.
        Vector3D hanging = hull.centroidMm().subtract(g);
        assertEquals(0, Vector3D.angle(hanging, e.plane().up()), 1e-7 + 20 * Math.sqrt(share));
    }

    /**
     * A body with a small float above it and a gap between: the body alone carries all but a trace of her, so that the water must reach the
     * float, across a stretch in which nothing foretells that it does. The float takes what is missing: missing ÷ (ρ · its area) deep.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1e-5, 2e-4, 1e-3})
    void theWaterReachesAFloatAcrossAGap(double missing) {
        double body = 400 * 100 * 60 / 1000.0;
        Boat boat = TestBoats.boat(
                TestBoats.body(
                        "body", TestBoats.box(-200, -50, 0, 200, 50, 60), body * (1 + missing), new Vector3D(0, 0, 20)),
                TestBoats.body("float", TestBoats.box(-30, -20, 90, 30, 20, 110), 0, new Vector3D(0, 0, 100)));
        Condition condition = Condition.of(boat);
        Vector3D aslant = new Vector3D(0.05, 0.03, 1);
        for (double start : new double[] {40, 60, 75, 90, 105}) {
            Equilibrium e =
                    Flotation.rest(condition, WaterPlane.of(aslant, start)).orElseThrow();
            assertAtRest(e, condition);
            assertEquals(90 + missing * body * 1000 / (60 * 40), e.plane().heightMm(), 1e-6, "from " + start);
        }
    }

    private static void assertAtRest(Equilibrium e, Condition condition) {
        assertEquals(0, e.residualForceG(), 1e-9 * e.massG());
        assertEquals(0, e.residualMomentGmm(), 1e-9 * e.massG() * condition.lengthMm());
        assertTrue(e.cuts() < 100, "cuts " + e.cuts());
    }

    /** Heavier than all she can displace: she sinks, and hangs with B above G. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-6, 250})
    void sinks(double tooMuch) {
        double full = 400 * 100 * 60 / 1000.0;
        Flotation f = Flotation.of(block(400, 100, 60, full + tooMuch, new Vector3D(10, 4, 20)));
        assertEquals(Optional.empty(), f.settled());
        assertEquals(List.of(), f.attitudes());
        assertEquals(-tooMuch, f.reserveG(), 1e-9);
        assertEquals(-tooMuch, f.submerged().residualG(), 1e-9);
        Vector3D lever = new Vector3D(-10, -4, 10);
        assertEquals(lever.getNorm(), f.submerged().bgMm(), 1e-9);
        assertEquals(0, Vector3D.angle(lever, f.submerged().up()), 1e-12);
        assertEquals(Math.toDegrees(Math.atan2(-4, 10)), f.submerged().heelDeg(), 1e-9);
        assertEquals(
                Math.toDegrees(Math.atan2(-10, Math.hypot(4, 10))),
                f.submerged().trimDeg(),
                1e-9);
    }

    /** Submerged with her tanks full, whatever they hold now: masses and volumes add up (closed form). */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 1})
    void submergedBg(double fill) {
        Boat boat = TestBoats.boat(
                TestBoats.hull(Solids.box(-100, -50, 0, 100, 50, 60), 700, new Vector3D(0, 0, 25)),
                TestBoats.tank("mbt", TestBoats.box(-50, -40, 10, 50, 40, 50), fill),
                TestBoats.body("foam", TestBoats.box(-20, -10, 60, 20, 10, 80), 1, new Vector3D(0, 0, 70)));
        Submerged s = Flotation.of(boat).submerged();
        double mass = 701 + 320;
        double g = (700 * 25 + 70 + 320 * 30) / mass;
        double volume = 1200 + 16;
        double b = (1200 * 30 + 16 * 70) / volume;
        assertEquals(b - g, s.bgMm(), 1e-9);
        assertEquals(volume - mass, s.residualG(), 1e-9);
        assertEquals(0, Vector3D.angle(Vector3D.PLUS_K, s.up()), 1e-12);
    }

    /** A free-flooding shell carried by a box of foam: plate, walls and foam below the water carry the weight (closed form). */
    @Test
    void skinAndFoam() {
        Boat boat = TestBoats.boat(
                TestBoats.hull(
                        "shell",
                        Solids.box(-200, -50, 0, 200, 50, 80),
                        new HullBuild.Skin(1),
                        168,
                        new Vector3D(0, 0, 40)),
                TestBoats.body("foam", TestBoats.box(-150, -40, 40, 150, 40, 70), 21.6, new Vector3D(0, 0, 55)),
                TestBoats.weight("lead", 400, new Vector3D(0, 0, 5)));
        Equilibrium e = Flotation.of(boat).settled().orElseThrow();
        // 40 cm³ of bottom, 1 cm³ of wall for each mm, 24 cm³ of foam for each mm above 40.
        double height = 40 + (589.6 - 40 - 40) / 25;
        assertEquals(height, e.plane().heightMm(), 1e-8);
        assertEquals(25000, e.sums().waterplaneMm2(), 1e-5);
        assertEquals(0, e.heelDeg(), 1e-9);
        double foamInertia = 300 * Math.pow(80, 3) / 12;
        // Walls: two lines of 400 mm at 50 (49.5 is the middle of the layer), two of 100 mm across.
        double wallInertia = 2 * (400 * (49.5 * 49.5 + 1.0 / 12) + Math.pow(100, 3) / 12);
        double bm = (foamInertia + wallInertia) / (589.6 * 1000);
        double bg = e.bgMm();
        assertEquals(bm + bg, e.gmTransverseMm(), 1e-8);
    }

    /** The deck of the hull exactly in the water's surface, a tower above it: found, level, and with the waterplane just below. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, -33.3})
    void deckAwash(double keel) {
        TriangleMesh hull = Solids.box(-200, -50, keel, 200, 50, keel + 60);
        TriangleMesh tower = Solids.box(-30, -10, keel + 60, 30, 10, keel + 90);
        Boat boat = TestBoats.boat(
                TestBoats.hull(hull, 2400, new Vector3D(0, 0, keel + 20)),
                TestBoats.hull("tower", tower, new HullBuild.Sealed(Optional.empty()), 0, Vector3D.ZERO));
        Equilibrium e = Flotation.of(boat).settled().orElseThrow();
        assertEquals(keel + 60, e.plane().heightMm(), 1e-8);
        assertEquals(1, e.plane().up().getZ(), 1e-12);
        assertAtRest(e, Condition.of(boat));
    }

    /** A metre of tower, deck a little below: the waterplane is the tower's. */
    @Test
    void onlyTheTowerShows() {
        Boat boat = TestBoats.boat(
                TestBoats.hull(Solids.box(-200, -50, 0, 200, 50, 60), 2400 + 12, new Vector3D(0, 0, 20)),
                TestBoats.hull(
                        "tower",
                        Solids.box(-30, -10, 60, 30, 10, 90),
                        new HullBuild.Sealed(Optional.empty()),
                        0,
                        Vector3D.ZERO));
        Equilibrium e = Flotation.of(boat).settled().orElseThrow();
        assertEquals(70, e.plane().heightMm(), 1e-8);
        assertEquals(1200, e.sums().waterplaneMm2(), 1e-8);
        double b = (2400 * 30 + 12 * 65) / 2412.0;
        double bm = 60 * Math.pow(20, 3) / 12 / 2412000;
        assertEquals(b - 20 + bm, e.gmTransverseMm(), 1e-8);
    }

    /** The same boat a hundred metres away floats alike; 1e5 mm leave a double 1.5e-11 mm. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void farFromTheOrigin(int seed) {
        TriangleMesh mesh = TestMeshes.random(new Random(seed), 3, 0.4);
        MeshSolid hull = MeshSolid.of(mesh);
        Vector3D g = hull.centroidMm().add(new Vector3D(2, 1, -6));
        double mass = hull.volumeMm3() / 2000;
        Vector3D away = new Vector3D(1e5, -1e5, 1e5);
        Flotation near = Flotation.of(TestBoats.boat(TestBoats.hull(mesh, mass, g)));
        Flotation far = Flotation.of(TestBoats.boat(TestBoats.hull(TestMeshes.moved(mesh, away), mass, g.add(away))));
        Equilibrium a = near.settled().orElseThrow();
        Equilibrium b = far.settled().orElseThrow();
        assertEquals(0, Vector3D.angle(a.plane().up(), b.plane().up()), 1e-8);
        assertEquals(
                a.plane().heightMm() + b.plane().up().dotProduct(away),
                b.plane().heightMm(),
                1e-6);
        assertEquals(a.gmTransverseMm(), b.gmTransverseMm(), 1e-6);
        assertEquals(near.attitudes().size(), far.attitudes().size());
        assertTrue(b.cuts() < 40, "cuts " + b.cuts());
    }

    /** The same bits from every run. */
    @Test
    void sameBitsAlways() {
        Flotation one = Flotation.of(RandomBoats.of(42));
        Flotation other = Flotation.of(RandomBoats.of(42));
        assertEquals(one.attitudes().size(), other.attitudes().size());
        for (int i = 0; i < one.attitudes().size(); i++) {
            Equilibrium a = one.attitudes().get(i);
            Equilibrium b = other.attitudes().get(i);
            assertEquals(a.plane(), b.plane());
            assertEquals(a.gmTransverseMm(), b.gmTransverseMm(), 0);
            assertEquals(a.energyMm(), b.energyMm(), 0);
            assertEquals(a.cuts(), b.cuts());
        }
    }
}
