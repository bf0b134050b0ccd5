package trimwright.statics;

/**
 * Slope and curvature of an energy in two unknowns, taken apart into the principal directions of the curvature: (c, s) of the higher one,
 * (-s, c) of the lower.
 */
final class Principal {

    final double c;
    final double s;
    final double high;
    final double low;
    final double slopeHigh;
    final double slopeLow;

    private Principal(double gx, double gy, double hxx, double hxy, double hyy) {
        double half = 0.5 * (hxx - hyy);
        double spread = Math.hypot(half, hxy);
        double mean = 0.5 * (hxx + hyy);
        double angle = 0.5 * Math.atan2(hxy, half);
        c = Math.cos(angle);
        s = Math.sin(angle);
        high = mean + spread;
        low = mean - spread;
        slopeHigh = c * gx + s * gy;
        slopeLow = -s * gx + c * gy;
    }

    /** The model g · x + ½ x · H x. */
    static Principal of(double gx, double gy, double hxx, double hxy, double hyy) {
        return new Principal(gx, gy, hxx, hxy, hyy);
    }

    /** Whether the model has a minimum nearer than this. */
    boolean restsWithin(double radius) {
        return low > 0 && Math.hypot(slopeHigh / high, slopeLow / low) < radius;
    }

    /** The first unknown of a step given along the principal directions. */
    double x(double alongHigh, double alongLow) {
        return c * alongHigh - s * alongLow;
    }

    /** The second. */
    double y(double alongHigh, double alongLow) {
        return s * alongHigh + c * alongLow;
    }
}
