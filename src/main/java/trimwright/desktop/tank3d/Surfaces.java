package trimwright.desktop.tank3d;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.Bounds;

/** Meshes of ours as meshes of the toolkit. */
final class Surfaces {

    /** Above this many triangles a coarser mesh is shown: a frame would take longer than the eye forgives. */
    static final int MOST_AT_REST = 300_000;
    /** The same for what moves, where a software renderer must keep up with the hand; a hull of glass is drawn twice. */
    static final int MOST_MOVING = 15_000;

    private Surfaces() {}

    /**
     * A mesh about a point, shaded smoothly where the surface is smooth.
     *
     * @param middleMm the point that becomes the origin
     * @param creaseDeg neighbours that meet at more than this show an edge
     * @param mostTriangles with more than this the mesh is made coarser
     */
    static TriangleMesh of(trimwright.mesh.TriangleMesh mesh, Vector3D middleMm, double creaseDeg, int mostTriangles) {
        trimwright.mesh.TriangleMesh shown = mesh;
        // Two triangles come to about one cell of surface.
        double cellMm = Math.sqrt(2 * mesh.area() / mostTriangles);
        for (; shown.triangleCount() > mostTriangles; cellMm *= 1.2) {
            shown = coarser(mesh, cellMm);
        }
        TriangleMesh made = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
        double[] xyz = shown.xyz();
        float[] points = new float[xyz.length];
        for (int i = 0; i < xyz.length; i += 3) {
            points[i] = (float) (xyz[i] - middleMm.getX());
            points[i + 1] = (float) (xyz[i + 1] - middleMm.getY());
            points[i + 2] = (float) (xyz[i + 2] - middleMm.getZ());
        }
        Normals normals = Normals.of(shown, Math.cos(Math.toRadians(creaseDeg)));
        int[] corners = shown.corners();
        int[] faces = new int[3 * corners.length];
        for (int i = 0; i < corners.length; i++) {
            faces[3 * i] = corners[i];
            faces[3 * i + 1] = normals.indices()[i];
        }
        made.getPoints().setAll(points);
        made.getNormals().setAll(normals.vectors());
        made.getTexCoords().setAll(0, 0);
        made.getFaces().setAll(faces);
        return made;
    }

    /** All vertices in one cell of a grid become one: triangles that lose their area thereby are left out. */
    static trimwright.mesh.TriangleMesh coarser(trimwright.mesh.TriangleMesh mesh, double cellMm) {
        Bounds box = mesh.bounds();
        double[] xyz = mesh.xyz();
        Map<Long, Integer> cells = new HashMap<>();
        int[] renumbered = new int[mesh.vertexCount()];
        double[] sums = new double[xyz.length];
        int[] counts = new int[mesh.vertexCount()];
        for (int v = 0; v < renumbered.length; v++) {
            long cell = cell(xyz[3 * v] - box.minX(), cellMm) << 42
                    | cell(xyz[3 * v + 1] - box.minY(), cellMm) << 21
                    | cell(xyz[3 * v + 2] - box.minZ(), cellMm);
            int to = cells.computeIfAbsent(cell, c -> cells.size());
            renumbered[v] = to;
            counts[to]++;
            for (int k = 0; k < 3; k++) {
                sums[3 * to + k] += xyz[3 * v + k];
            }
        }
        double[] points = new double[3 * cells.size()];
        for (int i = 0; i < points.length; i++) {
            points[i] = sums[i] / counts[i / 3];
        }
        int[] corners = mesh.corners();
        int[] kept = new int[corners.length];
        int next = 0;
        for (int t = 0; t < corners.length; t += 3) {
            int a = renumbered[corners[t]];
            int b = renumbered[corners[t + 1]];
            int c = renumbered[corners[t + 2]];
            if (a != b && b != c && c != a) {
                kept[next++] = a;
                kept[next++] = b;
                kept[next++] = c;
            }
        }
        return trimwright.mesh.TriangleMesh.owning(points, Arrays.copyOf(kept, next));
    }

    private static long cell(double distance, double cellMm) {
        return (long) (distance / cellMm);
    }
}
