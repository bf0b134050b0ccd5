package trimwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.plan.Aim;
import trimwright.plan.BallastPlan;
import trimwright.plan.Miss;
import trimwright.plan.WayOut;

/** A ballast plan in words, as it would be called across a bench. */
public final class PlanWords {

    private static final double SAME_MM = 0.05;

    private PlanWords() {}

    /**
     * The pieces as lines of a cut list, pairs together.
     *
     * @param pieces boxes of lead or foam
     * @param sternXMm where the stern is, from which places are measured
     * @param keelZMm where the keel is
     */
    public static List<String> cutList(List<Part> pieces, double sternXMm, double keelZMm) {
        List<String> lines = new ArrayList<>();
        List<Part> left = new ArrayList<>(pieces);
        while (!left.isEmpty()) {
            Part piece = left.remove(0);
            Part twin =
                    left.stream().filter(p -> mirrored(piece, p)).findFirst().orElse(null);
            left.remove(twin);
            lines.add(line(piece, twin != null, sternXMm, keelZMm));
        }
        return lines;
    }

    /**
     * Everything that a plan changes, as lines: pieces to add, what to take out, what to move.
     *
     * @param boat the boat as she is
     */
    public static List<String> changes(Boat boat, BallastPlan plan, double sternXMm, double keelZMm) {
        List<String> lines = new ArrayList<>(cutList(plan.pieces(), sternXMm, keelZMm));
        plan.removals().forEach((id, share) -> {
            String grams = Numbers.g(removedG(boat, id, share));
            lines.add(
                    share == 1
                            ? "take out " + id + " (" + grams + ")"
                            : "take " + grams + " out of " + id + " (" + Numbers.fixed(100 * share, 0)
                                    + " % of it), from both its ends alike");
        });
        plan.moves()
                .forEach((id, mm) ->
                        lines.add("move " + id + " " + Numbers.mm(Math.abs(mm)) + (mm > 0 ? " forward" : " aft")));
        return lines;
    }

    /** Mass of a share of a part, of all its pieces. */
    public static double removedG(Boat boat, String id, double share) {
        return share
                * boat.pieces().stream()
                        .filter(p -> p.part().id().equals(id))
                        .mapToDouble(Piece::massG)
                        .sum();
    }

    private static String line(Part piece, boolean pair, double sternX, double keelZ) {
        BoxShape box = (BoxShape) piece.shape().orElseThrow();
        Vector3D from = box.fromMm();
        Vector3D size = box.toMm().subtract(from);
        boolean lead = piece.kind() == Kind.BALLAST;
        double volumeCm3 = size.getX() * size.getY() * size.getZ() / 1000;
        double massG = volumeCm3 * piece.densityGPerCm3().orElseThrow();
        String what = String.format(
                Locale.ROOT,
                "%s of %s %s × %s × %s mm (%s)",
                pair ? "two strips" : "one strip",
                lead ? "lead" : "foam",
                Numbers.brief(size.getY()),
                Numbers.brief(size.getZ()),
                Numbers.brief(size.getX()),
                (lead ? Numbers.g(massG) : Numbers.fixed(volumeCm3, 1) + " cm³") + (pair ? " each" : ""));
        return what + ", " + side(box, pair) + ", from " + Numbers.fixed(from.getX() - sternX, 0) + " to "
                + Numbers.fixed(box.toMm().getX() - sternX, 0) + " mm ahead of the stern, underside "
                + Numbers.mm(from.getZ() - keelZ) + " and top "
                + Numbers.mm(box.toMm().getZ() - keelZ)
                + " above the keel";
    }

