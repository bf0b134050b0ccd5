package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.mesh.TriangleMesh;

/**
 * The solid angle of a rectangle, from in front of a corner: tan Ω = a b / (d √(a² + b² + d²)), a closed form of solid geometry (from memory; derived by
 * integrating d / r³ over the rectangle). Any point sees four such rectangles put together.
 */
class WindingNumberTest {

    /** A plate of 100 × 50 mm, its middle aside of the origin. */
    private static final double X0 = -40, X1 = 60, Y0 = -30, Y1 = 20;

    private static final Rotation TURN =
            new Rotation(new Vector3D(0.3, -0.5, 0.8), 1.1, RotationConvention.VECTOR_OPERATOR);

    private static final Vector3D BY = new Vector3D(700, -300, 150);

    private static double corner(double a, double b, double d) {
        return Math.atan2(a * b, d * Math.sqrt(a * a + b * b + d * d));
    }

    /** As seen from (x, y, -d) for d > 0: from behind the plate, which faces +z, as from inside a body. */
    private static double expected(double x, double y, double d) {
        double sum = corner(X1 - x, Y1 - y, d)
                - corner(X0 - x, Y1 - y, d)
                - corner(X1 - x, Y0 - y, d)
                + corner(X0 - x, Y0 - y, d);
        return sum / (4 * Math.PI);
    }

    private static Vector3D placed(Vector3D p) {
        return TURN.applyTo(p).add(BY);
    }

    private static MeshTree plate() {
        double[] xyz = {X0, Y0, 0, X1, Y0, 0, X1, Y1, 0, X0, Y1, 0};
        TriangleMesh mesh = TriangleMesh.owning(xyz, new int[] {0, 1, 2, 0, 2, 3});
        for (int i = 0; i < 6; i++) {
            mesh = TestMeshes.subdivided(mesh);
        }
        return MeshTree.of(TestMeshes.mapped(mesh, WindingNumberTest::placed));
    }

    /** Near the plate triangles are summed, farther away whole parts of it: the error is that of a part seen as one facet. */
    @Test
    void aPlateFromAnywhere() {
        MeshTree plate = plate();
        Random random = new Random(5);
        for (int i = 0; i < 400; i++) {
            double x = 300 * (random.nextDouble() - 0.5);
            double y = 300 * (random.nextDouble() - 0.5);
            double d = Math.pow(10, 3.5 * random.nextDouble() - 0.5);
            double expected = expected(x, y, d);
            double tolerance = 0.02 * expected + 1e-3 * Math.min(1, 1e3 / (d * d));
            String where = x + ", " + y + ", " + d;
            assertEquals(expected, plate.windingNumber(placed(new Vector3D(x, y, -d))), tolerance, where);
            assertEquals(-expected, plate.windingNumber(placed(new Vector3D(x, y, d))), tolerance, where);
        }
    }

    /** Close to its middle a plate fills half of the sky. */
    @Test
    void aPlateFromCloseBy() {
        assertEquals(0.5, plate().windingNumber(placed(new Vector3D(3, 1, -1e-4))), 1e-4);
    }

    /** Far inside and far outside of a rough body nothing is left of what facets leave out. */
    @Test
    void insideAndOutsideOfRoughBodies() {
        Random random = new Random(6);
        for (int i = 0; i < 20; i++) {
            TriangleMesh mesh = TestMeshes.moved(TestMeshes.random(random, 3, 0.3), new Vector3D(400, 100, -200));
            MeshTree tree = MeshTree.of(mesh);
            Vector3D middle = new Vector3D(400, 100, -200);
            double size = mesh.bounds().diagonal();
            assertEquals(1, tree.windingNumber(middle), 0.02);
            for (int k = 0; k < 20; k++) {
                Vector3D far = middle.add(size * (1 + 5 * random.nextDouble()), TestMeshes.direction(random));
                double found = tree.windingNumber(far);
                assertTrue(Math.abs(found) < 5e-3, far + ": " + found);
            }
        }
    }
}
