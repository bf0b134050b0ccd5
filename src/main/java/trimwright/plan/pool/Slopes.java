package trimwright.plan.pool;

import java.util.List;
import trimwright.boat.Boat;
import trimwright.statics.Condition;

/** How figures change with what may be off, by differences over the boat itself. */
final class Slopes {

    /** Of a standard deviation. */
    private static final double STEP = 0.1;

    private Slopes() {}

    /** One row for each figure: its change with one standard deviation of every unknown; zero for a figure she has not. */
    static double[][] ofFigures(Boat boat, List<Unknown> unknowns) {
        double[][] slopes = new double[Figure.values().length][unknowns.size()];
        for (int k = 0; k < unknowns.size(); k++) {
            double[] more = at(boat, unknowns, k, STEP);
            double[] less = at(boat, unknowns, k, -STEP);
            for (int i = 0; i < slopes.length; i++) {
                double slope = (more[i] - less[i]) / (2 * STEP);
                slopes[i][k] = Double.isNaN(slope) ? 0 : slope;
            }
        }
        return slopes;
    }

    private static double[] at(Boat boat, List<Unknown> unknowns, int k, double by) {
        double[] errors = new double[unknowns.size()];
        errors[k] = by;
        return Figure.all(Condition.of(Corrections.applied(boat, unknowns, errors)));
    }
}
