package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The box submarine: inside 797 × 117 × 107 mm, a cylinder of 76 mm and 500 mm about z 50. Every figure is by hand. */
class SeatCommandTest {

    @TempDir
    private Path folder;

    private static double number(JsonNode node, String key) {
        return node.get(key).doubleValue();
    }

    @Test
    void theFiguresAreThoseOfTheBox() {
        Run run = Run.json("seat", BoxSubmarine.of(folder));
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        JsonNode seat = run.object();
        assertTrue(seat.get("fits").booleanValue());
        assertEquals(50 - 1.5 - 38, number(seat, "clearanceMm"), 1e-6);
        assertEquals(1.5 + 38, number(seat, "lowestAxisMm"), 1e-4);
        assertEquals(108.5 - 38, number(seat, "highestAxisMm"), 1e-4);
        assertEquals(2 * 48.5, number(seat, "largestDiameterMm"), 1e-6);
        // At any height the narrower of 117 and 107 mm counts.
        assertEquals(107, number(seat.get("largestAnywhere"), "diameterMm"), 1e-3);
        assertEquals(1.5, number(seat.get("longestAnywhere"), "fromXMm"), 1e-3);
        assertEquals(798.5, number(seat.get("longestAnywhere"), "toXMm"), 1e-3);
        assertEquals("hull", seat.get("touchesPart").textValue());
        assertEquals(3, seat.get("seats").size());
        double half = Math.PI * 38 * 38 / 2;
        assertEquals((117 * 48.5 - half) * 500 / 1000, number(seat.get("seats").get(0), "underCm3"), 60);
        assertTrue(seat.get("profile").size() > 100);
        assertEquals(1, seat.get("cylinders").size());
        assertEquals("wtc", seat.get("cylinders").get(0).get("id").textValue());
    }

    @Test
    void theGapIsKept() {
        JsonNode seat = Run.json("seat", BoxSubmarine.of(folder), "--gap", "3").object();
        assertEquals(1.5 + 3 + 38, number(seat, "lowestAxisMm"), 1e-4);
        assertEquals(2 * (48.5 - 3), number(seat, "largestDiameterMm"), 1e-6);
    }

    @Test
    void whatDoesNotFitIsANo() throws IOException {
        Path boat = BoxSubmarine.of(folder);
        Files.writeString(boat, Files.readString(boat).replace("\"diameterMm\": 76", "\"diameterMm\": 109"));
        Run run = Run.json("seat", boat);
        assertEquals(ExitCode.NO, run.exitCode());
        assertFalse(run.object().get("fits").booleanValue());
        assertFalse(run.object().has("lowestAxisMm"));
        assertFalse(run.object().has("longestAnywhere"));
        String text = Run.of("seat", boat).out();
        assertTrue(text.contains("does not fit where it is: it comes 6.0 mm into the hull part"), text);
    }

    @Test
    void severalCylindersAreAllTold() {
        Path boat = BoxSubmarine.withParts(
                folder,
                ", {\"id\": \"bow tube\", \"kind\": \"cylinder\", \"fromMm\": [660, 0, 50], \"toMm\": [760, 0, 50],"
                        + " \"diameterMm\": 40, \"ends\": \"round\", \"massG\": 100},"
                        + " {\"id\": \"mast\", \"kind\": \"cylinder\", \"fromMm\": [420, 0, 112], \"toMm\": [420, 0, 148],"
                        + " \"diameterMm\": 10, \"massG\": 5}");
        JsonNode seat = Run.json("seat", boat).object();
        List<String> ids = seat.get("cylinders").findValuesAsText("id");
        assertEquals(List.of("wtc", "bow tube"), ids);
        assertEquals(50 - 1.5 - 20, number(seat.get("cylinders").get(1), "clearanceMm"), 1e-6);
        assertTrue(seat.get("findings").findValuesAsText("code").contains("CYLINDER_NOT_ALONG"));
    }

    @Test
    void aPlotIsDrawnIntoANewFile() throws IOException {
        Path boat = BoxSubmarine.of(folder);
        Path plot = folder.resolve("seat.png");
        assertEquals(ExitCode.DONE, Run.of("seat", boat, "--plot", plot).exitCode());
        assertTrue(ImageIO.read(plot.toFile()).getWidth() > 1000);
        assertEquals(ExitCode.UNUSABLE, Run.of("seat", boat, "--plot", plot).exitCode());
        assertEquals(
                ExitCode.DONE,
                Run.of("seat", boat, "--plot", plot, "--overwrite").exitCode());
    }

    @Test
    void withoutCylinderOrHullItIsRefused() {
        Path none = BoxBoat.written(folder, """
                {"version": 1, "parts": [{"id": "a", "kind": "foam", "box": {"fromMm": [0, -5, 0], "toMm": [40, 5, 12]},
                 "massG": 2}]}
                """);
        Run run = Run.json("seat", none);
        assertEquals(ExitCode.UNUSABLE, run.exitCode());
        assertTrue(run.err().contains("no cylinder") && run.err().contains("no hull"), run.err());
        assertEquals(
                ExitCode.UNUSABLE,
                Run.json("seat", BoxSubmarine.of(folder), "--gap", "-1").exitCode());
    }

    @Test
    void theTextSaysWhatTouchesFirstAndWhere() {
        String text = Run.of("seat", BoxSubmarine.of(folder)).out();
        assertTrue(text.lines().allMatch(l -> l.length() <= Page.WIDTH), text);
        String words = text.replaceAll("\\s+", " ");
        assertTrue(words.contains("wtc fits where it is, with 10.5 mm to the inside of the hull."), text);
        assertTrue(words.contains("Lowered further it touches the hull part hull"), text);
        assertTrue(words.contains("underneath (x"), text);
    }
}
