package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;

class SavingTest {

    @TempDir
    Path folder;

    private LoadedBoat read(String text) {
        return BoatFile.read(TestBoat.written(folder, text));
    }

    private static Part lead(String id) {
        return TestParts.solid(
                id, Kind.BALLAST, new BoxShape(new Vector3D(20, -6, 0.5), new Vector3D(61.25, 6, 4)), 11.34);
    }

    private static Code refusal(org.junit.jupiter.api.function.Executable action) {
        return assertThrows(UnusableInputException.class, action)
                .findings()
                .get(0)
                .code();
    }

    @Test
    void savingWithoutAChangeGivesTheSameBytes() throws IOException {
        LoadedBoat loaded = read("\uFEFF" + TestBoat.RIGHT.replace("\n", "\r\n"));
        Path copy = folder.resolve("copy.boat.json");
        assertEquals(List.of(), BoatFile.write(loaded, copy, false));
        assertEquals(-1, Files.mismatch(loaded.path(), copy));
    }

    @Test
    void anAddedPartLeavesEverythingElseAsItWasWritten() {
        LoadedBoat more = read(TestBoat.RIGHT).plus(List.of(lead("trim lead"), lead("trim lead 2")));
        String last = "\"massG\": 12, \"densityGPerCm3\": 8.5}";
        String added =
                "{\"id\": \"%s\", \"kind\": \"ballast\", \"box\": {\"fromMm\": [20, -6, 0.5], \"toMm\": [61.25, 6, 4]},"
                        + "\n     \"densityGPerCm3\": 11.34}";
        String expected = TestBoat.RIGHT.replace(
                last,
                last + ",\n    " + String.format(added, "trim lead") + ",\n    " + String.format(added, "trim lead 2"));
        assertEquals(expected, more.text());
        assertEquals(lead("trim lead"), more.boat().parts().get(7));
    }

    @Test
    void aReplacedPartLeavesEverythingElseAsItWasWritten() {
        LoadedBoat before = read(TestBoat.RIGHT);
        Part old = before.boat().part("foam").orElseThrow();
        Part foam = new Part(
                old.id(),
                old.kind(),
                Optional.of(new BarShape(new Vector3D(1, 2, 3), new Vector3D(9.5, 2, 3), 4, BarShape.Ends.FLAT)),
                old.build(),
                old.weighedMassG(),
                old.densityGPerCm3(),
                old.givenCentreMm(),
                old.inside(),
                true,
                0);
        LoadedBoat after = before.replacing(foam);
        assertEquals(foam, after.boat().part("foam").orElseThrow());
        String expected = TestBoat.with(
                " \"box\": {\"fromMm\": [100, 30, 30], \"toMm\": [200, 38, 50]},\n     \"densityGPerCm3\": 0.030, \"mirror\": true",
                "\n     \"densityGPerCm3\": 0.030, \"mirror\": true, \"fromMm\": [1, 2, 3], \"toMm\": [9.5, 2, 3],"
                        + " \"diameterMm\": 4");
        assertEquals(expected.replaceAll("\\s+", " "), after.text().replaceAll("\\s+", " "));
        assertEquals(TestBoat.RIGHT, before.replacing(old).text());
    }

    @Test
    void aPartIsTakenAwayWithItsComma() {
        LoadedBoat loaded = read(TestBoat.RIGHT);
        for (String id : List.of("hull", "foam", "propeller")) {
            LoadedBoat fewer = loaded.without(id);
            assertEquals(
                    loaded.boat().parts().stream()
                            .filter(p -> !p.id().equals(id))
                            .toList(),
                    fewer.boat().parts());
        }
        assertEquals(Code.INSIDE_UNKNOWN, refusal(() -> loaded.without("wtc")));
        assertEquals("{ }", JsonText.without("{\"a\": [1, 2]}", "/a").replace("{}", "{ }"));
        assertEquals("[[2]]", JsonText.without("[[1 , 2]]", "/0/0"));
        assertThrows(IllegalArgumentException.class, () -> JsonText.without("[[1 , 2]]", "/0/2"));
    }

    @Test
    void anEditDoesNotReadMeshesAgain() throws IOException {
        LoadedBoat before = read(TestBoat.RIGHT);
        Files.delete(folder.resolve("hull.stl"));
        LoadedBoat after = before.plus(List.of(lead("trim lead")));
        assertSame(before.mesh("hull").orElseThrow(), after.mesh("hull").orElseThrow());
    }

    @Test
    void anIdThatIsTakenIsRefused() {
        LoadedBoat loaded = read(TestBoat.RIGHT);
        assertEquals(Code.ID_DUPLICATE, refusal(() -> loaded.plus(List.of(lead("foam")))));
    }

