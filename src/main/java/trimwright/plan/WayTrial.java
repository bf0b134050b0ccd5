package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Shape;

/**
 * Carries ways out out and plans again, pieces and all: what the first programme thinks just enough may not be, since pieces need a little more than
 * amounts spread over all cells.
 */
final class WayTrial {

    /** How much farther to go where a way is not enough for pieces, as a share. */
    private static final double[] FARTHER = {0, 0.1, 0.3, 0.7};

    /** Taking out less than this is nothing, g. */
    private static final double LEAST_TAKEN_G = 0.05;

    /** Share of a wanted BG or GM that is little. */
    private static final double LITTLE = 0.1;

    private final PlanRequest request;
    private final CellProgramme programme;

    /** @param programme the programme of the boat as she is */
    WayTrial(CellProgramme programme) {
        this.programme = programme;
        request = programme.request();
    }

    /** The way as far as it must be gone for a plan in pieces, and what that adds; empty when it does not help. */
    Optional<WayOut> proved(WayOut way) {
        for (double more : FARTHER) {
            WayOut told = way.farther(more, mostStep(way));
            if (leavesNoTank(told)) {
                break;
            }
            Optional<CellProgramme> changed = changed(told);
            if (changed.isEmpty()) {
                // More room has no place of its own, and a mesh no other size: there the first programme's word must
                // do.
                return Optional.of(told);
            }
            Optional<BallastPlan> plan = Planner.tried(changed.get());
            if (plan.isPresent()) {
                return told(way, told, plan.get());
            }
            if (way.kind() == WayOut.Kind.TAKEN_OUT) {
                break;
            }
        }
        return Optional.empty();
    }

    /** Of a BG or GM that is wanted far beyond what can be had, no more is given up than pieces need. */
    private double mostStep(WayOut way) {
        if (way.kind() == WayOut.Kind.AIM_EASED && way.subject().equals(Aim.BG.key())) {
            return 1 + LITTLE * request.wanted().bgMm();
        }
        if (way.kind() == WayOut.Kind.AIM_EASED && way.subject().equals(Aim.GM.key())) {
            return 1 + LITTLE * request.wanted().gmMm();
        }
        return Double.POSITIVE_INFINITY;
    }

    /** How much is taken out is what the plan in pieces says. */
    private Optional<WayOut> told(WayOut way, WayOut told, BallastPlan plan) {
        double added = plan.rounding().roundedMassG();
        if (way.kind() != WayOut.Kind.TAKEN_OUT) {
            return Optional.of(told.adding(added));
        }
        double taken = plan.removals().getOrDefault(way.subject(), 0.0)
                * request.boat().pieces().stream()
                        .filter(p -> p.part().id().equals(way.subject()))
                        .mapToDouble(Piece::massG)
                        .sum();
        return taken < LEAST_TAKEN_G
                ? Optional.empty()
                : Optional.of(WayOut.takingOut(way.subject(), taken).adding(added));
    }

    private Optional<CellProgramme> changed(WayOut way) {
        return switch (way.kind()) {
            case TANK_VOLUME, TANK_REPLACED, TANK_SHIFT -> tanksChanged(way).map(this::withTanks);
            case LINE_RAISED -> Optional.of(programme.like(request.withLineRaised(way.amount())));
            case TAKEN_OUT -> Optional.of(programme.like(request.withRemovable(way.subject())));
            case AIM_EASED -> {
                Aim aim = Aim.valueOf(way.subject().toUpperCase(Locale.ROOT));
                double length = request.foreMm().distance(request.aftMm());
                yield Optional.of(
                        programme.like(request.withWanted(request.wanted().eased(aim, way.amount(), length))));
            }
            default -> Optional.empty();
        };
    }

    private boolean leavesNoTank(WayOut way) {
        boolean volume = way.kind() == WayOut.Kind.TANK_VOLUME || way.kind() == WayOut.Kind.TANK_REPLACED;
        return volume && way.amount() <= -programme.condition().tankVolumeMm3() / 1000;
    }

    private CellProgramme withTanks(Boat boat) {
        PlanRequest other = request.withBoat(boat);
        boolean dry = boat.parts().stream()
                .filter(Part::isTank)
                .allMatch(p -> p.inside().isPresent());
        return dry ? programme.withSameRoom(other) : CellProgramme.of(other);
    }

    /** The boat with her tanks lengthened about their middles and moved; empty where a tank is a mesh. */
    private Optional<Boat> tanksChanged(WayOut way) {
        double wholeCm3 = programme.condition().tankVolumeMm3() / 1000;
        double factor = way.kind() == WayOut.Kind.TANK_SHIFT ? 1 : 1 + way.amount() / wholeCm3;
        double shift = way.kind() == WayOut.Kind.TANK_SHIFT ? way.amount() : way.shiftMm();
        List<Part> parts = new ArrayList<>();
        for (Part part : request.boat().parts()) {
            if (part.isTank()) {
                Optional<Shape> shape = part.shape().flatMap(s -> changed(s, factor, shift));
                if (shape.isEmpty()) {
                    return Optional.empty();
                }
                parts.add(part.withBody(shape, part.weighedMassG(), part.givenCentreMm()));
            } else {
                parts.add(part);
            }
        }
        return Optional.of(request.boat().withParts(parts));
    }

    private static Optional<Shape> changed(Shape shape, double factor, double shiftMm) {
        Vector3D shift = new Vector3D(shiftMm, 0, 0);
        if (shape instanceof BoxShape box) {
            Vector3D from = box.fromMm();
            Vector3D to = box.toMm();
            double middle = 0.5 * (from.getX() + to.getX());
            return Optional.of(new BoxShape(
                    new Vector3D(middle + factor * (from.getX() - middle), from.getY(), from.getZ()).add(shift),
                    new Vector3D(middle + factor * (to.getX() - middle), to.getY(), to.getZ()).add(shift)));
        }
        if (shape instanceof BarShape bar && bar.ends() == BarShape.Ends.FLAT) {
            Vector3D middle = bar.fromMm().add(bar.toMm()).scalarMultiply(0.5);
            Vector3D from = middle.add(factor, bar.fromMm().subtract(middle));
            Vector3D to = middle.add(factor, bar.toMm().subtract(middle));
            return Optional.of(new BarShape(from.add(shift), to.add(shift), bar.diameterMm(), bar.ends()));
        }
        return Optional.empty();
    }
}
