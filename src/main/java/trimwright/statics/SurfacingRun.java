package trimwright.statics;

import java.util.List;
import java.util.Optional;
import trimwright.finding.Finding;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * Coming up with water still standing inside the free-flooding hull above the level outside: the moment in which many a boat falls over.
 *
 * <p>Down below the water stands as high inside as outside. On the way up the tanks empty as they filled, backwards, and the share
 * {@code draining} of what the hull encloses between the waterline dived and the one at hand has not run out yet. That water weighs on
 * her, and its surface is free to move; while she settles none of it leaves. How much it is follows from her weight at the direction of
 * up in which she would float with everything run out and no list, so that it does not depend on where she then goes.
 *
 * @param draining share that has not run out, 0…1
 * @param roomMm3 the free-flooding room of her hulls
 * @param course the states, from the dive's last fill to its first
 * @param mostHeldG the most water that stands above the level outside
 * @param atFill fill of the tanks at which that is
 * @param findings where she lies over or goes over
 */
public record SurfacingRun(
        double draining, double roomMm3, Course course, double mostHeldG, double atFill, List<Finding> findings) {

    public SurfacingRun {
        findings = List.copyOf(findings);
    }

    /**
     * Brings a boat up.
     *
     * @param condition the boat; her dive plan says how her tanks empty, backwards
     * @param steps number of steps; at least 1
     * @param draining share of the water that has not run out, 0…1
     * @return empty when no hull of hers floods freely, or when she does not float at the end of the dive or at its beginning
     * @throws trimwright.finding.UnusableInputException when she has no tank, her plan cannot be followed, or a free-flooding hull
     *     has openings, so that what it holds is not known
     */
    public static Optional<SurfacingRun> of(Condition condition, int steps, double draining) {
        if (!(draining >= 0 && draining <= 1)) {
            throw new IllegalArgumentException("the share that has not run out must be 0…1, found " + draining);
        }
        DivePath path = new DivePath(condition);
        Optional<Displacer> room = HullRoom.of(condition);
        if (room.isEmpty() || !Flotation.floats(path.at(0)) || !Flotation.floats(path.at(1))) {
            return Optional.empty();
        }
        Run run = new Run(path, room.get(), draining);
        Course course = new CourseSearch(run::at, along -> path.fillAt(1 - along)).follow(steps, run.dived);
        DiveStep heaviest = course.steps().get(0);
        for (DiveStep step : course.steps()) {
            heaviest = step.heldWaterG() > heaviest.heldWaterG() ? step : heaviest;
        }
        return Optional.of(new SurfacingRun(
                draining,
                room.get().volumeMm3(),
                course,
                heaviest.heldWaterG(),
                heaviest.fill(),
                CourseFindings.of(course)));
    }

    private static final class Run {

        private final DivePath path;
        private final Displacer room;
        private final double draining;
        private final WaterPlane dived;
        private final double insideDivedMm3;

        Run(DivePath path, Displacer room, double draining) {
            this.path = path;
            this.room = room;
            this.draining = draining;
            Condition end = path.at(1);
            dived = Balance.settle(end, Balance.upright(end)).plane();
            insideDivedMm3 = roomBelow(dived);
        }

        /** The boat at a progress of the way up, holding her water. */
        Condition at(double along) {
            Condition open = path.at(1 - along);
            if (!Flotation.floats(open)) {
                return open;
            }
            return open.holding("hull", room, heldMm3(open));
        }

        /**
         * Water in the room. It holds V(h) + d (V_dived − V(h)), V(h) what of it lies below the water outside; what is above that has to
         * be carried by the rest of her: ρ V_rest(h) = W + d ρ (V_dived − V(h)), which gives the height h.
         */
        private double heldMm3(Condition open) {
            Trial settled = Balance.rest(open, Balance.upright(open)).trial();
            WaterPlane direction =
                    HeldList.held(open, 0, settled).orElse(settled).plane();
            double carriedMm3 = open.massG() / open.densityGPerMm3() + draining * insideDivedMm3;
            Immersion sums = LevelSearch.plane(
                    direction,
                    plane -> withShare(open.below(plane)),
                    carriedMm3,
                    open.bottomMm(direction.up()),
                    open.topMm(direction.up()),
                    direction.heightMm());
            double below = roomBelow(sums.plane());
            return below + draining * Math.max(0, insideDivedMm3 - below);
        }

        private Immersion withShare(Immersion rest) {
            return rest.addScaled(rest.emptied().add(room), draining);
        }

        /** Within the thickness of a roof the prisms of the shell overlap at its edges, so that a hair more seems to lie below it than in all. */
        private double roomBelow(WaterPlane plane) {
            double below = Immersion.below(plane, room.centroidMm()).add(room).volumeMm3();
            return Math.min(below, room.volumeMm3());
        }
    }
}
