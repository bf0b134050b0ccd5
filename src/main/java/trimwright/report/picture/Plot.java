package trimwright.report.picture;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import trimwright.report.picture.PlotFile.Format;

/**
 * Curves over a common axis, in panels one above the other; panels that follow each other with the same x title share their x
 * axis. Told apart by colour and by dashes, so that it reads in black and white.
 *
 * @param title what stands above it; empty for nothing
 * @param panels from top to bottom, at least one
 */
public record Plot(String title, List<Panel> panels) {

    /** Least and greatest width that can be drawn, px. */
    public static final int LEAST_WIDTH_PX = 400;

    public static final int GREATEST_WIDTH_PX = 6000;

    /** @throws IllegalArgumentException when there is no panel */
    public Plot {
        panels = List.copyOf(panels);
        if (panels.isEmpty()) {
            throw new IllegalArgumentException("a plot needs a panel");
        }
    }

    /**
     * One diagram.
     *
     * @param xTitle what runs to the right, with its unit, as in "fill of the tanks, %"
     * @param yTitle what runs up, with its unit
     * @param curves at least one
     * @param marks points that matter
     * @param bands shaded ranges
     */
    public record Panel(String xTitle, String yTitle, List<Curve> curves, List<Mark> marks, List<Band> bands) {

        /** @throws IllegalArgumentException when no curve has a finite point */
        public Panel {
            curves = List.copyOf(curves);
            marks = List.copyOf(marks);
            bands = List.copyOf(bands);
            if (curves.stream().noneMatch(Curve::hasPoint)) {
                throw new IllegalArgumentException("nothing to plot over " + xTitle);
            }
        }

        public Panel(String xTitle, String yTitle, List<Curve> curves, List<Mark> marks) {
            this(xTitle, yTitle, curves, marks, List.of());
        }
    }

    /** A line through points in the order given. Where y is NaN the line has a gap. */
    public static final class Curve {

        private final String name;
        private final double[] x;
        private final double[] y;

        /**
         * A curve through the points (x, y).
         *
         * @param name what it shows, told where a panel has several
         * @throws IllegalArgumentException when x and y differ in length, x is not finite or y is infinite
         */
        public Curve(String name, double[] x, double[] y) {
            this.name = name;
            this.x = x.clone();
            this.y = y.clone();
            if (x.length != y.length) {
                throw new IllegalArgumentException(x.length + " x and " + y.length + " y in " + name);
            }
            for (int i = 0; i < x.length; i++) {
                if (!Double.isFinite(x[i]) || Double.isInfinite(y[i])) {
                    throw new IllegalArgumentException("point " + i + " of " + name + " is not finite");
                }
            }
        }

        public String name() {
            return name;
        }

        public double[] x() {
            return x.clone();
        }

        public double[] y() {
            return y.clone();
        }

        boolean hasPoint() {
            for (double value : y) {
                if (!Double.isNaN(value)) {
                    return true;
                }
            }
            return false;
        }
    }

    /** A point that matters, with its label. */
    public record Mark(String label, double x, double y) {

        /** @throws IllegalArgumentException when it is not finite */
        public Mark {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException("mark " + label + " is not finite");
            }
        }
    }

    /**
     * A shaded range, such as what lies below a target. What of it reaches beyond the curves is not shown.
     *
     * @param label told in the range
     * @param axis the axis whose values {@code from} and {@code to} are
     */
    public record Band(String label, Axis axis, double from, double to) {

        /** @throws IllegalArgumentException when {@code from} is not below {@code to} */
        public Band {
            if (!(from < to)) {
                throw new IllegalArgumentException("band " + label + " from " + from + " to " + to);
            }
        }
    }

    /** An axis of a panel. */
    public enum Axis {
        X,
        Y
    }

    /**
     * Draws the plot; the height follows from the number of panels.
     *
     * @param widthPx {@value #LEAST_WIDTH_PX}…{@value #GREATEST_WIDTH_PX}
     * @throws IllegalArgumentException when the width is out of that range
     * @throws trimwright.finding.UnusableInputException when the machine has no fonts
     */
    public BufferedImage draw(int widthPx) {
        if (widthPx < LEAST_WIDTH_PX || widthPx > GREATEST_WIDTH_PX) {
            throw new IllegalArgumentException("width " + widthPx + " px");
        }
        PlotPainter painter = new PlotPainter(this);
        double scale = widthPx / (double) PlotPainter.WIDTH;
        int heightPx = (int) Math.round(painter.height() * scale);
        BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(scale, heightPx / (double) painter.height());
        painter.paint(g);
        g.dispose();
        return image;
    }

    /**
     * Writes the plot as SVG or PNG, by the ending of the name. The file appears whole or not at all.
     *
     * @param overwrite whether a file of that name may be replaced
     * @throws trimwright.finding.UnusableInputException when the name ends otherwise, the file is there and may not be replaced, it
     *     cannot be written, or the machine has no fonts
     */
    public void write(Path file, boolean overwrite) {
        Format.of(file).write(this, file, overwrite);
    }

    /**
     * The plot as an SVG document, to stand in a page.
     *
     * @throws trimwright.finding.UnusableInputException when the machine has no fonts
     */
    public String svg() {
        return PlotFile.svg(this);
    }
}
