package trimwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A box 400 mm long, 100 mm wide and 80 mm high in water of 1 g/cm³, whose hydrostatics have a closed form. */
final class BoxBoat {

    static final double LENGTH_MM = 400;
    static final double BEAM_MM = 100;

    private BoxBoat() {}

    /** 1200 g with the centre of gravity 24 mm above the keel: draught 30 mm. */
    static Path upright(Path folder) {
        return of(folder, 1200, "[200, 0, 24]", "");
    }

    static Path of(Path folder, double massG, String centreMm, String moreParts) {
        return written(folder, """
                {"version": 1, "name": "Box", "water": {"densityGPerCm3": 1}, "paintedLine": [[10, 0, 30], [390, 0, 30]],
                 "parts": [{"id": "box", "kind": "cylinder", "box": {"fromMm": [0, -50, 0], "toMm": [400, 50, 80]},
                            "massG": %s, "centreMm": %s}%s]}
                """.formatted(massG, centreMm, moreParts));
    }

    static Path written(Path folder, String text) {
        try {
            return Files.writeString(folder.resolve("box.boat.json"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
