package trimwright.boat;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Displacer;
import trimwright.immersion.MeshSolid;
import trimwright.mesh.Bounds;
import trimwright.mesh.Solids;

/**
 * A box parallel to the axes.
 *
 * @param fromMm one corner
 * @param toMm the opposite corner; differs from {@code fromMm} in every coordinate
 */
public record BoxShape(Vector3D fromMm, Vector3D toMm) implements Shape {

    @Override
    public Displacer solid() {
        return MeshSolid.of(
                Solids.box(fromMm.getX(), fromMm.getY(), fromMm.getZ(), toMm.getX(), toMm.getY(), toMm.getZ()));
    }

    @Override
    public BoxShape mirrored() {
        return new BoxShape(Shape.mirrored(fromMm), Shape.mirrored(toMm));
    }

    @Override
    public Bounds bounds() {
        return Bounds.of(
                new double[] {fromMm.getX(), fromMm.getY(), fromMm.getZ(), toMm.getX(), toMm.getY(), toMm.getZ()});
    }

    @Override
    public Chords chords(double xMm, double yMm) {
        Bounds box = bounds();
        boolean meets = xMm >= box.minX() && xMm <= box.maxX() && yMm >= box.minY() && yMm <= box.maxY();
        return meets ? Chords.between(box.minZ(), box.maxZ()) : Chords.NONE;
    }
}
