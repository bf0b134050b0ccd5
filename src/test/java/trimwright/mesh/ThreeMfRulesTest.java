package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/** Rules of the 3MF Core Specification 1.x (units, transforms, relationships, required extensions; from memory), and limits that are ours. */
class ThreeMfRulesTest {

    private static final TriangleMesh BOX = Solids.box(0, 0, 0, 4, 2, 1);
    private static final String BOX_OBJECT = "<object id=\"1\">" + Written.meshElement(BOX) + "</object>\n";
    private static final String ITEM = "<item objectid=\"1\"/>\n";
    private static final String PRODUCTION = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";
    private static final String MATERIAL = "http://schemas.microsoft.com/3dmanufacturing/material/2015/02";

    @TempDir
    private Path directory;

    private MeshFile read(byte[] bytes) throws IOException {
        return MeshFiles.read(Files.write(directory.resolve("a.3mf"), bytes));
    }

    private List<Finding> refusal(byte[] bytes) throws IOException {
        Path path = Files.write(directory.resolve("a.3mf"), bytes);
        return assertThrows(UnusableInputException.class, () -> MeshFiles.read(path))
                .findings();
    }

    @ParameterizedTest
    @CsvSource({"micron,0.001", "millimeter,1", "centimeter,10", "inch,25.4", "foot,304.8", "meter,1000"})
    void unitsOfTheFormat(String unit, double mm) throws IOException {
        MeshFile file = read(Written.threeMf("unit=\"" + unit + "\"", BOX_OBJECT, ITEM));
        TriangleMesh inMm = MeshImport.AS_IS.apply(file.mesh(), file.unit());
        assertEquals(4 * mm, inMm.bounds().sizeX(), 1e-12 * mm);
        boolean converted = file.findings().stream().anyMatch(f -> f.code() == Code.MESH_3MF_UNIT_CONVERTED);
        assertEquals(unit.equals("micron") || unit.equals("foot"), converted);
    }

    /** Within the part at hand and in another of another unit: a transform is in the unit of the part that has it. */
    @Test
    void partsInUnitsOfTheirOwn() throws IOException {
        Map<String, String> parts = new HashMap<>();
        parts.put("_rels/.rels", Written.rels());
        parts.put("3D/other.model", Written.model("unit=\"meter\"", BOX_OBJECT, ""));
        parts.put(
                "3D/3dmodel.model",
                Written.model(
                        "unit=\"foot\" requiredextensions=\"p\" xmlns:p=\"" + PRODUCTION + "\"",
                        BOX_OBJECT,
                        ITEM
                                + "<item objectid=\"1\" p:path=\"/3D/other.model\" transform=\"1 0 0 0 1 0 0 0 1 100 0 0\"/>"));
        MeshFile file = read(Written.zip(parts));
        Bounds mm = MeshImport.AS_IS.apply(file.mesh(), file.unit()).bounds();
        assertEquals(0, mm.minX(), 0);
        // 100 feet and 4 metres.
        assertEquals(30_480 + 4000, mm.maxX(), 1e-8);
        assertEquals(2000, mm.maxY(), 1e-9);
        assertEquals(24, file.mesh().triangleCount());
    }

    /** Rows times matrices, the component's first and then the item's (Commons Math); a mirrored body keeps its outside. */
    @Test
    void transformsAreThoseOfRowVectors() throws IOException {
        Random random = new Random(2);
        for (int i = 0; i < 20; i++) {
            RealMatrix component = random(random);
            RealMatrix item = random(random);
            String twice =
                    "<object id=\"2\"><components><component objectid=\"1\" transform=\"%s\"/></components></object>"
                            .formatted(words(component));
            MeshFile file = read(Written.threeMf(
                    "", BOX_OBJECT + twice, "<item objectid=\"2\" transform=\"%s\"/>".formatted(words(item))));
            RealMatrix all = component.multiply(item);
            for (int v = 0; v < 8; v++) {
                double[] from = {BOX.xyz()[3 * v], BOX.xyz()[3 * v + 1], BOX.xyz()[3 * v + 2], 1};
                double[] to = all.preMultiply(from);
                double nearest = Double.POSITIVE_INFINITY;
                for (int w = 0; w < file.mesh().xyz().length; w += 3) {
                    double[] xyz = file.mesh().xyz();
                    nearest = Math.min(
                            nearest,
                            Math.abs(xyz[w] - to[0]) + Math.abs(xyz[w + 1] - to[1]) + Math.abs(xyz[w + 2] - to[2]));
                }
                assertEquals(0, nearest, 1e-9);
            }
            double volume = 8 * new LUDecomposition(all.getSubMatrix(0, 2, 0, 2)).getDeterminant();
            assertEquals(Math.abs(volume), file.mesh().signedVolume(), 1e-9 * Math.abs(volume));
        }
    }

