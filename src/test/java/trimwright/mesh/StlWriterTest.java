package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.Code;
import trimwright.finding.UnusableInputException;

class StlWriterTest {

    private static final TriangleMesh BOX = BrokenMeshes.BOX;

    @TempDir
    private Path directory;

    @Test
    void whatIsWrittenReadsBackTheSame() {
        Path file = directory.resolve("a.stl");
        StlWriter.write(file, BOX);
        MeshFile read = MeshFiles.read(file);
        assertEquals(MeshFile.Format.STL_BINARY, read.format());
        assertEquals(BOX.signedVolume(), read.mesh().signedVolume(), 0);
        StlWriter.write(directory.resolve("b.stl"), read.mesh());
        assertArrayEquals(
                read.mesh().corners(),
                MeshFiles.read(directory.resolve("b.stl")).mesh().corners());
    }

    @Test
    void aMeshOfMoreThanOneBufferIsWrittenWhole() {
        TriangleMesh ball = Shapes.ball(0, 0, 0, 100, 150, 200);
        Path file = directory.resolve("a.stl");
        StlWriter.write(file, ball);
        assertEquals(ball.triangleCount(), MeshFiles.read(file).mesh().triangleCount());
        assertTrue(ball.triangleCount() > 20_000);
    }

    @Test
    void normalsAreOfUnitLengthOutward() throws IOException {
        Path file = directory.resolve("a.stl");
        StlWriter.write(file, BOX);
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
        // Triangle 2 is the first of the top.
        assertEquals(0, bytes.getFloat(84 + 2 * 50));
        assertEquals(0, bytes.getFloat(84 + 2 * 50 + 4));
        assertEquals(1, bytes.getFloat(84 + 2 * 50 + 8));
    }

    @Test
    void anExistingFileIsKeptUnlessToldOtherwise() throws IOException {
        Path file = Files.writeString(directory.resolve("a.stl"), "mine");
        assertEquals(Code.FILE_EXISTS, refusal(file));
        assertEquals("mine", Files.readString(file));
        StlWriter.write(file, BOX, true);
        assertEquals(684, Files.size(file));
        assertEquals(1, files());
    }

    @Test
    void whereNothingCanBeWrittenNothingIsLeft() throws IOException {
        assertEquals(Code.FOLDER_MISSING, refusal(directory.resolve("none").resolve("a.stl")));
        assertEquals(Code.FILE_IS_DIRECTORY, refusal(directory));
        assertEquals(0, files());
    }

    private long files() throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            return files.count();
        }
    }

    private static Code refusal(Path file) {
        return assertThrows(UnusableInputException.class, () -> StlWriter.write(file, BOX))
                .findings()
                .get(0)
                .code();
    }
}
