package trimwright.statics;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.MeshShape;
import trimwright.boat.Piece;
import trimwright.boat.Shape;

/**
 * The starboard deck edge of a boat: of all points of her hulls that lie further out than half her half breadth, the one that reaches
 * furthest up and outboard together (greatest z − y). On a hull with a flat deck that is its edge, on a round one the shoulder at 45°; a tower
 * does not count, being narrower than that.
 */
final class DeckEdge {

    private DeckEdge() {}

    /** Empty for a boat without a hull. */
    static Optional<Vector3D> of(Condition condition) {
        double outermost = 0;
        for (Piece piece : condition.pieces()) {
            if (piece.surface().isPresent()) {
                outermost = Math.min(outermost, piece.surface().get().bounds().minY());
            }
        }
        Vector3D best = null;
        for (Piece piece : condition.pieces()) {
            if (piece.surface().isPresent()) {
                best = further(best, mesh(piece), 0.5 * outermost);
            }
        }
        return Optional.ofNullable(best);
    }

    private static MeshShape mesh(Piece piece) {
        Shape shape = piece.part().shape().orElseThrow();
        return (MeshShape) (piece.twin() ? shape.mirrored() : shape);
    }

    private static Vector3D further(Vector3D known, MeshShape shape, double leastOutY) {
        double[] xyz = shape.mesh().xyz();
        Vector3D best = known;
        for (int i = 0; i < xyz.length; i += 3) {
            boolean out = xyz[i + 1] <= leastOutY;
            if (out && (best == null || xyz[i + 2] - xyz[i + 1] > best.getZ() - best.getY())) {
                best = new Vector3D(xyz[i], xyz[i + 1], xyz[i + 2]);
            }
        }
        return best;
    }
}
