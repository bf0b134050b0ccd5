package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.file.BoatFile;

/** Water planes that it takes to settle, counted: a guard on speed that no busy machine upsets. */
class OperationCountTest {

    private static Condition sample(String name) {
        return Condition.of(
                BoatFile.read(Path.of("sample-meshes", name + ".boat.json")).boat());
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "dabchick", "coot"})
    void settlesWithinEightPlanes(String name) {
        int cuts = Flotation.rest(sample(name)).orElseThrow().cuts();
        assertTrue(cuts >= 2 && cuts <= 8, () -> "planes: " + cuts);
    }

    /** Each state starts where the last ones foretell it: three planes, more only where the deck or the tower goes under. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "dabchick"})
    void aDiveTakesAboutThreePlanesAStep(String name) {
        Condition condition = sample(name);
        int steps = 50;
        int cuts = DiveRun.of(condition, steps).course().steps().stream()
                .flatMap(step -> step.settled().stream())
                .mapToInt(Equilibrium::cuts)
                .sum();
        assertTrue(cuts >= steps && cuts <= 4 * steps, () -> "planes: " + cuts);
    }
}
