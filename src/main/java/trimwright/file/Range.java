package trimwright.file;

/**
 * The numbers that a key takes.
 *
 * @param low lower limit
 * @param withLow whether the lower limit itself is allowed
 * @param high upper limit, itself allowed
 */
record Range(double low, boolean withLow, double high) {

    /** Furthest from the origin that a boat may reach, mm: a kilometre. */
    static final double FAR_MM = 1e6;

    static final Range COORDINATE_MM = from(-FAR_MM, FAR_MM);
    static final Range LENGTH_MM = above(0, FAR_MM);
    static final Range MASS_G = from(0, 1e9);
    static final Range DENSITY_G_PER_CM3 = above(0, 1e6);

    static Range from(double low, double high) {
        return new Range(low, true, high);
    }

    static Range above(double low, double high) {
        return new Range(low, false, high);
    }

    /** Whether a number is allowed; not-a-number never is. */
    boolean holds(double value) {
        return (withLow ? value >= low : value > low) && value <= high;
    }

    /** The name under which a finding tells the lower limit. */
    String lowName() {
        return withLow ? "least" : "above";
    }
}
