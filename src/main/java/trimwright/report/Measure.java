package trimwright.report;

/** The units in which lengths, masses and what is made of them are shown and typed. Files and computing stay in mm and g. */
public enum Measure {
    METRIC("mm", "mm", "g", "cm³", "cm²", "g·mm", "g·m", 1, 1),
    /** Inches and avoirdupois ounces: 25.4 mm exactly, and 28.349523125 g exactly (international yard and pound agreement, 1959). */
    INCH("in", "inches", "oz", "in³", "in²", "oz·in", "oz·in", 25.4, 28.349523125);

    private static final double MM3_PER_CM3 = 1000;
    /** Decimals by which a number in inches is longer than in mm, to be told as finely; the same for ounces, and for cubic inches in place of cm³. */
    private static final int MORE_FOR_LENGTH = 2;

    private static final int MORE_FOR_MASS = 1;

    private final String lengthUnit;
    private final String lengthWord;
    private final String massUnit;
    private final String volumeUnit;
    private final String areaUnit;
    private final String momentUnit;
    private final String largeMomentUnit;
    private final double mm;
    private final double g;

    Measure(
            String lengthUnit,
            String lengthWord,
            String massUnit,
            String volumeUnit,
            String areaUnit,
            String momentUnit,
            String largeMomentUnit,
            double mm,
            double g) {
        this.lengthUnit = lengthUnit;
        this.lengthWord = lengthWord;
        this.massUnit = massUnit;
        this.volumeUnit = volumeUnit;
        this.areaUnit = areaUnit;
        this.momentUnit = momentUnit;
        this.largeMomentUnit = largeMomentUnit;
        this.mm = mm;
        this.g = g;
    }

    public String lengthUnit() {
        return lengthUnit;
    }

    /** The unit of lengths where it stands without a number. */
    public String lengthWord() {
        return lengthWord;
    }

    public String massUnit() {
        return massUnit;
    }

    public String volumeUnit() {
        return volumeUnit;
    }

    public String areaUnit() {
        return areaUnit;
    }

    /** Of a righting moment or a weight moved. */
    public String momentUnit() {
        return momentUnit;
    }

    /** Of the moment of a part about the origin. */
    public String largeMomentUnit() {
        return largeMomentUnit;
    }

    /** A length with its unit. */
    public String length(double valueMm) {
        return lengthNumber(valueMm) + " " + lengthUnit;
    }

    /** A length without its unit: tenths of a millimetre, hundredths of an inch, below an inch thousandths. */
    public String lengthNumber(double valueMm) {
        int decimals = this == METRIC ? 1 : Math.abs(valueMm) < mm ? 3 : 2;
        return Numbers.fixed(valueMm / mm, decimals);
    }

    /** A length without its unit, as finely as so many decimals of a millimetre tell it. */
    public String lengthNumber(double valueMm, int decimalsOfMm) {
        return Numbers.fixed(valueMm / mm, this == METRIC ? decimalsOfMm : decimalsOfMm + MORE_FOR_LENGTH);
    }

    /** A length without its unit, no longer than it must be. */
    public String briefLength(double valueMm) {
        return this == METRIC ? Numbers.brief(valueMm) : Numbers.plain(Math.rint(valueMm / mm * 1e3) / 1e3);
    }

    /** A volume with its unit, finer where it is small: models a hand long count tenths of a cm³. */
    public String fineVolume(double valueMm3) {
        double cm3 = Math.abs(valueMm3) / 1000;
        return volume(valueMm3, cm3 >= 10 ? 0 : cm3 >= 1 ? 1 : 2);
    }

    /** A mass with its unit. */
    public String mass(double valueG) {
        return this == METRIC ? Numbers.g(valueG) : Numbers.fixed(valueG / g, 2) + " " + massUnit;
    }

    /** A mass with its unit, as finely as so many decimals of a gram tell it. */
    public String mass(double valueG, int decimalsOfG) {
        return massNumber(valueG, decimalsOfG) + " " + massUnit;
    }

    /** A mass without its unit, as finely as so many decimals of a gram tell it. */
    public String massNumber(double valueG, int decimalsOfG) {
        return Numbers.fixed(valueG / g, this == METRIC ? decimalsOfG : decimalsOfG + MORE_FOR_MASS);
    }

    /** A mass without its unit, no longer than it must be. */
    public String briefMass(double valueG) {
        return this == METRIC ? Numbers.brief(valueG) : Numbers.plain(Math.rint(valueG / g * 100) / 100);
    }

    /** A volume with its unit. */
    public String volume(double valueMm3) {
        return volume(valueMm3, 0);
    }

    /** A volume with its unit, as finely as so many decimals of a cm³ tell it. */
    public String volume(double valueMm3, int decimalsOfCm3) {
        return volumeNumber(valueMm3, decimalsOfCm3) + " " + volumeUnit;
    }

    /** A volume without its unit, as finely as so many decimals of a cm³ tell it. */
    public String volumeNumber(double valueMm3, int decimalsOfCm3) {
        return this == METRIC
                ? Numbers.fixed(valueMm3 / MM3_PER_CM3, decimalsOfCm3)
                : Numbers.fixed(valueMm3 / (mm * mm * mm), decimalsOfCm3 + MORE_FOR_MASS);
    }

    /** A moment with its unit: whole g·mm. */
    public String moment(double valueGmm) {
        return momentNumber(valueGmm) + " " + momentUnit;
    }

    /** A moment without its unit: whole g·mm. */
    public String momentNumber(double valueGmm) {
        return Numbers.fixed(valueGmm / (g * mm), this == METRIC ? 0 : 2);
    }

    /** The moment of a part about the origin, without its unit: tenths of g·m. */
    public String largeMomentNumber(double valueGmm) {
        return Numbers.fixed(valueGmm / (this == METRIC ? 1000 : g * mm), 1);
    }

    /** A length for editing: nothing of what the file says is lost in mm. */
    public String lengthField(double valueMm) {
        return Numbers.plain(this == METRIC ? valueMm : Math.rint(valueMm / mm * 1e4) / 1e4);
    }

    /** A mass for editing. */
    public String massField(double valueG) {
        return Numbers.plain(this == METRIC ? valueG : Math.rint(valueG / g * 1e4) / 1e4);
    }

    /** A length in this unit. */
    public double inLengthUnit(double valueMm) {
        return valueMm / mm;
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
}
