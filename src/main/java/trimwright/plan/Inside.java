package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.HullBuild;
import trimwright.boat.MeshShape;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.immersion.Column;
import trimwright.immersion.MeshTree;
import trimwright.immersion.SkinColumn;
import trimwright.mesh.Soundness;

/**
 * The inside of the hulls of a boat along upright lines: between their outer surfaces, less their material. Confined to one thread.
 */
final class Inside {

    private final List<Hull> hulls = new ArrayList<>();
    private final Column column = new Column();
    private final Stretches found = new Stretches();
    private final boolean closed;

    /** One hull: its mesh, and the thickness of its shell or NaN where the mesh encloses the material itself. */
    private record Hull(MeshTree tree, double thicknessMm) {}

    Inside(List<Piece> pieces) {
        boolean allClosed = true;
        for (Piece piece : pieces) {
            if (piece.part().build().isEmpty()) {
                continue;
            }
            Shape shape = piece.part().shape().get();
            MeshShape mesh = (MeshShape) (piece.twin() ? shape.mirrored() : shape);
            HullBuild build = piece.part().build().get();
            double thickness = Double.NaN;
            if (build instanceof HullBuild.Skin skin) {
                thickness = skin.thicknessMm();
                allClosed &= Soundness.quick(mesh.mesh()).closed();
            } else if (build instanceof HullBuild.Sealed sealed) {
                thickness = sealed.thicknessMm().orElse(0.0);
            }
            hulls.add(new Hull(mesh.tree(), thickness));
        }
        closed = allClosed && !hulls.isEmpty();
    }

    /** Whether the hulls enclose a room; an open skin does not, and then only zones that the builder gave can be trusted. */
    boolean closed() {
        return closed;
    }

    /** Keeps of the free stretches what lies inside. */
    void keep(double xMm, double yMm, Stretches free) {
        if (closed) {
            found.clear();
            for (Hull hull : hulls) {
                addInside(hull, xMm, yMm);
            }
            double from = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < found.count(); i++) {
                free.remove(from, found.low(i));
                from = found.high(i);
            }
            free.remove(from, Double.POSITIVE_INFINITY);
        }
        for (Hull hull : hulls) {
            removeMaterial(hull, xMm, yMm, free);
        }
    }

    /** Between the outer surfaces: for a print, whose mesh also has inner surfaces, from its first to its last. */
    private void addInside(Hull hull, double x, double y) {
        column.through(hull.tree(), x, y);
        int count = column.count();
        if (count == 0) {
            return;
        }
        if (Double.isNaN(hull.thicknessMm())) {
            found.add(column.heightMm(0), column.heightMm(count - 1));
            return;
        }
        int depth = 0;
        for (int i = 0; i < count; i++) {
            if (depth > 0) {
                found.add(column.heightMm(i - 1), column.heightMm(i));
            }
            depth += column.turn(i);
        }
    }

    private void removeMaterial(Hull hull, double x, double y, Stretches free) {
        if (!Double.isNaN(hull.thicknessMm())) {
            if (hull.thicknessMm() > 0) {
                SkinColumn.through(hull.tree(), hull.thicknessMm(), x, y, free::remove);
            }
            return;
        }
        column.through(hull.tree(), x, y);
        int depth = 0;
        for (int i = 0; i < column.count(); i++) {
            if (depth > 0) {
                free.remove(column.heightMm(i - 1), column.heightMm(i));
            }
            depth += column.turn(i);
        }
    }
}
