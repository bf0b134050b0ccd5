package trimwright.statics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * Rests between which nothing stands in her way: a round body floats as well turned about its axis by any angle, and the corners of its
 * mesh make ripples in which she would seem to rest. Two rests belong to one row when she can go from one to the other over
 * no hump worth naming.
 */
final class Row {

    /** Height of a hump, as a share of the boat's length, that is none: 0.1 µm of the potential height on a boat of 1 m. */
    private static final double HUMP = 1e-7;
    /** Rests further apart than this belong together only by way of others between them, rad. */
    private static final double FAR = 2;
    /** Share of the weight that may be missing: far below the hump. */
    private static final double HELD = 1e-10;
    /** Two rests side by side are a loll, however slight; a row has more. */
    private static final int FEWEST = 3;
    /** Where on the way the height is looked at. */
    private static final double[] ON_THE_WAY = {0.5, 0.23, 0.77};
    /** Steps down into the valley that joins them. */
    private static final int STEPS = 3;

    private static final Comparator<Equilibrium> BY_UPRIGHTNESS =
            Comparator.comparingDouble(e -> e.plane().up().getZ());

    private Row() {}

    /** One rest for each row, the one nearest upright; a rest in no row stands for itself. */
    static List<Equilibrium> nearestUpright(Condition condition, List<Equilibrium> found) {
        List<Equilibrium> left = new ArrayList<>(found);
        List<Equilibrium> result = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Equilibrium> row = new ArrayList<>(List.of(left.remove(0)));
            for (int i = 0; i < row.size(); i++) {
                Equilibrium member = row.get(i);
                List<Equilibrium> joined =
                        left.stream().filter(e -> joined(condition, member, e)).toList();
                row.addAll(joined);
                left.removeAll(joined);
            }
            if (row.size() < FEWEST) {
                result.addAll(row);
            } else {
                result.add(Collections.max(row, BY_UPRIGHTNESS));
            }
        }
        return result;
    }

    /** Whether there are as many others of the same potential height as make a row, of which more need not be looked at. */
    static boolean isOneOfMany(Condition condition, Equilibrium rest, List<Equilibrium> others) {
        double hump = HUMP * condition.lengthMm();
        return others.stream()
                        .filter(e -> Math.abs(e.energyMm() - rest.energyMm()) <= hump)
                        .count()
                >= FEWEST - 1;
    }

    private static boolean joined(Condition condition, Equilibrium a, Equilibrium b) {
        double hump = HUMP * condition.lengthMm();
        Vector3D from = a.plane().up();
        Vector3D to = b.plane().up();
        if (Math.abs(a.energyMm() - b.energyMm()) > hump || Vector3D.angle(from, to) > FAR) {
            return false;
        }
        double limit = Math.min(a.energyMm(), b.energyMm()) + hump;
        for (double share : ON_THE_WAY) {
            if (valleyMm(condition, new Vector3D(1 - share, from, share, to)) > limit) {
                return false;
            }
        }
        return true;
    }

    /** Potential height at the bottom of the valley that passes near a direction, going down only where it is steepest. */
    private static double valleyMm(Condition condition, Vector3D up) {
        Trial trial = held(condition, WaterPlane.of(up, 0), Double.NaN);
        for (int i = 0; i < STEPS; i++) {
            TrustStep step = TrustStep.across(trial.principal(), Sphere.SPACING);
            WaterPlane next = trial.turned(step.x, step.y);
            trial = held(condition, next, next.heightMm());
        }
        return trial.potentialHeightMm();
    }

    private static Trial held(Condition condition, WaterPlane plane, double guessMm) {
        return Trial.afloat(condition, condition::below, plane, guessMm, HELD, null);
    }
}
