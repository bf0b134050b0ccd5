package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;

/** Small files that ask for much: each is read in a moment or refused, whatever it would come to. The further limits are tested with their readers. */
class MeshLimitsTest {

    private static final TriangleMesh BOX = Solids.box(0, 0, 0, 3, 2, 1);
    private static final String BOX_OBJECT = "<object id=\"1\">" + Written.meshElement(BOX) + "</object>\n";

    @TempDir
    Path folder;

    private MeshFile read(byte[] bytes) throws IOException {
        return MeshFiles.read(Files.write(folder.resolve("any"), bytes));
    }

    private Finding refusal(byte[] bytes) {
        return assertThrows(UnusableInputException.class, () -> read(bytes))
                .findings()
                .get(0);
    }

    private static byte[] doubled(String objects, int times) {
        StringBuilder all = new StringBuilder(objects);
        for (int i = 100; i < 100 + times; i++) {
            String twice = "<component objectid=\"%d\"/>"
                    .formatted(i == 100 ? 2 : i - 1)
                    .repeat(2);
            all.append("<object id=\"%d\"><components>%s</components></object>\n".formatted(i, twice));
        }
        return Written.threeMf("", all.toString(), "<item objectid=\"%d\"/>".formatted(99 + times));
    }

    /** Two million of them, out of twenty lines. */
    @Test
    void objectsPutIntoPlaceWithoutEndAreRefused() {
        String one =
                "<object id=\"2\"><mesh><vertices><vertex x=\"0\" y=\"0\" z=\"0\"/><vertex x=\"1\" y=\"0\" z=\"0\"/>"
                        + "<vertex x=\"0\" y=\"1\" z=\"0\"/></vertices><triangles><triangle v1=\"0\" v2=\"1\" v3=\"2\"/></triangles></mesh></object>";
        Finding finding = refusal(doubled(one, 21));
        assertEquals(Code.MESH_3MF_TOO_MANY_PLACED, finding.code());
        assertTrue((long) finding.values().get("found") > 1_000_000);
    }

    @Test
    void supportsCountAmongTheObjectsPutIntoPlace() {
        String supports =
                "<object id=\"1\" type=\"support\"/><object id=\"2\"><mesh><vertices><vertex x=\"0\" y=\"0\" z=\"0\"/>"
                        + "<vertex x=\"1\" y=\"0\" z=\"0\"/><vertex x=\"0\" y=\"1\" z=\"0\"/></vertices><triangles>"
                        + "<triangle v1=\"0\" v2=\"1\" v3=\"2\"/></triangles></mesh><components>"
                        + "<component objectid=\"1\"/>".repeat(1000) + "</components></object>";
        assertEquals(
                Code.MESH_3MF_TOO_MANY_PLACED, refusal(doubled(supports, 10)).code());
    }

    /** 100 000 vertices of which the one triangle uses three, put into place 4096 times: 400 million, were they copied. */
    @Test
    void verticesThatNoTriangleUsesAreNotCopied() throws IOException {
        String object = "<object id=\"2\"><mesh><vertices>" + "<vertex x=\"7\" y=\"0\" z=\"0\"/>".repeat(100_000)
                + "<vertex x=\"0\" y=\"0\" z=\"0\"/><vertex x=\"1\" y=\"0\" z=\"0\"/><vertex x=\"0\" y=\"1\" z=\"0\"/></vertices>"
                + "<triangles><triangle v1=\"100000\" v2=\"100001\" v3=\"100002\"/></triangles></mesh></object>";
        TriangleMesh mesh = read(doubled(object, 12)).mesh();
        assertEquals(4096, mesh.triangleCount());
        assertEquals(3, mesh.vertexCount());
    }

    @Test
    void objectsWithoutAnythingTakeNoRoom() throws IOException {
        StringBuilder objects = new StringBuilder(BOX_OBJECT);
        for (int i = 2; i < 200_000; i++) {
            objects.append("<object id=\"").append(i).append("\"/>");
        }
        MeshFile read = read(Written.threeMf("", objects.toString(), "<item objectid=\"1\"/>"));
        assertEquals(12, read.mesh().triangleCount());
    }

    @Test
    void elementsWithinElementsWithoutEndAreRefused() {
        Finding finding = refusal(Written.threeMf("", BOX_OBJECT + "<a>".repeat(5000), ""));
        assertEquals(Code.MESH_3MF_XML_BROKEN, finding.code());
        assertTrue(String.valueOf(finding.values().get("reason")).contains("deeper than 100"), finding::toString);
    }

    /** A package names parts of itself; a name that leads out of it is just one that it does not have. */
    @Test
    void aPackageReadsNothingOutsideItself() throws IOException {
        Files.writeString(folder.resolve("secret.model"), Written.model("", BOX_OBJECT, "<item objectid=\"1\"/>"));
        for (String way : List.of(
                "/../secret.model",
                "../secret.model",
                folder.resolve("secret.model").toString())) {
            byte[] bytes = Written.zip(Map.of("_rels/.rels", Written.rels().replace("/3D/3dmodel.model", way)));
            assertEquals(Code.MESH_3MF_NO_MODEL, refusal(bytes).code(), way);
        }
    }

