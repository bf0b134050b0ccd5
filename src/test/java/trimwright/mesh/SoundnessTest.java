package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

class SoundnessTest {

    private static final TriangleMesh BOX = BrokenMeshes.BOX;
    private static final double BOX_AREA = 2 * (400 * 200 + 200 * 100 + 100 * 400);

    @Test
    void aSoundBoxHasItsMeasures() {
        Soundness box = Soundness.of(BOX);
        assertTrue(box.sound());
        assertEquals(List.of(), box.findings());
        assertEquals(12, box.triangles());
        assertEquals(8, box.vertices());
        assertEquals(BOX_AREA, box.areaMm2(), 0);
        assertEquals(8e6, box.volumeMm3().orElseThrow(), 0);
        assertEquals(
                List.of(new Shell(1, 12, BOX_AREA, 8e6, BOX.bounds(), true, true, new Vector3D(200, 100, 50), 0)),
                box.shells());
        assertEquals(Optional.of(new Soundness.CrossingSearch(66, 66)), box.crossings());
    }

    @Test
    void aHoleIsToldWithItsBorder() {
        Soundness open = Soundness.of(mesh("open-edge"));
        assertEquals(false, open.closed());
        assertEquals(true, open.oriented());
        assertEquals(Optional.empty(), open.volumeMm3());
        // Triangle 3 of the box is 5, 7, 6: half the top. The lowest open half-edge is that of triangle 2 on the
        // diagonal.
        double diagonal = Math.hypot(400, 200);
        assertEquals(
                List.of(Finding.of(
                        Code.MESH_OPEN_LOOP,
                        new Place.AtEdge(400, 0, 100, 0, 200, 100),
                        "index",
                        1,
                        "total",
                        1,
                        "edges",
                        3,
                        "lengthMm",
                        600 + diagonal,
                        "ring",
                        true,
                        "edgesInAll",
                        3,
                        "lengthInAllMm",
                        600 + diagonal)),
                open.findings());
    }

    @Test
    void borderLoopsAreListedLongestFirst() {
        Soundness open = Soundness.of(Shapes.without(BOX, 0, 2, 3));
        assertEquals(List.of(4, 3), values(open, "edges"));
        assertEquals(List.of(7, 7), values(open, "edgesInAll"));
    }

    @Test
    void loopsThatTouchInAVertexAreToldApart() {
        // A fan of eight triangles about a vertex, of which two that face each other are missing: one border of eight
        // edges
        // round, and the holes reach it in the middle only.
        double[] xyz = new double[27];
        int[] corners = new int[24];
        for (int i = 0; i < 8; i++) {
            xyz[3 * i + 3] = 100 * Math.cos(Math.PI / 4 * i);
            xyz[3 * i + 4] = 100 * Math.sin(Math.PI / 4 * i);
            System.arraycopy(new int[] {0, 1 + i, 1 + (i + 1) % 8}, 0, corners, 3 * i, 3);
        }
        Soundness fan = Soundness.of(Shapes.without(TriangleMesh.owning(xyz, corners), 0, 4));
        assertEquals(List.of(5, 5), values(fan, "edges").subList(0, 2));
        assertEquals(List.of(true, true), values(fan, "ring").subList(0, 2));
    }

    @Test
    void aFlippedTriangleIsFound() {
        Soundness flipped = Soundness.of(mesh("flipped-triangle"));
        assertEquals(true, flipped.closed());
        assertEquals(false, flipped.oriented());
        Place.AtTriangle place = (Place.AtTriangle) flipped.findings().get(0).place();
        assertEquals(5, place.triangle());
        assertEquals(
                Map.of("index", 1, "total", 1, "shell", 1),
                flipped.findings().get(0).values());
    }

    @Test
    void ofTheFlippedAndTheOthersTheFewerAreTold() {
        TriangleMesh mesh = BOX;
        for (int t = 0; t < 12; t++) {
            mesh = t == 4 || t == 9 ? mesh : Shapes.turned(mesh, t);
        }
        List<Long> told = Soundness.of(mesh).findings().stream()
                .map(f -> ((Place.AtTriangle) f.place()).triangle())
                .toList();
        assertEquals(List.of(4L, 9L), told);
    }

