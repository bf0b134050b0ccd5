package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

class RepairTest {

    private static final TriangleMesh BOX = BrokenMeshes.BOX;
    private static final double BOX_AREA = 280_000;

    @Test
    void aSoundMeshIsLeftAlone() {
        RepairResult result = Repair.of(BOX);
        assertSame(BOX, result.mesh());
        assertEquals(List.of(), result.changes());
    }

    @Test
    void whatIsBrokenIsMendedToTheBoxItWas() {
        for (String name : List.of("flipped-triangle", "duplicate-triangle", "degenerate-triangles", "inside-out")) {
            RepairResult result = Repair.of(mesh(name));
            assertTrue(result.after().sound(), name + result.after().findings());
            assertEquals(List.of(), result.after().findings(), name);
            assertEquals(8e6, result.after().volumeMm3().orElseThrow(), 1e-6, name);
            assertEquals(BOX_AREA, result.after().areaMm2(), 1e-6, name);
        }
    }

    @Test
    void eachChangeIsCounted() {
        assertEquals(
                List.of(change(Code.REPAIR_DUPLICATES_DROPPED, "count", 1, "pairsOfNoThickness", 0)),
                plain(Repair.of(mesh("duplicate-triangle"))));
        assertEquals(
                List.of(change(Code.REPAIR_TRIANGLES_TURNED, "count", 1, "edgesLeft", 0)),
                plain(Repair.of(mesh("flipped-triangle"))));
        assertEquals(
                List.of(
                        change(Code.REPAIR_VERTEX_TWICE_DROPPED, "count", 1),
                        change(Code.REPAIR_FLAT_TRIANGLES_MENDED, "count", 1, "left", 0)),
                plain(Repair.of(mesh("degenerate-triangles"))));
        assertEquals(
                List.of(change(
                        Code.REPAIR_SHELL_TURNED, "index", 1, "total", 1, "shell", 1, "inside", 0, "volumeMm3", 8e6)),
                plain(Repair.of(mesh("inside-out"))));
    }

    @Test
    void holesAreClosedUpToTheGivenSizeOnly() {
        RepairResult kept = Repair.of(mesh("open-edge"));
        assertEquals(List.of(), kept.changes());
        assertEquals(false, kept.after().closed());
        RepairResult closed = Repair.of(mesh("open-edge"), 400);
        assertTrue(closed.after().sound());
        assertEquals(8e6, closed.after().volumeMm3().orElseThrow(), 0);
        assertEquals(
                Map.of("index", 1, "total", 1, "edges", 3, "sizeMm", 400.0, "areaMm2", 40_000.0),
                closed.changes().get(0).values());
        assertEquals(false, closed.before().closed());
        assertEquals(BOX_AREA - 40_000, closed.before().areaMm2(), 1e-9);
    }

    @Test
    void aHollowHoleGetsItsLidWithoutLosingArea() {
        // A flat plate of cells, 1 mm thick, with five cells of its top left out in the shape of a U.
        int cells = 6;
        List<int[]> triangles = new ArrayList<>();
        double[] xyz = new double[6 * (cells + 1) * (cells + 1)];
        int layer = (cells + 1) * (cells + 1);
        for (int i = 0; i < 2 * layer; i++) {
            xyz[3 * i] = 10.0 * (i % layer % (cells + 1));
            xyz[3 * i + 1] = 10.0 * (i % layer / (cells + 1));
            xyz[3 * i + 2] = i < layer ? 0 : 1;
        }
        boolean[][] open = new boolean[cells][cells];
        for (int[] cell : new int[][] {{1, 1}, {1, 2}, {2, 1}, {3, 1}, {3, 2}}) {
            open[cell[0]][cell[1]] = true;
        }
        for (int x = 0; x < cells; x++) {
            for (int y = 0; y < cells; y++) {
                int a = y * (cells + 1) + x;
                quad(triangles, a, a + cells + 1, a + cells + 2, a + 1);
                if (!open[x][y]) {
                    quad(triangles, layer + a, layer + a + 1, layer + a + cells + 2, layer + a + cells + 1);
                }
            }
        }
        for (int i = 0; i < cells; i++) {
            int up = i * (cells + 1);
            int far = cells * (cells + 1) + i;
            quad(triangles, i, i + 1, layer + i + 1, layer + i);
            quad(triangles, far + 1, far, layer + far, layer + far + 1);
            quad(triangles, up + cells + 1, up, layer + up, layer + up + cells + 1);
            int right = up + cells;
            quad(triangles, right, right + cells + 1, layer + right + cells + 1, layer + right);
        }
        int[] corners = triangles.stream().flatMapToInt(IntStream::of).toArray();
        RepairResult result = Repair.of(TriangleMesh.owning(xyz, corners), 30);
        assertTrue(result.after().sound(), result.after().findings()::toString);
        assertEquals(500.0, (Double) result.changes().get(0).values().get("areaMm2"), 1e-9);
        assertEquals(3600, result.after().volumeMm3().orElseThrow(), 1e-9);
        assertEquals(2 * 3600 + 240, result.after().areaMm2(), 1e-9);
    }

