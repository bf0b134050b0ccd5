package trimwright.desktop.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Water;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;

/** The changes a builder makes to a reading, each as a new one. */
public final class ReadingEdits {

    private static final double USUAL_TEMPERATURE_C = 20;

    private ReadingEdits() {}

    public static Reading named(Reading r, String id) {
        return new Reading(id, r.fills(), r.water(), r.added(), r.moved(), r.seen());
    }

    /** With a tank so full, 0…1; empty for as full as in the boat's file. */
    public static Reading filled(Reading r, String tank, Optional<Double> fill) {
        Map<String, Double> fills = new TreeMap<>(r.fills());
        fill.ifPresentOrElse(f -> fills.put(tank, f), () -> fills.remove(tank));
        return new Reading(r.id(), fills, r.water(), r.added(), r.moved(), r.seen());
    }

    /** In other water; empty for that of the boat's file. */
    public static Reading in(Reading r, Optional<Water> water) {
        return new Reading(r.id(), r.fills(), water, r.added(), r.moved(), r.seen());
    }

    /** Water of a temperature or salinity that was typed; the other as it was. Without both it is that of the boat's file. */
    public static Optional<Water> water(Optional<Double> temperatureC, Optional<Double> salinityGPerKg) {
        return temperatureC.isEmpty() && salinityGPerKg.isEmpty()
                ? Optional.empty()
                : Optional.of(Water.of(temperatureC.orElse(USUAL_TEMPERATURE_C), salinityGPerKg.orElse(0.0)));
    }

    /** With a weight laid on her in the place of another; at the end where there is none at the index; without it where empty. */
    public static Reading adding(Reading r, int index, Optional<KnownWeight> weight) {
        return new Reading(r.id(), r.fills(), r.water(), at(r.added(), index, weight), r.moved(), r.seen());
    }

    /** The same of a weight moved. */
    public static Reading moving(Reading r, int index, Optional<WeightMoved> weight) {
        return new Reading(r.id(), r.fills(), r.water(), r.added(), at(r.moved(), index, weight), r.seen());
    }

    /** The same of what was seen. */
    public static Reading seeing(Reading r, int index, Optional<Sighting> sighting) {
        return r.withSeen(at(r.seen(), index, sighting));
    }

    private static <T> List<T> at(List<T> all, int index, Optional<T> other) {
        List<T> changed = new ArrayList<>(all);
        if (index < all.size()) {
            changed.remove(index);
        }
        other.ifPresent(o -> changed.add(Math.min(index, changed.size()), o));
        return changed;
    }

    /** An id that is not taken: the one wished for, or that with a number. */
    public static String freeId(PoolTest test, String wished) {
        Predicate<String> taken = id -> test.readings().stream().anyMatch(r -> r.id().equals(id));
        String id = wished;
        for (int n = 2; taken.test(id); n++) {
            id = wished + " " + n;
        }
        return id;
    }

    /** The vector with one coordinate replaced: 0 for x, 1 for y, 2 for z. */
    public static Vector3D with(Vector3D v, int axis, double value) {
        double[] xyz = v.toArray();
        xyz[axis] = value;
        return new Vector3D(xyz);
    }
}
