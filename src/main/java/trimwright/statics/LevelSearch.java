package trimwright.statics;

import java.util.function.Function;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * Finds how high a level surface must stand for a given volume to lie below it. The volume grows with the height and its slope is the
 * surface's area, so Newton converges at once where the area is smooth; every step that would leave the bracket
 * is replaced by halving it, so that decks and empty stretches do no harm.
 */
final class LevelSearch {

    /** Share of the volume wanted that may be missing where nothing else is said. */
    static final double TOLERANCE = 1e-13;

    private static final int MOST_STEPS = 200;

    private LevelSearch() {}

    /**
     * @param direction which way is up; its own height is ignored
     * @param below the sums below a plane
     * @param volumeMm3 the volume wanted, between nothing and everything
     * @param bottomMm a height below which there is nothing
     * @param topMm a height below which there is everything
     * @param guessMm where to start; NaN for the middle
     * @return the sums at the height found
     */
    static Immersion plane(
            WaterPlane direction,
            Function<WaterPlane, Immersion> below,
            double volumeMm3,
            double bottomMm,
            double topMm,
            double guessMm) {
        return plane(direction, below, volumeMm3, bottomMm, topMm, guessMm, TOLERANCE);
    }

    /** The same to a tolerance of its own, as a share of the volume wanted. */
    static Immersion plane(
            WaterPlane direction,
            Function<WaterPlane, Immersion> below,
            double volumeMm3,
            double bottomMm,
            double topMm,
            double guessMm,
            double tolerance) {
        double low = bottomMm;
        double high = topMm;
        double height = guessMm > low && guessMm < high ? guessMm : 0.5 * (low + high);
        Immersion sums = below.apply(direction.at(height));
        for (int step = 0; step < MOST_STEPS; step++) {
            double missing = volumeMm3 - sums.volumeMm3();
            if (Math.abs(missing) <= tolerance * volumeMm3) {
                return sums;
            }
            if (missing > 0) {
                low = height;
            } else {
                high = height;
            }
            double next = height + missing / sums.waterplaneMm2();
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (next == height || !(high - low > Math.ulp(height))) {
                return sums;
            }
            height = next;
            sums = below.apply(direction.at(height));
        }
        return sums;
    }
}