    private static String side(BoxShape box, boolean pair) {
        double y0 = box.fromMm().getY();
        double y1 = box.toMm().getY();
        if (Math.abs(y0 + y1) < SAME_MM) {
            return "on the centreline";
        }
        double near = Math.min(Math.abs(y0), Math.abs(y1));
        double far = Math.max(Math.abs(y0), Math.abs(y1));
        String off = Numbers.brief(near) + " to " + Numbers.mm(far) + " off the centreline";
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

    /** An aim that is missed, with its physical meaning. */
    public static String of(Miss miss) {
        double amount = miss.amount();
        double size = Math.abs(amount);
        switch (miss.aim()) {
            case LINE:
                return amount > 0
                        ? "she lies " + Numbers.mm(size) + " too deep: she weighs more than stands under her line"
                        : "she floats " + Numbers.mm(size)
                                + " too high: there is not enough room for the lead that would put her down";
            case TRIM:
                return "surfaced she trims " + Numbers.degrees(size) + (amount > 0 ? " bow up" : " bow down")
                        + ": what may be added cannot be placed far enough along";
            case LIST:
                return "she lists " + Numbers.degrees(size) + (amount > 0 ? " to starboard" : " to port")
                        + ": what may be added cannot be placed far enough to the side";
            case RESIDUAL:
                return amount > 0
                        ? "dived she keeps " + Numbers.g(size)
                                + " too much buoyancy: the tank holds less than what stands" + " above the line"
                        : "dived she lacks " + Numbers.g(size)
                                + " of buoyancy: the tank takes in more than stands above" + " the line";
            case DIVED_TRIM:
                return "dived she trims " + Numbers.degrees(size) + (amount > 0 ? " bow up" : " bow down")
                        + ": the tank does not lie under the middle of what stands above the line";
            case DIVED_LIST:
                return "dived she lists " + Numbers.degrees(size) + (amount > 0 ? " to starboard" : " to port");
            case BG:
                return "B stands " + Numbers.mm(size)
                        + " too little above G dived: there is not enough room low for lead" + " and high for foam";
            default:
                return "GM is " + Numbers.mm(size) + " too small surfaced";
        }
    }

    /** A way out in words. */
    public static String of(WayOut way) {
        double size = Math.abs(way.amount());
        String then = "; the plan then adds " + Numbers.g(way.addedG());
        switch (way.kind()) {
            case TANK_VOLUME:
                return "make the tank " + Numbers.fixed(size, 0) + " cm³ " + (way.amount() > 0 ? "larger" : "smaller")
                        + " about its present middle" + then;
            case TANK_SHIFT:
                return "shift the tank " + Numbers.mm(size) + (way.amount() > 0 ? " forward" : " aft") + then;
            case LINE_RAISED:
                return "paint the line " + Numbers.mm(size) + (way.amount() > 0 ? " higher" : " lower") + then;
            case TAKEN_OUT:
                return "take " + Numbers.g(size) + " out of " + way.subject() + then;
            case MORE_ROOM:
                return "find " + Numbers.fixed(size, 0) + " cm³ more room for " + way.subject() + then;
            default:
                return "be content with " + eased(way) + then;
        }
    }

    private static String eased(WayOut way) {
        Aim aim = Aim.valueOf(way.subject().toUpperCase(Locale.ROOT));
        String much = Numbers.fixed(Math.abs(way.amount()), aim.unit().equals("g") ? 0 : 1)
                + (aim.unit().equals("deg") ? "°" : " " + aim.unit());
        switch (aim) {
            case LINE:
                return "the water " + much + (way.amount() > 0 ? " above" : " below") + " the tolerance at the paint";
            case TRIM:
                return much + " more surfaced trim, " + (way.amount() > 0 ? "bow up" : "bow down");
            case LIST:
                return much + " more list";
            case RESIDUAL:
                return much + (way.amount() > 0 ? " more" : " less") + " buoyancy left dived";
            case DIVED_TRIM:
                return much + " more dived trim, " + (way.amount() > 0 ? "bow up" : "bow down");
            case DIVED_LIST:
                return much + " more list dived";
            case BG:
                return much + " less BG";
            default:
                return much + " less GM";
        }
    }
}
