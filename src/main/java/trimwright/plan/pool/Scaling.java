package trimwright.plan.pool;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.BoxShape;
import trimwright.boat.Shape;

/** Boxes and bars made larger or smaller about their middle, and numbers as they are written into a file. */
final class Scaling {

    private Scaling() {}

    /**
     * @param shape a box or a round bar
     * @param volumeFactor how many times its volume; positive
     */
    static Shape of(Shape shape, double volumeFactor) {
        double factor = Math.cbrt(volumeFactor);
        if (shape instanceof BoxShape box) {
            return new BoxShape(about(box.fromMm(), box.toMm(), factor), about(box.toMm(), box.fromMm(), factor));
        }
        BarShape bar = (BarShape) shape;
        return new BarShape(
                about(bar.fromMm(), bar.toMm(), factor),
                about(bar.toMm(), bar.fromMm(), factor),
                bar.diameterMm() * factor,
                bar.ends());
    }

    static Shape rounded(Shape shape) {
        if (shape instanceof BoxShape box) {
            return new BoxShape(rounded(box.fromMm()), rounded(box.toMm()));
        }
        BarShape bar = (BarShape) shape;
        return new BarShape(rounded(bar.fromMm()), rounded(bar.toMm()), rounded(bar.diameterMm()), bar.ends());
    }

    static Vector3D rounded(Vector3D v) {
        return new Vector3D(rounded(v.getX()), rounded(v.getY()), rounded(v.getZ()));
    }

    static double rounded(double value) {
        return Math.rint(value * 100) / 100;
    }

    private static Vector3D about(Vector3D end, Vector3D other, double factor) {
        return new Vector3D(0.5 * (1 + factor), end, 0.5 * (1 - factor), other);
    }
}
