package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Units and settings. An inch is 25.4 mm and an avoirdupois ounce 28.349523125 g exactly (international agreement of 1959). */
class MeasureTest {

    @Test
    void inchesAndOunces() {
        assertEquals("1.00 in", Measure.INCH.length(25.4));
        assertEquals("16.00 oz", Measure.INCH.mass(453.59237));
        assertEquals(254, Measure.INCH.typedMm(10), 0);
        assertEquals(28.349523125, Measure.INCH.typedG(1), 0);
    }

    @Test
    void sentencesAreTurned() {
        assertEquals(
                "the water 1.00 in above the paint; list 1.3° to port; 16.00 oz too heavy; of 1.24 g/cm³",
                Measure.INCH.worded(
                        "the water 25.4 mm above the paint; list 1.3° to port; 453.59237 g too heavy; of 1.24 g/cm³"));
        assertEquals("3.2 mm", Measure.METRIC.worded("3.2 mm"));
    }

    @Test
    void settingsOutliveTheWindow(@TempDir Path folder) {
        Settings settings = Settings.in(folder);
        settings.set("inch", true);
        settings.set("textPercent", 150);
        for (int i = 0; i < 12; i++) {
            settings.opened(folder.resolve("boat" + i));
        }
        settings.opened(folder.resolve("boat9"));
        Settings again = Settings.in(folder);
        assertEquals(Measure.INCH, again.measure());
        assertEquals(150, again.number("textPercent", 100), 0);
        assertEquals(8, again.recent().size());
        assertEquals(
                List.of(folder.resolve("boat9"), folder.resolve("boat11")),
                again.recent().subList(0, 2));
    }
}
