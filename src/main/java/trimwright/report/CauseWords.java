package trimwright.report;

import java.util.List;
import trimwright.plan.Cause;

/** Why an aim of a plan is missed, in words. */
final class CauseWords {

    private CauseWords() {}

    static String of(Cause cause, Measure measure) {
        return switch (cause.kind()) {
            case TANK_TOO_SMALL ->
                "the tank holds " + cm3(cause, "tankCm3", measure) + ", but " + cm3(cause, "aboveCm3", measure)
                        + " stand above the painted line" + mostOf(cause.parts()) + ", so that it would have to hold "
                        + cm3(cause, "neededCm3", measure) + " at least";
            case TANK_TOO_LARGE ->
                "the tank takes in " + cm3(cause, "tankCm3", measure) + ", but only " + cm3(cause, "aboveCm3", measure)
                        + " stand above the painted line" + mostOf(cause.parts())
                        + (cause.figure("roomCm3") > 0
                                ? ", with room for " + cm3(cause, "roomCm3", measure) + " of foam there"
                                : ", and no zone has room for foam there")
                        + "; without more foam it may hold " + cm3(cause, "neededCm3", measure) + " at most";
            case TOO_HEAVY ->
                "she weighs " + g(cause, "weightG", measure) + ", but what lies under the line carries "
                        + g(cause, "carriedG", measure)
                        + (cause.figure("roomG") > 0
                                ? ", and foam in all the room there is would carry only " + g(cause, "roomG", measure)
                                        + " more"
                                : ", and there is no room for foam");
            case TOO_LIGHT ->
                "she weighs " + g(cause, "weightG", measure) + ", but what lies under the line carries "
                        + g(cause, "carriedG", measure)
                        + (cause.figure("roomG") > 0
                                ? ", and all the room for lead takes only " + g(cause, "roomG", measure)
                                        + ", as it weighs in the water"
                                : ", and there is no room for lead");
            case WEIGHT_ALONG ->
                apart(measure, cause, "weightMm", "carriedMm", "her weight stands ", " ahead", " astern")
                        + " of where the water carries her, and the room for lead and foam does not reach far enough to"
                        + " make up for it";
            case WEIGHT_ACROSS ->
                apart(measure, cause, "weightMm", "carriedMm", "her weight stands ", " to port", " to starboard")
                        + " of where the water carries her, and the room for lead and foam does not reach far enough to"
                        + " make up for it";
            case TANK_ALONG ->
                apart(measure, cause, "tankMm", "aboveMm", "the middle of the tank lies ", " ahead", " astern")
                        + " of the middle of what stands above the line" + mostOf(cause.parts());
            case TANK_ACROSS ->
                apart(measure, cause, "tankMm", "aboveMm", "the middle of the tank lies ", " to port", " to starboard")
                        + " of the middle of what stands above the line" + mostOf(cause.parts());
            case GREATEST ->
                "with everything else as wanted, the room low for lead and high for foam allows "
                        + measure.length(cause.figure("greatest")) + ", and " + measure.length(cause.figure("wanted"))
                        + " are wanted";
            case MASS_LIMIT ->
                "no more than " + g(cause, "allowedG", measure) + " may be added, but it takes "
                        + g(cause, "neededG", measure) + " at least";
            case PIECES ->
                "spread finely over the room it could be had, but not with a few pieces that can be cut; larger or more"
                        + " zones would help";
            case FOLLOWS -> "that follows from what was said before";
            default -> "by itself it could be had, but not together with the rest";
        };
    }

    private static String apart(
            Measure measure, Cause cause, String one, String other, String start, String more, String less) {
        double off = cause.figure(one) - cause.figure(other);
        return start + measure.length(Math.abs(off)) + (off > 0 ? more : less);
    }

    private static String mostOf(List<String> parts) {
        return parts.isEmpty() ? "" : " (most of it " + String.join(" and ", parts) + ")";
    }

    private static String cm3(Cause cause, String name, Measure measure) {
        return measure.fineVolume(1000 * cause.figure(name));
    }

    private static String g(Cause cause, String name, Measure measure) {
        return measure.mass(cause.figure(name));
    }
}