    @Test
    void duplicatesAreFoundEitherWayAndDoNotHideBehindOthers() {
        Soundness same = Soundness.of(mesh("duplicate-triangle"));
        assertEquals(false, same.closed());
        assertEquals(
                Map.of("index", 1, "total", 1, "original", 0, "sameWay", true, "sameWayTotal", 1),
                same.findings().get(0).values());
        assertEquals(12, ((Place.AtTriangle) same.findings().get(0).place()).triangle());
        assertEquals(1, same.shells().size());
        assertEquals(13, same.shells().get(0).triangles());
        Soundness other = Soundness.of(Shapes.with(BOX, 0, 1, 2));
        assertEquals(false, other.findings().get(0).values().get("sameWay"));
        assertEquals(false, other.sound());
    }

    @Test
    void aSheetWithBothItsSidesIsNotClosed() {
        TriangleMesh sheet = mesh("two-triangles");
        Soundness both = Soundness.of(Shapes.with(sheet, 0, 2, 1, 0, 3, 2));
        assertEquals(false, both.closed());
        assertEquals(
                List.of(Code.MESH_OPEN_LOOP, Code.MESH_TRIANGLE_DUPLICATE, Code.MESH_TRIANGLE_DUPLICATE), codes(both));
    }

    @Test
    void degenerateTrianglesAreNotedAndDoNoHarm() {
        Soundness degenerate = Soundness.of(mesh("degenerate-triangles"));
        assertTrue(degenerate.sound());
        assertEquals(14, ((Place.AtTriangle) degenerate.findings().get(0).place()).triangle());
        assertEquals(13, ((Place.AtTriangle) degenerate.findings().get(1).place()).triangle());
        assertEquals(0, degenerate.shellOf(14));
        assertEquals(8e6, degenerate.volumeMm3().orElseThrow(), 1e-6);
    }

    @Test
    void insideOutIsToldWithItsVolumeAndNeverTurnedSilently() {
        Soundness turned = Soundness.of(mesh("inside-out"));
        assertEquals(-8e6, turned.volumeMm3().orElseThrow(), 0);
        assertEquals(
                Finding.of(
                        Code.MESH_INSIDE_OUT,
                        new Place.OnShell(1),
                        "index",
                        1,
                        "total",
                        1,
                        "shell",
                        1,
                        "volumeMm3",
                        -8e6),
                turned.findings().get(0));
        assertEquals(turned.findings(), Soundness.quick(mesh("inside-out")).findings());
    }

    @Test
    void nestedShellsAreHollowsOrCountTwice() {
        double inner = 380 * 180 * 80;
        Finding cavity = Soundness.of(mesh("cavity")).findings().get(1);
        assertEquals(Code.MESH_CAVITY, cavity.code());
        assertEquals(Map.of("index", 1, "total", 1, "shell", 2, "inside", 1, "volumeMm3", inner), cavity.values());
        Finding twice = Soundness.of(mesh("nested-same-way")).findings().get(1);
        assertEquals(Code.MESH_COUNTED_TWICE, twice.code());
        assertEquals(inner, twice.values().get("volumeMm3"));
    }

    @Test
    void anIslandInAHollowIsSound() {
        TriangleMesh mesh = Shapes.together(
                BOX, Solids.box(10, 10, 10, 390, 190, 90).flipped(), Solids.box(50, 50, 30, 350, 150, 70));
        Soundness nested = Soundness.of(mesh);
        assertTrue(nested.sound(), nested.findings()::toString);
        assertEquals(List.of(Code.MESH_SEVERAL_SHELLS, Code.MESH_CAVITY, Code.MESH_CAVITY), codes(nested));
        assertEquals(2, nested.findings().get(2).values().get("inside"));
    }

    @Test
    void overlappingShellsAreFoundEvenWhenTheirWallsLieInOnePlane() {
        Finding crossing = Soundness.of(mesh("overlapping-shells")).findings().get(1);
        assertEquals(1, crossing.values().get("shell"));
        assertEquals(2, crossing.values().get("other"));
        assertTrue((Long) crossing.values().get("crossings") > 0);
        Finding flush =
                Soundness.of(mesh("overlapping-flush-shells")).findings().get(1);
        assertEquals(0L, flush.values().get("crossings"));
    }

