package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Thin shells: each triangle is a prism of the shell's thickness, lying inward. */
class MeshSkinTest {

    private static final TriangleMesh DECK = TriangleMesh.owning(
            new double[] {0, 0, 50, 200, 0, 50, 200, 80, 50, 0, 80, 50}, new int[] {0, 1, 2, 0, 2, 3});

    /** A flat deck goes under over its thickness: 16000 mm² from z = 48 to 50. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 1, 1.75, 2})
    void deckGoesUnderOverItsThickness(double depth) {
        MeshSkin deck = new MeshSkin(MeshTree.of(DECK), 2);
        assertEquals(32000, deck.volumeMm3(), 1e-9);
        Cuts.assertNear(new Vector3D(100, 40, 49), deck.centroidMm(), 1e-12, "centroid");
        Immersion cut = Cuts.below(WaterPlane.level(48 + depth), deck);
        // The plane cuts lower by what rounding may shift heights by: 2e-15 of 400 mm, over 16000 mm².
        assertEquals(16000 * depth, cut.volumeMm3(), 2e-8);
        assertEquals(depth > 0 ? 16000 : 0, cut.waterplaneMm2(), 1e-8);
        if (depth > 0) {
            Cuts.assertNear(new Vector3D(100, 40, 48 + depth / 2), cut.centroidMm(), 1e-9, "B");
            assertEquals(80 * Math.pow(200, 3) / 12, cut.inertiaAheadMm4(), 1e-3);
        }
        assertEquals(32000, Cuts.below(WaterPlane.level(60), deck).volumeMm3(), 1e-9);
        assertEquals(0, Cuts.below(WaterPlane.level(60), deck).waterplaneMm2(), 0);
    }

    /** A closed box: bottom, then four walls, then the deck; corners count twice, which is the first order in the thickness. */
    @ParameterizedTest
    @ValueSource(doubles = {1.5, 3, 20, 57, 58.5, 60})
    void closedBox(double depth) {
        double t = 3;
        MeshSkin box = new MeshSkin(MeshTree.of(Solids.box(0, 0, 0, 200, 80, 60)), t);
        Immersion cut = Cuts.below(WaterPlane.level(depth), box);
        double walls = 2 * (200 + 80) * t;
        double plates = 200 * 80 * (Math.min(depth, t) + Math.max(0, depth - 57));
        assertEquals(walls * depth + plates, cut.volumeMm3(), 1e-7);
        boolean inPlate = depth <= t || depth > 57;
        assertEquals(walls + (inPlate ? 16000 : 0), cut.waterplaneMm2(), 1e-7);
        assertEquals(t * 2 * (200 * 80 + 200 * 60 + 80 * 60), box.volumeMm3(), 1e-7);
        Cuts.assertNear(new Vector3D(100, 40, 30), box.centroidMm(), 1e-10, "centroid");
    }

    /** An open tray: no deck, and nothing is missed by it. */
    @Test
    void openTray() {
        TriangleMesh box = Solids.box(0, 0, 0, 200, 80, 60);
        boolean[] keep = new boolean[box.triangleCount()];
        for (int i = 0; i < keep.length; i++) {
            double z = 0;
            for (int k = 0; k < 3; k++) {
                z += TestMeshes.vertex(box, box.corners()[3 * i + k]).getZ();
            }
            keep[i] = z < 180;
        }
        MeshSkin tray = new MeshSkin(MeshTree.of(box.only(keep)), 1);
        assertEquals(16000 + 560 * 60, tray.volumeMm3(), 1e-8);
        assertEquals(16000 + 560 * 25, Cuts.below(WaterPlane.level(25), tray).volumeMm3(), 1e-8);
        assertEquals(560, Cuts.below(WaterPlane.level(25), tray).waterplaneMm2(), 1e-8);
        double momentZ = 16000 * 0.5 + 560 * 60 * 30;
        assertEquals(momentZ / tray.volumeMm3(), tray.centroidMm().getZ(), 1e-10);
    }

