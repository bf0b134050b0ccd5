package trimwright.report;

import trimwright.boat.Water;

/** Water in words. */
public final class WaterWords {

    private WaterWords() {}

    /** As in "Fresh water at 20 °C, 0.9982 g/cm³". */
    public static String of(Water water) {
        String density = Numbers.fixed(water.densityGPerCm3(), 4) + " g/cm³";
        if (water.temperatureC().isEmpty() || water.salinityGPerKg().isEmpty()) {
            return "Water of " + density;
        }
        double salinity = water.salinityGPerKg().get();
        String kind = salinity == 0 ? "Fresh water" : "Water of " + Numbers.plain(salinity) + " g/kg salt";
        return kind + " at " + Numbers.plain(water.temperatureC().get()) + " °C, " + density;
    }

    /** For a row of a table, as in "salt 35 g/kg, 8 °C"; a water of which only the density is known by that. */
    public static String brief(Water water) {
        if (water.salinityGPerKg().isEmpty()) {
            return Numbers.fixed(water.densityGPerCm3(), 4) + " g/cm³";
        }
        double salinity = water.salinityGPerKg().get();
        return (salinity == 0 ? "fresh" : "salt " + Numbers.plain(salinity) + " g/kg")
                + water.temperatureC().map(t -> ", " + Numbers.plain(t) + " °C").orElse("");
    }
}
