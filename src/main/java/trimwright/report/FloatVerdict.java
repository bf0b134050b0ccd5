package trimwright.report;

import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;

/** The answer to the main question in a sentence, as one builder would say it to another. */
public final class FloatVerdict {

    /** Share of up along the boat's z axis below which she lies on her side and the paint at bow and stern says nothing. */
    private static final double ON_HER_SIDE = 0.5;

    private FloatVerdict() {}

    /** In mm and g. */
    public static String of(Flotation flotation) {
        return of(flotation, Measure.METRIC);
    }

    public static String of(Flotation flotation, Measure measure) {
        if (flotation.settled().isEmpty()) {
            return "She sinks: she is " + measure.mass(-flotation.reserveG())
                    + " heavier than the water that all of her can displace.";
        }
        Equilibrium rest = flotation.settled().get();
        String attitude = AttitudeWords.of(rest.plane().up());
        if (rest.plane().up().getZ() < ON_HER_SIDE) {
            return "She floats, but does not stay upright. She settles " + attitude + ".";
        }
        return flotation
                .fromPaintedLine()
                .map(off -> "She floats " + againstPaint(off, measure) + "; " + attitude + ".")
                .orElse("She floats " + attitude + ".");
    }

    private static String againstPaint(PaintedOffset off, Measure measure) {
        String bow = fromPaint(off.bowMm(), measure);
        String stern = fromPaint(off.sternMm(), measure);
        if (bow.equals(stern)) {
            return Numbers.roundsToZero(off.bowMm(), 1)
                    ? "on her painted line at bow and stern"
                    : "with the water " + bow + " at bow and stern" + meaning(off.bowMm());
        }
        return "with the water " + bow + " at the bow" + meaning(off.bowMm()) + " and " + stern + " at the stern"
                + meaning(off.sternMm());
    }

    /** Where the water stands against the paint, as in "1.8 mm above the paint". */
    private static String fromPaint(double offMm, Measure measure) {
        if (Numbers.roundsToZero(offMm, 1)) {
            return "on the paint";
        }
        return measure.length(Math.abs(offMm)) + (offMm > 0 ? " above the paint" : " below the paint");
    }

    /** Water above the paint means that the boat lies too deep there. */
    private static String meaning(double offMm) {
        if (Numbers.roundsToZero(offMm, 1)) {
            return "";
        }
        return offMm > 0 ? " (too deep)" : " (too high)";
    }

    /** How the boat lies against her paint, as in "1.8 mm too deep". */
    static String offPaint(double offMm, Measure measure) {
        if (Numbers.roundsToZero(offMm, 1)) {
            return "on the paint";
        }
        return measure.length(Math.abs(offMm)) + (offMm > 0 ? " too deep" : " too high");
    }
}
