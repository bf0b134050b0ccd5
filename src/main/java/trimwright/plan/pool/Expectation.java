package trimwright.plan.pool;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.pool.Sighting;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.RightingCurve;
import trimwright.statics.RollPeriod;

/**
 * What a boat would show where something was read. Everything is told in the unit of the reading, except for a roll, of which 1/T² is compared:
 * it is smooth where she loses her stability.
 */
final class Expectation {

    private static final double LEVER_STEP_DEG = 0.5;

    private Expectation() {}

    /** What was read, in the terms that are compared. */
    static double seen(Sighting sighting) {
        return switch (sighting.quantity()) {
            case ROLL -> 1 / (sighting.value() * sighting.value());
            default -> sighting.value();
        };
    }

    /** The standard deviation of that. */
    static double error(Sighting sighting) {
        return switch (sighting.quantity()) {
            case ROLL -> 2 * sighting.error() / Math.pow(sighting.value(), 3);
            default -> sighting.error();
        };
    }

    /** Back in the unit of the reading; empty where there is no such value. */
    static Optional<Double> inItsUnit(Sighting sighting, double compared) {
        return switch (sighting.quantity()) {
            case ROLL -> compared > 0 ? Optional.of(1 / Math.sqrt(compared)) : Optional.empty();
            // She would stand upright.
            case RESTS_AT -> compared > 0 ? Optional.of(compared) : Optional.empty();
            default -> Optional.of(compared);
        };
    }

    /**
     * What she would show.
     *
     * @param rest where she rests; empty when she sinks
     * @return empty when she sinks, or has no such value
     */
    static Optional<Double> of(Condition condition, Optional<Equilibrium> rest, Sighting sighting) {
        return switch (sighting.quantity()) {
            case WATER_ABOVE -> rest.map(e -> above(e.plane(), sighting.atMm().orElseThrow()));
            case FREEBOARD -> rest.map(e -> freeboard(e.plane(), sighting.atMm().orElseThrow()));
            case LIST -> rest.map(Equilibrium::heelDeg);
            case TRIM -> rest.map(Equilibrium::trimDeg);
            case HANGING -> Optional.of(-condition.reserveG());
            case RESTS_AT -> restsAt(condition, sighting.value());
            case ROLL -> rest.map(e -> RollPeriod.perSecondSquared(condition, e));
        };
    }

    private static double above(WaterPlane water, Vector3D point) {
        return -freeboard(water, point) / water.up().getZ();
    }

    private static double freeboard(WaterPlane water, Vector3D point) {
        return water.up().dotProduct(point) - water.heightMm();
    }

    /**
     * The list near the one that was seen at which the lever is zero, both sides taken together, by one step of Newton's method; so it stays smooth
     * where a boat begins to stand upright and rests at no such angle any more.
     */
    private static Optional<Double> restsAt(Condition condition, double seenDeg) {
        Optional<Double> here = lever(condition, seenDeg);
        Optional<Double> further = lever(condition, seenDeg + LEVER_STEP_DEG);
        if (here.isEmpty() || further.isEmpty() || further.get().equals(here.get())) {
            return Optional.empty();
        }
        return Optional.of(seenDeg - here.get() * LEVER_STEP_DEG / (further.get() - here.get()));
    }

    private static Optional<Double> lever(Condition condition, double deg) {
        Optional<Double> starboard = RightingCurve.leverMm(condition, deg);
        Optional<Double> port = RightingCurve.leverMm(condition, -deg);
        return starboard.isPresent() && port.isPresent()
                ? Optional.of(0.5 * (starboard.get() - port.get()))
                : Optional.empty();
    }
}
