package trimwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trimwright.finding.Finding;
import trimwright.plan.BallastPlan;
import trimwright.plan.LineRange;
import trimwright.plan.PlanRequest;
import trimwright.plan.Shifted;
import trimwright.plan.TradeOff;
import trimwright.plan.WayOut;
import trimwright.statics.Flotation;

/**
 * A ballast plan, told.
 *
 * @param before the boat as she is, afloat
 * @param ways ways out when there is no plan
 * @param shifted what was moved before, where that was allowed
 * @param pair whether only lead with its foam, or foam with its lead, was asked for
 * @param written the file that was saved
 */
record BallastAnswer(
        PlanRequest request,
        BallastPlan plan,
        Flotation before,
        List<WayOut> ways,
        Optional<Shifted.Best> shifted,
        boolean pair,
        Optional<TradeOff> tradeOff,
        Optional<LineRange> lineRange,
        Optional<Path> written,
        List<Finding> findings)
        implements Answer {

    @Override
    public int exitCode() {
        return plan.feasible() ? ExitCode.DONE : ExitCode.NO;
    }

    @Override
    public String caution() {
        return Cautions.BALLAST;
    }

    @Override
    public void tell(Page page) {
        new BallastText(this, page).tell();
    }

    @Override
    public JsonObject json() {
        return BallastJson.of(this);
    }
}
