package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestMeshes;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/**
 * How near an inner surface comes to an axis: the point that is told lies on the surface, along the stretch, at that distance; and of a close net of points on the
 * surface none is nearer.
 */
class AxisClearanceTest {

    private static final double FROM = 270;
    private static final double TO = 340;

    /** Points of the net along an edge. */
    private static final int NET = 12;

    private record Triangle(Vector3D a, Vector3D b, Vector3D c) {

        Vector3D at(double s, double t) {
            return new Vector3D(1 - s - t, a, s, b, t, c);
        }

        /** How far a point lies off the triangle, in its plane and beside it: 0 on it. */
        double off(Vector3D p) {
            Vector3D ab = b.subtract(a);
            Vector3D ac = c.subtract(a);
            Vector3D normal = ab.crossProduct(ac);
            double square = normal.getNormSq();
            double s = p.subtract(a).crossProduct(ac).dotProduct(normal) / square;
            double t = ab.crossProduct(p.subtract(a)).dotProduct(normal) / square;
            double height = p.subtract(a).dotProduct(normal) / Math.sqrt(square);
            double beside = Math.max(0, Math.max(-Math.min(s, t), s + t - 1));
            return Math.abs(height) + beside * Math.sqrt(ab.getNorm() * ac.getNorm());
        }
    }

    private static List<Triangle> inner(TriangleMesh mesh, double thickness) {
        List<Triangle> triangles = new ArrayList<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            Vector3D a = TestMeshes.vertex(mesh, mesh.corners()[3 * t]);
            Vector3D b = TestMeshes.vertex(mesh, mesh.corners()[3 * t + 1]);
            Vector3D c = TestMeshes.vertex(mesh, mesh.corners()[3 * t + 2]);
            Vector3D in = b.subtract(a).crossProduct(c.subtract(a)).normalize().scalarMultiply(-thickness);
            triangles.add(new Triangle(a.add(in), b.add(in), c.add(in)));
        }
        return triangles;
    }

    /** From the stretch of the axis between two centres. */
    private static double distance(Vector3D p, double y, double z, double coreFrom, double coreTo) {
        double along = Math.max(0, Math.max(coreFrom - p.getX(), p.getX() - coreTo));
        return new Vector3D(along, p.getY() - y, p.getZ() - z).getNorm();
    }

    private static double nearestOfNet(List<Triangle> inner, double y, double z, double coreFrom, double coreTo) {
        double best = Double.POSITIVE_INFINITY;
        for (Triangle triangle : inner) {
            for (int i = 0; i <= NET; i++) {
                for (int k = 0; k <= NET - i; k++) {
                    Vector3D p = triangle.at((double) i / NET, (double) k / NET);
                    if (p.getX() >= FROM && p.getX() <= TO) {
                        best = Math.min(best, distance(p, y, z, coreFrom, coreTo));
                    }
                }
            }
        }
        return best;
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "3, 0", "0, 25", "3, 25"})
    void thePointIsOnTheSurfaceAndNoneIsNearer(double thickness, double radius) {
        Random random = new Random(31);
        for (int i = 0; i < 8; i++) {
            TriangleMesh mesh = TestMeshes.moved(TestMeshes.random(random, 2, 0.3), new Vector3D(300, -200, 50));
            List<Triangle> inner = inner(mesh, thickness);
            MeshTree tree = MeshTree.of(mesh);
            AxisClearance clearance = radius == 0
                    ? AxisClearance.flat(tree, thickness, FROM, TO)
                    : AxisClearance.round(tree, thickness, FROM, TO, radius);
            for (int k = 0; k < 8; k++) {
                // Inside, near the wall, through it and outside.
                double y = -200 + 160 * (random.nextDouble() - 0.5);
                double z = 50 + 160 * (random.nextDouble() - 0.5);
                AxisClearance.Nearest nearest = clearance.nearest(y, z);
                String where = "mesh " + i + ", axis " + y + ", " + z;
                Vector3D p = nearest.pointMm();
                assertTrue(p.getX() >= FROM - 1e-9 && p.getX() <= TO + 1e-9, where + p);
                assertEquals(distance(p, y, z, FROM + radius, TO - radius), nearest.distanceMm(), 1e-9, where);
                double off = inner.stream().mapToDouble(t -> t.off(p)).min().orElseThrow();
                assertEquals(0, off, 1e-9, where);
                double net = nearestOfNet(inner, y, z, FROM + radius, TO - radius);
                assertTrue(nearest.distanceMm() <= net + 1e-9, where + ": " + nearest + " against " + net);
                keepsClearOf(clearance, y, z, nearest);
            }
        }
    }

    private static void keepsClearOf(AxisClearance clearance, double y, double z, AxisClearance.Nearest nearest) {
        assertTrue(clearance.keepsClear(y, z, 0.999 * nearest.distanceMm()));
        assertFalse(clearance.keepsClear(y, z, 1.001 * nearest.distanceMm() + 1e-9));
        AxisClearance.Nearest again = clearance.nearest(y, z, nearest.pointMm());
        assertEquals(nearest.distanceMm(), again.distanceMm(), 1e-9);
    }

    /** In a box the nearest wall is the nearest wall, and a stretch beyond the box meets none. */
    @Test
    void inABox() {
        MeshTree tree = MeshTree.of(Solids.box(0, -30, 0, 200, 30, 50));
        AxisClearance inside = AxisClearance.flat(tree, 1.5, 20, 180);
        assertEquals(18.5, inside.nearest(0, 20).distanceMm(), 1e-12);
        assertEquals(0, inside.nearest(5, 20).pointMm().getZ() - 1.5, 1e-12);
        assertEquals(8.5, inside.nearest(-20, 25).distanceMm(), 1e-12);
        assertTrue(inside.keepsClear(0, 20, 18.5));
        // The wall at the stern stands 1.5 mm thick in the way of an axis that begins there.
        assertEquals(0, AxisClearance.flat(tree, 1.5, 1, 180).nearest(0, 20).distanceMm(), 1e-12);
        // Round ends of 10 mm: their centres stand 12 mm before the inside of the stern.
        AxisClearance round = AxisClearance.round(tree, 1.5, 1.5, 180, 12);
        assertEquals(12, round.nearest(0, 25).distanceMm(), 1e-12);
        assertEquals(1.5, round.nearest(0, 25).pointMm().getX(), 1e-12);
        assertEquals(
                Double.POSITIVE_INFINITY,
                AxisClearance.flat(tree, 1.5, 250, 300).nearest(0, 20).distanceMm());
    }
}
