package trimwright.desktop.tank3d;

import java.util.List;
import javafx.scene.shape.TriangleMesh;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Lines as thin tubes, since the toolkit has no lines that show in every light. */
final class Tubes {

    private static final int SIDES = 4;

    private Tubes() {}

    /**
     * Tubes about a point, in mm.
     *
     * @param lines from point to point
     * @param middleMm the point that becomes the origin
     */
    static TriangleMesh of(List<List<Vector3D>> lines, Vector3D middleMm, double radiusMm) {
        int count = lines.stream().mapToInt(l -> l.size() - 1).sum();
        float[] points = new float[count * 2 * SIDES * 3];
        int[] faces = new int[count * SIDES * 2 * 6];
        int number = 0;
        for (List<Vector3D> line : lines) {
            for (int i = 1; i < line.size(); i++) {
                Vector3D a = line.get(i - 1).subtract(middleMm);
                tube(points, faces, number++, a, line.get(i).subtract(middleMm), radiusMm);
            }
        }
        TriangleMesh mesh = new TriangleMesh();
        mesh.getPoints().setAll(points);
        mesh.getTexCoords().setAll(0, 0);
        mesh.getFaces().setAll(faces);
        return mesh;
    }

    private static void tube(float[] points, int[] faces, int number, Vector3D a, Vector3D b, double radius) {
        Vector3D along = b.subtract(a).normalize();
        Vector3D side = along.orthogonal();
        Vector3D other = along.crossProduct(side);
        int first = number * 2 * SIDES;
        for (int k = 0; k < SIDES; k++) {
            double angle = 2 * Math.PI * k / SIDES;
            Vector3D out = new Vector3D(radius * Math.cos(angle), side, radius * Math.sin(angle), other);
            put(points, first + k, a.add(out));
            put(points, first + SIDES + k, b.add(out));
        }
        for (int k = 0; k < SIDES; k++) {
            int p = first + k;
            int q = first + (k + 1) % SIDES;
            int at = (number * SIDES + k) * 12;
            face(faces, at, p, q, p + SIDES);
            face(faces, at + 6, q, q + SIDES, p + SIDES);
        }
    }

    private static void put(float[] points, int index, Vector3D p) {
        points[3 * index] = (float) p.getX();
        points[3 * index + 1] = (float) p.getY();
        points[3 * index + 2] = (float) p.getZ();
    }

    private static void face(int[] faces, int at, int a, int b, int c) {
        faces[at] = a;
        faces[at + 2] = b;
        faces[at + 4] = c;
    }
}
