package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.finding.UnusableInputException;

/** What was read ahead is what would have been read later, faults included. */
class BoatAheadTest {

    private static final String DABCHICK = "sample-meshes/dabchick.boat.json";

    @TempDir
    Path folder;

    @Test
    void theBoatThatWasReadAheadIsHandedOver() {
        BoatAhead ahead = BoatAhead.of("float", DABCHICK, "--json");
        LoadedBoat boat = ahead.read(Path.of(DABCHICK));
        assertSame(boat, ahead.read(Path.of(DABCHICK)));
        assertEquals(BoatFile.read(Path.of(DABCHICK)).text(), boat.text());
    }

    @Test
    void anotherFileIsReadWhenAskedFor() {
        BoatAhead ahead = BoatAhead.of("float", "not-there.boat.json");
        assertEquals("Dabchick", ahead.read(Path.of(DABCHICK)).boat().name().split(",")[0]);
        BoatAhead none = BoatAhead.of("float", "--json", DABCHICK);
        assertNotSame(none.read(Path.of(DABCHICK)), none.read(Path.of(DABCHICK)));
    }

    @Test
    void whatIsWrongWithTheFileIsToldWhenSheIsAskedFor() throws Exception {
        Path file = Files.writeString(folder.resolve("a.boat.json"), "{\"version\": 1, \"parts\": []}");
        BoatAhead ahead = BoatAhead.of("float", file.toString());
        UnusableInputException told = assertThrows(UnusableInputException.class, () -> ahead.read(file));
        assertEquals(
                assertThrows(UnusableInputException.class, () -> BoatFile.read(file))
                        .findings(),
                told.findings());
    }

    @Test
    void aNameThatNoFileCanHaveIsLeftToTheCommandLine() {
        assertThrows(
                UnusableInputException.class,
                () -> BoatAhead.of("float", "a\0.boat.json").read(Path.of("not-there.boat.json")));
    }
}
