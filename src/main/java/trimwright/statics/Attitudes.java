package trimwright.statics;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * Finds every attitude in which a boat can rest. The energy, its slope and its curvature are taken in directions spread over the whole
 * sphere; she then settles from each direction that is lower than its neighbours, or whose own curvature foretells a rest
 * within about a neighbour's distance. All that is done with rough sums, which cost a fraction; from where it ends she settles exactly. Equal ends
 * are merged.
 */
final class Attitudes {

    /** Ends nearer than this are one, rad. */
    private static final double SAME = 1e-3;
    /** Share of the weight that may be missing while looking round; the energy is then corrected for it. */
    private static final double ROUGH = 0.05;

    /** How far from where it was foretold a rest is looked for, rad. */
    private static final double NEAR = 2 * Sphere.SPACING;

    /** Where to begin, and how far from there to look. */
    private record Start(WaterPlane plane, double farthest) {}

    private Attitudes() {}

    /**
     * All stable attitudes, lowest energy first. Where she rests anywhere along a row of attitudes (a round body turning about its
     * axis), the one nearest upright stands for the row.
     *
     * @param known attitudes that were already found
     */
    static List<Equilibrium> of(Condition condition, List<Equilibrium> known) {
        List<Equilibrium> found = new ArrayList<>(known);
        Condition rough = condition.roughly();
        for (Equilibrium near : settled(rough, starts(rough))) {
            Equilibrium rest = Balance.settle(condition, near.plane());
            if (found.stream().noneMatch(other -> same(other, rest))) {
                found.add(rest);
            }
        }
        List<Equilibrium> distinct = Row.nearestUpright(condition, found);
        distinct.sort(Comparator.comparingDouble(Equilibrium::energyMm)
                .thenComparing(Comparator.comparingDouble(Attitudes::upright).reversed()));
        return List.copyOf(distinct);
    }

    /** Where the starts lead to, without those that find no rest near by though they foretold one. */
    private static List<Equilibrium> settled(Condition condition, List<Start> starts) {
        List<Equilibrium> found = new ArrayList<>();
        for (Start start : starts) {
            Balance.Rest rest = Balance.restNear(condition, start.plane(), start.farthest());
            if (start.farthest() == Math.PI || rest.found()) {
                Equilibrium end = rest.equilibrium();
                if (found.stream().noneMatch(other -> same(other, end))) {
                    found.add(end);
                }
            }
        }
        return found;
    }

    private static double upright(Equilibrium e) {
        return e.plane().up().getZ();
    }

    private static boolean same(Equilibrium a, Equilibrium b) {
        return Vector3D.angle(a.plane().up(), b.plane().up()) < SAME;
    }

    private static List<Start> starts(Condition condition) {
        Sphere sphere = new Sphere();
        Trial[] trials = lookRound(condition, sphere);
        double[] energies = Arrays.stream(trials)
                .mapToDouble(t -> t.energyAfloat(condition.middleMm(), condition.densityGPerMm3()))
                .toArray();
        List<Start> starts = new ArrayList<>();
        for (int i = 0; i < trials.length; i++) {
            boolean lowest = true;
            for (int n : sphere.neighbours(i)) {
                lowest &= energies[i] <= energies[n];
            }
            if (lowest) {
                starts.add(new Start(trials[i].plane(), Math.PI));
            } else if (foretellsRest(trials[i])) {
                // Where it leads to farther away there are other starts.
                starts.add(new Start(trials[i].plane(), NEAR));
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
