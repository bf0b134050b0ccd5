package trimwright.desktop.model;

import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.statics.Condition;
import trimwright.statics.RightingCurve;
import trimwright.statics.Steadiness;
import trimwright.statics.Submerged;

/**
 * How firmly she stands, afloat and dived.
 *
 * @param condition the boat as loaded
 * @param afloat her levers afloat; empty when she sinks
 * @param dived her levers under water, tanks full
 * @param steadiness how she stands upright afloat; empty where she does not
 * @param submerged how she hangs under water
 */
public record Levers(
        Condition condition,
        Optional<RightingCurve> afloat,
        RightingCurve dived,
        Optional<Steadiness> steadiness,
        Submerged submerged) {

    private static final double STEP_DEG = 5;

    public static Levers of(Boat boat) {
        Condition condition = Condition.of(boat);
        return new Levers(
                condition,
                RightingCurve.surfaced(condition, STEP_DEG),
                RightingCurve.submerged(condition, STEP_DEG),
                Steadiness.afloat(condition),
                Submerged.of(condition));
    }
}
