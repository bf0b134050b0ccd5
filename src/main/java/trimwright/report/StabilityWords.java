package trimwright.report;

import trimwright.statics.Steadiness;
import trimwright.statics.Submerged;

/** How firmly a boat stands, in a sentence that one builder would say to another. */
public final class StabilityWords {

    private StabilityWords() {}

    /** As in "She stays upright but is tender: …". */
    public static String of(Steadiness s) {
        return switch (s.stance()) {
            case STANDS_FIRM ->
                "She stands firm: GM is " + Numbers.mm(s.gmMm()) + ", and " + Numbers.mm(s.wantedGmMm()) + " would do.";
            case TENDER ->
                "She stays upright but is tender: GM is " + Numbers.mm(s.gmMm()) + " where "
                        + Numbers.mm(s.wantedGmMm()) + " is wanted; " + apart(s) + ", where "
                        + height(s.bgToStandFirmMm())
                        + " would hold her firmly.";
            case RESTS_ON_EITHER_SIDE ->
                "She will rest on either side at about "
                        + Numbers.degrees(Math.abs(s.heelDeg())) + "; " + apart(s) + ", where "
                        + height(s.bgToStandMm())
                        + " would just hold her and " + height(s.bgToStandFirmMm()) + " would do it firmly.";
            case FALLS_OVER ->
                "She goes over, to a list of about " + Numbers.degrees(Math.abs(s.heelDeg())) + "; " + apart(s)
                        + ", where " + height(s.bgToStandFirmMm()) + " would hold her firmly.";
        };
    }

    /** Under water, where nothing but the distance of B above G holds her. */
    public static String of(Submerged dived) {
        return "Dived, her buoyancy stands " + Numbers.mm(dived.bgMm())
                + " above her weight, and that alone holds her: she hangs " + AttitudeWords.of(dived.up()) + ".";
    }

    private static String apart(Steadiness s) {
        return "her buoyancy stands " + height(s.bgMm()) + " her weight";
    }

    private static String height(double mm) {
        return Numbers.mm(Math.abs(mm)) + (mm < 0 ? " below" : " above");
    }
}
