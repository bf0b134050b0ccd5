package trimwright.statics;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * Finds every attitude in which a boat can rest. The energy, its slope and its curvature are taken in directions spread over the whole
 * sphere; she then settles from each direction that is lower than its neighbours, or whose own curvature foretells a rest
 * within about a neighbour's distance, and from the bottom of each trough between two of them that foretells one. All that is done with rough sums, which cost
 * a fraction; from where it ends she settles exactly, and looks at the sides of herself that are like those she rests on. Equal ends are merged.
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

    /** Sine of the angle between two rests above which a direction is square to both. */
    private static final double LEAST_SQUARE = 0.5;

    /** So many rests are enough to know a body's sides by. */
    private static final int MOST_LOOKED_AT = 12;

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
        addAlike(condition, found);
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
     * Looks upside down at the rests that were found, and square to every two: most bodies have sides that are alike, and each side has a trough of its
     * own, which may be too narrow for any other start to lie in. Exactly, since rough sums may miss it.
     */
    private static void addAlike(Condition condition, List<Equilibrium> found) {
        List<Equilibrium> lookedAt = new ArrayList<>();
        // What is found on the way is looked at as well.
        for (int i = 0; i < found.size() && lookedAt.size() < MOST_LOOKED_AT; i++) {
            Equilibrium rest = found.get(i);
            if (Row.isOneOfMany(condition, rest, lookedAt)) {
                continue;
            }
            Vector3D up = rest.plane().up();
            addNear(condition, WaterPlane.of(up.negate(), 0), found);
            for (Equilibrium other : lookedAt) {
                Vector3D square = up.crossProduct(other.plane().up());
                if (square.getNorm() > LEAST_SQUARE) {
                    addWhereForetold(condition, square.normalize(), found);
                    addWhereForetold(condition, square.normalize().negate(), found);
                }
            }
            lookedAt.add(rest);
        }
    }

    private static void addWhereForetold(Condition condition, Vector3D up, List<Equilibrium> found) {
        WaterPlane direction = WaterPlane.of(up, 0);
        Trial trial = Trial.afloat(condition, condition::below, direction, Double.NaN, LevelSearch.TOLERANCE, null);
        if (foretellsRest(trial)) {
            addNear(condition, trial.plane(), found);
        }
    }

    private static void addNear(Condition condition, WaterPlane start, List<Equilibrium> found) {
        Balance.restNear(condition, start, NEAR, plane -> isAmong(found, plane, FORETOLD_SAME))
                .filter(Balance.Rest::found)
                .map(Balance.Rest::equilibrium)
                .filter(end -> !isAmong(found, end.plane(), SAME))
                .ifPresent(found::add);
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
        boolean[] begun = new boolean[trials.length];
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
            // Where it leads to farther away there are other starts.
            double farthest = lowest ? Math.PI : NEAR;
            begun[i] = lowest || foretellsRest(trials[i]);
            if (begun[i]) {
                starts.add(new Start(trials[i].plane(), farthest));
            }
        }
        starts.addAll(between(condition, sphere, trials, energies, begun));
        return starts;
    }

    /**
     * Between two neighbours that are both higher than what lies between them there runs a trough, and along its bottom may be a rest that is seen from neither. A
     * cubic through energies and slopes tells where the bottom is.
     */
    private static List<Start> between(
            Condition condition, Sphere sphere, Trial[] trials, double[] energies, boolean[] begun) {
        List<Start> starts = new ArrayList<>();
        for (int i = 0; i < trials.length; i++) {
            Trial here = trials[i];
            for (int n : sphere.neighbours(i)) {
                // Where she begins from either anyway, there is nothing hidden between them.
                if (n > i && !begun[i] && !begun[n]) {
                    bottom(here, trials[n], energies[n] - energies[i])
                            .map(plane -> rough(condition, plane, here))
                            .filter(Attitudes::foretellsRest)
                            .ifPresent(trial -> starts.add(new Start(trial.plane(), NEAR)));
                }
            }
        }
        return starts;
    }

    /** The direction between two at which the energy is least, if they both slope down to each other. */
    private static Optional<WaterPlane> bottom(Trial here, Trial there, double rise) {
        Vector3D from = here.plane().up();
        Vector3D to = there.plane().up();
        double angle = Vector3D.angle(from, to);
        double slope = angle * slope(here, to);
        double slopeAtEnd = -angle * slope(there, from);
        if (!(slope < 0 && slopeAtEnd > 0)) {
            return Optional.empty();
        }
        double share = bottom(rise, slope, slopeAtEnd);
        Vector3D up = new Vector3D(Math.sin((1 - share) * angle), from, Math.sin(share * angle), to);
        return Optional.of(WaterPlane.of(up.normalize(), 0));
    }

    /** How the energy rises as she turns toward another direction, g·mm per rad. */
    private static double slope(Trial trial, Vector3D toward) {
        double ahead = toward.dotProduct(trial.plane().ahead());
        double port = toward.dotProduct(trial.plane().port());
        return (trial.reducedSlopeAhead() * ahead + trial.reducedSlopePort() * port) / Math.hypot(ahead, port);
    }

    /**
     * Where in 0…1 a cubic is lowest that rises in all by so much, falls at the beginning and rises at the end.
     *
     * @param slope at 0, negative
     * @param slopeAtEnd at 1, positive
     */
    static double bottom(double rise, double slope, double slopeAtEnd) {
        double cubic = slope + slopeAtEnd - 2 * rise;
        double square = 3 * rise - 2 * slope - slopeAtEnd;
        // The slope is 3 cubic t² + 2 square t + slope. It changes its sign once; only rounding can put the root's
        // discriminant below 0.
        double root = Math.sqrt(Math.max(0, square * square - 3 * cubic * slope));
        return square > 0 ? -slope / (square + root) : (root - square) / (3 * cubic);
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
        trials[0] = rough(condition, WaterPlane.of(sphere.direction(0), 0), null);
        Deque<Integer> next = new ArrayDeque<>(List.of(0));
        while (!next.isEmpty()) {
            int from = next.remove();
            Trial near = trials[from];
            for (int to : sphere.neighbours(from)) {
                if (trials[to] == null) {
                    trials[to] = rough(condition, WaterPlane.of(sphere.direction(to), 0), near);
                    next.add(to);
                }
            }
        }
        return trials;
    }

    /** @param near a trial near by, or null */
    private static Trial rough(Condition condition, WaterPlane direction, Trial near) {
        double guessMm = near == null
                ? Double.NaN
                : direction.up().dotProduct(near.sums().centreOfFlotationMm());
        double tolerance = Math.min(ROUGH, ROUGH_OF_RESERVE * condition.reserveG() / condition.massG());
        return Trial.afloat(condition, condition::below, direction, guessMm, tolerance, near);
    }
}
