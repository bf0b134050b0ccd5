package trimwright.statics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * Where on a way she will be found: on the parabola through three states of it. It only saves water planes; she settles from there to the same
 * rest.
 */
final class Foretelling {

    /** Turn between two states beyond which they may not lie on one smooth way, rad. */
    private static final double SMOOTH = Math.toRadians(3);

    /** Where she was found, and how far along the way, in any measure. */
    private record Place(double along, WaterPlane plane) {}

    private Place first;
    private Place second;
    private Place third;

    /** Adds where she was found. */
    void found(double along, WaterPlane plane) {
        first = second;
        second = third;
        third = new Place(along, plane);
        if (second != null && Vector3D.angle(second.plane.up(), plane.up()) > SMOOTH) {
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
     * @param along how far along the way
     * @param near the plane to start from where nothing can be foretold: fewer than three are known, or the list would change sides, and
     *     then the attitude that she leaves may be one of a pair
     */
    WaterPlane at(double along, WaterPlane near) {
        if (first == null || second == null) {
            return near;
        }
        double a = share(along, first, second, third);
        double b = share(along, second, first, third);
        double c = share(along, third, first, second);
        WaterPlane there = WaterPlane.of(
                new Vector3D(a, first.plane.up(), b, second.plane.up(), c, third.plane.up()),
                a * first.plane.heightMm() + b * second.plane.heightMm() + c * third.plane.heightMm());
        boolean sameSide = there.up().getY() * third.plane.up().getY() >= 0;
        return sameSide && Vector3D.angle(there.up(), third.plane.up()) < SMOOTH ? there : near;
    }

    /** Lagrange's weight of one of three places. */
    private static double share(double along, Place of, Place other, Place another) {
        return (along - other.along)
                * (along - another.along)
                / ((of.along - other.along) * (of.along - another.along));
    }
}
