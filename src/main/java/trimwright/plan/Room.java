package trimwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BoxShape;
import trimwright.boat.Piece;
import trimwright.boat.Zone;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;

/**
 * The room that a zone really has: inside the hulls' inner surface and outside every part, column by column on a fine grid.
 *
 * @param zone the zone
 * @param twin whether this is its mirror image
 * @param cells free boxes, from which pieces may be cut
 * @param belowLineMm3 free volume below the painted line
 * @param aboveLineMm3 free volume above it
 * @param centroidMm centroid of the free volume; the middle of the zone when there is none
 * @param errorMm3 error of the free volume, from the difference between every other column and the rest
 * @param slices free volume of each slice along the boat, from the stern
 * @param insideKnown false where a hull is open, so that the zone was taken as given
 */
public record Room(
        Zone zone,
        boolean twin,
        List<RoomCell> cells,
        double belowLineMm3,
        double aboveLineMm3,
        Vector3D centroidMm,
        double errorMm3,
        List<Slice> slices,
        boolean insideKnown) {

    /** Free volume between two places along the boat, mm and mm³. */
    public record Slice(double fromXMm, double toXMm, double freeMm3) {}

    /** Free volume, mm³. */
    public double freeMm3() {
        return belowLineMm3 + aboveLineMm3;
    }

    /** Volume of all cells, mm³: what can be cut as boxes. */
    public double cellsMm3() {
        return cells.stream().mapToDouble(RoomCell::volumeMm3).sum();
    }

    /**
     * Measures every zone of a boat, twins after their zone.
     *
     * @param pieces the pieces of the boat
     * @param line the painted line's plane
     */
    public static List<Room> of(List<Zone> zones, List<Piece> pieces, WaterPlane line) {
        Inside inside = new Inside(pieces);
        List<Obstacle> obstacles = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.part().build().isEmpty() && piece.part().inside().isEmpty()) {
                obstacles.add(Obstacle.of(piece));
            }
        }
        List<Room> rooms = new ArrayList<>();
        for (Zone zone : zones) {
            rooms.add(new RoomSurvey(zone, false, zone.box().bounds(), inside, obstacles, line).survey());
            if (zone.mirror()) {
                BoxShape image = zone.box().mirrored();
                rooms.add(new RoomSurvey(zone, true, image.bounds(), inside, obstacles, line).survey());
            }
        }
        return rooms;
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
