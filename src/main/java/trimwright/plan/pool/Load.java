package trimwright.plan.pool;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A mass laid on a boat, with its first moment about the origin.
 *
 * @param massG the mass; negative for lift
 * @param momentGmm mass times place
 */
record Load(double massG, Vector3D momentGmm) {

    static final Load NONE = new Load(0, Vector3D.ZERO);

    static Load at(double massG, Vector3D centreMm) {
        return new Load(massG, centreMm.scalarMultiply(massG));
    }

    Load negated() {
        return new Load(-massG, momentGmm.negate());
    }

    Load plus(Load other) {
        return new Load(massG + other.massG, momentGmm.add(other.momentGmm));
    }
}
