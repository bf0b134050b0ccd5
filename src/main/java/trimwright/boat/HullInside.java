package trimwright.boat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.Bounds;
import trimwright.mesh.Soundness;

/**
 * What the hulls of a boat enclose: sealed and skin hulls by their surfaces, several open ones together where they are closed
 * together. A surface with openings encloses what lies on the inner side of them: where its winding number is above ½,
 * which is the plane of a flat opening. Of a printed hull only the plastic is known, so that its box stands for it.
 */
final class HullInside {

    /** Points asked along each upright line where a surface is open. */
    private static final int POINTS = 16;

    private static final double INSIDE = 0.5;

    private final List<MeshShape> closed = new ArrayList<>();
    private final List<MeshShape> open = new ArrayList<>();
    private final List<Bounds> printed = new ArrayList<>();

    /** What the hulls of a boat enclose; those that stand in another part are none of her outside. */
    static HullInside of(Boat boat) {
        HullInside hull = new HullInside();
        for (Part part : boat.parts()) {
            if (part.build().isPresent() && part.inside().isEmpty()) {
                MeshShape shape = (MeshShape) part.shape().orElseThrow();
                hull.add(part.build().get(), shape);
                if (part.mirror()) {
                    hull.add(part.build().get(), shape.mirrored());
                }
            }
        }
        return hull;
    }

    /** Whether a part of it is an open surface, which takes long to ask. */
    boolean isOpen() {
        return !open.isEmpty();
    }

    private void add(HullBuild build, MeshShape shape) {
        if (build instanceof HullBuild.Printed) {
            printed.add(shape.bounds());
        } else if (Soundness.quick(shape.mesh()).closed()) {
            closed.add(shape);
        } else {
            open.add(shape);
        }
    }

    boolean isEmpty() {
        return closed.isEmpty() && open.isEmpty() && printed.isEmpty();
    }

    /** The volume of a shape that lies outside. */
    SampledVolume outside(Shape shape) {
        int columns = open.isEmpty() ? SampledVolume.FINE : SampledVolume.COARSE;
        return SampledVolume.sum(
                shape.bounds(),
                columns,
                (x, y) -> outside(shape.chords(x, y), x, y).lengthMm());
    }

    /** What of the stretches of the upright line through (x, y) lies outside. */
    Chords outside(Chords chords, double x, double y) {
        if (chords.count() == 0) {
            return chords;
        }
        Chords left = chords;
        for (Bounds box : printed) {
            if (x >= box.minX() && x <= box.maxX() && y >= box.minY() && y <= box.maxY()) {
                left = left.without(Chords.between(box.minZ(), box.maxZ()));
            }
        }
        for (MeshShape surface : closed) {
            left = left.without(surface.chords(x, y));
        }
        return open.isEmpty() ? left : outsideOpen(left, x, y);
    }

    private Chords outsideOpen(Chords chords, double x, double y) {
        Chords left = chords;
        for (int i = 0; i < chords.count(); i++) {
            double step = (chords.highMm(i) - chords.lowMm(i)) / POINTS;
            for (int k = 0; k < POINTS; k++) {
                double low = chords.lowMm(i) + k * step;
                if (winding(x, y, low + step / 2) > INSIDE) {
                    left = left.without(Chords.between(low, low + step));
                }
            }
        }
        return left;
    }

    private double winding(double x, double y, double z) {
        Vector3D point = new Vector3D(x, y, z);
        double sum = 0;
        for (MeshShape surface : open) {
            sum += surface.tree().windingNumber(point);
        }
        return sum;
    }
}
