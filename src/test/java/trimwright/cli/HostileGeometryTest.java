package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
import trimwright.mesh.MeshFiles;
import trimwright.mesh.Solids;
import trimwright.mesh.StlWriter;
import trimwright.mesh.TriangleMesh;

/**
 * Geometry at its worst, through the whole program: each gives the right answer, or a finding that says why not. Boxes float at mass / (density · length · beam), as anyone can
 * work out.
 */
class HostileGeometryTest {

    private static final TriangleMesh BOX = Solids.box(0, -100, 0, 600, 100, 200);

    @TempDir
    Path folder;

    private Run floated(TriangleMesh mesh, String build, double massG, Vector3D centre) throws IOException {
        Files.deleteIfExists(folder.resolve("hull.stl"));
        StlWriter.write(folder.resolve("hull.stl"), mesh);
        return floated("hull.stl", "1", build, massG, centre);
    }

    private Run floated(String file, String scale, String build, double massG, Vector3D centre) throws IOException {
        Path boat = Files.writeString(folder.resolve("any.boat.json"), """
                {"version": 1, "water": {"densityGPerCm3": 1}, "parts": [
                  {"id": "hull", "kind": "hull", "mesh": "%s", "import": {"scale": %s}, "build": "%s", "massG": %s, "centreMm": [%s, %s, %s]%s}]}
                """.formatted(
                        file,
                        scale,
                        build,
                        massG,
                        centre.getX(),
                        centre.getY(),
                        centre.getZ(),
                        build.equals("skin") ? ", \"thicknessMm\": 2" : ""));
        return Run.json("float", boat);
    }

    private static List<String> codes(Run run) {
        List<String> codes = new ArrayList<>();
        run.object().path("findings").forEach(f -> codes.add(f.get("code").textValue()));
        return codes;
    }

    private static void told(Run run, String code) {
        boolean isTold = run.exitCode() == ExitCode.UNUSABLE
                ? run.err().contains(code)
                : codes(run).contains(code);
        assertTrue(isTold, code + " is not told: " + run.err() + run.out());
    }

    @Test
    void shellsThatOverlapOrLieInEachOtherAreTold() throws IOException {
        TriangleMesh overlapping = TestMeshes.together(BOX, TestMeshes.moved(BOX, new Vector3D(300, 50, 40)));
        told(floated(overlapping, "sealed", 9000, new Vector3D(300, 0, 50)), "MESH_SHELLS_OVERLAP");
        told(floated(overlapping, "skin", 200, new Vector3D(300, 0, 50)), "MESH_SHELLS_OVERLAP");
        TriangleMesh within = TestMeshes.together(BOX, Solids.box(100, -50, 60, 500, 50, 160));
        told(floated(within, "sealed", 9000, new Vector3D(300, 0, 50)), "MESH_COUNTED_TWICE");
    }

    @Test
    void aSurfaceThatGoesThroughItselfIsTold() throws IOException {
        // One corner of the box pulled through the side opposite.
        double[] xyz = BOX.xyz().clone();
        for (int i = 0; i < xyz.length; i += 3) {
            if (xyz[i] == 600 && xyz[i + 1] == 100 && xyz[i + 2] == 200) {
                xyz[i + 1] = -250;
                xyz[i + 2] = -50;
            }
        }
        told(
                floated(TriangleMesh.owning(xyz, BOX.corners()), "sealed", 2000, new Vector3D(300, 0, 50)),
                "MESH_CROSSES_ITSELF");
    }

    @Test
    void anInsideOutHullIsRefusedInWords() throws IOException {
        Run run = floated(BOX.flipped(), "sealed", 9000, new Vector3D(300, 0, 50));
        assertEquals(ExitCode.UNUSABLE, run.exitCode());
        assertTrue(run.err().contains("inside out"), run.err());
    }

