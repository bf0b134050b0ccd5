package trimwright.desktop.model;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.WeightMoved;

/** Readings as they are usually taken: the state of the boat, and what there is to see; the numbers are left to the builder. */
public enum Preset {
    LINE("Line and list, tanks empty", "surfaced", 0, Quantity.WATER_ABOVE, Quantity.WATER_ABOVE, Quantity.LIST),
    ACROSS("A weight moved across", "weight across", 0, Quantity.LIST),
    ROLL("A roll timed", "rolling", 0, Quantity.ROLL),
    RESTS("Rests on either side", "rests on either side", 0, Quantity.RESTS_AT),
    DIVED("Line, tanks full", "dived", 1, Quantity.WATER_ABOVE, Quantity.WATER_ABOVE),
    HANGING("Hanging from a scale under water", "hanging", 1, Quantity.HANGING),
    OTHER("Anything else", "reading", Double.NaN);

    private final String title;
    private final String id;
    private final double fill;
    private final List<Quantity> seen;

    Preset(String title, String id, double fill, Quantity... seen) {
        this.title = title;
        this.id = id;
        this.fill = fill;
        this.seen = List.of(seen);
    }

    public String title() {
        return title;
    }

    /** What there is to see, in the order in which it is entered; of two heights the first is at the bow. */
    public List<Quantity> seen() {
        return seen;
    }

    /** Whether it can be taken of a boat: a dive takes a tank. */
    public boolean isFor(Boat boat) {
        return !(fill > 0) || boat.parts().stream().anyMatch(Part::isTank);
    }

    /** The reading without anything seen yet; weights are of no grams until they are entered. */
    public Reading reading(Boat boat, PoolTest test) {
        Map<String, Double> fills = new HashMap<>();
        if (!Double.isNaN(fill)) {
            boat.parts().stream().filter(Part::isTank).forEach(t -> fills.put(t.id(), fill));
        }
        return new Reading(
                ReadingEdits.freeId(test, id),
                fills,
                Optional.empty(),
                this == HANGING ? List.of(new KnownWeight(0, Vector3D.ZERO, Optional.empty())) : List.of(),
                this == ACROSS ? List.of(new WeightMoved(0, Vector3D.ZERO)) : List.of(),
                List.of());
    }
}
