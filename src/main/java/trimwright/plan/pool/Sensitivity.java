package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/**
 * What a boat would show in the state of one reading, and how that changes with a load laid on her: by central differences over a mass and
 * its three moments, since whatever is off about a part acts, to first order, as such a load.
 */
final class Sensitivity {

    /** Load of the differences as a share of the weight; its moments with the boat's length. */
    private static final double SHARE = 1e-4;

    private final Reading reading;
    private final Condition condition;
    private final Optional<WaterPlane> water;
    private final List<Double> expected;
    private final double loadG;
    private final double loadGmm;

    private Sensitivity(Reading reading, Condition condition, Flotation flotation) {
        this.reading = reading;
        this.condition = condition;
        water = flotation.settled().map(Equilibrium::plane);
        expected = expected(condition);
        loadG = SHARE * condition.massG();
        loadGmm = loadG * condition.lengthMm();
    }

    /**
     * Puts a boat into the state of a reading.
     *
     * @throws UnusableInputException when nothing of the kind could be read there: she sinks, or does not hang
     */
    static Sensitivity of(Boat boat, Reading reading) {
        Condition condition = Scene.of(boat, reading);
        Flotation flotation = Flotation.settling(condition);
        for (Sighting sighting : reading.seen()) {
            boolean hangs = Expectation.isSubmerged(sighting);
            if (!hangs && flotation.settled().isEmpty()) {
                throw unusable(Code.POOL_READING_SINKS, reading, "deficitG", -condition.reserveG());
            }
            if (hangs && flotation.settled().isPresent()) {
                throw unusable(Code.POOL_NOTHING_HANGS, reading, "liftG", condition.reserveG());
            }
        }
        return new Sensitivity(reading, condition, flotation);
    }

    private static UnusableInputException unusable(Code code, Reading reading, String name, double value) {
        return new UnusableInputException(Finding.of(code, new Place.Whole(), "reading", reading.id(), name, value));
    }

    /** What she would show, sighting by sighting, in the terms that are compared. */
    double[] expected() {
        return expected.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private List<Double> expected(Condition loaded) {
        Flotation flotation = Flotation.settling(loaded);
        List<Double> values = new ArrayList<>();
        for (Sighting sighting : reading.seen()) {
            values.add(Expectation.of(loaded, flotation, sighting).orElse(Double.NaN));
        }
        return values;
    }

    /** How every sighting changes with one standard deviation of every unknown: one row for each sighting. */
    double[][] slopes(List<Unknown> unknowns) {
        double[][] byLoad = {
            difference(new Load(loadG, Vector3D.ZERO), loadG),
            difference(new Load(0, new Vector3D(loadGmm, 0, 0)), loadGmm),
            difference(new Load(0, new Vector3D(0, loadGmm, 0)), loadGmm),
            difference(new Load(0, new Vector3D(0, 0, loadGmm)), loadGmm)
        };
        double[][] slopes = new double[reading.seen().size()][unknowns.size()];
        for (int k = 0; k < unknowns.size(); k++) {
            Unknown unknown = unknowns.get(k);
            Load load = unknown.load(condition.densityGPerMm3(), water);
            for (int i = 0; i < slopes.length; i++) {
                slopes[i][k] = unknown.error()
                        * (byLoad[0][i] * load.massG()
                                + byLoad[1][i] * load.momentGmm().getX()
                                + byLoad[2][i] * load.momentGmm().getY()
                                + byLoad[3][i] * load.momentGmm().getZ());
            }
        }
        return slopes;
    }

    private double[] difference(Load load, double size) {
        Load less = new Load(-load.massG(), load.momentGmm().negate());
        List<Double> more = expected(Scene.loaded(condition, load));
        List<Double> fewer = expected(Scene.loaded(condition, less));
        double[] slopes = new double[more.size()];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = (more.get(i) - fewer.get(i)) / (2 * size);
        }
        return slopes;
    }
}
