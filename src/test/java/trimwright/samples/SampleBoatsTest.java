package trimwright.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.boat.FitCheck;
import trimwright.boat.Piece;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.finding.Severity;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;

/**
 * The sample boats are what sample-meshes/README.md says they are. Tolerances are half of the last digit that it prints, save where
 * a comment says otherwise.
 */
class SampleBoatsTest {

    @ParameterizedTest
    @ValueSource(strings = {"heron", "dabchick", "coot"})
    void fileReadsWithoutComplaint(String name) {
        assertEquals(List.of(), read(name).findings());
    }

    /** No part stands in another or sticks out of the hull, save fittings such as rudders, which are notes. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "dabchick", "coot"})
    void partsFit(String name) {
        assertEquals(
                List.of(),
                FitCheck.of(read(name).boat()).stream()
                        .filter(f -> f.severity() != Severity.NOTE)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({
        // name, mass g, water above the paint at bow and stern mm, list °, GM mm
        "heron, 2738, -3.2, 2.4, -1.1, 3.1",
        "dabchick, 439, -0.1, 0.0, 0.0, 2.9",
        "coot, 1617, -0.7, 0.8, -1.0, 19.0",
    })
    void floatsAsTold(String name, double massG, double bowMm, double sternMm, double listDeg, double gmMm) {
        Flotation flotation = Flotation.of(read(name).boat());
        Equilibrium settled = flotation.settled().orElseThrow();
        PaintedOffset off = flotation.fromPaintedLine().orElseThrow();
        assertEquals(massG, settled.massG(), 0.5);
        assertEquals(bowMm, off.bowMm(), 0.05);
        assertEquals(sternMm, off.sternMm(), 0.05);
        assertEquals(listDeg, settled.heelDeg(), 0.05);
        assertEquals(gmMm, settled.gmTransverseMm(), 0.05);
        assertEquals(1, flotation.attitudes().size());
    }

    @ParameterizedTest
    @CsvSource({
        // name, tank cm³, BG surfaced mm, BG dived mm, residual g, trim hanging free °
        "heron, 225, 1.0, 5.7, 42, 16.5",
        "dabchick, 54, 1.1, 4.9, 6, -0.5",
    })
    void divesAsTold(
            String name, double tankCm3, double bgMm, double divedBgMm, double residualG, double divedTrimDeg) {
        Flotation flotation = Flotation.of(read(name).boat());
        assertEquals(tankCm3, flotation.condition().tankVolumeMm3() / 1000, 0.5);
        assertEquals(bgMm, flotation.settled().orElseThrow().bgMm(), 0.05);
        assertEquals(divedBgMm, flotation.submerged().bgMm(), 0.05);
        assertEquals(residualG, flotation.submerged().residualG(), 0.5);
        assertEquals(divedTrimDeg, flotation.submerged().trimDeg(), 0.05);
    }

    /** What the tank takes in is what stands above the painted line, less the residual: then a plan that puts her on her line can be found. */
    @Test
    void heronsTankSuitsHerLine() {
        LoadedBoat heron = read("heron");
        Condition condition = Condition.of(heron.boat());
        double aboveMm3 = condition.volumeMm3()
                - condition
                        .below(heron.boat().paintedLine().orElseThrow().plane())
                        .volumeMm3();
        double residualG = condition.densityGPerMm3() * (aboveMm3 - condition.tankVolumeMm3());
        var band = heron.boat().targets().residualG().orElseThrow();
        assertTrue(residualG > band.least() && residualG < band.greatest(), () -> "residual " + residualG + " g");
    }

    /** A compact piece of unknown density would be weighed but not displaced; outside a watertight part nothing may be. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "dabchick", "coot"})
    void allThatIsWetDisplaces(String name) {
        for (Piece piece : read(name).boat().pieces()) {
            assertEquals(piece.part().inside().isEmpty(), piece.displacer().isPresent(), piece.id());
        }
    }

    private static LoadedBoat read(String name) {
        return BoatFile.read(Path.of("sample-meshes", name + ".boat.json"));
    }
}
