package trimwright.boat;

import java.util.Optional;

/**
 * The water she floats in.
 *
 * @param densityGPerCm3 density at the surface
 * @param temperatureC temperature, where it is known
 * @param salinityGPerKg salinity, where it is known
 */
public record Water(double densityGPerCm3, Optional<Double> temperatureC, Optional<Double> salinityGPerKg) {

    /** Fresh water at 20 °C. */
    public static final Water FRESH = of(20, 0);

    /** Range of the equation of state: temperature, °C. */
    public static final double LEAST_TEMPERATURE_C = -2;

    public static final double GREATEST_TEMPERATURE_C = 40;

    /** Range of the equation of state: practical salinity. */
    public static final double GREATEST_SALINITY_G_PER_KG = 42;

    /**
     * Water of a temperature and salinity, by the one-atmosphere international equation of state of sea water (Millero and
     * Poisson 1981; UNESCO technical papers in marine science 36 and 44).
     *
     * @param temperatureC -2…40 °C
     * @param salinityGPerKg practical salinity, 0…42
     * @throws IllegalArgumentException out of that range
     */
    public static Water of(double temperatureC, double salinityGPerKg) {
        return new Water(
                StateEquation.densityKgPerM3(temperatureC, salinityGPerKg) / 1000,
                Optional.of(temperatureC),
                Optional.of(salinityGPerKg));
    }

    /** Water of a density that was measured or chosen. */
    public static Water ofDensity(double densityGPerCm3) {
        return new Water(densityGPerCm3, Optional.empty(), Optional.empty());
    }

    /** Density in g/mm³, in which the computation runs. */
    public double densityGPerMm3() {
        return densityGPerCm3 / 1000;
    }
}
