package trimwright.statics;

/** Surface tension of ordinary water against its vapour: IAPWS R1-76(2014). */
final class SurfaceTension {

    private static final double CRITICAL_K = 647.096;
    private static final double ZERO_C_IN_K = 273.15;

    private SurfaceTension() {}

    /**
     * @param temperatureC 0.01…373.946 °C; the release allows it for supercooled water down to −25 °C too
     * @return mN/m
     */
    static double mNPerM(double temperatureC) {
        double tau = 1 - (temperatureC + ZERO_C_IN_K) / CRITICAL_K;
        return 235.8 * Math.pow(tau, 1.256) * (1 - 0.625 * tau);
    }
}
