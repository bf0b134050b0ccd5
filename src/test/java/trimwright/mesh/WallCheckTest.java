package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.finding.Code;
import trimwright.finding.Finding;

class WallCheckTest {

    /** A body of hull-like proportions. */
    private static TriangleMesh ellipsoid() {
        double[] xyz = Shapes.ball(0, 0, 0, 50, 40, 60).xyz().clone();
        for (int i = 2; i < xyz.length; i += 3) {
            xyz[i] *= 8;
        }
        return TriangleMesh.owning(xyz, Shapes.ball(0, 0, 0, 50, 40, 60).corners());
    }

    private static TriangleMesh box(double inward) {
        return Solids.box(inward, inward, inward, 400 - inward, 200 - inward, 100 - inward);
    }

    @Test
    void anOuterSurfaceSuitsSkinAndSealedButNotPrinted() {
        assertEquals(List.of(), check(ellipsoid(), MeshUse.SKIN));
        assertEquals(List.of(), check(ellipsoid(), MeshUse.SEALED));
        Finding finding = check(ellipsoid(), MeshUse.PRINTED).get(0);
        assertEquals(Code.MESH_LOOKS_LIKE_OUTER_SURFACE, finding.code());
        // A long ellipsoid has V = 4/3 π a b² and A near π² a b, so that 2 V / A is near 8 b / 3 π = 42 mm.
        assertEquals(42, (Double) finding.values().get("wallMm"), 1);
    }

    @Test
    void aWallWithBothItsSurfacesSuitsPrintedButNotSkin() {
        TriangleMesh print = Shapes.together(box(0), box(2).flipped());
        double volume = 8e6 - 396 * 196 * 96;
        double area = 280_000 + 2 * (396 * 196 + 196 * 96 + 96 * 396);
        assertEquals(List.of(), check(print, MeshUse.PRINTED));
        for (MeshUse use : List.of(MeshUse.SKIN, MeshUse.SEALED)) {
            Finding finding = check(print, use).get(0);
            assertEquals(Code.MESH_LOOKS_LIKE_WALL, finding.code());
            assertEquals("volume", finding.values().get("sign"));
            assertEquals(2 * volume / area, (Double) finding.values().get("wallMm"), 1e-9);
        }
    }

    @Test
    void anInnerWallThatIsTurnedTheWrongWayIsSeenByItsNesting() {
        Finding finding = check(Shapes.together(box(0), box(2)), MeshUse.SKIN).get(0);
        assertEquals("nested", finding.values().get("sign"));
        assertEquals(2, (Double) finding.values().get("wallMm"), 0.02);
    }

    @Test
    void anOpenWallIsSeenByRays() {
        TriangleMesh wall =
                MeshFiles.read(BrokenMeshes.FOLDER.resolve("open-wall.stl")).mesh();
        Finding finding = check(wall, MeshUse.SKIN).get(0);
        assertEquals(Code.MESH_LOOKS_LIKE_WALL, finding.code());
        assertEquals("rays", finding.values().get("sign"));
        assertEquals(2, (Double) finding.values().get("wallMm"), 1e-9);
        assertEquals(List.of(), check(upperless(ellipsoid()), MeshUse.SKIN));
    }

    @Test
    void anOpenSkinThatLooksAtItsOwnMiddleIsInsideOut() {
        Finding finding = check(upperless(ellipsoid()).flipped(), MeshUse.SKIN).get(0);
        assertEquals(Code.MESH_SKIN_LOOKS_INSIDE_OUT, finding.code());
        assertEquals(100, (Double) finding.values().get("inwardPercent"), 5);
    }

    @Test
    void onlyASkinMayBeOpen() {
        TriangleMesh open = upperless(ellipsoid());
        for (MeshUse use : List.of(MeshUse.SEALED, MeshUse.PRINTED, MeshUse.SOLID)) {
            Finding finding = check(open, use).get(0);
            assertEquals(Code.MESH_BUILD_NEEDS_CLOSED, finding.code());
            assertEquals(use.symbol(), finding.values().get("build"));
            assertEquals(false, finding.values().get("closed"));
            assertEquals(true, finding.values().get("oriented"));
        }
    }

    @Test
    void severalPiecesSideBySideAreNoWall() {
        TriangleMesh boxes =
                MeshFiles.read(BrokenMeshes.FOLDER.resolve("many-shells.stl")).mesh();
        assertEquals(List.of(), check(boxes, MeshUse.SEALED));
    }

    /** The faces of an octahedron |x| + |y| + |z| = r, each by itself: their planes lie r ∕ √3 from the origin. */
    private static TriangleMesh faces(double r, int turnedIn) {
        double[] xyz = new double[72];
        int[] corners = new int[24];
        for (int face = 0; face < 8; face++) {
            boolean odd = Integer.bitCount(face) % 2 == 1;
            for (int k = 0; k < 3; k++) {
                xyz[9 * face + 4 * k] = (face >> k & 1) == 0 ? r : -r;
                int place = odd == face < turnedIn || k == 0 ? k : 3 - k;
                corners[3 * face + place] = 3 * face + k;
            }
        }
        return TriangleMesh.owning(xyz, corners);
    }

