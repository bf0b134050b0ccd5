package trimwright.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import trimwright.boat.Piece;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.TankLoad;

/**
 * The two wanted attitudes, the boat as she is in them, and how stiff she is there: everything that is known before a plan is solved.
 *
 * <p>Surfaced she lies on the painted plane; dived she lies level on the plane above which the wanted residual stands. Both planes are known before
 * anything is added, because what is added goes wholly below the second one.
 */
final class PlanBasis {

    final Condition condition;
    final Wanted wanted;
    final WaterPlane surfaced;
    final WaterPlane dived;
    /** The boat as she is, without what a plan may take out. */
    final Influence boat;

    final double density;
    /** Surfaced waterplane: area mm², second moments mm⁴ about its own centroid, free surfaces of the tanks as they are taken off. */
    final double waterplaneMm2;

    final double inertiaAheadMm4;
    final double inertiaPortMm4;
    final boolean dives;

    private PlanBasis(
            Condition condition, Wanted wanted, WaterPlane surfaced, WaterPlane dived, Predicate<Piece> stays) {
        this.condition = condition;
        this.wanted = wanted;
        this.surfaced = surfaced;
        this.dived = dived;
        density = condition.densityGPerMm3();
        dives = condition.tankVolumeMm3() > 0;
        Immersion below = condition.below(surfaced);
        waterplaneMm2 = below.waterplaneMm2();
        TankLoad now = condition.tankLoad(surfaced);
        TankLoad full = condition.withAllTanksAt(1).tankLoad(surfaced);
        inertiaAheadMm4 = below.inertiaAheadMm4() - now.inertiaAheadMm4();
        inertiaPortMm4 = below.inertiaPortMm4() - now.inertiaPortMm4();
        Influence sum = Influence.NOTHING;
        for (Piece piece : condition.pieces()) {
            if (stays.test(piece)) {
                sum = sum.plus(Influence.ofPiece(piece, surfaced, dived));
            }
        }
        sum = sum.plus(Influence.ofLoad(now.massG(), now.momentGmm()));
        sum = sum.plus(Influence.ofTankWater(
                full.massG() - now.massG(), full.momentGmm().subtract(now.momentGmm())));
        boat = sum;
    }

    /**
     * @param surfaced the plane she is to lie on
     * @param stays which pieces the plan leaves as they are
     */
    static PlanBasis of(Condition condition, Wanted wanted, WaterPlane surfaced, Predicate<Piece> stays) {
        return new PlanBasis(condition, wanted, surfaced, divedPlane(condition, wanted), stays);
    }

    /** The level plane above which the wanted residual stands. */
    private static WaterPlane divedPlane(Condition condition, Wanted wanted) {
        double above = wanted.middleResidualG() / condition.densityGPerMm3();
        double under = condition.volumeMm3() - above;
        return condition.planeAbove(under, WaterPlane.level(0));
    }

    /** Volume standing above a plane by part, mm³, the largest first. */
    Map<String, Double> standingAboveMm3(WaterPlane plane) {
        Map<String, Double> result = new LinkedHashMap<>();
        for (Piece piece : condition.pieces()) {
            if (piece.displacer().isPresent()) {
                Displacer body = piece.displacer().get();
                double above = body.volumeMm3()
                        - Immersion.below(plane, body.centroidMm()).add(body).volumeMm3();
                result.merge(piece.part().id(), above, Double::sum);
            }
        }
        return result;
    }
}
