package trimwright.desktop.tank3d;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/**
 * What the pointer points at: a half-line in the boat's frame, mm.
 *
 * @param from the eye
 * @param direction away from it; one of its lengths is one mm of depth
 * @param nearest depth from which on things are seen, mm
 */
record Ray(Vector3D from, Vector3D direction, double nearest) {

    private static final double PARALLEL = 1e-12;

    /** The first point of a surface that it meets. */
    Optional<Vector3D> firstOn(Iterable<TriangleMesh> meshes) {
        double best = Double.POSITIVE_INFINITY;
        for (TriangleMesh mesh : meshes) {
            int[] corners = mesh.corners();
            for (int t = 0; t < corners.length; t += 3) {
                double depth = depth(mesh.xyz(), 3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]);
                if (depth >= nearest && depth < best) {
                    best = depth;
                }
            }
        }
        return best < Double.POSITIVE_INFINITY ? Optional.of(new Vector3D(1, from, best, direction)) : Optional.empty();
    }

    /** Depth at which it goes through a triangle, after Möller and Trumbore (Journal of Graphics Tools 2, 1997); NaN where it does not. */
    private double depth(double[] p, int a, int b, int c) {
        double ux = p[b] - p[a];
        double uy = p[b + 1] - p[a + 1];
        double uz = p[b + 2] - p[a + 2];
        double vx = p[c] - p[a];
        double vy = p[c + 1] - p[a + 1];
        double vz = p[c + 2] - p[a + 2];
        double dx = direction.getX();
        double dy = direction.getY();
        double dz = direction.getZ();
        double hx = dy * vz - dz * vy;
        double hy = dz * vx - dx * vz;
        double hz = dx * vy - dy * vx;
        double det = ux * hx + uy * hy + uz * hz;
        if (Math.abs(det) < PARALLEL) {
            return Double.NaN;
        }
        double sx = from.getX() - p[a];
        double sy = from.getY() - p[a + 1];
        double sz = from.getZ() - p[a + 2];
        double u = (sx * hx + sy * hy + sz * hz) / det;
        double qx = sy * uz - sz * uy;
        double qy = sz * ux - sx * uz;
        double qz = sx * uy - sy * ux;
        double v = (dx * qx + dy * qy + dz * qz) / det;
        return u < 0 || v < 0 || u + v > 1 ? Double.NaN : (vx * qx + vy * qy + vz * qz) / det;
    }
}
