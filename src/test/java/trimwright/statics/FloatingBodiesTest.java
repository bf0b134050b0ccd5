package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.statics.TestBoats.block;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.HullForms;
import trimwright.TestMeshes;
import trimwright.boat.BarShape;
import trimwright.immersion.MeshSolid;
import trimwright.mesh.TriangleMesh;

/** Attitudes and metacentric heights of floating bodies that have a closed form. */
class FloatingBodiesTest {

    /** Box barge: KB = T/2, BM = B²/12T, BM_L = L²/12T (closed form). */
    @Test
    void boxBarge() {
        Flotation f = Flotation.of(block(400, 100, 80, 400 * 100 * 30 / 1000.0, new Vector3D(0, 0, 20)));
        Equilibrium e = f.settled().orElseThrow();
        assertEquals(30, e.plane().heightMm(), 1e-9);
        assertEquals(15, e.centreOfBuoyancyMm().getZ(), 1e-9);
        assertEquals(15 + 100.0 * 100 / 12 / 30 - 20, e.gmTransverseMm(), 1e-9);
        assertEquals(15 + 400.0 * 400 / 12 / 30 - 20, e.gmLongitudinalMm(), 1e-8);
        assertEquals(e.gmTransverseMm(), e.gmLeastMm(), 1e-9);
        assertEquals(20 - 15, e.energyMm(), 1e-9);
        assertTrue(e.cuts() <= 8, "cuts " + e.cuts());
        assertEquals(400 * 100 / 1000.0, f.gramsPerMmImmersion(), 1e-9);
        assertEquals(1200 * e.gmTransverseMm() * Math.PI / 180, f.gmmPerDegreeList(), 1e-9);
        assertEquals(1200 * e.gmLongitudinalMm() * Math.PI / 180, f.gmmPerDegreeTrim(), 1e-8);
        assertEquals(400 * 100 * 50 / 1000.0, f.reserveG(), 1e-9);
    }

    /** The metacentre of a box barge of beam B lies lowest, B/√6 above the keel, at the draught B/√6 (closed form). */
    @Test
    void lowestMetacentreOfABox() {
        double best = 100 / Math.sqrt(6);
        assertEquals(best, metacentreOfABox(best), 1e-9);
        assertTrue(metacentreOfABox(best - 1) > best);
        assertTrue(metacentreOfABox(best + 1) > best);
    }

    private static double metacentreOfABox(double draught) {
        double kg = 10;
        return kg
                + Flotation.of(block(400, 100, 80, 40 * draught, new Vector3D(0, 0, kg)))
                        .settled()
                        .orElseThrow()
                        .gmTransverseMm();
    }

    /**
     * Angle of loll of a wall-sided box: tan φ = √(−2 GM / BM); B 1, T 0.6, KG 0.48 → 37.575° (closed form). There the lever's slope is
     * −2 GM / cos φ.
     */
    @Test
    void loll() {
        Condition condition = Condition.of(block(800, 100, 120, 800 * 100 * 60 / 1000.0, new Vector3D(0, 0, 48)));
        double bm = 100.0 * 100 / 12 / 60;
        double gm = 30 + bm - 48;
        assertEquals(gm, TestBoats.gmTransverseMm(condition, Vector3D.PLUS_K), 1e-9);
        Flotation f = Flotation.of(condition);
        Equilibrium e = f.settled().orElseThrow();
        assertEquals(37.575, Math.abs(e.heelDeg()), 5e-4);
        double phi = Math.atan(Math.sqrt(-2 * gm / bm));
        assertEquals(Math.toDegrees(phi), Math.abs(e.heelDeg()), 1e-7);
        assertEquals(-2 * gm / Math.cos(phi), e.gmTransverseMm(), 1e-8);
        assertEquals(0, e.trimDeg(), 1e-7);
        long lolls = f.attitudes().stream()
                .filter(a -> Math.abs(Math.abs(a.heelDeg()) - 37.575) < 1e-3)
                .count();
        assertEquals(2, lolls);
    }

