package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.TestMeshes;
import trimwright.mesh.TriangleMesh;

/**
 * Moving, turning, mirroring, reordering and dividing a mesh leaves what it displaces alone; what is below and what is above are the whole.
 * Rounding of 100 mm and 1e-11 of its size.
 */
class SameBodyTest {

    private static final double SHARE = 1e-11;

    private record Case(TriangleMesh mesh, WaterPlane plane, Random random) {

        static Case of(int seed) {
            Random random = new Random(seed);
            TriangleMesh mesh = TestMeshes.random(random, 2, 0.6);
            WaterPlane plane = WaterPlane.of(TestMeshes.direction(random), 30 * random.nextGaussian());
            return new Case(mesh, plane, random);
        }

        Immersion cut() {
            return Cuts.below(plane, MeshSolid.of(mesh));
        }

        double size() {
            return mesh.bounds().diagonal();
        }
    }

    /** Everything that does not depend on the axes; {@code map} takes points of the one to points of the other. */
    private static void assertSameBody(Case one, Immersion other, UnaryOperator<Vector3D> map) {
        Immersion cut = one.cut();
        double size = one.size();
        assertEquals(cut.volumeMm3(), other.volumeMm3(), SHARE * size * size * size, "volume");
        Vector3D reference = map.apply(cut.referenceMm());
        Vector3D expected = map.apply(cut.centroidMm()).subtract(reference).scalarMultiply(cut.volumeMm3());
        Vector3D found = other.centroidMm().subtract(reference).scalarMultiply(other.volumeMm3());
        Cuts.assertNear(expected, found, SHARE * Math.pow(size, 4), "moment");
        assertEquals(cut.waterplaneMm2(), other.waterplaneMm2(), SHARE * size * size, "waterplane");
        if (cut.waterplaneMm2() > 1e-3 * size * size) {
            Cuts.assertNear(
                    map.apply(cut.centreOfFlotationMm()), other.centreOfFlotationMm(), 1e3 * SHARE * size, "flotation");
        }
        double fourth = SHARE * Math.pow(size, 4);
        assertEquals(
                cut.inertiaAheadMm4() + cut.inertiaPortMm4(),
                other.inertiaAheadMm4() + other.inertiaPortMm4(),
                fourth,
                "polar inertia");
        assertEquals(principal(cut), principal(other), 1e3 * fourth, "principal inertia");
    }

    private static double principal(Immersion cut) {
        double half = 0.5 * (cut.inertiaAheadMm4() - cut.inertiaPortMm4());
        return Math.hypot(half, cut.inertiaMixedMm4());
    }

    @Property(tries = 100, seed = "20240711")
    void moved(@ForAll int seed) {
        Case c = Case.of(seed);
        Vector3D by = TestMeshes.direction(c.random).scalarMultiply(200);
        WaterPlane plane = c.plane.at(c.plane.heightMm() + c.plane.up().dotProduct(by));
        assertSameBody(c, Cuts.below(plane, MeshSolid.of(TestMeshes.moved(c.mesh, by))), p -> p.add(by));
    }

    @Property(tries = 100, seed = "20240712")
    void turned(@ForAll int seed) {
        Case c = Case.of(seed);
        Rotation rotation = TestMeshes.rotation(c.random);
        WaterPlane plane = WaterPlane.of(rotation.applyTo(c.plane.up()), c.plane.heightMm());
        Immersion other = Cuts.below(plane, MeshSolid.of(TestMeshes.turned(c.mesh, rotation)));
        assertSameBody(c, other, rotation::applyTo);
    }

    @Property(tries = 100, seed = "20240713")
    void mirrored(@ForAll int seed) {
        Case c = Case.of(seed);
        UnaryOperator<Vector3D> mirror = p -> new Vector3D(p.getX(), -p.getY(), p.getZ());
        WaterPlane plane = WaterPlane.of(mirror.apply(c.plane.up()), c.plane.heightMm());
        Immersion other = Cuts.below(plane, MeshSolid.of(c.mesh.mirroredY()));
        assertSameBody(c, other, mirror);
        Immersion cut = c.cut();
        double fourth = SHARE * Math.pow(c.size(), 4);
        assertEquals(cut.inertiaPortMm4(), other.inertiaPortMm4(), fourth);
        assertEquals(cut.inertiaMixedMm4(), -other.inertiaMixedMm4(), fourth);
    }

    @Property(tries = 100, seed = "20240714")
    void reordered(@ForAll int seed) {
        Case c = Case.of(seed);
        assertSameBody(c, Cuts.below(c.plane, MeshSolid.of(TestMeshes.shuffled(c.mesh, c.random))), p -> p);
    }

    @Property(tries = 100, seed = "20240715")
    void subdivided(@ForAll int seed) {
        Case c = Case.of(seed);
        assertSameBody(c, Cuts.below(c.plane, MeshSolid.of(TestMeshes.subdivided(c.mesh))), p -> p);
    }

    @Property(tries = 100, seed = "20240716")
    void turnedInsideOut(@ForAll int seed) {
        Case c = Case.of(seed);
        Immersion cut = c.cut();
        Immersion other = cut.emptied().add(MeshSolid.of(c.mesh.flipped()));
        double size = c.size();
        assertEquals(-cut.volumeMm3(), other.volumeMm3(), SHARE * size * size * size);
        assertEquals(-cut.waterplaneMm2(), other.waterplaneMm2(), SHARE * size * size);
    }

    @Property(tries = 100, seed = "20240717")
    void belowAndAboveAreTheWhole(@ForAll int seed) {
        Case c = Case.of(seed);
        MeshSolid body = MeshSolid.of(c.mesh);
        Immersion below = c.cut();
        WaterPlane overhead = WaterPlane.of(c.plane.up().negate(), -c.plane.heightMm());
        Immersion above = Immersion.below(overhead, below.referenceMm()).add(body);
        double size = c.size();
        assertEquals(body.volumeMm3(), below.volumeMm3() + above.volumeMm3(), SHARE * size * size * size);
        Vector3D whole = body.centroidMm().subtract(below.referenceMm()).scalarMultiply(body.volumeMm3());
        Cuts.assertNear(whole, below.momentMm4().add(above.momentMm4()), SHARE * Math.pow(size, 4), "moment");
        assertEquals(below.waterplaneMm2(), above.waterplaneMm2(), SHARE * size * size);
        double polar = below.secondMomentAheadMm4() + below.secondMomentPortMm4();
        assertEquals(polar, above.secondMomentAheadMm4() + above.secondMomentPortMm4(), SHARE * Math.pow(size, 4));
        double area = body.tree().areaMm2();
        double wetted = body.tree().areaBelowMm2(c.plane) + body.tree().areaBelowMm2(overhead);
        assertEquals(area, wetted, SHARE * size * size);
    }
}
