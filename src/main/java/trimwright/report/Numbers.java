package trimwright.report;

import java.util.Locale;

/** Numbers as people read them: a point for the decimals whatever the locale, no minus before a zero. */
public final class Numbers {

    private Numbers() {}

    /**
     * Rounded to a fixed number of decimals.
     *
     * @param value a finite number
     */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("no finite number to write: " + value);
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.startsWith("-") && isZero(text) ? text.substring(1) : text;
    }

    /** Whether the value rounds to zero at that number of decimals. */
    public static boolean roundsToZero(double value, int decimals) {
        return isZero(fixed(value, decimals));
    }

    /** Without trailing zeros, to at most six digits that count; whole numbers below a thousand million in full. */
    public static String plain(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e9) {
            return fixed(value, 0);
        }
        String text = String.format(Locale.ROOT, "%.6g", value);
        int exponent = text.indexOf('e');
        return exponent < 0 ? trimmed(text) : trimmed(text.substring(0, exponent)) + text.substring(exponent);
    }

    private static String trimmed(String text) {
        return text.indexOf('.') < 0 ? text : text.replaceAll("\\.?0+$", "");
    }

    /** To a tenth, or to three digits that count where a tenth says too little. */
    public static String brief(double value) {
        if (value == 0 || Math.abs(value) >= 9.95) {
            return fixed(value, 1);
        }
        int leading = (int) Math.floor(Math.log10(Math.abs(value)));
        return leading < -6 ? plain(value) : trimmed(fixed(value, 2 - leading));
    }

    /** A length to a tenth of a millimetre. */
    public static String mm(double valueMm) {
        return fixed(valueMm, 1) + " mm";
    }

    /** A mass: whole grams from a kilogram up, tenths below. */
    public static String g(double valueG) {
        return fixed(valueG, gramDecimals(valueG)) + " g";
    }

    /** An angle to a tenth of a degree. */
    public static String degrees(double valueDeg) {
        return fixed(valueDeg, 1) + "°";
    }

    private static int gramDecimals(double valueG) {
        return Math.abs(valueG) < 1000 ? 1 : 0;
    }

    private static boolean isZero(String text) {
        return text.chars().allMatch(c -> c == '-' || c == '0' || c == '.');
    }
}
