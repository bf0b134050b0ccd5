package trimwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trimwright.finding.Code;

/** The builder's guide to meshes explains every finding about a mesh, and none that is not made. */
class MeshGuideTest {

    private static final Path GUIDE = Path.of("docs/meshes.md");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([A-Z0-9_]+)` \\|(.*)\\|$");
    private static final List<String> ABOUT_MESHES =
            List.of("MESH_", "REPAIR_", "SURFACE_", "UNIT_", "IMPORT_", "HULL_");

    private static List<MatchResult> rows() throws IOException {
        return ROW.matcher(Files.readString(GUIDE)).results().toList();
    }

    @Test
    void everyFindingAboutAMeshHasOneRow() throws IOException {
        List<String> explained = rows().stream().map(r -> r.group(1)).sorted().toList();
        List<String> made = Stream.of(Code.values())
                .map(Code::name)
                .filter(n -> ABOUT_MESHES.stream().anyMatch(n::startsWith))
                .sorted()
                .toList();
        assertEquals(made, explained);
        assertTrue(made.size() > 50, "only " + made.size() + " codes about meshes");
    }

    @Test
    void noRowIsLeftEmpty() throws IOException {
        Set<String> empty = rows().stream()
                .filter(r -> Stream.of(r.group(2).split("\\|")).anyMatch(String::isBlank))
                .map(r -> r.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), empty);
    }
}
