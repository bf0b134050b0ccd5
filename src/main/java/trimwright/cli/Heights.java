package trimwright.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trimwright.report.Numbers;

/**
 * The heights of a table of trial waterlines, from what the user said and the extent of the boat.
 *
 * @param fromMm lowest height, {@code null} where the user did not say
 * @param toMm highest height, {@code null} where the user did not say
 * @param stepMm from one to the next, {@code null} where the user did not say
 */
record Heights(Double fromMm, Double toMm, Double stepMm) {

    static final int MOST_ROWS = 10_000;

    private static final int USUAL_ROWS = 20;

    /**
     * Heights as a person would write them: exact decimals, and multiples of the step where the user gave no start.
     *
     * @param bottomMm the boat's lowest point
     * @param topMm the boat's highest point
     * @throws IllegalArgumentException when nothing sensible comes of it; the message says what to do
     */
    List<Double> over(double bottomMm, double topMm) {
        double span = (toMm == null ? topMm : toMm) - (fromMm == null ? bottomMm : fromMm);
        if (span < 0) {
            throw new IllegalArgumentException("the lowest waterline, "
                    + (fromMm == null ? "the boat's lowest point at " + Numbers.mm(bottomMm) : said("--from", fromMm))
                    + ", lies above the highest, "
                    + (toMm == null ? "the boat's highest point at " + Numbers.mm(topMm) : said("--to", toMm)) + ".");
        }
        double step = stepMm == null ? roundStep(span / USUAL_ROWS) : stepMm;
        if (!(step > 0)) {
            throw new IllegalArgumentException("--step must be above 0 mm, found " + Numbers.plain(step) + ".");
        }
        double from = fromMm == null ? step * Math.floor(bottomMm / step) : fromMm;
        double to = toMm == null ? step * Math.ceil(topMm / step) : toMm;
        // The last row may miss the end by the rounding of the division alone.
        double rows = Math.floor((to - from) / step * (1 + 1e-12)) + 1;
        if (rows > MOST_ROWS) {
            throw new IllegalArgumentException(
                    said("--step", step) + " gives " + Numbers.plain(rows) + " rows, and at most "
                            + MOST_ROWS + " are allowed. Take a step of at least "
                            + Numbers.brief((to - from) / (MOST_ROWS - 1)) + " mm.");
        }
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            BigDecimal climbed = BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(i));
            heights.add(BigDecimal.valueOf(from).add(climbed).doubleValue());
        }
        return heights;
    }

    private static String said(String option, double value) {
        return option + " " + Numbers.plain(value);
    }

    /** 1, 2 or 5 times a power of ten, the least that is not below. */
    private static double roundStep(double least) {
        if (!(least > 0)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1, 2, 5}) {
            if (least <= factor * power) {
                return factor * power;
            }
        }
        return 10 * power;
    }
}
