package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A level water surface seen from the boat: the points p with up · p = heightMm. Immersed is what lies strictly below,
 * up · p &lt; heightMm.
 *
 * <p>The plane has axes of its own for everything that is measured in it: {@code ahead}, the boat's x axis laid level (or
 * her z axis turned aft-over where she stands on end, so that the axes never vanish), and {@code port}, which completes
 * the right-handed triple (ahead, port, up).
 *
 * @param up the world's up direction in the boat's frame, of unit length
 * @param heightMm distance of the surface from the boat's origin along {@code up}
 * @param ahead unit vector in the plane
 * @param port unit vector in the plane
 */
public record WaterPlane(Vector3D up, double heightMm, Vector3D ahead, Vector3D port) {

    /** Below this share of the x axis left in the plane, she stands on end and her z axis gives the direction. */
    private static final double ON_END = 1e-6;

    /**
     * @param up any direction but zero; it is normalised
     * @throws org.apache.commons.math3.exception.MathArithmeticException when {@code up} has no length
     */
    public static WaterPlane of(Vector3D up, double heightMm) {
        Vector3D n = up.normalize();
        double x = n.getX();
        double level = Math.hypot(n.getY(), n.getZ());
        // The x axis less its part along n, divided by its length, and without the difference 1 − x² that would lose
        // digits on end.
        Vector3D ahead = level < ON_END
                ? new Vector3D(n.getZ(), 0, -x).normalize()
                : new Vector3D(level, -x * n.getY() / level, -x * n.getZ() / level);
        return new WaterPlane(n, heightMm, ahead, n.crossProduct(ahead));
    }

    /** The level plane of an upright boat. */
    public static WaterPlane level(double heightMm) {
        return of(Vector3D.PLUS_K, heightMm);
    }

    /** The plane parallel to this one at another height. */
    public WaterPlane at(double otherHeightMm) {
        return new WaterPlane(up, otherHeightMm, ahead, port);
    }

    /** The point of the plane straight above or below {@code p}. */
    public Vector3D dropped(Vector3D p) {
        return new Vector3D(1, p, heightMm - up.dotProduct(p), up);
    }
}
