package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
import trimwright.mesh.TriangleMesh;

/** Rough sums against the exact ones: near enough to look round by, exact where a mesh has nothing smaller than the grain. */
class RoughSumsTest {

    private static final double GRAIN = 12;

    /** A body of 600 × 160 × 120 mm and 80 000 triangles, as a solid and as a skin, cut somewhere in its middle half. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void nearTheExactOnes(int seed) {
        Random random = new Random(seed);
        MeshTree tree = MeshTree.of(TestMeshes.ellipsoid(300, 80, 60, 6));
        Vector3D up = TestMeshes.direction(random);
        WaterPlane plane = WaterPlane.of(up, (random.nextDouble() - 0.5) * tree.topMm(up));
        assertNear(new MeshSolid(tree), plane);
        assertNear(new MeshSkin(tree, 2), plane);
    }

    private static void assertNear(Displacer body, WaterPlane plane) {
        Immersion exact = Immersion.below(plane, Vector3D.ZERO).add(body);
        Immersion rough = Immersion.roughly(plane, Vector3D.ZERO, GRAIN).add(body);
        // A grain is a fifth of the depth, and there are some fifty patches along the waterline, each wrong by up to
        // itself, now one
        // way, now the other. No source; a wrong sign or a lost patch shows as a large multiple.
        assertEquals(exact.volumeMm3(), rough.volumeMm3(), 2e-3 * body.volumeMm3());
        assertEquals(exact.waterplaneMm2(), rough.waterplaneMm2(), 0.08 * exact.waterplaneMm2());
        assertTrue(exact.centroidMm().distance(rough.centroidMm()) < 0.5);
        assertEquals(exact.inertiaPortMm4(), rough.inertiaPortMm4(), 0.15 * exact.inertiaPortMm4());
        assertEquals(exact.inertiaAheadMm4(), rough.inertiaAheadMm4(), 0.15 * exact.inertiaAheadMm4());
    }

    /** Triangles larger than the grain are cut as ever, bit for bit. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void exactWhereNothingIsSmall(int seed) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.ellipsoid(300, 80, 60, 1);
        WaterPlane plane = WaterPlane.of(TestMeshes.direction(random), 25 * random.nextGaussian());
        MeshSolid solid = MeshSolid.of(mesh);
        assertEquals(
                Immersion.below(plane, Vector3D.ZERO).add(solid).volumeMm3(),
                Immersion.roughly(plane, Vector3D.ZERO, GRAIN).add(solid).volumeMm3(),
                0);
    }

    /** A body that is all walls is cut exactly, bit for bit: its waterplane is the small difference of its two sides. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void wallsAreNotTakenRoughly(int seed) {
        Random random = new Random(seed);
        TriangleMesh outer = TestMeshes.ellipsoid(300, 80, 60, 6);
        TriangleMesh inner = TestMeshes.ellipsoid(298.5, 78.5, 58.5, 6).flipped();
        MeshSolid wall = MeshSolid.of(TestMeshes.together(outer, inner));
        WaterPlane plane = WaterPlane.of(TestMeshes.direction(random), 10 * random.nextGaussian());
        assertEquals(
                Immersion.below(plane, Vector3D.ZERO).add(wall).waterplaneMm2(),
                Immersion.roughly(plane, Vector3D.ZERO, GRAIN).add(wall).waterplaneMm2(),
                0);
    }

    /** They are rough at all: otherwise the checks above would compare the exact sums with themselves. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void areRough(boolean skin) {
        MeshTree tree = MeshTree.of(TestMeshes.ellipsoid(300, 80, 60, 6));
        Displacer body = skin ? new MeshSkin(tree, 2) : new MeshSolid(tree);
        WaterPlane plane = WaterPlane.of(new Vector3D(0.1, 0.2, 1), 5);
        assertNotEquals(
                Immersion.below(plane, Vector3D.ZERO).add(body).volumeMm3(),
                Immersion.roughly(plane, Vector3D.ZERO, GRAIN).add(body).volumeMm3());
    }
}
