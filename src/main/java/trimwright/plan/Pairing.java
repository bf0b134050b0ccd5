package trimwright.plan;

import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Targets;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/**
 * Lead with the foam that carries it, or foam with the lead that it carries: added as a pair they leave the waterline and the dive as they are, and
 * set weight and buoyancy farther apart (common practice, no source).
 */
public final class Pairing {

    private static final double LINE_MM = 0.1;
    private static final double LIST_DEG = 0.1;
    /** Share of a list that may go: a pair makes her firmer, and a firmer boat lists less for the same weight out of the middle. */
    private static final double LIST_SHARE = 0.3;

    private static final double DIVED_DEG = 0.5;
    /** Share of BG and GM that is there at least afterwards; where a list must be kept by weights out of the middle, some may go. */
    private static final double KEPT_SHARE = 0.5;

    private static final double RESIDUAL_G = 1.5;

    private Pairing() {}

    /**
     * A request that keeps the boat as she floats and dives now, with whatever list and trim she has.
     *
     * @param goal how much lead or foam
     * @return the request; empty when she sinks, so that there is nothing to keep
     */
    public static Optional<PlanRequest> keepingLine(Boat boat, Goal goal, double leadGPerCm3, double foamGPerCm3) {
        Condition condition = Condition.of(boat);
        Flotation now = Flotation.settling(condition);
        if (now.settled().isEmpty()) {
            return Optional.empty();
        }
        Equilibrium afloat = now.settled().get();
        double residual = now.submerged().residualG();
        Wanted asNow = new Wanted(
                Math.max(0, KEPT_SHARE * now.submerged().bgMm()),
                Math.max(0, KEPT_SHARE * afloat.gmTransverseMm()),
                new Targets.Band(residual - RESIDUAL_G, residual + RESIDUAL_G),
                LINE_MM,
                Math.max(LIST_DEG, LIST_SHARE * Math.abs(afloat.heelDeg())),
                DIVED_DEG);
        return Optional.of(new PlanRequest(
                boat,
                afloat.plane(),
                asNow,
                goal,
                leadGPerCm3,
                foamGPerCm3,
                Set.of(),
                condition.tankVolumeMm3() > 0 ? Optional.of(divedUp(condition)) : Optional.empty()));
    }

    /** How she lies with her tanks full. */
    private static Vector3D divedUp(Condition condition) {
        Flotation dived = Flotation.settling(condition.withAllTanksAt(1));
        return dived.settled().map(e -> e.plane().up()).orElse(dived.submerged().up());
    }
}
