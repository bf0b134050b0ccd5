package trimwright.report.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Lays a plot out and letters it, on any drawing surface; lengths are px of a plot {@value #WIDTH} px wide. */
final class PlotPainter {

    static final int WIDTH = 900;

    private static final double LETTERS = 13;
    private static final double MARGIN = 20;
    private static final double TITLE_ROW = 34;
    private static final double HEAD_ROW = 24;
    private static final double TICK_LABELS = 20;
    private static final double X_TITLE = 24;
    private static final double BETWEEN_PANELS = 12;
    private static final double TICK = 5;
    private static final double SAMPLE = 34;
    private static final double AFTER_ENTRY = 18;
    private static final double MARK_RADIUS = 4.5;
    private static final int X_TICKS = 12;

    /** Height of the diagrams, by how many there are, the last for all that have more. */
    private static final int[] DIAGRAM_HEIGHTS = {360, 240, 180, 150};

    private final Plot plot;
    private final Lettering letters;
    private final Lettering small;
    private final int left;
    private final int diagramWidth;
    private final int diagramHeight;
    private final List<Placed> placed = new ArrayList<>();
    private final int height;

    /**
     * A panel in its place.
     *
     * @param head rows of the legend, the first beside the y title
     * @param headTop y at which the head begins
     * @param top y at which the diagram begins
     * @param last whether its x axis is lettered: the last of the panels that share it
     */
    private record Placed(
            Plot.Panel panel,
            PlotScale across,
            PlotScale up,
            List<List<Entry>> head,
            double headTop,
            int top,
            boolean last) {}

    /** A curve in the legend, at its distance from the left. */
    private record Entry(int curve, double x) {}

    /** @throws trimwright.finding.UnusableInputException when the machine has no fonts */
    PlotPainter(Plot plot) {
        this.plot = plot;
        letters = Lettering.of(LETTERS);
        small = letters.times(0.92);
        List<Plot.Panel> panels = plot.panels();
        diagramHeight = DIAGRAM_HEIGHTS[Math.min(panels.size(), DIAGRAM_HEIGHTS.length) - 1];
        int yTicks = Math.max(3, diagramHeight / 45);
        List<PlotScale> ups =
                panels.stream().map(panel -> PlotScale.up(panel, yTicks)).toList();
        double widest = 0;
        for (PlotScale up : ups) {
            for (double tick : up.ticks()) {
                widest = Math.max(widest, Lettering.widthPx(small.plain(), Steps.text(tick, up.step())));
            }
        }
        left = (int) Math.ceil(MARGIN + widest + 2 * TICK);
        diagramWidth = (int) (WIDTH - MARGIN - left);
        double y = MARGIN + (plot.title().isEmpty() ? 0 : TITLE_ROW);
        for (int i = 0; i < panels.size(); i++) {
            Plot.Panel panel = panels.get(i);
            boolean last = i + 1 == panels.size() || !shareAxis(panel, panels.get(i + 1));
            List<List<Entry>> head = head(panel);
            double headTop = y;
            y = Math.ceil(y + head.size() * HEAD_ROW);
            placed.add(new Placed(panel, across(i), ups.get(i), head, headTop, (int) y, last));
            y += diagramHeight + (last ? TICK_LABELS + X_TITLE : 0) + BETWEEN_PANELS;
        }
        height = (int) Math.ceil(y - BETWEEN_PANELS + MARGIN / 2);
    }

    int height() {
        return height;
    }

    void paint(Graphics2D g) {
        Lettering.smooth(g);
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(0, 0, WIDTH, height));
        g.setColor(Palette.INK);
        if (!plot.title().isEmpty()) {
            Lettering.write(g, letters.times(1.35).bold(), plot.title(), MARGIN, MARGIN + 16, 0);
        }
        for (Placed p : placed) {
            new PlotChart(p.panel(), p.across(), p.up(), diagramWidth, diagramHeight).paintAt(g, left, p.top());
            axes(g, p);
            head(g, p);
            PlotLabels labels = labels(p);
            marks(g, p, labels);
            bands(g, p, labels);
        }
    }

    private static boolean shareAxis(Plot.Panel panel, Plot.Panel next) {
        return panel.xTitle().equals(next.xTitle());
    }

    /** The x axis of a panel, over all the panels that share it. */
    private PlotScale across(int index) {
        List<Plot.Panel> panels = plot.panels();
        int first = index;
        while (first > 0 && shareAxis(panels.get(first - 1), panels.get(first))) {
            first--;
        }
        int end = index + 1;
        while (end < panels.size() && shareAxis(panels.get(end - 1), panels.get(end))) {
            end++;
        }
        return PlotScale.across(panels.subList(first, end), X_TICKS);
    }

    /** The legend, in as many rows as it needs; without entries where there is only one curve. */
    private List<List<Entry>> head(Plot.Panel panel) {
        List<List<Entry>> rows = new ArrayList<>();
        rows.add(new ArrayList<>());
        if (panel.curves().size() == 1) {
            return rows;
        }
        double x = left + Lettering.widthPx(letters.bold(), panel.yTitle()) + AFTER_ENTRY;
        for (int i = 0; i < panel.curves().size(); i++) {
            double width = SAMPLE
                    + 6
                    + Lettering.widthPx(letters.plain(), panel.curves().get(i).name());
            if (x + width > WIDTH - MARGIN && x > left) {
                rows.add(new ArrayList<>());
                x = left;
            }
            rows.get(rows.size() - 1).add(new Entry(i, x));
            x += width + AFTER_ENTRY;
        }
        return rows;
    }

    private void head(Graphics2D g, Placed p) {
        double y = p.headTop() + HEAD_ROW - 8;
        g.setColor(Palette.INK);
        Lettering.write(g, letters.bold(), p.panel().yTitle(), left, y, 0);
        double middle = 0.5 * Lettering.capitalPx(letters.plain());
        for (List<Entry> row : p.head()) {
            for (Entry entry : row) {
                PlotStroke stroke = PlotStroke.of(entry.curve());
                g.setColor(stroke.colour());
                g.setStroke(stroke.dashed());
                g.draw(new Line2D.Double(entry.x(), y - middle, entry.x() + SAMPLE, y - middle));
                g.setColor(Palette.INK);
                String name = p.panel().curves().get(entry.curve()).name();
                Lettering.write(g, letters.plain(), name, entry.x() + SAMPLE + 6, y, 0);
            }
            y += HEAD_ROW;
        }
    }

    private void axes(Graphics2D g, Placed p) {
        double bottom = p.top() + diagramHeight;
        double middle = 0.5 * Lettering.capitalPx(small.plain());
        g.setStroke(new BasicStroke(1));
        g.setColor(Palette.FRAME);
        g.draw(new Rectangle2D.Double(left, p.top(), diagramWidth, diagramHeight));
        for (double tick : p.up().ticks()) {
            double y = y(p, tick);
            g.setColor(Palette.QUIET_INK);
            g.draw(new Line2D.Double(left - TICK, y, left, y));
            Lettering.write(g, small.plain(), Steps.text(tick, p.up().step()), left - 1.6 * TICK, y + middle, 1);
        }
        for (double tick : p.across().ticks()) {
            double x = x(p, tick);
            g.setColor(Palette.QUIET_INK);
            g.draw(new Line2D.Double(x, bottom, x, bottom + TICK));
            if (p.last()) {
                String text = Steps.text(tick, p.across().step());
                Lettering.write(g, small.plain(), text, x, bottom + TICK_LABELS - 1, 0.5);
            }
        }
        if (p.last()) {
            g.setColor(Palette.INK);
            double middleX = left + 0.5 * diagramWidth;
            Lettering.write(g, letters.plain(), p.panel().xTitle(), middleX, bottom + TICK_LABELS + X_TITLE - 7, 0.5);
        }
    }

    private void bands(Graphics2D g, Placed p, PlotLabels labels) {
        for (Plot.Band band : p.panel().bands()) {
            boolean alongX = band.axis() == Plot.Axis.X;
            PlotScale scale = alongX ? p.across() : p.up();
            double from = Math.max(band.from(), scale.least());
            double to = Math.min(band.to(), scale.greatest());
            if (from < to) {
                g.setColor(Palette.QUIET_INK);
                labels.inside(
                        g,
                        band.label(),
                        alongX ? x(p, from) : left,
                        alongX ? p.top() : y(p, to),
                        alongX ? x(p, to) : left + diagramWidth,
                        alongX ? p.top() + diagramHeight : y(p, from));
            }
        }
    }

    private void marks(Graphics2D g, Placed p, PlotLabels labels) {
        for (Plot.Mark mark : p.panel().marks()) {
            labels.keepClear(x(p, mark.x()), y(p, mark.y()), MARK_RADIUS);
        }
        for (Plot.Mark mark : p.panel().marks()) {
            double x = x(p, mark.x());
            double y = y(p, mark.y());
            g.setColor(Palette.INK);
            labels.beside(g, mark.label(), x, y, MARK_RADIUS + 5);
            Ellipse2D ring = new Ellipse2D.Double(x - MARK_RADIUS, y - MARK_RADIUS, 2 * MARK_RADIUS, 2 * MARK_RADIUS);
            g.setColor(Color.WHITE);
            g.fill(ring);
            g.setColor(Palette.INK);
            g.setStroke(new BasicStroke(1.8f));
            g.draw(ring);
        }
    }

    /** The labels of a panel, which keep off its curves. */
    private PlotLabels labels(Placed p) {
        PlotLabels labels = new PlotLabels(small, new Rectangle2D.Double(left, p.top(), diagramWidth, diagramHeight));
        for (Plot.Curve curve : p.panel().curves()) {
            double[] xs = curve.x();
            double[] ys = curve.y();
            for (int i = 0; i + 1 < xs.length; i++) {
                if (!Double.isNaN(ys[i]) && !Double.isNaN(ys[i + 1])) {
                    labels.avoid(new Line2D.Double(x(p, xs[i]), y(p, ys[i]), x(p, xs[i + 1]), y(p, ys[i + 1])));
                }
            }
        }
        return labels;
    }

    private double x(Placed p, double value) {
        return left + p.across().share(value) * diagramWidth;
    }

    private double y(Placed p, double value) {
        return p.top() + (1 - p.up().share(value)) * diagramHeight;
    }
}
