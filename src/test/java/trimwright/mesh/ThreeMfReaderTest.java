package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

class ThreeMfReaderTest {

    private static final TriangleMesh BOX = Solids.box(0, 0, 0, 4, 2, 1);
    private static final String BOX_OBJECT =
            "<object id=\"1\" type=\"model\">" + Written.meshElement(BOX) + "</object>\n";
    private static final String ITEM = "<item objectid=\"1\"/>\n";

    @TempDir
    private Path directory;

    @Test
    void componentsAndItemsArePlacedAndMirroredOnesKeepTheirOutside() throws IOException {
        String resources = BOX_OBJECT
                + "<object id=\"2\"><components><component objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 10 0 0\"/>"
                + "<component objectid=\"1\" transform=\"-1 0 0 0 1 0 0 0 1 -10 0 0\"/></components></object>\n";
        String build = "<item objectid=\"2\" transform=\"0 1 0 -1 0 0 0 0 2 0 0 100\"/>\n";
        MeshFile file = read(Written.threeMf("unit=\"inch\"", resources, build));
        assertEquals(Optional.of(LengthUnit.INCH), file.unit());
        assertEquals(24, file.mesh().triangleCount());
        // Two boxes of 8, each twice as high.
        assertEquals(32, file.mesh().signedVolume(), 1e-12);
        assertEquals(new Bounds(-2, -14, 100, 0, 14, 102), file.mesh().bounds());
    }

    @Test
    void unitsThatWeDoNotHaveAreConvertedAndToldSo() throws IOException {
        MeshFile feet = read(Written.threeMf("unit=\"foot\"", BOX_OBJECT, ITEM));
        assertEquals(Optional.of(LengthUnit.INCH), feet.unit());
        assertEquals(48, feet.mesh().bounds().sizeX(), 0);
        assertEquals(
                Map.of("found", "foot", "unit", "in"), feet.findings().get(0).values());
        MeshFile microns = read(Written.threeMf("unit=\"micron\"", BOX_OBJECT, ITEM));
        assertEquals(0.004, microns.mesh().bounds().sizeX(), 1e-18);
    }

    @Test
    void objectsMayStandInFurtherModelParts() throws IOException {
        Map<String, String> parts = new HashMap<>();
        parts.put("_rels/.rels", Written.rels());
        parts.put("3D/more.model", Written.model("unit=\"centimeter\"", BOX_OBJECT, ""));
        String production = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";
        parts.put(
                "3D/3dmodel.model",
                Written.model(
                        "unit=\"millimeter\" requiredextensions=\"p\" xmlns:p=\"" + production + "\"",
                        "",
                        "<item objectid=\"1\" p:path=\"/3D/more.model\" transform=\"1 0 0 0 1 0 0 0 1 5 0 0\"/>"));
        TriangleMesh mesh = read(Written.zip(parts)).mesh();
        assertEquals(new Bounds(5, 0, 0, 45, 20, 10), mesh.bounds());
    }

    @Test
    void supportsAreLeftOutAndToldSo() throws IOException {
        String support =
                "<object id=\"7\" type=\"support\">" + Written.meshElement(Shapes.moved(BOX, 9, 9, 9)) + "</object>\n";
        MeshFile file = read(Written.threeMf("", BOX_OBJECT + support, ITEM + "<item objectid=\"7\"/>"));
        assertEquals(12, file.mesh().triangleCount());
        assertEquals(Code.MESH_3MF_SUPPORTS_LEFT_OUT, file.findings().get(0).code());
    }

    @Test
    void mistakesAreToldWithTheirLine() throws IOException {
        String bad =
                "<object id=\"1\">\n<mesh><vertices>\n<vertex x=\"0\" y=\"0\"/>\n<vertex x=\"1\" y=\"0\" z=\"zero\"/>\n"
                        + "<vertex x=\"1,5\" y=\"NaN\" z=\"2e9\"/>\n</vertices><triangles>\n<triangle v1=\"0\" v2=\"1\" v3=\"7\"/>\n"
                        + "</triangles></mesh></object>\n";
        List<Finding> findings = refusal(Written.threeMf("unit=\"furlong\"", bad, ITEM));
        String part = file() + "!/3D/3dmodel.model";
        assertEquals(
                List.of(
                        new Place.AtLine(part, 2),
                        new Place.AtLine(part, 6),
                        new Place.AtLine(part, 7),
                        new Place.AtLine(part, 10),
                        new Place.AtLine(part, 8),
                        new Place.AtLine(part, 8),
                        new Place.AtLine(part, 8)),
                findings.stream().map(Finding::place).toList());
        assertEquals(
                List.of(
                        Code.MESH_3MF_ATTRIBUTE,
                        Code.MESH_3MF_ATTRIBUTE,
                        Code.MESH_3MF_ATTRIBUTE,
                        Code.MESH_VERTEX_MISSING,
                        Code.MESH_COORDINATE_NOT_FINITE,
                        Code.MESH_COORDINATE_TOO_LARGE,
                        Code.MESH_DECIMAL_COMMA),
                findings.stream().map(Finding::code).toList());
        assertEquals("zero", findings.get(2).values().get("found"));
    }

