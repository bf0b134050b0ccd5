package trimwright.mesh;

import java.util.regex.Pattern;

/** What a word of a mesh file is that is not a plain number. */
final class NumberWords {

    /** The ways in which programs write a number that is none: nan, -nan(ind), inf, infinity, 1.#QNAN, -1.#INF00, … */
    private static final Pattern NOT_FINITE =
            Pattern.compile("[+-]?(nan(\\(\\w*\\))?|inf(inity)?|1\\.#\\w+)", Pattern.CASE_INSENSITIVE);

    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d*,\\d+([eE][+-]?\\d+)?");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");

    private NumberWords() {}

    static boolean isNotFinite(String word) {
        return NOT_FINITE.matcher(word).matches();
    }

    static boolean hasDecimalComma(String word) {
        return DECIMAL_COMMA.matcher(word).matches();
    }

    /** Whether it is a decimal number as the text formats write it; Java itself would also take {@code 1d} and {@code 0x1p3}. */
    static boolean isDecimal(String word) {
        return DECIMAL.matcher(word).matches();
    }
}
