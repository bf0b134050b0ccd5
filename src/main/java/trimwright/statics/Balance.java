package trimwright.statics;

import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * Lets a boat settle: minimises the energy of boat and water over height and attitude together, by Newton's method within a trust region on
 * the sphere of directions (docs/statics.md, section 2). Near the answer it converges quadratically; far from it each accepted
 * step lowers the energy, so it cannot circle; on the ridge of a loll it steps off to one side.
 */
final class Balance {

    /** Share of the weight, and of weight times length, that counts as nothing. */
    private static final double REST = 1e-12;
    /** The same for a state that is one of many on a way, so that it is told to a billionth. */
    private static final double REST_ON_THE_WAY = 5e-10;
    /** Share by which the waterplane may change over a last step that is taken without another cut. */
    private static final double SAME_WATERPLANE = 1e-6;
    /** The most unrest there may be before it: where the waterplane jumps by a hundredth, at a flat face, less than a billionth is left. */
    private static final double LITTLE_UNREST = 5e-8;
    /** Share of the metacentric height that the change may come to. */
    private static final double SAME_GM = 1e-5;
    /** Share of the boat's length by which a metacentric height must be negative to count as a ridge. */
    private static final double RIDGE = 1e-9;
    /** Force, as a share of the weight, above which the height is put right before turning. */
    private static final double FAR_FROM_AFLOAT = 1e-2;

    private static final double FIRST_RADIUS = 0.1;
    private static final double MOST_RADIUS = 0.3;
    private static final double LEAST_RADIUS = 1e-14;
    /** The same for rough sums, whose slopes and energies do not agree to the last. */
    private static final double ROUGH_REST = 1e-5;

    private static final double ROUGH_LEAST_RADIUS = 3e-3;
    private static final int MOST_STEPS = 300;
    /** From how far away a known rest is recognised, rad. */
    private static final double FORETOLD = 0.1;

    private final Condition condition;
    private final double weight;
    private final double length;
    private final double noise;
    private final double rest;
    private final double leastRadius;
    private final boolean listHeld;
    private final boolean onTheWay;
    private final double farthest;

    private Predicate<WaterPlane> known = plane -> false;
    private Trial trial;
    private double energy;
    private double radius;
    private int cuts;
    /** Unrest that the last step left, as a share of what it found; 1 when it was no full step of Newton's. */
    private double unrestLeft = 1;

    /** @param onTheWay whether the state is one of many on a way, which need not be told to the last digit */
    private Balance(Condition condition, boolean listHeld, double farthest, boolean onTheWay) {
        this.condition = condition;
        this.listHeld = listHeld;
        this.farthest = farthest;
        weight = condition.massG();
        length = condition.lengthMm();
        // Rounding in the sums, as an energy: differences below it say nothing.
        noise = 1e-13 * weight * length;
        this.onTheWay = onTheWay;
        rest = condition.isRough() ? ROUGH_REST : onTheWay ? REST_ON_THE_WAY : REST;
        leastRadius = condition.isRough() ? ROUGH_LEAST_RADIUS : LEAST_RADIUS;
    }

    /**
     * Settles from an attitude. The boat must be able to float: reserve positive.
     *
     * @param start the attitude and a guess of the height
     */
    static Equilibrium settle(Condition condition, WaterPlane start) {
        return rest(condition, start).equilibrium();
    }

    /** The same, with all that is known of the end. */
    static Rest rest(Condition condition, WaterPlane start) {
        return new Balance(condition, false, Math.PI, false).run(start, null);
    }

    /** Settles on a way from one condition to another; {@code before}, the trial before, lends its tank levels as a first guess. */
    static Rest restOnTheWay(Condition condition, WaterPlane start, Trial before) {
        return new Balance(condition, false, Math.PI, true).run(start, before);
    }

    /**
     * The same, but given up when she turns too far from where she starts, or is so near to a rest that is known that she will end there.
     *
     * @param farthest angle, rad
     * @param known whether there is a known rest at a plane
     * @return empty when she goes to a known rest
     */
    static Optional<Rest> restNear(
            Condition condition, WaterPlane start, double farthest, Predicate<WaterPlane> known) {
        Balance balance = new Balance(condition, false, farthest, false);
        balance.known = known;
        return Optional.ofNullable(balance.run(start, null));
    }

    /**
     * Settles in height and trim only, with the list held as it is at the start.
     *
     * @param before a trial near by, to lend its tank levels
     */
    static Rest restHeld(Condition condition, WaterPlane start, Trial before) {
        return new Balance(condition, true, Math.PI, true).run(start, before);
    }

    /**
     * Where the search ended.
     *
     * @param trial energy and slopes there
     * @param gmLeastMm least metacentric height: about any level axis, or with the list held about the axis across
     * @param found whether she rests there; otherwise the steps ran out
     * @param cuts water planes tried
     */
    record Rest(Trial trial, double gmLeastMm, boolean found, int cuts) {

        Equilibrium equilibrium() {
            return Equilibrium.of(trial, gmLeastMm, cuts);
        }
    }

