package trimwright.plan;

import java.util.LinkedHashSet;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.immersion.WaterPlane;
import trimwright.statics.PaintedOffset;

/**
 * What to plan.
 *
 * @param boat the boat as she is
 * @param line the plane on which she is to float
 * @param wanted what is wanted of the finished boat
 * @param goal what to strive for once the aims are met
 * @param leadGPerCm3 density of the lead to be added
 * @param foamGPerCm3 density of the foam to be added
 * @param removable ids of lead and foam parts of which the plan may take out what is in the way
 */
public record PlanRequest(
        Boat boat,
        WaterPlane line,
        Wanted wanted,
        Goal goal,
        double leadGPerCm3,
        double foamGPerCm3,
        Set<String> removable) {

    /** Cast lead. */
    public static final double LEAD_G_PER_CM3 = 11.34;
    /** Stiff closed-cell foam as sold in sheets. */
    public static final double FOAM_G_PER_CM3 = 0.03;

    public PlanRequest {
        removable = Set.copyOf(removable);
    }

    private PlanRequest withWanted(Wanted other) {
        return new PlanRequest(boat, line, other, goal, leadGPerCm3, foamGPerCm3, removable);
    }

    /** The same for another boat. */
    public PlanRequest withBoat(Boat other) {
        return new PlanRequest(other, line, wanted, goal, leadGPerCm3, foamGPerCm3, removable);
    }

    /** Whether a plan may take some of a part out: lead or foam as a box, a flat-ended bar or a compact piece. */
    public static boolean canTakeOut(Part part) {
        return (part.kind() == Kind.BALLAST || part.kind() == Kind.FOAM) && Removable.canBeLessened(part);
    }

    PlanRequest withGoal(Goal other) {
        return new PlanRequest(boat, line, wanted, other, leadGPerCm3, foamGPerCm3, removable);
    }

    /** The same with another least BG and no least GM. */
    PlanRequest withStability(double bgMm) {
        return withWanted(wanted.withStability(bgMm, 0));
    }

    /** The same with another least GM and no least BG. */
    PlanRequest withGm(double gmMm) {
        return withWanted(wanted.withStability(0, gmMm));
    }

    /** The same with one more part that may be taken out. */
    PlanRequest withRemovable(String id) {
        Set<String> more = new LinkedHashSet<>(removable);
        more.add(id);
        return new PlanRequest(boat, line, wanted, goal, leadGPerCm3, foamGPerCm3, more);
    }

    /** How a water plane lies against the line. */
    public PaintedOffset offset(WaterPlane water) {
        return PaintedOffset.between(line, foreMm(), aftMm(), water);
    }

    /** The point of the line at the bow: at the foremost painted point, or at the foremost point of the boat. */
    Vector3D foreMm() {
        return onLine(boat.paintedLine().map(l -> l.foremostMm().getX()).orElseGet(() -> ends()[1]));
    }

    /** The point of the line at the stern. */
    Vector3D aftMm() {
        return onLine(boat.paintedLine().map(l -> l.aftmostMm().getX()).orElseGet(() -> ends()[0]));
    }

    private Vector3D onLine(double x) {
        return new Vector3D(x, 0, Room.heightAt(line, x, 0));
    }

    private double[] ends() {
        double aft = Double.POSITIVE_INFINITY;
        double fore = Double.NEGATIVE_INFINITY;
        for (Piece piece : boat.pieces()) {
            if (piece.displacer().isPresent()) {
                aft = Math.min(aft, piece.displacer().get().bottomMm(Vector3D.PLUS_I));
                fore = Math.max(fore, piece.displacer().get().topMm(Vector3D.PLUS_I));
            }
        }
        return new double[] {aft, fore};
    }

    /** The same with the line to be floated on higher or lower by some mm along the boat's z axis. */
    PlanRequest withLineRaised(double mm) {
        Vector3D up = line.up();
        return new PlanRequest(
                boat,
                WaterPlane.of(up, line.heightMm() + mm * up.getZ()),
                wanted,
                goal,
                leadGPerCm3,
                foamGPerCm3,
                removable);
    }
}
