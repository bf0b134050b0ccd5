package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Targets;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/**
 * What is worth telling about how a boat floats: targets that are missed, a weak stand, a loll. Surfaced figures are those of the fills at
 * hand; dived ones, with all tanks full, are looked at only where there are tanks.
 */
public final class FlotationFindings {

    /** Metacentric height, or height of B above G, below which a model is tender where no target says otherwise (common practice, no source). */
    private static final double SMALL_MM = 2;
    /** Lists and energies of two attitudes that mirror each other agree within this share of a degree, and of the boat's length. */
    private static final double MIRRORED_DEG = 0.05;

    private static final double MIRRORED_ENERGY = 1e-6;
    /** A list below this is no loll. */
    private static final double LEAST_LOLL_DEG = 0.1;
    /** Share of up along the boat's z axis below which she lies on her side. */
    private static final double ON_HER_SIDE = 0.5;

    private final Flotation flotation;
    private final Targets targets;
    private final List<Finding> findings = new ArrayList<>();

    private FlotationFindings(Flotation flotation) {
        this.flotation = flotation;
        this.targets = flotation.condition().boat().targets();
    }

    /** Empty when there is nothing to tell. */
    public static List<Finding> of(Flotation flotation) {
        FlotationFindings found = new FlotationFindings(flotation);
        flotation.settled().ifPresent(found::afloat);
        if (flotation.condition().tankVolumeMm3() > 0) {
            found.dived(flotation.submerged());
        }
        return List.copyOf(found.findings);
    }

    /** Only what there is to tell about her dived, with everything under water and the tanks full. */
    public static List<Finding> ofDived(Flotation flotation) {
        FlotationFindings found = new FlotationFindings(flotation);
        found.dived(flotation.submerged());
        return List.copyOf(found.findings);
    }

    /**
     * The angle at which she rests on either side, in degrees and positive, when she does not stay upright; empty when she does.
     */
    public static Optional<Double> lollDeg(Flotation flotation) {
        if (flotation.settled().isEmpty()) {
            return Optional.empty();
        }
        Equilibrium rest = flotation.settled().get();
        double energyTolerance = MIRRORED_ENERGY * flotation.condition().lengthMm();
        boolean twin = flotation.attitudes().stream()
                .anyMatch(other -> Math.abs(other.heelDeg() + rest.heelDeg()) < MIRRORED_DEG
                        && Math.abs(other.trimDeg() - rest.trimDeg()) < MIRRORED_DEG
                        && Math.abs(other.energyMm() - rest.energyMm()) < energyTolerance);
        double angle = Math.abs(rest.heelDeg());
        return twin && angle > LEAST_LOLL_DEG ? Optional.of(angle) : Optional.empty();
    }

    private void afloat(Equilibrium rest) {
        flotation.fromPaintedLine().ifPresent(this::againstPaint);
        double gm = rest.gmTransverseMm();
        if (targets.gmMm().isPresent()) {
            if (gm < targets.gmMm().get()) {
                tell(
                        Code.GM_BELOW_TARGET,
                        "gmMm",
                        gm,
                        "wantedMm",
                        targets.gmMm().get());
            }
        } else if (gm < SMALL_MM) {
            tell(Code.GM_SMALL, "gmMm", gm);
        }
        lollDeg(flotation).ifPresent(angle -> tell(Code.LOLLS, "angleDeg", angle));
        Equilibrium lowest = flotation.attitudes().get(0);
        if (lowest.energyMm()
                < rest.energyMm() - MIRRORED_ENERGY * flotation.condition().lengthMm()) {
            tell(Code.LOWER_ATTITUDE, "heelDeg", lowest.heelDeg(), "trimDeg", lowest.trimDeg());
        }
    }

    private void againstPaint(PaintedOffset off) {
        targets.offLineMm().ifPresent(allowed -> {
            if (Math.max(Math.abs(off.bowMm()), Math.abs(off.sternMm())) > allowed) {
                tell(Code.OFF_PAINTED_LINE, "bowOffMm", off.bowMm(), "sternOffMm", off.sternMm(), "allowedMm", allowed);
            }
        });
        targets.listDeg().ifPresent(allowed -> {
            if (Math.abs(off.listDeg()) > allowed) {
                tell(Code.LIST_BEYOND_TARGET, "listDeg", Math.abs(off.listDeg()), "allowedDeg", allowed);
            }
        });
    }

    private void dived(Submerged dived) {
        if (dived.up().getZ() < ON_HER_SIDE) {
            tell(Code.DIVED_TURNS_OVER, "heelDeg", dived.heelDeg(), "trimDeg", dived.trimDeg());
        } else if (targets.bgMm().isPresent()) {
            if (dived.bgMm() < targets.bgMm().get()) {
                tell(
                        Code.DIVED_BG_BELOW_TARGET,
                        "bgMm",
                        dived.bgMm(),
                        "wantedMm",
                        targets.bgMm().get());
            }
        } else if (dived.bgMm() < SMALL_MM) {
            tell(Code.DIVED_BG_SMALL, "bgMm", dived.bgMm());
        }
        targets.divedTrimDeg().ifPresent(allowed -> {
            if (Math.abs(dived.trimDeg()) > allowed) {
                tell(Code.DIVED_TRIM_BEYOND_TARGET, "trimDeg", dived.trimDeg(), "allowedDeg", allowed);
            }
        });
        if (dived.residualG() < 0) {
            tell(Code.DIVED_SINKS, "deficitG", -dived.residualG());
        }
        targets.residualG().ifPresent(band -> {
            if (dived.residualG() < band.least() || dived.residualG() > band.greatest()) {
                tell(
                        Code.DIVED_RESIDUAL_OFF_TARGET,
                        "residualG",
                        dived.residualG(),
                        "leastG",
                        band.least(),
                        "greatestG",
                        band.greatest());
            }
        });
    }

    private void tell(Code code, Object... namesAndValues) {
        findings.add(Finding.of(code, new Place.Whole(), namesAndValues));
    }
}
