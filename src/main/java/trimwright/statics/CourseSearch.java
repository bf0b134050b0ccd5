package trimwright.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import trimwright.boat.Part;
import trimwright.immersion.WaterPlane;

/**
 * Follows a boat along a way of changing conditions. Each state settles from the one before, as the real boat does, so that she stays in an
 * attitude as long as it is stable and goes over where it ends. Beside that the boat is held upright at each state, which tells where upright
 * is stable whether or not she is there.
 */
final class CourseSearch {

    /** Turn between two states from which it is asked whether she went over at once. */
    private static final double JUMP = Math.toRadians(5);
    /** Share of the way within which the place of a change is found. */
    private static final double PLACE = 1e-4;
    /** The same for the least metacentric height, about which it hardly changes. */
    private static final double PLACE_OF_LEAST = 1e-3;
    /** List within which a settled boat counts as held upright. */
    private static final double UPRIGHT_DEG = 0.1;

    private final DoubleFunction<Condition> conditions;
    private final DoubleUnaryOperator fills;
    private final List<State> states = new ArrayList<>();
    private final List<FallsOver> falls = new ArrayList<>();

    /**
     * @param conditions the boat at a progress 0…1 of the way
     * @param fills water in the tanks there, as a share of their volume
     */
    CourseSearch(DoubleFunction<Condition> conditions, DoubleUnaryOperator fills) {
        this.conditions = conditions;
        this.fills = fills;
    }

    /** The boat at one progress as she settles there; empty where she sinks. */
    private record Settled(double along, Condition condition, Optional<Balance.Rest> rest) {

        Vector3D up() {
            return rest.orElseThrow().trial().plane().up();
        }

        double heelDeg() {
            return Equilibrium.heelDeg(up());
        }
    }

    /** The same with the boat held upright there; empty where she sinks or no trim is stable. */
    private record State(Settled settled, Optional<Trial> upright) {

        double along() {
            return settled.along;
        }

        Condition condition() {
            return settled.condition;
        }

        boolean fallsFromUpright() {
            return isBelowNeutral(condition(), uprightGmMm());
        }

        double uprightGmMm() {
            return upright.map(t -> gmMm(condition(), t)).orElse(Double.NaN);
        }
    }

    /**
     * Goes the way.
     *
     * @param steps number of steps between its two ends; at least 1
     * @param start attitude to settle from at its beginning
     */
    Course follow(int steps, WaterPlane start) {
        List<Settled> way = new ArrayList<>();
        Foretelling resting = new Foretelling();
        Foretelling held = new Foretelling();
        List<CompletableFuture<Optional<Trial>>> uprights = new ArrayList<>();
        CompletableFuture<Optional<Trial>> upright = CompletableFuture.completedFuture(Optional.empty());
        for (int i = 0; i <= steps; i++) {
            Settled last = way.isEmpty() ? null : way.get(i - 1);
            Settled next = settled((double) i / steps, last, start, resting);
            next.rest.ifPresentOrElse(r -> resting.found(next.along, r.trial().plane()), resting::lost);
            if (last != null && last.rest.isPresent() && next.rest.isPresent()) {
                lookForFall(last, next);
            }
            way.add(next);
            // Where she stands upright hangs on the state before only, so that it is found while she goes on.
            upright = upright.thenApplyAsync(before -> {
                Optional<Trial> found = upright(next, before, held);
                found.ifPresentOrElse(t -> held.found(next.along, t.plane()), held::lost);
                return found;
            });
            uprights.add(upright);
        }
        for (int i = 0; i <= steps; i++) {
            states.add(new State(way.get(i), uprights.get(i).join()));
        }
        List<DiveStep> rows = states.parallelStream().map(this::row).toList();
        Optional<State> least = leastFirm();
        if (least.isPresent() && !states.contains(least.get())) {
            states.add(least.get());
            states.sort(Comparator.comparingDouble(State::along));
        }
        return new Course(
                rows,
                least.map(this::critical),
                unstable(),
                falls,
                least(rows, e -> -Math.abs(e.trimDeg())),
                least(rows, Equilibrium::gmLongitudinalMm));
    }

