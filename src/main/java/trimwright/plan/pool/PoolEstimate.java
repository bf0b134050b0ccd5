package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.statics.Condition;

/**
 * What readings say about a boat.
 *
 * @param corrected the boat as the readings have her
 * @param parts every part that may be off, the most likely first
 * @param figures what is known of her before and after
 * @param sightings every reading against what she would show
 * @param chiSquare sum of all squares; as many as there are sightings if all errors are what they are said to be
 * @param chance how often chance alone would do as much, 0…1
 * @param inclining what the lists under moved weights give by themselves
 * @param next what would tell most, the best first
 * @param findings readings that disagree
 */
public record PoolEstimate(
        Boat corrected,
        List<PartOff> parts,
        Map<Figure, Known> figures,
        List<Compared> sightings,
        double chiSquare,
        double chance,
        Optional<Inclining> inclining,
        List<NextReading> next,
        List<Finding> findings) {

    /** Studentised residual from which a reading is named. */
    private static final double OUTLIER = 3;
    /** Chance below which the readings contradict each other. */
    private static final double CONTRADICTION = 0.01;
    /** Share of what was unknown before from which a figure counts as still unknown. */
    private static final double STILL_UNKNOWN = 0.8;

    public PoolEstimate {
        parts = List.copyOf(parts);
        figures = Map.copyOf(figures);
        sightings = List.copyOf(sightings);
        next = List.copyOf(next);
        findings = List.copyOf(findings);
    }

    /**
     * A figure.
     *
     * @param before its value as the boat file has it
     * @param beforeError standard deviation before any reading
     * @param after its value with the readings
     * @param afterError standard deviation with the readings
     */
    public record Known(double before, double beforeError, double after, double afterError) {}

    /**
     * A part and how far it is off, per piece.
     *
     * @param part its id
     * @param massG what it weighs more, and standard deviation of that before and after
     * @param moveMm how its weight lies off
     * @param volumePercent how much more it displaces
     * @param suspicion the largest of these in its own standard deviation before any reading
     */
    public record PartOff(
            String part, double massG, double massErrorG, Vector3D moveMm, double volumePercent, double suspicion) {}

    /**
     * A reading against what the corrected boat would show.
     *
     * @param before what the boat of the file would show; empty where there is no such value
     * @param after what the corrected boat would show
     * @param timesItsError how far it is off, over the error that is left of it
     */
    public record Compared(
            String reading, Sighting sighting, Optional<Double> before, Optional<Double> after, double timesItsError) {}

    /** The figures about which the readings say next to nothing. */
    public List<Figure> unknown() {
        return List.of(Figure.values()).stream()
                .filter(figures::containsKey)
                .filter(f -> figures.get(f).beforeError() > 0
                        && figures.get(f).afterError()
                                > STILL_UNKNOWN * figures.get(f).beforeError())
                .toList();
    }

    /**
     * Works out what the readings say.
     *
     * @throws trimwright.finding.UnusableInputException when in the state of a reading nothing of the kind could be read
     */
    public static PoolEstimate of(Boat boat, PoolTest test) {
        List<Unknown> unknowns = Unknown.of(boat);
        Fit fit = Fit.of(boat, unknowns, test.readings());
        Boat corrected = Corrections.applied(boat, unknowns, fit.errors());
        Posterior posterior = Posterior.of(fit.slopes(), unknowns.size());
        double[][] slopes = Slopes.ofFigures(corrected, unknowns);
        Map<Figure, Known> figures = figures(boat, corrected, slopes, posterior);
        List<Compared> sightings = compared(boat, corrected, test.readings(), fit, posterior);
        double chance = 1 - new ChiSquaredDistribution(sightings.size()).cumulativeProbability(fit.chiSquare());
        return new PoolEstimate(
                corrected,
                parts(unknowns, fit, posterior),
                figures,
                sightings,
                fit.chiSquare(),
                chance,
                Inclining.of(corrected, test.readings()),
                NextReading.of(corrected, unknowns, fit.slopes(), slopes),
                findings(sightings, fit.chiSquare(), chance));
    }

    private static Map<Figure, Known> figures(Boat boat, Boat corrected, double[][] slopes, Posterior posterior) {
        Posterior prior = Posterior.of(new double[0][], slopes[0].length);
        double[] before = Figure.all(Condition.of(boat));
        double[] after = Figure.all(Condition.of(corrected));
        Map<Figure, Known> figures = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            int i = figure.ordinal();
            if (!Double.isNaN(before[i]) && !Double.isNaN(after[i])) {
                figures.put(figure, new Known(before[i], prior.error(slopes[i]), after[i], posterior.error(slopes[i])));
            }
        }
        return figures;
    }

    private static List<Compared> compared(
            Boat boat, Boat corrected, List<Reading> readings, Fit fit, Posterior posterior) {
        List<Compared> all = new ArrayList<>();
        for (Reading reading : readings) {
            double[] before = Sensitivity.of(boat, reading).expected();
            double[] after = Sensitivity.of(corrected, reading).expected();
            for (int i = 0; i < before.length; i++) {
                Sighting sighting = reading.seen().get(i);
                int row = all.size();
                double left = 1 - posterior.variance(fit.slopes()[row]);
                all.add(new Compared(
                        reading.id(),
                        sighting,
                        Expectation.inItsUnit(sighting, before[i]),
                        Expectation.inItsUnit(sighting, after[i]),
                        fit.residuals()[row] / Math.sqrt(left)));
            }
        }
        return all;
    }

    private static List<PartOff> parts(List<Unknown> unknowns, Fit fit, Posterior posterior) {
        List<PartOff> parts = new ArrayList<>();
        unknowns.stream().map(Unknown::part).distinct().forEach(id -> {
            double[] by = new double[Unknown.What.values().length];
            double massError = 0;
            double suspicion = 0;
            for (int k = 0; k < unknowns.size(); k++) {
                Unknown unknown = unknowns.get(k);
                if (unknown.part().equals(id)) {
                    by[unknown.what().ordinal()] = fit.errors()[k] * unknown.error();
                    suspicion = Math.max(suspicion, Math.abs(fit.errors()[k]));
                    if (unknown.what() == Unknown.What.MASS) {
                        massError = posterior.left(k) * unknown.error();
                    }
                }
            }
            Vector3D move = new Vector3D(
                    by[Unknown.What.AHEAD.ordinal()],
                    by[Unknown.What.TO_PORT.ordinal()],
                    by[Unknown.What.UP.ordinal()]);
            parts.add(new PartOff(
                    id,
                    by[Unknown.What.MASS.ordinal()],
                    massError,
                    move,
                    100 * by[Unknown.What.VOLUME.ordinal()],
                    suspicion));
        });
        parts.sort(Comparator.comparingDouble(PartOff::suspicion).reversed());
        return parts;
    }

    private static List<Finding> findings(List<Compared> sightings, double chiSquare, double chance) {
        List<Finding> findings = new ArrayList<>();
        if (chance < CONTRADICTION) {
            findings.add(Finding.of(
                    Code.POOL_CONTRADICTION,
                    new Place.Whole(),
                    "chiSquare",
                    toATenth(chiSquare),
                    "count",
                    sightings.size(),
                    "chancePercent",
                    100 * chance));
        }
        for (Compared compared : sightings) {
            if (Math.abs(compared.timesItsError()) > OUTLIER) {
                findings.add(Finding.of(
                        Code.POOL_OUTLIER,
                        new Place.Whole(),
                        "reading",
                        compared.reading(),
                        "quantity",
                        compared.sighting().quantity().key(),
                        "times",
                        toATenth(Math.abs(compared.timesItsError()))));
            }
        }
        return findings;
    }

    private static double toATenth(double value) {
        return Math.rint(10 * value) / 10;
    }
}
