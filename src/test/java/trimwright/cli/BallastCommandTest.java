package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.Boat;
import trimwright.file.BoatFile;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.plan.PlanCheck;
import trimwright.plan.Shifted;

class BallastCommandTest {

    @TempDir
    private Path folder;

    private static JsonNode planned(Path boat, Object... more) {
        Run run = Run.json("ballast", boat, more);
        assertEquals(ExitCode.DONE, run.exitCode(), run.out() + run.err());
        assertTrue(run.object().get("feasible").booleanValue());
        return run.object();
    }

    private static JsonNode surfaced(JsonNode plan) {
        return plan.get("conditions").get("surfaced");
    }

    private static JsonNode submerged(JsonNode plan) {
        return plan.get("conditions").get("submerged");
    }

    private static double number(JsonNode node, String key) {
        return node.get(key).doubleValue();
    }

    @Test
    void everyKeyOfTheContractIsThereAndTheAimsAreMet() {
        JsonNode plan = planned(BoxSubmarine.of(folder));
        for (String key : List.of(
                "pieces", "addedLeadG", "addedFoamCm3", "conditions", "conflicts", "rooms", "worth", "rounding")) {
            assertTrue(plan.hasNonNull(key), key);
        }
        assertEquals(0, plan.get("conflicts").size());
        JsonNode afloat = surfaced(plan);
        assertEquals(0, number(afloat.get("offPaintedLine"), "bowMm"), 0.5);
        assertEquals(0, number(afloat.get("offPaintedLine"), "sternMm"), 0.5);
        assertEquals(0, number(afloat, "heelDeg"), 0.3);
        assertTrue(number(afloat, "gmTransverseMm") >= 4);
        assertTrue(number(submerged(plan), "bgMm") >= 6);
        assertTrue(number(submerged(plan), "residualG") >= 20 && number(submerged(plan), "residualG") <= 40);
        assertEquals(0, number(plan.get("conditions").get("dived"), "trimDeg"), 1.5);
        double lead = 0;
        double foam = 0;
        for (JsonNode piece : plan.get("pieces")) {
            JsonNode from = piece.get("box").get("fromMm");
            JsonNode to = piece.get("box").get("toMm");
            double volume = 1;
            for (int i = 0; i < 3; i++) {
                volume *= to.get(i).doubleValue() - from.get(i).doubleValue();
            }
            boolean isLead = piece.get("kind").textValue().equals("ballast");
            lead += isLead ? volume * number(piece, "densityGPerCm3") / 1000 : 0;
            foam += isLead ? 0 : volume / 1000;
        }
        assertEquals(lead, number(plan, "addedLeadG"), 1e-6);
        assertEquals(foam, number(plan, "addedFoamCm3"), 1e-6);
    }

    /** What floating the written file says is what the plan said, to 0.1 mm and 0.05°. */
    @Test
    void theWrittenBoatFloatsAndDivesAsForetold() throws IOException {
        Path boat = BoxSubmarine.of(folder);
        String before = Files.readString(boat);
        Path out = folder.resolve("trimmed.boat.json");
        JsonNode plan = planned(boat, "--write", out);
        assertEquals(before, Files.readString(boat));
        JsonNode afloat = Run.json("float", out).object();
        JsonNode foretold = surfaced(plan);
        assertEquals(number(foretold, "heightMm"), number(afloat, "heightMm"), 0.1);
        assertEquals(number(foretold, "heelDeg"), number(afloat, "heelDeg"), 0.05);
        assertEquals(number(foretold, "trimDeg"), number(afloat, "trimDeg"), 0.05);
        assertEquals(number(submerged(plan), "bgMm"), number(afloat.get("submerged"), "bgMm"), 0.1);
        assertEquals(number(submerged(plan), "residualG"), number(afloat.get("submerged"), "residualG"), 0.1);
        JsonNode dived = Run.json("float", out, "--fill", "tank=1").object();
        JsonNode divedForetold = plan.get("conditions").get("dived");
        assertEquals(number(divedForetold, "trimDeg"), number(dived, "trimDeg"), 0.05);
        assertEquals(number(divedForetold, "heelDeg"), number(dived, "heelDeg"), 0.05);
        // Planned again, the written boat is right as she is.
        JsonNode again = planned(out);
        assertEquals(0, number(again, "addedLeadG") + number(again, "addedFoamG"), 3);
    }