    /** Wall-sided lever GZ = sin φ (GM + ½ BM tan² φ), exact until an edge enters or leaves (closed form). */
    @ParameterizedTest
    @ValueSource(doubles = {-25, -5, 1, 10, 28})
    void wallSidedLever(double heelDeg) {
        Condition condition = Condition.of(block(400, 100, 60, 400 * 100 * 30 / 1000.0, new Vector3D(0, 0, 20)));
        double phi = Math.toRadians(heelDeg);
        double bm = 100.0 * 100 / 12 / 30;
        double lever = Math.sin(phi) * (15 + bm - 20 + 0.5 * bm * Math.pow(Math.tan(phi), 2));
        assertEquals(lever, TestBoats.leverMm(condition, phi), 1e-9);
    }

    /** Long square bar of specific gravity s (Reid, Am. J. Phys. 31, 565, 1963): angles as printed. */
    @ParameterizedTest
    @CsvSource({"0.15,0", "0.25,26.5651", "0.26,29.6305", "0.4,45", "0.74,29.6305", "0.75,26.5651", "0.85,0"})
    void squareBar(double s, double angleDeg) {
        Flotation f = squareBar(s);
        Equilibrium e = f.settled().orElseThrow();
        assertEquals(angleDeg, Math.abs(e.heelDeg()), 1e-4);
        int expected = angleDeg == 0 || angleDeg == 45 ? 4 : 8;
        assertEquals(expected, f.attitudes().size());
    }

    private static Flotation squareBar(double s) {
        return Flotation.of(block(2000, 100, 100, s * 2000 * 100 * 100 / 1000.0, new Vector3D(0, 0, 50)));
    }

    /** The same at many gravities, by Reid's formulae, every attitude of each; s and 1 − s float alike. */
    @Test
    void squareBarAtEveryGravity() {
        for (int i = 1; i < 50; i++) {
            double s = i / 50.0;
            double angle = Math.toDegrees(reid(Math.min(s, 1 - s)));
            Flotation f = squareBar(s);
            boolean odd = angle > 0 && angle < 45 - 1e-9;
            assertEquals(odd ? 8 : 4, f.attitudes().size(), "attitudes at " + s);
            for (Equilibrium e : f.attitudes()) {
                double turned = (e.heelDeg() % 90 + 90) % 90;
                double off = Math.min(Math.abs(turned - angle), Math.abs(90 - turned - angle));
                assertEquals(
                        0, Math.min(off, Math.abs(turned - 90 - angle)), 1e-6, "gravity " + s + ": " + e.heelDeg());
                assertEquals(0, e.trimDeg(), 1e-6);
                assertTrue(e.gmLeastMm() > 0);
            }
        }
    }

    private static double reid(double s) {
        if (s < (3 - Math.sqrt(3)) / 6) {
            return 0;
        }
        if (s <= 0.25) {
            return Math.atan(Math.sqrt(12 * s * (1 - s) - 2));
        }
        if (s <= 9.0 / 32) {
            // tan θ + cot θ = 2 / sin 2θ
            return 0.5 * Math.asin(2 / (9 / (8 * s) - 2));
        }
        return Math.PI / 4;
    }

