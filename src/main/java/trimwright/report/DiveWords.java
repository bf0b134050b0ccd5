package trimwright.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import trimwright.statics.Course;
import trimwright.statics.CriticalPoint;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.FailSafe;
import trimwright.statics.ResidualWanted;
import trimwright.statics.Standing;
import trimwright.statics.SurfacingRun;

/** What a dive comes to, in sentences. */
public final class DiveWords {

    /** Parts out of the water that are told one by one. */
    private static final int PARTS_TOLD = 3;

    private DiveWords() {}

    /** Whether she comes back by herself. */
    public static String verdict(DiveRun run) {
        return verdict(run, Measure.METRIC);
    }

    /** Whether she comes back by herself, in other units. */
    public static String verdict(DiveRun run, Measure measure) {
        FailSafe failSafe = run.failSafe();
        DiveStep first = run.course().steps().get(0);
        DiveStep last = run.course().steps().get(run.course().steps().size() - 1);
        if (first.settled().isEmpty()) {
            return "She sinks before the dive begins: she is "
                    + measure.mass(-first.flotation().reserveG())
                    + " heavier than the water that all of her can displace.";
        }
        if (failSafe.sinksFromFill().isPresent()) {
            return "She goes down and does not come back by herself: from "
                    + Numbers.fixed(100 * failSafe.sinksFromFill().get(), 1) + " % full on she is too heavy, "
                    + (failSafe.residualG() > 0
                            ? "although at the end of the dive " + measure.mass(failSafe.residualG())
                                    + " of buoyancy would be left."
                            : "at the end of the dive by " + measure.mass(-failSafe.residualG()) + ".");
        }
        return comesBack(
                        failSafe.residualG(), ResidualWanted.of(last.flotation().condition()), measure)
                + staysOut(last.standing(), measure) + "; at rest there: "
                + AttitudeWords.of(last.settled().orElseThrow().plane().up()) + ".";
    }

    private static String comesBack(double residualG, ResidualWanted wanted, Measure measure) {
        String left = measure.mass(residualG) + " of buoyancy are left at the end of the dive";
        String band = " where " + measure.briefMass(wanted.leastG()) + " to "
                + measure.briefMass(wanted.greatestG()) + " " + measure.massUnit() + " are "
                + (wanted.stated() ? "wanted" : "usual for her weight");
        if (residualG < wanted.leastG()) {
            return "She dives and comes back by herself, but only just: " + left + band;
        }
        if (residualG > wanted.greatestG()) {
            return "She comes back by herself, but does not dive as deep as she should: " + left + band;
        }
        return "She dives and comes back by herself: " + left;
    }

    /** Where she stands least firmly on the way; empty when she floats nowhere. */
    public static Optional<String> leastFirm(Course course) {
        return leastFirm(course, Measure.METRIC);
    }

    /** Where she stands least firmly on the way, in other units. */
    public static Optional<String> leastFirm(Course course, Measure measure) {
        return course.critical().map(c -> leastFirm(c, measure));
    }

    private static String leastFirm(CriticalPoint critical, Measure measure) {
        return "Least firm on the way, at " + percent(critical.fill()) + ": "
                + decapitalised(StabilityWords.of(critical.steadiness(), measure));
    }

    /** The way up with water inside. */
    public static String comingUp(SurfacingRun run) {
        return "Coming up with " + Numbers.fixed(100 * run.draining(), 0)
                + " % of the water inside the hull not run out yet, up to " + Numbers.g(run.mostHeldG())
                + " stand above the level outside (at " + percent(run.atFill()) + ")."
                + leastFirm(run.course()).map(s -> " " + s).orElse("");
    }

    /** As in "64 % of the tank". */
    static String percent(double fill) {
        return Numbers.fixed(100 * fill, 0) + " % full";
    }

    /** As in "; out of the water stand mast (31.0 mm), hull (2.1 mm)". */
    private static String staysOut(List<Standing> standing, Measure measure) {
        if (standing.isEmpty()) {
            return "";
        }
        String parts = standing.stream()
                .limit(PARTS_TOLD)
                .map(s -> s.part() + " (" + measure.length(s.aboveMm()) + ")")
                .collect(Collectors.joining(", "));
        int more = standing.size() - PARTS_TOLD;
        return "; out of the water stand" + (standing.size() == 1 ? "s " : " ") + parts
                + (more > 0 ? " and " + more + " more" : "");
    }

    private static String decapitalised(String sentence) {
        return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
