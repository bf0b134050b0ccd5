package trimwright.samples;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.mesh.StlWriter;
import trimwright.mesh.TriangleMesh;

/** The mesh files are what the code makes of the lines, to the byte, and they are solid bodies of the sizes told. */
class SamplesTest {

    private static final Path FOLDER = Path.of("sample-meshes");
    private static final Map<String, TriangleMesh> FILES = SampleHulls.files();

    static Stream<String> names() {
        return FILES.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void fileIsWhatTheLinesMake(String name, @TempDir Path folder) throws IOException {
        Path fresh = folder.resolve(name);
        StlWriter.write(fresh, FILES.get(name));
        assertArrayEquals(Files.readAllBytes(fresh), Files.readAllBytes(FOLDER.resolve(name)));
    }

    @Test
    void folderHoldsNoOtherMesh() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertEquals(
                    FILES.size(),
                    files.filter(file -> file.toString().endsWith(".stl")).count());
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyEdgeJoinsTwoTrianglesThatRunAgainstEachOther(String name) {
        assertEquals(0, unpairedEdges(FILES.get(name)));
    }

    @ParameterizedTest
    @MethodSource("names")
    void starboardMirrorsPort(String name) {
        TriangleMesh mesh = FILES.get(name);
        Map<Vector3D, Integer> sides = new HashMap<>();
        for (int v = 0; v < mesh.xyz().length; v += 3) {
            double y = mesh.xyz()[v + 1];
            Vector3D onPort = new Vector3D(mesh.xyz()[v], Math.abs(y), mesh.xyz()[v + 2]);
            sides.merge(onPort, (int) Math.signum(y), Integer::sum);
        }
        assertEquals(0, sides.values().stream().filter(sum -> sum != 0).count());
    }

    @Test
    void heronHasTheSizeTold() {
        TriangleMesh heron = FILES.get("heron-hull.stl");
        // Lines: length 1160, tower top 104 + 58; beam 117 within the spacing of the sections, which shows in the last
        // figures.
        assertEquals(0, heron.bounds().minX());
        assertEquals(1160, heron.bounds().maxX());
        assertEquals(0, heron.bounds().minZ());
        assertEquals(162, heron.bounds().maxZ());
        assertEquals(117, heron.bounds().maxY() - heron.bounds().minY(), 0.1);
        assertEquals(2, eulerNumber(heron));
    }

    @Test
    void cootIsOneSurface() {
        assertEquals(2, eulerNumber(FILES.get("coot-hull.stl")));
    }

    /** A ring with eight slots through its wall has nine handles, a cap with eight slots eight. */
    @ParameterizedTest
    @CsvSource({"dabchick-stern.stl, 8", "dabchick-middle.stl, 9", "dabchick-bow.stl, 8"})
    void dabchickHasHerSlots(String name, int handles) {
        assertEquals(2 - 2 * handles, eulerNumber(FILES.get(name)));
    }

    /** Plastic is surface times half the wall, less what is lost at slots and ends: within 15 % for walls that measure 1.8 mm. */
    @ParameterizedTest
    @ValueSource(strings = {"dabchick-stern.stl", "dabchick-middle.stl", "dabchick-bow.stl"})
    void dabchickHasHerWall(String name) {
        TriangleMesh section = FILES.get(name);
        assertEquals(DabchickHull.WALL_MM, 2 * section.signedVolume() / section.area(), 0.15 * DabchickHull.WALL_MM);
    }

    @ParameterizedTest
    @ValueSource(ints = {20_000, 400_000})
    void heronCanBeMadeFiner(int triangles) {
        TriangleMesh heron = SampleHulls.heron(triangles);
        assertEquals(triangles, heron.triangleCount(), 0.1 * triangles);
        assertEquals(0, unpairedEdges(heron));
        // Flat triangles cut off of the round: the missing volume falls with their number; 0.2 % at 20 000.
        double sample = FILES.get("heron-hull.stl").signedVolume();
        assertEquals(1, heron.signedVolume() / sample, 2e-3);
    }

    private static long unpairedEdges(TriangleMesh mesh) {
        return edges(mesh).values().stream().filter(times -> times != 0x10001).count();
    }

    private static int eulerNumber(TriangleMesh mesh) {
        return mesh.vertexCount() - edges(mesh).size() + mesh.triangleCount();
    }

    /** For each edge how often it is run along upward, and 0x10000 times how often downward. */
    private static Map<Long, Integer> edges(TriangleMesh mesh) {
        int[] corners = mesh.corners();
        Map<Long, Integer> times = new HashMap<>(corners.length);
        for (int i = 0; i < corners.length; i++) {
            long from = corners[i];
            long to = corners[i % 3 == 2 ? i - 2 : i + 1];
            long key = Math.min(from, to) << 32 | Math.max(from, to);
            times.merge(key, from < to ? 1 : 0x10000, Integer::sum);
        }
        return times;
    }
}
