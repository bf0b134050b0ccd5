package trimwright.report;

import trimwright.boat.pool.Quantity;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.NextReading;
import trimwright.plan.pool.Tolerance;
import trimwright.plan.pool.Tolerance.InHand;

/** Figures, readings and what to read next, in words. */
public final class PoolWords {

    private PoolWords() {}

    /** A figure as it stands in a table. */
    public static String of(Figure figure) {
        return switch (figure) {
            case MASS -> "weight without tank water";
            case G_AHEAD -> "G, x";
            case G_TO_PORT -> "G, y";
            case G_UP -> "G, z";
            case BOW -> "water above the paint, bow";
            case STERN -> "water above the paint, stern";
            case LIST -> "list, + to starboard";
            case TRIM -> "trim, + bow up";
            case GM -> "GM across, surfaced";
            case BG_DIVED -> "B above G, dived";
            case TRIM_DIVED -> "trim dived, + bow up";
            case RESIDUAL -> "buoyancy left, dived";
        };
    }

    /** What was read, as it stands in a table. */
    public static String of(Quantity quantity) {
        return switch (quantity) {
            case WATER_ABOVE -> "water above the point";
            case FREEBOARD -> "point above the water";
            case LIST -> "list, + to starboard";
            case TRIM -> "trim, + bow up";
            case HANGING -> "hangs on the scale";
            case RESTS_AT -> "rests on either side at";
            case ROLL -> "a roll, over and back";
        };
    }

    /** What to do next, as an order. */
    public static String of(NextReading next) {
        return of(next, Measure.METRIC);
    }

    /** What to do next, in other units. */
    public static String of(NextReading next, Measure measure) {
        return switch (next.kind()) {
            case LINE_SURFACED -> "read the line at bow and stern, tanks empty";
            case LIST_SURFACED -> "read the list, tanks empty";
            case WEIGHT_MOVED_ACROSS ->
                "move " + measure.mass(next.massG()) + " across by " + way(next.wayMm(), measure)
                        + " and read the list";
            case LINE_DIVED -> "fill the tanks and read the line at bow and stern";
            case WEIGHED_DIVED ->
                "fill the tanks, lay " + measure.mass(next.massG()) + " on her and hang her from a scale under water";
            case ROLL_TIMED -> "time a roll, over and back";
        };
    }

    /** What to keep in hand before the first wetting. */
    public static String of(InHand inHand) {
        return of(inHand, Measure.METRIC);
    }

    /** What to keep in hand before the first wetting, in other units. */
    public static String of(InHand inHand, Measure measure) {
        // A weight as it lies on a bench: 10 g, or half an ounce.
        double weightG = measure == Measure.METRIC ? 10 : measure.typedG(0.5);
        String lead = inHand.addG() > 0
                ? "keep " + measure.mass(inHand.addG(), 0) + " of lead in hand to add"
                : "no lead has to be added";
        String take = inHand.takeG() > 0
                ? ", and " + measure.mass(inHand.takeG(), 0) + " in her that can be taken out (or foam to carry them)"
                : "";
        return "To bring 19 of 20 such boats onto the line, " + lead + take + "; and room to shift it by up to "
                + measure.moment(inHand.alongGmm()) + " along and " + measure.moment(inHand.acrossGmm())
                + " across, as " + measure.mass(weightG, 0) + " moved " + way(inHand.alongGmm() / weightG, measure)
                + " along and " + way(inHand.acrossGmm() / weightG, measure) + " across." + where(inHand, measure);
    }

    private static String where(InHand inHand, Measure measure) {
        if (inHand.reachAlongMm().isEmpty()) {
            return "";
        }
        double along = inHand.reachAlongMm().get();
        return " The " + measure.mass(inHand.adjustableG(), 0) + " suffice for that where they can lie anywhere from x "
                + measure.lengthNumber(inHand.aboutXMm() - along, 0) + " to x "
                + way(inHand.aboutXMm() + along, measure) + " and up to "
                + way(inHand.reachAcrossMm().get(), measure) + " to either side; less far apart takes more.";
    }

    private static String way(double mm, Measure measure) {
        return measure.lengthNumber(mm, 0) + " " + measure.lengthUnit();
    }

    /** The chance that such a boat is within what is wanted. */
    public static String chance(Tolerance tolerance) {
        return tolerance
                .within()
                .map(share -> "As she is in the file, " + percent(share)
                        + " of such boats are within everything that is wanted at once.")
                .orElse("Her file does not say what is wanted of her, so that no chance can be told.");
    }

    /** A share, as in "12 %". */
    public static String percent(double share) {
        return Numbers.fixed(100 * share, 0) + " %";
    }
}
