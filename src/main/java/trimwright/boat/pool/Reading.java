package trimwright.boat.pool;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import trimwright.boat.Water;

/**
 * What was seen of the boat in one state.
 *
 * @param id how the builder calls it; unique in the test
 * @param fills fill 0…1 of tanks, by id; a tank that is not named has the fill of the boat file
 * @param water the water, where it is not that of the boat file
 * @param added known weights laid on her
 * @param moved known weights moved about on her
 * @param seen what was read, at least one thing, except while it is being entered
 */
public record Reading(
        String id,
        Map<String, Double> fills,
        Optional<Water> water,
        List<KnownWeight> added,
        List<WeightMoved> moved,
        List<Sighting> seen) {

    public Reading {
        fills = Map.copyOf(fills);
        added = List.copyOf(added);
        moved = List.copyOf(moved);
        seen = List.copyOf(seen);
    }

    /** The same state with something else seen. */
    public Reading withSeen(List<Sighting> other) {
        return new Reading(id, fills, water, added, moved, other);
    }
}