    /** Null when she goes to a known rest. */
    private Rest run(WaterPlane start, Trial before) {
        radius = FIRST_RADIUS;
        accept(evaluate(start, before));
        double least = Double.NaN;
        boolean found = false;
        for (int step = 0; step < MOST_STEPS; step++) {
            if (trial.curveHeight > 0 && Math.abs(trial.force) > FAR_FROM_AFLOAT * weight) {
                putHeightRight(0.1 * FAR_FROM_AFLOAT);
            }
            if (trial.curveHeight <= 0) {
                // Between two bodies, one under and one out, no slope leads to where she is carried, however little is
                // missing; the height that was put right a moment ago may be such a one.
                putHeightRight(rest);
            }
            TrustStep turn = step();
            least = turn.leastCurvature / weight;
            found = atRest(least);
            if (found) {
                break;
            }
            if (foretellsKnown(turn)) {
                return null;
            }
            if (farthest < Math.PI && Vector3D.angle(trial.plane().up(), start.up()) > farthest) {
                break;
            }
            WaterPlane next = trial.turned(turn.x, turn.y);
            if (restsAfter(turn)) {
                trial = trial.followed(condition, next);
                found = true;
                break;
            }
            Trial candidate = evaluate(next, trial);
            if (!consider(candidate, turn)) {
                if (radius < leastRadius) {
                    break;
                }
                if (Math.abs(trial.force) > rest * weight) {
                    // A small waterplane lets a little force foretell a large rise, which no smaller turn would mend.
                    putHeightRight(rest);
                }
            }
        }
        return new Rest(trial, least, found, cuts);
    }

    /**
     * Whether the step is so short that what is immersed after it need not be cut out once more. The share of unrest that the step before left
     * tells how much the waterplane changed over it, and so how much less it will over this one.
     */
    private boolean restsAfter(TrustStep turn) {
        double change = unrestLeft * unrestLeft;
        double metacentre = condition.densityGPerMm3() * trial.sums().inertiaPortMm4();
        return onTheWay
                && !condition.isRough()
                && unrest(trial) < LITTLE_UNREST
                && change < SAME_WATERPLANE
                && change * metacentre < SAME_GM * Math.abs(trial.reducedPort())
                && isNewton(turn);
    }

    /** Whether the step goes all the way to where the local model rests. */
    private boolean isNewton(TrustStep turn) {
        return trial.curveHeight > 0 && turn.leastCurvature > 0 && Math.hypot(turn.x, turn.y) < radius;
    }

    private TrustStep step() {
        if (listHeld) {
            return TrustStep.alongX(trial.reducedSlopeAhead(), trial.reducedAhead(), radius);
        }
        return TrustStep.of(trial.principal(), radius);
    }

    private boolean foretellsKnown(TrustStep turn) {
        return turn.leastCurvature > 0
                && Math.hypot(turn.x, turn.y) < FORETOLD
                && known.test(trial.turned(turn.x, turn.y));
    }

    private double moment(Trial t) {
        return listHeld ? Math.abs(t.slopeAhead) : Math.hypot(t.slopeAhead, t.slopePort);
    }

    private boolean atRest(double leastMm) {
        return Math.abs(trial.force) <= rest * weight
                && moment(trial) <= rest * weight * length
                && leastMm > -RIDGE * length;
    }

    /** Takes the candidate if it lies lower, or as low to within rounding and nearer to rest; adapts the radius. */
    private boolean consider(Trial candidate, TrustStep turn) {
        double stepLength = Math.hypot(turn.x, turn.y);
        double heightPart = trial.curveHeight > 0 ? 0.5 * trial.force * trial.force / trial.curveHeight : 0;
        double foretold = turn.fall + heightPart;
        double newEnergy = candidate.energyAbout(condition.middleMm(), condition.densityGPerMm3());
        double fall = energy - newEnergy;
        if (foretold > noise ? fall > 0.1 * foretold : unrest(candidate) < unrest(trial)) {
            double share = isNewton(turn) ? unrest(candidate) / unrest(trial) : 1;
            if (foretold <= noise || fall > 0.7 * foretold) {
                radius = Math.min(MOST_RADIUS, Math.max(radius, 2 * stepLength));
            }
            accept(candidate);
            unrestLeft = share;
            return true;
        }
        radius = 0.25 * Math.min(radius, stepLength);
        return false;
    }

    private double unrest(Trial t) {
        return Math.max(Math.abs(t.force) / weight, moment(t) / (weight * length));
    }

    /** @param tolerance share of the weight that may be missing */
    private void putHeightRight(double tolerance) {
        WaterPlane plane = trial.plane();
        double guess = plane.heightMm() - trial.force / trial.curveHeight;
        accept(Trial.afloat(condition, this::below, plane, guess, tolerance, trial));
    }

    private Immersion below(WaterPlane plane) {
        cuts++;
        return condition.below(plane);
    }

    private Trial evaluate(WaterPlane plane, Trial before) {
        return Trial.of(condition, below(plane), before);
    }

    private void accept(Trial next) {
        trial = next;
        unrestLeft = 1;
        energy = next.energyAbout(condition.middleMm(), condition.densityGPerMm3());
    }

    /** The upright attitude with a guess of the height: the painted line if there is one, otherwise half way up. */
    static WaterPlane upright(Condition condition) {
        Vector3D middle = condition.middleMm();
        double height = condition
                .boat()
                .paintedLine()
                .map(line -> middle.getZ()
                        + (line.plane().heightMm() - line.plane().up().dotProduct(middle))
                                / line.plane().up().getZ())
                .orElse(middle.getZ());
        return WaterPlane.level(height);
    }
}
