package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Shape;

/** A boat with a cylinder or tank, and all that stands in it, moved along. */
public final class Shifted {

    private static final int FIRST_TRIES = 9;
    private static final int HALVINGS = 6;

    private Shifted() {}

    /** Which part is shifted, how far, and the boat then. */
    public record Best(String id, double shiftMm, Boat boat) {}

    /** Whether a part can be moved: a cylinder or tank that is a box or a bar. */
    public static boolean canMove(Part part) {
        return (part.kind() == Kind.CYLINDER || part.kind() == Kind.TANK)
                && part.shape()
                        .filter(s -> s instanceof BoxShape || s instanceof BarShape)
                        .isPresent();
    }

    /**
     * The shift within limits whose plan adds the least mass, or, where that is what is striven for, stands firmest. What a cylinder displaces at the
     * line is not linear in its place, so places are tried: first spread over the whole range, then around the best.
     *
     * @param fromMm least shift, positive forward
     * @param toMm greatest shift
     * @return the best shift; empty where none has a plan, or where it would run into something or stick out
     */
    public static Optional<Best> best(PlanRequest request, String id, double fromMm, double toMm) {
        double bestShift = Double.NaN;
        double leastCost = Double.POSITIVE_INFINITY;
        double step = (toMm - fromMm) / (FIRST_TRIES - 1);
        for (int i = 0; i < FIRST_TRIES; i++) {
            double shift = fromMm + i * step;
            double cost = cost(request, id, shift);
            if (cost < leastCost && fits(request.boat(), id, shift)) {
                leastCost = cost;
                bestShift = shift;
            }
        }
        if (Double.isNaN(bestShift)) {
            return Optional.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            step /= 2;
            for (double shift : new double[] {bestShift - step, bestShift + step}) {
                double cost = shift < fromMm || shift > toMm ? Double.POSITIVE_INFINITY : cost(request, id, shift);
                if (cost < leastCost && fits(request.boat(), id, shift)) {
                    leastCost = cost;
                    bestShift = shift;
                }
            }
        }
        double rounded = Math.rint(bestShift);
        boolean mayBeRounded = rounded >= fromMm
                && rounded <= toMm
                && Double.isFinite(cost(request, id, rounded))
                && fits(request.boat(), id, rounded);
        double chosen = mayBeRounded ? rounded : bestShift;
        return Optional.of(new Best(id, chosen, along(request.boat(), id, chosen)));
    }

    private static boolean fits(Boat boat, String id, double shiftMm) {
        return PlanCheck.moved(boat, along(boat, id, shiftMm)).isEmpty();
    }

    private static double cost(PlanRequest request, String id, double shiftMm) {
        CellProgramme.Outline outline = CellProgramme.of(request.withBoat(along(request.boat(), id, shiftMm)))
                .outline();
        if (!outline.meetsAll()) {
            return Double.POSITIVE_INFINITY;
        }
        return request.goal().firmest() ? -outline.firmnessMm() : outline.addedG();
    }

    /** The boat with a part and everything inside it moved along x. */
    public static Boat along(Boat boat, String id, double shiftMm) {
        Vector3D shift = new Vector3D(shiftMm, 0, 0);
        List<Part> parts = new ArrayList<>();
        for (Part part : boat.parts()) {
            parts.add(standsIn(boat, part, id) ? moved(part, shift) : part);
        }
        return boat.withParts(parts);
    }

    /** The parts that such a move changes. */
    public static List<Part> changed(Boat before, Boat after) {
        return after.parts().stream().filter(p -> !before.parts().contains(p)).toList();
    }

    private static boolean standsIn(Boat boat, Part part, String id) {
        return part.id().equals(id)
                || part.inside()
                        .flatMap(boat::part)
                        .filter(p -> standsIn(boat, p, id))
                        .isPresent();
    }

    private static Part moved(Part part, Vector3D shift) {
        return part.withBody(
                part.shape().map(s -> moved(s, shift)),
                part.weighedMassG(),
                part.givenCentreMm().map(c -> c.add(shift)));
    }

    private static Shape moved(Shape shape, Vector3D shift) {
        if (shape instanceof BoxShape box) {
            return new BoxShape(box.fromMm().add(shift), box.toMm().add(shift));
        }
        if (shape instanceof BarShape bar) {
            return new BarShape(bar.fromMm().add(shift), bar.toMm().add(shift), bar.diameterMm(), bar.ends());
        }
        throw new IllegalArgumentException("a mesh cannot be moved by a plan");
    }
}