    @Test
    void aPolygonOfTooManyCornersIsRefused() {
        StringBuilder obj = new StringBuilder();
        StringBuilder face = new StringBuilder("f");
        for (int i = 1; i <= ObjReader.MOST_CORNERS + 1; i++) {
            double angle = 2 * Math.PI * i / (ObjReader.MOST_CORNERS + 1);
            obj.append("v ")
                    .append(Math.cos(angle))
                    .append(' ')
                    .append(Math.sin(angle))
                    .append(" 0\n");
            face.append(' ').append(i);
        }
        Finding finding = refusal(obj.append(face).append('\n').toString().getBytes(StandardCharsets.US_ASCII));
        assertEquals(Code.MESH_POLYGON_TOO_MANY_CORNERS, finding.code());
        assertEquals(ObjReader.MOST_CORNERS + 1, finding.values().get("found"));
    }

    /** Area by the trapezium rule; every triangle must be wound like the outline, or two would overlap. */
    @ParameterizedTest
    @ValueSource(strings = {"comb", "star", "spiral", "slit"})
    void theHardestOutlinesAreCutIntoTrianglesThatFillThem(String kind) {
        double[] flat = outline(kind, kind.equals("slit") ? 1 : 2000);
        int size = flat.length / 2;
        double[] xyz = new double[3 * size];
        int[] ring = new int[size];
        double area = 0;
        for (int i = 0; i < size; i++) {
            ring[i] = i;
            xyz[3 * i] = flat[2 * i];
            xyz[3 * i + 1] = flat[2 * i + 1];
            int k = (i + 1) % size;
            area += 0.5 * (flat[2 * i] * flat[2 * k + 1] - flat[2 * k] * flat[2 * i + 1]);
        }
        IntList corners = new IntList(16);
        assertTrue(Polygons.triangulate(xyz, ring, size, corners), "taken for one that crosses itself");
        assertEquals(3 * (size - 2), corners.size());
        double sum = 0;
        for (int t = 0; t < corners.size(); t += 3) {
            double twice = Polygons.turn(flat, corners.get(t), corners.get(t + 1), corners.get(t + 2));
            assertTrue(twice >= 0, "turned over");
            sum += 0.5 * twice;
        }
        assertEquals(area, sum, 1e-9 * area);
    }

    private static double[] outline(String kind, int n) {
        return switch (kind) {
            case "comb" -> {
                double[] p = new double[2 * (2 * n + 2)];
                for (int i = 0; i < 2 * n; i++) {
                    p[2 * i] = 2 * n - i;
                    p[2 * i + 1] = i % 2 == 0 ? 10 : 1 + 0.001 * (i % 7);
                }
                p[4 * n] = 0;
                p[4 * n + 2] = 2 * n;
                yield p;
            }
            case "star" -> {
                double[] p = new double[4 * n];
                for (int i = 0; i < 2 * n; i++) {
                    double r = i % 2 == 0 ? 10 : 3;
                    p[2 * i] = r * Math.cos(Math.PI * i / n);
                    p[2 * i + 1] = r * Math.sin(Math.PI * i / n);
                }
                yield p;
            }
            case "spiral" -> {
                double[] p = new double[4 * n];
                for (int i = 0; i < n; i++) {
                    double angle = 40 * Math.PI * i / n;
                    for (int side = 0; side < 2; side++) {
                        double r = 1 + angle + 2 * side;
                        int at = side == 1 ? i : 2 * n - 1 - i;
                        p[2 * at] = r * Math.cos(angle);
                        p[2 * at + 1] = r * Math.sin(angle);
                    }
                }
                yield p;
            }
            // A square with a square hole, joined by a slit of no width.
            default -> new double[] {0, 0, 9, 0, 9, 9, 0, 9, 0, 0, 3, 3, 3, 6, 6, 6, 6, 3, 3, 3};
        };
    }

    /** Two bow ties, of which the second has as much area one way as the other, and a star drawn in one stroke. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "v 0 0 0\nv 4 0 0\nv 0 4 0\nv 3 5 0\nf 1 2 3 4\n",
                "v 0 0 0\nv 4 0 0\nv 0 4 0\nv 4 4 0\nf 1 2 3 4\n",
                "v 0 3 0\nv -2 -3 0\nv 3 1 0\nv -3 1 0\nv 2 -3 0\nf 1 2 3 4 5\n"
            })
    void aPolygonThatCrossesItselfIsTold(String obj) throws IOException {
        MeshFile read = read(obj.getBytes(StandardCharsets.US_ASCII));
        assertTrue(read.findings().stream().anyMatch(f -> f.code() == Code.MESH_POLYGONS_CROSSED), read::toString);
    }

    /** 20 000 shells, each in a box of its own: none lies in another, and all are counted. */
    @Test
    void thousandsOfShellsAreLookedThrough() {
        int count = 20_000;
        double[] xyz = new double[3 * 8 * count];
        int[] corners = new int[36 * count];
        TriangleMesh one = Solids.box(0, 0, 0, 1, 1, 1);
        for (int i = 0; i < count; i++) {
            for (int v = 0; v < 24; v++) {
                int[] cell = {i % 30, i / 30 % 30, i / 900};
                xyz[24 * i + v] = one.xyz()[v] + 2 * cell[v % 3];
            }
            for (int k = 0; k < 36; k++) {
                corners[36 * i + k] = one.corners()[k] + 8 * i;
            }
        }
        Soundness soundness = Soundness.of(TriangleMesh.owning(xyz, corners));
        assertEquals(count, soundness.shells().size());
        assertTrue(soundness.closed());
        assertTrue(soundness.findings().stream().noneMatch(f -> f.code() == Code.MESH_COUNTED_TWICE));
    }
}
