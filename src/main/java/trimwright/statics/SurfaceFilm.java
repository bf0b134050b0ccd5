package trimwright.statics;

import java.util.Optional;
import trimwright.boat.Water;
import trimwright.immersion.WaterPlane;

/**
 * How much the surface film can hold her up on the way down: surface tension times the length of her wetted outline, which is the most
 * that a film standing upright at every point could carry. What counts is the cut of the hull's outer surface and of bodies that
 * stand outside of it; a hull given as plastic with an inner and an outer surface counts with both.
 *
 * @param tensionMNPerM surface tension of the water
 * @param temperatureC temperature it was taken at
 * @param temperatureStated whether that is the water's own; otherwise 20 °C is assumed
 * @param salty whether the water is salt; the value for pure water is used, which sea water exceeds by one or two per cent
 * @param greatestOutlineMm the longest outline on the way
 * @param atFill fill of the tanks there, 0…1
 * @param greatestG what the film can hold there, as the push in grams that she may need
 */
public record SurfaceFilm(
        double tensionMNPerM,
        double temperatureC,
        boolean temperatureStated,
        boolean salty,
        double greatestOutlineMm,
        double atFill,
        double greatestG) {

    /** Standard gravity, m/s². */
    static final double GRAVITY = 9.80665;

    private static final double ASSUMED_TEMPERATURE_C = 20;
    /** Density from which water without a stated salinity counts as salt, g/cm³. */
    private static final double SALTY_FROM = 1.005;

    /** During a dive. */
    public static SurfaceFilm of(Condition condition, Course course) {
        Water water = condition.boat().water();
        double temperature = water.temperatureC().orElse(ASSUMED_TEMPERATURE_C);
        double tension = SurfaceTension.mNPerM(temperature);
        Exposed exposed = Exposed.of(condition);
        double longest = 0;
        double atFill = 0;
        for (DiveStep step : course.steps()) {
            Optional<WaterPlane> plane = step.settled().map(Equilibrium::plane);
            double outline = plane.map(exposed::outlineMm).orElse(0.0);
            if (outline > longest) {
                longest = outline;
                atFill = step.fill();
            }
        }
        return new SurfaceFilm(
                tension,
                temperature,
                water.temperatureC().isPresent(),
                water.salinityGPerKg().map(s -> s > 0).orElse(water.densityGPerCm3() > SALTY_FROM),
                longest,
                atFill,
                gramsHeld(tension, longest));
    }

    /** mN/m × mm = µN; over standard gravity g. */
    static double gramsHeld(double tensionMNPerM, double outlineMm) {
        return tensionMNPerM * outlineMm / 1000 / GRAVITY;
    }
}
