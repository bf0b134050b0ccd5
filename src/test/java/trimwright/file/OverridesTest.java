package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.Boat;
import trimwright.boat.Water;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;

class OverridesTest {

    @TempDir
    Path folder;

    private Boat boat;

    @BeforeEach
    void read() {
        String twoTanks = TestBoat.with("\"keel lead\", \"kind\": \"ballast\"", "\"keel=tank\", \"kind\": \"tank\"")
                .replace(",\n     \"densityGPerCm3\": 11.34", "");
        boat = BoatFile.read(TestBoat.written(folder, twoTanks)).boat();
    }

    private Water water(Boat of, String water) {
        return Overrides.apply(of, Optional.of(water), List.of()).water();
    }

    @Test
    void freshAndSeaKeepTheTemperatureOfTheFile() {
        assertEquals(Water.of(18, 0), water(boat, "fresh"));
        assertEquals(Water.of(18, 35), water(boat, "sea"));
        assertEquals(Water.of(20, 35), water(boat.in(Water.ofDensity(1.1)), "sea"));
        assertEquals(Water.ofDensity(1.0125), water(boat, "1.0125"));
    }

    @Test
    void fillsChangeTheNamedTanksOnly() {
        Boat filled = Overrides.apply(boat, Optional.empty(), List.of("keel=tank=0.5"));
        assertEquals(0.5, filled.part("keel=tank").orElseThrow().fill());
        assertEquals(0.25, filled.part("mbt").orElseThrow().fill());
        assertEquals(boat.water(), filled.water());
    }

    @Test
    void everyMistakeIsReportedAtOnce() {
        List<String> fills = List.of("mbt", "nbt=1", "mbt=1.5", "mbt=NaN", "keel=tank=0", "keel=tank=1", "wtc=1");
        List<Finding> findings = assertThrows(
                        UnusableInputException.class, () -> Overrides.apply(boat, Optional.of("salty"), fills))
                .findings();
        assertEquals(
                List.of(
                        Code.WATER_NOT_UNDERSTOOD,
                        Code.FILL_NOT_UNDERSTOOD,
                        Code.FILL_OF_NO_TANK,
                        Code.FILL_OUT_OF_RANGE,
                        Code.FILL_OUT_OF_RANGE,
                        Code.FILL_TWICE,
                        Code.FILL_OF_NO_TANK),
                findings.stream().map(Finding::code).toList());
        assertEquals("mbt", findings.get(2).values().get("nearest"));
        assertEquals(List.of("mbt", "keel=tank"), findings.get(2).values().get("allowed"));
        assertThrows(UnusableInputException.class, () -> water(boat, "1025"));
    }
}
