package trimwright.plan;

import trimwright.boat.Targets;

/**
 * What a plan aims at, with nothing left open.
 *
 * @param bgMm least BG dived with the tanks full
 * @param gmMm least transverse GM surfaced
 * @param residualG band of buoyancy left dived; without meaning for a boat without tanks
 * @param offLineMm how far bow and stern may lie off the painted line
 * @param listDeg how far she may list
 * @param divedTrimDeg how far she may trim dived
 */
public record Wanted(
        double bgMm, double gmMm, Targets.Band residualG, double offLineMm, double listDeg, double divedTrimDeg) {

    private static final double BG_MM = 5;
    private static final double GM_MM = 5;
    private static final double RESIDUAL_LEAST_SHARE = 0.005;
    private static final double RESIDUAL_GREATEST_SHARE = 0.015;
    private static final double OFF_LINE_MM = 1;
    private static final double LIST_DEG = 0.5;
    private static final double DIVED_TRIM_DEG = 2;

    /**
     * Fills what the builder left open with values of our own: BG and GM 5 mm, residual 0.5…1.5 % of her weight, 1 mm off the line, 0.5° of
     * list, 2° of trim dived (common practice, no source).
     *
     * @param massG what she weighs about, for the residual
     */
    public static Wanted of(Targets targets, double massG) {
        return new Wanted(
                targets.bgMm().orElse(BG_MM),
                targets.gmMm().orElse(GM_MM),
                targets.residualG()
                        .orElse(new Targets.Band(RESIDUAL_LEAST_SHARE * massG, RESIDUAL_GREATEST_SHARE * massG)),
                targets.offLineMm().orElse(OFF_LINE_MM),
                targets.listDeg().orElse(LIST_DEG),
                targets.divedTrimDeg().orElse(DIVED_TRIM_DEG));
    }

    /** The same with another least BG. */
    public Wanted withBgMm(double newBgMm) {
        return new Wanted(newBgMm, gmMm, residualG, offLineMm, listDeg, divedTrimDeg);
    }

    /** Middle of the residual band, g. */
    double middleResidualG() {
        return 0.5 * (residualG.least() + residualG.greatest());
    }
}
