package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.pool.Reading;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;

/**
 * Where the search for what is off begins: with nothing off, unless the boat of the file would sink where something afloat was read, or float where she
 * hung. Then with the likeliest errors by which she does not, as far as her margins make such errors credible.
 */
final class Start {

    /** Standard deviations by which her weight may be off at the start. */
    private static final double MOST = 4;
    /** How far, in standard deviations of her weight, the start keeps from the brink. */
    private static final double CLEAR = 0.2;

    private Start() {}

    /**
     * @return errors of all unknowns, in their standard deviations
     * @throws UnusableInputException when in the state of a reading nothing of the kind could be read, whatever is off within reason
     */
    static double[] of(Boat boat, List<Unknown> unknowns, List<Reading> readings) {
        double[] slopes = unknowns.stream()
                .mapToDouble(u -> u.error()
                        * u.load(boat.water().densityGPerMm3(), Optional.empty())
                                .massG())
                .toArray();
        double variance = 0;
        for (double slope : slopes) {
            variance += slope * slope;
        }
        double heavier = heavierG(boat, readings, Math.sqrt(variance));
        double[] start = new double[slopes.length];
        for (int k = 0; k < start.length && heavier != 0; k++) {
            start[k] = heavier * slopes[k] / variance;
        }
        refuse(boat, Corrections.applied(boat, unknowns, start), readings, Math.sqrt(variance));
        return start;
    }

    /** By how much she must be heavier, or lighter where it is negative: 0 where she need not. */
    private static double heavierG(Boat boat, List<Reading> readings, double errorG) {
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        for (Reading reading : readings) {
            double reserve = Scene.of(boat, reading).reserveG();
            if (reading.seen().stream().anyMatch(Sensitivity::hangs)) {
                least = Math.max(least, reserve);
            } else {
                most = Math.min(most, reserve);
            }
        }
        double clear = Math.min(CLEAR * errorG, (most - least) / 2);
        double heavier = least >= 0 ? least + clear : most <= 0 ? most - clear : 0;
        return Math.abs(heavier) <= MOST * errorG ? heavier : 0;
    }

    private static void refuse(Boat boat, Boat begun, List<Reading> readings, double errorG) {
        List<Finding> against = new ArrayList<>();
        for (Reading reading : readings) {
            if (Sensitivity.of(begun, reading).isEmpty()) {
                Boat told = Sensitivity.of(boat, reading).isEmpty() ? boat : begun;
                against.add(Sensitivity.against(told, reading, errorG));
            }
        }
        if (!against.isEmpty()) {
            throw new UnusableInputException(against);
        }
    }
}
