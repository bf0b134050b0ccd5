package trimwright.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import trimwright.boat.Piece;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.immersion.WaterPlane;

/** Works out the righting curve of a floating boat: outward from her equilibrium, each list from the one before. */
final class RightingSearch {

    /** Change of trim between two lists from which it is asked whether she went over to another trim at once. */
    private static final double TRIM_JUMP_DEG = 20;
    /** Accuracy of the list at which she does, rad. */
    private static final double JUMP_PLACE = 1e-4;
    /** Accuracy of lists that are sought, rad. */
    private static final double ANGLE = 1e-7;
    /** Accuracy of the list at which no trim is stable any more, rad; each list tried beyond it costs a whole search. */
    private static final double TRIM_ENDS = 1e-5;
    /** Greatest way from one list to the next, so that the summary does not hang on how many rows are asked for. */
    private static final double GREATEST_STEP_DEG = 5;

    private final Condition condition;
    private final double rowDeg;
    /** Lists sought for each row. */
    private final int listsPerRow;

    private final double stepDeg;
    private final Trial equilibrium;
    private final double restHeel;
    /** First list at or to starboard of the equilibrium, and the last one, in steps. */
    private final int above;

    private final int last;
    private final NavigableMap<Integer, Trial> held = new TreeMap<>();
    private final List<Finding> findings = new ArrayList<>();

    RightingSearch(Condition condition, double rowDeg) {
        if (!(rowDeg > 0)) {
            throw new IllegalArgumentException("the step of the list must be positive, found " + rowDeg + "°");
        }
        this.condition = condition;
        this.rowDeg = rowDeg;
        listsPerRow = (int) Math.ceil(rowDeg / GREATEST_STEP_DEG - 1e-9);
        stepDeg = rowDeg / listsPerRow;
        equilibrium =
                starboardOne(Balance.rest(condition, Balance.upright(condition)).trial());
        restHeel = heel(equilibrium);
        above = (int) Math.ceil(Math.toDegrees(restHeel) / stepDeg);
        last = (int) Math.floor(180 / rowDeg + 1e-9) * listsPerRow;
    }

    static Optional<Double> leverMm(Condition condition, double heelDeg) {
        Trial rest = Balance.rest(condition, Balance.upright(condition)).trial();
        return HeldList.held(condition, Math.toRadians(heelDeg), rest).map(RightingSearch::gz);
    }

    /** Of two equal rests the one to starboard, so that the starboard side is the one she leans to. */
    private Trial starboardOne(Trial settled) {
        double heelDeg = Math.toDegrees(heel(settled));
        if (heelDeg > -0.1) {
            return settled;
        }
        Vector3D up = settled.plane().up();
        WaterPlane mirrored = WaterPlane.of(new Vector3D(up.getX(), -up.getY(), up.getZ()), 0);
        Trial other =
                Balance.rest(condition, mirrored.at(settled.plane().heightMm())).trial();
        return Math.abs(Math.toDegrees(heel(other)) + heelDeg) < 0.1 ? other : settled;
    }

    RightingCurve curve() {
        // Both ways at once: neither hangs on the other.
        CompletableFuture<March> toPort = CompletableFuture.supplyAsync(() -> march(above - 1, -last - 1, -1));
        take(march(above, last + 1, 1));
        take(toPort.join());
        List<RightingCurve.Row> rows = new ArrayList<>();
        held.forEach((k, trial) -> {
            if (k % listsPerRow == 0) {
                rows.add(row(k / listsPerRow * rowDeg, trial));
            }
        });
        return new RightingCurve(
                new RightingCurve.Attitude(Math.toDegrees(restHeel), trimDeg(equilibrium)),
                rows,
                summary(),
                DeckEdge.of(condition).flatMap(this::under),
                highest()
                        .flatMap(piece -> under(piece.displacer().orElseThrow().highestMm(Vector3D.PLUS_K))
                                .map(deg -> new RightingCurve.TopUnder(piece.id(), deg))),
                findings);
    }

    /** What was found on one way. */
    private record March(Map<Integer, Trial> held, List<Finding> findings) {}

    private void take(March march) {
        held.putAll(march.held);
        findings.addAll(march.findings);
    }

