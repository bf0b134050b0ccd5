package trimwright.statics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * The water in one tank. It lies level whatever the boat does; its centroid and the second moments of its surface move with the
 * attitude.
 */
final class TankWater {

    private final String id;
    private final Displacer room;
    private final double fill;
    private final double roomMm3;
    private final boolean freeFlooding;

    /**
     * @param room the inside of the tank
     * @param fill 0…1 of its volume
     */
    TankWater(String id, Displacer room, double fill) {
        this(id, room, fill, false);
    }

    private TankWater(String id, Displacer room, double fill, boolean freeFlooding) {
        if (!(fill >= 0 && fill <= 1)) {
            throw new IllegalArgumentException("fill of " + id + " must be 0…1, found " + fill);
        }
        this.id = id;
        this.room = room;
        this.fill = fill;
        this.roomMm3 = room.volumeMm3();
        this.freeFlooding = freeFlooding;
    }

    /** Water in a room that stands open to the water outside, but for the moment cannot leave it. */
    static TankWater heldInHull(String id, Displacer room, double fill) {
        return new TankWater(id, room, fill, true);
    }

    TankWater at(double otherFill) {
        return new TankWater(id, room, otherFill, freeFlooding);
    }

    /** Water of a free-flooding room beyond what would stand in it at the level outside, mm³; 0 for every other tank. */
    double heldAboveMm3(WaterPlane outside) {
        if (!freeFlooding) {
            return 0;
        }
        return waterMm3()
                - Immersion.below(outside, room.centroidMm()).add(room).volumeMm3();
    }

    boolean isFreeFlooding() {
        return freeFlooding;
    }

    double fill() {
        return fill;
    }

    double roomMm3() {
        return roomMm3;
    }

    double waterMm3() {
        return fill * roomMm3;
    }

    /** Centroid of the whole tank. */
    Vector3D middleMm() {
        return room.centroidMm();
    }

    /**
     * The water lying level in the direction of the plane.
     *
     * @param guessMm a height of its surface to start from; NaN for none
     */
    Level level(WaterPlane direction, double guessMm) {
        if (fill == 0 || fill == 1) {
            return new Level(room.centroidMm(), 0, 0, 0, Double.NaN);
        }
        Immersion water = LevelSearch.plane(
                direction,
                plane -> Immersion.below(plane, room.centroidMm()).add(room),
                waterMm3(),
                room.bottomMm(direction.up()),
                room.topMm(direction.up()),
                guessMm);
        return new Level(
                water.centroidMm(),
                water.inertiaAheadMm4(),
                water.inertiaPortMm4(),
                water.inertiaMixedMm4(),
                water.plane().heightMm());
    }

    /**
     * Tank water lying level.
     *
     * @param centroidMm its centroid
     * @param inertiaAheadMm4 second moment of its surface about its own centroid, ahead
     * @param inertiaPortMm4 the same to port
     * @param inertiaMixedMm4 the mixed moment
     * @param heightMm height of its surface along up; NaN for a full or empty tank
     */
    record Level(
            Vector3D centroidMm,
            double inertiaAheadMm4,
            double inertiaPortMm4,
            double inertiaMixedMm4,
            double heightMm) {}
}
