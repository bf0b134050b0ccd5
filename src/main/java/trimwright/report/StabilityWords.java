package trimwright.report;

import trimwright.statics.Steadiness;
import trimwright.statics.Submerged;

/** How firmly a boat stands, in a sentence that one builder would say to another. */
public final class StabilityWords {

    private StabilityWords() {}

    /** As in "She stays upright but is tender: …". */
    public static String of(Steadiness s) {
        return of(s, Measure.METRIC);
    }

    public static String of(Steadiness s, Measure measure) {
        return switch (s.stance()) {
            case STANDS_FIRM ->
                "She stands firm: GM is " + measure.length(s.gmMm()) + ", and " + measure.length(s.wantedGmMm())
                        + " would do.";
            case TENDER ->
                "She stays upright but is tender: GM is " + measure.length(s.gmMm()) + " where "
                        + measure.length(s.wantedGmMm()) + " is wanted; " + apart(s, measure) + ", where "
                        + height(s.bgToStandFirmMm(), measure)
                        + " would hold her firmly.";
            case RESTS_ON_EITHER_SIDE ->
                "She will rest on either side at about "
                        + Numbers.degrees(Math.abs(s.heelDeg())) + "; " + apart(s, measure) + ", where "
                        + height(s.bgToStandMm(), measure)
                        + " would just hold her and " + height(s.bgToStandFirmMm(), measure) + " would do it firmly.";
            case FALLS_OVER ->
                "She goes over, to a list of about " + Numbers.degrees(Math.abs(s.heelDeg())) + "; " + apart(s, measure)
                        + ", where " + height(s.bgToStandFirmMm(), measure) + " would hold her firmly.";
        };
    }

    /** Under water, where nothing but the distance of B above G holds her. */
    public static String of(Submerged dived) {
        return of(dived, Measure.METRIC);
    }

    public static String of(Submerged dived, Measure measure) {
        return "Dived, her buoyancy stands " + measure.length(dived.bgMm())
                + " above her weight, and that alone holds her: she hangs " + AttitudeWords.of(dived.up()) + ".";
    }

    private static String apart(Steadiness s, Measure measure) {
        return "her buoyancy stands " + height(s.bgMm(), measure) + " her weight";
    }

    private static String height(double mm, Measure measure) {
        return measure.length(Math.abs(mm)) + (mm < 0 ? " below" : " above");
    }
}
