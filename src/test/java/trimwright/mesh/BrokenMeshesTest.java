package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;

/** The files of broken meshes are those that {@link BrokenMeshes} makes, and each shows its fault and no other. */
class BrokenMeshesTest {

    /** What each file is refused for, or what is found in it. */
    private static final Map<String, List<Code>> EXPECTED = Map.ofEntries(
            Map.entry("ascii-cut-short.stl", List.of(Code.MESH_TEXT_ENDS_EARLY)),
            Map.entry("ascii-rubbish.stl", List.of(Code.MESH_TEXT_UNEXPECTED)),
            Map.entry("cavity.stl", List.of(Code.MESH_SEVERAL_SHELLS, Code.MESH_CAVITY)),
            Map.entry("crosses-itself.stl", List.of(Code.MESH_CROSSES_ITSELF)),
            Map.entry("decimal-commas.stl", List.of(Code.MESH_DECIMAL_COMMA)),
            Map.entry(
                    "degenerate-triangles.stl",
                    List.of(Code.MESH_TRIANGLE_VERTEX_TWICE, Code.MESH_TRIANGLE_WITHOUT_AREA)),
            Map.entry("duplicate-triangle.stl", List.of(Code.MESH_TRIANGLE_DUPLICATE)),
            Map.entry("edge-of-many.stl", List.of(Code.MESH_EDGE_OF_MANY, Code.MESH_SEVERAL_SHELLS)),
            Map.entry("empty.stl", List.of(Code.FILE_EMPTY)),
            Map.entry("far-away.stl", List.of(Code.MESH_FAR_FROM_ORIGIN)),
            Map.entry("flipped-triangle.stl", List.of(Code.MESH_TRIANGLE_FLIPPED)),
            Map.entry("inch-sized.stl", List.of(Code.MESH_SIZE_IMPLAUSIBLE)),
            Map.entry("infinite.stl", List.of(Code.MESH_COORDINATE_NOT_FINITE)),
            Map.entry("inside-out.stl", List.of(Code.MESH_INSIDE_OUT)),
            Map.entry("many-shells.stl", List.of(Code.MESH_SEVERAL_SHELLS)),
            Map.entry("metre-sized.stl", List.of(Code.MESH_SIZE_IMPLAUSIBLE)),
            Map.entry("nested-same-way.stl", List.of(Code.MESH_SEVERAL_SHELLS, Code.MESH_COUNTED_TWICE)),
            Map.entry("no-triangles.stl", List.of(Code.MESH_NO_TRIANGLES)),
            Map.entry("not-a-number.stl", List.of(Code.MESH_COORDINATE_NOT_FINITE)),
            Map.entry("one-sided.stl", List.of(Code.MESH_OPEN_LOOP, Code.MESH_ONE_SIDED)),
            Map.entry("open-edge.stl", List.of(Code.MESH_OPEN_LOOP)),
            Map.entry("open-wall.stl", List.of(Code.MESH_OPEN_LOOP, Code.MESH_SEVERAL_SHELLS)),
            Map.entry("overlapping-flush-shells.stl", List.of(Code.MESH_SEVERAL_SHELLS, Code.MESH_SHELLS_OVERLAP)),
            Map.entry("overlapping-shells.stl", List.of(Code.MESH_SEVERAL_SHELLS, Code.MESH_SHELLS_OVERLAP)),
            Map.entry("solid-but-binary.stl", List.of()),
            Map.entry("truncated.stl", List.of(Code.MESH_STL_TRUNCATED)),
            Map.entry("two-triangles.stl", List.of(Code.MESH_OPEN_LOOP)),
            Map.entry("wrong-count.stl", List.of(Code.MESH_STL_WRONG_COUNT)));

    @Test
    void theFolderHoldsExactlyWhatIsMade() throws IOException {
        Map<String, byte[]> made = BrokenMeshes.all();
        Map<String, byte[]> found = new TreeMap<>();
        try (Stream<Path> files = Files.list(BrokenMeshes.FOLDER)) {
            for (Path file : files.toList()) {
                found.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        assertEquals(made.keySet(), found.keySet());
        made.forEach((name, bytes) -> assertArrayEquals(bytes, found.get(name), name));
    }

    @Test
    void eachShowsItsFaultAndNoOther() {
        assertEquals(BrokenMeshes.all().keySet(), new TreeMap<>(EXPECTED).keySet());
        EXPECTED.forEach((name, codes) -> assertEquals(codes, codes(BrokenMeshes.FOLDER.resolve(name)), name));
    }

    @Test
    void aFileWithoutFaultIsSoundAndOthersAreAsDocumented() {
        for (String sound :
                List.of("solid-but-binary", "cavity", "many-shells", "degenerate-triangles", "metre-sized")) {
            assertEquals(true, soundness(sound).sound(), sound);
        }
        for (String broken : List.of(
                "open-edge",
                "flipped-triangle",
                "duplicate-triangle",
                "inside-out",
                "overlapping-shells",
                "overlapping-flush-shells",
                "nested-same-way",
                "crosses-itself",
                "edge-of-many",
                "one-sided",
                "two-triangles",
                "open-wall")) {
            assertEquals(false, soundness(broken).sound(), broken);
        }
    }

    private static Soundness soundness(String name) {
        return Soundness.of(
                MeshFiles.read(BrokenMeshes.FOLDER.resolve(name + ".stl")).mesh());
    }

    private static List<Code> codes(Path file) {
        if (!readable(file)) {
            return assertThrows(UnusableInputException.class, () -> MeshFiles.read(file)).findings().stream()
                    .map(Finding::code)
                    .toList();
        }
        MeshFile read = MeshFiles.read(file);
        return Stream.concat(read.findings().stream(), Soundness.of(read.mesh()).findings().stream())
                .map(Finding::code)
                .distinct()
                .toList();
    }

    private static boolean readable(Path file) {
        try {
            MeshFiles.read(file);
            return true;
        } catch (UnusableInputException e) {
            return false;
        }
    }
}
