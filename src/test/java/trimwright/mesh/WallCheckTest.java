package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
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
