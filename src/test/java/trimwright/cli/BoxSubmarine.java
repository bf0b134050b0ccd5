package trimwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import trimwright.mesh.Solids;
import trimwright.mesh.StlWriter;

/**
 * A free-flooding box submarine 800 × 120 × 110 mm with a tower, a cylinder and a tank, painted at 84 mm, as a file beside its mesh. She lists, trims and
 * floats too high until lead and foam are put in.
 */
final class BoxSubmarine {

    static final String TANK_88 = "\"fromMm\": [386, 0, 50], \"toMm\": [474, 0, 50]";
    static final String TANK_60 = "\"fromMm\": [400, 0, 50], \"toMm\": [460, 0, 50]";
    static final String LINE = "\"paintedLine\": [[20, 0, 84], [780, 0, 84]],";
    static final String ZONES = """
            "zones": [
              {"id": "keel", "for": "ballast", "box": {"fromMm": [60, -9, 2], "toMm": [740, 9, 11]}},
              {"id": "saddle", "for": "foam", "box": {"fromMm": [60, 40, 40], "toMm": [740, 57, 100]}, "mirror": true}
            ]""";
    static final String TARGETS = """
            "targets": {"bgMm": 6, "gmMm": 4, "residualG": [20, 40], "offLineMm": 0.5, "listDeg": 0.3, "divedTrimDeg": 1.5}""";

    private BoxSubmarine() {}

    /** As she comes from the bench. */
    static Path of(Path folder) {
        return written(folder, LINE, TANK_88, "", ZONES + ",\n" + TARGETS);
    }

    /** With zones and targets of one's own; nothing else after the parts. */
    static Path with(Path folder, String after) {
        return written(folder, LINE, TANK_88, "", after);
    }

    /** @param moreParts further parts, each with a comma before it */
    static Path withParts(Path folder, String moreParts) {
        return written(folder, LINE, TANK_88, moreParts, ZONES + ",\n" + TARGETS);
    }

    static Path withTank(Path folder, String tank) {
        return written(folder, LINE, tank, "", ZONES + ",\n" + TARGETS);
    }

    static Path withoutLine(Path folder) {
        return written(folder, "", TANK_88, "", ZONES + ",\n" + TARGETS);
    }

    private static Path written(Path folder, String line, String tank, String moreParts, String after) {
        try {
            Path mesh = folder.resolve("box.stl");
            if (!Files.exists(mesh)) {
                StlWriter.write(mesh, Solids.box(0, -60, 0, 800, 60, 110));
            }
            return Files.writeString(folder.resolve("box.boat.json"), """
                    {"version": 1, "name": "Box submarine", %s
                     "parts": [
                      {"id": "hull", "kind": "hull", "mesh": "box.stl", "build": "skin", "thicknessMm": 1.5, "densityGPerCm3": 1.2},
                      {"id": "tower", "kind": "fitting", "box": {"fromMm": [380, -12, 110], "toMm": [460, 12, 150]},
                       "massG": 60, "centreMm": [420, 0, 130]},
                      {"id": "wtc", "kind": "cylinder", "fromMm": [150, 0, 50], "toMm": [650, 0, 50], "diameterMm": 76,
                       "massG": 1250, "centreMm": [395, 1.5, 46]},
                      {"id": "tank", "kind": "tank", "inside": "wtc", %s, "diameterMm": 70}%s
                     ],
                     %s}
                    """.formatted(line, tank, moreParts, after));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
