package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import trimwright.boat.Boat;
import trimwright.boat.PaintedLine;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/**
 * How far a boat may be off before she gets wet: many boats with errors drawn from the margins of their parts, each floated and dived. Draw i
 * depends on the seed and on i alone, so that the result is the same for any number of threads.
 *
 * @param draws how many boats
 * @param seed what the draws begin from
 * @param spreads the spread of every figure
 * @param within how many of them are within her targets all at once, as a share; empty where she has none
 * @param withinByFigure the same for each target alone
 * @param sinks how many sink surfaced, as a share
 * @param causes which parts matter, as shares of all scatter in line, list and dive, the greatest first
 * @param inHand what lead would bring 19 of 20 of them onto the line; empty without a painted line
 */
public record Tolerance(
        int draws,
        long seed,
        Map<Figure, Spread> spreads,
        Optional<Double> within,
        Map<Figure, Double> withinByFigure,
        double sinks,
        List<Cause> causes,
        Optional<InHand> inHand) {

    /** How many boats are drawn where nobody says. */
    public static final int USUAL_DRAWS = 2000;

    /** Fewer tell no chance, more take too long. */
    public static final int FEWEST_DRAWS = 100;

    public static final int MOST_DRAWS = 100_000;

    private static final double LOW_PERCENT = 5;
    private static final double HIGH_PERCENT = 95;

    public Tolerance {
        spreads = Map.copyOf(spreads);
        withinByFigure = Map.copyOf(withinByFigure);
        causes = List.copyOf(causes);
    }

    /** A figure as the file has it, its standard deviation, and what 5 and 95 of 100 boats stay below. */
    public record Spread(double asGiven, double error, double low, double high) {}

    /** A part and its share of the scatter, 0…1. */
    public record Cause(String part, double share) {}

    /**
     * What to keep in hand.
     *
     * @param addG lead that 19 of 20 boats need at most; negative where even those are too heavy
     * @param takeG mass that 19 of 20 boats need to lose at most; negative where they need more
     * @param alongGmm moment along that they need at most, either way
     * @param acrossGmm the same across
     * @param aboutXMm where along the boat it does nothing but its weight: the centre of buoyancy on the line
     */
    public record InHand(double addG, double takeG, double alongGmm, double acrossGmm, double aboutXMm) {

        /** All lead that may have to be laid elsewhere, g; 0 where none has to come or go. */
        public double adjustableG() {
            return Math.max(0, addG) + Math.max(0, takeG);
        }

        /** How far ahead or aft of {@link #aboutXMm} that lead must be able to lie, mm; empty where there is none. */
        public Optional<Double> reachAlongMm() {
            return adjustableG() > 0 ? Optional.of(alongGmm / adjustableG()) : Optional.empty();
        }

        /** The same to either side. */
        public Optional<Double> reachAcrossMm() {
            return adjustableG() > 0 ? Optional.of(acrossGmm / adjustableG()) : Optional.empty();
        }
    }

    private record Draw(double[] figures, Optional<Vector3D> lacking) {}

    /**
     * @param draws how many boats; at least 2
     * @param seed what the draws begin from
     */
    public static Tolerance of(Boat boat, int draws, long seed) {
        return of(boat, draws, seed, () -> true);
    }

    /**
     * The same, to be stopped on the way.
     *
     * @param goOn asked before every boat, from many threads
     * @throws CancellationException when it says no
     */
    public static Tolerance of(Boat boat, int draws, long seed, BooleanSupplier goOn) {
        Boat apart = Pairs.apart(boat);
        List<Unknown> unknowns = Unknown.of(apart);
        Condition empty = Condition.of(apart).withAllTanksAt(0);
        Optional<Equilibrium> rest = Flotation.rest(empty);
        Optional<WaterPlane> near = rest.map(Equilibrium::plane);
        List<Draw> all = IntStream.range(0, draws)
                .parallel()
                .mapToObj(i -> {
                    if (!goOn.getAsBoolean()) {
                        throw new CancellationException();
                    }
                    return draw(Corrections.applied(apart, unknowns, errors(unknowns.size(), seed, i)), near);
                })
                .toList();
        double[] asGiven = Figure.all(empty, rest);
        Map<Figure, Spread> spreads = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            double[] values = values(all, figure);
            if (values.length > 1 && !Double.isNaN(asGiven[figure.ordinal()])) {
                spreads.put(figure, spread(asGiven[figure.ordinal()], values));
            }
        }
        Aims aims = Aims.of(boat);
        Map<Figure, Double> byFigure = new LinkedHashMap<>();
        for (Figure figure : aims.figures()) {
            byFigure.put(figure, share(all, d -> aims.isMet(figure, d.figures())));
        }
        return new Tolerance(
                draws,
                seed,
                spreads,
                byFigure.isEmpty() ? Optional.empty() : Optional.of(share(all, d -> aims.areMet(d.figures()))),
                byFigure,
                share(all, d -> Double.isNaN(d.figures()[Figure.LIST.ordinal()])),
                causes(apart, unknowns),
                boat.paintedLine().flatMap(line -> inHand(all, empty.below(line.plane()))));
    }

    private static double[] errors(int count, long seed, int i) {
        SplittableRandom random = new SplittableRandom(new SplittableRandom(seed).nextLong() + i * 0x9E3779B97F4A7C15L);
        double[] errors = new double[count];
        for (int k = 0; k < errors.length; k++) {
            errors[k] = random.nextGaussian();
        }
        return errors;
    }

    /** @param near where the boat of the file rests, if she does: others rest near by, so that few steps lead there */
    private static Draw draw(Boat drawn, Optional<WaterPlane> near) {
        Condition empty = Condition.of(drawn).withAllTanksAt(0);
        Optional<Equilibrium> rest = near.isPresent() ? Flotation.rest(empty, near.get()) : Flotation.rest(empty);
        return new Draw(Figure.all(empty, rest), drawn.paintedLine().map(line -> lacking(empty, line)));
    }

    /** Mass that the boat lacks on her line (x), its moment along about B (y) and across (z). */
    private static Vector3D lacking(Condition empty, PaintedLine line) {
        Immersion below = empty.below(line.plane());
        double lift = empty.densityGPerMm3() * below.volumeMm3();
        Vector3D arm = empty.centreOfGravityMm(line.plane()).subtract(below.centroidMm());
        // The lead that is lacking goes to where its moment about B balances that of the weight there is.
        Vector3D moment = arm.scalarMultiply(-empty.massG());
        return new Vector3D(
                lift - empty.massG(),
                moment.dotProduct(line.plane().ahead()),
                moment.dotProduct(line.plane().port()));
    }

    private static double[] values(List<Draw> all, Figure figure) {
        return all.stream()
                .mapToDouble(d -> d.figures()[figure.ordinal()])
                .filter(v -> !Double.isNaN(v))
                .toArray();
    }

    private static Spread spread(double asGiven, double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        double variance =
                Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1);
        Percentile percentile = new Percentile();
        percentile.setData(values);
        return new Spread(
                asGiven, Math.sqrt(variance), percentile.evaluate(LOW_PERCENT), percentile.evaluate(HIGH_PERCENT));
    }

    private static double share(List<Draw> all, Predicate<Draw> which) {
        return all.stream().filter(which).count() / (double) all.size();
    }

    private static List<Cause> causes(Boat boat, List<Unknown> unknowns) {
        double[][] slopes = Slopes.ofFigures(boat, unknowns);
        Map<String, Double> byPart = new LinkedHashMap<>();
        double whole = 0;
        for (Map.Entry<Figure, Double> wanted : NextReading.WANTED.entrySet()) {
            double[] row = slopes[wanted.getKey().ordinal()];
            for (int k = 0; k < row.length; k++) {
                double part = row[k] * row[k] / (wanted.getValue() * wanted.getValue());
                byPart.merge(unknowns.get(k).part(), part, Double::sum);
                whole += part;
            }
        }
        List<Cause> causes = new ArrayList<>();
        for (Map.Entry<String, Double> part : byPart.entrySet()) {
            if (whole > 0) {
                causes.add(new Cause(part.getKey(), part.getValue() / whole));
            }
        }
        causes.sort(Comparator.comparingDouble(Cause::share).reversed());
        return causes;
    }

    private static Optional<InHand> inHand(List<Draw> all, Immersion onTheLine) {
        List<Vector3D> lacking = all.stream().flatMap(d -> d.lacking().stream()).toList();
        if (lacking.isEmpty()) {
            return Optional.empty();
        }
        double[] mass = lacking.stream().mapToDouble(Vector3D::getX).toArray();
        return Optional.of(new InHand(
                percent(mass, HIGH_PERCENT),
                -percent(mass, LOW_PERCENT),
                percent(lacking.stream().mapToDouble(v -> Math.abs(v.getY())).toArray(), HIGH_PERCENT),
                percent(lacking.stream().mapToDouble(v -> Math.abs(v.getZ())).toArray(), HIGH_PERCENT),
                onTheLine.centroidMm().getX()));
    }

    private static double percent(double[] values, double percent) {
        return new Percentile().evaluate(values, percent);
    }
}
