package trimwright.report;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.plan.CylinderSeat;

/** Where a cylinder touches the hull, in words. */
public final class SeatWords {

    /** Share of its length from an end that counts as the end. */
    private static final double AT_END = 0.02;
    /** Sine of the angle within which a direction counts as straight. */
    private static final double STRAIGHT = 0.3;

    private SeatWords() {}

    /** As in "the hull part bow at its fore end, low to port (x 318, y 27, z 38)". */
    public static String of(CylinderSeat.Touch touch, CylinderSeat seat) {
        BarShape bar = (BarShape) seat.part().shape().orElseThrow();
        Vector3D p = touch.pointMm();
        return "the hull part " + touch.hullPart() + " " + along(p.getX(), bar) + ", "
                + direction(p.getY() - bar.fromMm().getY(), p.getZ() - touch.axisZMm()) + " (x "
                + Numbers.fixed(p.getX(), 0) + ", y " + Numbers.fixed(p.getY(), 0) + ", z "
                + Numbers.fixed(p.getZ(), 0) + ")";
    }

    private static String along(double x, BarShape bar) {
        double aft = Math.min(bar.fromMm().getX(), bar.toMm().getX());
        double share = (x - aft) / bar.lengthMm();
        if (share < AT_END) {
            return "at its after end";
        }
        return share > 1 - AT_END ? "at its fore end" : Numbers.fixed(x - aft, 0) + " mm ahead of its after end";
    }

    private static String direction(double dy, double dz) {
        double size = Math.hypot(dy, dz);
        String side = dy > 0 ? "to port" : "to starboard";
        if (size == 0) {
            return "at its axis";
        }
        if (Math.abs(dy) < STRAIGHT * size) {
            return dz < 0 ? "underneath" : "on top";
        }
        if (Math.abs(dz) < STRAIGHT * size) {
            return side;
        }
        return (dz < 0 ? "low " : "high ") + side;
    }
}
