package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.SimpleVectorValueChecker;
import org.apache.commons.math3.util.Pair;
import trimwright.boat.Boat;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;

/**
 * The least squares fit of a boat to readings, through the equilibrium itself: the sum over readings of ((seen − expected) ∕ error)² and over unknowns of
 * (off ∕ error)² is least.
 *
 * @param errors how far every unknown is off, in its standard deviations
 * @param residuals (seen − expected) ∕ error of every sighting with that
 * @param slopes of every sighting over its error, there
 */
record Fit(double[] errors, double[] residuals, double[][] slopes) {

    private static final double TOLERANCE = 1e-7;
    private static final int MOST_STEPS = 50;

    /** Sum of all squares: as many as there are sightings, if all errors are what they are said to be. */
    double chiSquare() {
        double sum = 0;
        for (double r : residuals) {
            sum += r * r;
        }
        for (double e : errors) {
            sum += e * e;
        }
        return sum;
    }

    /**
     * @throws trimwright.finding.UnusableInputException when in the state of a reading nothing of the kind could be read
     */
    static Fit of(Boat boat, List<Unknown> unknowns, List<Reading> readings) {
        Model model = new Model(boat, unknowns, readings);
        Optimum optimum = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .model(model)
                        .target(model.target())
                        .start(new double[unknowns.size()])
                        .lazyEvaluation(true)
                        .checkerPair(new SimpleVectorValueChecker(TOLERANCE, TOLERANCE))
                        .maxEvaluations(MOST_STEPS)
                        .maxIterations(MOST_STEPS)
                        .build());
        double[] errors = optimum.getPoint().toArray();
        int sightings = model.errors.length;
        double[] residuals = optimum.getResiduals().getSubVector(0, sightings).toArray();
        double[][] slopes = optimum.getJacobian()
                .getSubMatrix(0, sightings - 1, 0, unknowns.size() - 1)
                .getData();
        return new Fit(errors, residuals, slopes);
    }

    /** All sightings over their errors, then all unknowns in their own. */
    private static final class Model implements ValueAndJacobianFunction {

        private final Boat boat;
        private final List<Unknown> unknowns;
        private final List<Reading> readings;
        private final double[] errors;

        Model(Boat boat, List<Unknown> unknowns, List<Reading> readings) {
            this.boat = boat;
            this.unknowns = unknowns;
            this.readings = readings;
            errors = readings.stream()
                    .flatMap(r -> r.seen().stream())
                    .mapToDouble(Expectation::error)
                    .toArray();
        }

        double[] target() {
            double[] target = new double[errors.length + unknowns.size()];
            int i = 0;
            for (Reading reading : readings) {
                for (Sighting sighting : reading.seen()) {
                    target[i] = Expectation.seen(sighting) / errors[i];
                    i++;
                }
            }
            return target;
        }

        private List<Sensitivity> at(double[] off) {
            Boat corrected = Corrections.applied(boat, unknowns, off);
            return readings.stream().map(r -> Sensitivity.of(corrected, r)).toList();
        }

        @Override
        public RealVector computeValue(double[] off) {
            double[] values = new double[errors.length + off.length];
            int i = 0;
            for (Sensitivity reading : at(off)) {
                for (double expected : reading.expected()) {
                    values[i] = expected / errors[i];
                    i++;
                }
            }
            System.arraycopy(off, 0, values, errors.length, off.length);
            return new ArrayRealVector(values, false);
        }

        @Override
        public RealMatrix computeJacobian(double[] off) {
            List<double[]> rows = new ArrayList<>();
            for (Sensitivity reading : at(off)) {
                for (double[] row : reading.slopes(unknowns)) {
                    double error = errors[rows.size()];
                    for (int k = 0; k < row.length; k++) {
                        row[k] /= error;
                    }
                    rows.add(row);
                }
            }
            for (int k = 0; k < off.length; k++) {
                double[] row = new double[off.length];
                row[k] = 1;
                rows.add(row);
            }
            return new Array2DRowRealMatrix(rows.toArray(double[][]::new), false);
        }

        @Override
        public Pair<RealVector, RealMatrix> value(RealVector point) {
            double[] off = point.toArray();
            return Pair.create(computeValue(off), computeJacobian(off));
        }
    }
}
