package trimwright.plan;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;
import trimwright.statics.Submerged;

/**
 * What to plan. A boat without zones is given those that can be found in her hull ({@link ZoneFinder}).
 *
 * @param boat the boat as she is
 * @param line the plane on which she is to float
 * @param wanted what is wanted of the finished boat
 * @param goal what to strive for once the aims are met
 * @param leadGPerCm3 density of the lead to be added
 * @param foamGPerCm3 density of the foam to be added
 * @param removable ids of lead and foam parts of which the plan may take out what is in the way; those that are not fixed it may also move
 * @param divedUp how she is to lie dived, as the world's up in the boat's frame; empty for level
 */
public record PlanRequest(
        Boat boat,
        WaterPlane line,
        Wanted wanted,
        Goal goal,
        double leadGPerCm3,
        double foamGPerCm3,
        Set<String> removable,
        Optional<Vector3D> divedUp) {

    /** Cast lead. */
    public static final double LEAD_G_PER_CM3 = 11.34;
    /** Stiff closed-cell foam as sold in sheets. */
    public static final double FOAM_G_PER_CM3 = 0.03;

    public PlanRequest {
        boat = ZoneFinder.withZones(boat, line);
        removable = Collections.unmodifiableSet(new LinkedHashSet<>(removable));
    }

    /** A plan for a boat that is to lie level when dived. */
    public PlanRequest(
            Boat boat,
            WaterPlane line,
            Wanted wanted,
            Goal goal,
            double leadGPerCm3,
            double foamGPerCm3,
            Set<String> removable) {
        this(boat, line, wanted, goal, leadGPerCm3, foamGPerCm3, removable, Optional.empty());
    }

    /**
     * The plan that a boat's own file asks for: on her painted line, with cast lead and light foam, and free to change what is not fixed.
     *
     * @throws java.util.NoSuchElementException when she has no painted line
     */
    public static PlanRequest of(Boat boat, Wanted wanted, Goal goal) {
        return new PlanRequest(
                boat,
                boat.paintedLine().orElseThrow().plane(),
                wanted,
                goal,
                LEAD_G_PER_CM3,
                FOAM_G_PER_CM3,
                looseParts(boat));
    }

    /** Ids of the lead and foam that the boat file says is not fixed. */
    public static Set<String> looseParts(Boat boat) {
        Set<String> ids = new LinkedHashSet<>();
        boat.parts().stream().filter(p -> !p.fixed()).map(Part::id).forEach(ids::add);
        return ids;
    }

    static boolean isLeadOrFoam(Part part) {
        return part.kind() == Kind.BALLAST || part.kind() == Kind.FOAM;
    }

    /** Whether a plan may take some of a part out: lead or foam as a box, a flat-ended bar or a compact piece. */
    public static boolean canTakeOut(Part part) {
        return isLeadOrFoam(part) && Loose.canBeLessened(part);
    }

    private PlanRequest with(
            Boat newBoat, WaterPlane newLine, Wanted newWanted, Goal newGoal, Set<String> newRemovable) {
        return new PlanRequest(newBoat, newLine, newWanted, newGoal, leadGPerCm3, foamGPerCm3, newRemovable, divedUp);
    }

    /** The same with other aims. */
    PlanRequest withWanted(Wanted other) {
        return with(boat, line, other, goal, removable);
    }

    /** The same for another boat. */
    public PlanRequest withBoat(Boat other) {
        return with(other, line, wanted, goal, removable);
    }

    /** The same without some parts. */
    PlanRequest withoutParts(Set<String> ids) {
        List<Part> left =
                boat.parts().stream().filter(p -> !ids.contains(p.id())).toList();
        Set<String> still = new LinkedHashSet<>(removable);
        still.removeAll(ids);
        return with(boat.withParts(left), line, wanted, goal, still);
    }

    PlanRequest withGoal(Goal other) {
        return with(boat, line, wanted, other, removable);
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
        return with(boat, line, wanted, goal, more);
    }

    /** Trim dived against how she is to lie, degrees, positive bow up. */
    public double divedTrimOffDeg(Flotation dived) {
        return Equilibrium.trimDeg(lying(dived))
                - divedUp.map(Equilibrium::trimDeg).orElse(0.0);
    }

    /** List dived against how she is to lie, degrees, positive to starboard. */
    double divedListOffDeg(Flotation dived) {
        return Equilibrium.heelDeg(lying(dived))
                - divedUp.map(Equilibrium::heelDeg).orElse(0.0);
    }

    /** Height of B above G, wholly under water, along how she is to lie; negative where she would turn over. */
    double divedBgMm(Flotation afloat) {
        Submerged under = afloat.submerged();
        return under.centreOfBuoyancyMm()
                .subtract(under.centreOfGravityMm())
                .dotProduct(divedUp.orElse(Vector3D.PLUS_K));
    }

    /** How she lies with her tanks full: with something out of the water, or hanging in it. */
    private static Vector3D lying(Flotation dived) {
        return dived.settled().map(e -> e.plane().up()).orElse(dived.submerged().up());
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
        return with(boat, WaterPlane.of(up, line.heightMm() + mm * up.getZ()), wanted, goal, removable);
    }
}
