package trimwright.desktop.tank3d;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;

/** The water in a tank as a body to be drawn: the wet walls of the tank, and its surface. Nothing is measured on it. */
final class WaterBody {

    /** Strips of which the surface is made; they may have any outline, also one of several pieces. */
    private static final int STRIPS = 120;

    private final WaterPlane plane;
    private final List<Vector3D> points = new ArrayList<>();
    /** Ends of the cuts through the walls, two by two. */
    private final List<Vector3D> rim = new ArrayList<>();

    private WaterBody(WaterPlane plane) {
        this.plane = plane;
    }

    /** What of the inside of a closed surface lies below a plane. */
    static TriangleMesh below(TriangleMesh tank, WaterPlane plane) {
        WaterBody body = new WaterBody(plane);
        double[] p = tank.xyz();
        int[] corners = tank.corners();
        Vector3D[] triangle = new Vector3D[3];
        for (int t = 0; t < corners.length; t += 3) {
            for (int k = 0; k < 3; k++) {
                int v = 3 * corners[t + k];
                triangle[k] = new Vector3D(p[v], p[v + 1], p[v + 2]);
            }
            body.wall(triangle);
        }
        body.surface();
        return body.mesh();
    }

    private double above(Vector3D p) {
        return plane.up().dotProduct(p) - plane.heightMm();
    }

    /** The wet part of a triangle, as a fan. */
    private void wall(Vector3D[] triangle) {
        List<Vector3D> wet = new ArrayList<>(4);
        List<Vector3D> cut = new ArrayList<>(2);
        for (int k = 0; k < 3; k++) {
            Vector3D a = triangle[k];
            Vector3D b = triangle[(k + 1) % 3];
            double da = above(a);
            double db = above(b);
            if (da < 0) {
                wet.add(a);
            }
            if (da < 0 != db < 0) {
                double share = da / (da - db);
                Vector3D c = new Vector3D(1 - share, a, share, b);
                wet.add(c);
                cut.add(c);
            }
        }
        for (int k = 2; k < wet.size(); k++) {
            points.addAll(List.of(wet.get(0), wet.get(k - 1), wet.get(k)));
        }
        rim.addAll(cut);
    }

    private void surface() {
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (Vector3D p : rim) {
            double along = p.dotProduct(plane.ahead());
            least = Math.min(least, along);
            most = Math.max(most, along);
        }
        double wide = (most - least) / STRIPS;
        for (int i = 0; i < STRIPS && wide > 0; i++) {
            double from = least + i * wide;
            double[] crossings = crossings(from + wide / 2);
            for (int k = 0; k + 1 < crossings.length; k += 2) {
                strip(from, from + wide, crossings[k], crossings[k + 1]);
            }
        }
    }

    /** Where the rim crosses a line across, in rising order: the water lies from every first to the second. */
    private double[] crossings(double along) {
        double[] found = new double[rim.size()];
        int n = 0;
        for (int i = 0; i < rim.size(); i += 2) {
            Vector3D a = rim.get(i);
            Vector3D b = rim.get(i + 1);
            double da = a.dotProduct(plane.ahead()) - along;
            double db = b.dotProduct(plane.ahead()) - along;
            if (da < 0 != db < 0) {
                double share = da / (da - db);
                found[n++] = (1 - share) * a.dotProduct(plane.port()) + share * b.dotProduct(plane.port());
            }
        }
        double[] sorted = Arrays.copyOf(found, n);
        Arrays.sort(sorted);
        return sorted;
    }

    private void strip(double from, double to, double low, double high) {
        Vector3D a = at(from, low);
        Vector3D b = at(to, low);
        Vector3D c = at(to, high);
        Vector3D d = at(from, high);
        points.addAll(List.of(a, b, c, a, c, d));
    }

    private Vector3D at(double along, double across) {
        return new Vector3D(along, plane.ahead(), across, plane.port(), plane.heightMm(), plane.up());
    }

    private TriangleMesh mesh() {
        double[] xyz = new double[3 * points.size()];
        int[] corners = new int[points.size()];
        for (int i = 0; i < corners.length; i++) {
            xyz[3 * i] = points.get(i).getX();
            xyz[3 * i + 1] = points.get(i).getY();
            xyz[3 * i + 2] = points.get(i).getZ();
            corners[i] = i;
        }
        return TriangleMesh.owning(xyz, corners);
    }
}
