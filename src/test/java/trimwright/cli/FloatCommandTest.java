package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FloatCommandTest {

    @TempDir
    private Path folder;

    private JsonNode floated(Path boat, Object... more) {
        Run run = Run.json("float", boat, more);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        return run.object();
    }

    /** Box barge: KB = T/2, BM = B²/12T, BM_L = L²/12T (closed form); a gram and a degree follow from them. */
    @Test
    void aBoxBargeHasTheFiguresOfItsClosedForm() {
        JsonNode f = floated(BoxBoat.upright(folder));
        assertEquals("floats", f.get("outcome").textValue());
        assertEquals(1, f.get("waterDensityGPerCm3").doubleValue());
        assertEquals(1200, f.get("massG").doubleValue(), 1e-9);
        assertEquals(1200, f.get("displacedCm3").doubleValue(), 1e-6);
        assertEquals(30, f.get("heightMm").doubleValue(), 1e-9);
        assertEquals(24, f.get("centreOfGravityMm").get(2).doubleValue(), 1e-9);
        assertEquals(15, f.get("centreOfBuoyancyMm").get(2).doubleValue(), 1e-8);
        assertEquals(400, f.get("waterplaneCm2").doubleValue(), 1e-6);
        double gm = 15 + 100 * 100 / (12.0 * 30) - 24;
        double gmLongitudinal = 15 + 400 * 400 / (12.0 * 30) - 24;
        assertEquals(gm, f.get("gmTransverseMm").doubleValue(), 1e-7);
        assertEquals(gmLongitudinal, f.get("gmLongitudinalMm").doubleValue(), 1e-6);
        assertEquals(-9, f.get("bgMm").doubleValue(), 1e-8);
        assertEquals(2000, f.get("reserveG").doubleValue(), 1e-6);
        assertEquals(40, f.get("gramsPerMmImmersion").doubleValue(), 1e-7);
        assertEquals(Math.toRadians(1200 * gm), f.get("gmmPerDegreeList").doubleValue(), 1e-5);
        assertEquals(
                Math.toRadians(1200 * gmLongitudinal), f.get("gmmPerDegreeTrim").doubleValue(), 1e-4);
        assertEquals(30, f.get("draughts").get("bowMm").doubleValue(), 1e-8);
        assertEquals(390, f.get("draughts").get("bowXMm").doubleValue());
        assertEquals(0, f.get("offPaintedLine").get("bowMm").doubleValue(), 1e-8);
        assertEquals(9, f.get("attitudes").get(0).get("energyMm").doubleValue(), 1e-8);
        // All under: B stands at the middle of the box, 40 mm up.
        assertEquals(16, f.get("submerged").get("bgMm").doubleValue(), 1e-9);
        assertEquals(2000, f.get("submerged").get("residualG").doubleValue(), 1e-6);
    }

    @Test
    void everyKeyOfTheContractIsThereAndFinite() {
        JsonNode f = floated(BoxBoat.upright(folder));
        for (String key : List.of(
                "waterDensityGPerCm3",
                "massG",
                "centreOfGravityMm",
                "outcome",
                "upVector",
                "heightMm",
                "heelDeg",
                "trimDeg",
                "displacedCm3",
                "centreOfBuoyancyMm",
                "waterplaneCm2",
                "wettedCm2",
                "gmTransverseMm",
                "gmLongitudinalMm",
                "bgMm",
                "reserveG",
                "offPaintedLine",
                "attitudes",
                "gramsPerMmImmersion",
                "gmmPerDegreeList",
                "gmmPerDegreeTrim",
                "submerged",
                "findings")) {
            assertTrue(f.hasNonNull(key), key);
        }
        for (JsonNode attitude : f.get("attitudes")) {
            for (String key : List.of("upVector", "heightMm", "heelDeg", "trimDeg", "energyMm")) {
                assertTrue(attitude.hasNonNull(key), key);
            }
        }
    }

    @Test
    void weightForwardAndToStarboardIsSaidOnThoseSides() {
        Path boat = BoxBoat.of(folder, 1200, "[210, -1, 24]", "");
        JsonNode f = floated(boat);
        assertTrue(f.get("heelDeg").doubleValue() > 0);
        assertTrue(f.get("trimDeg").doubleValue() < 0);
        assertTrue(f.get("offPaintedLine").get("bowMm").doubleValue() > 0);
        assertTrue(f.get("offPaintedLine").get("sternMm").doubleValue() < 0);
        assertEquals(f.get("heelDeg"), f.get("offPaintedLine").get("listDeg"));
        String text = Run.of("float", boat).out();
        String verdict = text.replaceAll("\\s+", " ");
        assertTrue(verdict.contains("above the paint at the bow (too deep)"), text);
        assertTrue(verdict.contains("below the paint at the stern (too high)"), text);
        assertTrue(verdict.contains("to starboard, bow down"), text);
    }

    /** Wall-sided angle of loll tan φ = √(−2 GM/BM) for B 100, T 60, KG 48 mm: 37.575° (closed form), valid until an edge enters. */
    @Test
    void aLollIsToldInWordsAndListsBothSides() {
        Path boat = BoxBoat.written(folder, """
                {"version": 1, "water": {"densityGPerCm3": 1},
                 "parts": [{"id": "box", "kind": "cylinder", "box": {"fromMm": [0, -50, 0], "toMm": [400, 50, 120]},
                            "massG": 2400, "centreMm": [200, 0, 48]}]}
                """);
        JsonNode f = floated(boat);
        assertEquals(37.575, Math.abs(f.get("heelDeg").doubleValue()), 5e-4);
        double sides = 0;
        int rests = 0;
        for (JsonNode attitude : f.get("attitudes")) {
            if (Math.abs(Math.abs(attitude.get("heelDeg").doubleValue()) - 37.575) < 5e-4) {
                sides += attitude.get("heelDeg").doubleValue();
                rests++;
            }
        }
        assertEquals(2, rests);
        assertEquals(0, sides, 1e-6);
        String text = Run.of("float", boat).out();
        assertTrue(text.contains("Upright she does not stay: she rests at about 37.6° on either side."), text);
        assertTrue(text.contains("Other ways she can rest"), text);
    }

    @Test
    void aBoatThatIsTooHeavySinksWithItsDeficit() {
        Path boat = BoxBoat.of(folder, 3300, "[200, 0, 24]", "");
        Run run = Run.json("float", boat);
        assertEquals(ExitCode.NO, run.exitCode());
        JsonNode f = run.object();
        assertEquals("sinks", f.get("outcome").textValue());
        assertEquals(100, f.get("deficitG").doubleValue(), 1e-6);
        assertEquals(-100, f.get("submerged").get("residualG").doubleValue(), 1e-6);
        assertTrue(f.hasNonNull("centreOfGravityMm"));
        assertFalse(f.has("heightMm"));
        Run text = Run.of("float", boat);
        assertEquals(ExitCode.NO, text.exitCode());
        assertTrue(text.out().contains("She sinks: she is 100.0 g heavier"), text.out());
    }

    /** Too heavy with a quarter of her tank full: G counts that water, 30 g at z 13.75, and not the full tank. */
    @Test
    void theCentreOfGravityOfASinkingBoatCountsTheFillsAtHand() {
        Path boat = BoxBoat.of(
                folder,
                3300,
                "[200, 0, 24]",
                ", {\"id\": \"mbt\", \"kind\": \"tank\", \"inside\": \"box\", \"box\": {\"fromMm\": [150, -20, 10],"
                        + " \"toMm\": [250, 20, 40]}, \"fill\": 0.25}");
        JsonNode f = Run.json("float", boat).object();
        assertEquals(3330, f.get("massG").doubleValue(), 1e-9);
        assertEquals(
                (3300 * 24 + 30 * 13.75) / 3330,
                f.get("centreOfGravityMm").get(2).doubleValue(),
                1e-9);
    }

    @Test
    void waterAndFillsOverrideTheFile() {
        Path boat = BoxBoat.of(
                folder,
                1200,
                "[200, 0, 24]",
                ", {\"id\": \"mbt\", \"kind\": \"tank\", \"inside\": \"box\", \"box\": {\"fromMm\": [150, -20, 10],"
                        + " \"toMm\": [250, 20, 40]}, \"fill\": 0.25}");
        assertEquals(1230, floated(boat).get("massG").doubleValue(), 1e-9);
        assertEquals(1200, floated(boat, "--fill", "mbt=0").get("massG").doubleValue(), 1e-9);
        JsonNode dense = floated(boat, "--water", "1.2", "--fill", "mbt=1");
        assertEquals(1.2, dense.get("waterDensityGPerCm3").doubleValue());
        assertEquals(1200 + 1.2 * 120, dense.get("massG").doubleValue(), 1e-9);
        // EOS-80 at 20 °C (UNESCO technical paper 44): fresh 998.2063, sea of salinity 35 1024.7630 kg/m³.
        assertEquals(
                0.9982063,
                floated(boat, "--water", "fresh").get("waterDensityGPerCm3").doubleValue(),
                1e-7);
        assertEquals(
                1.0247630,
                floated(boat, "--water", "sea").get("waterDensityGPerCm3").doubleValue(),
                1e-7);
        assertTrue(Run.of("float", boat, "--fill", "mbt=1").out().contains("tanks: mbt 100 % full"));
    }

    @Test
    void missedTargetsAreFindingsOfBothOutputs() {
        Path boat = BoxBoat.written(folder, """
                {"version": 1, "water": {"densityGPerCm3": 1}, "paintedLine": [[10, 0, 30], [390, 0, 30]],
                 "parts": [{"id": "box", "kind": "cylinder", "box": {"fromMm": [0, -50, 0], "toMm": [400, 50, 80]},
                            "massG": 1200, "centreMm": [210, -1, 24]}],
                 "targets": {"gmMm": 50, "offLineMm": 0.5, "listDeg": 0.3}}
                """);
        Run run = Run.json("float", boat);
        assertEquals(
                List.of("OFF_PAINTED_LINE", "LIST_BEYOND_TARGET", "GM_BELOW_TARGET"),
                run.object().get("findings").findValuesAsText("code"));
        assertEquals(3, run.err().lines().count(), run.err());
        assertTrue(run.err().lines().allMatch(l -> l.startsWith("warning: ")), run.err());
        Run text = Run.of("float", boat);
        assertTrue(text.out().contains("What to look at\n- "), text.out());
        assertEquals("", text.err());
    }

    @Test
    void aPictureIsANewFileAndReplacesOneOnlyWhenTold() throws IOException {
        Path boat = BoxBoat.upright(folder);
        Path picture = folder.resolve("box.png");
        assertEquals(ExitCode.DONE, Run.of("float", boat, "--picture", picture).exitCode());
        assertEquals(1600, ImageIO.read(picture.toFile()).getWidth());
        byte[] kept = "mine".getBytes(StandardCharsets.UTF_8);
        Files.write(picture, kept);
        Run refused = Run.json("float", boat, "--picture", picture);
        assertEquals(ExitCode.UNUSABLE, refused.exitCode());
        assertEquals("", refused.out());
        assertTrue(refused.err().contains("there already"), refused.err());
        assertArrayEquals(kept, Files.readAllBytes(picture));
        assertEquals(
                ExitCode.NO,
                Run.of("float", BoxBoat.of(folder, 3300, "[200, 0, 24]", ""), "--picture", picture, "--overwrite")
                        .exitCode());
        assertEquals(1600, ImageIO.read(picture.toFile()).getWidth());
    }

    @Test
    void textFitsTheTerminal() {
        String text = Run.of("float", BoxBoat.upright(folder)).out();
        assertTrue(text.lines().allMatch(l -> l.length() <= Page.WIDTH), text);
        assertTrue(text.contains("on her painted line at bow and stern; upright and level"), text);
        assertFalse(text.contains("-0.0"), text);
    }
}
