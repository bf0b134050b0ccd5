package trimwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.PivotSelectionRule;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.linear.UnboundedSolutionException;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/**
 * A linear programme: least cost · x under named rows, 0 ≤ x ≤ most. A thin layer over the simplex method of Commons Math that scales rows and
 * unknowns, tells the outcome as a value, and prices each row by solving the dual programme, whose gap shows how far the
 * answer can be from the best.
 */
final class LinearProgramme {

    private static final double EPSILON = 1e-10;
    private static final int MOST_PIVOTS = 20_000;

    private final int unknowns;
    private final double[] cost;
    private final double[] most;
    private final List<Row> rows = new ArrayList<>();

    /** What came of it. */
    enum Outcome {
        OPTIMAL,
        INFEASIBLE,
        UNBOUNDED
    }

    /** How a row compares. */
    enum Sense {
        AT_MOST,
        AT_LEAST,
        EQUAL
    }

    /**
     * One row: coefficients · x compared with a bound.
     *
     * @param name what it stands for
     */
    @SuppressWarnings("ArrayRecordComponent") // dense rows; never compared
    record Row(String name, double[] coefficients, Sense sense, double bound) {}

    /**
     * The answer.
     *
     * @param outcome what came of it; the rest is empty or NaN unless optimal
     * @param x the unknowns
     * @param value least cost
     * @param prices per row, what one more of its bound adds to the least cost
     * @param gap difference between the least cost and the dual's greatest value
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Solution(Outcome outcome, double[] x, double value, double[] prices, double gap) {

        boolean isOptimal() {
            return outcome == Outcome.OPTIMAL;
        }

        private static Solution none(Outcome outcome) {
            return new Solution(outcome, new double[0], Double.NaN, new double[0], Double.NaN);
        }
    }

    /**
     * @param cost per unit of each unknown
     * @param most upper bound of each unknown; positive infinity for none
     */
    LinearProgramme(double[] cost, double[] most) {
        this.unknowns = cost.length;
        this.cost = cost.clone();
        this.most = most.clone();
    }

    LinearProgramme row(String name, double[] coefficients, Sense sense, double bound) {
        if (coefficients.length != unknowns) {
            throw new IllegalArgumentException(name + " has " + coefficients.length + " of " + unknowns + " unknowns");
        }
        rows.add(new Row(name, coefficients.clone(), sense, bound));
        return this;
    }

    /** Solves without prices. */
    Solution solve() {
        return solve(false);
    }

    /** Solves, and prices each row. */
    Solution solveWithPrices() {
        return solve(true);
    }