    /** Two octahedra about each other, 9 mm apart and 11, of a model of 100 mm: of each face a ray meets the other's at the distance of their planes. */
    @Test
    void raysMeasureSquareToASlopingWall() {
        for (double wall : new double[] {9, 11}) {
            double inner = 100 - wall * Math.sqrt(3);
            TriangleMesh mesh = Shapes.together(faces(100, 0), faces(inner, 8));
            assertEquals(8 * 1e6 / 6 * (1 - Math.pow(inner / 100, 3)), mesh.signedVolume(), 1e-3);
            List<Finding> found = check(mesh, MeshUse.SEALED).stream()
                    .filter(f -> f.code() == Code.MESH_LOOKS_LIKE_WALL)
                    .toList();
            assertEquals(wall < 10 ? 1 : 0, found.size());
            if (wall < 10) {
                assertEquals("rays", found.get(0).values().get("sign"));
                assertEquals(9, (Double) found.get(0).values().get("wallMm"), 1e-9);
                assertEquals(16, found.get(0).values().get("rays"));
                assertEquals(16, found.get(0).values().get("raysOnWall"));
            }
        }
    }

    /** A wall of eight thicknesses, each told by two rays: the ninth of the sixteen is the fifth of them. */
    @Test
    void ofManyThicknessesTheMiddleOne() {
        TriangleMesh inner = Shapes.moved(faces(89, 8), 3, -2, 0.5);
        List<Double> walls = new ArrayList<>();
        for (int face = 0; face < 8; face++) {
            double along = ((face & 1) == 0 ? 3 : -3) + ((face & 2) == 0 ? -2 : 2) + ((face & 4) == 0 ? 0.5 : -0.5);
            walls.add((11 - along) / Math.sqrt(3));
        }
        Collections.sort(walls);
        Finding finding =
                check(Shapes.together(faces(100, 0), inner), MeshUse.SKIN).get(0);
        assertEquals(16, finding.values().get("raysOnWall"));
        assertEquals(walls.get(4), (Double) finding.values().get("wallMm"), 1e-9);
    }

    /** A model open everywhere is a wall when six rays of ten say so: with five of the eight faces doubled 10 of 13, with three 6 of 11. */
    @Test
    void mostRaysMustMeetAWall() {
        for (int doubled : new int[] {3, 5}) {
            boolean[] keep = new boolean[8];
            Arrays.fill(keep, 0, doubled, true);
            TriangleMesh mesh = Shapes.together(faces(100, 0), faces(95, 8).only(keep));
            List<Finding> found = check(mesh, MeshUse.SKIN);
            assertEquals(doubled == 5 ? 1 : 0, found.size());
            if (doubled == 5) {
                assertEquals(13, found.get(0).values().get("rays"));
                assertEquals(10, found.get(0).values().get("raysOnWall"));
                assertEquals(5 / Math.sqrt(3), (Double) found.get(0).values().get("wallMm"), 1e-9);
            }
        }
    }

    /** Two plates of two triangles are four rays, and four say nothing; of four triangles eight, and eight do. */
    @Test
    void aHandfulOfRaysIsNoWall() {
        double[] xyz = {0, 0, 0, 90, 0, 0, 90, 90, 0, 0, 90, 0, 45, 45, 0};
        TriangleMesh two = TriangleMesh.owning(xyz.clone(), new int[] {0, 1, 2, 0, 2, 3});
        TriangleMesh four = TriangleMesh.owning(xyz.clone(), new int[] {0, 1, 4, 1, 2, 4, 2, 3, 4, 3, 0, 4});
        for (TriangleMesh plate : List.of(two, four)) {
            TriangleMesh lower = Shapes.moved(plate.flipped(), 0, 0, -2);
            // A frame of its own gives the model a height.
            TriangleMesh plates = Shapes.together(plate, lower, Shapes.moved(tilted(), 500, 0, 0));
            List<Code> found =
                    check(plates, MeshUse.SKIN).stream().map(Finding::code).toList();
            assertEquals(plate == four, found.contains(Code.MESH_LOOKS_LIKE_WALL), found::toString);
        }
    }

    /** A triangle larger than all else, so that the model counts as 100 mm thick at its thinnest. */
    private static TriangleMesh tilted() {
        return TriangleMesh.owning(new double[] {200, 0, 0, 0, 200, 0, 0, 0, 100}, new int[] {0, 1, 2});
    }

