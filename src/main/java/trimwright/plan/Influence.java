package trimwright.plan;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Piece;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * What something weighs and displaces in the states that a plan looks at, as sums that add up and scale: for the boat as she is, for one gram of lead
 * in a place, for one mm³ of foam. First moments are about the origin, g·mm and mm⁴.
 *
 * @param massG mass without tank water
 * @param massMoment its first moment
 * @param tankG mass of the water that is in the tanks when dived, beyond what is there surfaced
 * @param tankMoment its first moment
 * @param surfacedMm3 volume below the painted line
 * @param surfacedMoment its first moment
 * @param divedMm3 volume below the plane on which she is to lie dived
 * @param divedMoment its first moment
 * @param wholeMm3 volume of everything
 * @param wholeMoment its first moment
 */
record Influence(
        double massG,
        Vector3D massMoment,
        double tankG,
        Vector3D tankMoment,
        double surfacedMm3,
        Vector3D surfacedMoment,
        double divedMm3,
        Vector3D divedMoment,
        double wholeMm3,
        Vector3D wholeMoment) {

    static final Influence NOTHING =
            new Influence(0, Vector3D.ZERO, 0, Vector3D.ZERO, 0, Vector3D.ZERO, 0, Vector3D.ZERO, 0, Vector3D.ZERO);

    /** A mass that displaces nothing. */
    static Influence ofMass(double massG, Vector3D centre) {
        return ofLoad(massG, centre.scalarMultiply(massG));
    }

    /** A mass that displaces nothing, given by its first moment. */
    static Influence ofLoad(double massG, Vector3D moment) {
        return new Influence(massG, moment, 0, Vector3D.ZERO, 0, Vector3D.ZERO, 0, Vector3D.ZERO, 0, Vector3D.ZERO);
    }

    /** Tank water that is there only dived. */
    static Influence ofTankWater(double massG, Vector3D moment) {
        return new Influence(0, Vector3D.ZERO, massG, moment, 0, Vector3D.ZERO, 0, Vector3D.ZERO, 0, Vector3D.ZERO);
    }

    /** A body that displaces and weighs nothing. */
    static Influence ofBody(Displacer body, WaterPlane surfaced, WaterPlane dived) {
        Immersion below = Immersion.below(surfaced, body.centroidMm()).add(body);
        Immersion belowDived = Immersion.below(dived, body.centroidMm()).add(body);
        return new Influence(
                0,
                Vector3D.ZERO,
                0,
                Vector3D.ZERO,
                below.volumeMm3(),
                below.centroidMm().scalarMultiply(below.volumeMm3()),
                belowDived.volumeMm3(),
                belowDived.centroidMm().scalarMultiply(belowDived.volumeMm3()),
                body.volumeMm3(),
                body.centroidMm().scalarMultiply(body.volumeMm3()));
    }

    /** A piece of the boat as it stands. */
    static Influence ofPiece(Piece piece, WaterPlane surfaced, WaterPlane dived) {
        Influence mass = ofMass(piece.massG(), piece.centreMm());
        return piece.displacer().map(d -> mass.plus(ofBody(d, surfaced, dived))).orElse(mass);
    }

    /** One of this material filling a body, per mm³ of the body. */
    static Influence perMm3(Displacer body, double densityGPerMm3, WaterPlane surfaced, WaterPlane dived) {
        double volume = body.volumeMm3();
        return ofBody(body, surfaced, dived)
                .plus(ofMass(densityGPerMm3 * volume, body.centroidMm()))
                .times(1 / volume);
    }

    Influence plus(Influence o) {
        return new Influence(
                massG + o.massG,
                massMoment.add(o.massMoment),
                tankG + o.tankG,
                tankMoment.add(o.tankMoment),
                surfacedMm3 + o.surfacedMm3,
                surfacedMoment.add(o.surfacedMoment),
                divedMm3 + o.divedMm3,
                divedMoment.add(o.divedMoment),
                wholeMm3 + o.wholeMm3,
                wholeMoment.add(o.wholeMoment));
    }

    Influence times(double factor) {
        return new Influence(
                factor * massG,
                massMoment.scalarMultiply(factor),
                factor * tankG,
                tankMoment.scalarMultiply(factor),
                factor * surfacedMm3,
                surfacedMoment.scalarMultiply(factor),
                factor * divedMm3,
                divedMoment.scalarMultiply(factor),
                factor * wholeMm3,
                wholeMoment.scalarMultiply(factor));
    }

    /** What moving it by {@code shift} adds, as long as nothing of it crosses either plane. */
    Influence whenMoved(Vector3D shift) {
        return new Influence(
                0,
                shift.scalarMultiply(massG),
                0,
                shift.scalarMultiply(tankG),
                0,
                shift.scalarMultiply(surfacedMm3),
                0,
                shift.scalarMultiply(divedMm3),
                0,
                shift.scalarMultiply(wholeMm3));
    }
}