    @Test
    void objectsThatAreMissingOrContainThemselvesAreRefused() throws IOException {
        String loop = "<object id=\"1\"><components><component objectid=\"2\"/></components></object>\n"
                + "<object id=\"2\"><components><component objectid=\"1\"/><component objectid=\"3\"/></components></object>\n";
        List<Code> codes = refusal(Written.threeMf("", loop, ITEM)).stream()
                .map(Finding::code)
                .toList();
        assertTrue(
                codes.containsAll(List.of(Code.MESH_3MF_OBJECT_IN_ITSELF, Code.MESH_3MF_OBJECT_MISSING)),
                codes::toString);
        StringBuilder deep = new StringBuilder(BOX_OBJECT);
        for (int i = 2; i < 5000; i++) {
            deep.append("<object id=\"%d\"><components><component objectid=\"%d\"/></components></object>\n"
                    .formatted(i, i - 1));
        }
        assertEquals(
                Code.MESH_3MF_NESTED_TOO_DEEP,
                refusal(Written.threeMf("", deep.toString(), "<item objectid=\"4999\"/>"))
                        .get(0)
                        .code());
    }

    @Test
    void componentsThatDoubleWithoutEndAreRefused() throws IOException {
        StringBuilder objects = new StringBuilder(BOX_OBJECT);
        for (int i = 2; i < 60; i++) {
            String twice = "<component objectid=\"%d\"/>".formatted(i - 1).repeat(2);
            objects.append("<object id=\"%d\"><components>%s</components></object>\n".formatted(i, twice));
        }
        byte[] bytes = Written.threeMf("", objects.toString(), "<item objectid=\"59\"/>");
        assertEquals(Code.MESH_TOO_MANY_TRIANGLES, refusal(bytes).get(0).code());
    }

    @Test
    void aDocumentTypeIsRefusedAndNoOutsideFileIsRead() throws IOException {
        String secret =
                Files.writeString(directory.resolve("secret"), "9").toUri().toString();
        String model = Written.model("", BOX_OBJECT.replace("x=\"0.0\"", "x=\"&s;\""), ITEM)
                .replace("?>\n", "?>\n<!DOCTYPE model [<!ENTITY s SYSTEM \"" + secret + "\">]>\n");
        List<Finding> findings = refusal(Written.zip(Map.of("_rels/.rels", Written.rels(), "3D/3dmodel.model", model)));
        assertEquals(Code.MESH_3MF_XML_BROKEN, findings.get(0).code());
    }

    @Test
    void brokenXmlZipOrPackageIsRefused() throws IOException {
        String cut = Written.model("", BOX_OBJECT, ITEM);
        Map<String, String> parts =
                Map.of("_rels/.rels", Written.rels(), "3D/3dmodel.model", cut.substring(0, cut.length() / 2));
        assertEquals(
                Code.MESH_3MF_XML_BROKEN, refusal(Written.zip(parts)).get(0).code());
        byte[] whole = Written.threeMf("", BOX_OBJECT, ITEM);
        byte[] half = Arrays.copyOf(whole, whole.length / 2);
        assertEquals(Code.MESH_3MF_ZIP_BROKEN, refusal(half).get(0).code());
        assertEquals(
                Code.MESH_3MF_NO_MODEL,
                refusal(Written.zip(Map.of("readme.txt", "hello"))).get(0).code());
        assertEquals(
                Code.MESH_3MF_NO_MODEL,
                refusal(Written.zip(Map.of("_rels/.rels", Written.rels())))
                        .get(0)
                        .code());
    }

    @Test
    void bytesThatAreNoTextAreRefusedInWordsOfOurs() throws IOException {
        byte[] bytes = Written.threeMf("", BOX_OBJECT, ITEM);
        assertEquals(
                Code.MESH_3MF_XML_BROKEN,
                refusal(stored(new byte[] {'<', 'm', (byte) 0xFF, '>'})).get(0).code());
        assertEquals(
                "not UTF-8",
                refusal(stored(new byte[] {'<', 'm', (byte) 0xFF, '>'}))
                        .get(0)
                        .values()
                        .get("reason"));
        byte[] wide =
                Written.model("", BOX_OBJECT, ITEM).replace("UTF-8", "UTF-16").getBytes(StandardCharsets.UTF_16);
        assertEquals(
                read(bytes).mesh().triangleCount(), read(stored(wide)).mesh().triangleCount());
        byte[] marked = ("\uFEFF" + Written.model("", BOX_OBJECT, ITEM)).getBytes(StandardCharsets.UTF_8);
        assertEquals(
                read(bytes).mesh().triangleCount(), read(stored(marked)).mesh().triangleCount());
    }

    private static byte[] stored(byte[] model) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("_rels/.rels"));
            zip.write(Written.rels().getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("3D/3dmodel.model"));
            zip.write(model);
        }
        return bytes.toByteArray();
    }

    @Test
    void anExtensionThatChangesTheShapeIsRefused() throws IOException {
        String attributes = "requiredextensions=\"b\" xmlns:b=\"urn:beams\"";
        Finding finding = refusal(Written.threeMf(attributes, BOX_OBJECT, ITEM)).get(0);
        assertEquals(Code.MESH_3MF_EXTENSION, finding.code());
        assertEquals("urn:beams", finding.values().get("extension"));
    }

    @Test
    void aZipBombIsRefused() throws IOException {
        // 70 MB of blanks pack to some 70 kB.
        String model = Written.model("", BOX_OBJECT + " ".repeat(70 << 20), ITEM);
        byte[] bomb = Written.zip(Map.of("_rels/.rels", Written.rels(), "3D/3dmodel.model", model));
        assertEquals(Code.MESH_3MF_UNPACKS_TOO_LARGE, refusal(bomb).get(0).code());
    }

    private String file() {
        return directory.resolve("a.3mf").toString();
    }

    private MeshFile read(byte[] bytes) throws IOException {
        return MeshFiles.read(Files.write(directory.resolve("a.3mf"), bytes));
    }

    private List<Finding> refusal(byte[] bytes) throws IOException {
        Path path = Files.write(directory.resolve("a.3mf"), bytes);
        return assertThrows(UnusableInputException.class, () -> MeshFiles.read(path))
                .findings();
    }
}
