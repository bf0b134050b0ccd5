package trimwright.statics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The boat wholly under water with her tanks full: she hangs with B straight above G, whatever the depth.
 *
 * @param up the world's up direction in the boat's frame
 * @param centreOfGravityMm G with the tanks full
 * @param centreOfBuoyancyMm B of everything
 * @param bgMm distance of B above G
 * @param residualG buoyancy less weight: positive, and something stays above water; negative, and she goes down
 */
public record Submerged(
        Vector3D up, Vector3D centreOfGravityMm, Vector3D centreOfBuoyancyMm, double bgMm, double residualG) {

    /** Share of the boat's length below which B and G count as one point and she keeps any attitude. */
    private static final double NOWHERE = 1e-12;

    /** The boat with her tanks full, whatever fills the condition states. */
    public static Submerged of(Condition condition) {
        double density = condition.densityGPerMm3();
        double mass = condition.dryMassG();
        Vector3D moment = condition.dryMomentGmm();
        for (TankWater tank : condition.tanks()) {
            mass += density * tank.roomMm3();
            moment = moment.add(density * tank.roomMm3(), tank.middleMm());
        }
        Vector3D g = mass > 0 ? moment.scalarMultiply(1 / mass) : Vector3D.ZERO;
        Vector3D b = condition.volumeCentroidMm();
        Vector3D lever = b.subtract(g);
        double bg = lever.getNorm();
        Vector3D up = bg > NOWHERE * condition.lengthMm() ? lever.scalarMultiply(1 / bg) : Vector3D.PLUS_K;
        return new Submerged(up, g, b, bg, density * condition.volumeMm3() - mass);
    }

    /** List in degrees: positive to starboard. */
    public double heelDeg() {
        return Equilibrium.heelDeg(up);
    }

    /** Trim in degrees: positive bow up. */
    public double trimDeg() {
        return Equilibrium.trimDeg(up);
    }
}
