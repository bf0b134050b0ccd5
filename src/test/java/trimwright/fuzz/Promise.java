package trimwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.function.Executable;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;
import trimwright.report.Wording;

/**
 * What every reader promises about any bytes whatever: it reads them, or refuses them with findings of which one at least is an error,
 * and every finding can be put into words. Anything else that is thrown fails the test, also an error of the Java machine.
 */
final class Promise {

    private Promise() {}

    /** A folder for what the readers read, in memory where the machine has such a place; it is left to the system's cleaning. */
    static Path folder() {
        Path memory = Path.of("/dev/shm");
        try {
            Path folder = Files.isWritable(memory)
                    ? Files.createTempDirectory(memory, "trimwright-fuzz")
                    : Files.createTempDirectory("trimwright-fuzz");
            folder.toFile().deleteOnExit();
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path written(Path file, byte[] bytes) {
        try {
            Path written = Files.write(file, bytes);
            written.toFile().deleteOnExit();
            return written;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void isKept(Executable reading) throws Throwable {
        try {
            reading.execute();
        } catch (UnusableInputException e) {
            assertFalse(e.findings().isEmpty(), "refused without a finding");
            assertTrue(e.findings().stream().anyMatch(Finding::isError), "refused without an error");
            canBeWorded(e.findings());
        }
    }

    static void canBeWorded(List<Finding> findings) {
        for (Finding finding : findings) {
            String line = Wording.line(finding);
            assertFalse(line.chars().anyMatch(Character::isISOControl), "a control character in: " + line);
        }
    }
}
