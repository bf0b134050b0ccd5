package trimwright.samples;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The outline of a submarine's cross-section, port half: an elliptic body, a saddle tank and a casing under a level deck,
 * about one centre, run into each other smoothly. Lengths in mm.
 *
 * @param x where it stands
 * @param centre height of the body's centre
 * @param bodyHalfWidth half width of the body
 * @param bodyHalfHeight half height of the body
 * @param saddleHalfWidth half width over the saddle tanks; hidden in the body where it is smaller
 * @param saddleHalfHeight half height of the saddle tanks
 * @param deckHalfWidth half width of the deck
 * @param deck height of the deck
 * @param blend length over which the three are blended
 */
record RoundSection(
        double x,
        double centre,
        double bodyHalfWidth,
        double bodyHalfHeight,
        double saddleHalfWidth,
        double saddleHalfHeight,
        double deckHalfWidth,
        double deck,
        double blend) {

    private static final double SADDLE_POWER = 2.5;
    private static final double TUMBLEHOME = 0.10;
    /** Steps from straight down to straight up. */
    private static final int STEPS = 720;

    /**
     * From where the outline leaves the keel's side, or from straight below the centre, round to the deck's edge.
     *
     * @param keelHalfWidth half width of the keel; 0 for none
     */
    Vector3D[] side(double keelHalfWidth) {
        int first = 0;
        while (rim(first + 1.0).getY() < keelHalfWidth) {
            first++;
        }
        int last = STEPS / 2;
        while (rim(last).getZ() < deck) {
            last++;
        }
        Vector3D[] line = new Vector3D[last - first + 1];
        for (int k = 1; k < line.length - 1; k++) {
            line[k] = rim(first + k);
        }
        double from = root(first, first + 1, step -> rim(step).getY() - keelHalfWidth);
        double to = root(last - 1, last, step -> rim(step).getZ() - deck);
        line[0] = new Vector3D(x, keelHalfWidth, rim(from).getZ());
        line[line.length - 1] = new Vector3D(x, rim(to).getY(), deck);
        return line;
    }

    private static double root(double below, double above, DoubleUnaryOperator rising) {
        double low = below;
        double high = above;
        for (int k = 0; k < 60; k++) {
            double middle = 0.5 * (low + high);
            if (rising.applyAsDouble(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** The outline at a step: the farthest of body, saddle and casing, blended. */
    private Vector3D rim(double step) {
        double angle = StrictMath.PI * (step / STEPS - 0.5);
        double aside = step == 0 ? 0 : bodyHalfWidth * StrictMath.cos(angle);
        double up = bodyHalfHeight * StrictMath.sin(angle);
        double body = StrictMath.sqrt(aside * aside + up * up);
        aside /= body;
        up /= body;
        double r = greater(greater(body, toSaddle(aside, up)), toCasing(aside, up));
        return new Vector3D(x, r * aside, centre + r * up);
    }

    private double toSaddle(double aside, double up) {
        double wide = StrictMath.pow(aside / saddleHalfWidth, SADDLE_POWER);
        double high = StrictMath.pow(Math.abs(up) / saddleHalfHeight, SADDLE_POWER);
        return StrictMath.pow(wide + high, -1 / SADDLE_POWER);
    }

    /** Straight sides leaning in above the centre, a half ellipse below it. */
    private double toCasing(double aside, double up) {
        double lean = TUMBLEHOME * Math.min(1, deckHalfWidth / 14);
        double low = deckHalfWidth + lean * (deck - centre);
        double depth = 0.8 * bodyHalfHeight;
        return up >= 0
                ? low / (aside + lean * up)
                : 1 / StrictMath.sqrt(aside * aside / (low * low) + up * up / (depth * depth));
    }

    /** The greater of two lengths, with the corner between them rounded off. */
    private double greater(double a, double b) {
        double near = Math.max(0, blend - Math.abs(a - b)) / blend;
        return Math.max(a, b) + near * near * blend / 4;
    }
}
