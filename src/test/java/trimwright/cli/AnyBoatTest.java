package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every command on boats of every sort: each gives an answer or says why not, and what two commands say of the same thing agrees. {@code -Dtrimwright.anyBoats=2000}
 * tries more.
 */
class AnyBoatTest {

    private static final int BOATS = Integer.getInteger("trimwright.anyBoats", 8);
    private static final long FIRST = Long.getLong("trimwright.firstBoat", 0);

    private static final String READINGS = """
            {"version": 1, "readings": [
              {"id": "as she is", "seen": [{"aboveMm": -12, "at": "bow"}, {"aboveMm": -9, "at": "stern"}, {"heelDeg": 1}]},
              {"id": "across", "moved": [{"massG": 20, "byMm": [0, 40, 0]}], "seen": [{"heelDeg": 4}]}]}
            """;

    @TempDir
    Path folder;

    @Test
    void everyCommandAnswers() {
        List<String> faults = LongStream.range(FIRST, FIRST + BOATS)
                .parallel()
                .mapToObj(this::tried)
                .flatMap(List::stream)
                .toList();
        assertEquals(List.of(), faults);
    }

    private List<String> tried(long seed) {
        List<String> faults = new ArrayList<>();
        try {
            Path own = Files.createDirectory(folder.resolve("" + seed));
            Path boat = AnyBoat.of(own, seed);
            Tried tried = new Tried(seed, boat, faults);
            JsonNode floats = tried.run("float", "--tolerance");
            if (floats == null) {
                tried.fault("float cannot use the boat");
                return faults;
            }
            JsonNode dive = tried.run("dive", "--steps", 12);
            tried.run("righting");
            tried.run("inspect");
            tried.run("waterlines");
            tried.run("seat");
            JsonNode plan = tried.run("ballast", "--write", own.resolve("planned.boat.json"));
            tried.run("ballast", "--add-lead", 50);
            tried.run("pool", Files.writeString(own.resolve("any.pool.json"), READINGS));
            if (seed % 8 == 0) {
                tried.run("ballast", "--trade-off", "--lines");
                tried.run("sheet", "--plan", "--out", own.resolve("sheet.html"));
            }
            if (dive != null) {
                agree(tried, dive);
            }
            if (plan != null && plan.path("feasible").booleanValue()) {
                planned(tried, plan, own.resolve("planned.boat.json"));
            }
        } catch (IOException | RuntimeException | AssertionError e) {
            faults.add("seed " + seed + ": " + e);
        }
        return faults;
    }

    /** Where a dive tells her to rest, {@code float} with the same fills finds a rest. */
    private static void agree(Tried tried, JsonNode dive) {
        for (int i = 0; i < dive.path("steps").size(); i += 3) {
            JsonNode step = dive.path("steps").get(i);
            List<Object> fills = new ArrayList<>();
            step.path("fills").properties().forEach(f -> {
                fills.add("--fill");
                fills.add(f.getKey() + "=" + f.getValue());
            });
            JsonNode floats = tried.run("float", fills.toArray());
            String outcome = step.path("outcome").asText();
            if (!floats.path("outcome").asText().equals(outcome)) {
                tried.fault("dive " + outcome + ", float does not, with " + fills);
            } else if (outcome.equals("floats") && !isAmong(step, floats.path("attitudes"))) {
                tried.fault("dive rests at " + step.path("upVector") + ", float at " + floats.path("attitudes")
                        + " with " + fills);
            }
        }
    }

    private static boolean isAmong(JsonNode step, JsonNode attitudes) {
        Vector3D up = Run.vector(step.path("upVector"));
        for (JsonNode attitude : attitudes) {
            if (Vector3D.angle(up, Run.vector(attitude.path("upVector"))) < 1e-3
                    && Math.abs(attitude.path("heightMm").doubleValue()
                                    - step.path("heightMm").doubleValue())
                            < 1e-2) {
                return true;
            }
        }
        return false;
    }

    /** What the plan foretells is what the boat does that it wrote. */
    private static void planned(Tried tried, JsonNode plan, Path written) {
        Run run = Run.json("float", written);
        if (run.exitCode() == ExitCode.UNUSABLE) {
            tried.fault("the boat that ballast wrote: " + run.err());
            return;
        }
        JsonNode foretold = plan.path("conditions").path("surfaced");
        JsonNode does = run.object();
        for (String key : List.of("massG", "heightMm", "heelDeg", "trimDeg", "gmTransverseMm", "bgMm")) {
            tried.equal(
                    key + " planned",
                    does.path(key).doubleValue(),
                    foretold.path(key).doubleValue(),
                    2e-3);
        }
    }

    /** One boat and what is wrong with the answers about her. */
    private record Tried(long seed, Path boat, List<String> faults) {

        /** The answer; null where the input cannot be used for it. */
        JsonNode run(String command, Object... more) {
            Run run = Run.json(command, boat, more);
            if (run.err().contains("should not")) {
                fault(command + ": " + run.err());
                return null;
            }
            if (run.exitCode() == ExitCode.UNUSABLE) {
                if (!run.out().isEmpty() || run.err().isBlank()) {
                    fault(command + " says nothing, or too much: " + run.out());
                }
                return null;
            }
            if (run.out().contains("NaN") || run.out().contains("Infinity")) {
                fault(command + " has no number");
            }
            return run.object();
        }

        void equal(String what, double one, double other, double tolerance) {
            if (!(Math.abs(one - other) <= tolerance)) {
                fault(what + ": " + one + " and " + other);
            }
        }

        void fault(String text) {
            faults.add("seed " + seed + ": " + text);
        }
    }
}