    @Test
    void shellsThatOnlyTouchDoNotOverlap() {
        TriangleMesh beside =
                Shapes.together(BOX, Solids.box(400, 50, 20, 500, 150, 80), Solids.box(0, 0, 100, 50, 50, 150));
        Soundness touching = Soundness.of(beside);
        assertTrue(touching.sound(), touching.findings()::toString);
    }

    @Test
    void aShellThatCrossesItselfIsFound() {
        Soundness crossing = Soundness.of(mesh("crosses-itself"));
        assertEquals(false, crossing.sound());
        assertEquals(Code.MESH_CROSSES_ITSELF, crossing.findings().get(0).code());
        int triangle = (Integer) crossing.findings().get(0).values().get("triangle");
        int other = (Integer) crossing.findings().get(0).values().get("other");
        // The bottom, triangles 0 and 1, is pierced by one of those at the corner that was pushed through it.
        assertTrue(triangle <= 1 && other > 1, triangle + " and " + other);
    }

    @Test
    void edgesOfManyTrianglesPartTheShells() {
        Soundness touching = Soundness.of(mesh("edge-of-many"));
        assertEquals(true, touching.closed());
        assertEquals(true, touching.oriented());
        assertEquals(false, touching.sound());
        assertEquals(2, touching.shells().size());
        assertTrue(touching.shells().stream().allMatch(shell -> shell.closed() && shell.oriented()));
        assertEquals(4, touching.findings().get(0).values().get("triangles"));
    }

    @Test
    void aOneSidedSurfaceIsTold() {
        Soundness ribbon = Soundness.of(mesh("one-sided"));
        assertEquals(false, ribbon.oriented());
        assertEquals(List.of(Code.MESH_OPEN_LOOP, Code.MESH_ONE_SIDED), codes(ribbon));
    }

    @Test
    void shellsAreNumberedByFallingAreaThenByFirstTriangle() {
        TriangleMesh small = Solids.box(0, 0, 0, 10, 10, 10);
        TriangleMesh mesh = Shapes.together(small, Shapes.moved(small, 100, 0, 0), Shapes.moved(BOX, 0, 300, 0));
        Soundness soundness = Soundness.of(mesh);
        assertEquals(
                List.of(24, 0, 12),
                soundness.shells().stream().map(Shell::firstTriangle).toList());
        assertEquals(2, soundness.shellOf(0));
        assertEquals(3, soundness.shellOf(12));
        assertEquals(1, soundness.shellOf(35));
    }

    @Test
    void pickedShellsAreThoseOfTheirNumbers() {
        TriangleMesh mesh = Shapes.together(Solids.box(0, 300, 0, 10, 310, 10), BOX);
        assertEquals(8e6, Shells.pick(mesh, List.of(1)).signedVolume(), 0);
        assertEquals(1000, Shells.pick(mesh, List.of(2)).signedVolume(), 1e-9);
        assertEquals(24, Shells.pick(mesh, List.of(2, 1)).triangleCount());
        assertEquals(mesh, Shells.pick(mesh, List.of()));
        List<Finding> findings = assertThrows(UnusableInputException.class, () -> Shells.pick(mesh, List.of(0, 2, 3)))
                .findings();
        assertEquals(
                List.of(
                        Finding.of(Code.MESH_SHELL_MISSING, new Place.OnShell(0), "found", 0, "shells", 2),
                        Finding.of(Code.MESH_SHELL_MISSING, new Place.OnShell(3), "found", 3, "shells", 2)),
                findings);
    }

    @Test
    void theUnitIsGuessedFromAnImplausibleSize() {
        Finding metres = Soundness.of(Shapes.scaled(BOX, 1.1 / 400)).findings().get(0);
        assertEquals(1.1, (Double) metres.values().get("longestMm"), 1e-12);
        assertEquals(List.of("m"), metres.values().get("units"));
        assertEquals(1100, (Double) ((List<?>) metres.values().get("lengthsMm")).get(0), 1e-9);
        Finding inches = Soundness.of(Shapes.scaled(BOX, 43.3 / 400)).findings().get(0);
        assertEquals(List.of("cm", "in"), inches.values().get("units"));
        Finding fullSize =
                Soundness.of(Shapes.scaled(BOX, 67000 / 400.0)).findings().get(0);
        assertEquals(List.of(), fullSize.values().get("units"));
    }

