package trimwright.plan;

import java.util.Locale;

/** What a plan is held to: one row of the linear programme, or a pair of rows for a band. */
public enum Aim {
    /** She lies as deep as the painted line. In mm of draught. */
    LINE("mm"),
    /** She trims as the painted line, surfaced. In degrees. */
    TRIM("deg"),
    /** She does not list, surfaced. In degrees. */
    LIST("deg"),
    /** What keeps her up when the tanks are full. In grams. */
    RESIDUAL("g"),
    /** She lies level fore and aft, dived. In degrees. */
    DIVED_TRIM("deg"),
    /** She does not list, dived. In degrees. */
    DIVED_LIST("deg"),
    /** Weight and buoyancy stand far enough apart, dived. In mm of BG. */
    BG("mm"),
    /** She stands up, surfaced. In mm of GM. */
    GM("mm");

    private final String unit;

    Aim(String unit) {
        this.unit = unit;
    }

    /** Whether only a boat that dives has it. */
    public boolean isDived() {
        return this == RESIDUAL || this == DIVED_TRIM || this == DIVED_LIST || this == BG;
    }

    /** Unit in which it is missed. */
    public String unit() {
        return unit;
    }

    /** The name as scripts see it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
