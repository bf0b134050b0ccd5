package trimwright.desktop.tank3d;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;

/**
 * A waterline as the hand takes it: a height over the middle of the hull, and slopes along and across.
 *
 * @param hull the box around the hull, mm
 * @param heightMm in the boat's frame, over the middle of the box
 * @param alongSlope rise toward the bow
 * @param acrossSlope rise toward port
 */
record LevelOnHull(Bounds hull, double heightMm, double alongSlope, double acrossSlope) {

    /** Steeper than this, 45° to a side and 20° along, is no waterline to try; the sliders end there too. */
    private static final double MOST_ACROSS = 1;

    private static final double MOST_ALONG = Math.tan(Math.toRadians(20));
    private static final double LEAST_UP = 0.5;

    /** A plane; empty for one in which she lies on her side, which has no height over the middle to speak of. */
    static Optional<LevelOnHull> of(WaterPlane plane, Bounds hull) {
        Vector3D n = plane.up();
        if (n.getZ() < LEAST_UP) {
            return Optional.empty();
        }
        double along = -n.getX() / n.getZ();
        double across = -n.getY() / n.getZ();
        double height = plane.heightMm() / n.getZ() + along * hull.centreX() + across * hull.centreY();
        return Optional.of(new LevelOnHull(hull, height, along, across));
    }

    double heightAt(double xMm, double yMm) {
        return heightMm + alongSlope * (xMm - hull.centreX()) + acrossSlope * (yMm - hull.centreY());
    }

    WaterPlane plane() {
        Vector3D n = new Vector3D(-alongSlope, -acrossSlope, 1).normalize();
        return WaterPlane.of(n, n.dotProduct(new Vector3D(hull.centreX(), hull.centreY(), heightMm)));
    }

    /** Lifted as a whole, not beyond the hull. */
    LevelOnHull lifted(double byMm) {
        double height = Math.max(hull.minZ(), Math.min(hull.maxZ(), heightMm + byMm));
        return new LevelOnHull(hull, height, alongSlope, acrossSlope);
    }

    /** Lifted at one end, the other stays. */
    LevelOnHull tiltedAtEnd(int end, double byMm) {
        double slope = limited(alongSlope + end * byMm / hull.sizeX(), MOST_ALONG);
        double turned = slope - alongSlope;
        return new LevelOnHull(hull, heightMm + end * turned * hull.sizeX() / 2, slope, acrossSlope);
    }

    /** Lifted at one side, her middle stays. */
    LevelOnHull tiltedAtSide(int side, double byMm) {
        double slope = limited(acrossSlope + side * byMm / (hull.sizeY() / 2), MOST_ACROSS);
        return new LevelOnHull(hull, heightMm, alongSlope, slope);
    }

    private static double limited(double slope, double most) {
        return Math.max(-most, Math.min(most, slope));
    }
}
