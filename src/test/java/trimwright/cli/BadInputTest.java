package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Input that cannot be used ends with exit code 2, nothing on standard output, one message a finding with its place, no trace of the
 * program's inside, and every file as it was.
 */
class BadInputTest {

    private static final Path BROKEN = Path.of("src/test/resources/broken-meshes");

    @TempDir
    private Path folder;

    private static void assertRefused(Path folder, Run run, String... inMessage) {
        assertEquals(ExitCode.UNUSABLE, run.exitCode(), run.out() + run.err());
        assertEquals("", run.out());
        assertFalse(run.err().isBlank());
        run.err().lines().forEach(line -> {
            assertTrue(line.matches("(error|warning|note): .*"), line);
            assertTrue(line.contains(folder.toString()), "a place in " + line);
            assertFalse(line.contains("Exception") || line.contains("\tat "), line);
            assertFalse(line.contains("{") || line.contains("\" ?") || line.contains(" ? "), line);
        });
        for (String part : inMessage) {
            assertTrue(run.err().contains(part), run.err());
        }
    }

    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(file.toString(), new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }

    /** Mending never costs the mesh that is mended, whatever it is called and whatever may be overwritten. */
    @Test
    void repairOntoTheMeshItself() throws IOException {
        Files.createDirectories(folder.resolve("in"));
        Path mesh = Files.copy(
                Path.of("src/test/resources/broken-meshes/flipped-triangle.stl"), folder.resolve("in/hull.stl"));
        Map<String, String> before = contents();
        for (Path out : List.of(mesh, folder.resolve("in/../in/hull.stl"))) {
            Run run = Run.json("inspect", mesh, "--repair", out, "--overwrite");
            assertEquals(ExitCode.UNUSABLE, run.exitCode(), run.out() + run.err());
            assertEquals("", run.out());
            assertTrue(run.err().contains("is the mesh itself"), run.err());
        }
        assertEquals(before, contents());
    }

    private Path boatOf(String build) {
        return BoxBoat.written(folder, """
                {"version": 1, "parts": [{"id": "hull", "kind": "hull", "mesh": "hull.stl", "build": %s, "massG": 500}]}
                """.formatted(build));
    }

