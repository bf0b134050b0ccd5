package trimwright.plan.pool;

import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.statics.Condition;

/**
 * How numbers of a boat change with a load laid on her: by central differences over a mass and its three moments.
 *
 * @param byLoad a row for the mass, g, and one for each moment, g·mm
 */
record LoadSlopes(double[][] byLoad) {

    /** Load of the differences as a share of the weight; its moments with the boat's length. */
    private static final double SHARE = 1e-4;

    /**
     * @param there the numbers without a load
     * @param numbers the same under a load; NaN for one that she has not, as where she just floats and a gram sinks her: the other side alone
     *     then gives the slope
     */
    static LoadSlopes of(Condition condition, double[] there, Function<Condition, double[]> numbers) {
        double loadG = SHARE * condition.massG();
        double loadGmm = loadG * condition.lengthMm();
        return new LoadSlopes(new double[][] {
            difference(condition, there, numbers, new Load(loadG, Vector3D.ZERO), loadG),
            difference(condition, there, numbers, new Load(0, new Vector3D(loadGmm, 0, 0)), loadGmm),
            difference(condition, there, numbers, new Load(0, new Vector3D(0, loadGmm, 0)), loadGmm),
            difference(condition, there, numbers, new Load(0, new Vector3D(0, 0, loadGmm)), loadGmm)
        });
    }

    private static double[] difference(
            Condition condition, double[] there, Function<Condition, double[]> numbers, Load load, double size) {
        double[] more = numbers.apply(Scene.loaded(condition, load));
        double[] less = numbers.apply(Scene.loaded(condition, load.negated()));
        double[] slopes = new double[there.length];
        for (int i = 0; i < slopes.length; i++) {
            boolean both = !Double.isNaN(more[i]) && !Double.isNaN(less[i]);
            double upper = Double.isNaN(more[i]) ? there[i] : more[i];
            double lower = Double.isNaN(less[i]) ? there[i] : less[i];
            slopes[i] = (upper - lower) / (both ? 2 * size : size);
        }
        return slopes;
    }

    /** The change of every number under a small load. */
    double[] under(Load load) {
        double[] weights = {
            load.massG(),
            load.momentGmm().getX(),
            load.momentGmm().getY(),
            load.momentGmm().getZ()
        };
        double[] change = new double[byLoad[0].length];
        for (int i = 0; i < change.length; i++) {
            for (int j = 0; j < weights.length; j++) {
                change[i] += byLoad[j][i] * weights[j];
            }
        }
        return change;
    }
}
