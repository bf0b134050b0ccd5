package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/** Cuts and comparisons that many tests share. */
final class Cuts {

    private Cuts() {}

    /** What lies below, about the body's own centroid. */
    static Immersion below(WaterPlane plane, Displacer body) {
        return Immersion.below(plane, body.centroidMm()).add(body);
    }

    static Immersion below(double heightMm, TriangleMesh mesh) {
        return below(WaterPlane.level(heightMm), MeshSolid.of(mesh));
    }

    static Vector3D middle(TriangleMesh mesh) {
        return new Vector3D(
                mesh.bounds().centreX(), mesh.bounds().centreY(), mesh.bounds().centreZ());
    }

    static void assertNear(Vector3D expected, Vector3D found, double tolerance, String what) {
        assertEquals(0, expected.distance(found), tolerance, () -> what + ": " + expected + " and " + found);
    }

    /**
     * All sums of two cuts by the same plane about the same reference.
     *
     * @param size length of the body, which makes the share comparable: volumes by size³, areas by size², and so on
     */
    static void assertSame(Immersion expected, Immersion found, double size, double share) {
        double area = size * size * share;
        assertEquals(expected.volumeMm3(), found.volumeMm3(), area * size, "volume");
        assertNear(expected.momentMm4(), found.momentMm4(), area * size * size, "moment");
        assertEquals(expected.waterplaneMm2(), found.waterplaneMm2(), area, "waterplane");
        assertEquals(expected.waterplaneAheadMm3(), found.waterplaneAheadMm3(), area * size, "first moment ahead");
        assertEquals(expected.waterplanePortMm3(), found.waterplanePortMm3(), area * size, "first moment to port");
        double second = area * size * size;
        assertEquals(expected.secondMomentAheadMm4(), found.secondMomentAheadMm4(), second, "second moment ahead");
        assertEquals(expected.secondMomentPortMm4(), found.secondMomentPortMm4(), second, "second moment to port");
        assertEquals(expected.secondMomentMixedMm4(), found.secondMomentMixedMm4(), second, "mixed moment");
    }
}
