package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.OtherProcess;
import trimwright.finding.UnusableInputException;
import trimwright.report.Wording;

/**
 * A disk that is really full: 64 KiB of memory as a disk of its own, which only the process that saves can see and which goes with it. Where a
 * process may not have that, the test is skipped.
 */
class FullDiskTest {

    private static final String REASON =
            "could not be written: No space left on device. What was there before is as it was.";

    @TempDir
    Path folder;

    /** Mounts the disk and becomes what follows; status 77 where it may not be mounted. */
    private static final String MOUNTED = "mount -t tmpfs -o size=64k tmpfs \"$0\" || exit 77; exec \"$@\"";

    /** Saves to the folder that it is given, whose disk is too small for it, and prints what becomes of that. */
    static final class SaveTooMuch {

        private SaveTooMuch() {}

        public static void main(String[] args) throws IOException {
            PrintStream told = new PrintStream(System.out, true, StandardCharsets.UTF_8);
            Path folder = Path.of(args[0]);
            Path boat = folder.resolve("coot.boat.json");
            byte[] old = Arrays.copyOf(SaveLoop.version(0), 20_000);
            told.println(saved(boat, old, false));
            // Larger than what is left, smaller than the disk: the old file is still there while the new one is
            // written.
            told.println(saved(boat, Arrays.copyOf(SaveLoop.version(1), 50_000), true));
            told.println(saved(folder.resolve("new.boat.json"), SaveLoop.version(1), false));
            told.println(names(folder));
            fill(folder.resolve("rest"));
            told.println(saved(boat, new byte[1], true));
            told.println(saved(folder.resolve("new.boat.json"), new byte[1], false));
            told.println(names(folder));
            told.println(Arrays.equals(old, Files.readAllBytes(boat)));
            Files.delete(folder.resolve("rest"));
            told.println(saved(boat, Arrays.copyOf(SaveLoop.version(1), 30_000), true));
        }

        private static String saved(Path file, byte[] bytes, boolean overwrite) {
            try {
                AtomicFile.write(file, bytes, overwrite);
                return "saved";
            } catch (UnusableInputException e) {
                return Wording.line(e.findings().get(0));
            }
        }

        private static List<String> names(Path folder) throws IOException {
            try (Stream<Path> files = Files.list(folder)) {
                return files.map(f -> String.valueOf(f.getFileName())).sorted().toList();
            }
        }

        private static void fill(Path file) throws IOException {
            try (OutputStream out = Files.newOutputStream(file)) {
                while (true) {
                    out.write(new byte[512]);
                }
            } catch (IOException e) {
                if (!String.valueOf(e.getMessage()).contains("No space left")) {
                    throw e;
                }
            }
        }
    }

    private Process mounted() throws IOException {
        ProcessBuilder saving = OtherProcess.of(List.of(), SaveTooMuch.class, folder);
        // The administrator needs no name space of users, and in a container may not have one.
        String own = "root".equals(System.getProperty("user.name")) ? "-m" : "-Urm";
        saving.command().addAll(0, List.of("unshare", own, "/bin/sh", "-c", MOUNTED, folder.toString()));
        return saving.redirectErrorStream(true).start();
    }

    @Test
    void aFullDiskCostsNothing() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/unshare")), "no unshare, so no disk of its own for a process");
        Process process = mounted();
        List<String> told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        int status = process.waitFor();
        assumeFalse(status == 77 || told.get(0).startsWith("unshare:"), () -> "no disk may be mounted here: " + told);
        assertEquals(0, status, told.toString());
        String boat = "error: " + folder.resolve("coot.boat.json") + ": the file " + REASON;
        String fresh = "error: " + folder.resolve("new.boat.json") + ": the file " + REASON;
        assertEquals("saved", told.get(0));
        assertTrue(told.get(1).startsWith(boat), told.get(1));
        assertTrue(told.get(2).startsWith(fresh), told.get(2));
        assertEquals("[coot.boat.json]", told.get(3));
        assertTrue(told.get(4).startsWith(boat), told.get(4));
        assertTrue(told.get(5).startsWith(fresh), told.get(5));
        assertEquals("[coot.boat.json, rest]", told.get(6));
        assertEquals("true", told.get(7), "the old file is whole");
        assertEquals("saved", told.get(8));
    }
}
