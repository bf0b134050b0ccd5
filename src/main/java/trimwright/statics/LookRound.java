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
 * Where it is worth letting a boat settle from, to find every rest. The energy, its slope and its curvature are taken in directions spread over the whole sphere; she begins
 * from each that is lower than its neighbours or foretells a rest within about a neighbour's distance, from the bottom of each trough between two of them that foretells one, and from
 * what the floors of narrow valleys foretell. All of it with sums that are as rough as she is.
 */
final class LookRound {

    /** Share of the weight that may be missing; the energy is then corrected for it. */
    private static final double ROUGH = 0.05;
    /** The same as a share of what she could still carry: of a boat nearly under, a corner that is out of the water decides how she lies. */
    private static final double ROUGH_OF_RESERVE = 0.25;
    /** The same share of the weight on the floor of a valley, whose dents are slight: what is out of the water by a corner may make one. */
    private static final double ON_FLOOR = 5e-3;

    /** How far from where it was foretold a rest is looked for, rad. */
    static final double NEAR = 2 * Sphere.SPACING;

    /** Where to begin, and how far from there to look, rad. */
    record Start(WaterPlane plane, double farthest) {}

    private final Condition condition;
    private final Sphere sphere = new Sphere();
    private final Trial[] trials = new Trial[sphere.size()];
    private final boolean[] begun = new boolean[trials.length];
    private final List<Start> starts = new ArrayList<>();

    private LookRound(Condition condition) {
        this.condition = condition;
    }

    static List<Start> starts(Condition condition) {
        LookRound round = new LookRound(condition);
        round.look();
        round.beginFromDirections();
        List<Trial> bottoms = round.bottoms();
        bottoms.stream().filter(LookRound::foretellsRest).forEach(bottom -> round.begin(bottom.plane()));
        List<Trial> all = new ArrayList<>(List.of(round.trials));
        all.addAll(bottoms);
        Valleys.starts(condition, all, (plane, near) -> round.afloat(plane, near, ON_FLOOR))
                .forEach(round::begin);
        return round.starts;
    }

    /** Whether a rest is near enough that no neighbour would be nearer. */
    static boolean foretellsRest(Trial trial) {
        return trial.principal().restsWithin(Sphere.SPACING);
    }

    private void begin(WaterPlane plane) {
        starts.add(new Start(plane, NEAR));
    }

    /** Every direction of the sphere, each from the height that a neighbour foretells. */
    private void look() {
        trials[0] = afloat(WaterPlane.of(sphere.direction(0), 0), null, ROUGH);
        Deque<Integer> next = new ArrayDeque<>(List.of(0));
        while (!next.isEmpty()) {
            int from = next.remove();
            for (int to : sphere.neighbours(from)) {
                if (trials[to] == null) {
                    trials[to] = afloat(WaterPlane.of(sphere.direction(to), 0), trials[from], ROUGH);
                    next.add(to);
                }
            }
        }
    }

    private void beginFromDirections() {
        double[] energies = Arrays.stream(trials)
                .mapToDouble(t -> t.energyAfloat(condition))
                .toArray();
        // The lowest first: they are nearest to where others end as well.
        int[] order = IntStream.range(0, trials.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> energies[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int i : order) {
            boolean lowest = sphere.neighbours(i).stream().allMatch(n -> energies[i] <= energies[n]);
            begun[i] = lowest || foretellsRest(trials[i]);
            if (begun[i]) {
                // Where it leads to farther away there are other starts.
                starts.add(new Start(trials[i].plane(), lowest ? Math.PI : NEAR));
            }
        }
    }

    /**
     * Between two neighbours that are both higher than what lies between them there runs a trough, and along its bottom may be a rest that is seen from neither. Where she
     * begins from either anyway, nothing is hidden.
     */
    private List<Trial> bottoms() {
        List<Trial> bottoms = new ArrayList<>();
        for (int i = 0; i < trials.length; i++) {
            Trial here = trials[i];
            for (int n : sphere.neighbours(i)) {
                if (n > i && !begun[i] && !begun[n]) {
                    Trough.between(condition, here, trials[n])
                            .ifPresent(plane -> bottoms.add(afloat(plane, here, ROUGH)));
                }
            }
        }
        return bottoms;
    }

    /**
     * @param near a trial near by, or null
     * @param most share of the weight that may be missing
     */
    private Trial afloat(WaterPlane direction, Trial near, double most) {
        double guessMm = near == null ? Double.NaN : heightMm(direction.up(), near);
        double tolerance = Math.min(most, ROUGH_OF_RESERVE * condition.reserveG() / condition.massG());
        return Trial.afloat(condition, condition::below, direction, guessMm, tolerance, near);
    }

    /** By a trial near by: turned about its centre of flotation, and raised by what was missing there. */
    private static double heightMm(Vector3D up, Trial near) {
        double turned = up.dotProduct(near.sums().centreOfFlotationMm());
        return near.curveHeight > 0 ? turned - near.force / near.curveHeight : turned;
    }
}
