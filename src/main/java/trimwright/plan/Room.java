package trimwright.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Piece;
import trimwright.boat.Zone;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;

/**
 * The room that a zone really has: inside the hulls' inner surface and outside every part, column by column on a fine grid.
 *
 * @param zone the zone
 * @param twin whether this is its mirror image
 * @param inside id of the watertight part in which it lies, where lead displaces nothing and foam is of no use; empty for flooded room
 * @param cells free boxes, from which pieces may be cut
 * @param belowLineMm3 free volume below the painted line
 * @param aboveLineMm3 free volume above it
 * @param centroidMm centroid of the free volume; the middle of the zone when there is none
 * @param errorMm3 by how much the free volume may be off at most, from how much neighbouring columns differ
 * @param slices free volume of each slice along the boat, from the stern
 * @param insideKnown false where no closed hull is around it, so that the zone was taken as given
 * @param takenBy ids of the parts that take up some of it
 */
public record Room(
        Zone zone,
        boolean twin,
        Optional<String> inside,
        List<RoomCell> cells,
        double belowLineMm3,
        double aboveLineMm3,
        Vector3D centroidMm,
        double errorMm3,
        List<Slice> slices,
        boolean insideKnown,
        List<String> takenBy) {

    /**
     * Free volume between two places along the boat, mm and mm³.
     *
     * @param portBelowMm3 to port, below the painted line
     * @param portAboveMm3 to port, above it
     * @param starboardBelowMm3 to starboard, below it
     * @param starboardAboveMm3 to starboard, above it
     */
    public record Slice(
            double fromXMm,
            double toXMm,
            double portBelowMm3,
            double portAboveMm3,
            double starboardBelowMm3,
            double starboardAboveMm3) {

        public double freeMm3() {
            return portBelowMm3 + portAboveMm3 + starboardBelowMm3 + starboardAboveMm3;
        }
    }

    /** Free volume, mm³. */
    public double freeMm3() {
        return belowLineMm3 + aboveLineMm3;
    }

    /** Volume of all cells, mm³: what can be cut as boxes. */
    public double cellsMm3() {
        return cells.stream().mapToDouble(RoomCell::volumeMm3).sum();
    }

    /**
     * Measures every zone of a boat, twins after their zone. Where zones overlap, the room belongs to the one that stands first.
     *
     * @param pieces the pieces of the boat
     * @param line the painted line's plane
     */
    public static List<Room> of(List<Zone> zones, List<Piece> pieces, WaterPlane line) {
        return new RoomColumns(zones, pieces).rooms(line);
    }

    /** Height of the plane above a point of the boat's base. */
    static double heightAt(WaterPlane plane, double x, double y) {
        Vector3D n = plane.up();
        return (plane.heightMm() - n.getX() * x - n.getY() * y) / n.getZ();
    }

    /** Least and greatest height of the plane over a box. */
    static double[] heightsOver(WaterPlane plane, Bounds b) {
        double[] corners = {
            heightAt(plane, b.minX(), b.minY()),
            heightAt(plane, b.minX(), b.maxY()),
            heightAt(plane, b.maxX(), b.minY()),
            heightAt(plane, b.maxX(), b.maxY())
        };
        Arrays.sort(corners);
        return new double[] {corners[0], corners[3]};
    }
}
