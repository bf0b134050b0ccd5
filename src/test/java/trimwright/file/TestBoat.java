package trimwright.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** A small boat that is right in every way, and meshes for her; tests change a word of her at a time. */
final class TestBoat {

    static final String RIGHT = """
            {
              "version": 1,
              "name": "Coot, test hulk",
              "water": {"temperatureC": 18, "salinityGPerKg": 0.5},
              "paintedLine": [[10, 0, 40], [290, 0, 40]],
              "parts": [
                {"id": "hull", "kind": "hull", "mesh": "hull.stl",
                 "import": {"unit": "mm", "scale": 1, "forward": "+x", "up": "+z", "moveMm": [0, 0, 0]},
                 "build": "skin", "thicknessMm": 1.60, "densityGPerCm3": 1.24},
                {"id": "wtc", "kind": "cylinder", "fromMm": [60, 0, 30], "toMm": [220, 0, 30], "diameterMm": 50,
                 "ends": "round", "massG": 350, "centreMm": [140, 0, 25]},
                {"id": "mbt", "kind": "tank", "inside": "wtc", "fromMm": [120, 0, 30], "toMm": [160, 0, 30],
                 "diameterMm": 46, "fill": 0.25},
                {"id": "keel lead", "kind": "ballast", "box": {"fromMm": [80, -8, 0], "toMm": [180, 8, 4]},
                 "densityGPerCm3": 11.34},
                {"id": "foam", "kind": "foam", "box": {"fromMm": [100, 30, 30], "toMm": [200, 38, 50]},
                 "densityGPerCm3": 0.030, "mirror": true},
                {"id": "battery", "kind": "fitting", "inside": "wtc", "centreMm": [100, 0, 20], "massG": 120},
                {"id": "propeller", "kind": "fitting", "centreMm": [-5, 0, 20], "massG": 12, "densityGPerCm3": 8.5}
              ],
              "zones": [
                {"id": "keel", "for": "ballast", "box": {"fromMm": [20, -10, 0], "toMm": [280, 10, 5]}, "maxG": 600},
                {"id": "saddles", "for": "foam", "box": {"fromMm": [40, 26, 20], "toMm": [260, 39, 55]}, "mirror": true}
              ],
              "targets": {"bgMm": 6, "gmMm": 4, "residualG": [20, 40], "offLineMm": 0.5, "listDeg": 0.3,
                          "divedTrimDeg": 1.5}
            }
            """;

    private TestBoat() {}

    /** The right boat with one piece of her text replaced. */
    static String with(String old, String replacement) {
        if (!RIGHT.contains(old)) {
            throw new IllegalArgumentException("not in the test boat: " + old);
        }
        return RIGHT.replace(old, replacement);
    }

    /** Writes the boat's text, with her meshes next to it. */
    static Path written(Path folder, String text) {
        TriangleMesh box = Solids.box(0, -40, 0, 300, 40, 60);
        boolean[] keep = new boolean[box.triangleCount()];
        Arrays.fill(keep, 1, keep.length, true);
        try {
            Files.writeString(folder.resolve("hull.stl"), stl(box));
            Files.writeString(folder.resolve("turned.stl"), stl(box.flipped()));
            Files.writeString(folder.resolve("open.stl"), stl(box.only(keep)));
            TriangleMesh inner = Solids.box(2, -38, 2, 298, 38, 58).flipped();
            Files.writeString(folder.resolve("walls.stl"), stl(box) + stl(inner));
            return Files.writeString(folder.resolve("coot.boat.json"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String stl(TriangleMesh mesh) {
        StringBuilder text = new StringBuilder("solid test\n");
        for (int k = 0; k < mesh.corners().length; k++) {
            if (k % 3 == 0) {
                text.append("facet normal 0 0 0\nouter loop\n");
            }
            int v = 3 * mesh.corners()[k];
            text.append(String.format(
                    Locale.ROOT, "vertex %s %s %s%n", mesh.xyz()[v], mesh.xyz()[v + 1], mesh.xyz()[v + 2]));
            if (k % 3 == 2) {
                text.append("endloop\nendfacet\n");
            }
        }
        return text.append("endsolid test\n").toString();
    }
}
