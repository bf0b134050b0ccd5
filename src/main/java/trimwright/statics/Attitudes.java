package trimwright.statics;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * Finds every attitude in which a boat can rest. The energy, its slope and its curvature are taken in directions spread over the whole
 * sphere; she then settles from each direction that is lower than its neighbours, or whose own curvature foretells a rest
 * within about a neighbour's distance. Equal ends are merged.
 */
final class Attitudes {

    /** Ends nearer than this are one, rad. */
    private static final double SAME = 1e-3;
    /** Share of the weight that may be missing while looking round. */
    private static final double ROUGH = 1e-3;

    private Attitudes() {}

    /**
     * All stable attitudes, lowest energy first. Where she rests anywhere along a row of attitudes (a round body turning about its
     * axis), the one nearest upright stands for the row.
     *
     * @param known attitudes that were already found
     */
    static List<Equilibrium> of(Condition condition, List<Equilibrium> known) {
        List<Equilibrium> found = new ArrayList<>(known);
        for (WaterPlane start : starts(condition)) {
            Equilibrium rest = Balance.settle(condition, start);
            if (found.stream().noneMatch(other -> same(other, rest))) {
                found.add(rest);
            }
        }
        List<Equilibrium> distinct = Row.nearestUpright(condition, found);
        distinct.sort(Comparator.comparingDouble(Equilibrium::energyMm)
                .thenComparing(Comparator.comparingDouble(Attitudes::upright).reversed()));
        return List.copyOf(distinct);
    }

    private static double upright(Equilibrium e) {
        return e.plane().up().getZ();
    }

    private static boolean same(Equilibrium a, Equilibrium b) {
        return Vector3D.angle(a.plane().up(), b.plane().up()) < SAME;
    }

    private static List<WaterPlane> starts(Condition condition) {
        Sphere sphere = new Sphere();
        Trial[] trials = lookRound(condition, sphere);
        List<WaterPlane> starts = new ArrayList<>();
        for (int i = 0; i < trials.length; i++) {
            double own = trials[i].potentialHeightMm();
            boolean lowest = true;
            for (int n : sphere.neighbours(i)) {
                lowest &= own <= trials[n].potentialHeightMm();
            }
            if (lowest || foretellsRest(trials[i])) {
                starts.add(trials[i].plane());
            }
        }
        return starts;
    }

    private static boolean foretellsRest(Trial trial) {
        TrustStep step = TrustStep.of(
                trial.reducedSlopeAhead(),
                trial.reducedSlopePort(),
                trial.reducedAhead(),
                trial.reducedMixed(),
                trial.reducedPort(),
                Sphere.SPACING);
        return step.leastCurvature > 0 && Math.hypot(step.x, step.y) < 0.999 * Sphere.SPACING;
    }

    /** Every direction of the sphere, each from the height that a neighbour foretells. */
    private static Trial[] lookRound(Condition condition, Sphere sphere) {
        Trial[] trials = new Trial[sphere.size()];
        trials[0] = rough(condition, WaterPlane.of(sphere.direction(0), 0), Double.NaN, null);
        Deque<Integer> next = new ArrayDeque<>(List.of(0));
        while (!next.isEmpty()) {
            int from = next.remove();
            Trial near = trials[from];
            for (int to : sphere.neighbours(from)) {
                if (trials[to] == null) {
                    WaterPlane plane = WaterPlane.of(sphere.direction(to), 0);
                    double guess = plane.up().dotProduct(near.sums().centreOfFlotationMm());
                    trials[to] = rough(condition, plane, guess, near);
                    next.add(to);
                }
            }
        }
        return trials;
    }

    private static Trial rough(Condition condition, WaterPlane direction, double guessMm, Trial near) {
        return Trial.afloat(condition, condition::below, direction, guessMm, ROUGH, near);
    }
}