    /** A homogeneous body of gravity 1 − s floats in the attitudes of s turned over (Archimedes' principle, closed form). */
    @ParameterizedTest
    @CsvSource({"1,0.3", "2,0.12", "3,0.45", "4,0.5"})
    void lightAndHeavyTurnOver(int seed, double s) {
        TriangleMesh mesh = TestMeshes.random(new Random(seed), 2, 0.4);
        MeshSolid solid = MeshSolid.of(mesh);
        double full = solid.volumeMm3() / 1000;
        Flotation light = Flotation.of(TestBoats.boat(TestBoats.hull(mesh, s * full, solid.centroidMm())));
        Flotation heavy = Flotation.of(TestBoats.boat(TestBoats.hull(mesh, (1 - s) * full, solid.centroidMm())));
        assertEquals(light.attitudes().size(), heavy.attitudes().size());
        for (Equilibrium e : light.attitudes()) {
            Equilibrium over = heavy.attitudes().stream()
                    .filter(h -> Vector3D.angle(h.plane().up(), e.plane().up().negate()) < 1e-6)
                    .findAny()
                    .orElseThrow();
            assertEquals(-e.plane().heightMm(), over.plane().heightMm(), 1e-6);
            // Moments to turn her are the same, so the metacentric heights go inversely with the weights.
            assertEquals(s * e.gmLeastMm(), (1 - s) * over.gmLeastMm(), 1e-6);
            assertEquals(s * e.energyMm(), (1 - s) * over.energyMm(), 1e-9 * 200);
        }
    }

    /** Ball with its weight low: GM is the distance of G below the centre at any draught, and there is one attitude. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 0.97})
    void ball(double s) {
        double r = 40;
        double volume = 4.0 / 3 * Math.PI * r * r * r;
        BarShape shape = new BarShape(new Vector3D(-r, 0, 60), new Vector3D(r, 0, 60), 2 * r, BarShape.Ends.ROUND);
        Vector3D low = new Vector3D(3, -4, 48);
        Flotation f = Flotation.of(TestBoats.boat(TestBoats.body("ball", shape, s * volume / 1000, low)));
        Equilibrium e = f.settled().orElseThrow();
        Vector3D hanging = new Vector3D(0, 0, 60).subtract(low);
        assertEquals(0, Vector3D.angle(hanging, e.plane().up()), 1e-9);
        assertEquals(13, e.gmTransverseMm(), 1e-8);
        assertEquals(13, e.gmLongitudinalMm(), 1e-8);
        assertEquals(1, f.attitudes().size());
    }

    /** Cone, apex down, half angle 30°, homogeneous: GM = ¾ H (s^⅓ sec² α − 1); s 0.5 → +0.043701 H (closed form). */
    @ParameterizedTest
    @CsvSource({"0.5,0.043701", "0.3,", "0.4,", "0.42,", "0.43,", "0.8,"})
    void cone(double s, Double printed) {
        double height = 100;
        double tan = Math.tan(Math.toRadians(30));
        int sides = 256;
        TriangleMesh mesh = TestMeshes.stoodUp(
                TestMeshes.revolved(new double[] {0, height}, new double[] {0, height * tan}, sides));
        MeshSolid solid = MeshSolid.of(mesh);
        double gm = 0.75 * height * (Math.cbrt(s) / Math.pow(Math.cos(Math.toRadians(30)), 2) - 1);
        Condition condition =
                Condition.of(TestBoats.boat(TestBoats.hull(mesh, s * solid.volumeMm3() / 1000, solid.centroidMm())));
        // Corners round miss (2π/N)²/6 of BM, which is less than a quarter of the height.
        double tolerance = 0.25 * height * Math.pow(2 * Math.PI / sides, 2) / 6;
        assertEquals(gm, TestBoats.gmTransverseMm(condition, Vector3D.PLUS_K), tolerance);
        if (printed != null) {
            assertEquals(printed * height, gm, 5e-7 * height);
        }
        assertStaysUprightIff(gm > 0, condition);
    }

    /** Wedge, apex down, half angle 30°: GM = ⅔ H (s^½ sec² α − 1); s 0.5 → −0.038127 H, 0.6 → +0.021864 H (closed form). */
    @ParameterizedTest
    @CsvSource({"0.5,-0.038127", "0.6,0.021864", "0.56,", "0.57,"})
    void wedge(double s, Double printed) {
        double height = 100;
        double tan = Math.tan(Math.toRadians(30));
        TriangleMesh mesh = TestMeshes.prism(-500, 500, 0, 0, height * tan, height, -height * tan, height);
        double mass = s * 1000 * height * height * tan / 1000;
        double gm = 2.0 / 3 * height * (Math.sqrt(s) / Math.pow(Math.cos(Math.toRadians(30)), 2) - 1);
        Condition condition =
                Condition.of(TestBoats.boat(TestBoats.hull(mesh, mass, new Vector3D(0, 0, 2.0 / 3 * height))));
        assertEquals(gm, TestBoats.gmTransverseMm(condition, Vector3D.PLUS_K), 1e-8);
        if (printed != null) {
            assertEquals(printed * height, gm, 5e-7 * height);
        }
        assertStaysUprightIff(gm > 0, condition);
    }

