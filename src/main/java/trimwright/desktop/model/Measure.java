package trimwright.desktop.model;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import trimwright.report.Numbers;

/** The units in which the window shows and takes lengths and masses. The boat file stays in mm and g. */
public enum Measure {
    METRIC("mm", "g", "cm³", 1, 1, 1, 1, 1),
    /** Inches and avoirdupois ounces: 25.4 mm exactly, and 28.349523125 g exactly (international yard and pound agreement, 1959). */
    INCH("in", "oz", "in³", 25.4, 28.349523125, 16.387064, 2, 2);

    private static final Pattern MM = Pattern.compile("(\\d+(?:\\.\\d+)?) mm");
    private static final Pattern G = Pattern.compile("(\\d+(?:\\.\\d+)?) g\\b(?!/)");

    private final String lengthUnit;
    private final String massUnit;
    private final String volumeUnit;
    private final double mm;
    private final double g;
    private final double cm3;
    private final int lengthDecimals;
    private final int massDecimals;

    Measure(
            String lengthUnit,
            String massUnit,
            String volumeUnit,
            double mm,
            double g,
            double cm3,
            int lengthDecimals,
            int massDecimals) {
        this.lengthUnit = lengthUnit;
        this.massUnit = massUnit;
        this.volumeUnit = volumeUnit;
        this.mm = mm;
        this.g = g;
        this.cm3 = cm3;
        this.lengthDecimals = lengthDecimals;
        this.massDecimals = massDecimals;
    }

    public String lengthUnit() {
        return lengthUnit;
    }

    public String massUnit() {
        return massUnit;
    }

    /** A length with its unit. */
    public String length(double valueMm) {
        return lengthNumber(valueMm) + " " + lengthUnit;
    }

    /** A length without its unit, to what a ruler shows. */
    public String lengthNumber(double valueMm) {
        return Numbers.fixed(valueMm / mm, lengthDecimals);
    }

    /** A mass with its unit. */
    public String mass(double valueG) {
        return this == METRIC ? Numbers.g(valueG) : Numbers.fixed(valueG / g, massDecimals) + " " + massUnit;
    }

    /** A volume with its unit. */
    public String volume(double valueMm3) {
        return Numbers.fixed(valueMm3 / 1000 / cm3, this == METRIC ? 0 : 1) + " " + volumeUnit;
    }

    /** A length for editing: nothing of what the file says is lost in mm. */
    public String lengthField(double valueMm) {
        return Numbers.plain(this == METRIC ? valueMm : Math.rint(valueMm / mm * 1e4) / 1e4);
    }

    /** A mass for editing. */
    public String massField(double valueG) {
        return Numbers.plain(this == METRIC ? valueG : Math.rint(valueG / g * 1e4) / 1e4);
    }

    /** A mass in this unit. */
    public double inMassUnit(double valueG) {
        return valueG / g;
    }

    /** mm of a length typed in these units. */
    public double typedMm(double value) {
        return value * mm;
    }

    /** g of a mass typed in these units. */
    public double typedG(double value) {
        return value * g;
    }

    /** A sentence whose lengths and masses are in mm and g, in these units. */
    public String worded(String sentence) {
        if (this == METRIC) {
            return sentence;
        }
        String lengths = MM.matcher(sentence).replaceAll(m -> length(number(m)));
        return G.matcher(lengths).replaceAll(m -> mass(number(m)));
    }

    private static double number(MatchResult found) {
        return Double.parseDouble(found.group(1));
    }
}