    @Test
    void nothingIsWrittenOverUnlessTold() throws IOException {
        Path boat = BoxSubmarine.of(folder);
        Path out = Files.write(folder.resolve("mine.boat.json"), "mine".getBytes(StandardCharsets.UTF_8));
        Run refused = Run.json("ballast", boat, "--write", out);
        assertEquals(ExitCode.UNUSABLE, refused.exitCode());
        assertEquals("", refused.out());
        assertTrue(refused.err().contains("there already"), refused.err());
        assertEquals("mine", Files.readString(out));
        planned(boat, "--write", out, "--overwrite");
        assertTrue(Files.readString(out).contains("lead"));
        // Where there is no plan, nothing is written at all.
        Path none = folder.resolve("none.boat.json");
        assertEquals(
                ExitCode.NO,
                Run.json("ballast", BoxSubmarine.withTank(folder, BoxSubmarine.TANK_60), "--write", none)
                        .exitCode());
        assertFalse(Files.exists(none));
    }

    @Test
    void defaultsHoldWhereTheFileIsSilent() {
        Run run = Run.json("ballast", BoxSubmarine.with(folder, BoxSubmarine.ZONES));
        JsonNode plan = run.object();
        assertEquals(ExitCode.DONE, run.exitCode(), run.out());
        double weight = number(surfaced(plan), "massG");
        assertTrue(number(submerged(plan), "bgMm") >= 5);
        assertTrue(number(surfaced(plan), "gmTransverseMm") >= 5);
        // The band is of the boat's weight as she came, which is some hundred grams less.
        assertTrue(number(submerged(plan), "residualG") >= 0.005 * 0.7 * weight);
        assertTrue(number(submerged(plan), "residualG") <= 0.015 * weight);
    }

    @Test
    void everyTargetCanBeOverridden() {
        Path boat = BoxSubmarine.of(folder);
        assertTrue(number(submerged(planned(boat, "--bg", "7.5")), "bgMm") >= 7.5);
        assertTrue(number(surfaced(planned(boat, "--gm", "7")), "gmTransverseMm") >= 7);
        double residual = number(submerged(planned(boat, "--residual", "50..60")), "residualG");
        assertTrue(residual >= 50 && residual <= 60, "residual " + residual);
        JsonNode exact = planned(boat, "--off-line", "0.2", "--list", "0.1", "--dived-trim", "0.8");
        assertEquals(0, number(surfaced(exact).get("offPaintedLine"), "bowMm"), 0.2);
        assertEquals(0, number(surfaced(exact).get("offPaintedLine"), "sternMm"), 0.2);
        assertEquals(0, number(surfaced(exact), "heelDeg"), 0.1);
        assertEquals(0, number(exact.get("conditions").get("dived"), "trimDeg"), 0.8);
    }

    @Test
    void otherMaterialsAreTaken() {
        JsonNode plan = planned(BoxSubmarine.of(folder), "--lead-density", "7.8", "--foam-density", "0.1");
        List<Double> densities = new ArrayList<>();
        plan.get("pieces").forEach(p -> densities.add(number(p, "densityGPerCm3")));
        assertTrue(densities.stream().allMatch(d -> Math.abs(d - 7.8) < 1e-9 || Math.abs(d - 0.1) < 1e-9));
    }

    @Test
    void forStabilityUsesTheMassThatIsAllowed() {
        Path boat = BoxSubmarine.of(folder);
        JsonNode least = planned(boat);
        double added = number(least, "addedLeadG") + number(least, "addedFoamG");
        JsonNode firm = planned(boat, "--for", "stability", "--mass", String.valueOf(Math.round(added + 200)));
        double used = number(firm, "addedLeadG") + number(firm, "addedFoamG");
        assertTrue(used <= added + 201 && used >= 0.95 * (added + 200), "used " + used);
        assertTrue(number(submerged(firm), "bgMm") > number(submerged(least), "bgMm") + 1);
    }

