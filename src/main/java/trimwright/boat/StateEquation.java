package trimwright.boat;

/**
 * Density of sea water at one atmosphere: the international equation of state EOS-80 (Millero and Poisson 1981; UNESCO
 * technical papers in marine science 36 and 44). Pure water after Bigg (1967), adjusted as in those papers.
 */
final class StateEquation {

    private StateEquation() {}

    /**
     * @param t temperature, °C, -2…40
     * @param s practical salinity, 0…42
     * @return density, kg/m³
     */
    static double densityKgPerM3(double t, double s) {
        if (!(t >= Water.LEAST_TEMPERATURE_C && t <= Water.GREATEST_TEMPERATURE_C)) {
            throw new IllegalArgumentException("temperature out of the equation's range: " + t + " °C");
        }
        if (!(s >= 0 && s <= Water.GREATEST_SALINITY_G_PER_KG)) {
            throw new IllegalArgumentException("salinity out of the equation's range: " + s + " g/kg");
        }
        double pure = 999.842594
                + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
        double linear = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        double threeHalves = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
        return pure + s * (linear + threeHalves * Math.sqrt(s) + 4.8314e-4 * s);
    }
}
