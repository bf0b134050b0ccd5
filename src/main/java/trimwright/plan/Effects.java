package trimwright.plan;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What a weight or a body adds to each balance that a plan is held to: forces in g, moments in g·mm, each in the attitude that is wanted. Surfaced
 * moments are about the centre of flotation, dived ones about the middle of everything that displaces.
 */
final class Effects {

    private final PlanBasis basis;
    private final Vector3D divedCentre;

    Effects(PlanBasis basis) {
        this.basis = basis;
        divedCentre = basis.condition.volumeCentroidMm();
    }

    double force(Influence i) {
        return basis.density * i.surfacedMm3() - i.massG();
    }

    private Vector3D surfacedMoment(Influence i) {
        return i.surfacedMoment()
                .subtract(i.surfacedMm3(), basis.surfacedCentre)
                .scalarMultiply(basis.density)
                .subtract(i.massMoment().subtract(i.massG(), basis.surfacedCentre));
    }

    double trim(Influence i) {
        return basis.surfaced.ahead().dotProduct(surfacedMoment(i));
    }

    double list(Influence i) {
        return basis.surfaced.port().dotProduct(surfacedMoment(i));
    }

    double uprightingSurfaced(Influence i) {
        return basis.surfaced.up().dotProduct(surfacedMoment(i));
    }

    double residual(Influence i) {
        return basis.density * i.wholeMm3() - i.massG() - i.tankG();
    }

    private Vector3D wetMassMoment(Influence i) {
        return i.massMoment().add(i.tankMoment()).subtract(i.massG() + i.tankG(), divedCentre);
    }

    private Vector3D divedMoment(Influence i) {
        return i.divedMoment()
                .subtract(i.divedMm3(), divedCentre)
                .scalarMultiply(basis.density)
                .subtract(wetMassMoment(i));
    }

    double divedTrim(Influence i) {
        return basis.dived.ahead().dotProduct(divedMoment(i));
    }

    double divedList(Influence i) {
        return basis.dived.port().dotProduct(divedMoment(i));
    }

    double uprightingDived(Influence i) {
        Vector3D moment = i.wholeMoment()
                .subtract(i.wholeMm3(), divedCentre)
                .scalarMultiply(basis.density)
                .subtract(wetMassMoment(i));
        return basis.dived.up().dotProduct(moment);
    }
}
