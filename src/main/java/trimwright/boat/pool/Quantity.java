package trimwright.boat.pool;

import java.util.Locale;

/** What can be read in the pool. Each is written in the readings file under a key of its own, which carries the unit. */
public enum Quantity {
    /** Height of the water above a point of the boat, along the boat's z axis; negative below. Default ± 0.5 mm. */
    WATER_ABOVE("aboveMm", "Mm", 0.5),
    /** Height of a point above the water, straight up. Default ± 0.5 mm. */
    FREEBOARD("freeboardMm", "Mm", 0.5),
    /** List, positive to starboard. Default ± 0.3°. */
    LIST("heelDeg", "Deg", 0.3),
    /** Trim, positive bow up. Default ± 0.2°. */
    TRIM("trimDeg", "Deg", 0.2),
    /** What a scale holds with the boat hanging from it wholly under water. Default ± 1 g. */
    HANGING("hangingG", "G", 1),
    /** The list at which she rests, now on one side and now on the other. Default ± 1°. */
    RESTS_AT("restsAtDeg", "Deg", 1),
    /** Time of a roll, over and back. Default ± 0.2 s: the water that moves with her is not in the estimate. */
    ROLL("rollS", "S", 0.2);

    private final String key;
    private final String unit;
    private final double usualError;

    Quantity(String key, String unit, double usualError) {
        this.key = key;
        this.unit = unit;
        this.usualError = usualError;
    }

    /** The key under which the readings file has it. */
    public String key() {
        return key;
    }

    /** The key under which the readings file has its uncertainty. */
    public String errorKey() {
        return "plusMinus" + unit;
    }

    /** Unit as it is written after a number. */
    public String unit() {
        return switch (unit) {
            case "Deg" -> "°";
            default -> " " + unit.toLowerCase(Locale.ROOT);
        };
    }

    /** Standard deviation where the builder states none, in its unit. */
    public double usualError() {
        return usualError;
    }

    /** Whether it is read at a point of the boat. */
    public boolean isAtAPoint() {
        return this == WATER_ABOVE || this == FREEBOARD;
    }
}
