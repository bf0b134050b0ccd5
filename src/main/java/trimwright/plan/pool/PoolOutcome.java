package trimwright.plan.pool;

import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.pool.PoolTest;
import trimwright.plan.BallastPlan;
import trimwright.plan.Goal;
import trimwright.plan.PlanRequest;
import trimwright.plan.Planner;
import trimwright.plan.Wanted;
import trimwright.statics.Condition;

/**
 * What readings say of a boat, and what to change by them.
 *
 * @param estimate what they say
 * @param change the ballast plan of the corrected boat; empty without a painted line, and where the readings contradict each other
 */
public record PoolOutcome(PoolEstimate estimate, Optional<BallastPlan> change) {

    /** @throws trimwright.finding.UnusableInputException when in the state of a reading nothing of the kind could be read */
    public static PoolOutcome of(Boat boat, PoolTest test) {
        PoolEstimate estimate = PoolEstimate.of(boat, test);
        Boat corrected = estimate.corrected();
        boolean plannable = corrected.paintedLine().isPresent() && !estimate.isContradictory();
        return new PoolOutcome(estimate, plannable ? Optional.of(plan(corrected)) : Optional.empty());
    }

    private static BallastPlan plan(Boat corrected) {
        double mass = Condition.of(corrected).dryMassG();
        return Planner.plan(PlanRequest.of(corrected, Wanted.of(corrected.targets(), mass), Goal.LEAST_MASS));
    }
}
