package trimwright.report.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;

/** How curves are told apart: by colour, and by dashes where there is no colour. */
final class PlotStroke {

    static final BasicStroke PEN = new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);

    private static final List<PlotStroke> ALL = List.of(
            new PlotStroke(0x0B5C94),
            new PlotStroke(0xC8420A, 9, 5),
            new PlotStroke(0x1B7F5C, 12, 4, 2, 4),
            new PlotStroke(0x7A4E9C, 2, 4),
            new PlotStroke(0x9A6A00, 18, 5),
            new PlotStroke(0x3B4652, 6, 3, 2, 3, 2, 3));

    private final Color colour;
    private final double[] pattern;

    private PlotStroke(int rgb, double... pattern) {
        this.colour = new Color(rgb);
        this.pattern = pattern;
    }

    /** The stroke of the n-th curve of a panel, beginning anew after the last. */
    static PlotStroke of(int n) {
        return ALL.get(n % ALL.size());
    }

    Color colour() {
        return colour;
    }

    /** Lengths of dash, gap, dash, gap, … in px; empty for a solid line. */
    double[] pattern() {
        return pattern.clone();
    }

    /** The pen that draws the dashes by itself, for a straight line. */
    BasicStroke dashed() {
        if (pattern.length == 0) {
            return PEN;
        }
        float[] dashes = new float[pattern.length];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = (float) pattern[i];
        }
        return new BasicStroke(PEN.getLineWidth(), PEN.getEndCap(), PEN.getLineJoin(), 10, dashes, 0);
    }
}
