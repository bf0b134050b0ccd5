package trimwright.plan;

import java.util.Optional;
import trimwright.boat.BoxShape;
import trimwright.boat.Zone;

/**
 * A box of room that is really free: inside the hull's inner surface, outside every part, on one side of the painted line.
 *
 * @param zone the zone it belongs to, as the boat file names it
 * @param use what may go there
 * @param twin whether it lies in the zone's mirror image at -y, or to starboard in a zone whose boxes are told by sides
 * @param inside id of the watertight part in which it lies; empty for flooded room
 * @param slice number along the boat from the stern, from 0
 * @param layer number upward, from 0
 * @param box the free box, with {@code fromMm} its lowest corner
 * @param belowLine whether it lies wholly below the painted line
 */
public record RoomCell(
        String zone,
        Zone.Use use,
        boolean twin,
        Optional<String> inside,
        int slice,
        int layer,
        BoxShape box,
        boolean belowLine) {

    /** Volume of the box, mm³. */
    public double volumeMm3() {
        var size = box.toMm().subtract(box.fromMm());
        return size.getX() * size.getY() * size.getZ();
    }
}
