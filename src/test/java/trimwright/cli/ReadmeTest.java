package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The figures that the README promises a newcomer are those that the tool prints. */
class ReadmeTest {

    @Test
    void theSampleRunPrintsWhatTheReadmeShows() throws IOException {
        List<String> readme = Files.readAllLines(Path.of("README.md"));
        int from = readme.indexOf("```text");
        int to = from + 1 + readme.subList(from + 1, readme.size()).indexOf("```");
        List<String> shown = readme.subList(from + 1, to);
        assertTrue(shown.size() > 10);
        Run run = Run.of("float", "sample-meshes/heron.boat.json");
        assertEquals(0, run.exitCode());
        List<String> printed = run.out().lines().toList();
        for (String line : shown) {
            assertTrue(printed.contains(line), "the tool does not print: " + line);
        }
    }
}
