package trimwright.desktop.tank3d;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.Bounds;
import trimwright.mesh.TriangleMesh;

/**
 * A mesh with fewer triangles, for the eye alone. All vertices in one cell of a grid become one, and triangles that lose their area thereby
 * are left out. The one vertex lies where it is nearest to the planes of all triangles that met in the cell, so that edges stay sharp and
 * smooth sides in their place: Lindstrom, "Out-of-core simplification of large polygonal models", SIGGRAPH 2000.
 */
final class Coarser {

    /** How strongly a vertex is held to the middle of those it stands for where the planes leave it free, as a share of their weight. */
    private static final double HELD = 1e-3;
    /** Numbers kept for a cell: six of a symmetric matrix, three of a vector. */
    private static final int PLANES = 9;

    private final TriangleMesh mesh;
    private final double cellMm;
    private final int[] cellOf;
    private int cells;

    private Coarser(TriangleMesh mesh, double cellMm) {
        this.mesh = mesh;
        this.cellMm = cellMm;
        cellOf = new int[mesh.vertexCount()];
    }

    /** The same surface with no more triangles than that, as far as the eye is concerned. */
    static TriangleMesh of(TriangleMesh mesh, int mostTriangles) {
        TriangleMesh coarse = mesh;
        // Two triangles come to about one cell of surface.
        double cellMm = Math.sqrt(2 * mesh.area() / mostTriangles);
        for (; coarse.triangleCount() > mostTriangles; cellMm *= 1.2) {
            coarse = new Coarser(mesh, cellMm).made();
        }
        return coarse;
    }

    private TriangleMesh made() {
        sort();
        return TriangleMesh.owning(points(), corners());
    }

    private void sort() {
        Bounds box = mesh.bounds();
        double[] xyz = mesh.xyz();
        Map<Long, Integer> numbers = new HashMap<>();
        for (int v = 0; v < cellOf.length; v++) {
            long cell = cell(xyz[3 * v] - box.minX()) << 42
                    | cell(xyz[3 * v + 1] - box.minY()) << 21
                    | cell(xyz[3 * v + 2] - box.minZ());
            cellOf[v] = numbers.computeIfAbsent(cell, c -> numbers.size());
        }
        cells = numbers.size();
    }

    private long cell(double distance) {
        return (long) (distance / cellMm);
    }

    private double[] points() {
        double[] means = means();
        double[] planes = planes(means);
        double[] points = new double[3 * cells];
        for (int c = 0; c < cells; c++) {
            Vector3D by = toPlanes(planes, PLANES * c);
            // Farther than the cell is wide the planes run nearly side by side, and say nothing of the place.
            Vector3D shift = by.getNorm() <= cellMm ? by : Vector3D.ZERO;
            points[3 * c] = means[3 * c] + shift.getX();
            points[3 * c + 1] = means[3 * c + 1] + shift.getY();
            points[3 * c + 2] = means[3 * c + 2] + shift.getZ();
        }
        return points;
    }

    private double[] means() {
        double[] xyz = mesh.xyz();
        double[] means = new double[3 * cells];
        int[] counts = new int[cells];
        for (int v = 0; v < cellOf.length; v++) {
            counts[cellOf[v]]++;
            for (int k = 0; k < 3; k++) {
                means[3 * cellOf[v] + k] += xyz[3 * v + k];
            }
        }
        for (int i = 0; i < means.length; i++) {
            means[i] /= counts[i / 3];
        }
        return means;
    }

    /** For every cell the sums of n·nᵀ and n·(n·p) over its triangles, with p from the cell's mean and n as long as twice the area. */
    private double[] planes(double[] means) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        double[] sums = new double[PLANES * cells];
        for (int t = 0; t < corners.length; t += 3) {
            Vector3D a = at(xyz, corners[t]);
            Vector3D n = at(xyz, corners[t + 1])
                    .subtract(a)
                    .crossProduct(at(xyz, corners[t + 2]).subtract(a));
            for (int k = 0; k < 3; k++) {
                int cell = cellOf[corners[t + k]];
                add(sums, PLANES * cell, n, n.dotProduct(a.subtract(at(means, cell))));
            }
        }
        return sums;
    }

    private static Vector3D at(double[] xyz, int v) {
        return new Vector3D(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
    }

    private static void add(double[] sums, int at, Vector3D n, double distance) {
        double x = n.getX();
        double y = n.getY();
        double z = n.getZ();
        double[] terms = {x * x, x * y, x * z, y * y, y * z, z * z, x * distance, y * distance, z * distance};
        for (int i = 0; i < PLANES; i++) {
            sums[at + i] += terms[i];
        }
    }

    /** The way from a cell's mean to the point nearest to its planes. */
    private static Vector3D toPlanes(double[] s, int at) {
        double held = HELD * (s[at] + s[at + 3] + s[at + 5]);
        Vector3D first = new Vector3D(s[at] + held, s[at + 1], s[at + 2]);
        Vector3D second = new Vector3D(s[at + 1], s[at + 3] + held, s[at + 4]);
        Vector3D third = new Vector3D(s[at + 2], s[at + 4], s[at + 5] + held);
        double determinant = first.dotProduct(second.crossProduct(third));
        return determinant == 0
                ? Vector3D.ZERO
                : new Vector3D(
                                s[at + 6], second.crossProduct(third),
                                s[at + 7], third.crossProduct(first),
                                s[at + 8], first.crossProduct(second))
                        .scalarMultiply(1 / determinant);
    }

    private int[] corners() {
        int[] corners = mesh.corners();
        int[] kept = new int[corners.length];
        int next = 0;
        for (int t = 0; t < corners.length; t += 3) {
            int a = cellOf[corners[t]];
            int b = cellOf[corners[t + 1]];
            int c = cellOf[corners[t + 2]];
            if (a != b && b != c && c != a) {
                kept[next++] = a;
                kept[next++] = b;
                kept[next++] = c;
            }
        }
        return Arrays.copyOf(kept, next);
    }
}
