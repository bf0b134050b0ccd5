package trimwright.statics;

import trimwright.boat.Targets;

/**
 * The buoyancy that is wanted when she is dived with full tanks: what brings her up when nobody commands her.
 *
 * @param leastG least wanted
 * @param greatestG greatest wanted
 * @param stated whether the builder stated it; otherwise it is a share of her weight
 */
public record ResidualWanted(double leastG, double greatestG, boolean stated) {

    /** Shares of the weight with tanks empty where the builder states none (common practice, no source). */
    public static final double LEAST_SHARE = 0.005;

    public static final double GREATEST_SHARE = 0.015;

    public static ResidualWanted of(Condition condition) {
        double weight = condition.dryMassG();
        Targets.Band band = condition
                .boat()
                .targets()
                .residualG()
                .orElse(new Targets.Band(LEAST_SHARE * weight, GREATEST_SHARE * weight));
        return new ResidualWanted(
                band.least(),
                band.greatest(),
                condition.boat().targets().residualG().isPresent());
    }

    public double middleG() {
        return 0.5 * (leastG + greatestG);
    }
}
