package trimwright.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;

/**
 * How far a part can be moved along the boat before the box around it meets the hull or another part.
 *
 * @param aheadMm toward the bow
 * @param asternMm toward the stern
 */
record SlideRoom(double aheadMm, double asternMm) {

    static final SlideRoom NONE = new SlideRoom(0, 0);

    private static final double STEP_MM = 1;
    private static final int COLUMNS_ACROSS = 8;
    /** How much of its height may be taken up where it moves to: parts lie snug in hulls that are not quite straight. */
    private static final double SNUG_MM = 0.2;

    /** Looks ahead and astern of a part and its twin; nothing where no hull is around them that would stop them. */
    static SlideRoom of(List<Piece> pieces, Part part) {
        FreeSpace space = FreeSpace.of(pieces, part.inside(), Set.of(part.id()));
        double ahead = Double.POSITIVE_INFINITY;
        double astern = Double.POSITIVE_INFINITY;
        for (Piece piece : pieces) {
            Optional<Shape> body = piece.part().id().equals(part.id()) ? FreeSpace.body(piece) : Optional.empty();
            if (body.isPresent() && space.insideKnown()) {
                ahead = Math.min(ahead, reach(space, body.get().bounds(), 1));
                astern = Math.min(astern, reach(space, body.get().bounds(), -1));
            }
        }
        return Double.isInfinite(ahead) ? NONE : new SlideRoom(ahead, astern);
    }

    private static double reach(FreeSpace space, Bounds box, int way) {
        double end = way > 0 ? box.maxX() : box.minX();
        double free = 0;
        while (isFree(space, box, end + way * (free + STEP_MM / 2))) {
            free += STEP_MM;
        }
        return free;
    }

    private static boolean isFree(FreeSpace space, Bounds box, double x) {
        for (int j = 0; j < COLUMNS_ACROSS; j++) {
            double y = box.minY() + box.sizeY() * (j + 0.5) / COLUMNS_ACROSS;
            Stretches column = space.column(x, y, box.minZ(), box.maxZ());
            double free = 0;
            for (int k = 0; k < column.count(); k++) {
                free += column.high(k) - column.low(k);
            }
            if (free < box.sizeZ() - SNUG_MM) {
                return false;
            }
        }
        return true;
    }
}
