package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Outline of the cut, highest points, inside and outside. */
class OutlineTest {

    private static final MeshSolid BOX = MeshSolid.of(Solids.box(0, -30, 0, 200, 30, 50));

    private static WaterPlane listed(double heelDeg, double heightMm) {
        double a = Math.toRadians(heelDeg);
        return WaterPlane.of(new Vector3D(0, Math.sin(a), Math.cos(a)), heightMm);
    }

    @Test
    void boxLevelAndListed() {
        assertEquals(2 * (200 + 60), BOX.outlineMm(WaterPlane.level(20)), 1e-9);
        // Listed by 20° the section is longer across by 1 / cos 20°, as long as no edge is crossed.
        WaterPlane plane = listed(20, 25 * Math.cos(Math.toRadians(20)));
        assertEquals(2 * (200 + 60 / Math.cos(Math.toRadians(20))), BOX.outlineMm(plane), 1e-9);
        assertEquals(0, BOX.outlineMm(WaterPlane.level(51)), 0);
        assertEquals(0, BOX.outlineMm(WaterPlane.level(-1)), 0);
    }

    /** A deck that lies in the surface still has its edge in it. */
    @Test
    void deckInTheSurface() {
        assertEquals(2 * (200 + 60), BOX.outlineMm(WaterPlane.level(50)), 1e-9);
    }

    @Test
    void barLyingAndStanding() {
        RoundBar bar = RoundBar.flat(new Vector3D(10, 0, 40), new Vector3D(110, 0, 40), 25);
        double chord = 2 * Math.sqrt(25 * 25 - 10 * 10);
        assertEquals(2 * (100 + chord), bar.outlineMm(WaterPlane.level(50)), 1e-9);
        RoundBar standing = RoundBar.flat(new Vector3D(0, 0, 0), new Vector3D(0, 0, 80), 25);
        assertEquals(2 * Math.PI * 25, standing.outlineMm(WaterPlane.level(30)), 1e-9);
    }

    /** A bar cut aslant, clear of its ends: an ellipse of half axes r and r / sin, its length by the series in the third eccentricity. */
    @Test
    void barCutAslant() {
        double r = 20;
        double slope = Math.toRadians(50);
        RoundBar bar = RoundBar.flat(new Vector3D(-100, 0, 0), new Vector3D(100, 0, 0), r);
        WaterPlane plane = WaterPlane.of(new Vector3D(Math.sin(slope), 0, Math.cos(slope)), 5);
        double a = r / Math.sin(slope);
        double h = Math.pow((a - r) / (a + r), 2);
        double ellipse = Math.PI * (a + r) * (1 + h / 4 + h * h / 64 + h * h * h / 256);
        assertEquals(ellipse, bar.outlineMm(plane), 1e-6 * ellipse);
    }

    @Test
    void ballAndRoundEnds() {
        RoundBar ball = RoundBar.ball(new Vector3D(1, 2, 3), 30);
        assertEquals(
                2 * Math.PI * 24,
                ball.outlineMm(listed(35, listed(35, 0).up().dotProduct(new Vector3D(1, 2, 3)) + 18)),
                1e-6);
        RoundBar pill = RoundBar.round(new Vector3D(0, 0, 0), new Vector3D(150, 0, 0), 20);
        assertEquals(2 * 110 + 2 * Math.PI * 20, pill.outlineMm(WaterPlane.level(0)), 1e-6);
    }

    @Property(tries = 200)
    void highestPointIsAtTheTop(
            @ForAll @DoubleRange(min = -1, max = 1) double x,
            @ForAll @DoubleRange(min = -1, max = 1) double y,
            @ForAll @DoubleRange(min = 0.01, max = 1) double z) {
        Vector3D up = new Vector3D(x, y, z).normalize();
        Displacer[] bodies = {
            BOX,
            RoundBar.flat(new Vector3D(10, 3, 40), new Vector3D(110, -20, 60), 25),
            RoundBar.round(new Vector3D(10, 3, 40), new Vector3D(110, -20, 60), 25)
        };
        for (Displacer body : bodies) {
            assertEquals(body.topMm(up), up.dotProduct(body.highestMm(up)), 1e-9);
        }
    }

    @Test
    void insideAndOutside() {
        MeshTree tree = BOX.tree();
        assertEquals(1, tree.windingNumber(new Vector3D(1, 0, 1)), 1e-9);
        assertEquals(1, tree.windingNumber(new Vector3D(199, 29, 49)), 1e-9);
        assertEquals(0, tree.windingNumber(new Vector3D(201, 0, 25)), 1e-9);
        assertEquals(0, tree.windingNumber(new Vector3D(1e4, 50, 1e4)), 1e-3);
    }

    /** Without its deck a box still tells its inside from its outside at one half. */
    @Test
    void insideOfAnOpenBox() {
        TriangleMesh mesh = Solids.box(0, -30, 0, 200, 30, 50);
        boolean[] keep = new boolean[mesh.triangleCount()];
        int[] corners = mesh.corners();
        double[] xyz = mesh.xyz();
        for (int t = 0; t < keep.length; t++) {
            double z = 0;
            for (int k = 0; k < 3; k++) {
                z += xyz[3 * corners[3 * t + k] + 2];
            }
            keep[t] = z < 150;
        }
        MeshTree open = MeshTree.of(mesh.only(keep));
        assertEquals(10, open.triangleCount());
        assertTrue(open.windingNumber(new Vector3D(100, 0, 20)) > 0.5);
        assertTrue(open.windingNumber(new Vector3D(100, 0, 60)) < 0.5);
        assertTrue(open.windingNumber(new Vector3D(100, 0, -5)) < 0.5);
    }

    @Test
    void remainderIsTheRoomLessWhatStandsInIt() {
        RoundBar bar = RoundBar.flat(new Vector3D(20, 0, 20), new Vector3D(120, 0, 20), 10);
        Remainder left = new Remainder(BOX, java.util.List.of(bar));
        assertEquals(200 * 60 * 50 - Math.PI * 100 * 100, left.volumeMm3(), 1e-6);
        WaterPlane half = WaterPlane.level(20);
        Immersion sums = Immersion.below(half, new Vector3D(100, 0, 25)).add(left);
        assertEquals(200 * 60 * 20 - 0.5 * Math.PI * 100 * 100, sums.volumeMm3(), 1e-5);
        assertEquals(200 * 60 - 100 * 20, sums.waterplaneMm2(), 1e-8);
        Immersion all =
                Immersion.below(WaterPlane.level(60), new Vector3D(100, 0, 25)).add(left);
        assertEquals(0, all.centroidMm().distance(left.centroidMm()), 1e-9);
    }
}
