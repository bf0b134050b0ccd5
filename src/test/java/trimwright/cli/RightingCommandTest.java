package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RightingCommandTest {

    private static final Path SAMPLES = Path.of("sample-meshes");

    @TempDir
    private Path folder;

    private static JsonNode righted(Path boat, Object... more) {
        Run run = Run.json("righting", boat, more);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        return run.object();
    }

    /** GZ = sin φ (GM + ½ BM tan² φ) for a wall-sided hull (handbooks of naval architecture), here up to the edge of deck or bilge. */
    @Test
    void theBoxHasTheWallSidedLever() {
        JsonNode json = righted(BoxBoat.upright(folder), "--step", 5);
        double bm = 100 * 100 / (12.0 * 30);
        double gm = 15 + bm - 24;
        int compared = 0;
        for (JsonNode row : json.get("surfaced")) {
            double phi = Math.toRadians(row.get("heelDeg").doubleValue());
            if (Math.abs(phi) < Math.atan(30.0 / 50)) {
                double gz = Math.sin(phi) * (gm + 0.5 * bm * Math.pow(Math.tan(phi), 2));
                assertEquals(gz, row.get("gzMm").doubleValue(), 1e-6);
                assertEquals(1200 * gz, row.get("momentGmm").doubleValue(), 1e-3);
                assertEquals(0, row.get("trimDeg").doubleValue(), 1e-9);
                compared++;
            }
        }
        assertEquals(13, compared);
        assertEquals(73, json.get("surfaced").size());
        // Dived: BG sin φ, B at 40 and G at 24.
        for (JsonNode row : json.get("submerged")) {
            double phi = Math.toRadians(row.get("heelDeg").doubleValue());
            assertEquals(16 * Math.sin(phi), row.get("gzMm").doubleValue(), 1e-9);
        }
        JsonNode dived = json.get("summary").get("submerged");
        assertEquals(16, dived.get("maxGzMm").doubleValue(), 1e-9);
        assertEquals(90, dived.get("rangeDeg").doubleValue(), 1e-9);
        assertEquals(16, dived.get("areaMmRad").doubleValue(), 1e-9);
        assertEquals("stands firm", json.get("steadiness").get("stance").textValue());
        assertEquals(gm, json.get("steadiness").get("gmMm").doubleValue(), 1e-7);
    }

    /** W · GZ(φ) = M, by the wall-sided formula; and w d cos φ = W · GZ(φ) for a weight that is moved. */
    @Test
    void aSteadyMomentAndAMovedWeightListHer() {
        JsonNode json = righted(BoxBoat.upright(folder), "--torque", -3000, "--shift", 3000);
        double bm = 100 * 100 / (12.0 * 30);
        double gm = 15 + bm - 24;
        double torque = Math.toRadians(json.get("torque").get("heelDeg").doubleValue());
        assertEquals(-3000, 1200 * Math.sin(torque) * (gm + 0.5 * bm * Math.pow(Math.tan(torque), 2)), 1e-3);
        double shift = Math.toRadians(json.get("shift").get("heelDeg").doubleValue());
        assertEquals(
                3000 * Math.cos(shift), 1200 * Math.sin(shift) * (gm + 0.5 * bm * Math.pow(Math.tan(shift), 2)), 1e-3);
        JsonNode tooMuch = righted(BoxBoat.upright(folder), "--torque", 1e8).get("torque");
        assertFalse(tooMuch.get("borne").booleanValue());
        assertFalse(tooMuch.has("heelDeg"));
    }

    @Test
    void aBoatThatSinksGivesTheAnswerOfFloat() {
        Path boat = BoxBoat.of(folder, 3300, "[200, 0, 24]", "");
        Run run = Run.json("righting", boat, "--plot", folder.resolve("none.svg"));
        assertEquals(ExitCode.NO, run.exitCode());
        JsonNode json = run.object();
        assertEquals("sinks", json.get("outcome").textValue());
        assertEquals(100, json.get("deficitG").doubleValue(), 1e-6);
        assertTrue(json.has("submerged"));
        assertTrue(run.err().contains("no plot was written"), run.err());
        assertFalse(Files.exists(folder.resolve("none.svg")));
    }

    /** A spar that stands on its end has no list, afloat or dived, and so no curve to draw. */
    @Test
    void aBoatThatStandsOnEndIsToldAndNotDrawn() throws IOException {
        Path boat = Files.writeString(folder.resolve("spar.boat.json"), """
                {"version": 1, "parts": [{"id": "spar", "kind": "cylinder", "fromMm": [0, 0, 0], "toMm": [300, 0, 0],
                 "diameterMm": 50, "massG": 250, "centreMm": [40, 0, 0]}]}
                """);
        Path svg = folder.resolve("none.svg");
        Run run = Run.json("righting", boat, "--plot", svg);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        assertEquals(0, run.object().get("surfaced").size());
        assertEquals(0, run.object().get("submerged").size());
        assertTrue(run.err().contains("no plot was written"), run.err());
        assertFalse(Files.exists(svg));
        String text = Run.of("righting", boat).out();
        assertTrue(text.contains("At no list is any trim stable"), text);
    }

    @Test
    void heronIsToldInASentenceAndDrawn() throws IOException {
        Path svg = folder.resolve("levers.svg");
        Run run = Run.of("righting", SAMPLES.resolve("heron.boat.json"), "--step", 15, "--plot", svg);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        assertTrue(
                run.out().contains("She stays upright but is tender: GM is 3.1 mm where 4.0 mm is wanted"), run.out());
        assertTrue(run.out().contains("an estimate"), run.out());
        for (String line : run.out().split("\n")) {
            assertTrue(line.codePointCount(0, line.length()) <= Page.WIDTH, line);
        }
        assertTrue(Files.readString(svg).contains("lever dived"), "panel");
    }

    /** Upright unstable in the box of the loll: a heavy deck load. tan² φ = −2 GM / BM while wall-sided. */
    @Test
    void aLollIsToldAsOneWouldSayIt() {
        double bm = 100 * 100 / (12.0 * 30);
        double kg = 15 + bm + 0.2;
        Path boat = BoxBoat.of(folder, 1200, "[200, 0, " + kg + "]", "");
        JsonNode json = righted(boat);
        double angle = Math.toDegrees(Math.atan(Math.sqrt(2 * 0.2 / bm)));
        assertEquals(
                angle,
                json.get("summary")
                        .get("surfaced")
                        .get("equilibrium")
                        .get("heelDeg")
                        .doubleValue(),
                1e-4);
        assertEquals(
                "rests on either side", json.get("steadiness").get("stance").textValue());
        String text = Run.of("righting", boat).out();
        assertTrue(text.contains("She will rest on either side at about 6.8°"), text);
        assertEquals(6.8, angle, 0.05);
    }

    @ParameterizedTest
    @CsvSource({"--step,0", "--step,60", "--step,x", "--torque,inf", "--fill,none=1"})
    void aWrongOptionIsRefused(String option, String value) {
        Run run = Run.json("righting", BoxBoat.upright(folder), option, value);
        assertEquals(ExitCode.UNUSABLE, run.exitCode());
        assertEquals("", run.out());
        assertFalse(run.err().isBlank());
    }
}
