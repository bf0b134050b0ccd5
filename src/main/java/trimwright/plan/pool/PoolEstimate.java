package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.finding.Code;
import trimwright.finding.Finding;
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
     * @param before what the boat of the file would show; empty where there is no such value, as where she would sink
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
        Boat apart = Pairs.apart(boat);
        List<Unknown> unknowns = Unknown.of(apart);
        Fit fit = Fit.of(apart, unknowns, test.readings());
        Boat corrected = Corrections.applied(apart, unknowns, fit.errors());
        Posterior posterior = Posterior.of(fit.slopes(), unknowns.size());
        double[][] slopes = Slopes.ofFigures(corrected, unknowns);
        List<Compared> sightings = compared(apart, corrected, test.readings(), fit, posterior);
        return new PoolEstimate(
                corrected,
                parts(unknowns, fit, posterior),
                figures(apart, corrected, slopes, posterior),
                sightings,
                fit.chiSquare(),
                Disagreements.chance(fit.chiSquare(), sightings.size()),
                Inclining.of(corrected, test.readings()),
                NextReading.of(corrected, unknowns, fit.slopes(), slopes),
                Disagreements.of(apart, unknowns, test.readings(), fit, sightings));
    }

    /** Whether the readings speak against each other, so that nothing should be changed by them. */
    public boolean isContradictory() {
        return findings.stream().anyMatch(f -> f.code() == Code.POOL_CONTRADICTION);
    }

    /** Whether the readings fit together neither with the boat file nor, perhaps, with each other. */
    public boolean isDoubtful() {
        return isContradictory() || findings.stream().anyMatch(f -> f.code() == Code.POOL_FILE_OFF);
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
            Optional<double[]> before = Sensitivity.of(boat, reading).map(Sensitivity::expected);
            double[] after = Sensitivity.of(corrected, reading).orElseThrow().expected();
            for (int i = 0; i < after.length; i++) {
                int at = i;
                Sighting sighting = reading.seen().get(i);
                int row = all.size();
                double times = fit.residuals()[row] / Math.sqrt(1 - posterior.variance(fit.slopes()[row]));
                // One reading can bring no more than all there is; where slopes change fast, as at the brink of
                // sinking, it would seem to.
                double most = Math.sqrt(fit.chiSquare());
                all.add(new Compared(
                        reading.id(),
                        sighting,
                        before.flatMap(b -> Expectation.inItsUnit(sighting, b[at])),
                        Expectation.inItsUnit(sighting, after[i]),
                        Double.isNaN(times) ? most : Math.max(-most, Math.min(most, times))));
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
}
