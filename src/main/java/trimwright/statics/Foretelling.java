package trimwright.statics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * Where the next of equal steps on a way will find her: on the parabola through the last three. It only saves water planes; she settles from
 * there to the same rest.
 */
final class Foretelling {

    /** Turn over one step beyond which the last states may not lie on one smooth way, rad. */
    private static final double SMOOTH = Math.toRadians(3);

    private WaterPlane first;
    private WaterPlane second;
    private WaterPlane third;

    /** Adds where she was found. */
    void found(WaterPlane plane) {
        first = second;
        second = third;
        third = plane;
        if (second != null && Vector3D.angle(second.up(), third.up()) > SMOOTH) {
            first = null;
            second = null;
        }
    }

    /** Nothing was found: what came before says nothing about what follows. */
    void lost() {
        first = null;
        second = null;
        third = null;
    }

    /**
     * The plane to start from.
     *
     * @param near the plane to start from where nothing can be foretold: fewer than three are known, or the list would change sides, and
     *     then the attitude that she leaves may be one of a pair
     */
    WaterPlane next(WaterPlane near) {
        if (first == null || second == null) {
            return near;
        }
        WaterPlane next = WaterPlane.of(
                new Vector3D(3, third.up(), -3, second.up(), 1, first.up()),
                3 * (third.heightMm() - second.heightMm()) + first.heightMm());
        boolean sameSide = next.up().getY() * third.up().getY() >= 0;
        return sameSide && Vector3D.angle(next.up(), third.up()) < SMOOTH ? next : near;
    }
}