    /** A box without its end of 200 × 200 mm: a flat lid makes it whole, a dome holds up to 2/3 A · A/(π r) with r half the diagonal. */
    @Test
    void anOpenSealedHullIsRefusedWithWhatIsMissingAndBoundsOfItsVolume() throws IOException {
        boolean[] keep = new boolean[12];
        for (int t = 0; t < 12; t++) {
            boolean end = true;
            for (int k = 0; k < 3; k++) {
                end &= BOX.xyz()[3 * BOX.corners()[3 * t + k]] == 600;
            }
            keep[t] = !end;
        }
        Run run = floated(BOX.only(keep), "sealed", 9000, new Vector3D(300, 0, 50));
        assertEquals(ExitCode.UNUSABLE, run.exitCode());
        assertTrue(run.out().isEmpty());
        double area = 200 * 200;
        double bulge = 2.0 / 3 * area * area / (Math.PI * 100 * Math.sqrt(2)) / 1000;
        assertTrue(run.err().contains("it has 1 opening, 800 mm around in all"), run.err());
        assertTrue(run.err().contains("With flat lids it would enclose 24000 cm³"), run.err());
        String bounds = String.format(Locale.ROOT, "%.1f cm³ to %.1f cm³", 24000 - bulge, 24000 + bulge);
        assertTrue(run.err().contains(bounds), bounds + " in " + run.err());
    }

    /** The same box from a pin to a ship: its water surface lies in the plane of a deck all round the tower, to the last bit. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.1, 0.5, 1, 3, 10, 30})
    void waterExactlyInAPlaneOfTheHullAtEveryScale(double scale) throws IOException {
        TriangleMesh stepped = TestMeshes.together(BOX, Solids.box(200, -50, 200, 400, 50, 300));
        StlWriter.write(folder.resolve("hull.stl"), stepped);
        double massG = 600.0 * 200 * 200 / 1000 * scale * scale * scale;
        Run run = floated(
                "hull.stl", String.valueOf(scale), "sealed", massG, new Vector3D(300, 0, 20).scalarMultiply(scale));
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        assertEquals(200 * scale, run.object().get("heightMm").doubleValue(), 1e-9 * 600 * scale);
        assertEquals(0, run.object().get("heelDeg").doubleValue(), 1e-6);
    }

    /** Steps of 1e-30 mm are not in a file of single precision, but in a text they are; they must do no harm. */
    @ParameterizedTest
    @CsvSource({"1e-30, true", "1e-12, true", "1e30, false", "1e300, false", "1e999, false"})
    void verySmallAndVeryLargeCoordinates(String number, boolean isRight) throws IOException {
        StringBuilder obj = new StringBuilder();
        for (int v = 0; v < BOX.vertexCount(); v++) {
            obj.append("v");
            for (int k = 0; k < 3; k++) {
                double x = BOX.xyz()[3 * v + k];
                obj.append(' ').append(x == 0 ? number : String.valueOf(x));
            }
            obj.append('\n');
        }
        for (int c = 0; c < 36; c += 3) {
            obj.append("f ")
                    .append(BOX.corners()[c] + 1)
                    .append(' ')
                    .append(BOX.corners()[c + 1] + 1)
                    .append(' ')
                    .append(BOX.corners()[c + 2] + 1)
                    .append('\n');
        }
        Files.writeString(folder.resolve("hull.obj"), obj);
        Run run = floated("hull.obj", "1", "sealed", 6000, new Vector3D(300, 0, 20));
        if (isRight) {
            assertEquals(50, run.object().get("heightMm").doubleValue(), 1e-6);
        } else {
            assertEquals(ExitCode.UNUSABLE, run.exitCode());
            assertTrue(run.err().contains("coordinate"), run.err());
        }
    }

    /** The sides of the box cut into strips of a millionth of a millimetre and less beside broad ones. */
    @Test
    void sliversChangeNothing() throws IOException {
        Random random = new Random(4);
        double[] x = new double[40];
        double[] at = new double[40];
        for (int i = 0; i < 40; i++) {
            x[i] = 600.0 * i / 39;
            at[i] = i % 2 == 1 && i < 39 ? 600.0 * (i - 1) / 39 + 1e-6 * random.nextDouble() : x[i];
        }
        double[] radius = new double[40];
        Arrays.fill(radius, 100 * Math.sqrt(2));
        // A bar of four sides is a square bar of 200 mm, standing on an edge.
        TriangleMesh bar = TestMeshes.revolved(at, radius, 4);
        Run run = floated(bar, "sealed", 600.0 * 200 * 200 / 2000, new Vector3D(300, 0, 0));
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        assertEquals(0, run.object().get("heightMm").doubleValue(), 1e-4, "half of her weight: the middle");
    }

