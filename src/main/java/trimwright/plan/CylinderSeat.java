package trimwright.plan;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Part;

/**
 * Where a cylinder fits into the hull.
 *
 * @param part the cylinder
 * @param fits whether it fits where the boat file puts it
 * @param clearanceMm least distance between it and the inner hull surface there; negative by as much as it sticks out
 * @param touches the point of the inner surface that sets that distance
 * @param lowestAxisMm lowest height of its axis at which it fits, keeping the gap wanted; empty where it fits nowhere
 * @param highestAxisMm highest such height above the lowest, without a gap between
 * @param lowestTouches what it touches first when lowered further
 * @param largestDiameterMm greatest diameter at its present axis
 * @param largestAnywhereMm greatest diameter over all heights of the axis, and that height
 * @param longest the longest stretch for its diameter at its present axis; empty where it does not fit at all
 * @param longestAnywhere the longest cylinder of its diameter and with its ends over all heights of the axis; empty where it fits nowhere
 * @param profile room under and over the axis along the hull
 * @param rooms the room that its seats leave: where it is, lowest, highest
 */
public record CylinderSeat(
        Part part,
        boolean fits,
        double clearanceMm,
        Touch touches,
        Optional<Double> lowestAxisMm,
        Optional<Double> highestAxisMm,
        Optional<Touch> lowestTouches,
        double largestDiameterMm,
        Largest largestAnywhereMm,
        Optional<Stretch> longest,
        Optional<Longest> longestAnywhere,
        List<Station> profile,
        List<SeatRoom> rooms) {

    /** Greatest diameter and the height of the axis that allows it. */
    public record Largest(double diameterMm, double axisZMm) {}

    /**
     * Where it touches first.
     *
     * @param hullPart id of the part of the hull
     * @param pointMm point of the inner surface
     * @param axisZMm height of its axis then
     */
    public record Touch(String hullPart, Vector3D pointMm, double axisZMm) {}

    /** A stretch and the height of the axis that allows it. */
    public record Longest(Stretch stretch, double axisZMm) {}

    /** A stretch of the boat's length. */
    public record Stretch(double fromXMm, double toXMm) {

        public double lengthMm() {
            return toXMm - fromXMm;
        }
    }

    /** Inner surface under and over the cylinder's axis at one place along the hull, and the greatest diameter about that axis there. */
    public record Station(double xMm, double bottomZMm, double topZMm, double diameterMm) {}
}
