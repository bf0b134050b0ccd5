package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.BoxShape;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Shape;

/**
 * A piece of lead or foam of which a plan may take out a share. It is shortened toward its middle, so that its centre stays; its room is not used
 * for anything else.
 *
 * @param part the part, twins included
 * @param unknown the share taken out, 0…1
 */
record Removable(Part part, Unknown unknown) {

    /** Cost of taking out one gram, in grams added: little, but nothing is taken out for no gain. */
    private static final double COST_PER_G = 0.02;

    static List<Removable> of(List<Piece> pieces, Set<String> ids, PlanBasis basis) {
        List<Removable> result = new ArrayList<>();
        for (Piece piece : pieces) {
            Part part = piece.part();
            if (piece.twin() || !ids.contains(part.id())) {
                continue;
            }
            Influence all = Influence.NOTHING;
            for (Piece own : pieces) {
                if (own.part() == part) {
                    all = all.plus(Influence.ofPiece(own, basis.surfaced, basis.dived));
                }
            }
            result.add(new Removable(part, new Unknown(part.id(), all.times(-1), 1, COST_PER_G * all.massG() + 1e-3)));
        }
        return result;
    }

    /** The part with only a share of it left, 0 &lt; share &lt; 1. */
    static Part lessened(Part part, double share) {
        return part.withBody(
                part.shape().map(s -> shortened(s, share)),
                part.weighedMassG().map(m -> m * share),
                part.givenCentreMm());
    }

    /** Whether a part can be lessened: a box, a bar with flat ends, a compact piece. */
    static boolean canBeLessened(Part part) {
        Optional<Shape> shape = part.shape();
        return shape.isEmpty()
                || shape.get() instanceof BoxShape
                || shape.get() instanceof BarShape bar && bar.ends() == BarShape.Ends.FLAT;
    }

    private static Shape shortened(Shape shape, double share) {
        if (shape instanceof BoxShape box) {
            double middle = 0.5 * (box.fromMm().getX() + box.toMm().getX());
            return new BoxShape(towards(box.fromMm(), middle, share), towards(box.toMm(), middle, share));
        }
        if (shape instanceof BarShape bar && bar.ends() == BarShape.Ends.FLAT) {
            Vector3D middle = new Vector3D(0.5, bar.fromMm(), 0.5, bar.toMm());
            return new BarShape(
                    new Vector3D(share, bar.fromMm(), 1 - share, middle),
                    new Vector3D(share, bar.toMm(), 1 - share, middle),
                    bar.diameterMm(),
                    bar.ends());
        }
        throw new IllegalArgumentException("this shape cannot be shortened");
    }

    private static Vector3D towards(Vector3D corner, double middleX, double share) {
        return new Vector3D(middleX + share * (corner.getX() - middleX), corner.getY(), corner.getZ());
    }
}