    @Test
    void aPairKeepsTheLineAndSaysSo() throws IOException {
        Path trimmed = folder.resolve("trimmed.boat.json");
        planned(BoxSubmarine.of(folder), "--write", trimmed);
        Path boat = Files.writeString(
                folder.resolve("camera.boat.json"),
                Files.readString(trimmed)
                        .replace(
                                "{\"id\": \"tower\"",
                                "{\"id\": \"camera\", \"kind\": \"fitting\", \"centreMm\": [500, 40, 60],"
                                        + " \"massG\": 15, \"densityGPerCm3\": 2},\n{\"id\": \"tower\""));
        JsonNode before = Run.json("float", boat).object();
        assertTrue(Math.abs(number(before, "heelDeg")) > 0.5, "a boat without a list shows nothing");
        JsonNode pair = planned(boat, "--add-lead", "100");
        assertEquals(100, number(pair, "addedLeadG"), 1);
        assertEquals(number(before, "heelDeg"), number(surfaced(pair), "heelDeg"), 0.1);
        assertEquals(number(before, "trimDeg"), number(surfaced(pair), "trimDeg"), 0.05);
        assertTrue(Run.of("ballast", boat, "--add-lead", "100")
                .out()
                .replaceAll("\\s+", " ")
                .contains("A list or trim that she has stays"));
        JsonNode reverse = planned(boat, "--add-foam", "80");
        assertEquals(80, number(reverse, "addedFoamCm3"), 1.5);
        // 80 cm³ of foam of 0.03 g/cm³ carry 0.9682 g each; lead weighs 1 − 0.9982/11.34 of its mass in the water.
        assertEquals(80 * (0.9982 - 0.03) / (1 - 0.9982 / 11.34), number(reverse, "addedLeadG"), 2.5);
    }

    /**
     * Heron as shipped lists, afloat and dived. By Archimedes 100 g of lead weigh 100 (1 − 0.9982/11.34) g in the water, and a cm³ of foam lifts
     * 0.9982 − 0.03 g.
     */
    @Test
    void aPairIsFoundForABoatThatListsWhenDived() {
        Path heron = Path.of("sample-meshes/heron.boat.json");
        JsonNode pair = planned(heron, "--add-lead", "100");
        assertEquals(100, number(pair, "addedLeadG"), 1);
        assertEquals(100 * (1 - 0.9982 / 11.34) / (0.9982 - 0.03), number(pair, "addedFoamCm3"), 2);
        JsonNode before = Run.json("float", heron).object();
        assertEquals(number(before, "heelDeg"), number(surfaced(pair), "heelDeg"), 0.35);
        assertEquals(number(before, "trimDeg"), number(surfaced(pair), "trimDeg"), 0.05);
        assertTrue(number(submerged(pair), "bgMm") > number(before.get("submerged"), "bgMm") + 0.5);
        JsonNode dived = Run.json("float", heron, "--fill", "main tank=1").object();
        assertEquals(number(dived, "trimDeg"), number(pair.get("conditions").get("dived"), "trimDeg"), 0.5);
    }

    @Test
    void tooLittleMassAllowedIsTheReasonWhenItIs() {
        Path boat = BoxSubmarine.of(folder);
        JsonNode least = planned(boat);
        double needed = number(least, "addedLeadG") + number(least, "addedFoamG");
        Run run = Run.json("ballast", boat, "--for", "stability", "--mass", String.valueOf(Math.round(needed / 2)));
        assertEquals(ExitCode.NO, run.exitCode(), run.out());
        JsonNode conflict = run.object().get("conflicts").get(0);
        assertEquals("mass_limit", conflict.get("cause").textValue());
        assertEquals(needed, number(conflict.get("figures"), "neededG"), 0.05 * needed);
        JsonNode way = run.object().get("waysOut").get(0);
        assertEquals("mass_allowed", way.get("change").textValue());
        double allowed = Math.round(needed / 2) + number(way, "amount");
        planned(boat, "--for", "stability", "--mass", String.valueOf(Math.round(allowed)));
    }

    @Test
    void whatIsLooseIsTakenOutOrMoved() {
        String foam = ", {\"id\": \"old foam\", \"kind\": \"foam\", \"densityGPerCm3\": 0.03,"
                + " \"box\": {\"fromMm\": [300, -20, 90], \"toMm\": [500, 20, 100]}}";
        Path boat = BoxSubmarine.withParts(folder, foam);
        assertEquals(
                ExitCode.NO, Run.json("ballast", boat, "--residual", "20..25").exitCode());
        JsonNode plan = planned(boat, "--take-from", "old foam", "--residual", "20..25");
        assertEquals("old foam", plan.get("takenOut").get(0).get("id").textValue());
        assertTrue(number(plan.get("takenOut").get(0), "share") > 0.3);
        Path loose = BoxSubmarine.withParts(folder, foam.replace("0.03,", "0.03, \"fixed\": false,"));
        Path out = folder.resolve("loose.boat.json");
        JsonNode same = planned(loose, "--residual", "20..25", "--write", out);
        assertTrue(same.get("takenOut").size() + same.get("moved").size() > 0);
        JsonNode afloat = Run.json("float", out).object();
        assertEquals(number(surfaced(same), "heightMm"), number(afloat, "heightMm"), 0.1);
        Run unknown = Run.json("ballast", boat, "--take-from", "new foam");
        assertEquals(ExitCode.UNUSABLE, unknown.exitCode());
        assertTrue(unknown.err().contains("old foam"), unknown.err());
    }

