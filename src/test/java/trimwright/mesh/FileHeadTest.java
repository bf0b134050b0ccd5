package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;

/** What a file is taken for. A binary STL has 80 bytes of header, the count, and 50 bytes a triangle: normal, corners, attribute (the format as commonly known). */
class FileHeadTest {

    @TempDir
    private Path directory;

    private Finding refusal(byte[] bytes) throws IOException {
        Path path = Files.write(directory.resolve("a"), bytes);
        return assertThrows(UnusableInputException.class, () -> MeshFiles.read(path))
                .findings()
                .get(0);
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** A file of zeros but for the count and one number, longer or shorter than the count says. */
    private static byte[] stl(int size, int count, int at, float number) {
        ByteBuffer bytes = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
        bytes.putInt(80, count);
        if (at >= 0) {
            bytes.putFloat(at, number);
        }
        return bytes.array();
    }

    /** Nothing of the first triangle's corners, from byte 96 to 131, tells more than noise: then it is none. */
    @Test
    void aDamagedBinaryFileIsToldByItsFirstTriangle() throws IOException {
        assertEquals(Code.MESH_FORMAT_UNKNOWN, refusal(stl(240, 9, -1, 0)).code());
        for (int at = 96; at < 132; at += 4) {
            assertEquals(
                    Code.MESH_STL_TRUNCATED, refusal(stl(240, 9, at, 2e-6f)).code());
            assertEquals(
                    Code.MESH_STL_TRUNCATED, refusal(stl(240, 9, at, -1e9f)).code());
            for (float number : new float[] {Float.NaN, -1.1e9f, Float.POSITIVE_INFINITY, 1e-7f}) {
                assertEquals(
                        Code.MESH_FORMAT_UNKNOWN,
                        refusal(stl(240, 9, at, number)).code());
            }
        }
        // The normal and the next triangle do not count.
        assertEquals(Code.MESH_FORMAT_UNKNOWN, refusal(stl(240, 9, 92, 1)).code());
        assertEquals(Code.MESH_FORMAT_UNKNOWN, refusal(stl(240, 9, 132, 1)).code());
        // More triangles than are allowed is no count that could be meant.
        assertEquals(
                Code.MESH_FORMAT_UNKNOWN,
                refusal(stl(240, MeshFiles.MOST_TRIANGLES + 1, 96, 1)).code());
        assertEquals(
                Code.MESH_STL_TRUNCATED,
                refusal(stl(240, MeshFiles.MOST_TRIANGLES, 96, 1)).code());
    }

    /** Without a whole first triangle there is nothing to tell by, and the count is believed; without a count nothing is. */
    @Test
    void aFileThatEndsBeforeItsFirstTriangle() throws IOException {
        Finding bare = refusal(stl(84, 12, -1, 0));
        assertEquals(Code.MESH_STL_TRUNCATED, bare.code());
        assertEquals(12L, bare.values().get("trianglesStated"));
        assertEquals(Code.MESH_STL_TRUNCATED, refusal(stl(131, 12, -1, 0)).code());
        assertEquals(Code.MESH_FORMAT_UNKNOWN, refusal(stl(132, 12, -1, 0)).code());
        assertEquals(Code.MESH_FORMAT_UNKNOWN, refusal(new byte[83]).code());
        assertEquals(Code.MESH_NO_TRIANGLES, refusal(stl(84, 0, -1, 0)).code());
    }

    /** 24 characters are shown, and dots for what a terminal could stumble over. */
    @Test
    void theStartOfAFileIsShownPlainly() throws IOException {
        assertEquals(
                "abcdefghijklmnopqrstuvw~",
                refusal(text("abcdefghijklmnopqrstuvw~")).values().get("found"));
        assertEquals(
                "abcdefghijklmnopqrstuvw~…",
                refusal(text("abcdefghijklmnopqrstuvw~z")).values().get("found"));
        assertEquals("a.. b.", refusal(text("a\u007F\u001F b\n")).values().get("found"));
    }

    /** A head of nothing but comments may go on with anything where the file does, and is nothing where it ends. */
    @Test
    void commentsLongerThanTheHead() throws IOException {
        String comments = "# a line of nothing\n".repeat(300);
        Path path = Files.write(directory.resolve("a"), text(comments + "v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 3\n"));
        assertEquals(1, MeshFiles.read(path).mesh().triangleCount());
        assertEquals(
                Code.MESH_FORMAT_UNKNOWN,
                refusal(text(comments.substring(0, 4000))).code());
        assertEquals(Code.MESH_FORMAT_UNKNOWN, refusal(text("#".repeat(4096))).code());
    }

    @Test
    void whatAMeshFileLooksLikeToOthers() {
        TriangleMesh box = Solids.box(0, 0, 0, 4, 2, 1);
        byte[] binary = Written.stlBinary("", box);
        assertEquals(Optional.of("STL"), MeshFiles.looksLike(binary, binary.length));
        assertEquals(Optional.of("STL"), MeshFiles.looksLike(Arrays.copyOf(binary, 300), 300));
        // Only its beginning is at hand, its length is known.
        assertEquals(Optional.of("STL"), MeshFiles.looksLike(Arrays.copyOf(binary, 100), binary.length));
        assertEquals(Optional.of("STL"), MeshFiles.looksLike(text(Written.stlAscii(box)), 999));
        assertEquals(Optional.of("OBJ"), MeshFiles.looksLike(text(Written.obj(box)), 999));
        byte[] threeMf = Written.threeMf("", "", "");
        assertEquals(Optional.of("3MF"), MeshFiles.looksLike(threeMf, threeMf.length));
        assertEquals(Optional.empty(), MeshFiles.looksLike(text("{\"version\": 1}"), 14));
    }

    /** A step of single precision up to 1e-5 of the longest side is no word worth: at 2 to the 20th it is 1 ∕ 8, of a side of 12 500 just that. */
    @Test
    void howFarAwayIsFar() throws IOException {
        for (int side : new int[] {12_500, 12_499}) {
            String obj = "v 1048576 0 0\nv %d 0 0\nv 1048576 9 0\nf 1 3 2\n".formatted(1048576 - side);
            MeshFile file = MeshFiles.read(Files.write(directory.resolve("a.obj"), text(obj)));
            assertEquals(side == 12_500 ? 0 : 1, file.findings().size());
        }
    }
}