    @Test
    void everyPartSurvivesBeingWrittenAndReadAgain() {
        String builds = TestBoat.with(
                "\"keel lead\"",
                "\"pod\", \"kind\": \"hull\", \"build\": \"printed\", \"mesh\": \"hull.stl\", \"infill\": {\"wallMm\": 1.2,"
                        + " \"percent\": 15, \"floods\": true}, \"densityGPerCm3\": 1.2, \"mirror\": true,\n"
                        + "\"import\": {\"unit\": \"in\", \"scale\": 0.02, \"forward\": \"-y\", \"up\": \"+x\","
                        + " \"moveMm\": [1, 2, 3.5]}}, {\"id\": \"keel lead\"");
        String soft = "0.030, \"softFoam\": true, \"uptakePercent\": 2.5, \"fixed\": false";
        LoadedBoat loaded = read(builds.replace("0.030", soft)
                .replace("\"massG\": 12,", "\"massG\": 12, \"compressionPercentPerM\": 1,"));
        for (Part part : loaded.boat().parts()) {
            LoadedBoat again = loaded.replacing(part);
            assertEquals(loaded.boat().parts(), again.boat().parts(), part.id());
        }
    }

    @Test
    void nothingIsOverwrittenUnlessAsked() throws IOException {
        LoadedBoat loaded = read(TestBoat.RIGHT);
        LoadedBoat more = loaded.plus(List.of(lead("trim lead")));
        assertEquals(Code.FILE_EXISTS, refusal(() -> BoatFile.write(more, loaded.path(), false)));
        assertEquals(TestBoat.RIGHT, Files.readString(loaded.path()));
        BoatFile.write(more, loaded.path(), true);
        assertEquals(more.text(), Files.readString(loaded.path()));
        try (Stream<Path> files = Files.list(folder)) {
            assertFalse(files.anyMatch(f -> f.toString().endsWith(".tmp")));
        }
    }

    @Test
    void aSymbolicLinkStaysALinkToTheSavedFile() throws IOException {
        LoadedBoat loaded = read(TestBoat.RIGHT);
        Path link = Files.createSymbolicLink(folder.resolve("link.boat.json"), loaded.path());
        LoadedBoat more = BoatFile.read(link).plus(List.of(lead("trim lead")));
        BoatFile.write(more, link, true);
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(more.text(), Files.readString(loaded.path()));
    }

    @Test
    void whatCannotBeWrittenIsReported() {
        LoadedBoat loaded = read("{\"version\": 1, \"parts\": [{\"id\": \"a\", \"kind\": \"foam\", \"massG\": 1,"
                + " \"box\": {\"fromMm\": [0, 0, 0], \"toMm\": [1, 1, 1]}}]}");
        assertEquals(Code.FILE_IS_DIRECTORY, refusal(() -> BoatFile.write(loaded, folder, true)));
        Path nowhere = folder.resolve("none/coot.boat.json");
        assertEquals(Code.FOLDER_MISSING, refusal(() -> BoatFile.write(loaded, nowhere, false)));
    }

    @Test
    void meshesGoAlongToAnotherFolderAndOverwriteNothing() throws IOException {
        LoadedBoat loaded = read(TestBoat.RIGHT);
        Path other = Files.createDirectory(folder.resolve("other"));
        Path to = other.resolve("coot.boat.json");
        List<Finding> notes = BoatFile.write(loaded, to, false);
        assertEquals(
                List.of(Code.MESH_COPIED), notes.stream().map(Finding::code).toList());
        assertEquals(
                loaded.boat().parts().get(1), BoatFile.read(to).boat().parts().get(1));
        assertEquals(List.of(), BoatFile.write(loaded, to, true));

        Files.writeString(other.resolve("hull.stl"), "something else");
        assertEquals(
                Code.MESH_OTHER_THERE, refusal(() -> BoatFile.write(loaded, other.resolve("new.boat.json"), false)));
        assertFalse(Files.exists(other.resolve("new.boat.json")));
        assertEquals("something else", Files.readString(other.resolve("hull.stl")));
    }

    @Test
    void insertedTextIsJsonWhateverTheLayoutAround() throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        JsonNode value = mapper.readTree(
                "{\"a\\\"/~\\u0001é\": [1.50, -2e-3, true, null, {}], \"b\": \"" + "x".repeat(150) + "\"}");
        for (String layout :
                List.of("{\"p\":[]}", "{\"p\":[1]}", "{\"p\": [\n  1,\n  2\n] }", "{\n\t\"p\" : [[ ]]}\n")) {
            JsonNode after = mapper.readTree(JsonText.with(layout, "/p/-", value));
            assertEquals(
                    mapper.readTree(layout).get("p").size() + 1, after.get("p").size());
            assertEquals(value, after.get("p").get(after.get("p").size() - 1), layout);
            JsonNode keyed = mapper.readTree(JsonText.with(layout, "/q~1~0", value));
            assertEquals(value, keyed.get("q/~"), layout);
            assertEquals(mapper.readTree(layout).get("p"), keyed.get("p"));
        }
        assertEquals("{\"x\": 1}", JsonText.with("{}", "/x", mapper.readTree("1")));
        assertThrows(IllegalArgumentException.class, () -> JsonText.with("{}", "/x/y", value));
        assertThrows(IllegalArgumentException.class, () -> JsonText.with("{\"p\": []}", "/p/3", value));
    }
}
