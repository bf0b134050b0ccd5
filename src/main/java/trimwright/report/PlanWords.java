package trimwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;
import trimwright.plan.Aim;
import trimwright.plan.BallastPlan;
import trimwright.plan.Miss;
import trimwright.plan.WayOut;

/** A ballast plan in words, as it would be called across a bench. */
public final class PlanWords {

    private static final double SAME_MM = 0.05;
    private static final double AT_LINE_MM = 1;

    private static final double FAR_OVER_DEG = 15;

    private PlanWords() {}

    /**
     * Everything that a plan changes, as lines: pieces to add, pairs together, what to take out, what to move. Places are measured from the stern and
     * the keel of her hull.
     *
     * @param boat the boat as she is
     */
    public static List<String> changes(Boat boat, BallastPlan plan) {
        return changes(boat, plan, Measure.METRIC);
    }

    /** Everything that a plan changes, in other units. */
    public static List<String> changes(Boat boat, BallastPlan plan, Measure measure) {
        Bounds hull = hull(boat);
        Optional<WaterPlane> line = boat.paintedLine().map(PaintedLine::plane);
        List<String> lines = new ArrayList<>();
        List<Part> left = new ArrayList<>(plan.pieces());
        while (!left.isEmpty()) {
            Part piece = left.remove(0);
            Part twin =
                    left.stream().filter(p -> mirrored(piece, p)).findFirst().orElse(null);
            left.remove(twin);
            lines.add(line(piece, twin != null, hull.minX(), hull.minZ(), line, measure));
        }
        plan.removals().forEach((id, share) -> {
            String grams = measure.mass(removedG(boat, id, share));
            lines.add(
                    share == 1
                            ? "take out " + id + " (" + grams + ")"
                            : "take " + grams + " out of " + id + " (" + Numbers.fixed(100 * share, 0)
                                    + " % of it), from both its ends alike");
        });
        plan.moves()
                .forEach((id, mm) ->
                        lines.add("move " + id + " " + measure.length(Math.abs(mm)) + (mm > 0 ? " forward" : " aft")));
        return lines;
    }

    /** Mass of a share of a part, of all its pieces, g. */
    public static double removedG(Boat boat, String id, double share) {
        return share
                * boat.pieces().stream()
                        .filter(p -> p.part().id().equals(id))
                        .mapToDouble(Piece::massG)
                        .sum();
    }

    /** The box around her hull, or around everything with a shape where there is none. */
    public static Bounds hull(Boat boat) {
        boolean hull = boat.parts().stream().anyMatch(Part::isHull);
        return boat.pieces().stream()
                .filter(p -> p.shape().isPresent() && (!hull || p.part().isHull()))
                .map(p -> p.shape().orElseThrow().bounds())
                .reduce(Bounds::union)
                .orElse(new Bounds(0, 0, 0, 0, 0, 0));
    }

    private static String line(
            Part piece, boolean pair, double sternX, double keelZ, Optional<WaterPlane> line, Measure measure) {
        BoxShape box = (BoxShape) piece.shape().orElseThrow();
        Vector3D from = box.fromMm();
        Vector3D size = box.toMm().subtract(from);
        boolean lead = piece.kind() == Kind.BALLAST;
        double volumeCm3 = size.getX() * size.getY() * size.getZ() / 1000;
        double massG = volumeCm3 * piece.densityGPerCm3().orElseThrow();
        String what = String.format(
                Locale.ROOT,
                "%s of %s %s × %s × %s %s (%s)",
                pair ? "two strips" : "one strip",
                lead ? "lead" : "foam",
                measure.briefLength(size.getY()),
                measure.briefLength(size.getZ()),
                measure.briefLength(size.getX()),
                measure.lengthUnit(),
                (lead ? measure.mass(massG, 0) : measure.volume(1000 * volumeCm3, 1)) + (pair ? " each" : ""));
        return what + ", " + side(box, pair, measure) + ", from " + measure.lengthNumber(from.getX() - sternX, 0)
                + " to "
                + measure.lengthNumber(box.toMm().getX() - sternX, 0) + " " + measure.lengthUnit()
                + " ahead of the stern, underside "
                + measure.length(from.getZ() - keelZ) + " above the keel, top "
                + top(box, keelZ, line, measure);
    }

    private static String top(BoxShape box, double keelZ, Optional<WaterPlane> line, Measure measure) {
        double x = 0.5 * (box.fromMm().getX() + box.toMm().getX());
        double z = box.toMm().getZ();
        boolean atLine = line.filter(
                        w -> Math.abs(w.up().dotProduct(new Vector3D(x, 0, z)) - w.heightMm()) < AT_LINE_MM)
                .isPresent();
        return atLine ? "at the waterline" : measure.length(z - keelZ);
    }

    private static String side(BoxShape box, boolean pair, Measure measure) {
        double y0 = box.fromMm().getY();
        double y1 = box.toMm().getY();
        if (Math.abs(y0 + y1) < SAME_MM) {
            return "on the centreline";
        }
        double near = Math.min(Math.abs(y0), Math.abs(y1));
        double far = Math.max(Math.abs(y0), Math.abs(y1));
        String off = measure.briefLength(near) + " to " + measure.briefLength(far) + " " + measure.lengthUnit()
                + " off the centreline";
        if (pair) {
            return "port and starboard, " + off;
        }
        return (y0 + y1 > 0 ? "to port, " : "to starboard, ") + off;
    }

