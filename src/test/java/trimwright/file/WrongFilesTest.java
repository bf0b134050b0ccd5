package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

class WrongFilesTest {

    static List<String> rightFiles() {
        return RightFiles.ALL;
    }

    @ParameterizedTest
    @MethodSource("rightFiles")
    void noMistakeGivesNoError(String right, @TempDir Path folder) {
        assertFalse(BoatFile.read(TestBoat.written(folder, right)).hasErrors());
    }

    static List<WrongFiles.Wrong> wrongFiles() {
        return WrongFiles.ALL;
    }

    @ParameterizedTest
    @MethodSource("wrongFiles")
    void oneMistakeGivesOneFindingAtItsPlace(WrongFiles.Wrong wrong, @TempDir Path folder) {
        Path path = TestBoat.written(folder, wrong.text());
        List<Finding> findings = assertThrows(UnusableInputException.class, () -> BoatFile.read(path))
                .findings();
        assertEquals(
                List.of(wrong.toString()),
                findings.stream()
                        .map(f -> f.code() + " " + ((Place.InDocument) f.place()).pointer())
                        .toList(),
                findings.toString());
    }
}