    @Test
    void aFlattenedShellEnclosesNothing() {
        double[] flat = BOX.xyz().clone();
        for (int i = 2; i < flat.length; i += 3) {
            flat[i] *= 1e-12;
        }
        assertTrue(codes(Soundness.of(TriangleMesh.owning(flat, BOX.corners().clone())))
                .contains(Code.MESH_SHELL_FLAT));
    }

    @Test
    void theFirstPlacesAreListedAndAllCounted() {
        TriangleMesh ball = Shapes.ball(0, 0, 0, 100, 20, 40);
        int[] away = new int[30];
        for (int i = 0; i < away.length; i++) {
            away[i] = 40 * i + 5;
        }
        Soundness holes = Soundness.of(Shapes.without(ball, away));
        assertEquals(SoundnessCheck.LISTED, holes.findings().size());
        assertEquals(30, holes.findings().get(0).values().get("total"));
    }

    @Test
    void aLargeSoundMeshIsSearchedToTheLastPair() {
        Soundness large = Soundness.of(TestMeshes.bigEllipsoid(500, 100, 100, 1000, 500));
        assertTrue(large.crossings().orElseThrow().complete());
    }

    @Test
    void aSearchWithALimitSaysHowFarItWent() {
        TriangleMesh ball = Shapes.ball(0, 0, 0, 100, 20, 40);
        Soundness whole = Soundness.of(ball);
        assertTrue(whole.crossings().orElseThrow().complete());
        Soundness part = new ThoroughCheck(ball, Soundness.quick(ball))
                .run(whole.crossings().orElseThrow().pairs() / 5);
        Finding note = part.findings().get(0);
        assertEquals(Code.MESH_CROSSINGS_SAMPLED, note.code());
        long tested = (Long) note.values().get("pairsTested");
        long pairs = (Long) note.values().get("pairs");
        assertTrue(tested > pairs / 10 && tested < pairs / 2, tested + " of " + pairs);
        assertTrue(part.sound());
    }

    @Test
    void aMillionShellsAreCheckedToo() {
        int shells = 1_000_000;
        double[] xyz = new double[12 * shells];
        int[] corners = new int[12 * shells];
        int[] tetrahedron = {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3};
        for (int i = 0; i < shells; i++) {
            double x = i % 100;
            double y = i / 100 % 100;
            double z = i / 10_000;
            double[] points = {x, y, z, x + 0.5, y, z, x, y + 0.5, z, x, y, z + 0.5};
            System.arraycopy(points, 0, xyz, 12 * i, 12);
            for (int k = 0; k < 12; k++) {
                corners[12 * i + k] = 4 * i + tetrahedron[k];
            }
        }
        Soundness many = Soundness.of(TriangleMesh.owning(xyz, corners));
        assertTrue(many.sound(), many.findings()::toString);
        assertEquals(shells, many.shells().size());
        assertEquals(0.125 / 6, many.shells().get(777_777).volumeMm3(), 1e-12);
        assertEquals(777_777 * 4, many.shells().get(777_777).firstTriangle());
    }

    @Test
    void allOfAHugeFanMeetsAtOneEdgeWithoutHarm() {
        int blades = 200_000;
        double[] xyz = new double[3 * (blades + 2)];
        int[] corners = new int[3 * blades];
        xyz[5] = 100;
        for (int i = 0; i < blades; i++) {
            xyz[3 * i + 6] = 100 * Math.cos(2 * Math.PI * i / blades);
            xyz[3 * i + 7] = 100 * Math.sin(2 * Math.PI * i / blades);
            System.arraycopy(new int[] {0, 1, i + 2}, 0, corners, 3 * i, 3);
        }
        Soundness fan = Soundness.quick(TriangleMesh.owning(xyz, corners));
        assertEquals(blades, fan.shells().size());
        assertTrue(codes(fan).contains(Code.MESH_EDGE_OF_MANY));
    }

    private static TriangleMesh mesh(String name) {
        return MeshFiles.read(BrokenMeshes.FOLDER.resolve(name + ".stl")).mesh();
    }

    private static List<Code> codes(Soundness soundness) {
        return soundness.findings().stream().map(Finding::code).toList();
    }

    private static List<Object> values(Soundness soundness, String name) {
        List<Object> values = new ArrayList<>();
        soundness.findings().forEach(finding -> values.add(finding.values().get(name)));
        return values;
    }
}
