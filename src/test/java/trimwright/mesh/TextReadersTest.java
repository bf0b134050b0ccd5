package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

class TextReadersTest {

    private static final TriangleMesh BOX = Solids.box(0, 0, 0, 40, 20, 10);

    @TempDir
    private Path directory;

    @Test
    void asciiStlMayUseCapitalsAnyBlanksAndSeveralSolids() throws IOException {
        String twice = Written.stlAscii(BOX).replace("\n", "\r\n\t")
                + Written.stlAscii(Shapes.moved(BOX, 100, 0, 0)).toUpperCase(Locale.ROOT);
        TriangleMesh mesh = read(twice).mesh();
        assertEquals(24, mesh.triangleCount());
        assertEquals(16000, mesh.signedVolume(), 1e-9);
    }

    @Test
    void rubbishInAsciiStlIsNamedWithItsLine() throws IOException {
        String[] lines = Written.stlAscii(BOX).split("\n", -1);
        lines[3] = "   vertex 0 zero 0";
        lines[9] = "  outer lop";
        lines[40] = "% a comment";
        List<Finding> findings = refusal(String.join("\n", lines));
        assertEquals(
                List.of(
                        finding(Code.MESH_TEXT_UNEXPECTED, 4, "found", "zero", "expected", "number"),
                        finding(Code.MESH_TEXT_UNEXPECTED, 10, "found", "lop", "expected", "loop"),
                        finding(Code.MESH_TEXT_UNEXPECTED, 41, "found", "%", "expected", "vertex")),
                findings);
    }

    /** Words that belong nowhere: before a solid, between two facets and between two solids; what follows is read on. */
    @Test
    void wordsBetweenThePartsOfAnAsciiStlAreNamed() throws IOException {
        String whole = Written.stlAscii(BOX);
        String torn = whole.replaceFirst("endfacet", "endfacet torn") + "more\n" + whole;
        assertEquals(
                List.of(
                        finding(Code.MESH_TEXT_UNEXPECTED, 8, "found", "torn", "expected", "facet"),
                        finding(Code.MESH_TEXT_UNEXPECTED, 87, "found", "more", "expected", "solid")),
                refusal(torn));
        // The line of the word solid is its name.
        assertEquals(
                List.of(
                        finding(Code.MESH_TEXT_UNEXPECTED, 88, "found", "lost", "expected", "solid"),
                        finding(Code.MESH_TEXT_UNEXPECTED, 90, "found", "face", "expected", "facet")),
                refusal(whole + "\nlost\nsolid a\nface normal 0 0 1\nendsolid").subList(0, 2));
    }

    /** The number of the triangle, counted from 0 as everywhere, stands beside a coordinate that cannot be used; the largest one can. */
    @Test
    void badCoordinatesOfAnAsciiStlComeWithTheirTriangle() throws IOException {
        String[] lines = Written.stlAscii(BOX).split("\n", -1);
        lines[1 + 7 * 5 + 3] = "vertex 1 2 inf";
        lines[1 + 7 * 9 + 4] = "vertex 1 -1.0000001e9 3";
        List<Finding> findings = refusal(String.join("\n", lines));
        assertEquals(
                List.of(
                        finding(Code.MESH_COORDINATE_NOT_FINITE, 40, "found", "inf", "triangle", 5L, "count", 1L),
                        finding(
                                Code.MESH_COORDINATE_TOO_LARGE,
                                69,
                                "found",
                                -1.0000001e9,
                                "allowed",
                                MeshFiles.LARGEST_COORDINATE,
                                "triangle",
                                9L,
                                "count",
                                1L)),
                findings);
        TriangleMesh mesh =
                read("v 1e9 -1e9 0\nv 1e9 1e9 0\nv 0 1e9 1e9\nf 1 2 3\n").mesh();
        assertEquals(1e9, mesh.bounds().maxX(), 0);
    }

    @Test
    void asciiStlThatEndsTooEarlyIsRefused() throws IOException {
        String whole = Written.stlAscii(BOX);
        List<Finding> findings = refusal(whole.substring(0, whole.indexOf("endloop") + 3));
        assertEquals(Code.MESH_TEXT_UNEXPECTED, findings.get(0).code());
        assertEquals(finding(Code.MESH_TEXT_ENDS_EARLY, 7, "expected", "endsolid"), findings.get(1));
        List<Finding> atFacet = refusal(whole.substring(0, whole.lastIndexOf("endsolid")));
        assertEquals(List.of(finding(Code.MESH_TEXT_ENDS_EARLY, 86, "expected", "endsolid")), atFacet);
    }

    @Test
    void ofManyMistakesTheFirstAreListedAndTheOthersCounted() throws IOException {
        String bad = Written.stlAscii(Shapes.ball(0, 0, 0, 5, 4, 9)).replace("outer loop", "outer lop");
        List<Finding> findings = refusal(bad);
        assertEquals(Problems.LISTED + 1, findings.size());
        assertEquals(
                Map.of("code", "MESH_TEXT_UNEXPECTED", "count", 54 - Problems.LISTED),
                findings.get(Problems.LISTED).values());
    }

    @Test
    void decimalCommasAreToldAsSuch() throws IOException {
        String commas = Written.stlAscii(Shapes.moved(BOX, 0.5, 0.5, 0.5)).replace('.', ',');
        List<Finding> findings = refusal(commas);
        assertEquals(
                List.of(finding(Code.MESH_DECIMAL_COMMA, 4, "found", "0,5", "expected", "0.5", "count", 108L)),
                findings);
        assertEquals(
                Code.MESH_DECIMAL_COMMA,
                refusal("v 0,5 0,5 1,0\nv 0 0 0\nv 1 0 0\nf 1 2 3\n").get(0).code());
    }

