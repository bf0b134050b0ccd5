package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.UnusableInputException;

/** What was read ahead is what would have been read later, faults included. */
class BoatAheadTest {

    private static final String DABCHICK = "sample-meshes/dabchick.boat.json";

    @TempDir
    Path folder;

    @Test
    void theBoatThatWasReadAheadIsHandedOver() {
        BoatAhead ahead = BoatAhead.of(DABCHICK);
        assertTrue(ahead.isOf(Path.of(DABCHICK)));
        assertFalse(ahead.isOf(Path.of("sample-meshes/heron.boat.json")));
        assertSame(ahead.call(), ahead.call());
        assertEquals(BoatFile.read(Path.of(DABCHICK)).text(), ahead.call().text());
    }

    @Test
    void whatIsWrongWithTheFileIsToldWhenSheIsAskedFor() throws Exception {
        Path file = Files.writeString(folder.resolve("a.boat.json"), "{\"version\": 1, \"parts\": []}");
        BoatAhead ahead = BoatAhead.of(file.toString());
        UnusableInputException told = assertThrows(UnusableInputException.class, ahead::call);
        assertEquals(
                assertThrows(UnusableInputException.class, () -> BoatFile.read(file))
                        .findings(),
                told.findings());
    }

    @Test
    void aNameThatNoFileCanHaveIsToldThenToo() {
        BoatAhead ahead = BoatAhead.of("a\0.boat.json");
        assertFalse(ahead.isOf(Path.of(DABCHICK)));
        assertThrows(InvalidPathException.class, ahead::call);
    }
}
