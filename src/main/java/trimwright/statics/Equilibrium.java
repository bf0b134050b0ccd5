package trimwright.statics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * An attitude at rest, and how firmly she keeps it.
 *
 * @param plane the water surface in the boat's frame
 * @param sums what is immersed
 * @param massG mass with tank water
 * @param centreOfGravityMm G, with the tank water as it lies
 * @param centreOfBuoyancyMm B
 * @param gmTransverseMm metacentric height about the boat's x axis laid level, free surfaces included
 * @param gmLongitudinalMm metacentric height about the level axis across it
 * @param gmLeastMm the smaller principal metacentric height, about whatever level axis
 * @param energyMm potential height e = up · (G − B); the lowest attitude has the least
 * @param residualForceG buoyancy less weight that the solver left
 * @param residualMomentGmm moment that the solver left
 * @param cuts water planes tried until it was found
 */
public record Equilibrium(
        WaterPlane plane,
        Immersion sums,
        double massG,
        Vector3D centreOfGravityMm,
        Vector3D centreOfBuoyancyMm,
        double gmTransverseMm,
        double gmLongitudinalMm,
        double gmLeastMm,
        double energyMm,
        double residualForceG,
        double residualMomentGmm,
        int cuts) {

    static Equilibrium of(Trial trial, double gmLeastMm, int cuts) {
        double weight = trial.massG();
        return new Equilibrium(
                trial.plane(),
                trial.sums(),
                weight,
                trial.centreOfGravityMm(),
                trial.sums().centroidMm(),
                trial.reducedPort() / weight,
                trial.reducedAhead() / weight,
                gmLeastMm,
                trial.potentialHeightMm(),
                trial.force,
                Math.hypot(trial.slopeAhead, trial.slopePort),
                cuts);
    }

    /** Height of B above G, mm. */
    public double bgMm() {
        return -energyMm;
    }

    /** List in degrees: positive to starboard. */
    public double heelDeg() {
        return heelDeg(plane.up());
    }

    /** Trim in degrees: positive bow up. */
    public double trimDeg() {
        return trimDeg(plane.up());
    }

    /**
     * The up direction of an attitude.
     *
     * @param heelDeg positive to starboard
     * @param trimDeg positive bow up
     */
    public static Vector3D up(double heelDeg, double trimDeg) {
        double heel = Math.toRadians(heelDeg);
        double trim = Math.toRadians(trimDeg);
        return new Vector3D(Math.sin(trim), Math.cos(trim) * Math.sin(heel), Math.cos(trim) * Math.cos(heel));
    }

    /** List of an attitude in degrees: positive to starboard. */
    public static double heelDeg(Vector3D up) {
        return Math.toDegrees(Math.atan2(up.getY(), up.getZ()));
    }

    /** Trim of an attitude in degrees: positive bow up. */
    public static double trimDeg(Vector3D up) {
        return Math.toDegrees(Math.atan2(up.getX(), Math.hypot(up.getY(), up.getZ())));
    }
}
