package trimwright.report.picture;

import org.apache.commons.math3.util.ResizableDoubleArray;

/**
 * Cuts a curve into dashes that keep their length on paper however close its points lie. The charting library strokes every segment
 * between two points anew, so that its own dashes would vanish on a fine curve.
 */
final class Dashes {

    private final double[] pattern;
    private final double pxPerX;
    private final double pxPerY;
    private final ResizableDoubleArray xs = new ResizableDoubleArray();
    private final ResizableDoubleArray ys = new ResizableDoubleArray();
    private int at;
    private double left;
    private boolean drawing;

    /** A curve cut into dashes: between two of them y is NaN. */
    static final class Cut {
        final double[] x;
        final double[] y;

        private Cut(double[] x, double[] y) {
            this.x = x;
            this.y = y;
        }
    }

    private Dashes(double[] pattern, double pxPerX, double pxPerY) {
        this.pattern = pattern;
        this.pxPerX = pxPerX;
        this.pxPerY = pxPerY;
        this.left = pattern[0];
    }

    /**
     * @param pattern lengths of dash, gap, dash, gap, …, in px; none for a solid curve
     * @param pxPerX px that one unit of x takes
     * @param pxPerY px that one unit of y takes
     */
    static Cut of(double[] x, double[] y, double[] pattern, double pxPerX, double pxPerY) {
        if (pattern.length == 0) {
            return new Cut(x, y);
        }
        Dashes dashes = new Dashes(pattern, pxPerX, pxPerY);
        for (int i = 0; i + 1 < x.length; i++) {
            if (Double.isNaN(y[i]) || Double.isNaN(y[i + 1])) {
                dashes.lift(x[i]);
            } else {
                dashes.along(x[i], y[i], x[i + 1], y[i + 1]);
            }
        }
        return new Cut(dashes.xs.getElements(), dashes.ys.getElements());
    }

    private void along(double x0, double y0, double x1, double y1) {
        double length = Math.hypot((x1 - x0) * pxPerX, (y1 - y0) * pxPerY);
        double done = 0;
        while (done < length) {
            double step = Math.min(left, length - done);
            double from = done / length;
            double to = (done + step) / length;
            boolean dash = at % 2 == 0;
            if (dash) {
                if (!drawing) {
                    point(x0 + from * (x1 - x0), y0 + from * (y1 - y0));
                    drawing = true;
                }
                point(x0 + to * (x1 - x0), y0 + to * (y1 - y0));
            }
            done += step;
            left -= step;
            if (left <= 0) {
                lift(x0 + to * (x1 - x0));
                at = (at + 1) % pattern.length;
                left = pattern[at];
            }
        }
    }

    private void lift(double x) {
        if (drawing) {
            point(x, Double.NaN);
            drawing = false;
        }
    }

    private void point(double x, double y) {
        xs.addElement(x);
        ys.addElement(y);
    }
}
