package trimwright.boat;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * The waterline painted on the hull: the water plane on which she is meant to float.
 *
 * @param pointsMm two points, taken level athwartships, or three; they span a plane that is not upright
 */
public record PaintedLine(List<Vector3D> pointsMm) {

    private static final double LEAST_SINE = 1e-6;

    /**
     * @throws IllegalArgumentException when the points do not span a water plane: fewer than two or more than three, two of
     *     them in one place or straight above each other, all in one line
     */
    public PaintedLine {
        pointsMm = List.copyOf(pointsMm);
        if (pointsMm.size() < 2 || pointsMm.size() > 3) {
            throw new IllegalArgumentException("a painted line has two or three points");
        }
        if (!spansAPlane(pointsMm)) {
            throw new IllegalArgumentException("the points of the painted line span no water plane");
        }
    }

    /** Whether two or three points span a plane that can be a water surface. */
    public static boolean spansAPlane(List<Vector3D> points) {
        Vector3D along = points.get(1).subtract(points.get(0));
        Vector3D across = points.size() == 2 ? Vector3D.PLUS_J : points.get(2).subtract(points.get(0));
        Vector3D normal = along.crossProduct(across);
        double scale = along.getNorm() * across.getNorm();
        return Math.abs(normal.getZ()) > LEAST_SINE * scale && scale > 0;
    }

    /** The water plane through the points, up being the side with positive z. */
    public WaterPlane plane() {
        Vector3D first = pointsMm.get(0);
        Vector3D along = pointsMm.get(1).subtract(first);
        Vector3D across =
                pointsMm.size() == 2 ? Vector3D.PLUS_J : pointsMm.get(2).subtract(first);
        Vector3D normal = along.crossProduct(across).normalize();
        Vector3D up = normal.getZ() > 0 ? normal : normal.negate();
        return WaterPlane.of(up, up.dotProduct(first));
    }

    /** The point nearest the bow. */
    public Vector3D foremostMm() {
        return furthest(Vector3D::getX);
    }

    /** The point nearest the stern. */
    public Vector3D aftmostMm() {
        return furthest(p -> -p.getX());
    }

    private Vector3D furthest(ToDoubleFunction<Vector3D> where) {
        Vector3D best = pointsMm.get(0);
        for (Vector3D p : pointsMm) {
            if (where.applyAsDouble(p) > where.applyAsDouble(best)) {
                best = p;
            }
        }
        return best;
    }
}