    /** Ball skin: t × area, to first order the shell between the balls of radius R and R − t. */
    @Test
    void ballShell() {
        double t = 0.5;
        TriangleMesh mesh = TestMeshes.ellipsoid(50, 50, 50, 5);
        MeshSkin skin = new MeshSkin(MeshTree.of(mesh), t);
        double shell = 4 * Math.PI / 3 * (Math.pow(50, 3) - Math.pow(50 - t, 3));
        // Area exceeds the middle surface by t/R = 1 %; the mesh of 20480 triangles lacks less than 0.1 %.
        assertEquals(shell, skin.volumeMm3(), shell * (t / 50 + 1e-3));
        Immersion half = Cuts.below(WaterPlane.level(0), skin);
        assertEquals(skin.volumeMm3() / 2, half.volumeMm3(), 1e-8 * shell);
    }

    /** The tree's sums are those of all prisms one by one, cut as bodies of their own. */
    @Property(tries = 200, seed = "20240601")
    void skinIsTheSumOfItsPrisms(
            @ForAll int seed,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double place,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 8) double t) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.random(random, 1 + random.nextInt(2), 0.6);
        MeshSkin skin = new MeshSkin(MeshTree.of(mesh), t);
        WaterPlane plane = WaterPlane.of(TestMeshes.direction(random), 60 * place);
        Immersion tree = Cuts.below(plane, skin);
        Immersion brute = tree.emptied();
        BruteCut.addBelow(brute, Prisms.of(mesh, t));
        double size = mesh.bounds().diagonal();
        Cuts.assertSame(brute, tree, size, 1e-11);
        // The bracket of the level search: nothing below the bottom, everything below the top.
        WaterPlane over = plane.at(skin.topMm(plane.up()) + 1e-9);
        assertEquals(skin.volumeMm3(), Cuts.below(over, skin).volumeMm3(), 1e-11 * size * size * size);
        assertEquals(0, Cuts.below(plane.at(skin.bottomMm(plane.up())), skin).volumeMm3(), 0);
    }

    /**
     * A fine flat deck that the plane crosses within its thickness all over, whichever way it faces: taken node by node it is the sum of its prisms, and what
     * one plate of the same size is.
     */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFlatDeckIsTakenAsAWhole(boolean facesUp) {
        int cells = 40;
        TriangleMesh fine = deck(cells, facesUp);
        double t = 2;
        double middle = facesUp ? 49 : 51;
        for (Vector3D up : List.of(Vector3D.PLUS_K, new Vector3D(0.004, -0.003, 1), new Vector3D(-0.006, 0.004, 1))) {
            WaterPlane plane = WaterPlane.of(up, 0);
            plane = plane.at(plane.up().dotProduct(new Vector3D(100, 40, middle)) + 0.1);
            Immersion whole = Cuts.below(plane, new MeshSkin(MeshTree.of(fine), t));
            Immersion brute = whole.emptied();
            BruteCut.addBelow(brute, Prisms.of(fine, t));
            Cuts.assertSame(brute, whole, 220, 1e-11);
            // The plane stays between the faces, so that the mean depth is that at the middle.
            assertEquals(16000 * (1 + 0.1 / plane.up().getZ()), whole.volumeMm3(), 1e-6);
            assertEquals(16000 / plane.up().getZ(), whole.waterplaneMm2(), 1e-6);
        }
    }

    /**
     * The same on the slant and far from the reference: whole numbers keep every triangle's normal the same to the last bit, and the shell is thicker than
     * the boxes of the lowest nodes are high.
     */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFlatSideIsTakenAsAWhole(boolean facesUp) {
        Vector3D along = new Vector3D(4, 1, 3);
        Vector3D across = new Vector3D(-1, 5, 2);
        TriangleMesh level = deck(40, facesUp);
        TriangleMesh slanted = TestMeshes.mapped(
                level,
                p -> new Vector3D(Math.rint(p.getX() / 5), along, Math.rint(p.getY() / 2), across)
                        .add(new Vector3D(300, -70, 20)));
        double t = 60;
        Vector3D normal = along.crossProduct(across).normalize();
        Vector3D middle = new Vector3D(20, along, 20, across)
                .add(new Vector3D(300, -70, 20))
                .subtract(normal.scalarMultiply(facesUp ? 0.5 * t : -0.5 * t));
        MeshSkin skin = new MeshSkin(MeshTree.of(slanted), t);
        for (Vector3D tilt :
                List.of(Vector3D.ZERO, new Vector3D(0.004, -0.003, 0.002), new Vector3D(-0.002, 0.003, 0.004))) {
            WaterPlane plane = WaterPlane.of(normal.add(tilt), 0);
            plane = plane.at(plane.up().dotProduct(middle) + 0.1);
            Immersion whole = Immersion.below(plane, new Vector3D(40, 25, -60)).add(skin);
            Immersion brute = whole.emptied();
            BruteCut.addBelow(brute, Prisms.of(slanted, t));
            Cuts.assertSame(brute, whole, 500, 1e-11);
            assertEquals(skin.volumeMm3() / t, whole.waterplaneMm2(), 1e-3 * whole.waterplaneMm2());
        }
    }

    private static TriangleMesh deck(int cells, boolean facesUp) {
        double[] xyz = new double[3 * (cells + 1) * (cells + 1)];
        int[] corners = new int[6 * cells * cells];
        int next = 0;
        for (int i = 0; i <= cells; i++) {
            for (int j = 0; j <= cells; j++) {
                int v = i * (cells + 1) + j;
                xyz[3 * v] = 200.0 * i / cells;
                xyz[3 * v + 1] = 80.0 * j / cells;
                xyz[3 * v + 2] = 50;
                if (i < cells && j < cells) {
                    int right = v + cells + 1;
                    int[] square = facesUp
                            ? new int[] {v, right, right + 1, v, right + 1, v + 1}
                            : new int[] {v, right + 1, right, v, v + 1, right + 1};
                    System.arraycopy(square, 0, corners, next, 6);
                    next += 6;
                }
            }
        }
        return TriangleMesh.owning(xyz, corners);
    }

    /** Upright walls, level plates and all between at once, so thin or thick that every part of a prism is met. */
    @Property(tries = 100, seed = "20261126")
    void boxesAndWedgesAreTheSumOfTheirPrisms(
            @ForAll int seed,
            @ForAll @Scale(6) @DoubleRange(min = -0.2, max = 1.2) double place,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 30) double t) {
        Random random = new Random(seed);
        TriangleMesh box = Solids.box(0, 0, 0, 40, 30, 20);
        TriangleMesh mesh = random.nextBoolean() ? box : TestMeshes.subdivided(TestMeshes.subdivided(box));
        Vector3D up = random.nextInt(3) == 0
                ? Vector3D.PLUS_K
                : new Vector3D(1e-5 * random.nextGaussian(), 0.3 * random.nextInt(2), 1);
        MeshSkin skin = new MeshSkin(MeshTree.of(mesh), t);
        WaterPlane plane = WaterPlane.of(up, 0);
        plane = plane.at(plane.up().dotProduct(new Vector3D(20, 15, 20 * place)));
        Immersion tree = Cuts.below(plane, skin);
        Immersion brute = tree.emptied();
        BruteCut.addBelow(brute, Prisms.of(mesh, t));
        Cuts.assertSame(brute, tree, 54 + 2 * t, 1e-11);
    }

    @Test
    void refusesNegativeThickness() {
        MeshTree tree = MeshTree.of(DECK);
        assertThrows(IllegalArgumentException.class, () -> new MeshSkin(tree, -1));
        assertThrows(IllegalArgumentException.class, () -> new MeshSkin(tree, Double.NaN));
    }
}
