package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.Targets;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.statics.ResidualWanted;

/**
 * What a plan aims at, with nothing left open.
 *
 * @param bgMm least BG dived with the tanks full
 * @param gmMm least transverse GM surfaced
 * @param residualG band of buoyancy left dived; without meaning for a boat without tanks
 * @param offLineMm how far bow and stern may lie off the painted line
 * @param listDeg how far she may list surfaced
 * @param divedTrimDeg how far she may trim, and list, dived
 */
public record Wanted(
        double bgMm, double gmMm, Targets.Band residualG, double offLineMm, double listDeg, double divedTrimDeg) {

    private static final double BG_MM = 5;
    private static final double GM_MM = 5;
    private static final double OFF_LINE_MM = 1;
    private static final double LIST_DEG = 0.5;
    private static final double DIVED_TRIM_DEG = 2;

    /**
     * Fills what the builder left open with values of our own: BG and GM 5 mm, residual 0.5…1.5 % of her weight, 1 mm off the line, 0.5° of
     * list, 2° of trim and list dived (common practice, no source).
     *
     * @param massG what she weighs about, for the residual
     */
    public static Wanted of(Targets targets, double massG) {
        return new Wanted(
                targets.bgMm().orElse(BG_MM),
                targets.gmMm().orElse(GM_MM),
                targets.residualG()
                        .orElse(new Targets.Band(
                                ResidualWanted.LEAST_SHARE * massG, ResidualWanted.GREATEST_SHARE * massG)),
                targets.offLineMm().orElse(OFF_LINE_MM),
                targets.listDeg().orElse(LIST_DEG),
                targets.divedTrimDeg().orElse(DIVED_TRIM_DEG));
    }

    Wanted withStability(double newBgMm, double newGmMm) {
        return new Wanted(newBgMm, newGmMm, residualG, offLineMm, listDeg, divedTrimDeg);
    }

    /**
     * The same with one aim eased.
     *
     * @param amount by how much, as a {@link Miss} tells it
     * @param lengthMm distance of the painted points, over which a trim is told
     */
    Wanted eased(Aim aim, double amount, double lengthMm) {
        double more = Math.abs(amount);
        Targets.Band band = amount > 0
                ? new Targets.Band(residualG.least(), residualG.greatest() + more)
                : new Targets.Band(residualG.least() - more, residualG.greatest());
        return switch (aim) {
            case LINE -> new Wanted(bgMm, gmMm, residualG, offLineMm + more, listDeg, divedTrimDeg);
            case TRIM -> eased(Aim.LINE, Math.tan(Math.toRadians(more)) * lengthMm / 2, lengthMm);
            case LIST -> new Wanted(bgMm, gmMm, residualG, offLineMm, listDeg + more, divedTrimDeg);
            case RESIDUAL -> new Wanted(bgMm, gmMm, band, offLineMm, listDeg, divedTrimDeg);
            case DIVED_TRIM, DIVED_LIST -> new Wanted(bgMm, gmMm, residualG, offLineMm, listDeg, divedTrimDeg + more);
            case BG -> withStability(Math.max(0, bgMm - more), gmMm);
            default -> withStability(bgMm, Math.max(0, gmMm - more));
        };
    }

    /** Values that no boat can meet, or that contradict each other. */
    List<Finding> contradictions() {
        List<Finding> findings = new ArrayList<>();
        check(findings, "residualG", residualG.least(), residualG.least() >= 0);
        if (residualG.least() > residualG.greatest()) {
            findings.add(Finding.of(
                    Code.AIM_BAND_REVERSED,
                    new Place.Whole(),
                    "aim",
                    "residualG",
                    "leastG",
                    residualG.least(),
                    "greatestG",
                    residualG.greatest()));
        }
        check(findings, "bgMm", bgMm, bgMm >= 0);
        check(findings, "gmMm", gmMm, gmMm >= 0);
        check(findings, "offLineMm", offLineMm, offLineMm > 0);
        check(findings, "listDeg", listDeg, listDeg > 0);
        check(findings, "divedTrimDeg", divedTrimDeg, divedTrimDeg > 0);
        return findings;
    }

    private static void check(List<Finding> findings, String aim, double found, boolean good) {
        if (!good || !Double.isFinite(found)) {
            findings.add(Finding.of(Code.AIM_OUT_OF_RANGE, new Place.Whole(), "aim", aim, "found", found));
        }
    }

    /** Middle of the residual band, g. */
    double middleResidualG() {
        return 0.5 * (residualG.least() + residualG.greatest());
    }
}
