package trimwright.statics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A fill at which the attitude that she held is stable no longer, and she goes over to another at once.
 *
 * @param fill water in all tanks as a share of their volume, 0…1
 * @param from up direction just before
 * @param to up direction in which she comes to rest
 */
public record FallsOver(double fill, Vector3D from, Vector3D to) {

    public double fromHeelDeg() {
        return Equilibrium.heelDeg(from);
    }

    public double toHeelDeg() {
        return Equilibrium.heelDeg(to);
    }

    public double fromTrimDeg() {
        return Equilibrium.trimDeg(from);
    }

    public double toTrimDeg() {
        return Equilibrium.trimDeg(to);
    }
}