    /**
     * Right segment of a paraboloid of revolution, apex down, y² = 2 p z, so that Archimedes' parameter is 2 p: stable at any gravity when
     * its height is at most ¾ of the parameter, else when s ≥ ((H − ¾ parameter)/H)² (On Floating Bodies II, in Heath).
     */
    @ParameterizedTest
    @CsvSource({"20,0.05", "30,0.02", "30,0.5", "60,0.23", "60,0.27", "60,0.9", "100,0.28", "100,0.33"})
    void paraboloid(double height, double s) {
        double p = 20;
        double parameter = 2 * p;
        int steps = 100;
        double[] z = new double[steps + 1];
        double[] r = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            r[i] = Math.sqrt(2 * p * height) * i / steps;
            z[i] = r[i] * r[i] / (2 * p);
        }
        TriangleMesh mesh = TestMeshes.stoodUp(TestMeshes.revolved(z, r, 128));
        MeshSolid solid = MeshSolid.of(mesh);
        Condition condition =
                Condition.of(TestBoats.boat(TestBoats.hull(mesh, s * solid.volumeMm3() / 1000, solid.centroidMm())));
        double gm = p + 2.0 / 3 * height * (Math.sqrt(s) - 1);
        double tolerance = p * Math.pow(2 * Math.PI / 128, 2) + height * 2.0 / (steps * steps * s);
        assertEquals(gm, TestBoats.gmTransverseMm(condition, Vector3D.PLUS_K), tolerance);
        boolean stable = height <= 0.75 * parameter || s >= Math.pow((height - 0.75 * parameter) / height, 2);
        assertEquals(stable, gm >= 0);
        assertStaysUprightIff(stable, condition);
    }

    private static void assertStaysUprightIff(boolean stable, Condition condition) {
        Equilibrium e = Flotation.of(condition).settled().orElseThrow();
        assertEquals(stable, Vector3D.angle(e.plane().up(), Vector3D.PLUS_K) < 1e-3);
        // A leaning body of revolution is neutral about its own axis; corners make ripples, and rounding decides among
        // them.
        assertTrue(e.gmLeastMm() > -1e-5, "gm " + e.gmLeastMm());
    }

    /** DARPA SUBOFF with half her displacement floats with the water on her axis; BM as computed from the formula. */
    @Test
    void suboffOnHerAxis() {
        int sides = 256;
        TriangleMesh mesh = HullForms.suboff(100, sides);
        MeshSolid solid = MeshSolid.of(mesh);
        double share = Math.pow(2 * Math.PI / sides, 2) / 6 + 1e-4;
        // Every half of a body of revolution has its centroid at the length where the whole has it.
        double lcb = HullForms.SUBOFF_LENGTH_MM - 2008.61;
        Equilibrium e = Flotation.of(
                        TestBoats.boat(TestBoats.hull(mesh, solid.volumeMm3() / 2000, new Vector3D(lcb, 0, -20))))
                .settled()
                .orElseThrow();
        assertEquals(0, e.heelDeg(), 1e-9);
        assertEquals(0, e.trimDeg(), Math.toDegrees(share * 4356 / 6484.6));
        assertEquals(0, e.plane().heightMm() - lcb * e.plane().up().getX(), 4356 * share);
        assertEquals(20, e.gmTransverseMm(), 254 * 2 * share);
        assertEquals(6484.6 - 103.11 + 20, e.gmLongitudinalMm(), 6484.6 * 4 * share);
    }
}
