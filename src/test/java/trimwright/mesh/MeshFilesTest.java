package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.MeshFile.Format;

class MeshFilesTest {

    private static final TriangleMesh BOX = Solids.box(0, 0, 0, 40, 20, 10);

    @TempDir
    private Path directory;

    @Test
    void oneSolidIsTheSameFromEveryFormat() throws IOException {
        // Coordinates that single precision holds, since binary STL holds no others.
        TriangleMesh ball = Shapes.ball(3, -2, 5, 16, 7, 9);
        for (int i = 0; i < ball.xyz().length; i++) {
            ball.xyz()[i] = (float) ball.xyz()[i];
        }
        MeshFile binary = read("a", Written.stlBinary("any header", ball));
        MeshFile ascii = read("b", Written.stlAscii(ball));
        MeshFile obj = read("c", Written.obj(ball));
        MeshFile threeMf = read(
                "d",
                Written.threeMf(
                        "",
                        "<object id=\"1\">" + Written.meshElement(ball) + "</object>\n",
                        "<item objectid=\"1\"/>\n"));
        assertEquals(
                List.of(Format.STL_BINARY, Format.STL_ASCII, Format.OBJ, Format.THREE_MF),
                List.of(binary.format(), ascii.format(), obj.format(), threeMf.format()));
        assertEquals(ball.vertexCount(), binary.mesh().vertexCount());
        assertEquals(ball.triangleCount(), binary.mesh().triangleCount());
        for (MeshFile other : List.of(ascii, obj, threeMf)) {
            assertArrayEquals(binary.mesh().xyz(), other.mesh().xyz(), 0);
            assertArrayEquals(binary.mesh().corners(), other.mesh().corners());
        }
        assertEquals(ball.signedVolume(), binary.mesh().signedVolume(), 1e-9);
        assertEquals(Optional.empty(), binary.unit());
        assertEquals(Optional.of(LengthUnit.MILLIMETRE), threeMf.unit());
        assertEquals(List.of(), binary.findings());
    }

    @Test
    void aBinaryFileThatBeginsWithSolidIsBinary() throws IOException {
        assertEquals(
                Format.STL_BINARY,
                read("a.stl", Written.stlBinary("solid", BOX)).format());
    }

    @Test
    void minusZeroIsZero() throws IOException {
        MeshFile file = read(
                "a.stl",
                Written.stlAscii(TriangleMesh.owning(
                        new double[] {-0.0, 0, 0, 1, 0, 0, 1, 1, 0, 0.0, -0.0, -0.0, 0, 1, -0.0},
                        new int[] {0, 1, 2, 3, 2, 4})));
        assertArrayEquals(new int[] {0, 1, 2, 0, 2, 3}, file.mesh().corners());
    }

    @Test
    void verticesAreNumberedByFirstAppearance() throws IOException {
        MeshFile file = read("a.obj", "v 9 9 9\nv 0 0 0\nv 1 0 0\nv 0 1 0\nf 4 2 3\n");
        assertArrayEquals(new double[] {0, 1, 0, 0, 0, 0, 1, 0, 0}, file.mesh().xyz(), 0);
        assertArrayEquals(new int[] {0, 1, 2}, file.mesh().corners());
    }

    @Test
    void whatIsNoReadableFileIsRefused() throws IOException {
        assertEquals(
                Code.FILE_MISSING, refusal(directory.resolve("none.stl")).get(0).code());
        assertEquals(Code.FILE_IS_DIRECTORY, refusal(directory).get(0).code());
        assertEquals(Code.FILE_EMPTY, refusal("a.stl", new byte[0]).get(0).code());
    }

    @Test
    void aFileWithoutPermissionIsRefused() throws IOException {
        Path path = Files.write(directory.resolve("a.stl"), Written.stlBinary("", BOX));
        assumeTrue(path.toFile().setReadable(false), "this file system knows no permissions");
        assumeFalse(Files.isReadable(path), "the superuser may read every file");
        Finding finding = refusal(path).get(0);
        assertEquals(Code.FILE_UNREADABLE, finding.code());
        assertEquals("no permission to read", finding.values().get("reason"));
    }

