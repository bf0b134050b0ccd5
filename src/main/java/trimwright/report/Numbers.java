package trimwright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them: a point for the decimals whatever the locale, no minus before a zero, halves rounded up. */
public final class Numbers {

    private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);
    /** Numbers from here up, and below the inverse, are written with a power of ten. */
    private static final double GREAT = 1e9;

    /** Beyond these decimals stands only what rounding leaves of zero. */
    private static final int MOST_DECIMALS = 9;

    private Numbers() {}

    /**
     * Rounded to a fixed number of decimals.
     *
     * @param value a finite number
     * @throws NumberFormatException when it is not finite
     */
    public static String fixed(double value, int decimals) {
        return rounded(value, decimals).toPlainString();
    }

    /** Whether the value rounds to zero at that number of decimals. */
    public static boolean roundsToZero(double value, int decimals) {
        return rounded(value, decimals).signum() == 0;
    }

    /** Without trailing zeros, to at most six digits that count; whole numbers below a thousand million in full. */
    public static String plain(double value) {
        if (value == Math.rint(value) && Math.abs(value) < GREAT) {
            return fixed(value, 0);
        }
        BigDecimal shortened = BigDecimal.valueOf(value).round(SIX_DIGITS).stripTrailingZeros();
        double size = Math.abs(value);
        return size < GREAT && size > 1 / GREAT ? shortened.toPlainString() : shortened.toString();
    }

    /** To a tenth, or to three digits that count where a tenth says too little, at most nine decimals; without trailing zeros. */
    public static String brief(double value) {
        int leading = value == 0 ? 0 : (int) Math.floor(Math.log10(Math.abs(value)));
        return plain(rounded(value, Math.min(MOST_DECIMALS, Math.max(1, 2 - leading)))
                .doubleValue());
    }

    /** A length to a tenth of a millimetre. */
    public static String mm(double valueMm) {
        return fixed(valueMm, 1) + " mm";
    }

    /** A mass: whole grams from a kilogram up, tenths below. */
    public static String g(double valueG) {
        return fixed(valueG, Math.abs(valueG) < 1000 ? 1 : 0) + " g";
    }

    /** An angle to a tenth of a degree. */
    public static String degrees(double valueDeg) {
        return fixed(valueDeg, 1) + "°";
    }

    /** A point in mm, as in "x 588.2, y 0.0, z 38.2 mm". */
    public static String point(double xMm, double yMm, double zMm) {
        return "x " + fixed(xMm, 1) + ", y " + fixed(yMm, 1) + ", z " + fixed(zMm, 1) + " mm";
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
