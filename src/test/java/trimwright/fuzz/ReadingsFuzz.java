package trimwright.fuzz;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import trimwright.boat.Boat;
import trimwright.file.BoatFile;
import trimwright.file.PoolFile;
import trimwright.plan.pool.PoolEstimate;

/** Any file given as the readings of a pool test. What can be read is fitted. */
class ReadingsFuzz {

    private static final Path FILE = Promise.folder().resolve("any.pool.json");
    private static final Boat BOAT = BoatFile.read(
                    Promise.written(FILE.resolveSibling("box.boat.json"), """
            {"version": 1, "paintedLine": [[10, 0, 30], [290, 0, 30]],
             "parts": [
               {"id": "hull", "kind": "cylinder", "box": {"fromMm": [0, -40, 0], "toMm": [300, 40, 60]}, "massG": 500, "centreMm": [150, 1, 20]},
               {"id": "tank", "kind": "tank", "inside": "hull", "box": {"fromMm": [100, -20, 10], "toMm": [200, 20, 40]}}]}
            """.getBytes(StandardCharsets.UTF_8)))
            .boat();

    @DictionaryEntries({
        "\"version\": 1",
        "\"readings\": [",
        "\"id\": \"a\"",
        "\"seen\": [",
        "\"aboveMm\": 2",
        "\"heelDeg\": 1",
        "\"trimDeg\": 1",
        "\"freeboardMm\": 9",
        "\"at\": \"bow\"",
        "\"atMm\": [1, 2, 3]",
        "\"errorMm\": 0.5",
        "\"errorDeg\": 1",
        "\"fills\": {\"tank\": 1}",
        "\"hangingG\": 20",
        "\"rollS\": 1",
        "\"added\": [{\"massG\": 10, \"centreMm\": [0, 0, 0]}]",
        "\"moved\": [{\"massG\": 5, \"byMm\": [0, 9, 0]}]"
    })
    @FuzzTest(maxDuration = "2m")
    void anyReadings(byte[] text) throws Throwable {
        Promise.isKept(() -> PoolEstimate.of(BOAT, PoolFile.read(Promise.written(FILE, text), BOAT)));
    }
}