    @Test
    void theFirstBytesOfAnotherFormatAreNamed() throws IOException {
        Finding finding = refusal("a.stl", text("ISO-10303-21;\nHEADER;\n")).get(0);
        assertEquals(Code.MESH_FORMAT_UNKNOWN, finding.code());
        assertEquals("STEP", finding.values().get("looksLike"));
        Finding rubbish =
                refusal("b.stl", text("Dear reader,\nthis is a letter.\n")).get(0);
        assertEquals(Code.MESH_FORMAT_UNKNOWN, rubbish.code());
        assertEquals("Dear reader,.this is a l…", rubbish.values().get("found"));
        byte[] noise = new byte[3000];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) (i * i * 31 + 7 * i);
        }
        assertEquals(Code.MESH_FORMAT_UNKNOWN, refusal("c.stl", noise).get(0).code());
    }

    @Test
    void aTruncatedBinaryFileTellsBothLengths() throws IOException {
        byte[] whole = Written.stlBinary("", BOX);
        List<Finding> findings = refusal("a.stl", Arrays.copyOf(whole, 84 + 50 * 7 + 20));
        assertEquals(Code.MESH_STL_TRUNCATED, findings.get(0).code());
        assertEquals(
                Map.of("trianglesStated", 12L, "trianglesWhole", 7L, "bytesExpected", 684L, "bytesFound", 454L),
                findings.get(0).values());
        assertEquals(
                new Place.AtByte(directory.resolve("a.stl").toString(), 454),
                findings.get(0).place());
    }

    @Test
    void aWrongCountTellsWhatWouldFit() throws IOException {
        byte[] whole = Written.stlBinary("", BOX);
        whole[80] = 10;
        Finding finding = refusal("a.stl", whole).get(0);
        assertEquals(Code.MESH_STL_WRONG_COUNT, finding.code());
        assertEquals(
                Map.of("trianglesStated", 10L, "trianglesFitting", 12L, "bytesExpected", 584L, "bytesFound", 684L),
                finding.values());
        Finding odd =
                refusal("b.stl", Arrays.copyOf(Written.stlBinary("", BOX), 690)).get(0);
        assertEquals(Code.MESH_STL_WRONG_COUNT, odd.code());
        assertEquals(Map.of("trianglesStated", 12L, "bytesExpected", 684L, "bytesFound", 690L), odd.values());
    }

    @Test
    void numbersThatAreNoneAreCountedAndThePlaceOfTheFirstTold() throws IOException {
        byte[] bytes = Written.stlBinary("", BOX);
        ByteBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        buffer.putFloat(84 + 50 * 3 + 12 + 16, Float.NaN);
        buffer.putFloat(84 + 50 * 5 + 12, Float.NEGATIVE_INFINITY);
        buffer.putFloat(84 + 50 * 8 + 12 + 4, -3e12f);
        List<Finding> findings = refusal("a.stl", bytes);
        assertEquals(
                List.of(Code.MESH_COORDINATE_NOT_FINITE, Code.MESH_COORDINATE_TOO_LARGE),
                findings.stream().map(Finding::code).toList());
        assertEquals(
                Map.of("found", "NaN", "triangle", 3L, "count", 2L),
                findings.get(0).values());
        assertEquals(
                new Place.AtByte(directory.resolve("a.stl").toString(), 84 + 150 + 28),
                findings.get(0).place());
        assertEquals(8L, findings.get(1).values().get("triangle"));
        assertEquals((double) -3e12f, findings.get(1).values().get("found"));
    }

    @Test
    void aFarAwayMeshIsReadWithAWarning() throws IOException {
        MeshFile file = read("a.stl", Written.stlBinary("", Shapes.moved(BOX, 1e6, 0, 0)));
        Finding finding = file.findings().get(0);
        assertEquals(Code.MESH_FAR_FROM_ORIGIN, finding.code());
        assertEquals(Map.of("distance", 1000040.0, "longestSide", 40.0, "step", 0.0625), finding.values());
    }

    @Test
    void noTrianglesAreRefusedInEveryFormat() throws IOException {
        byte[] empty = Written.stlBinary("", TriangleMesh.owning(new double[0], new int[0]));
        assertEquals(Code.MESH_NO_TRIANGLES, refusal("a", empty).get(0).code());
        assertEquals(
                Code.MESH_NO_TRIANGLES,
                refusal("b", text("solid a\nendsolid a\n")).get(0).code());
        assertEquals(
                Code.MESH_NO_TRIANGLES, refusal("c", text("v 0 0 0\n")).get(0).code());
        byte[] threeMf = Written.threeMf("", "", "");
        assertEquals(Code.MESH_NO_TRIANGLES, refusal("d", threeMf).get(0).code());
    }

    @Test
    void moreTrianglesThanAllowedAreRefusedBeforeTheyAreRead() throws IOException {
        Path path = directory.resolve("a.stl");
        long count = MeshFiles.MOST_TRIANGLES + 1L;
        try (var channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            ByteBuffer head = ByteBuffer.allocate(84).order(ByteOrder.LITTLE_ENDIAN);
            channel.write(head.putInt(80, (int) count), 0);
            // A hole in the file: it takes no room on the disk.
            channel.write(ByteBuffer.allocate(1), 84 + 50 * count - 1);
        }
        Finding finding = refusal(path).get(0);
        assertEquals(Code.MESH_TOO_MANY_TRIANGLES, finding.code());
        assertEquals(count, finding.values().get("found"));
    }

    private MeshFile read(String name, byte[] bytes) throws IOException {
        return MeshFiles.read(Files.write(directory.resolve(name), bytes));
    }

    private MeshFile read(String name, String text) throws IOException {
        return read(name, text(text));
    }

    private List<Finding> refusal(String name, byte[] bytes) throws IOException {
        return refusal(Files.write(directory.resolve(name), bytes));
    }

    private static List<Finding> refusal(Path path) {
        List<Finding> findings = assertThrows(UnusableInputException.class, () -> MeshFiles.read(path))
                .findings();
        assertTrue(findings.stream().allMatch(Finding::isError));
        return findings;
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
