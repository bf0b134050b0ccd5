package trimwright.desktop.tank3d;

import java.util.Arrays;
import javafx.scene.shape.TriangleMesh;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/** The line along which a plane cuts a mesh, as thin tubes: the painted line and the waterline on the hull. */
final class CutLine {

    private static final int SIDES = 4;

    private final WaterPlane plane;
    private final double[] ends = new double[6];
    private double[] segments = new double[6 * 256];
    private int count;

    private CutLine(WaterPlane plane) {
        this.plane = plane;
    }

    /**
     * The tubes about a point, in mm.
     *
     * @param meshes what is cut
     * @param middleMm the point that becomes the origin
     * @param radiusMm of the tubes
     * @param dashMm length of dashes along the boat, with gaps half as long; 0 for a whole line
     */
    static TriangleMesh tubes(
            Iterable<trimwright.mesh.TriangleMesh> meshes,
            WaterPlane plane,
            Vector3D middleMm,
            double radiusMm,
            double dashMm) {
        CutLine line = new CutLine(plane);
        for (trimwright.mesh.TriangleMesh mesh : meshes) {
            line.cut(mesh);
        }
        return line.tubes(middleMm, radiusMm, dashMm);
    }

    private void cut(trimwright.mesh.TriangleMesh mesh) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        double nx = plane.up().getX();
        double ny = plane.up().getY();
        double nz = plane.up().getZ();
        double[] above = new double[mesh.vertexCount()];
        for (int v = 0; v < above.length; v++) {
            above[v] = nx * xyz[3 * v] + ny * xyz[3 * v + 1] + nz * xyz[3 * v + 2] - plane.heightMm();
        }
        for (int t = 0; t < corners.length; t += 3) {
            int n = 0;
            for (int k = 0; k < 3; k++) {
                int a = corners[t + k];
                int b = corners[t + (k + 1) % 3];
                if (above[a] < 0 != above[b] < 0 && n < 2) {
                    double share = above[a] / (above[a] - above[b]);
                    for (int i = 0; i < 3; i++) {
                        ends[3 * n + i] = xyz[3 * a + i] + share * (xyz[3 * b + i] - xyz[3 * a + i]);
                    }
                    n++;
                }
            }
            if (n == 2) {
                add();
            }
        }
    }

    private void add() {
        if (6 * count == segments.length) {
            segments = Arrays.copyOf(segments, 2 * segments.length);
        }
        System.arraycopy(ends, 0, segments, 6 * count, 6);
        count++;
    }

    private TriangleMesh tubes(Vector3D middle, double radius, double dash) {
        float[] points = new float[count * 2 * SIDES * 3];
        int[] faces = new int[count * SIDES * 2 * 6];
        int shown = 0;
        for (int s = 0; s < count; s++) {
            Vector3D a = new Vector3D(segments[6 * s], segments[6 * s + 1], segments[6 * s + 2]);
            Vector3D b = new Vector3D(segments[6 * s + 3], segments[6 * s + 4], segments[6 * s + 5]);
            double along = 0.5 * (a.getX() + b.getX());
            boolean gap = dash > 0 && along / (1.5 * dash) - Math.floor(along / (1.5 * dash)) > 2.0 / 3;
            if (!gap && a.distance(b) > 1e-9) {
                tube(points, faces, shown++, a.subtract(middle), b.subtract(middle), radius);
            }
        }
        TriangleMesh mesh = new TriangleMesh();
        mesh.getPoints().setAll(points, 0, shown * 2 * SIDES * 3);
        mesh.getTexCoords().setAll(0, 0);
        mesh.getFaces().setAll(faces, 0, shown * SIDES * 2 * 6);
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
