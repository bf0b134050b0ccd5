package trimwright.report;

import java.util.List;
import trimwright.plan.Cause;

/** Why an aim of a plan is missed, in words. */
final class CauseWords {

    private CauseWords() {}

    static String of(Cause cause) {
        return switch (cause.kind()) {
            case TANK_TOO_SMALL ->
                "the tank holds " + cm3(cause, "tankCm3") + ", but " + cm3(cause, "aboveCm3")
                        + " stand above the painted line" + mostOf(cause.parts()) + ", so that it would have to hold "
                        + cm3(cause, "neededCm3") + " at least";
            case TANK_TOO_LARGE ->
                "the tank takes in " + cm3(cause, "tankCm3") + ", but only " + cm3(cause, "aboveCm3")
                        + " stand above the painted line" + mostOf(cause.parts())
                        + (cause.figure("roomCm3") > 0
                                ? ", with room for " + cm3(cause, "roomCm3") + " of foam there"
                                : ", and no zone has room for foam there")
                        + "; without more foam it may hold " + cm3(cause, "neededCm3") + " at most";
            case TOO_HEAVY ->
                "she weighs " + g(cause, "weightG") + ", but what lies under the line carries "
                        + g(cause, "carriedG")
                        + (cause.figure("roomG") > 0
                                ? ", and foam in all the room there is would carry only " + g(cause, "roomG") + " more"
                                : ", and there is no room for foam");
            case TOO_LIGHT ->
                "she weighs " + g(cause, "weightG") + ", but what lies under the line carries "
                        + g(cause, "carriedG")
                        + (cause.figure("roomG") > 0
                                ? ", and all the room for lead takes only " + g(cause, "roomG")
                                        + ", as it weighs in the water"
                                : ", and there is no room for lead");
            case WEIGHT_ALONG ->
                apart(cause, "weightMm", "carriedMm", "her weight stands ", " ahead", " astern")
                        + " of where the water carries her, and the room for lead and foam does not reach far enough to"
                        + " make up for it";
            case WEIGHT_ACROSS ->
                apart(cause, "weightMm", "carriedMm", "her weight stands ", " to port", " to starboard")
                        + " of where the water carries her, and the room for lead and foam does not reach far enough to"
                        + " make up for it";
            case TANK_ALONG ->
                apart(cause, "tankMm", "aboveMm", "the middle of the tank lies ", " ahead", " astern")
                        + " of the middle of what stands above the line" + mostOf(cause.parts());
            case TANK_ACROSS ->
                apart(cause, "tankMm", "aboveMm", "the middle of the tank lies ", " to port", " to starboard")
                        + " of the middle of what stands above the line" + mostOf(cause.parts());
            case GREATEST ->
                "with everything else as wanted, the room low for lead and high for foam allows "
                        + Numbers.mm(cause.figure("greatest")) + ", and " + Numbers.mm(cause.figure("wanted"))
                        + " are wanted";
            case PIECES ->
                "spread finely over the room it could be had, but not with a few pieces that can be cut; larger or more"
                        + " zones would help";
            case FOLLOWS -> "that follows from what was said before";
            default -> "by itself it could be had, but not together with the rest";
        };
    }

    private static String apart(Cause cause, String one, String other, String start, String more, String less) {
        double off = cause.figure(one) - cause.figure(other);
        return start + Numbers.mm(Math.abs(off)) + (off > 0 ? more : less);
    }

    private static String mostOf(List<String> parts) {
        return parts.isEmpty() ? "" : " (most of it " + String.join(" and ", parts) + ")";
    }

    private static String cm3(Cause cause, String name) {
        return Numbers.fixed(cause.figure(name), 0) + " cm³";
    }

    private static String g(Cause cause, String name) {
        return Numbers.g(cause.figure(name));
    }
}
