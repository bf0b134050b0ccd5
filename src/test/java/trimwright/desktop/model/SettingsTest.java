package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.report.Measure;

class SettingsTest {

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
