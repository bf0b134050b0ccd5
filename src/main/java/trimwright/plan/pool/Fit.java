package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem.Evaluation;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
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
 * @param settled whether the search came to its end; otherwise this is the best that it met, which happens with readings far from any such boat
 */
record Fit(double[] errors, double[] residuals, double[][] slopes, boolean settled) {

    /** Change of the sum of squares, as a share of it and one, at which the search ends: far below what an error is known by. */
    private static final double TOLERANCE = 1e-8;

    private static final int MOST_STEPS = 100;

    /** Sum of all squares: as many as there are sightings, if all errors are what they are said to be. */
    double chiSquare() {
        return squares(residuals) + squares(errors);
    }

    /** What of it the readings alone bring: large where they speak against each other, and not only against the file. */
    double ofReadings() {
        return squares(residuals);
    }

    private static double squares(double[] values) {
        return Arrays.stream(values).map(v -> v * v).sum();
    }

    /**
     * @throws trimwright.finding.UnusableInputException when in the state of a reading nothing of the kind could be read
     */
    static Fit of(Boat boat, List<Unknown> unknowns, List<Reading> readings) {
        Model model = new Model(boat, unknowns, readings);
        double[] start = Start.of(boat, unknowns, readings);
        boolean settled = true;
        try {
            new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .model(model)
                            .target(model.target())
                            .start(start)
                            .lazyEvaluation(true)
                            .checker((n, before, now) -> isSame(before, now))
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build());
        } catch (ConvergenceException e) {
            // No step can better it by more than rounding: that is an end too.
        } catch (TooManyEvaluationsException | TooManyIterationsException e) {
            settled = false;
        }
        return model.best(settled);
    }

    private static boolean isSame(Evaluation before, Evaluation now) {
        double was = before.getCost() * before.getCost();
        double is = now.getCost() * now.getCost();
        return Math.abs(was - is) <= TOLERANCE * (1 + is);
    }

    /** All sightings over their errors, then all unknowns in their own. */
    private static final class Model implements ValueAndJacobianFunction {

        /** What a boat is given to show, in standard deviations, where nothing could be read of her: no step leads there. */
        private static final double FAR = 1e6;

        private final Boat boat;
        private final List<Unknown> unknowns;
        private final List<Reading> readings;
        private final double[] errors;
        private final double[] seen;
        private double[] lastOff;
        private Optional<List<Sensitivity>> last = Optional.empty();
        private double[] bestOff;
        private double[] slopesOff;
        private double[][] slopes;
        private double leastSquares = Double.POSITIVE_INFINITY;

        Model(Boat boat, List<Unknown> unknowns, List<Reading> readings) {
            this.boat = boat;
            this.unknowns = unknowns;
            this.readings = readings;
            List<Sighting> all =
                    readings.stream().flatMap(r -> r.seen().stream()).toList();
            errors = all.stream().mapToDouble(Expectation::error).toArray();
            seen = all.stream()
                    .mapToDouble(s -> Expectation.seen(s) / Expectation.error(s))
                    .toArray();
        }

        double[] target() {
            return Arrays.copyOf(seen, seen.length + unknowns.size());
        }

        /** The readings of the boat with this off; empty where one could not be read. Slopes are asked for where values were. */
        private Optional<List<Sensitivity>> at(double[] off) {
            if (!Arrays.equals(off, lastOff)) {
                lastOff = off.clone();
                Boat corrected = Corrections.applied(boat, unknowns, off);
                List<Sensitivity> all = new ArrayList<>();
                for (Reading reading : readings) {
                    Sensitivity.of(corrected, reading).ifPresent(all::add);
                }
                last = all.size() == readings.size() ? Optional.of(all) : Optional.empty();
            }
            return last;
        }

        private double[] shown(double[] off) {
            double[] values = new double[seen.length];
            Optional<List<Sensitivity>> there = at(off);
            if (there.isEmpty()) {
                Arrays.setAll(values, i -> seen[i] + FAR);
                return values;
            }
            int i = 0;
            for (Sensitivity reading : there.get()) {
                for (double expected : reading.expected()) {
                    values[i] = expected / errors[i];
                    i++;
                }
            }
            return values;
        }

        @Override
        public RealVector computeValue(double[] off) {
            double[] shown = shown(off);
            double squares = squares(off);
            for (int i = 0; i < shown.length; i++) {
                squares += (seen[i] - shown[i]) * (seen[i] - shown[i]);
            }
            if (squares < leastSquares) {
                leastSquares = squares;
                bestOff = off.clone();
            }
            double[] values = Arrays.copyOf(shown, shown.length + off.length);
            System.arraycopy(off, 0, values, shown.length, off.length);
            return new ArrayRealVector(values, false);
        }

        private double[][] slopes(double[] off) {
            if (!Arrays.equals(off, slopesOff)) {
                slopesOff = off.clone();
                slopes = slopesAnew(off);
            }
            return slopes;
        }

        private double[][] slopesAnew(double[] off) {
            List<double[]> rows = new ArrayList<>();
            for (Sensitivity reading : at(off).orElseThrow()) {
                for (double[] row : reading.slopes(unknowns)) {
                    double error = errors[rows.size()];
                    for (int k = 0; k < row.length; k++) {
                        row[k] /= error;
                    }
                    rows.add(row);
                }
            }
            return rows.toArray(double[][]::new);
        }

        @Override
        public RealMatrix computeJacobian(double[] off) {
            double[][] slopes = slopes(off);
            double[][] rows = Arrays.copyOf(slopes, slopes.length + off.length);
            for (int k = 0; k < off.length; k++) {
                rows[slopes.length + k] = new double[off.length];
                rows[slopes.length + k][k] = 1;
            }
            return new Array2DRowRealMatrix(rows, false);
        }

        @Override
        public Pair<RealVector, RealMatrix> value(RealVector point) {
            double[] off = point.toArray();
            return Pair.create(computeValue(off), computeJacobian(off));
        }

        Fit best(boolean settled) {
            double[] shown = shown(bestOff);
            double[] residuals = new double[seen.length];
            Arrays.setAll(residuals, i -> seen[i] - shown[i]);
            // The last step was too small to matter for the slopes.
            return new Fit(bestOff, residuals, settled ? slopes : slopes(bestOff), settled);
        }
    }
}
