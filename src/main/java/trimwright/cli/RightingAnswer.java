package trimwright.cli;

import java.util.List;
import java.util.Optional;
import trimwright.finding.Finding;
import trimwright.statics.Condition;
import trimwright.statics.RightingCurve;
import trimwright.statics.RollPeriod;
import trimwright.statics.Steadiness;
import trimwright.statics.SteadyHeel;

/**
 * What brings a boat back from a list.
 *
 * @param surfaced with the fills at hand
 * @param submerged everything under and the tanks full
 * @param steadiness how firm she stands surfaced; empty when no trim is stable upright
 * @param roll an estimate of a roll; empty when nothing rights her
 * @param torque under a steady moment, where one was given
 * @param shift with a weight moved across, where one was given
 */
record RightingAnswer(
        Condition condition,
        RightingCurve surfaced,
        RightingCurve submerged,
        Optional<Steadiness> steadiness,
        Optional<RollPeriod> roll,
        Optional<Leaning> torque,
        Optional<Leaning> shift,
        List<Finding> findings)
        implements Answer {

    /** A moment in g·mm, positive to starboard, and the list that it gives; empty when she cannot bear it. */
    record Leaning(double momentGmm, Optional<SteadyHeel> heel) {}

    @Override
    public int exitCode() {
        return ExitCode.DONE;
    }

    @Override
    public void tell(Page page) {
        RightingText.tell(this, page);
    }

    @Override
    public JsonObject json() {
        return RightingJson.of(this);
    }

    @Override
    public String caution() {
        return Cautions.AFLOAT;
    }
}