    @Test
    void theCylinderMayBeMovedWithinLimits() {
        Path boat = BoxSubmarine.of(folder);
        JsonNode asIs = planned(boat);
        JsonNode moved = planned(boat, "--move", "wtc=-30..30");
        assertTrue(Math.abs(number(moved, "movedMm")) <= 30);
        assertTrue(number(moved.get("rounding"), "idealMassG") <= number(asIs.get("rounding"), "idealMassG") + 1e-6);
        assertEquals(
                ExitCode.UNUSABLE,
                Run.json("ballast", boat, "--move", "tower=-3..3").exitCode());
        assertEquals(
                ExitCode.UNUSABLE, Run.json("ballast", boat, "--move", "wtc=9").exitCode());
    }

    @Test
    void aMoveThatHelpsNowhereOrRunsIntoSomethingIsTold() {
        Path file = BoxSubmarine.of(folder);
        Run nowhere = Run.json("ballast", file, "--move", "wtc=500..600");
        // She has a plan as she is, and far forward too, but for the cylinder that would stick out.
        assertEquals(ExitCode.DONE, nowhere.exitCode());
        assertFalse(nowhere.object().has("movedMm"));
        assertTrue(
                nowhere.object().get("findings").findValuesAsText("code").contains("MOVE_WITHOUT_PLAN"), nowhere.out());
        Boat boat = BoatFile.read(file).boat();
        assertEquals(List.of(), PlanCheck.moved(boat, Shifted.along(boat, "wtc", 0)));
        List<Code> far = PlanCheck.moved(boat, Shifted.along(boat, "wtc", 500)).stream()
                .map(Finding::code)
                .toList();
        assertTrue(far.contains(Code.OUTSIDE_HULL), far.toString());
    }

    @Test
    void theTradeOffAndTheLinesAreTables() throws IOException {
        Path boat = BoxSubmarine.of(folder);
        Path plot = folder.resolve("cost.svg");
        JsonNode plan = planned(boat, "--trade-off", "--lines", "--plot", plot);
        JsonNode points = plan.get("tradeOff").get("points");
        assertTrue(points.size() >= 15, "points " + points.size());
        for (int i = 1; i < points.size(); i++) {
            assertTrue(number(points.get(i), "bgMm") > number(points.get(i - 1), "bgMm"));
            assertTrue(number(points.get(i), "addedG") >= number(points.get(i - 1), "addedG") - 1e-6);
        }
        assertTrue(plan.get("lines").size() > 0);
        assertTrue(Files.readString(plot).contains("<svg"));
        Run again = Run.json("ballast", boat, "--plot", plot);
        assertEquals(ExitCode.UNUSABLE, again.exitCode());
        assertTrue(again.err().contains("there already"), again.err());
    }

    @Test
    void zonesAreFoundWhereTheFileGivesNone() {
        JsonNode plan = planned(BoxSubmarine.with(folder, BoxSubmarine.TARGETS));
        assertTrue(plan.get("rooms").findValuesAsText("zone").containsAll(List.of("keel", "bow", "stern", "sides")));
        assertTrue(plan.get("findings").findValuesAsText("code").contains("ZONES_FOUND"));
    }

    @Test
    void theTextIsACutListInWords() {
        String text = Run.of("ballast", BoxSubmarine.of(folder)).out();
        assertTrue(text.lines().allMatch(l -> l.length() <= Page.WIDTH), text);
        String words = text.replaceAll("\\s+", " ");
        assertTrue(words.contains("strip of lead 18 ×"), text);
        assertTrue(words.contains("mm ahead of the stern"), text);
        assertTrue(words.contains("B above G, dived, "), text);
        assertFalse(text.contains("-0.0"), text);
    }
}
