package trimwright.desktop.tank3d;

import javafx.geometry.Point3D;
import javafx.scene.transform.Affine;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * How the boat stands in the pool: which way is up in her frame, and how high her middle lies over the water.
 *
 * @param up the world's up direction in the boat's frame, of unit length
 * @param middleAboveMm height of her middle over the surface
 */
record Stance(Vector3D up, double middleAboveMm) {

    static Stance of(WaterPlane water, Vector3D middleMm) {
        return new Stance(water.up(), water.up().dotProduct(middleMm) - water.heightMm());
    }

    /** On the way to another, from 0 to 1, turning the shortest way. */
    Stance toward(Stance other, double share) {
        double height = middleAboveMm + share * (other.middleAboveMm - middleAboveMm);
        double angle = Vector3D.angle(up, other.up);
        if (angle < 1e-9) {
            return new Stance(other.up, height);
        }
        if (angle > Math.PI - 1e-6) {
            // Right over: any way is the shortest.
            return share < 0.5 ? new Stance(up, height) : new Stance(other.up, height);
        }
        Vector3D between = new Vector3D(
                Math.sin((1 - share) * angle) / Math.sin(angle),
                up,
                Math.sin(share * angle) / Math.sin(angle),
                other.up);
        return new Stance(between.normalize(), height);
    }

    boolean isNear(Stance other, double lengthMm) {
        return Vector3D.angle(up, other.up) < 1e-5 && Math.abs(middleAboveMm - other.middleAboveMm) < 1e-5 * lengthMm;
    }

    /** From mm about the boat's middle in her frame to the scene: x to the right, y down, z away. */
    Affine toScene() {
        WaterPlane plane = WaterPlane.of(up, 0);
        Vector3D x = plane.ahead();
        Vector3D away = plane.port();
        return new Affine(
                x.getX(),
                x.getY(),
                x.getZ(),
                0,
                -up.getX(),
                -up.getY(),
                -up.getZ(),
                -middleAboveMm,
                away.getX(),
                away.getY(),
                away.getZ(),
                0);
    }

    /** From the scene back to mm about the boat's middle: the turn is undone by its mirror at the diagonal. */
    Affine toBoat() {
        Affine to = toScene();
        double down = -middleAboveMm;
        return new Affine(
                to.getMxx(),
                to.getMyx(),
                to.getMzx(),
                -to.getMyx() * down,
                to.getMxy(),
                to.getMyy(),
                to.getMzy(),
                -to.getMyy() * down,
                to.getMxz(),
                to.getMyz(),
                to.getMzz(),
                -to.getMyz() * down);
    }

    /** Where a point of the boat, about her middle, lands in the scene. */
    Point3D scene(Vector3D aboutMiddle) {
        return toScene().transform(aboutMiddle.getX(), aboutMiddle.getY(), aboutMiddle.getZ());
    }
}
