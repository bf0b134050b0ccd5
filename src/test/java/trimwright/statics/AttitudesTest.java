package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.mesh.TriangleMesh;

/** All stable attitudes, and how truly each is at rest, on boats without symmetry. */
class AttitudesTest {

    /** 2562 directions, 4° apart. */
    private static final TriangleMesh DIRECTIONS = TestMeshes.ball(4);

    private static final List<List<Integer>> NEIGHBOURS = neighbours();

    private static List<List<Integer>> neighbours() {
        List<List<Integer>> all = new ArrayList<>();
        for (int v = 0; v < DIRECTIONS.vertexCount(); v++) {
            all.add(new ArrayList<>());
        }
        int[] corners = DIRECTIONS.corners();
        for (int k = 0; k < corners.length; k += 3) {
            for (int i = 0; i < 3; i++) {
                all.get(corners[k + i]).add(corners[k + (i + 1) % 3]);
            }
        }
        return all;
    }

    /** Every direction lower than its neighbours leads to an attitude that was found, and every one found is as low as all round it. */
    @Property(tries = 36, seed = "20240801")
    void noneIsMissed(@ForAll @IntRange(min = 0) int seed) {
        Condition condition = Condition.of(RandomBoats.of(seed));
        double size = condition.lengthMm();
        List<Equilibrium> found = Flotation.of(condition).attitudes();
        double[] energy = new double[DIRECTIONS.vertexCount()];
        Trial[] trials = new Trial[energy.length];
        for (int v = 0; v < energy.length; v++) {
            trials[v] = TestBoats.held(condition, TestMeshes.vertex(DIRECTIONS, v));
            energy[v] = trials[v].potentialHeightMm();
        }
        for (int v = 0; v < energy.length; v++) {
            double own = energy[v];
            if (NEIGHBOURS.get(v).stream().allMatch(n -> own <= energy[n])) {
                Equilibrium rest = Balance.settle(condition, trials[v].plane());
                assertTrue(
                        found.stream()
                                .anyMatch(e -> Vector3D.angle(
                                                e.plane().up(), rest.plane().up())
                                        < 1e-3),
                        "missed: heel " + rest.heelDeg() + ", trim " + rest.trimDeg());
            }
        }
        for (Equilibrium e : found) {
            for (int v = 0; v < energy.length; v++) {
                if (Vector3D.angle(e.plane().up(), TestMeshes.vertex(DIRECTIONS, v)) < Math.toRadians(3)) {
                    assertTrue(e.energyMm() <= energy[v] + 1e-9 * size || e.gmLeastMm() < 1e-2 * size);
                }
            }
        }
        for (int i = 1; i < found.size(); i++) {
            assertTrue(found.get(i - 1).energyMm() <= found.get(i).energyMm());
        }
    }

    /** Force within 1e-9 of the weight and moment within 1e-9 of weight × length, and that is what the sums say. */
    @Property(tries = 60, seed = "20240802")
    void atRest(@ForAll @IntRange(min = 0) int seed) {
        Condition condition = Condition.of(RandomBoats.of(seed));
        double weight = condition.massG();
        double size = condition.lengthMm();
        for (Equilibrium e : Flotation.of(condition).attitudes()) {
            assertEquals(0, e.residualForceG(), 1e-9 * weight);
            assertEquals(0, e.residualMomentGmm(), 1e-9 * weight * size);
            assertEquals(
                    weight,
                    condition.densityGPerMm3() * condition.below(e.plane()).volumeMm3(),
                    1e-9 * weight);
            Vector3D lever = e.centreOfBuoyancyMm().subtract(condition.centreOfGravityMm(e.plane()));
            assertEquals(0, lever.crossProduct(e.plane().up()).getNorm(), 2e-9 * size);
            assertEquals(e.bgMm(), lever.dotProduct(e.plane().up()), 1e-9 * size);
            assertTrue(e.gmLeastMm() > -1e-9 * size, "gm " + e.gmLeastMm());
            assertTrue(e.cuts() < 60, "cuts " + e.cuts());
        }
    }

    /** The mirror image floats in the mirrored attitudes. */
    @Property(tries = 20, seed = "20240803")
    void mirrored(@ForAll @IntRange(min = 0) int seed) {
        Condition condition = Condition.of(RandomBoats.of(seed));
        Condition image = Condition.of(mirrored(RandomBoats.of(seed)));
        Flotation one = Flotation.of(condition);
        Flotation other = Flotation.of(image);
        assertEquals(one.attitudes().size(), other.attitudes().size());
        for (Equilibrium e : one.attitudes()) {
            Vector3D up = new Vector3D(
                    e.plane().up().getX(),
                    -e.plane().up().getY(),
                    e.plane().up().getZ());
            Equilibrium twin = other.attitudes().stream()
                    .filter(o -> Vector3D.angle(o.plane().up(), up) < 1e-6)
                    .findAny()
                    .orElseThrow();
            assertEquals(e.energyMm(), twin.energyMm(), 1e-9 * condition.lengthMm());
            assertEquals(e.gmTransverseMm(), twin.gmTransverseMm(), 1e-6 * condition.lengthMm());
        }
        Equilibrium settled = one.settled().orElseThrow();
        Equilibrium settledTwin = other.settled().orElseThrow();
        assertEquals(settled.heelDeg(), -settledTwin.heelDeg(), 1e-4);
        assertEquals(settled.trimDeg(), settledTwin.trimDeg(), 1e-4);
    }

    private static Boat mirrored(Boat boat) {
        return TestBoats.boat(boat.parts().stream()
                .map(p -> new Part(
                        p.id(),
                        p.kind(),
                        p.shape().map(Shape::mirrored),
                        p.build(),
                        p.weighedMassG(),
                        p.densityGPerCm3(),
                        p.givenCentreMm().map(Shape::mirrored),
                        p.inside(),
                        p.mirror(),
                        p.fill()))
                .toArray(Part[]::new));
    }

    /** Parabolas and cubics with known minima: (t - a)², and t³/3 - b t with its minimum at √b. */
    @Test
    void theBottomOfACubicIsWhereItsSlopeEnds() {
        for (double a : new double[] {1e-6, 0.1, 0.5, 0.93, 1 - 1e-6}) {
            assertEquals(a, Trough.bottom((1 - a) * (1 - a) - a * a, -2 * a, 2 * (1 - a)), 1e-9);
            double b = a * a;
            assertEquals(a, Trough.bottom(1.0 / 3 - b, -b, 1 - b), 1e-9);
            // The same seen from the other end.
            assertEquals(1 - a, Trough.bottom(b - 1.0 / 3, b - 1, b), 1e-9);
        }
    }
}
