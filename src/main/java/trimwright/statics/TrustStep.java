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

    static TrustStep of(double gx, double gy, double hxx, double hxy, double hyy, double radius) {
        double half = 0.5 * (hxx - hyy);
        double spread = Math.hypot(half, hxy);
        double mean = 0.5 * (hxx + hyy);
        double low = mean - spread;
        double high = mean + spread;
        // Principal directions: (c, s) of the higher curvature, (-s, c) of the lower.
        double angle = 0.5 * Math.atan2(hxy, half);
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        double gHigh = c * gx + s * gy;
        double gLow = -s * gx + c * gy;
        double pHigh;
        double pLow;
        if (low > 0 && Math.hypot(gHigh / high, gLow / low) <= radius) {
            pHigh = -gHigh / high;
            pLow = -gLow / low;
        } else {
            double shift = shift(gHigh, gLow, high, low, radius);
            // Rounding alone can make the root negative.
            pHigh = -gHigh / (high + shift);
            double room = Math.sqrt(Math.max(0, radius * radius - pHigh * pHigh));
            // On a ridge the slope names no side: both are equal and one is taken.
            pLow = gLow > 0 ? -room : room;
        }
        double fall = -(gHigh * pHigh + gLow * pLow + 0.5 * (high * pHigh * pHigh + low * pLow * pLow));
        return new TrustStep(c * pHigh - s * pLow, s * pHigh + c * pLow, fall, low);
    }

    /** The step when only x may change. */
    static TrustStep alongX(double gx, double hxx, double radius) {
        double x = hxx > 0 && Math.abs(gx) <= radius * hxx ? -gx / hxx : -Math.copySign(radius, gx);
        return new TrustStep(x, 0, -(gx * x + 0.5 * hxx * x * x), hxx);
    }

    /** The step along the direction of the higher principal curvature alone: down into a valley, not along it. */
    static TrustStep across(double gx, double gy, double hxx, double hxy, double hyy, double radius) {
        double half = 0.5 * (hxx - hyy);
        double angle = 0.5 * Math.atan2(hxy, half);
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        TrustStep step = alongX(c * gx + s * gy, 0.5 * (hxx + hyy) + Math.hypot(half, hxy), radius);
        return new TrustStep(c * step.x, s * step.x, step.fall, step.leastCurvature);
    }

    /** The shift λ ≥ max(0, −low) for which the step has the length of the radius; just that bound where none is as long. */
    private static double shift(double gHigh, double gLow, double high, double low, double radius) {
        double least = Math.max(0, -low);
        double most = least + Math.hypot(gHigh, gLow) / radius;
        for (int i = 0; i < 100 && most - least > 1e-15 * most; i++) {
            double middle = 0.5 * (least + most);
            double length = Math.hypot(gHigh / (high + middle), gLow / (low + middle));
            if (length > radius) {
                least = middle;
            } else {
                most = middle;
            }
        }
        return most;
    }
}
