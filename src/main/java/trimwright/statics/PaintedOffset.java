package trimwright.statics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.PaintedLine;
import trimwright.immersion.WaterPlane;

/**
 * How the water lies against the painted line.
 *
 * @param bowMm how far the water stands above the foremost painted point, measured along the boat's z axis; negative below
 * @param sternMm the same at the aftmost painted point
 * @param listDeg list against the painted line's own; positive to starboard
 */
public record PaintedOffset(double bowMm, double sternMm, double listDeg) {

    /** The water plane must not stand upright in the boat's frame: its up direction needs a part along z. */
    public static PaintedOffset of(PaintedLine line, WaterPlane water) {
        return between(line.plane(), line.foremostMm(), line.aftmostMm(), water);
    }

    /**
     * How the water lies against any wanted plane.
     *
     * @param wanted the plane she is meant to float on
     * @param foreMm a point of that plane at the bow
     * @param aftMm a point of that plane at the stern
     */
    public static PaintedOffset between(WaterPlane wanted, Vector3D foreMm, Vector3D aftMm, WaterPlane water) {
        return new PaintedOffset(
                aboveMm(water, foreMm),
                aboveMm(water, aftMm),
                // Of two lists far apart the way round that is shorter: -180 to 180.
                Math.IEEEremainder(Equilibrium.heelDeg(water.up()) - Equilibrium.heelDeg(wanted.up()), 360));
    }

    /** How far the water stands above the point, along the boat's z axis. */
    static double aboveMm(WaterPlane water, Vector3D point) {
        return (water.heightMm() - water.up().dotProduct(point)) / water.up().getZ();
    }
}
