package trimwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.MeshShape;
import trimwright.boat.Piece;
import trimwright.immersion.AxisClearance;
import trimwright.immersion.Column;
import trimwright.immersion.MeshTree;
import trimwright.mesh.Bounds;

/** How far lines along x lie from the inner surface of a boat's hulls. Confined to one thread. */
final class HullClearance {

    /** Columns run beside the centreline, where meshes have their edges. */
    private static final double BESIDE_MM = 1e-7;

    private final List<Hull> hulls = new ArrayList<>();
    private final Column column = new Column();
    /** Per hull, the point found last over the same length: the next one is seldom far from it. */
    private final Vector3D[] last;

    private double lastFrom;
    private double lastTo;

    private record Hull(String part, MeshTree tree, double shellMm, boolean enclosesMaterial) {}

    /** A point of the inner surface, how far it lies from the line, and the hull part it belongs to. */
    record Nearest(double distanceMm, Vector3D pointMm, String part) {}

    /** Inner surface under and over a place. */
    record Between(double bottomZMm, double topZMm) {}

    HullClearance(Boat boat) {
        for (Piece piece : boat.pieces()) {
            if (piece.part().build().isPresent()) {
                HullBuild build = piece.part().build().get();
                MeshTree tree = ((MeshShape) piece.shape().orElseThrow()).tree();
                hulls.add(new Hull(piece.part().id(), tree, build.shellMm(), build.enclosesMaterial()));
            }
        }
        last = new Vector3D[hulls.size()];
    }

    Bounds bounds() {
        return hulls.stream().map(h -> h.tree().bounds()).reduce(Bounds::union).orElseThrow();
    }

    /**
     * The nearest point to a cylinder's axis; infinitely far where no hull reaches over its length.
     *
     * @param round whether its ends are half balls
     */
    Nearest nearest(double from, double to, double y, double z, boolean round, double radius) {
        if (from != lastFrom || to != lastTo) {
            Arrays.fill(last, null);
            lastFrom = from;
            lastTo = to;
        }
        Nearest best = new Nearest(Double.POSITIVE_INFINITY, new Vector3D(from, y, z), "");
        for (int i = 0; i < hulls.size(); i++) {
            Hull hull = hulls.get(i);
            AxisClearance clearance = round
                    ? AxisClearance.round(hull.tree(), hull.shellMm(), from, to, radius)
                    : AxisClearance.flat(hull.tree(), hull.shellMm(), from, to);
            AxisClearance.Nearest own = clearance.nearest(y, z, last[i]);
            last[i] = Double.isFinite(own.distanceMm()) ? own.pointMm() : null;
            if (own.distanceMm() < best.distanceMm()) {
                best = new Nearest(own.distanceMm(), own.pointMm(), hull.part());
            }
        }
        return best;
    }

    /** Distance of a flat-ended stretch of a line; nothing is known of where the last point was. */
    double distanceMm(double from, double to, double y, double z) {
        double least = Double.POSITIVE_INFINITY;
        for (Hull hull : hulls) {
            least = Math.min(
                    least,
                    AxisClearance.flat(hull.tree(), hull.shellMm(), from, to)
                            .nearest(y, z)
                            .distanceMm());
        }
        return least;
    }

    /** Whether a flat-ended stretch of a line keeps a distance. */
    boolean keepsClear(double from, double to, double y, double z, double distanceMm) {
        for (Hull hull : hulls) {
            if (!AxisClearance.flat(hull.tree(), hull.shellMm(), from, to).keepsClear(y, z, distanceMm)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a bar with round ends keeps a distance, from tip to tip. */
    boolean keepsClearRound(double aftTip, double foreTip, double y, double z, double radius, double gap) {
        for (Hull hull : hulls) {
            if (!AxisClearance.round(hull.tree(), hull.shellMm(), aftTip, foreTip, radius)
                    .keepsClear(y, z, radius + gap)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a point lies in the hulls' inside. */
    boolean inside(double x, double y, double z) {
        for (Hull hull : hulls) {
            column.through(hull.tree(), x, y + BESIDE_MM);
            int below = 0;
            int depth = 0;
            for (int i = 0; i < column.count() && column.heightMm(i) < z; i++) {
                below++;
                depth += column.turn(i);
            }
            boolean between = below > 0 && below < column.count();
            if (hull.enclosesMaterial() ? between && depth == 0 : depth > 0) {
                return true;
            }
        }
        return false;
    }

    /** The inner surface under and over a point. */
    Between between(double x, double y, double z) {
        double bottom = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        for (Hull hull : hulls) {
            column.through(hull.tree(), x, y + BESIDE_MM);
            for (int k = 0; k < column.count(); k++) {
                double height = column.heightMm(k);
                if (height < z) {
                    bottom = Math.max(bottom, height + hull.shellMm());
                } else {
                    top = Math.min(top, height - hull.shellMm());
                }
            }
        }
        return new Between(bottom, top);
    }
}
