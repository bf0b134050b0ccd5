package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import trimwright.OtherProcess;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.WholeFile;
import trimwright.report.Wording;

/** Where nothing can be written, that is told, what was there stays, and nothing is left behind. */
class UnwritableTest {

    private static final byte[] OLD = "old".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    private Set<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> String.valueOf(f.getFileName())).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static Finding refusal(Executable writing) {
        return assertThrows(UnusableInputException.class, writing).findings().get(0);
    }

    private static boolean isPosix() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }

    /** As a disk that is full half way through, by the words of Linux. */
    private static void half(OutputStream out) throws IOException {
        out.write(new byte[100_000]);
        throw new IOException("No space left on device");
    }

    @Test
    void aDiskThatFillsUpLeavesTheOldFileAndNoNewOne() throws IOException {
        Path old = Files.write(folder.resolve("old"), OLD);
        Finding finding = refusal(() -> WholeFile.write(old, true, UnwritableTest::half));
        assertEquals(Code.FILE_NOT_WRITTEN, finding.code());
        assertTrue(Wording.of(finding).contains("No space left on device"), Wording.of(finding));
        assertEquals(
                Code.FILE_NOT_WRITTEN,
                refusal(() -> WholeFile.write(folder.resolve("new"), false, UnwritableTest::half))
                        .code());
        assertEquals(Set.of("old"), names());
        assertArrayEquals(OLD, Files.readAllBytes(old));
    }

    /** Saves one file once, and prints what became of it. */
    static final class SaveOnce {
        private SaveOnce() {}

        public static void main(String[] args) throws IOException {
            try {
                AtomicFile.write(Path.of(args[0]), SaveLoop.version(1), true);
                System.out.print("saved");
            } catch (UnusableInputException e) {
                System.out.print(e.findings().get(0).code());
            }
            System.out.flush();
        }
    }

    /** The system itself lets a process write no more than 100 blocks of a file: the write fails where the bytes go to the disk. */
    @Test
    void aWriteThatTheSystemBreaksOffLeavesTheOldFileAndNoNewOne() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "limits are set by a shell");
        Path old = Files.write(folder.resolve("old"), OLD);
        ProcessBuilder limited = OtherProcess.of(List.of(), SaveOnce.class, old);
        List<String> command = limited.command();
        command.addAll(0, List.of("/bin/bash", "-c", "ulimit -f 100; exec \"$@\"", "limited"));
        Process process = limited.redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(Code.FILE_NOT_WRITTEN.name(), told);
        assertEquals(Set.of("old"), names());
        assertArrayEquals(OLD, Files.readAllBytes(old));
    }

    @Test
    void aFolderThatMayNotBeWrittenToIsTold() throws IOException {
        assumeTrue(isPosix());
        // To the administrator all folders of the disk are open, but not those in which the kernel shows itself.
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        Path closed = Files.isWritable(folder) ? Path.of("/sys/kernel") : folder;
        assumeTrue(Files.isDirectory(closed), "no folder is closed to the administrator here");
        Finding finding = refusal(() -> AtomicFile.write(closed.resolve("new.boat.json"), OLD, false));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        assertEquals(Code.FILE_NOT_WRITTEN, finding.code());
    }

    @Test
    void aLockedFileIsNotReplaced() throws IOException {
        assumeTrue(isPosix());
        Path locked = Files.write(folder.resolve("locked"), OLD);
        Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("r--r--r--"));
        assertEquals(
                Code.FILE_NOT_WRITTEN,
                refusal(() -> AtomicFile.write(locked, new byte[1], true)).code());
        assertArrayEquals(OLD, Files.readAllBytes(locked));
        assertEquals(Set.of("locked"), names());
    }

    @Test
    void whoMayReadAFileStaysAsItWas() throws IOException {
        assumeTrue(isPosix());
        Path file = Files.write(folder.resolve("mine"), OLD);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        AtomicFile.write(file, new byte[1], true);
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    /** The name may be as long as the system lets names be. */
    @Test
    void theLongestNameCanBeSaved() throws IOException {
        Path file = folder.resolve("n".repeat(240) + ".boat.json");
        AtomicFile.write(file, OLD, false);
        AtomicFile.write(file, OLD, true);
        assertArrayEquals(OLD, Files.readAllBytes(file));
        assertEquals(1, names().size());
    }

    @Test
    void aMeshThatCannotGoAlongTakesTheBoatBack() throws IOException {
        LoadedBoat boat = BoatFile.read(TestBoat.written(folder, TestBoat.RIGHT));
        Path other = Files.createDirectory(folder.resolve("other"));
        Files.delete(folder.resolve("hull.stl"));
        Finding finding = refusal(() -> BoatFile.write(boat, other.resolve("coot.boat.json"), false));
        assertEquals(Code.FILE_NOT_WRITTEN, finding.code());
        try (Stream<Path> files = Files.list(other)) {
            assertEquals(List.of(), files.toList());
        }
    }
}