    private Solution solve(boolean priced) {
        double[] unit = units();
        double[] weight = rowWeights(unit);
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            Row row = rows.get(r);
            constraints.add(new LinearConstraint(
                    scaled(row.coefficients(), unit, weight[r]), relationship(row.sense()), row.bound() * weight[r]));
        }
        for (int i = 0; i < unknowns; i++) {
            if (most[i] < Double.POSITIVE_INFINITY) {
                double[] one = new double[unknowns];
                one[i] = 1;
                constraints.add(new LinearConstraint(one, Relationship.LEQ, most[i] / unit[i]));
            }
        }
        double costUnit = largest(scaled(cost, unit, 1));
        double costWeight = costUnit > 0 ? 1 / costUnit : 1;
        PointValuePair best;
        try {
            best = simplex(scaled(cost, unit, costWeight), constraints, GoalType.MINIMIZE);
        } catch (NoFeasibleSolutionException e) {
            return Solution.none(Outcome.INFEASIBLE);
        } catch (UnboundedSolutionException e) {
            return Solution.none(Outcome.UNBOUNDED);
        }
        double[] x = best.getPoint();
        double value = 0;
        for (int i = 0; i < unknowns; i++) {
            x[i] *= unit[i];
            value += cost[i] * x[i];
        }
        return priced
                ? priced(x, value, unit, weight, costWeight)
                : new Solution(Outcome.OPTIMAL, x, value, new double[0], Double.NaN);
    }

    /** The dual: greatest b · y − most · z with Aᵀ y − z ≤ cost, y ≥ 0 for a row that asks for at least, ≤ 0 for at most. */
    private Solution priced(double[] x, double value, double[] unit, double[] weight, double costWeight) {
        int bounded = 0;
        for (double m : most) {
            bounded += m < Double.POSITIVE_INFINITY ? 1 : 0;
        }
        int duals = 2 * rows.size() + bounded;
        double[] objective = new double[duals];
        double[][] table = new double[unknowns][duals];
        for (int r = 0; r < rows.size(); r++) {
            Row row = rows.get(r);
            double[] c = scaled(row.coefficients(), unit, weight[r]);
            boolean up = row.sense() != Sense.AT_MOST;
            boolean down = row.sense() != Sense.AT_LEAST;
            objective[2 * r] = up ? row.bound() * weight[r] : 0;
            objective[2 * r + 1] = down ? -row.bound() * weight[r] : 0;
            for (int i = 0; i < unknowns; i++) {
                table[i][2 * r] = up ? c[i] : 0;
                table[i][2 * r + 1] = down ? -c[i] : 0;
            }
        }
        int next = 2 * rows.size();
        for (int i = 0; i < unknowns; i++) {
            if (most[i] < Double.POSITIVE_INFINITY) {
                objective[next] = -most[i] / unit[i];
                table[i][next] = -1;
                next++;
            }
        }
        double[] scaledCost = scaled(cost, unit, costWeight);
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int i = 0; i < unknowns; i++) {
            constraints.add(new LinearConstraint(table[i], Relationship.LEQ, scaledCost[i]));
        }
        PointValuePair dual = simplex(objective, constraints, GoalType.MAXIMIZE);
        double[] prices = new double[rows.size()];
        for (int r = 0; r < prices.length; r++) {
            prices[r] = (dual.getPoint()[2 * r] - dual.getPoint()[2 * r + 1]) * weight[r] / costWeight;
        }
        return new Solution(Outcome.OPTIMAL, x, value, prices, value - dual.getValue() / costWeight);
    }

    private static PointValuePair simplex(double[] objective, List<LinearConstraint> constraints, GoalType goal) {
        return new SimplexSolver(EPSILON, 10, EPSILON)
                .optimize(
                        new MaxIter(MOST_PIVOTS),
                        new LinearObjectiveFunction(objective, 0),
                        new LinearConstraintSet(constraints),
                        goal,
                        new NonNegativeConstraint(true),
                        PivotSelectionRule.DANTZIG);
    }

    /** Each unknown is counted in its own upper bound, so that the table holds numbers near one. */
    private double[] units() {
        double[] unit = new double[unknowns];
        for (int i = 0; i < unknowns; i++) {
            unit[i] = most[i] > 0 && most[i] < Double.POSITIVE_INFINITY ? most[i] : 1;
        }
        return unit;
    }

    private double[] rowWeights(double[] unit) {
        double[] weight = new double[rows.size()];
        for (int r = 0; r < weight.length; r++) {
            double size = largest(scaled(rows.get(r).coefficients(), unit, 1));
            weight[r] = size > 0 ? 1 / size : 1;
        }
        return weight;
    }

    private static double[] scaled(double[] values, double[] unit, double weight) {
        double[] result = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            result[i] = values[i] * unit[i] * weight;
        }
        return result;
    }

    private static double largest(double[] values) {
        return Arrays.stream(values).map(Math::abs).max().orElse(0);
    }

    private static Relationship relationship(Sense sense) {
        return switch (sense) {
            case AT_MOST -> Relationship.LEQ;
            case AT_LEAST -> Relationship.GEQ;
            default -> Relationship.EQ;
        };
    }
}
