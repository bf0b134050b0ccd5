package trimwright.statics;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The list that a steady moment gives her, found on the boat herself and not by her initial stability.
 *
 * @param heelDeg list, positive to starboard
 * @param trimDeg trim that comes with it, positive bow up
 */
public record SteadyHeel(double heelDeg, double trimDeg) {

    /** Furthest list from her rest that is looked at, in degrees. */
    private static final int MOST_DEG = 90;
    /** Accuracy of the list, rad. */
    private static final double ANGLE = 1e-9;

    /**
     * Under a moment about the boat's x axis that stays as it is whatever she does: the torque of a propeller.
     *
     * @param condition the boat with the fills at hand
     * @param momentGmm positive when it lists her to starboard
     * @return empty when she sinks, or the moment is more than she can bear
     */
    public static Optional<SteadyHeel> underTorque(Condition condition, double momentGmm) {
        if (!Flotation.floats(condition)) {
            return Optional.empty();
        }
        Trial rest = Balance.rest(condition, Balance.upright(condition)).trial();
        if (momentGmm == 0) {
            return Optional.of(of(rest.plane().up()));
        }
        return borne(condition, rest, momentGmm).map(t -> of(t.plane().up()));
    }

    /**
     * With a weight moved across, which keeps pulling straight down.
     *
     * @param massG the weight, part of the boat
     * @param toStarboardMm its way across, positive to starboard
     * @return empty when she sinks
     */
    public static Optional<SteadyHeel> withWeightMoved(Condition condition, double massG, double toStarboardMm) {
        if (!Flotation.floats(condition)) {
            return Optional.empty();
        }
        Condition moved = condition.shifted(new Vector3D(0, -massG * toStarboardMm, 0));
        Equilibrium rest = Balance.settle(condition, Balance.upright(condition));
        return Optional.of(of(Balance.settle(moved, rest.plane()).plane().up()));
    }

    private static SteadyHeel of(Vector3D up) {
        return new SteadyHeel(Equilibrium.heelDeg(up), Equilibrium.trimDeg(up));
    }

    /** Lists her degree by degree until the righting moment is as great, and halves the last degree. */
    private static Optional<Trial> borne(Condition condition, Trial rest, double momentGmm) {
        double side = Math.signum(momentGmm);
        double from = Math.toRadians(Equilibrium.heelDeg(rest.plane().up()));
        Trial near = rest;
        for (int degree = 1; degree <= MOST_DEG; degree++) {
            Optional<Trial> next = HeldList.held(condition, from + side * Math.toRadians(degree), near);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            if (side * (momentGmm - rightingGmm(next.get())) <= 0) {
                return halved(condition, near, from + side * Math.toRadians(degree - 1), momentGmm);
            }
            near = next.get();
        }
        return Optional.empty();
    }

    private static Optional<Trial> halved(Condition condition, Trial start, double from, double momentGmm) {
        double side = Math.signum(momentGmm);
        double low = 0;
        double high = Math.toRadians(1);
        Optional<Trial> held = Optional.of(start);
        while (high - low > ANGLE && held.isPresent()) {
            double middle = 0.5 * (low + high);
            held = HeldList.held(condition, from + side * middle, held.get());
            if (held.isPresent() && side * (momentGmm - rightingGmm(held.get())) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return held;
    }

    private static double rightingGmm(Trial trial) {
        double sinTrim = trial.plane().up().getX();
        return trial.reducedSlopePort() * Math.sqrt(1 - sinTrim * sinTrim);
    }
}