    private March march(int from, int end, int way) {
        March march = new March(new HashMap<>(), new ArrayList<>());
        Trial near = equilibrium;
        Foretelling planes = new Foretelling();
        // She may rest beyond the last row, where 180° is no whole number of rows.
        for (int k = from; (end - k) * way > 0; k += way) {
            double heel = Math.toRadians(k * stepDeg);
            Optional<Trial> next = HeldList.held(condition, heel, planes.at(k, HeldList.start(heel, near)), near);
            if (next.isEmpty()) {
                planes.lost();
            } else {
                planes.found(k, next.get().plane());
                jump(near, next.get()).ifPresent(jump -> march.findings.add(jump.finding()));
                near = next.get();
                march.held.put(k, near);
            }
        }
        return march;
    }

    /** Two lists as good as one, between which she goes over to another trim. */
    private record Jump(Trial before, Trial after) {

        Finding finding() {
            return Finding.of(
                    Code.TRIM_JUMPS,
                    new Place.Whole(),
                    "heelDeg",
                    Math.toDegrees(heel(after)),
                    "fromTrimDeg",
                    trimDeg(before),
                    "toTrimDeg",
                    trimDeg(after));
        }

        /** How much higher or lower B stands to G for it. */
        double fallMm() {
            return after.potentialHeightMm() - before.potentialHeightMm();
        }
    }

    /** Halves the way between two lists whose trims differ much, until they do not, or all of it is found to happen at once. */
    private Optional<Jump> jump(Trial from, Trial to) {
        Trial before = from;
        Trial after = to;
        while (apart(before, after) > TRIM_JUMP_DEG) {
            double way = Math.IEEEremainder(heel(after) - heel(before), 2 * Math.PI);
            Optional<Trial> middle =
                    Math.abs(way) < JUMP_PLACE ? Optional.empty() : between(before, after, heel(before) + 0.5 * way);
            if (middle.isEmpty()) {
                return Optional.of(new Jump(before, after));
            }
            if (apart(middle.get(), before) < apart(middle.get(), after)) {
                before = middle.get();
            } else {
                after = middle.get();
            }
        }
        return Optional.empty();
    }

    /**
     * Held at a list between two others: of what is found from either that whose trim lies more evenly between theirs. So where an even keel gives way to a trim
     * by either end, the same end is followed.
     */
    private Optional<Trial> between(Trial before, Trial after, double heel) {
        return Stream.of(before, after)
                .flatMap(near -> HeldList.held(condition, heel, near).stream())
                .min(Comparator.comparingDouble(t -> Math.max(apart(t, before), apart(t, after))));
    }

    private static double apart(Trial a, Trial b) {
        return Math.abs(trimDeg(a) - trimDeg(b));
    }

    private RightingCurve.Row row(double heelDeg, Trial trial) {
        double gz = gz(trial);
        return new RightingCurve.Row(heelDeg, trimDeg(trial), gz, gz * trial.massG());
    }

    /** The lever in mm: (G − B) · ∂n/∂φ, and ∂n/∂φ is the plane's port axis times cos θ. */
    private static double gz(Trial trial) {
        double cosTrim = Math.cos(Math.toRadians(trimDeg(trial)));
        return trial.reducedSlopePort() / trial.massG() * cosTrim;
    }

    private static double heel(Trial trial) {
        return Math.toRadians(Equilibrium.heelDeg(trial.plane().up()));
    }

    /** A list beyond 180° to starboard, where the angle itself begins anew at −180°. */
    private double toStarboard(double heel) {
        return heel < restHeel - ANGLE ? heel + 2 * Math.PI : heel;
    }

    private static double trimDeg(Trial trial) {
        return Equilibrium.trimDeg(trial.plane().up());
    }

    private RightingCurve.Summary summary() {
        Trial before = equilibrium;
        Trial highest = equilibrium;
        double area = 0;
        for (int k = above; (k - above) * stepDeg < 360; k++) {
            double list = Math.toRadians(k * stepDeg);
            Optional<Trial> held = held(k, before);
            Trial next = held.isPresent() ? held.get() : lastWithTrim(before, list);
            if (gz(next) <= 0 && toStarboard(heel(next)) - restHeel > ANGLE) {
                Trial end = vanishing(before, next);
                return summary(end, highest, area + area(before, end), false);
            }
            area += area(before, next);
            before = next;
            highest = gz(next) > gz(highest) ? next : highest;
            if (held.isEmpty()) {
                return summary(before, highest, area, true);
            }
        }
        return summary(before, highest, area, false);
    }

