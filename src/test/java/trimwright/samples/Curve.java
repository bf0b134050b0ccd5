package trimwright.samples;

/**
 * A smooth curve through given points that never swings beyond its neighbours: the monotone piecewise cubic of Fritsch and
 * Butland (SIAM J. Sci. Stat. Comput. 5, 300, 1984), level beyond its ends.
 */
final class Curve {

    private final double[] at;
    private final double[] value;
    private final double[] slope;

    private Curve(double[] at, double[] value, double[] slope) {
        this.at = at;
        this.value = value;
        this.slope = slope;
    }

    /** Through the points (x, value), (x, value), … with rising x. */
    static Curve through(double... pairs) {
        int n = pairs.length / 2;
        double[] at = new double[n];
        double[] value = new double[n];
        double[] slope = new double[n];
        for (int i = 0; i < n; i++) {
            at[i] = pairs[2 * i];
            value[i] = pairs[2 * i + 1];
        }
        for (int i = 1; i < n - 1; i++) {
            double before = (value[i] - value[i - 1]) / (at[i] - at[i - 1]);
            double after = (value[i + 1] - value[i]) / (at[i + 1] - at[i]);
            slope[i] = before * after > 0 ? 2 * before * after / (before + after) : 0;
        }
        slope[0] = (value[1] - value[0]) / (at[1] - at[0]);
        slope[n - 1] = (value[n - 1] - value[n - 2]) / (at[n - 1] - at[n - 2]);
        return new Curve(at, value, slope);
    }

    double at(double x) {
        int last = at.length - 1;
        if (x <= at[0]) {
            return value[0];
        }
        if (x >= at[last]) {
            return value[last];
        }
        int i = 0;
        while (at[i + 1] < x) {
            i++;
        }
        double h = at[i + 1] - at[i];
        double s = (x - at[i]) / h;
        double blend = s * s * (3 - 2 * s);
        return value[i] * (1 - blend)
                + value[i + 1] * blend
                + h * s * (1 - s) * (slope[i] * (1 - s) - slope[i + 1] * s);
    }

    /** 0 below {@code from}, 1 above {@code to}, smooth between; the two may stand either way round. */
    static double step(double x, double from, double to) {
        double s = Math.max(0, Math.min(1, (x - from) / (to - from)));
        return s * s * (3 - 2 * s);
    }
}
