package trimwright.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * Finds every attitude in which a boat can rest. She settles from wherever a look round the whole sphere of directions says that it is worth it, with
 * rough sums, which cost a fraction; from where that ends she settles exactly, and looks at the sides of herself that are like those she rests on. Equal ends are
 * merged.
 */
final class Attitudes {

    /** Ends nearer than this are one, rad. */
    private static final double SAME = 1e-3;
    /** As near to one that was found must an end be that is foretold, to be that one; rad. */
    private static final double FORETOLD_SAME = 3e-3;
    /** Sine of the angle between two rests above which a direction is square to both. */
    private static final double LEAST_SQUARE = 0.5;

    /** So many rests are enough to know a body's sides by. */
    private static final int MOST_LOOKED_AT = 12;

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
        settle(condition, settled(rough, LookRound.starts(rough)), found);
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
    private static List<Equilibrium> settled(Condition condition, List<LookRound.Start> starts) {
        List<Equilibrium> found = new ArrayList<>();
        for (LookRound.Start start : starts) {
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
        if (LookRound.foretellsRest(trial)) {
            addNear(condition, trial.plane(), found);
        }
    }

    private static void addNear(Condition condition, WaterPlane start, List<Equilibrium> found) {
        Balance.restNear(condition, start, LookRound.NEAR, plane -> isAmong(found, plane, FORETOLD_SAME))
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
}
