package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/**
 * A dive from empty tanks to full ones, or as the boat's own plan says.
 *
 * @param course the states on the way
 * @param submerged everything under water with all tanks full
 * @param failSafe what brings her back
 * @param findings what is worth telling: where she lies over, goes over, sinks
 */
public record DiveRun(Course course, Submerged submerged, FailSafe failSafe, List<Finding> findings) {

    public DiveRun {
        findings = List.copyOf(findings);
    }

    /**
     * Dives a loaded boat.
     *
     * @param condition the boat; the fills of her tanks follow her plan, whatever she states now
     * @param steps number of steps; at least 1
     * @throws trimwright.finding.UnusableInputException when she has no tank, or her plan cannot be followed
     */
    public static DiveRun of(Condition condition, int steps) {
        DivePath path = new DivePath(condition);
        Condition first = path.at(0);
        Course course = new CourseSearch(path::at, path::fillAt).follow(steps, Balance.upright(first));
        Condition end = path.at(1);
        DiveStep last = course.steps().get(course.steps().size() - 1);
        Optional<Double> sinksFrom = sinksFrom(path).map(path::fillAt);
        FailSafe failSafe =
                new FailSafe(end.reserveG(), last.standing().stream().findFirst(), sinksFrom);
        return new DiveRun(course, Submerged.of(condition), failSafe, findings(course, failSafe));
    }

    /**
     * The progress from which she is too heavy. The fills run straight between the plan's stages, so that she is heaviest at a stage,
     * which may lie between two steps, and halving finds the place.
     */
    private static Optional<Double> sinksFrom(DivePath path) {
        double before = 0;
        for (double stage : path.stagesAlong()) {
            if (!Flotation.floats(path.at(stage))) {
                return Optional.of(stage == 0 ? 0.0 : firstSunk(path, before, stage));
            }
            before = stage;
        }
        return Optional.empty();
    }

    private static double firstSunk(DivePath path, double afloat, double sunk) {
        double good = afloat;
        double bad = sunk;
        while (bad - good > 1e-12) {
            double middle = 0.5 * (good + bad);
            if (Flotation.floats(path.at(middle))) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return bad;
    }

    private static List<Finding> findings(Course course, FailSafe failSafe) {
        List<Finding> findings = new ArrayList<>();
        boolean afloatAtFirst = course.steps().get(0).settled().isPresent();
        if (!afloatAtFirst) {
            double deficit = -course.steps().get(0).flotation().reserveG();
            findings.add(Finding.of(Code.SINKS_SURFACED, new Place.Whole(), "deficitG", deficit));
        } else if (failSafe.sinksFromFill().isPresent()) {
            findings.add(Finding.of(
                    Code.SINKS_ON_THE_WAY,
                    new Place.Whole(),
                    "fillPercent",
                    100 * failSafe.sinksFromFill().get()));
        }
        findings.addAll(CourseFindings.of(course));
        return findings;
    }
}