    @Test
    void aBentHoleIsLeftAndToldSo() {
        TriangleMesh ball = Shapes.ball(0, 0, 0, 100, 8, 8);
        // Without its two northern rings its border is flat, without one half of them it is not.
        boolean[] keep = new boolean[ball.triangleCount()];
        for (int t = 0; t < keep.length; t++) {
            double middle = 0;
            for (int k = 0; k < 3; k++) {
                int v = 3 * ball.corners()[3 * t + k];
                middle += (ball.xyz()[v + 2] + 0.4 * ball.xyz()[v]) / 3;
            }
            keep[t] = middle < 40;
        }
        RepairResult result = Repair.of(ball.only(keep), 400);
        assertEquals(List.of(), result.changes());
        assertEquals(Code.MESH_OPEN_LOOP, result.after().findings().get(0).code());
    }

    @Test
    void aNestedShellBecomesAHollow() {
        RepairResult result = Repair.of(mesh("nested-same-way"));
        assertEquals(8e6 - 380 * 180 * 80, result.after().volumeMm3().orElseThrow(), 1e-6);
        assertEquals(2, result.changes().get(0).values().get("shell"));
        assertEquals(1, result.changes().get(0).values().get("inside"));
        RepairResult turned = Repair.of(mesh("cavity").flipped());
        assertEquals(8e6 - 380 * 180 * 80, turned.after().volumeMm3().orElseThrow(), 1e-6);
        assertEquals(2, turned.changes().size());
    }

    @Test
    void aWallOfNoThicknessBetweenTwoBodiesGoes() {
        TriangleMesh bodies = Shapes.merged(Shapes.together(BOX, Solids.box(400, 0, 0, 500, 200, 100)));
        assertEquals(false, Soundness.of(bodies).sound());
        RepairResult result = Repair.of(bodies);
        assertTrue(result.after().sound(), result.after().findings()::toString);
        assertEquals(
                List.of(change(Code.REPAIR_DUPLICATES_DROPPED, "count", 4, "pairsOfNoThickness", 2)), plain(result));
        assertEquals(1e7, result.after().volumeMm3().orElseThrow(), 1e-6);
        assertEquals(2 * (500 * 200 + 200 * 100 + 100 * 500), result.after().areaMm2(), 1e-6);
    }

    @Test
    void aSheetWithBothItsSidesKeepsOne() {
        RepairResult result = Repair.of(Shapes.with(mesh("two-triangles"), 0, 2, 1, 0, 3, 2), 0);
        assertEquals(2, result.mesh().triangleCount());
        assertEquals(80_000, result.after().areaMm2(), 0);
    }

    @Test
    void whatCannotBeMendedIsLeftAndTold() {
        for (String name : List.of("crosses-itself", "overlapping-shells", "one-sided", "edge-of-many")) {
            RepairResult result = Repair.of(mesh(name));
            assertEquals(false, result.after().sound(), name);
            assertEquals(
                    Soundness.of(mesh(name)).findings().get(0).code(),
                    result.after().findings().get(0).code(),
                    name);
        }
    }

    @Test
    void anOpenSkinKeepsItsOutside() {
        TriangleMesh open = Shapes.without(BOX, 2, 3);
        for (int t = 0; t < 3; t++) {
            RepairResult result = Repair.of(Shapes.turned(open, t));
            assertArrayEquals(
                    open.corners(),
                    Shapes.turned(Shapes.turned(result.mesh(), t), t).corners());
            assertEquals(true, result.after().oriented());
        }
    }

    private static void quad(List<int[]> triangles, int a, int b, int c, int d) {
        triangles.add(new int[] {a, b, c});
        triangles.add(new int[] {a, c, d});
    }

    private static TriangleMesh mesh(String name) {
        return MeshFiles.read(BrokenMeshes.FOLDER.resolve(name + ".stl")).mesh();
    }

    private record Change(Code code, Map<String, Object> values) {}

    private static Change change(Code code, Object... values) {
        return new Change(code, Finding.of(code, new Place.Whole(), values).values());
    }

    private static List<Change> plain(RepairResult result) {
        return result.changes().stream()
                .map(f -> new Change(f.code(), f.values()))
                .toList();
    }
}