    private void assertUnusableMesh(String... inMessage) throws IOException {
        Path mesh = folder.resolve("hull.stl");
        Path boat = boatOf("\"skin\", \"thicknessMm\": 1");
        Map<String, String> before = contents();
        assertRefused(folder, Run.json("inspect", mesh), inMessage);
        assertRefused(folder, Run.json("inspect", mesh, "--repair", folder.resolve("new.stl")), inMessage);
        assertRefused(folder, Run.json("inspect", boat), inMessage);
        assertRefused(folder, Run.json("float", boat), inMessage);
        assertRefused(folder, Run.of("waterlines", boat), inMessage);
        assertEquals(before, contents());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "truncated|announces 12 triangles",
                "empty|the file is empty",
                "not-a-number|first NaN in triangle 3",
                "infinite|first Infinity in triangle 5",
                "ascii-rubbish|line 6: expected number, found \"four\"",
                "ascii-cut-short|line 44: the file ends where",
                "decimal-commas|first 0,5; it should be 0.5",
                "wrong-count|enough for 12",
                "no-triangles|no triangle"
            })
    void aMeshThatCannotBeReadIsRefused(String name, String message) throws IOException {
        Files.copy(BROKEN.resolve(name + ".stl"), folder.resolve("hull.stl"));
        assertUnusableMesh(message);
    }

    @Test
    void aMeshTooFarAwayForItsNumbersIsRefused() throws IOException {
        byte[] stl = Files.readAllBytes(BROKEN.resolve("solid-but-binary.stl"));
        ByteBuffer.wrap(stl).order(java.nio.ByteOrder.LITTLE_ENDIAN).putFloat(96, 1e12f);
        Files.write(folder.resolve("hull.stl"), stl);
        assertUnusableMesh("1 coordinate lies beyond", "in triangle 0");
    }

    @Test
    void aFolderIsNoMeshAndNoBoat() throws IOException {
        Files.createDirectory(folder.resolve("hull.stl"));
        assertRefused(folder, Run.json("inspect", folder.resolve("hull.stl")), "this is a folder");
        assertRefused(folder, Run.json("float", boatOf("\"skin\", \"thicknessMm\": 1")), "this is a folder");
        Files.createDirectory(folder.resolve("a.boat.json"));
        assertRefused(folder, Run.json("float", folder.resolve("a.boat.json")), "this is a folder");
    }

    @Test
    void whatMayNotBeReadIsRefused() throws IOException {
        Path mesh = Files.copy(BROKEN.resolve("solid-but-binary.stl"), folder.resolve("hull.stl"));
        assertTrue(mesh.toFile().setReadable(false));
        assumeFalse(Files.isReadable(mesh), "this user may read everything");
        assertUnusableMesh("cannot be read");
    }

    @Test
    void whatIsNotThereIsRefused() {
        assertRefused(folder, Run.json("inspect", folder.resolve("no.stl")), "there is no such file");
        assertRefused(folder, Run.json("float", folder.resolve("no.boat.json")), "there is no such file");
        assertRefused(
                folder, Run.json("float", boatOf("\"skin\", \"thicknessMm\": 1")), "there is no mesh \"hull.stl\"");
    }

    /** A sealed hull must enclose a volume: float refuses it, inspect says where it does not. */
    @ParameterizedTest
    @ValueSource(strings = {"two-triangles", "open-edge", "flipped-triangle", "inside-out", "one-sided"})
    void aSealedHullThatEnclosesNothingIsRefusedByFloatAndToldByInspect(String name) throws IOException {
        Path mesh = Files.copy(BROKEN.resolve(name + ".stl"), folder.resolve("hull.stl"));
        Path boat = boatOf("\"sealed\"");
        Map<String, String> before = contents();
        assertRefused(folder, Run.json("float", boat), "/parts/0/mesh");
        assertRefused(folder, Run.json("waterlines", boat), "/parts/0/mesh");
        Run inspected = Run.json("inspect", boat);
        assertEquals(ExitCode.NO, inspected.exitCode(), inspected.err());
        assertFalse(inspected.object().get("sound").booleanValue());
        assertFalse(inspected.object().get("defects").isEmpty());
        Run alone = Run.json("inspect", mesh);
        assertEquals(ExitCode.NO, alone.exitCode());
        assertEquals(
                inspected.object().get("meshes").get(0).get("closed"),
                alone.object().get("closed"));
        assertEquals(before, contents());
    }

    @Test
    void aBinaryMeshThatBeginsLikeTextIsRead() throws IOException {
        Path mesh = Files.copy(BROKEN.resolve("solid-but-binary.stl"), folder.resolve("hull.stl"));
        Run run = Run.json("inspect", mesh);
        assertEquals(ExitCode.DONE, run.exitCode());
        assertEquals(8000, run.object().get("volumeCm3").doubleValue(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "``|the file is empty",
                "hello|this is no JSON",
                "{\"version\": 2, \"hulls\": []}|the file is of version 2",
                "{\"version\": 1, \"parts\": []}|the boat has no parts",
                "{\"version\": 1, \"parts\": [PART], \"watter\": 1}|/watter: there is no key \"watter\". Did you mean \"water\"?",
                "{\"version\": 1, \"parts\": {}}|/parts: found {}, of type object; array is allowed",
                "{\"version\": 1, \"parts\": [{\"id\": \"a\", \"kind\": \"foam\", BOX, \"densityGPerCm3\": -0.03}]}"
                        + "|/parts/0/densityGPerCm3: \"densityGPerCm3\" is -0.03; allowed is",
                "{\"version\": 1, \"parts\": [PART, {\"id\": \"t\", \"kind\": \"tank\", BOX, \"fill\": 1.4}]}"
                        + "|/parts/1/fill: \"fill\" is 1.4; allowed is from 0 to 1.",
                "{\"version\": 1, \"parts\": [{\"id\": \"h\", \"kind\": \"hull\", \"mesh\": \"../h.stl\", \"build\": \"sealed\","
                        + " \"massG\": 1}]}|/parts/0/mesh: the mesh path \"../h.stl\" is not allowed: no parent folder",
                "{\"version\": 1, \"parts\": [PART, PART]}|/parts/1/id: the id",
                "{\"version\": 1, \"parts\": [{\"id\": \"a\", \"kind\": \"foam\", BOX}]}|needs a mass",
                "{\"version\": 1, \"parts\": [{\"id\": \"a\", \"kind\": \"foam\", BOX, \"massG\": NaN}]}|/parts/0/massG",
                "{\"version\": 1, \"parts\": [{\"id\": \"a\", \"kind\": \"foam\", BOX, \"massG\": \"7\"}]}"
                        + "|found \"7\", of type string; number is allowed"
            })
    void aBoatFileThatIsWrongIsRefusedWithItsPlace(String text, String message) throws IOException {
        String box = "\"box\": {\"fromMm\": [0, 0, 0], \"toMm\": [90, 90, 90]}";
        String part = "{\"id\": \"p\", \"kind\": \"cylinder\", BOX, \"massG\": 300}";
        Path boat = BoxBoat.written(
                folder, text == null ? "" : text.replace("PART", part).replace("BOX", box));
        Map<String, String> before = contents();
        for (String command : List.of("float", "waterlines", "inspect")) {
            Run run = Run.json(command, boat);
            assertEquals(ExitCode.UNUSABLE, run.exitCode(), run.out());
            assertEquals("", run.out());
            assertEquals(1, run.err().lines().count(), run.err());
            assertTrue(run.err().startsWith("error: " + boat), run.err());
            assertTrue(run.err().contains(message), run.err());
        }
        assertEquals(before, contents());
    }

    @Test
    void everyMistakeIsToldAtOnce() {
        Path boat = BoxBoat.written(folder, """
                {"version": 1, "water": {"densityGPerCm3": 1025},
                 "parts": [{"id": "a", "kind": "foam", "densityGPerCm3": 0.03}, {"id": "a", "kind": "lead"}]}
                """);
        Run run = Run.json("float", boat);
        assertRefused(folder, run, "/water/densityGPerCm3", "/parts/0", "/parts/1/kind");
        assertTrue(run.err().lines().count() >= 3, run.err());
    }

    @Test
    void wrongOverridesAreRefused() {
        Path boat = BoxBoat.upright(folder);
        Run run = Run.json("float", boat, "--water", "salty", "--fill", "mbt=2");
        assertEquals(ExitCode.UNUSABLE, run.exitCode());
        assertEquals("", run.out());
        assertEquals(2, run.err().lines().count(), run.err());
        assertTrue(run.err().contains("--water: found \"salty\""), run.err());
        assertTrue(run.err().contains("--fill: there is no tank \"mbt\"."), run.err());
    }
}
