package trimwright.statics;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;
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
    /** As near to one that was found must an end be that is foretold, to be that one; rad. */
    private static final double FORETOLD_SAME = 3e-3;
    /** Share of the weight that may be missing while looking round; the energy is then corrected for it. */
    private static final double ROUGH = 0.05;
    /** The same as a share of what she could still carry: of a boat nearly under, a corner that is out of the water decides how she lies. */
    private static final double ROUGH_OF_RESERVE = 0.25;

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
        settle(condition, settled(rough, starts(rough)), found);
        settle(condition, settled(rough, opposite(rough, found)), found);
        List<Equilibrium> distinct = Row.nearestUpright(condition, found);
        distinct.sort(Comparator.comparingDouble(Equilibrium::energyMm)
                .thenComparing(Comparator.comparingDouble(Attitudes::upright).reversed()));
        return List.copyOf(distinct);
    }

    private static void settle(Condition condition, List<Equilibrium> nearBy, List<Equilibrium> found) {
        for (Equilibrium near : nearBy) {
            Equilibrium rest = Balance.settle(condition, near.plane());
            if (!isAmong(found, rest.plane(), SAME)) {
                found.add(rest);
            }
        }
    }

    /** Where the starts lead to, without those that find no rest near by though they foretold one. */
    private static List<Equilibrium> settled(Condition condition, List<Start> starts) {
        List<Equilibrium> found = new ArrayList<>();
        for (Start start : starts) {
            Balance.restNear(condition, start.plane(), start.farthest(), plane -> isAmong(found, plane, FORETOLD_SAME))
                    .filter(rest -> start.farthest() == Math.PI || rest.found())
                    .map(Balance.Rest::equilibrium)
                    .filter(end -> !isAmong(found, end.plane(), SAME))
                    .ifPresent(found::add);
        }
        return found;
    }

    /**
     * The found rests upside down, where that foretells a rest too: most bodies have two sides that are alike, and each side has a trough of its
     * own, which may be too narrow for any other start to lie in.
     */
    private static List<Start> opposite(Condition condition, List<Equilibrium> found) {
        List<Start> starts = new ArrayList<>();
        for (Equilibrium rest : found) {
            WaterPlane over = WaterPlane.of(rest.plane().up().negate(), 0);
            Trial trial = Trial.afloat(condition, condition::below, over, Double.NaN, LevelSearch.TOLERANCE, null);
            if (foretellsRest(trial)) {
                starts.add(new Start(trial.plane(), NEAR));
            }
        }
        return starts;
    }

    private static double upright(Equilibrium e) {
        return e.plane().up().getZ();
    }

    private static boolean isAmong(List<Equilibrium> found, WaterPlane plane, double angle) {
        return found.stream().anyMatch(e -> Vector3D.angle(e.plane().up(), plane.up()) < angle);
    }

    private static List<Start> starts(Condition condition) {
        Sphere sphere = new Sphere();
        Trial[] trials = lookRound(condition, sphere);
        double[] energies = Arrays.stream(trials)
                .mapToDouble(t -> t.energyAfloat(condition.middleMm(), condition.densityGPerMm3()))
                .toArray();
        List<Start> starts = new ArrayList<>();
        // The lowest first: they are nearest to where others end as well.
        int[] order = IntStream.range(0, trials.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> energies[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int i : order) {
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
        double tolerance = Math.min(ROUGH, ROUGH_OF_RESERVE * condition.reserveG() / condition.massG());
        return Trial.afloat(condition, condition::below, direction, guessMm, tolerance, near);
    }
}
