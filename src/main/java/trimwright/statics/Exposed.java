package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.Piece;
import trimwright.immersion.Displacer;
import trimwright.immersion.WaterPlane;

/** What meets the water from outside: hulls, and bodies whose middle lies in no hull. */
record Exposed(List<Displacer> bodies) {

    /** Winding number from which a point counts as inside. */
    private static final double INSIDE = 0.5;

    static Exposed of(Condition condition) {
        List<Displacer> bodies = new ArrayList<>();
        for (Piece piece : condition.pieces()) {
            if (piece.displacer().isPresent() && (piece.part().isHull() || !inAHull(condition, piece))) {
                bodies.add(piece.displacer().get());
            }
        }
        return new Exposed(bodies);
    }

    /** Whether the middle of a piece lies within the outer surface of a hull. */
    static boolean inAHull(Condition condition, Piece piece) {
        return condition.pieces().stream().anyMatch(hull -> isIn(hull, piece));
    }

    static boolean isIn(Piece hull, Piece piece) {
        return hull.surface().isPresent()
                && hull.surface().get().windingNumber(piece.body().orElseThrow().centroidMm()) > INSIDE;
    }

    double outlineMm(WaterPlane plane) {
        return bodies.stream().mapToDouble(body -> body.outlineMm(plane)).sum();
    }
}
