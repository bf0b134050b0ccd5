package trimwright.plan.pool;

import java.util.List;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/**
 * What a boat would show in the state of one reading, and how that changes with what is off: since whatever is off about a part acts, to first order, as
 * a load laid on her, by differences over a mass and its three moments.
 */
final class Sensitivity {

    private final Reading reading;
    private final Condition condition;
    private final Optional<WaterPlane> water;
    private final double[] expected;

    private Sensitivity(Reading reading, Condition condition, Optional<WaterPlane> water, double[] expected) {
        this.reading = reading;
        this.condition = condition;
        this.water = water;
        this.expected = expected;
    }

    /** Puts a boat into the state of a reading; empty when nothing of the kind could be read there ({@link #against} says why). */
    static Optional<Sensitivity> of(Boat boat, Reading reading) {
        Condition condition = Scene.of(boat, reading);
        Optional<Equilibrium> rest = Flotation.rest(condition);
        double[] expected = expected(reading, condition, rest);
        for (int i = 0; i < expected.length; i++) {
            if (hangs(reading.seen().get(i)) == rest.isPresent() || Double.isNaN(expected[i])) {
                return Optional.empty();
            }
        }
        return Optional.of(new Sensitivity(reading, condition, rest.map(Equilibrium::plane), expected));
    }

    /**
     * Why nothing of the kind could be read.
     *
     * @param errorG how far the boat's weight against her lift may be off by her margins
     */
    static Finding against(Boat boat, Reading reading, double errorG) {
        Condition condition = Scene.of(boat, reading);
        boolean floats = condition.reserveG() > 0;
        for (Sighting sighting : reading.seen()) {
            if (hangs(sighting) && floats) {
                return finding(Code.POOL_NOTHING_HANGS, reading, "liftG", condition.reserveG(), errorG);
            }
            if (!hangs(sighting) && !floats) {
                return finding(Code.POOL_READING_SINKS, reading, "deficitG", -condition.reserveG(), errorG);
            }
        }
        double list = reading.seen().stream()
                .filter(s -> s.quantity() == Quantity.RESTS_AT)
                .mapToDouble(Sighting::value)
                .max()
                .orElseThrow();
        return finding(Code.POOL_NO_LEVER, reading, "foundDeg", list, errorG);
    }

    private static Finding finding(Code code, Reading reading, String name, double value, double errorG) {
        return Finding.of(code, new Place.Whole(), "reading", reading.id(), name, value, "marginG", errorG);
    }

    static boolean hangs(Sighting sighting) {
        return sighting.quantity() == Quantity.HANGING;
    }

    /** What she would show, sighting by sighting, in the terms that are compared. */
    double[] expected() {
        return expected.clone();
    }

    private static double[] expected(Reading reading, Condition condition, Optional<Equilibrium> rest) {
        return reading.seen().stream()
                .mapToDouble(s -> Expectation.of(condition, rest, s).orElse(Double.NaN))
                .toArray();
    }

    /** How every sighting changes with one standard deviation of every unknown: one row for each sighting. */
    double[][] slopes(List<Unknown> unknowns) {
        LoadSlopes byLoad = LoadSlopes.of(condition, expected, loaded -> expected(reading, loaded, rest(loaded)));
        double[][] slopes = new double[expected.length][unknowns.size()];
        for (int k = 0; k < unknowns.size(); k++) {
            Unknown unknown = unknowns.get(k);
            double[] change = byLoad.under(unknown.load(condition.densityGPerMm3(), water));
            for (int i = 0; i < slopes.length; i++) {
                slopes[i][k] = unknown.error() * change[i];
            }
        }
        return slopes;
    }

    private Optional<Equilibrium> rest(Condition loaded) {
        return water.flatMap(plane -> Flotation.rest(loaded, plane));
    }
}