    private static double gmMm(Condition condition, Trial upright) {
        return upright.reducedPort() / condition.carriedG(upright.plane());
    }

    /** A round body with G on its axis stands neither firmly nor does it fall; what rounding leaves of its GM says nothing. */
    private static boolean isBelowNeutral(Condition condition, double gmMm) {
        return gmMm < -HeldList.REST * condition.lengthMm();
    }

    private Settled near(double along, Settled near) {
        return settled(along, near, near.rest.orElseThrow().trial().plane(), new Foretelling());
    }

    private Settled settled(double along, Settled near, WaterPlane start, Foretelling foretelling) {
        Condition condition = conditions.apply(along);
        if (!Flotation.floats(condition)) {
            return new Settled(along, condition, Optional.empty());
        }
        if (near == null || near.rest.isEmpty()) {
            return new Settled(along, condition, Optional.of(Balance.rest(condition, start)));
        }
        Trial before = near.rest.get().trial();
        return new Settled(
                along,
                condition,
                Optional.of(Balance.restOnTheWay(condition, foretelling.at(along, before.plane()), before)));
    }

    /** She herself where she stands upright; otherwise held there, from where she was held before if that is known. */
    private static Optional<Trial> upright(Settled settled, Optional<Trial> before, Foretelling foretelling) {
        if (settled.rest.isEmpty()) {
            return Optional.empty();
        }
        Trial rest = settled.rest.get().trial();
        if (Math.abs(settled.heelDeg()) < UPRIGHT_DEG) {
            return Optional.of(rest);
        }
        Trial near = before.orElse(rest);
        return HeldList.held(settled.condition, 0, foretelling.at(settled.along, HeldList.start(0, near)), near);
    }

    private DiveStep row(State state) {
        Optional<Equilibrium> settled = state.settled.rest.map(Balance.Rest::equilibrium);
        Map<String, Double> byId = new LinkedHashMap<>();
        state.condition().boat().parts().stream().filter(Part::isTank).forEach(p -> byId.put(p.id(), p.fill()));
        return new DiveStep(
                fills.applyAsDouble(state.along()),
                byId,
                Flotation.resting(state.condition(), settled),
                state.upright.map(t -> state.uprightGmMm()),
                settled.map(e -> Standing.of(state.condition(), e.plane())).orElse(List.of()),
                settled.map(e -> state.condition().heldAboveG(e.plane())).orElse(0.0));
    }

    /** Halves the interval between two states that differ much; what is left of the turn at the end was made at once. */
    private void lookForFall(Settled from, Settled to) {
        Settled before = from;
        Settled after = to;
        while (Vector3D.angle(before.up(), after.up()) > JUMP) {
            if (Math.abs(after.along - before.along) < PLACE) {
                falls.add(new FallsOver(fills.applyAsDouble(after.along), before.up(), after.up()));
                return;
            }
            Settled middle = near(0.5 * (before.along + after.along), before);
            if (middle.rest.isEmpty()) {
                return;
            }
            boolean stillThere =
                    Vector3D.angle(middle.up(), before.up()) < 0.5 * Vector3D.angle(before.up(), after.up());
            if (stillThere) {
                before = middle;
                after = near(after.along, middle);
            } else {
                after = middle;
            }
        }
    }

