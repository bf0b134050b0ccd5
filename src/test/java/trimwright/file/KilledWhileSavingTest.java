package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.OtherProcess;

/**
 * A process that saves without end is killed at random moments, with the signal that nobody can catch; what it leaves is then always the old
 * file or the new one, whole. {@code -Dtrimwright.kills=1000} kills more often.
 */
class KilledWhileSavingTest {

    private static final int KILLS = Integer.getInteger("trimwright.kills", 60);

    /** A save of these files takes about so long; kills are spread over a few of them. */
    private static final int MOST_MICROSECONDS = 20_000;

    @TempDir
    Path folder;

    private final List<byte[]> versions = List.of(SaveLoop.version(0), SaveLoop.version(1));
    private int lastNew;
    private int leftInTheMiddle;

    @Test
    void theOldFileOrTheNewOneIsThereWhole() throws Exception {
        Files.write(folder.resolve("old"), versions.get(0));
        Random random = new Random(8);
        for (int kill = 0; kill < KILLS; kill++) {
            saveAndKill(random.nextInt(MOST_MICROSECONDS));
            check();
        }
        // Otherwise no kill came in the middle of a save, and nothing was tested.
        assertTrue(leftInTheMiddle > KILLS / 10, leftInTheMiddle + " of " + KILLS + " kills came in the middle");
    }

    private void saveAndKill(int microseconds) throws Exception {
        Process process = OtherProcess.of(List.of(), SaveLoop.class, folder, lastNew + 1)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (InputStream out = process.getInputStream()) {
            assertEquals('.', out.read(), "the process did not begin to save");
            TimeUnit.MICROSECONDS.sleep(microseconds);
        } finally {
            process.destroyForcibly();
            assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        }
    }

    private void check() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                String name = String.valueOf(file.getFileName());
                if (name.startsWith(".")) {
                    leftInTheMiddle++;
                    Files.delete(file);
                } else if (name.startsWith("new-")) {
                    int number = Integer.parseInt(name.substring(4));
                    lastNew = Math.max(lastNew, number);
                    assertArrayEquals(versions.get(number % 2), Files.readAllBytes(file), name);
                    Files.delete(file);
                } else {
                    byte[] found = Files.readAllBytes(file);
                    assertTrue(versions.stream().anyMatch(v -> Arrays.equals(v, found)), name + " is torn");
                }
            }
        }
    }

    @Test
    void whatAKilledProcessLeftIsTakenAwayLaterAndNothingElse() throws IOException {
        Path old = Files.writeString(folder.resolve(".trimwright-1"), "half");
        Path fresh = Files.writeString(folder.resolve(".trimwright-2"), "half");
        Path other = Files.writeString(folder.resolve("notes.txt"), "mine");
        FileTime lastHour = FileTime.from(Instant.now().minusSeconds(3600));
        Files.setLastModifiedTime(old, lastHour);
        Files.setLastModifiedTime(other, lastHour);
        AtomicFile.write(folder.resolve("a"), versions.get(0), false);
        assertTrue(Files.notExists(old), "left behind an hour ago");
        assertTrue(Files.exists(fresh), "may be in the middle of being written by another window");
        assertTrue(Files.exists(other));
    }
}
