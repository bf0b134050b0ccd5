package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The way to the window, with the window itself left out. */
class ViewCommandTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final List<String> opened = new ArrayList<>();

    private int run(String noWindowBecause, String... args) {
        WindowDoor door = (file, sample) -> {
            opened.add(file.getFileName() + " " + sample);
            return Optional.of(noWindowBecause).filter(r -> !r.isEmpty());
        };
        CommandLine line = Trimwright.commandLine(door);
        return line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err)).execute(args);
    }

    @Test
    void withoutACommandTheWindowOpensOnTheSample() {
        assertEquals(ExitCode.DONE, run(""));
        assertEquals(List.of("heron.boat.json true"), opened);
        assertEquals("", out.toString());
    }

    @Test
    void aNamedFileIsOpened() {
        assertEquals(ExitCode.DONE, run("", "view", "my-hull.stl"));
        assertEquals(List.of("my-hull.stl false"), opened);
    }

    /** One line says why, then come the same words that the commands print. */
    @Test
    void withoutADisplayTheBoatIsToldAsText(@TempDir Path folder) {
        Path boat = BoxBoat.upright(folder);
        run("no display", "view", boat.toString());
        String text = out.toString();
        assertEquals(
                "There is no window here (no display); " + boat + " as text instead.",
                text.lines().findFirst().get());
        assertTrue(text.contains(Run.of("float", boat).out()), text);
        assertTrue(text.contains("== ballast"), text);
    }

    /** Most commands are set up alone, which is quicker; this one needs those that it runs. */
    @Test
    void theCommandsThatTellAreThere() {
        Set<String> names = Trimwright.commandLine("view", "heron.boat.json")
                .getSubcommands()
                .keySet();
        assertTrue(names.containsAll(List.of("float", "dive", "ballast")), names.toString());
    }

    @Test
    void withoutADisplayABadFileIsToldOnce(@TempDir Path folder) {
        Path missing = folder.resolve("missing.boat.json");
        assertEquals(ExitCode.UNUSABLE, run("no display", "view", missing.toString()));
        assertEquals(1, err.toString().lines().count(), err.toString());
    }
}
