package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;

/** Holds a floated boat against what was wanted. */
final class Verdict {

    private Verdict() {}

    /** The aims that the boat as floated misses, each by how much; empty when she does all that was wanted. */
    static List<Miss> misses(PlanRequest request, Flotation surfaced, Optional<Flotation> dived) {
        List<Miss> misses = new ArrayList<>();
        Wanted w = request.wanted();
        if (surfaced.settled().isEmpty()) {
            misses.add(new Miss(Aim.LINE, sunkMm(request, surfaced) - w.offLineMm()));
            return misses;
        }
        Equilibrium afloat = surfaced.settled().get();
        PaintedOffset off = request.offset(afloat.plane());
        double worst = Math.abs(off.bowMm()) > Math.abs(off.sternMm()) ? off.bowMm() : off.sternMm();
        beyond(misses, Aim.LINE, worst, w.offLineMm());
        beyond(misses, Aim.LIST, off.listDeg(), w.listDeg());
        below(misses, Aim.GM, afloat.gmTransverseMm(), w.gmMm());
        if (dived.isEmpty()) {
            return misses;
        }
        double residual = surfaced.submerged().residualG();
        if (residual < w.residualG().least()) {
            misses.add(new Miss(Aim.RESIDUAL, residual - w.residualG().least()));
        } else if (residual > w.residualG().greatest()) {
            misses.add(new Miss(Aim.RESIDUAL, residual - w.residualG().greatest()));
        }
        below(misses, Aim.BG, request.divedBgMm(surfaced), w.bgMm());
        beyond(misses, Aim.DIVED_TRIM, request.divedTrimOffDeg(dived.get()), w.divedTrimDeg());
        beyond(misses, Aim.DIVED_LIST, request.divedListOffDeg(dived.get()), w.divedTrimDeg());
        return misses;
    }

    /** How far her highest point lies above the line: a boat that sinks lies deeper than by this. */
    private static double sunkMm(PlanRequest request, Flotation surfaced) {
        return surfaced.condition().pieces().stream()
                        .flatMap(p -> p.displacer().stream())
                        .mapToDouble(d -> d.topMm(request.line().up()))
                        .max()
                        .orElseThrow()
                - request.line().heightMm();
    }

    private static void beyond(List<Miss> misses, Aim aim, double value, double most) {
        if (Math.abs(value) > most) {
            misses.add(new Miss(aim, value - Math.copySign(most, value)));
        }
    }

    private static void below(List<Miss> misses, Aim aim, double value, double least) {
        if (value < least) {
            misses.add(new Miss(aim, value - least));
        }
    }
}
