package trimwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.mesh.Solids;
import trimwright.mesh.StlWriter;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.FlotationFindings;

/** Any file given as a boat, with a mesh beside it. A boat that can be read is floated, and is then at rest. */
class BoatFuzz {

    private static final Path FILE = Promise.folder().resolve("any.boat.json");

    static {
        StlWriter.write(FILE.resolveSibling("hull.stl"), Solids.box(0, -40, 0, 300, 40, 60));
        FILE.resolveSibling("hull.stl").toFile().deleteOnExit();
    }

    @DictionaryEntries({
        "\"version\": 1",
        "\"parts\": [",
        "\"id\": \"a\"",
        "\"kind\": \"hull\"",
        "\"mesh\": \"hull.stl\"",
        "\"build\": \"skin\"",
        "\"build\": \"sealed\"",
        "\"build\": \"printed\"",
        "\"thicknessMm\": 1.5",
        "\"densityGPerCm3\": 1.2",
        "\"massG\": 500",
        "\"centreMm\": [1, 2, 3]",
        "\"fromMm\": [0, 0, 0]",
        "\"toMm\": [100, 0, 0]",
        "\"diameterMm\": 30",
        "\"ends\": \"round\"",
        "\"kind\": \"cylinder\"",
        "\"kind\": \"tank\"",
        "\"fill\": 0.5",
        "\"inside\": \"a\"",
        "\"mirror\": true",
        "\"infill\": {\"wallMm\": 1, \"percent\": 20, \"floods\": true}",
        "\"kind\": \"foam\"",
        "\"box\": {\"fromMm\": [0, 0, 0]",
        "\"zones\": [",
        "\"targets\": {",
        "\"water\": {",
        "\"dive\": {",
        "\"import\": {\"shells\": [1]}",
        "../",
        "1e300",
        "null"
    })
    @FuzzTest(maxDuration = "3m")
    void anyBoat(byte[] text) throws Throwable {
        Promise.isKept(() -> {
            LoadedBoat loaded = BoatFile.read(Promise.written(FILE, text));
            Promise.canBeWorded(loaded.findings());
            Flotation flotation = Flotation.of(loaded.boat());
            Promise.canBeWorded(FlotationFindings.of(flotation));
            for (Equilibrium rest : flotation.attitudes()) {
                double size = flotation.condition().lengthMm();
                assertTrue(Math.abs(rest.residualForceG()) <= 1e-9 * rest.massG(), "force " + rest.residualForceG());
                assertTrue(
                        rest.residualMomentGmm() <= 1e-9 * rest.massG() * size, "moment " + rest.residualMomentGmm());
            }
        });
    }
}