    @Test
    void numbersThatAreNoneAreToldInText() throws IOException {
        String bad =
                Written.stlAscii(BOX).replace("40.0 20.0", "-nan(ind) 1.#INF").replace(" 10.0", " 1e10");
        List<Finding> findings = refusal(bad);
        assertEquals(Code.MESH_COORDINATE_NOT_FINITE, findings.get(0).code());
        assertEquals("-nan(ind)", findings.get(0).values().get("found"));
        assertEquals(Code.MESH_COORDINATE_TOO_LARGE, findings.get(1).code());
        assertEquals(1e10, findings.get(1).values().get("found"));
    }

    @Test
    void objPolygonsTexturesNegativeNumbersAndJoinedLines() throws IOException {
        MeshFile file = read("""
                mtllib none.mtl
                v 0 0 0 1.0
                v 4 0 0
                v 4 3 0
                v 0 3 0 # a comment
                vt 0 0
                vn 0 0 1
                g deck
                f 1/1/1 2//1 \\
                  -2/1 4
                """);
        assertArrayEquals(new int[] {0, 1, 2, 0, 2, 3}, file.mesh().corners());
        assertEquals(12, file.mesh().area(), 0);
        assertEquals(List.of(), file.findings());
    }

    @Test
    void objFacesMayNameVerticesThatCome() throws IOException {
        assertEquals(6, read("f 1 2 3\nv 0 0 0\nv 4 0 0\nv 4 3 0\n").mesh().area(), 0);
    }

    @Test
    void aHollowPolygonKeepsItsArea() throws IOException {
        // An L of 3 squares: a fan about its first corner would reach outside.
        MeshFile file = read("v 2 1 0\nv 1 1 0\nv 1 2 0\nv 0 2 0\nv 0 0 0\nv 2 0 0\nf 1 2 3 4 5 6\n");
        assertEquals(4, file.mesh().triangleCount());
        assertEquals(3, file.mesh().area(), 1e-15);
    }

    @Test
    void bentPolygonsAreNoted() throws IOException {
        Finding note = read("v 0 0 0\nv 10 0 0\nv 10 10 0.4\nv 0 10 0\nf 1 2 3 4\n")
                .findings()
                .get(0);
        assertEquals(Code.MESH_POLYGONS_NOT_PLANAR, note.code());
        assertEquals(1L, note.values().get("count"));
        // The mean plane of a lifted corner leaves about a quarter of the lift on each side.
        assertEquals(0.1, (Double) note.values().get("largestGap"), 0.001);
        assertEquals(new Place.AtLine(file(), 5), note.place());
    }

    @Test
    void wrongObjLinesAreNamed() throws IOException {
        List<Finding> findings = refusal("v 0 0 0\nv 1 0\nv 1 1 x\nf 1 2 9\nf 1 2\nf 0 1 2\nf 1 -7 2\nface 1 2 3\n");
        assertEquals(
                List.of(
                        finding(Code.MESH_TEXT_ENDS_EARLY, 2, "expected", "number"),
                        finding(Code.MESH_TEXT_UNEXPECTED, 3, "found", "x", "expected", "number"),
                        finding(Code.MESH_TEXT_ENDS_EARLY, 5, "expected", "vertex number"),
                        finding(Code.MESH_TEXT_UNEXPECTED, 6, "found", "0", "expected", "vertex number"),
                        finding(Code.MESH_VERTEX_MISSING, 7, "found", -7L, "vertices", 3),
                        finding(Code.MESH_TEXT_UNEXPECTED, 8, "found", "face", "expected", "v, f, #"),
                        finding(Code.MESH_VERTEX_MISSING, 4, "found", 9L, "vertices", 3)),
                findings);
    }

    @Test
    void pointsAndLinesAreLeftOutAndToldSo() throws IOException {
        Finding finding = read("v 0 0 0\nv 4 0 0\nv 4 3 0\nf 1 2 3\nl 1 2\np 1\n")
                .findings()
                .get(0);
        assertEquals(finding(Code.MESH_ELEMENTS_LEFT_OUT, 5, "keyword", "l", "count", 2L), finding);
    }

    @Test
    void wordsMayStraddleTheBuffer() throws IOException {
        // Some 600 kB: several fills, whose borders fall anywhere in words and line ends.
        TriangleMesh ball = Shapes.ball(0, 0, 0, 100.0 / 3, 70, 90);
        String text = Written.obj(ball).replace("\n", "\r\n");
        assertTrue(text.length() > 3 * (1 << 17));
        TriangleMesh read = read(text).mesh();
        assertEquals(ball.triangleCount(), read.triangleCount());
        assertEquals(ball.signedVolume(), read.signedVolume(), 1e-9);
    }

    private String file() {
        return directory.resolve("a").toString();
    }

    private Finding finding(Code code, long line, Object... values) {
        return Finding.of(code, new Place.AtLine(file(), line), values);
    }

    private MeshFile read(String text) throws IOException {
        return MeshFiles.read(Files.writeString(directory.resolve("a"), text));
    }

    private List<Finding> refusal(String text) throws IOException {
        Path path = Files.writeString(directory.resolve("a"), text);
        return assertThrows(UnusableInputException.class, () -> MeshFiles.read(path))
                .findings();
    }
}
