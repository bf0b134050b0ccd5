package trimwright.report.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Round numbers for rulers and axes: 1, 2 or 5 times a power of ten. */
final class Steps {

    private Steps() {}

    /** The least round number that is at least {@code least}, which is positive. */
    static double atLeast(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double digit : new double[] {1, 2, 5}) {
            if (digit * power >= least) {
                return digit * power;
            }
        }
        return 10 * power;
    }

    /** The least step of an angle that is at least {@code least}: from 10° up one that divides a right angle. */
    static double degreesAtLeast(double least) {
        for (double degrees : new double[] {10, 15, 30, 45, 90}) {
            if (least > 5 && degrees >= least) {
                return degrees;
            }
        }
        return atLeast(least);
    }

    /** The greatest round number that is at most {@code most}, which is positive. */
    static double atMost(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        for (double digit : new double[] {5, 2}) {
            if (digit * power <= most) {
                return digit * power;
            }
        }
        return power;
    }

    /** A multiple of a round step as text, without digits that say nothing and with a proper minus sign. */
    static String text(double multiple, double step) {
        int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
        BigDecimal rounded = BigDecimal.valueOf(multiple).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.toPlainString().replace('-', '−');
    }
}