    /** The state with the least metacentric height upright, sought between the states of the way. */
    private Optional<State> leastFirm() {
        int least = -1;
        for (int i = 0; i < states.size(); i++) {
            double gm = states.get(i).uprightGmMm();
            if (!Double.isNaN(gm) && (least < 0 || gm < states.get(least).uprightGmMm())) {
                least = i;
            }
        }
        if (least < 0) {
            return Optional.empty();
        }
        State sampled = states.get(least);
        State before = states.get(Math.max(0, least - 1));
        State after = states.get(Math.min(states.size() - 1, least + 1));
        Foretelling held = new Foretelling();
        Foretelling resting = new Foretelling();
        for (State state : List.of(before, sampled, after)) {
            state.upright.ifPresent(t -> held.found(state.along(), t.plane()));
            state.settled.rest.ifPresent(
                    r -> resting.found(state.along(), r.trial().plane()));
        }
        UnivariatePointValuePair best = new BrentOptimizer(1e-6, PLACE_OF_LEAST)
                .optimize(
                        GoalType.MINIMIZE,
                        new MaxEval(100),
                        new SearchInterval(before.along(), after.along(), sampled.along()),
                        new UnivariateObjectiveFunction(along -> uprightGmAt(along, sampled, held)));
        if (!(best.getValue() < sampled.uprightGmMm())) {
            return Optional.of(sampled);
        }
        Settled near = before.settled.rest.isPresent() ? before.settled : sampled.settled;
        Settled there =
                settled(best.getPoint(), near, near.rest.orElseThrow().trial().plane(), resting);
        State firm = new State(there, upright(there, sampled.upright, held));
        // What was found upright from near by need not be what she is held in after she settled.
        return Optional.of(firm.uprightGmMm() < sampled.uprightGmMm() ? firm : sampled);
    }

    private double uprightGmAt(double along, State state, Foretelling foretelling) {
        Condition condition = conditions.apply(along);
        if (!Flotation.floats(condition)) {
            return Double.POSITIVE_INFINITY;
        }
        Trial near = state.upright.orElseThrow();
        return HeldList.held(condition, 0, foretelling.at(along, HeldList.start(0, near)), near)
                .map(t -> gmMm(condition, t))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private CriticalPoint critical(State state) {
        return new CriticalPoint(
                fills.applyAsDouble(state.along()),
                Steadiness.of(
                        state.condition(),
                        state.upright.orElseThrow(),
                        state.settled.rest.orElseThrow().equilibrium()));
    }

    private List<UnstableRange> unstable() {
        List<UnstableRange> ranges = new ArrayList<>();
        int i = 0;
        while (i < states.size()) {
            if (!states.get(i).fallsFromUpright()) {
                i++;
                continue;
            }
            int first = i;
            while (i < states.size() && states.get(i).fallsFromUpright()) {
                i++;
            }
            ranges.add(range(first, i - 1));
        }
        return ranges;
    }

    private UnstableRange range(int first, int last) {
        State widest = states.get(first);
        for (int i = first; i <= last; i++) {
            if (Math.abs(states.get(i).settled.heelDeg()) > Math.abs(widest.settled.heelDeg())) {
                widest = states.get(i);
            }
        }
        double from = first == 0 ? states.get(0).along() : border(states.get(first - 1), states.get(first));
        double to =
                last == states.size() - 1 ? states.get(last).along() : border(states.get(last + 1), states.get(last));
        return new UnstableRange(
                fills.applyAsDouble(from),
                fills.applyAsDouble(to),
                Math.abs(widest.settled.heelDeg()),
                fills.applyAsDouble(widest.along()));
    }

    /** Where upright becomes unstable, between a state where it is not and one where it is. */
    private double border(State firm, State unstable) {
        double good = firm.along();
        double bad = unstable.along();
        while (Math.abs(good - bad) > PLACE) {
            double middle = 0.5 * (good + bad);
            if (isBelowNeutral(unstable.condition(), uprightGmAt(middle, unstable, new Foretelling()))) {
                bad = middle;
            } else {
                good = middle;
            }
        }
        return bad;
    }

    private static Optional<DiveStep> least(List<DiveStep> rows, ToDoubleFunction<Equilibrium> what) {
        return rows.stream()
                .filter(row -> row.settled().isPresent())
                .min(Comparator.comparingDouble(
                        row -> what.applyAsDouble(row.settled().get())));
    }
}
