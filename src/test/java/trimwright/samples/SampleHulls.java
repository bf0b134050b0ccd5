package trimwright.samples;

import java.util.LinkedHashMap;
import java.util.Map;
import trimwright.mesh.TriangleMesh;

/** The hulls of the sample boats, made from their own lines. */
public final class SampleHulls {

    private static final double TRIANGLES_OF_SAMPLE = 105_412;

    private SampleHulls() {}

    /** Every mesh file of the samples by its name, coordinates in mm in single precision as the files hold them. */
    public static Map<String, TriangleMesh> files() {
        Map<String, TriangleMesh> files = new LinkedHashMap<>();
        files.put("heron-hull.stl", HeronHull.mesh(1));
        files.put("dabchick-stern.stl", DabchickHull.stern());
        files.put("dabchick-middle.stl", DabchickHull.middle());
        files.put("dabchick-bow.stl", DabchickHull.bow());
        files.put("coot-hull.stl", CootHull.mesh());
        return files;
    }

    /**
     * Heron's hull, finer or coarser than the sample, for measuring how cost grows: up to 5 million triangles and more.
     *
     * @param targetTriangles about how many triangles it is to have; from 20 000 on they differ by less than 10 %
     */
    public static TriangleMesh heron(int targetTriangles) {
        return HeronHull.mesh(StrictMath.sqrt(targetTriangles / TRIANGLES_OF_SAMPLE));
    }
}
