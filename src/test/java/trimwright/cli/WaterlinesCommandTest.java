package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterlinesCommandTest {

    @TempDir
    private Path folder;

    private JsonNode table(Object... more) {
        Run run = Run.json("waterlines", BoxBoat.upright(folder), more);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        return run.object().get("waterlines");
    }

    /** A box L × B immersed to T: V = LBT, KB = T/2, BM = B²/12T, BM_L = L²/12T (closed form). */
    @Test
    void aBoxHasTheFiguresOfItsClosedForm() {
        JsonNode rows = table("--from", 10, "--to", 70, "--step", 7.5);
        assertEquals(9, rows.size());
        for (int i = 0; i < rows.size(); i++) {
            double t = 10 + 7.5 * i;
            JsonNode row = rows.get(i);
            assertEquals(t, row.get("heightMm").doubleValue());
            assertEquals(40 * t, row.get("displacedCm3").doubleValue(), 1e-6);
            assertEquals(40 * t, row.get("displacementG").doubleValue(), 1e-6);
            assertEquals(0, Run.vector(row.get("centreOfBuoyancyMm")).distance(new Vector3D(200, 0, t / 2)), 1e-7);
            assertEquals(400, row.get("waterplaneCm2").doubleValue(), 1e-6);
            assertEquals(0, Run.vector(row.get("centreOfFlotationMm")).distance(new Vector3D(200, 0, t)), 1e-7);
            assertEquals(100 * 100 / 12.0 / t, row.get("bmTransverseMm").doubleValue(), 1e-6);
            assertEquals(400 * 400 / 12.0 / t, row.get("bmLongitudinalMm").doubleValue(), 1e-5);
            assertEquals(40, row.get("gramsPerMmImmersion").doubleValue(), 1e-7);
            assertFalse(row.has("waterplaneJumpCm2"));
        }
    }

    /** With up = (sin θ, cos θ sin φ, cos θ cos φ) the plane up · p = h is the one of the contract. */
    @Test
    void aListedPlaneStandsAsTheContractSays() {
        JsonNode row =
                table("--list", 30, "--trim", 0, "--from", 40, "--to", 40).get(0);
        // The plane z cos 30° + y sin 30° = 40 leaves both sides below 80 mm, so the section is a trapezium.
        double middle = 40 / Math.cos(Math.toRadians(30));
        assertEquals(400 * 100 * middle / 1000, row.get("displacedCm3").doubleValue(), 1e-6);
        // Wall-sided: B moves by BM tan φ, away from the side that rises; port rises with a list to starboard.
        double bm = 100 * 100 / (12 * middle);
        assertEquals(
                -bm * Math.tan(Math.toRadians(30)),
                row.get("centreOfBuoyancyMm").get(1).doubleValue(),
                1e-6);
    }

    @Test
    void withoutARangeTheWholeBoatIsTabled() {
        JsonNode rows = table();
        assertTrue(rows.size() >= 10 && rows.size() <= 30, "rows " + rows.size());
        assertEquals(0, rows.get(0).get("displacedCm3").doubleValue());
        assertFalse(rows.get(0).has("centreOfBuoyancyMm"));
        assertEquals(3200, rows.get(rows.size() - 1).get("displacedCm3").doubleValue(), 1e-6);
    }

    @Test
    void aFlatFaceInThePlaneIsMarked() {
        JsonNode rows = table("--from", 0, "--to", 80, "--step", 40);
        assertEquals(400, rows.get(0).get("waterplaneJumpCm2").doubleValue(), 1e-6);
        assertFalse(rows.get(1).has("waterplaneJumpCm2"));
        assertEquals(-400, rows.get(2).get("waterplaneJumpCm2").doubleValue(), 1e-6);
        String text = Run.of("waterlines", BoxBoat.upright(folder), "--from", 0, "--to", 80, "--step", 40)
                .out();
        assertEquals(2, text.lines().filter(l -> l.endsWith("*")).count(), text);
        assertTrue(text.lines().allMatch(l -> l.length() <= 100), text);
    }

    @Test
    void stepsAreExactDecimals() {
        JsonNode rows = table("--from", 60, "--to", 61, "--step", 0.1);
        assertEquals(11, rows.size());
        assertEquals("60.3", rows.get(3).get("heightMm").asText());
        assertEquals("61.0", rows.get(10).get("heightMm").asText());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--step|0|--step must be above 0 mm, found 0.",
                "--step|-3|--step must be above 0 mm, found -3.",
                "--step|1,5|'1,5' is no number; write it with a decimal point: 1.5",
                "--step|NaN|'NaN' is no number",
                "--step|1e999|'1e999' is too large a number",
                "--step|0.0001|at most 10000 are allowed",
                "--from|200|lies above the highest, the boat's highest point at 80.0 mm",
                "--to|-5|the boat's lowest point at 0.0 mm",
                "--list|181|--list takes -180 to 180 degrees, found 181.",
                "--trim|-91|--trim takes -90 to 90 degrees, found -91.",
                "--from|1e7|--from takes -1000000 to 1000000 mm"
            })
    void badRangesAreRefused(String option, String value, String message) {
        Run run = Run.json("waterlines", BoxBoat.upright(folder), option, value);
        assertEquals(ExitCode.UNUSABLE, run.exitCode());
        assertEquals("", run.out());
        assertTrue(run.err().contains(message), run.err());
    }
}