    private static boolean mirrored(Part a, Part b) {
        BoxShape p = (BoxShape) a.shape().orElseThrow();
        BoxShape q = ((BoxShape) b.shape().orElseThrow()).mirrored();
        // Mirroring swaps the two sides, so the corners are compared as boxes.
        return a.kind() == b.kind()
                && Math.abs(p.bounds().minX() - q.bounds().minX()) < SAME_MM
                && Math.abs(p.bounds().maxX() - q.bounds().maxX()) < SAME_MM
                && Math.abs(p.bounds().minY() - q.bounds().minY()) < SAME_MM
                && Math.abs(p.bounds().maxY() - q.bounds().maxY()) < SAME_MM
                && Math.abs(p.bounds().minZ() - q.bounds().minZ()) < SAME_MM
                && Math.abs(p.bounds().maxZ() - q.bounds().maxZ()) < SAME_MM;
    }

    /** An aim that is missed, and why. */
    public static String of(Miss miss) {
        return of(miss, Measure.METRIC);
    }

    /** An aim that is missed, and why, in other units. */
    public static String of(Miss miss, Measure measure) {
        return how(miss, measure)
                + miss.cause().map(c -> ": " + CauseWords.of(c, measure)).orElse("");
    }

    /** An angle that a linear estimate gives; beyond this it only says that it is large. */
    private static String angle(double deg) {
        return deg > FAR_OVER_DEG ? "more than " + Numbers.degrees(FAR_OVER_DEG) : Numbers.degrees(deg);
    }

    private static String how(Miss miss, Measure measure) {
        double amount = miss.amount();
        double size = Math.abs(amount);
        return switch (miss.aim()) {
            case LINE -> "she lies " + measure.length(size) + (amount > 0 ? " too deep" : " too high");
            case TRIM -> "surfaced she trims " + angle(size) + (amount > 0 ? " bow up" : " bow down");
            case LIST -> "she lists " + angle(size) + (amount > 0 ? " to starboard" : " to port");
            case RESIDUAL ->
                amount > 0
                        ? "dived she keeps " + measure.mass(size) + " too much buoyancy"
                        : "dived she lacks " + measure.mass(size) + " of buoyancy";
            case DIVED_TRIM -> "dived she trims " + angle(size) + (amount > 0 ? " bow up" : " bow down");
            case DIVED_LIST -> "dived she lists " + angle(size) + (amount > 0 ? " to starboard" : " to port");
            case BG -> "B stands " + measure.length(size) + " too little above G dived";
            default -> "GM is " + measure.length(size) + " too small surfaced";
        };
    }

    /** A way out in words. */
    public static String of(WayOut way) {
        return of(way, Measure.METRIC);
    }

    /** A way out, in other units. */
    public static String of(WayOut way, Measure measure) {
        double size = Math.abs(way.amount());
        String then = "; the plan then adds " + measure.mass(way.addedG());
        return switch (way.kind()) {
            case TANK_VOLUME ->
                "make the tank " + measure.fineVolume(1000 * size) + " " + (way.amount() > 0 ? "larger" : "smaller")
                        + " about its present middle" + then;
            case TANK_REPLACED ->
                "make the tank " + measure.fineVolume(1000 * size) + " " + (way.amount() > 0 ? "larger" : "smaller")
                        + " and shift it " + measure.length(Math.abs(way.shiftMm()))
                        + (way.shiftMm() > 0 ? " forward" : " aft") + then;
            case TANK_SHIFT ->
                "shift the tank " + measure.length(size) + (way.amount() > 0 ? " forward" : " aft") + then;
            case LINE_RAISED ->
                "paint the line " + measure.length(size) + (way.amount() > 0 ? " higher" : " lower") + then;
            case TAKEN_OUT -> "take " + measure.mass(size) + " out of " + way.subject() + then;
            case MORE_ROOM -> "find " + measure.fineVolume(1000 * size) + " more room for " + way.subject() + then;
            case MASS_ALLOWED ->
                "allow " + measure.mass(size) + " more to be added; the plan then adds " + measure.mass(way.addedG());
            default -> "be content with " + eased(way, measure) + then;
        };
    }

    private static String eased(WayOut way, Measure measure) {
        Aim aim = Aim.valueOf(way.subject().toUpperCase(Locale.ROOT));
        double size = Math.abs(way.amount());
        String much = switch (aim.unit()) {
            case "deg" -> Numbers.degrees(size);
            case "g" -> measure.mass(size, 0);
            default -> measure.length(size);
        };
        return switch (aim) {
            case LINE -> "the water " + much + (way.amount() > 0 ? " above" : " below") + " the tolerance at the paint";
            case TRIM -> much + " more surfaced trim, " + (way.amount() > 0 ? "bow up" : "bow down");
            case LIST -> much + " more list";
            case RESIDUAL -> much + (way.amount() > 0 ? " more" : " less") + " buoyancy left dived";
            case DIVED_TRIM -> much + " more dived trim, " + (way.amount() > 0 ? "bow up" : "bow down");
            case DIVED_LIST -> much + " more list dived";
            case BG -> much + " less BG";
            default -> much + " less GM";
        };
    }
}
