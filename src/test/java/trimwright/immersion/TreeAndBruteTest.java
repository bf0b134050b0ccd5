package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.HullForms;
import trimwright.TestMeshes;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** The tree must give the sums of all triangles one by one: to 1e-11 of the body's size in every sum. */
class TreeAndBruteTest {

    private static final double SHARE = 1e-11;

    private static void compare(TriangleMesh mesh, MeshSolid tree, WaterPlane plane, double share) {
        Immersion fast = Immersion.below(plane, Cuts.middle(mesh)).add(tree);
        Immersion brute = fast.emptied();
        BruteCut.addBelow(brute, mesh);
        Cuts.assertSame(brute, fast, mesh.bounds().diagonal(), share);
    }

    @Property(tries = 300, seed = "20240701")
    void anyBodyAnyPlane(@ForAll int seed, @ForAll @IntRange(min = 0, max = 3) int divisions) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.random(random, divisions, 0.8 * random.nextDouble());
        MeshSolid tree = MeshSolid.of(mesh);
        for (int i = 0; i < 5; i++) {
            Vector3D up = TestMeshes.direction(random);
            compare(mesh, tree, WaterPlane.of(up, 80 * (2 * random.nextDouble() - 1)), SHARE);
        }
    }

    @Property(tries = 200, seed = "20240702")
    void planeThroughVertices(@ForAll int seed, @ForAll @IntRange(min = 0, max = 2) int divisions) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.random(random, divisions, 0.5);
        MeshSolid tree = MeshSolid.of(mesh);
        Vector3D a = TestMeshes.vertex(mesh, random.nextInt(mesh.vertexCount()));
        Vector3D b = TestMeshes.vertex(mesh, random.nextInt(mesh.vertexCount()));
        Vector3D c = TestMeshes.vertex(mesh, random.nextInt(mesh.vertexCount()));
        Vector3D up = TestMeshes.direction(random);
        compare(mesh, tree, WaterPlane.of(up, up.dotProduct(a)), SHARE);
        Vector3D across = b.subtract(a).crossProduct(c.subtract(a));
        if (across.getNorm() > 1e-6) {
            Vector3D through = across.normalize();
            compare(mesh, tree, WaterPlane.of(through, through.dotProduct(a)), SHARE);
        }
    }

    /** A face in the plane, whichever way it leans, counts as dry: the waterplane is the one just below it. */
    @Property(tries = 200, seed = "20240703")
    void planeThroughFaces(@ForAll int seed, @ForAll boolean far) {
        Random random = new Random(seed);
        TriangleMesh box = Solids.box(0, 0, 0, 90, 50, 35);
        Vector3D away = far ? TestMeshes.direction(random).scalarMultiply(1e4) : Vector3D.ZERO;
        TriangleMesh mesh = TestMeshes.moved(TestMeshes.turned(box, TestMeshes.rotation(random)), away);
        MeshSolid tree = MeshSolid.of(mesh);
        int face = random.nextInt(mesh.triangleCount());
        Vector3D a = TestMeshes.vertex(mesh, mesh.corners()[3 * face]);
        Vector3D b = TestMeshes.vertex(mesh, mesh.corners()[3 * face + 1]);
        Vector3D c = TestMeshes.vertex(mesh, mesh.corners()[3 * face + 2]);
        Vector3D normal = b.subtract(a).crossProduct(c.subtract(a)).normalize();
        // The corners stray from their face by the rounding of their own coordinates.
        double share = SHARE + 1e-15 * away.getNorm();
        WaterPlane lid = WaterPlane.of(normal, normal.dotProduct(a));
        compare(mesh, tree, lid, share);
        double area = 2 * 0.5 * b.subtract(a).crossProduct(c.subtract(a)).getNorm();
        assertEquals(area, Cuts.below(lid, tree).waterplaneMm2(), area * 1e-9, "just below the lid");
        WaterPlane floor = WaterPlane.of(normal.negate(), -normal.dotProduct(a));
        compare(mesh, tree, floor, share);
        assertEquals(0, Cuts.below(floor, tree).waterplaneMm2(), area * 1e-9, "just below the floor");
    }

    /** A thousand kilometres would not matter; here it is one, where a double's last place is 1e-10 mm: 1e-12 of the size. */
    @Property(tries = 60, seed = "20240704")
    void farFromTheOrigin(@ForAll int seed) {
        Random random = new Random(seed);
        TriangleMesh near = TestMeshes.random(random, 2, 0.5);
        Vector3D away = TestMeshes.direction(random).scalarMultiply(1e6);
        TriangleMesh mesh = TestMeshes.moved(near, away);
        Vector3D up = TestMeshes.direction(random);
        WaterPlane plane = WaterPlane.of(up, up.dotProduct(away) + 30 * random.nextDouble());
        compare(mesh, MeshSolid.of(mesh), plane, SHARE);
        Immersion here = Cuts.below(plane.at(plane.heightMm() - up.dotProduct(away)), MeshSolid.of(near));
        Immersion there = Cuts.below(plane, MeshSolid.of(mesh));
        double size = mesh.bounds().diagonal();
        // Last places of 1e6 mm and the lowering, 4e-9 mm together, over the waterplane.
        double shift = 1e-8;
        assertEquals(here.volumeMm3(), there.volumeMm3(), shift * size * size);
        assertEquals(here.waterplaneMm2(), there.waterplaneMm2(), shift * 10 * size);
        Cuts.assertNear(here.centroidMm().add(away), there.centroidMm(), 1e-7, "B");
    }

    /** Needles: sides of 100 mm and of a micron and less. */
    @Property(tries = 100, seed = "20240705")
    void needles(@ForAll int seed) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.mapped(TestMeshes.ball(2), p -> p);
        double thin = Math.pow(10, -3 - 6 * random.nextDouble());
        TriangleMesh needle = TestMeshes.turned(
                TestMeshes.mapped(mesh, p -> new Vector3D(100 * p.getX(), 20 * p.getY(), thin * p.getZ())),
                TestMeshes.rotation(random));
        TriangleMesh slivers = HullForms.suboff(3, 600);
        for (TriangleMesh m : new TriangleMesh[] {needle, slivers}) {
            Vector3D up = TestMeshes.direction(random);
            compare(m, MeshSolid.of(m), WaterPlane.of(up, up.dotProduct(Cuts.middle(m)) + random.nextDouble()), SHARE);
        }
    }

    /** A big mesh in shuffled order, with a shell inside another and one apart. */
    @Test
    void bigMeshOfSeveralShells() {
        Random random = new Random(5);
        TriangleMesh outer = TestMeshes.bigEllipsoid(500, 60, 80, 300, 400);
        TriangleMesh inner = TestMeshes.bigEllipsoid(450, 50, 70, 100, 100).flipped();
        TriangleMesh apart = TestMeshes.moved(TestMeshes.random(random, 4, 0.4), new Vector3D(700, 100, 50));
        TriangleMesh mesh = TestMeshes.shuffled(TestMeshes.together(TestMeshes.together(outer, inner), apart), random);
        assertTrue(mesh.triangleCount() > 250_000);
        MeshSolid tree = MeshSolid.of(mesh);
        for (int i = 0; i < 20; i++) {
            Vector3D up = TestMeshes.direction(random);
            compare(mesh, tree, WaterPlane.of(up, 100 * random.nextGaussian()), SHARE);
        }
        double exact = 4 * Math.PI / 3 * (500 * 60 * 80 - 450 * 50 * 70);
        double lost = Math.pow(2 * Math.PI / 100, 2);
        assertEquals(exact, tree.volumeMm3() - MeshSolid.of(apart).volumeMm3(), exact * lost * 3);
    }

    /** Area below and highest point, against all triangles and vertices one by one. */
    @Property(tries = 100, seed = "20240706")
    void areaAndTop(@ForAll int seed) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.moved(
                TestMeshes.random(random, 3, 0.5), TestMeshes.direction(random).scalarMultiply(300));
        MeshTree tree = MeshTree.of(mesh);
        Vector3D up = TestMeshes.direction(random);
        double top = Double.NEGATIVE_INFINITY;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            top = Math.max(top, up.dotProduct(TestMeshes.vertex(mesh, v)));
        }
        assertEquals(top, tree.topMm(up), 1e-12 * 600);
        assertEquals(mesh.area(), tree.areaMm2(), 1e-12 * mesh.area());
        assertEquals(mesh.area(), tree.areaBelowMm2(WaterPlane.of(up, top + 1)), 1e-12 * mesh.area());
        WaterPlane plane = WaterPlane.of(up, up.dotProduct(Cuts.middle(mesh)) + 30 * random.nextGaussian());
        double sum = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            sum += areaBelow(mesh, t, plane);
        }
        assertEquals(sum, tree.areaBelowMm2(plane), 1e-11 * mesh.area());
    }

    /** Clipped corner by corner. */
    private static double areaBelow(TriangleMesh mesh, int t, WaterPlane plane) {
        List<Vector3D> clipped = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            Vector3D a = TestMeshes.vertex(mesh, mesh.corners()[3 * t + k]);
            Vector3D b = TestMeshes.vertex(mesh, mesh.corners()[3 * t + (k + 1) % 3]);
            double da = plane.up().dotProduct(a) - plane.heightMm();
            double db = plane.up().dotProduct(b) - plane.heightMm();
            if (da < 0) {
                clipped.add(a);
            }
            if (da < 0 != db < 0) {
                clipped.add(new Vector3D(1, a, da / (da - db), b.subtract(a)));
            }
        }
        Vector3D twice = Vector3D.ZERO;
        for (int i = 2; i < clipped.size(); i++) {
            Vector3D a = clipped.get(0);
            twice = twice.add(
                    clipped.get(i - 1).subtract(a).crossProduct(clipped.get(i).subtract(a)));
        }
        return twice.getNorm() / 2;
    }

    /** The same bits from every run: built twice, cut twice, and by several threads at once. */
    @Test
    void sameBitsAlways() {
        TriangleMesh mesh = TestMeshes.random(new Random(11), 5, 0.5);
        WaterPlane plane = WaterPlane.of(new Vector3D(0.1, 0.2, 0.9), 3);
        MeshSolid tree = MeshSolid.of(mesh);
        double[] expected = bits(Cuts.below(plane, tree));
        assertTrue(Arrays.equals(expected, bits(Cuts.below(plane, MeshSolid.of(mesh)))));
        assertTrue(IntStream.range(0, 8)
                .parallel()
                .allMatch(i -> Arrays.equals(expected, bits(Cuts.below(plane, tree)))));
    }

    private static double[] bits(Immersion cut) {
        Vector3D m = cut.momentMm4();
        return new double[] {
            cut.volumeMm3(),
            m.getX(),
            m.getY(),
            m.getZ(),
            cut.waterplaneMm2(),
            cut.waterplaneAheadMm3(),
            cut.waterplanePortMm3(),
            cut.secondMomentAheadMm4(),
            cut.secondMomentPortMm4(),
            cut.secondMomentMixedMm4()
        };
    }

    @Test
    void refusesAnEmptyMesh() {
        TriangleMesh empty = TriangleMesh.owning(new double[0], new int[0]);
        assertThrows(IllegalArgumentException.class, () -> MeshTree.of(empty));
    }
}
