package trimwright.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
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
    /** The points of the line at the bow and at the stern between which a trim is told. */
    final Vector3D foreMm;

    final Vector3D aftMm;
    final WaterPlane surfaced;
    final WaterPlane dived;
    /** The boat as she is. */
    final Influence boat;

    final double density;
    /** Centroid of the surfaced waterplane. */
    final Vector3D surfacedCentre;
    /** Surfaced waterplane, mm². */
    final double waterplaneMm2;
    /** Second moments about its own centroid less the free surfaces in the tanks, mm⁴. */
    final double inertiaAheadMm4;

    final double inertiaPortMm4;
    final boolean dives;

    private final PlanRequest request;

    private PlanBasis(Condition condition, PlanRequest request, WaterPlane dived, Influence boat) {
        this.condition = condition;
        this.request = request;
        wanted = request.wanted();
        foreMm = request.foreMm();
        aftMm = request.aftMm();
        surfaced = request.line();
        this.dived = dived;
        this.boat = boat;
        density = condition.densityGPerMm3();
        dives = condition.tankVolumeMm3() > 0;
        Immersion below = condition.below(surfaced);
        TankLoad now = condition.tankLoad(surfaced);
        surfacedCentre = below.centreOfFlotationMm();
        waterplaneMm2 = below.waterplaneMm2();
        inertiaAheadMm4 = below.inertiaAheadMm4() - now.inertiaAheadMm4();
        inertiaPortMm4 = below.inertiaPortMm4() - now.inertiaPortMm4();
    }

    /** @param condition the boat of the request */
    static PlanBasis of(Condition condition, PlanRequest request) {
        WaterPlane surfaced = request.line();
        WaterPlane dived = divedPlane(condition, request);
        TankLoad now = condition.tankLoad(surfaced);
        TankLoad full = condition.withAllTanksAt(1).tankLoad(surfaced);
        Influence sum = Influence.ofLoad(now.massG(), now.momentGmm())
                .plus(Influence.ofTankWater(
                        full.massG() - now.massG(), full.momentGmm().subtract(now.momentGmm())));
        for (Piece piece : condition.pieces()) {
            sum = sum.plus(Influence.ofPiece(piece, surfaced, dived));
        }
        return new PlanBasis(condition, request, dived, sum);
    }

    /** The same attitudes with other things on board. */
    PlanBasis with(Influence other) {
        return new PlanBasis(condition, request, dived, other);
    }

    /** One mm³ of a material filling a body; in a watertight part it weighs and displaces nothing. */
    Influence perMm3(Displacer body, Optional<String> inside, double densityGPerMm3) {
        return inside.isPresent()
                ? Influence.ofMass(densityGPerMm3, body.centroidMm())
                : Influence.perMm3(body, densityGPerMm3, surfaced, dived);
    }

    /** The plane above which the wanted residual stands, level unless she is to lie otherwise. */
    private static WaterPlane divedPlane(Condition condition, PlanRequest request) {
        double above = request.wanted().middleResidualG() / condition.densityGPerMm3();
        double under = condition.volumeMm3() - above;
        return condition.planeAbove(under, WaterPlane.of(request.divedUp().orElse(Vector3D.PLUS_K), 0));
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
