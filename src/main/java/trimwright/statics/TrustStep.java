package trimwright.statics;

/**
 * The step of a trust-region Newton method in two unknowns: the least of g · x + ½ x · H x within |x| ≤ radius, found exactly from the two
 * principal directions of H, whether or not H is definite.
 */
final class TrustStep {

    /** The step. */
    final double x;

    final double y;
    /** Fall of the model along the step; not negative. */
    final double fall;
    /** Smaller principal curvature of H. */
    final double leastCurvature;

    private TrustStep(double x, double y, double fall, double leastCurvature) {
        this.x = x;
        this.y = y;
        this.fall = fall;
        this.leastCurvature = leastCurvature;
    }

    static TrustStep of(Principal p, double radius) {
        double alongHigh;
        double alongLow;
        if (p.low > 0 && Math.hypot(p.slopeHigh / p.high, p.slopeLow / p.low) <= radius) {
            alongHigh = -p.slopeHigh / p.high;
            alongLow = -p.slopeLow / p.low;
        } else {
            alongHigh = -p.slopeHigh / (p.high + shift(p, radius));
            // Rounding alone can make the root negative.
            double room = Math.sqrt(Math.max(0, radius * radius - alongHigh * alongHigh));
            // On a ridge the slope names no side: both are equal and one is taken.
            alongLow = p.slopeLow > 0 ? -room : room;
        }
        double fall = -(p.slopeHigh * alongHigh
                + p.slopeLow * alongLow
                + 0.5 * (p.high * alongHigh * alongHigh + p.low * alongLow * alongLow));
        return new TrustStep(p.x(alongHigh, alongLow), p.y(alongHigh, alongLow), fall, p.low);
    }

    /** The step when only x may change. */
    static TrustStep alongX(double gx, double hxx, double radius) {
        double x = hxx > 0 && Math.abs(gx) <= radius * hxx ? -gx / hxx : -Math.copySign(radius, gx);
        return new TrustStep(x, 0, -(gx * x + 0.5 * hxx * x * x), hxx);
    }

    /** The step along the direction of the higher principal curvature alone: down into a valley, not along it. */
    static TrustStep across(Principal p, double radius) {
        TrustStep step = alongX(p.slopeHigh, p.high, radius);
        return new TrustStep(p.x(step.x, 0), p.y(step.x, 0), step.fall, step.leastCurvature);
    }

    /** The shift λ ≥ max(0, −low) for which the step has the length of the radius; just that bound where none is as long. */
    private static double shift(Principal p, double radius) {
        double least = Math.max(0, -p.low);
        double most = least + Math.hypot(p.slopeHigh, p.slopeLow) / radius;
        for (int i = 0; i < 100 && most - least > 1e-15 * most; i++) {
            double middle = 0.5 * (least + most);
            double length = Math.hypot(p.slopeHigh / (p.high + middle), p.slopeLow / (p.low + middle));
            if (length > radius) {
                least = middle;
            } else {
                most = middle;
            }
        }
        return most;
    }
}
