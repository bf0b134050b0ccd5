package trimwright.validation;

import java.util.Locale;

/**
 * A value from outside the project beside ours.
 *
 * @param what what is compared, with its unit
 * @param source where the value is from; "closed form" where anyone can work it out
 * @param published the value
 * @param ours what the program says
 * @param tolerance greatest difference that the source's digits or the mesh explain
 * @param body the mesh or shape it was worked out on
 */
public record Check(String what, String source, double published, double ours, double tolerance, String body) {

    public boolean holds() {
        return Math.abs(difference()) <= tolerance;
    }

    public double difference() {
        return ours - published;
    }

    /** The tolerance as a share of a value. */
    public static Check within(double share, String what, String source, double published, double ours, String body) {
        return new Check(what, source, published, ours, Math.abs(published) * share, body);
    }

    /** A row of the report's table. Differences far below the tolerance are rounding, and not the same on every machine. */
    String row() {
        double noise = 1e-3 * tolerance;
        String difference = Math.abs(difference()) < noise ? "below " + number(noise, 1) : number(difference(), 2);
        return "| %s | %s | %s | %s | %s | %s | %s |%n"
                .formatted(
                        what,
                        number(published, 9),
                        Math.abs(difference()) < noise ? number(published, 9) : number(ours, 9),
                        difference,
                        number(tolerance, 2),
                        body,
                        source)
                .replace(System.lineSeparator(), "\n");
    }

    private static String number(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        java.math.BigDecimal rounded = new java.math.BigDecimal(value).round(new java.math.MathContext(digits));
        int magnitude = rounded.precision() - rounded.scale();
        return magnitude > -4 && magnitude < 10
                ? rounded.stripTrailingZeros().toPlainString()
                : String.format(Locale.ROOT, "%." + (digits - 1) + "e", value);
    }
}
