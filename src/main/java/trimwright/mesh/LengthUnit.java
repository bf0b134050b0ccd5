package trimwright.mesh;

import java.util.Optional;

/** The length units of mesh files, as the boat file writes them. */
public enum LengthUnit {
    MILLIMETRE("mm", 1),
    CENTIMETRE("cm", 10),
    METRE("m", 1000),
    INCH("in", 25.4);

    private final String symbol;
    private final double mm;

    LengthUnit(String symbol, double mm) {
        this.symbol = symbol;
        this.mm = mm;
    }

    /** The unit as the boat file writes it. */
    public String symbol() {
        return symbol;
    }

    /** Length of one unit in mm. */
    public double mm() {
        return mm;
    }

    public static Optional<LengthUnit> ofSymbol(String symbol) {
        for (LengthUnit unit : values()) {
            if (unit.symbol.equals(symbol)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
