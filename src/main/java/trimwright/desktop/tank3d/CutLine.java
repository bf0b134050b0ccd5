package trimwright.desktop.tank3d;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;

/**
 * The line along which a plane cuts a mesh: the painted line and the waterline on the hull. The cuts through the single triangles are put
 * together where they meet on an edge, and of points that lie in a row only the ends are kept.
 */
final class CutLine {

    private static final int NONE = -1;
    /** So many points in a row are looked at together at most: the time would grow with the square of their number. */
    private static final int MOST_IN_ROW = 64;

    private final WaterPlane plane;
    private final double toleranceMm;
    private final double dashMm;
    private final List<List<Vector3D>> found = new ArrayList<>();

    /** Ends of cuts, two by two: an end's other one is that of the number with the last bit turned. */
    private final List<Vector3D> ends = new ArrayList<>();
    /** For every end the one of the next triangle in the same place. */
    private int[] joined = new int[256];

    private CutLine(WaterPlane plane, double toleranceMm, double dashMm) {
        this.plane = plane;
        this.toleranceMm = toleranceMm;
        this.dashMm = dashMm;
    }

    /**
     * The line in pieces, each from point to point.
     *
     * @param meshes what is cut
     * @param toleranceMm how far from the line a point may lie that is left out
     * @param dashMm length of dashes along the boat, with gaps half as long; 0 for a whole line
     */
    static List<List<Vector3D>> of(Iterable<TriangleMesh> meshes, WaterPlane plane, double toleranceMm, double dashMm) {
        CutLine line = new CutLine(plane, toleranceMm, dashMm);
        for (TriangleMesh mesh : meshes) {
            line.cut(mesh);
            line.follow();
        }
        return line.found;
    }

    private void cut(TriangleMesh mesh) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        double nx = plane.up().getX();
        double ny = plane.up().getY();
        double nz = plane.up().getZ();
        double[] above = new double[mesh.vertexCount()];
        for (int v = 0; v < above.length; v++) {
            above[v] = nx * xyz[3 * v] + ny * xyz[3 * v + 1] + nz * xyz[3 * v + 2] - plane.heightMm();
        }
        ends.clear();
        Map<Long, Integer> open = new HashMap<>();
        for (int t = 0; t < corners.length; t += 3) {
            for (int k = 0; k < 3; k++) {
                int a = corners[t + k];
                int b = corners[t + (k + 1) % 3];
                // A plane crosses none or two sides of a triangle.
                if (above[a] < 0 != above[b] < 0) {
                    double share = above[a] / (above[a] - above[b]);
                    ends.add(new Vector3D(1 - share, at(xyz, a), share, at(xyz, b)));
                    join(open, (long) Math.min(a, b) << 32 | Math.max(a, b));
                }
            }
        }
    }

    private static Vector3D at(double[] xyz, int v) {
        return new Vector3D(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
    }

    /** Joins the last end with that which another triangle has on the same edge, once both are there. */
    private void join(Map<Long, Integer> open, long edge) {
        int end = ends.size() - 1;
        if (end == joined.length) {
            joined = Arrays.copyOf(joined, 2 * end);
        }
        Integer other = open.remove(edge);
        joined[end] = other == null ? NONE : other;
        if (other == null) {
            open.put(edge, end);
        } else {
            joined[other] = end;
        }
    }

    private void follow() {
        boolean[] passed = new boolean[ends.size()];
        // Lines with ends first, from an end; what is left then are rings.
        for (int end = 0; end < passed.length; end++) {
            if (joined[end] == NONE && !passed[end]) {
                follow(end, passed);
            }
        }
        for (int end = 0; end < passed.length; end++) {
            if (!passed[end]) {
                follow(end, passed);
            }
        }
    }

    private void follow(int first, boolean[] passed) {
        List<Vector3D> points = new ArrayList<>();
        points.add(ends.get(first));
        for (int end = first; end != NONE && !passed[end]; end = joined[end ^ 1]) {
            passed[end] = true;
            passed[end ^ 1] = true;
            Vector3D next = ends.get(end ^ 1);
            if (isGap(points.get(points.size() - 1), next)) {
                keep(points);
                points.clear();
            }
            points.add(next);
        }
        keep(points);
    }

    private boolean isGap(Vector3D a, Vector3D b) {
        double periods = 0.5 * (a.getX() + b.getX()) / (1.5 * dashMm);
        return dashMm > 0 && periods - Math.floor(periods) > 2.0 / 3;
    }

    private void keep(List<Vector3D> points) {
        List<Vector3D> kept = new ArrayList<>();
        int last = 0;
        for (int i = 1; i <= points.size(); i++) {
            if (i == points.size() || !isStraight(points, last, i)) {
                if (kept.isEmpty()) {
                    kept.add(points.get(last));
                }
                last = i - 1;
                if (points.get(last).distance(kept.get(kept.size() - 1)) > 1e-9) {
                    kept.add(points.get(last));
                }
            }
        }
        if (kept.size() > 1) {
            found.add(kept);
        }
    }

    /** Whether all points between two lie in a row with them. */
    private boolean isStraight(List<Vector3D> points, int from, int to) {
        if (to - from > MOST_IN_ROW) {
            return false;
        }
        Vector3D a = points.get(from);
        Vector3D way = points.get(to).subtract(a);
        double square = way.getNormSq();
        for (int i = from + 1; i < to; i++) {
            Vector3D p = points.get(i).subtract(a);
            double along = square == 0 ? 0 : Math.max(0, Math.min(1, p.dotProduct(way) / square));
            if (p.distance(way.scalarMultiply(along)) > toleranceMm) {
                return false;
            }
        }
        return true;
    }
}
