package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.OtherProcess;

/** An answer that could not be printed is no success. */
class NotPrintedTest {

    @Test
    void anAnswerThatGoesToAFullDiskIsAFailure() throws Exception {
        // Linux has a file that is always full.
        File full = new File("/dev/full");
        assumeTrue(full.exists(), "no file here that is always full");
        Process process = OtherProcess.of(List.of(), Main.class, "--help")
                .redirectOutput(full)
                .start();
        String told = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(ExitCode.UNUSABLE, process.waitFor());
        assertTrue(told.startsWith("error: the answer could not be printed: No space left on device."), told);
        assertEquals(1, told.lines().count(), told);
    }
}
