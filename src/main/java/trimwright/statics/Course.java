package trimwright.statics;

import java.util.List;
import java.util.Optional;

/**
 * A way down or up, state by state, each settled from the one before.
 *
 * @param steps the states
 * @param critical where she stands least firmly; empty when she floats nowhere on the way
 * @param unstable where she does not stand upright
 * @param falls where she goes over at once
 * @param largestTrim the state with the largest trim; empty when she floats nowhere
 * @param softestInTrim the state with the least longitudinal metacentric height; empty when she floats nowhere
 */
public record Course(
        List<DiveStep> steps,
        Optional<CriticalPoint> critical,
        List<UnstableRange> unstable,
        List<FallsOver> falls,
        Optional<DiveStep> largestTrim,
        Optional<DiveStep> softestInTrim) {

    public Course {
        steps = List.copyOf(steps);
        unstable = List.copyOf(unstable);
        falls = List.copyOf(falls);
    }
}