    /** Of eight equal faces six turned in are half more in than out, (6 − 2) ∕ 8, and no word of it; seven are 7 ∕ 8, in per cent. */
    @Test
    void aSkinMustLookInByMoreThanHalf() {
        assertEquals(List.of(), check(faces(100, 6), MeshUse.SKIN));
        // A shear leaves all shares of volume as they are.
        TriangleMesh sheared = faces(100, 7);
        double[] xyz = sheared.xyz();
        for (int i = 0; i < xyz.length; i += 3) {
            double x = xyz[i] + 0.4 * xyz[i + 1] - 0.3 * xyz[i + 2];
            double y = xyz[i + 1] + 0.2 * xyz[i] + 0.1 * xyz[i + 2];
            xyz[i + 2] += 0.5 * xyz[i + 1] - 0.2 * xyz[i];
            xyz[i] = x;
            xyz[i + 1] = y;
        }
        TriangleMesh aside = Shapes.moved(sheared, 300, -200, 1000);
        Finding finding = check(aside, MeshUse.SKIN).get(0);
        assertEquals(Code.MESH_SKIN_LOOKS_INSIDE_OUT, finding.code());
        assertEquals(87.5, (Double) finding.values().get("inwardPercent"), 1e-9);
        assertEquals(List.of(), check(faces(100, 0), MeshUse.SKIN));
    }

    /** 2 V ∕ A of a plate 60 × 60 × h is 60 h ∕ (60 + 2 h): 7.9 and 8.1 mm for a printed wall. */
    @Test
    void aPrintedWallIsNoThickerThanEight() {
        for (double wall : new double[] {7.9, 8.1}) {
            double h = 60 * wall / (60 - 2 * wall);
            List<Finding> found = check(Solids.box(0, 0, 0, 60, 60, h), MeshUse.PRINTED);
            assertEquals(wall > 8 ? 1 : 0, found.size());
            if (wall > 8) {
                assertEquals(wall, (Double) found.get(0).values().get("wallMm"), 1e-9);
            }
        }
        // Of a large model a tenth of its shortest side: 2 V / A of a block of 400 × 400 × 200 is 100, of its wall 15
        // it
        // is 15 less.
        assertEquals(
                List.of(),
                check(
                        Shapes.together(
                                Solids.box(0, 0, 0, 400, 400, 200),
                                Solids.box(15, 15, 15, 385, 385, 185).flipped()),
                        MeshUse.PRINTED));
    }

    /** Boxes of 600 × 300 × 300 in each other, as hull and hollow and as hull counted twice; 2 V ∕ A of what lies between, worked by hand. */
    @Test
    void nestedShellsAreAWallWhenTheyAreClose() {
        for (double wall : new double[] {25, 50}) {
            TriangleMesh inner = Solids.box(wall, wall, wall, 600 - wall, 300 - wall, 300 - wall);
            double between = 600 * 300 * 300 - (600 - 2 * wall) * Math.pow(300 - 2 * wall, 2);
            double area = 2 * (2 * 600 * 300 + 300 * 300)
                    + 2 * (2 * (600 - 2 * wall) * (300 - 2 * wall) + Math.pow(300 - 2 * wall, 2));
            List<Finding> found = check(Shapes.together(Solids.box(0, 0, 0, 600, 300, 300), inner), MeshUse.SEALED);
            assertEquals(2 * between / area < 30 ? 1 : 0, found.size());
            if (wall == 25) {
                assertEquals(2 * between / area, (Double) found.get(0).values().get("wallMm"), 1e-9);
                assertEquals(2, found.get(0).values().get("shell"));
                assertEquals(1, found.get(0).values().get("inside"));
            }
        }
    }

    /** 49.9 and 5000.1 mm are no model, 50 and 5000 are; units are named that make her 200 to 3000 mm, ends included. */
    @Test
    void sizesAtTheLimits() {
        for (double size : new double[] {50, 5000}) {
            assertEquals(Optional.empty(), SizeCheck.of(new Bounds(0, 0, 0, 1, size, 2)));
        }
        assertEquals(List.of("cm", "in"), units(20));
        assertEquals(List.of("in"), units(19.9));
        assertEquals(List.of("m"), units(3));
        assertEquals(List.of(), units(3.1));
        assertEquals(List.of("cm", "in"), units(49.9));
        assertEquals(List.of(), units(5000.1));
        Finding finding = SizeCheck.of(new Bounds(0, 0, 0, 10, 1, 2)).orElseThrow();
        assertEquals(List.of(254.0), finding.values().get("lengthsMm"));
    }

    private static Object units(double size) {
        return SizeCheck.of(new Bounds(0, 0, 0, 1, 2, size))
                .orElseThrow()
                .values()
                .get("units");
    }

    private static List<Finding> check(TriangleMesh mesh, MeshUse use) {
        return Soundness.of(mesh).againstBuild(mesh, use);
    }

    private static TriangleMesh upperless(TriangleMesh mesh) {
        boolean[] keep = new boolean[mesh.triangleCount()];
        for (int t = 0; t < keep.length; t++) {
            double middle = 0;
            for (int k = 0; k < 3; k++) {
                middle += mesh.xyz()[3 * mesh.corners()[3 * t + k] + 1] / 3;
            }
            keep[t] = middle < 10;
        }
        return mesh.only(keep);
    }
}
