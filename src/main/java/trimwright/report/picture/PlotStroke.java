package trimwright.report.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;

/** How curves are told apart: by colour, and by dashes where there is no colour. */
record PlotStroke(Color colour, double[] pattern) {

    static final BasicStroke PEN = new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);

    private static final List<PlotStroke> ALL = List.of(
            new PlotStroke(new Color(0x0B5C94), new double[0]),
            new PlotStroke(new Color(0xC8420A), new double[] {9, 5}),
            new PlotStroke(new Color(0x1B7F5C), new double[] {12, 4, 2, 4}),
            new PlotStroke(new Color(0x7A4E9C), new double[] {2, 4}),
            new PlotStroke(new Color(0x9A6A00), new double[] {18, 5}),
            new PlotStroke(new Color(0x3B4652), new double[] {6, 3, 2, 3, 2, 3}));

    /** The stroke of the n-th curve of a panel, beginning anew after the last. */
    static PlotStroke of(int n) {
        return ALL.get(n % ALL.size());
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