    @Test
    void thousandsOfShellsFloat() throws IOException {
        TriangleMesh grid = Solids.box(0, 0, 0, 10, 10, 10);
        for (int i = 0; i < 12; i++) {
            double step = 12 * Math.pow(2, i / 3);
            grid = TestMeshes.together(
                    grid,
                    TestMeshes.moved(
                            grid, new Vector3D(i % 3 == 0 ? step : 0, i % 3 == 1 ? step : 0, i % 3 == 2 ? step : 0)));
        }
        Run run = floated(grid, "sealed", 4096 * 0.5, new Vector3D(93, 93, 40));
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        assertEquals(4096 * 0.5, run.object().get("displacedCm3").doubleValue(), 1e-6);
        assertFalse(codes(run).contains("MESH_COUNTED_TWICE"));
    }

    /** A rod of 3 m and 2 mm square floats level whatever it weighs, with any of its long sides or edges down. */
    @Test
    void aNeedleFloats() throws IOException {
        Run run = floated(Solids.box(-1500, -1, -1, 1500, 1, 1), "sealed", 6, Vector3D.ZERO);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        assertEquals(0, run.object().get("heightMm").doubleValue(), 1e-6);
        assertEquals(0, run.object().get("trimDeg").doubleValue(), 1e-6);
        assertEquals(
                45,
                Math.abs(run.object().get("heelDeg").doubleValue()) % 90,
                1e-3,
                "a square bar of half the density floats on an edge");
    }

    /** Turned any way in her own frame together with her weight she finds the same rests, of the same potential height. */
    @ParameterizedTest
    @ValueSource(strings = {"heron-hull.stl", "coot-hull.stl", "dabchick-middle.stl"})
    void samplesTurnedAnyWayFloatTheSame(String file) throws IOException {
        TriangleMesh hull = MeshFiles.read(Path.of("sample-meshes", file)).mesh();
        Vector3D middle = new Vector3D(
                hull.bounds().centreX(), hull.bounds().centreY(), hull.bounds().centreZ() - 3);
        double massG = 60;
        List<Double> heights = restHeights(floated(hull, "skin", massG, middle));
        Random random = new Random(9);
        for (int i = 0; i < 3; i++) {
            Rotation rotation = TestMeshes.rotation(random);
            List<Double> turned =
                    restHeights(floated(TestMeshes.turned(hull, rotation), "skin", massG, rotation.applyTo(middle)));
            assertEquals(heights.get(0), turned.get(0), 1e-3, "mm, after rounding to single precision in the file");
        }
    }

    private static List<Double> restHeights(Run run) {
        List<Double> heights = new ArrayList<>();
        JsonNode attitudes = run.object().path("attitudes");
        attitudes.forEach(a -> heights.add(a.get("energyMm").doubleValue()));
        assertFalse(heights.isEmpty(), () -> run.out() + run.err());
        return heights;
    }

    /** Whatever is known to be wrong with a mesh is told also when she is floated, or does no harm to the result. */
    @Test
    void everyBrokenMeshIsRefusedOrToldAbout() throws IOException {
        // Edges that touch, specks and hairs do no harm; shells side by side are not wrong.
        List<String> harmless =
                List.of("edge-of-many.stl", "degenerate-triangles.stl", "many-shells.stl", "solid-but-binary.stl");
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/broken-meshes"))) {
            for (Path file : files.sorted().toList()) {
                String name = file.getFileName().toString();
                Files.copy(file, folder.resolve(name));
                Run run = floated(name, "1", "sealed", 100, new Vector3D(0, 0, -5));
                boolean told = run.exitCode() == ExitCode.UNUSABLE
                        || codes(run).stream().anyMatch(c -> c.startsWith("MESH_") || c.startsWith("HULL_"));
                assertEquals(!harmless.contains(name), told, name + ": " + run.err() + run.out());
            }
        }
    }
}
