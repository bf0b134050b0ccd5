package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Kind;
import trimwright.boat.Piece;
import trimwright.immersion.Displacer;
import trimwright.immersion.Remainder;

/**
 * How much water a cylinder may take before she no longer comes up with blown tanks, and how she lies then. The water moves freely inside
 * the cylinder and its surface stays level. The room for it is the cylinder's outer volume less the tanks and what stands inside
 * as far as its volume is known; walls and parts of unknown volume are counted as room, so that the room is rather too large.
 *
 * @param cylinder id of the cylinder
 * @param roomMm3 room for water in it
 * @param unknownVolumes ids of parts inside whose volume is not known
 * @param allowanceG water at which all buoyancy is spent; negative when she does not float with empty tanks
 * @param roomFillsFirst whether the room is full before that, so that a flooded cylinder alone does not sink her
 * @param course from no water to all that she can take but for a gram, or to a full room; its fills are shares of that way. Empty
 *     when she does not float with empty tanks
 */
public record LeakAllowance(
        String cylinder,
        double roomMm3,
        List<String> unknownVolumes,
        double allowanceG,
        boolean roomFillsFirst,
        Optional<Course> course) {

    /** What is left of the buoyancy at the end of the course, g: without it she has no waterline any more. */
    public static final double LEFT_G = 1;

    private static final int STEPS = 20;

    public LeakAllowance {
        unknownVolumes = List.copyOf(unknownVolumes);
    }

    /** One for each cylinder; none for a boat without. */
    public static List<LeakAllowance> of(Condition condition) {
        Condition blown = condition.withAllTanksAt(0);
        List<LeakAllowance> all = new ArrayList<>();
        for (Piece piece : condition.pieces()) {
            if (piece.part().kind() == Kind.CYLINDER) {
                all.add(of(blown, piece));
            }
        }
        return all;
    }

    private static LeakAllowance of(Condition blown, Piece cylinder) {
        List<Displacer> taken = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (Piece piece : blown.pieces()) {
            boolean inside = piece.twin() == cylinder.twin() || !cylinder.part().mirror();
            if (inside
                    && piece.part()
                            .inside()
                            .filter(cylinder.part().id()::equals)
                            .isPresent()) {
                piece.body().ifPresentOrElse(taken::add, () -> unknown.add(piece.id()));
            }
        }
        Remainder room = new Remainder(cylinder.body().orElseThrow(), taken);
        double reserve = blown.reserveG();
        double roomG = blown.densityGPerMm3() * room.volumeMm3();
        boolean roomFirst = reserve >= roomG;
        double endG = roomFirst ? roomG : reserve - LEFT_G;
        Optional<Course> course = endG > 0 ? Optional.of(course(blown, cylinder, room, endG)) : Optional.empty();
        return new LeakAllowance(cylinder.id(), room.volumeMm3(), unknown, reserve, roomFirst, course);
    }

    private static Course course(Condition blown, Piece cylinder, Displacer room, double endG) {
        double endMm3 = Math.min(room.volumeMm3(), endG / blown.densityGPerMm3());
        return new CourseSearch(share -> blown.leaking(cylinder.id(), room, share * endMm3), share -> share)
                .follow(STEPS, Balance.upright(blown));
    }

    /** Where she lies at the end of the course. */
    public Optional<Equilibrium> end() {
        return course.flatMap(c -> c.steps().get(c.steps().size() - 1).settled());
    }
}
