package trimwright.report.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.UnusableInputException;

/** A machine without fonts, as a small server often is: a finding, twice in a row, and no crash. */
@EnabledOnOs(OS.LINUX)
class FontsMissingTest {

    private static final String NO_FONTS =
            "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig></fontconfig>";

    /** What runs on the machine without fonts. */
    static final class Draws {

        private Draws() {}

        public static void main(String[] arguments) {
            Plot.Curve curve = new Plot.Curve("line", new double[] {0, 1}, new double[] {0, 1});
            Plot plot = new Plot("Plot", List.of(new Plot.Panel("x", "y", List.of(curve), List.of())));
            for (int i = 0; i < 2; i++) {
                try {
                    plot.draw(600);
                    System.out.println("drawn");
                } catch (UnusableInputException e) {
                    System.out.println(e.findings().get(0).code());
                }
            }
        }
    }

    @Test
    void isSaid(@TempDir Path folder) throws Exception {
        Path configuration = folder.resolve("fonts.conf");
        Files.writeString(configuration, NO_FONTS);
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                // Here the runtime keeps what it found out about fonts before.
                "-Duser.home=" + folder,
                "-cp",
                System.getProperty("java.class.path"),
                Draws.class.getName());
        builder.environment().put("FONTCONFIG_FILE", configuration.toString());
        builder.redirectErrorStream(true);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(1, TimeUnit.MINUTES));
        assertEquals(0, process.exitValue(), said);
        // A runtime that brings fonts of its own draws all the same.
        assertTrue(said.matches("(?s)(FONTS_MISSING\\R){2}|(drawn\\R){2}"), said);
    }
}
