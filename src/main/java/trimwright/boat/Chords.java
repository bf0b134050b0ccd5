package trimwright.boat;

import java.util.Arrays;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The stretches of an upright line that lie in a solid, lowest first and apart from each other. Immutable. */
public final class Chords {

    public static final Chords NONE = new Chords(new double[0]);

    /** Sine between a bar's axis and the plumb line below which the axis counts as upright. */
    private static final double UPRIGHT = 1e-9;

    /** Low, high, low, high, … */
    private final double[] ends;

    private Chords(double[] ends) {
        this.ends = ends;
    }

    /** The one stretch between two heights; none when they are not in rising order. */
    public static Chords between(double lowMm, double highMm) {
        return highMm > lowMm ? new Chords(new double[] {lowMm, highMm}) : NONE;
    }

    /** @param ends low, high, low, high, …, rising */
    static Chords owning(double[] ends) {
        return new Chords(ends);
    }

    public int count() {
        return ends.length / 2;
    }

    public double lowMm(int i) {
        return ends[2 * i];
    }

    public double highMm(int i) {
        return ends[2 * i + 1];
    }

    /** Length of all stretches together. */
    public double lengthMm() {
        double sum = 0;
        for (int i = 0; i < ends.length; i += 2) {
            sum += ends[i + 1] - ends[i];
        }
        return sum;
    }

    /** What lies in both. */
    public Chords and(Chords other) {
        double[] both = new double[ends.length + other.ends.length];
        int n = 0;
        int i = 0;
        int j = 0;
        while (i < ends.length && j < other.ends.length) {
            double low = Math.max(ends[i], other.ends[j]);
            double high = Math.min(ends[i + 1], other.ends[j + 1]);
            if (high > low) {
                both[n++] = low;
                both[n++] = high;
            }
            if (ends[i + 1] < other.ends[j + 1]) {
                i += 2;
            } else {
                j += 2;
            }
        }
        return new Chords(Arrays.copyOf(both, n));
    }

    /** What lies in this one and not in the other. */
    public Chords without(Chords other) {
        return and(other.outside());
    }

    private Chords outside() {
        double[] outside = new double[ends.length + 2];
        outside[0] = Double.NEGATIVE_INFINITY;
        System.arraycopy(ends, 0, outside, 1, ends.length);
        outside[ends.length + 1] = Double.POSITIVE_INFINITY;
        return new Chords(outside);
    }

    /** Through a ball. */
    static Chords ball(Vector3D centreMm, double radiusMm, double xMm, double yMm) {
        double dx = xMm - centreMm.getX();
        double dy = yMm - centreMm.getY();
        double half2 = radiusMm * radiusMm - dx * dx - dy * dy;
        if (!(half2 > 0)) {
            return NONE;
        }
        double half = Math.sqrt(half2);
        return between(centreMm.getZ() - half, centreMm.getZ() + half);
    }

    /** Through a round bar with flat ends: between its mantle, a quadratic in the height, and its two end planes. */
    static Chords flatBar(Vector3D fromMm, Vector3D toMm, double radiusMm, double xMm, double yMm) {
        double length = fromMm.distance(toMm);
        Vector3D axis = toMm.subtract(fromMm).scalarMultiply(1 / length);
        double dx = xMm - fromMm.getX();
        double dy = yMm - fromMm.getY();
        // At the height z above fromMm the axis is left by z² a − 2 z b + c = 0, the end planes lie at along + z rise =
        // 0, length.
        double along = dx * axis.getX() + dy * axis.getY();
        double rise = axis.getZ();
        double a = axis.getX() * axis.getX() + axis.getY() * axis.getY();
        double b = along * rise;
        double c = dx * dx + dy * dy - along * along - radiusMm * radiusMm;
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        if (a > UPRIGHT * UPRIGHT) {
            double root2 = b * b - a * c;
            if (!(root2 > 0)) {
                return NONE;
            }
            low = (b - Math.sqrt(root2)) / a;
            high = (b + Math.sqrt(root2)) / a;
        } else if (c >= 0) {
            return NONE;
        }
        if (rise == 0) {
            return along < 0 || along > length ? NONE : between(fromMm.getZ() + low, fromMm.getZ() + high);
        }
        double start = -along / rise;
        double end = (length - along) / rise;
        return between(
                fromMm.getZ() + Math.max(low, Math.min(start, end)),
                fromMm.getZ() + Math.min(high, Math.max(start, end)));
    }

    /** The one stretch from the lowest to the highest of the given ones: through a convex solid made of several. */
    static Chords hull(Chords... parts) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Chords part : parts) {
            if (part.count() > 0) {
                low = Math.min(low, part.lowMm(0));
                high = Math.max(high, part.highMm(part.count() - 1));
            }
        }
        return between(low, high);
    }
}