    private static RealMatrix random(Random random) {
        RealMatrix m = MatrixUtils.createRealIdentityMatrix(4);
        for (int i = 0; i < 12; i++) {
            m.setEntry(i / 3, i % 3, random.nextInt(19) - 9 + (i % 4 == 0 ? 20 : 0) * (random.nextBoolean() ? 1 : -1));
        }
        return m;
    }

    private static String words(RealMatrix m) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < 12; i++) {
            words.append(m.getEntry(i / 3, i % 3)).append(' ');
        }
        return words.toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 0 0 0 1 0 0 0 1 0 0",
                "1 0 0 0 1 0 0 0 1 0 0 0 0",
                "1 0 0 0 1 0 0 0 1 0 0 zero",
                "1 0 0 0 1 0 0 0 1 0 0 1.2.3",
                "1 2 3 2 4 6 0 0 1 0 0 0",
                "1 0 0 0 1 0 0 0 1 0 0 1.1e9",
                ""
            })
    void transformsThatAreNone(String transform) throws IOException {
        Finding finding = refusal(
                        Written.threeMf("", BOX_OBJECT, "<item objectid=\"1\" transform=\"%s\"/>".formatted(transform)))
                .get(0);
        assertEquals(Code.MESH_3MF_ATTRIBUTE, finding.code());
        assertEquals("transform", finding.values().get("attribute"));
    }

    /** A coordinate may be 10⁹ as written and as placed; of what is placed beyond the vertex is told, from 0. */
    @Test
    void theLargestCoordinate() throws IOException {
        String far = BOX_OBJECT.replace("4.0", "1e9");
        assertEquals(1e9, read(Written.threeMf("", far, ITEM)).mesh().bounds().maxX(), 0);
        String there = "<item objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 1e9 0 0\"/>";
        String flat = BOX_OBJECT.replace("4.0", "-4.0");
        assertEquals(1e9, read(Written.threeMf("", flat, there)).mesh().bounds().maxX(), 0);
        Finding finding = refusal(Written.threeMf("", BOX_OBJECT, there)).get(0);
        assertEquals(Code.MESH_COORDINATE_TOO_LARGE, finding.code());
        assertEquals(1e9 + 4, finding.values().get("found"));
        // The second vertex is the first with x = 4.
        assertEquals(1L, ((Number) finding.values().get("vertex")).longValue());
        assertEquals(4L, ((Number) finding.values().get("count")).longValue());
        for (String axis : List.of("0 1e9 0", "0 0 -1e9")) {
            String aside = "<item objectid=\"1\" transform=\"1 0 0 0 2 0 0 0 -2 %s\"/>".formatted(axis);
            assertEquals(
                    Code.MESH_COORDINATE_TOO_LARGE,
                    refusal(Written.threeMf("", BOX_OBJECT, aside)).get(0).code());
        }
    }

    /** Numbers are decimal; corners are whole numbers below the count of the vertices, 8 here. */
    @Test
    void numbersThatAreNone() throws IOException {
        for (String corner : List.of("8", "-1", "1.0", "99999999999")) {
            List<Finding> found =
                    refusal(Written.threeMf("", BOX_OBJECT.replaceFirst("v2=\"2\"", "v2=\"" + corner + "\""), ITEM));
            assertEquals(1, found.size(), corner);
            assertEquals(
                    corner.equals("8") ? Code.MESH_VERTEX_MISSING : Code.MESH_3MF_ATTRIBUTE,
                    found.get(0).code());
        }
        for (String number : List.of("1.2.3", "e5", "0x1p3", "1d")) {
            Finding found = refusal(
                            Written.threeMf("", BOX_OBJECT.replaceFirst("y=\"2.0\"", "y=\"" + number + "\""), ITEM))
                    .get(0);
            assertEquals(Code.MESH_3MF_ATTRIBUTE, found.code(), number);
            assertEquals(number, found.values().get("found"));
        }
    }

    /** 100 objects within each other beside the one that has the mesh; one more is too many. A hundred elements within each other, six of them of the format, too. */
    @Test
    void howDeepItMayBe() throws IOException {
        for (int within : new int[] {100, 101}) {
            StringBuilder objects = new StringBuilder(BOX_OBJECT);
            for (int i = 2; i < 2 + within; i++) {
                objects.append("<object id=\"%d\"><components><component objectid=\"%d\"/></components></object>\n"
                        .formatted(i, i - 1));
            }
            byte[] bytes = Written.threeMf("", objects.toString(), "<item objectid=\"%d\"/>".formatted(1 + within));
            if (within == 100) {
                assertEquals(12, read(bytes).mesh().triangleCount());
            } else {
                Finding finding = refusal(bytes).get(0);
                assertEquals(Code.MESH_3MF_NESTED_TOO_DEEP, finding.code());
                assertEquals(100, finding.values().get("allowed"));
                assertEquals(1, finding.values().get("object"));
            }
            // Model and resources are two of them; those that stand side by side do not add up.
            String beside = "<b/>".repeat(300);
            String elements = beside + "<a>".repeat(within - 2) + "</a>".repeat(within - 2);
            byte[] nested = Written.threeMf("", BOX_OBJECT + elements, ITEM);
            if (within == 100) {
                assertEquals(12, read(nested).mesh().triangleCount());
            } else {
                assertEquals(Code.MESH_3MF_XML_BROKEN, refusal(nested).get(0).code());
            }
        }
    }

    /** A support is left out wherever it is used, and counted as often; an object of nothing but supports is nothing. */
    @Test
    void supportsWithinComponents() throws IOException {
        String objects = BOX_OBJECT
                + "<object id=\"2\" type=\"solidsupport\">" + Written.meshElement(BOX) + "</object>"
                + "<object id=\"3\"><components><component objectid=\"1\"/><component objectid=\"2\"/>"
                + "<component objectid=\"2\"/></components></object>";
        MeshFile file = read(Written.threeMf("", objects, "<item objectid=\"3\"/><item objectid=\"3\"/>"));
        assertEquals(24, file.mesh().triangleCount());
        assertEquals(4L, file.findings().get(0).values().get("count"));
        assertEquals(
                Code.MESH_NO_TRIANGLES,
                refusal(Written.threeMf("", objects, "<item objectid=\"2\"/>"))
                        .get(0)
                        .code());
        assertFalse(read(Written.threeMf("", objects, ITEM)).findings().stream()
                .anyMatch(f -> f.code() == Code.MESH_3MF_SUPPORTS_LEFT_OUT));
    }

    @Test
    void requiredExtensions() throws IOException {
        String known = "requiredextensions=\" p  m\" xmlns:p=\"%s\" xmlns:m=\"%s\"".formatted(PRODUCTION, MATERIAL);
        assertEquals(12, read(Written.threeMf(known, BOX_OBJECT, ITEM)).mesh().triangleCount());
        assertEquals(
                12,
                read(Written.threeMf("requiredextensions=\" \"", BOX_OBJECT, ITEM))
                        .mesh()
                        .triangleCount());
        List<Finding> found = refusal(Written.threeMf(
                "requiredextensions=\"p nowhere x\" xmlns:x=\"urn:x\" xmlns:p=\"" + PRODUCTION + "\"",
                BOX_OBJECT,
                ITEM));
        assertEquals(
                List.of("nowhere", "urn:x"),
                found.stream().map(f -> f.values().get("extension")).toList());
    }

    /** Other relationships come first, and the name may stand without its slash. */
    @Test
    void theRelationshipThatNamesTheModel() throws IOException {
        String rels = Written.rels()
                .replace(
                        "<Relationship ",
                        "<Relationship Target=\"/a.png\" Id=\"a\" Type=\"urn:thumbnail\"/><Relationship ")
                .replace("/3D/3dmodel", "3D/3dmodel");
        assertTrue(rels.contains("thumbnail"));
        byte[] bytes =
                Written.zip(Map.of("_rels/.rels", rels, "3D/3dmodel.model", Written.model("", BOX_OBJECT, ITEM)));
        assertEquals(12, read(bytes).mesh().triangleCount());
    }

    /** The parser puts the place before its words; it is told apart, with the line. */
    @Test
    void brokenXmlIsToldInWords() throws IOException {
        String model = Written.model("", BOX_OBJECT, ITEM).replaceFirst("<vertices>", "<vertices");
        Finding finding = refusal(Written.zip(Map.of("_rels/.rels", Written.rels(), "3D/3dmodel.model", model)))
                .get(0);
        assertEquals(Code.MESH_3MF_XML_BROKEN, finding.code());
        String reason = (String) finding.values().get("reason");
        assertTrue(reason.startsWith("Element type \"vertices\""), reason);
        assertFalse(reason.endsWith("."), reason);
        long line = 1
                + model.substring(0, model.indexOf("<vertices"))
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
        // The parser is one line on when it misses the bracket.
        assertEquals(line + 1, ((Place.AtLine) finding.place()).line());
        String rels = Written.rels().replace("</Relationships>", "");
        Finding cut = refusal(Written.zip(Map.of("_rels/.rels", rels.replace("3dmodel\"", "none\""))))
                .get(0);
        assertEquals(Code.MESH_3MF_XML_BROKEN, cut.code());
        assertTrue(((Place.AtLine) cut.place()).file().endsWith("!/_rels/.rels"));
    }

    /** Elements of the format outside an object are passed over. */
    @Test
    void elementsOutOfPlace() throws IOException {
        String stray =
                "<vertex x=\"0\" y=\"0\" z=\"0\"/><triangle v1=\"0\" v2=\"0\" v3=\"0\"/><component objectid=\"9\"/>";
        assertEquals(
                12, read(Written.threeMf("", stray + BOX_OBJECT, ITEM)).mesh().triangleCount());
    }
}
