package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Boats for which there is no plan, and what cannot be planned with. */
class BallastRefusedTest {

    @TempDir
    private Path folder;

    @Test
    void noPlanIsAnAnswerWithReasonsAndWaysOut() {
        Path boat = BoxSubmarine.withTank(folder, BoxSubmarine.TANK_60);
        Run run = Run.json("ballast", boat);
        assertEquals(ExitCode.NO, run.exitCode());
        JsonNode plan = run.object();
        assertFalse(plan.get("feasible").booleanValue());
        JsonNode conflict = plan.get("conflicts").get(0);
        assertEquals("residual", conflict.get("target").textValue());
        assertTrue(conflict.get("amount").doubleValue() > 0);
        assertEquals("tank_too_small", conflict.get("cause").textValue());
        assertEquals(230.9, conflict.get("figures").get("tankCm3").doubleValue(), 0.1);
        assertTrue(conflict.get("reason").textValue().contains("the tank holds 231 cm³, but "), conflict.toString());
        List<String> ways = plan.get("waysOut").findValuesAsText("change");
        assertTrue(ways.contains("tank_volume"), ways.toString());
        String text = Run.of("ballast", boat).out();
        assertTrue(text.contains("There is no plan"), text);
        assertTrue(text.lines().allMatch(l -> l.length() <= Page.WIDTH), text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--bg -1|--bg takes 0 to",
                "--off-line 0|--off-line takes",
                "--list x|--list",
                "--residual 40..20|the smaller first, as in 20..40; found 40..20",
                "--residual -5..5|which no boat can be held to",
                "--residual 30|LEAST..MOST",
                "--mass 100|--for stability",
                "--for stability|needs --mass",
                "--for speed|mass or stability",
                "--for stability --mass -3|--mass takes 1 to",
                "--add-lead -5|--add-lead takes 1 to",
                "--add-lead 5 --add-foam 5|Give one of",
                "--add-lead 5 --bg 9|--bg is for a whole plan",
                "--add-foam 5 --take-from x|--take-from is for a whole plan",
                "--lead-density 0|--lead-density takes",
                "--plot x.gif|Allowed are"
            })
    void wrongOptionsAreRefused(String options, String message) {
        Path boat = BoxSubmarine.of(folder);
        Run run = Run.json("ballast", boat, (Object[]) options.split(" "));
        assertEquals(ExitCode.UNUSABLE, run.exitCode(), run.out() + run.err());
        assertEquals("", run.out());
        assertTrue(run.err().contains(message), run.err());
    }

    private void assertRefused(Path boat, String message) {
        Run run = Run.json("ballast", boat);
        assertEquals(ExitCode.UNUSABLE, run.exitCode(), run.out());
        assertEquals("", run.out());
        assertTrue(run.err().contains(message), run.err());
    }

    @Test
    void boatsThatCannotBePlannedForAreRefused() {
        assertRefused(BoxSubmarine.withoutLine(folder), "no painted line");
        String reversed = BoxSubmarine.ZONES + ", \"targets\": {\"residualG\": [40, 20]}";
        assertRefused(BoxSubmarine.with(folder, reversed), "40");
        String negative = "\"zones\": [{\"id\": \"keel\", \"for\": \"ballast\", \"maxG\": -1,"
                + " \"box\": {\"fromMm\": [60, -9, 2], \"toMm\": [740, 9, 11]}}]";
        assertRefused(BoxSubmarine.with(folder, negative), "maxG");
    }

    private static String keel(String box) {
        return "\"zones\": [{\"id\": \"keel\", \"for\": \"ballast\", \"box\": " + box + "}], " + BoxSubmarine.TARGETS;
    }

    private List<String> codes(Run run) {
        return run.object().get("findings").findValuesAsText("code");
    }

    @Test
    void zonesThatHoldNothingAreNamed() {
        Run outside = Run.json(
                "ballast", BoxSubmarine.with(folder, keel("{\"fromMm\": [60, -9, -30], \"toMm\": [740, 9, -20]}")));
        assertEquals(ExitCode.NO, outside.exitCode());
        assertTrue(codes(outside).contains("ZONE_WITHOUT_ROOM"), codes(outside).toString());
        Run inCylinder = Run.json(
                "ballast", BoxSubmarine.with(folder, keel("{\"fromMm\": [200, -9, 40], \"toMm\": [600, 9, 60]}")));
        assertEquals(ExitCode.NO, inCylinder.exitCode());
        assertTrue(inCylinder.out().contains("taken up by wtc"), inCylinder.out());
    }

    @Test
    void withoutAZoneForLeadItIsSaid() {
        Run run = Run.json(
                "ballast",
                BoxSubmarine.with(
                        folder,
                        "\"zones\": [{\"id\": \"saddle\", \"for\": \"foam\", \"mirror\": true, \"box\":"
                                + " {\"fromMm\": [60, 40, 40], \"toMm\": [740, 57, 100]}}], " + BoxSubmarine.TARGETS));
        assertEquals(ExitCode.NO, run.exitCode());
        assertTrue(codes(run).contains("PLAN_ONE_MATERIAL"), codes(run).toString());
    }
}
