package trimwright.boat;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Displacer;
import trimwright.mesh.Bounds;

/** The shape of a part in the boat's frame, mm. */
public sealed interface Shape permits BoxShape, BarShape, MeshShape {

    /** The body that this shape displaces when it is solid, mm³. */
    Displacer solid();

    /** The mirror image at y = 0. */
    Shape mirrored();

    Bounds bounds();

    /** Where the upright line through (x, y) runs through the solid. */
    Chords chords(double xMm, double yMm);

    /** Whether a point lies in the solid; one on its surface may count either way. */
    default boolean holds(Vector3D p) {
        Chords chords = chords(p.getX(), p.getY());
        for (int i = 0; i < chords.count(); i++) {
            if (p.getZ() >= chords.lowMm(i) && p.getZ() <= chords.highMm(i)) {
                return true;
            }
        }
        return false;
    }

    /** {@code v} mirrored at y = 0. */
    static Vector3D mirrored(Vector3D v) {
        return new Vector3D(v.getX(), -v.getY(), v.getZ());
    }
}
