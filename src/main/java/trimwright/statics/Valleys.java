package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/**
 * Walks along the floors of narrow valleys of the energy. A long or flat body is held stiffly one way and turns easily the other; its rests lie along the floor
 * of the valley between, and may be dents so short that no direction spread over the sphere lies in them.
 */
final class Valleys {

    /** From one look to the next, rad. */
    private static final double STEP = 0.07;
    /** Curvature along the floor, as a share of that across, at which there is no telling which way the floor goes. */
    private static final double NARROW = 0.25;
    /** Least metacentric height across, as a share of the boat's length. */
    private static final double STIFF = 0.01;
    /** How far aside a direction may lie for the floor to be foretold from it, rad. */
    private static final double ASIDE = Sphere.SPACING / 2;
    /** Nearer than this to where one has looked there is nothing new, rad. */
    private static final double LOOKED = 0.6 * STEP;

    /** Rests farther away are foretold better from nearer by, rad. */
    private static final double WITHIN = 2 * STEP;

    private final Condition condition;
    private final BiFunction<WaterPlane, Trial, Trial> look;
    private final double stiff;
    private final List<Vector3D> looked = new ArrayList<>();
    private final List<Vector3D> foretold = new ArrayList<>();
    private final List<WaterPlane> starts = new ArrayList<>();

    private Valleys(Condition condition, BiFunction<WaterPlane, Trial, Trial> look) {
        this.condition = condition;
        this.look = look;
        stiff = STIFF * condition.massG() * condition.lengthMm();
    }

    /**
     * From where rests are foretold along the floors that pass near some trials.
     *
     * @param look gives the trial at a plane whose height is foretold, from one near by
     */
    static List<WaterPlane> starts(Condition condition, List<Trial> trials, BiFunction<WaterPlane, Trial, Trial> look) {
        Valleys valleys = new Valleys(condition, look);
        trials.forEach(valleys::enter);
        return List.copyOf(valleys.starts);
    }

    private void enter(Trial trial) {
        Principal p = trial.principal();
        if (!isFloorNear(p)) {
            return;
        }
        WaterPlane floor = turned(trial, p, 0);
        if (!isLookedAt(floor, STEP)) {
            Trial start = look.apply(floor, trial);
            looked.add(floor.up());
            walk(start, 1);
            walk(start, -1);
        }
    }

    /** @param way 1 or -1: which of the two ways along the floor to begin with */
    private void walk(Trial start, double way) {
        Trial here = start;
        Principal p = here.principal();
        Vector3D ahead = along(here, p).scalarMultiply(way);
        while (isFloorNear(p)) {
            foretell(here);
            double sign = Math.signum(along(here, p).dotProduct(ahead));
            WaterPlane next = turned(here, p, sign * STEP);
            if (isLookedAt(next, LOOKED)) {
                return;
            }
            looked.add(next.up());
            Trial there = look.apply(next, here);
            ahead = next.up().subtract(here.plane().up());
            between(here, there);
            here = there;
            p = here.principal();
        }
        foretell(here);
    }

    /** A dent that begins and ends between two looks. */
    private void between(Trial here, Trial there) {
        Trough.between(condition, here, there)
                .map(plane -> look.apply(plane, here))
                .ifPresent(this::foretell);
    }

    private void foretell(Trial trial) {
        if (trial.principal().restsWithin(WITHIN)) {
            TrustStep step = TrustStep.of(trial.principal(), WITHIN);
            Vector3D rest = trial.turned(step.x, step.y).up();
            if (foretold.stream().noneMatch(r -> Vector3D.angle(r, rest) < LOOKED)) {
                foretold.add(rest);
                // In a dent with a kink the foretold place may be past its rim; the trial itself lies within.
                starts.add(trial.plane());
            }
        }
    }

    private boolean isFloorNear(Principal p) {
        return p.high > stiff && Math.abs(p.low) < NARROW * p.high && Math.abs(p.slopeHigh) < ASIDE * p.high;
    }

    private boolean isLookedAt(WaterPlane plane, double near) {
        return looked.stream().anyMatch(v -> Vector3D.angle(v, plane.up()) < near);
    }

    /** Down to the floor and so far along it. */
    private static WaterPlane turned(Trial trial, Principal p, double along) {
        double across = -p.slopeHigh / p.high;
        return trial.turned(p.x(across, along), p.y(across, along));
    }

    /** The direction of the floor, one of two. */
    private static Vector3D along(Trial trial, Principal p) {
        return new Vector3D(
                p.x(0, 1), trial.plane().ahead(), p.y(0, 1), trial.plane().port());
    }
}