    /** Held at a list of the curve, or beyond 180°, where the starboard side goes on. */
    private Optional<Trial> held(int k, Trial near) {
        return k <= last
                ? Optional.ofNullable(held.get(k))
                : HeldList.held(condition, Math.toRadians(k * stepDeg), near);
    }

    /** The last list, before one that has no stable trim, that still has one. */
    private Trial lastWithTrim(Trial stable, double without) {
        Trial good = stable;
        double bad = without;
        while (bad - toStarboard(heel(good)) > TRIM_ENDS) {
            double middle = 0.5 * (toStarboard(heel(good)) + bad);
            Optional<Trial> tried = HeldList.held(condition, middle, good);
            if (tried.isPresent()) {
                good = tried.get();
            } else {
                bad = middle;
            }
        }
        return good;
    }

    private RightingCurve.Summary summary(Trial end, Trial highest, double area, boolean endsWithoutTrim) {
        double endHeel = toStarboard(heel(end));
        double step = Math.toRadians(stepDeg);
        double greatest = gz(highest);
        double at = toStarboard(heel(highest));
        double low = Math.max(restHeel, at - step);
        double high = Math.min(endHeel, at + step);
        if (high > low) {
            UnivariatePointValuePair peak = new BrentOptimizer(1e-9, ANGLE)
                    .optimize(
                            GoalType.MAXIMIZE,
                            new MaxEval(100),
                            new SearchInterval(low, high, at),
                            new UnivariateObjectiveFunction(
                                    heel -> gzAt(heel, highest).orElse(Double.NEGATIVE_INFINITY)));
            if (peak.getValue() > greatest) {
                greatest = peak.getValue();
                at = peak.getPoint();
            }
        }
        return new RightingCurve.Summary(
                Math.toDegrees(endHeel - restHeel), greatest, Math.toDegrees(at), area, endsWithoutTrim);
    }

    /** Difference of e*; where the trim goes over, the fall in between does not right her. */
    private double area(Trial from, Trial to) {
        double fallMm = jump(from, to).map(Jump::fallMm).orElse(0.0);
        return to.potentialHeightMm() - from.potentialHeightMm() - fallMm;
    }

    private Optional<Double> gzAt(double heel, Trial near) {
        return HeldList.held(condition, heel, near).map(RightingSearch::gz);
    }

    /** Where the lever is zero between two lists. */
    private Trial vanishing(Trial positive, Trial negative) {
        return root(positive, negative, RightingSearch::gz);
    }

    /** Between a list where a quantity is positive and one where it is not: where it vanishes. */
    private Trial root(Trial positive, Trial negative, ToDoubleFunction<Trial> quantity) {
        Trial good = positive;
        Trial bad = negative;
        while (toStarboard(heel(bad)) - toStarboard(heel(good)) > ANGLE) {
            double g = quantity.applyAsDouble(good);
            double b = quantity.applyAsDouble(bad);
            // The secant, kept a little off both ends so that each turn narrows the interval.
            double share = g > b ? Math.min(0.95, Math.max(0.05, g / (g - b))) : 0.5;
            double from = toStarboard(heel(good));
            double heel = from + share * (toStarboard(heel(bad)) - from);
            Optional<Trial> middle = HeldList.held(condition, heel, share < 0.5 ? good : bad);
            if (middle.isEmpty()) {
                return good;
            }
            if (quantity.applyAsDouble(middle.get()) > 0) {
                good = middle.get();
            } else {
                bad = middle.get();
            }
        }
        return bad;
    }

    /** List to starboard at which a point of the boat goes under. */
    private Optional<Double> under(Vector3D point) {
        ToDoubleFunction<Trial> height =
                t -> t.plane().up().dotProduct(point) - t.plane().heightMm();
        Trial before = equilibrium;
        if (height.applyAsDouble(before) <= 0) {
            return Optional.of(Math.toDegrees(restHeel));
        }
        for (Trial next : held.tailMap(above, true).values()) {
            if (height.applyAsDouble(next) <= 0) {
                return Optional.of(Math.toDegrees(toStarboard(heel(root(before, next, height)))));
            }
            before = next;
        }
        return Optional.empty();
    }

    private Optional<Piece> highest() {
        return condition.pieces().stream()
                .filter(piece -> piece.displacer().isPresent())
                .max(Comparator.comparingDouble(piece -> piece.displacer().get().topMm(Vector3D.PLUS_K)));
    }
}
