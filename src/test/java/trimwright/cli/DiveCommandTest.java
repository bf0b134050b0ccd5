package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiveCommandTest {

    private static final Path SAMPLES = Path.of("sample-meshes");
    /** A box tank of 200 × 40 × 25, 200 cm³, inside the box boat. */
    private static final String TANK = ", {\"id\": \"tank\", \"kind\": \"tank\", \"inside\": \"box\","
            + " \"box\": {\"fromMm\": [100, -20, 10], \"toMm\": [300, 20, 35]}}";

    private static final String TWO = ", {\"id\": \"fore\", \"kind\": \"tank\", \"inside\": \"box\","
            + " \"box\": {\"fromMm\": [250, -20, 10], \"toMm\": [350, 20, 35]}},"
            + " {\"id\": \"aft\", \"kind\": \"tank\", \"inside\": \"box\","
            + " \"box\": {\"fromMm\": [50, -20, 10], \"toMm\": [150, 20, 35]}}";

    @TempDir
    private Path folder;

    private Path box(double massG, String parts) {
        return BoxBoat.of(folder, massG, "[200, 0, 24]", parts);
    }

    private static JsonNode dived(Path boat, Object... more) {
        Run run = Run.json("dive", boat, more);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        return run.object();
    }

    /** Box barge with a box tank: KB = T/2, BM = B²/12T, free surface i/V with i = l b³/12 (closed forms). */
    @Test
    void everyStepOfABoxBargeHasItsClosedForm() {
        JsonNode json = dived(box(1200, TANK), "--steps", 8);
        assertEquals(9, json.get("steps").size());
        for (int k = 0; k <= 8; k++) {
            JsonNode step = json.get("steps").get(k);
            double fill = k / 8.0;
            double water = 200 * fill;
            double weight = 1200 + water;
            double draught = weight * 1000 / (400 * 100);
            double loss = k == 0 || k == 8 ? 0 : 200 * Math.pow(40, 3) / 12 / (weight * 1000);
            double kg = (1200 * 24 + water * (10 + 12.5 * fill)) / weight;
            double gm = draught / 2 + 100 * 100 / (12 * draught) - kg - loss;
            assertEquals(fill, step.get("fill").doubleValue(), 1e-15);
            assertEquals(fill, step.get("fills").get("tank").doubleValue(), 1e-15);
            assertEquals("floats", step.get("outcome").textValue());
            assertEquals(weight, step.get("massG").doubleValue(), 1e-9);
            assertEquals(draught, step.get("heightMm").doubleValue(), 1e-8);
            assertEquals(gm, step.get("gmTransverseMm").doubleValue(), 1e-7);
            assertEquals(gm, step.get("uprightGmMm").doubleValue(), 1e-7);
            assertEquals(draught - 30, step.get("offPaintedLine").get("bowMm").doubleValue(), 1e-8);
            assertEquals("box", step.get("standing").get(0).get("part").textValue());
            assertEquals(
                    80 - draught, step.get("standing").get(0).get("aboveMm").doubleValue(), 1e-8);
            // Only the attitude that she follows is looked for on the way.
            assertEquals(1, step.get("attitudes").size());
        }
        // All under: 3200 g of lift, B at 40; G of 1200 g at 24 and 200 g at 22.5.
        assertEquals(1800, json.get("submerged").get("residualG").doubleValue(), 1e-6);
        assertEquals(
                40 - (1200 * 24 + 200 * 22.5) / 1400,
                json.get("submerged").get("bgMm").doubleValue(),
                1e-9);
        assertEquals(1800, json.get("failSafe").get("residualG").doubleValue(), 1e-6);
        assertEquals("box", json.get("failSafe").get("staysOut").get("part").textValue());
        assertEquals(0, json.get("unstable").size());
        // What stands above the painted line at 30 mm: 50 mm of the box.
        assertEquals(2000, json.get("tankSizing").get("aboveCm3").doubleValue(), 1e-6);
        assertEquals(200, json.get("tankSizing").get("thereCm3").doubleValue(), 1e-9);
        // The outline is 1 m all the way; 74.2 mN/m would be pure water at about 10 °C, and 20 °C is assumed here
        // (IAPWS, 72.74).
        assertEquals(1000, json.get("surfaceFilm").get("greatestOutlineMm").doubleValue(), 1e-6);
        assertEquals(7.42, json.get("surfaceFilm").get("greatestG").doubleValue(), 0.01);
    }

    /** 3000 g and 200 g of room for them: she sinks when all that the box displaces, 3200 g, is reached. */
    @Test
    void aBoatThatSinksOnTheWaySaysFromWhere() {
        Run run = Run.json("dive", box(3050, TANK));
        assertEquals(ExitCode.NO, run.exitCode());
        JsonNode json = run.object();
        assertEquals(0.75, json.get("failSafe").get("sinksFromFill").doubleValue(), 1e-9);
        assertEquals(-50, json.get("failSafe").get("residualG").doubleValue(), 1e-6);
        assertEquals("sinks", json.get("steps").get(20).get("outcome").textValue());
        assertEquals(50, json.get("steps").get(20).get("deficitG").doubleValue(), 1e-6);
        assertFalse(json.get("failSafe").has("staysOut"));
        String text = Run.of("dive", box(3050, TANK)).out();
        assertTrue(text.contains("does not come back by herself: from 75.0 % full on"), text);
    }

    @Test
    void aBoatThatSinksAlreadySaysSo() {
        Run run = Run.of("dive", box(3300, TANK));
        assertEquals(ExitCode.NO, run.exitCode());
        assertTrue(run.out().contains("She sinks before the dive begins: she is 100.0 g heavier"), run.out());
        Run json = Run.json("dive", box(3300, TANK));
        assertEquals(ExitCode.NO, json.exitCode());
        assertEquals(0, json.object().get("failSafe").get("sinksFromFill").doubleValue());
    }

    @Test
    void withoutATankItSaysWhatIsMissing() {
        Run run = Run.json("dive", box(1200, ""));
        assertEquals(ExitCode.UNUSABLE, run.exitCode());
        assertEquals("", run.out());
        assertTrue(run.err().contains("has no tank"), run.err());
        assertTrue(run.err().contains("Add a part of kind tank"), run.err());
    }

    /** One tank after the other, the second begins where the first is full. */
    @Test
    void tanksFillInTheOrderTold() {
        JsonNode steps =
                dived(box(1200, TWO), "--steps", 4, "--order", "aft,fore").get("steps");
        double[][] expected = {{0, 0}, {0, 0.5}, {0, 1}, {0.5, 1}, {1, 1}};
        for (int k = 0; k < 5; k++) {
            assertEquals(expected[k][0], steps.get(k).get("fills").get("fore").doubleValue(), 1e-12);
            assertEquals(expected[k][1], steps.get(k).get("fills").get("aft").doubleValue(), 1e-12);
        }
        // Weight aft sinks the stern: bow up.
        assertTrue(steps.get(2).get("trimDeg").doubleValue() > 0.5);
        JsonNode together =
                dived(box(1200, TWO), "--steps", 4, "--order", "aft + fore").get("steps");
        assertEquals(0, together.get(2).get("trimDeg").doubleValue(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--order,nose | there is no tank \"nose\"; her tanks are tank.",
                "--order,tank+tank | twice",
                "--order,'tank,,' | ids of tanks",
                "--steps,0 | 1 to 1000",
                "--steps,2.5 | whole number",
                "--steps,x | no number",
                "--draining,1.4 | 0 to 1",
                "--depth,-1 | 0.1 to 30",
                "--fill,tank=1.4 | 1.4",
                "--water,500 | 500"
            })
    void aWrongOptionIsToldWithWhatIsAllowed(String options, String told) {
        String[] option = options.strip().split(",", 2);
        Run run = Run.json("dive", box(1200, TANK), option[0], option[1].replace("'", ""));
        assertEquals(ExitCode.UNUSABLE, run.exitCode(), run.out());
        assertEquals("", run.out());
        assertTrue(run.err().contains(told), run.err());
        assertFalse(run.err().contains("\tat "), run.err());
    }

    @Test
    void aSalinityOf500IsRefusedWithItsPlace() throws IOException {
        Path boat = Files.writeString(
                folder.resolve("salty.boat.json"),
                Files.readString(box(1200, TANK))
                        .replace("{\"densityGPerCm3\": 1}", "{\"temperatureC\": 20, \"salinityGPerKg\": 500}"));
        Run run = Run.json("dive", boat);
        assertEquals(ExitCode.UNUSABLE, run.exitCode());
        assertTrue(run.err().contains("/water/salinityGPerKg"), run.err());
    }

    /** The tank reaches 100 mm out of the box, 100 cm³; two tanks share 100 cm³ (by hand). */
    @Test
    void tanksThatDoNotFitAreTold() {
        String long0 = TANK.replace("[300, 20, 35]", "[500, 20, 35]");
        String out = Run.of("dive", box(1200, long0), "--steps", 2).out().replaceAll("\\s+", " ");
        assertTrue(out.contains("the tank sticks out of the cylinder it stands in by 100 cm³"), out);
        String second =
                TANK.replace("\"tank\", \"kind\"", "\"other\", \"kind\"").replace("[100, -20", "[200, -20");
        String two =
                Run.of("dive", box(1200, TANK + second), "--steps", 2).out().replaceAll("\\s+", " ");
        assertTrue(two.contains("a tank and a tank share 100 cm³ of room"), two);
    }

    /** The fills of the file and of the command line make no difference to a dive, and the latter is told. */
    @Test
    void fillsAreTheDivesOwn() {
        Run plain = Run.json("dive", box(1200, TANK), "--steps", 4);
        Run told = Run.json("dive", box(1200, TANK), "--steps", 4, "--fill", "tank=0.5");
        assertEquals(plain.object().get("steps"), told.object().get("steps"));
        assertTrue(told.object().get("findings").toString().contains("DIVE_FILLS_UNUSED"));
    }

    @Test
    void heronDivesWithHerTowerOutAndIsDrawn() throws IOException {
        Path svg = folder.resolve("dive.svg");
        JsonNode json = dived(SAMPLES.resolve("heron.boat.json"), "--steps", 10, "--draining", 0.5, "--plot", svg);
        assertTrue(json.get("failSafe").get("residualG").doubleValue() > 20);
        assertTrue(json.get("surfacing").get("mostHeldG").doubleValue() > 50);
        assertEquals(11, json.get("surfacing").get("steps").size());
        assertEquals(1, json.get("surfacing").get("steps").get(0).get("fill").doubleValue());
        String drawn = Files.readString(svg, StandardCharsets.UTF_8);
        assertTrue(drawn.contains("GM coming up with water inside"), "legend");
        Run again = Run.json("dive", SAMPLES.resolve("heron.boat.json"), "--steps", 2, "--plot", svg);
        assertEquals(ExitCode.UNUSABLE, again.exitCode());
        assertEquals(drawn, Files.readString(svg, StandardCharsets.UTF_8));
    }

    @Test
    void textBeginsWithTheVerdict() {
        Run run = Run.of("dive", SAMPLES.resolve("dabchick.boat.json"), "--steps", 4);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        String[] lines = run.out().split("\n");
        assertTrue(lines[3].startsWith("She dives and comes back by herself: "), lines[3]);
        for (String line : lines) {
            assertTrue(line.codePointCount(0, line.length()) <= Page.WIDTH, line);
        }
        assertTrue(run.out().contains("with a line on the boat"), "caution");
    }
}
