package trimwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.pool.PoolTest;
import trimwright.finding.Finding;
import trimwright.plan.BallastPlan;
import trimwright.plan.pool.PoolEstimate;

/**
 * What the readings say, and what to change.
 *
 * @param boat the boat of the file
 * @param test the readings that count
 * @param plan what to change now; empty without a painted line and where the readings contradict each other
 * @param written where the corrected boat was saved
 * @param log where the answer is kept
 */
record PoolAnswer(
        Boat boat,
        PoolTest test,
        PoolEstimate estimate,
        Optional<BallastPlan> plan,
        Optional<Path> written,
        Optional<Path> log,
        List<Finding> findings)
        implements Answer {

    PoolAnswer(
            Boat boat,
            PoolTest test,
            PoolEstimate estimate,
            Optional<BallastPlan> plan,
            Optional<Path> written,
            List<Finding> findings) {
        this(boat, test, estimate, plan, written, Optional.empty(), findings);
    }

    PoolAnswer logged(Path kept) {
        return new PoolAnswer(boat, test, estimate, plan, written, Optional.of(kept), findings);
    }

    @Override
    public int exitCode() {
        return estimate.isDoubtful() ? ExitCode.NO : ExitCode.DONE;
    }

    @Override
    public void tell(Page page) {
        PoolText.tell(this, page);
    }

    @Override
    public JsonObject json() {
        return PoolJson.of(this);
    }

    @Override
    public String caution() {
        return Cautions.BALLAST;
    }
}
