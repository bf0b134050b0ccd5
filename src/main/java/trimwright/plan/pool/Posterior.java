package trimwright.plan.pool;

import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What is known of all unknowns after some readings, each unknown counted in its own standard deviation before them: covariance (I + AᵀA)⁻¹, A the slopes
 * of the readings over their errors.
 */
final class Posterior {

    private final RealMatrix covariance;

    private Posterior(RealMatrix covariance) {
        this.covariance = covariance;
    }

    /** @param slopes one row for each reading, in its standard deviations for each standard deviation of an unknown */
    static Posterior of(double[][] slopes, int unknowns) {
        RealMatrix information = MatrixUtils.createRealIdentityMatrix(unknowns);
        if (slopes.length > 0) {
            RealMatrix a = MatrixUtils.createRealMatrix(slopes);
            information = information.add(a.transpose().multiply(a));
        }
        return new Posterior(new CholeskyDecomposition(information).getSolver().getInverse());
    }

    /** Standard deviation of a quantity that depends on the unknowns with these slopes. */
    double error(double[] slopes) {
        return Math.sqrt(variance(slopes));
    }

    double variance(double[] slopes) {
        double[] c = covariance.operate(slopes);
        double sum = 0;
        for (int i = 0; i < c.length; i++) {
            sum += c[i] * slopes[i];
        }
        return sum;
    }

    /** Standard deviation of one unknown, as a share of what it was before. */
    double left(int unknown) {
        return Math.sqrt(covariance.getEntry(unknown, unknown));
    }
}
