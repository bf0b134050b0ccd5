package trimwright.report.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds for the labels of a diagram the places where they hide least; each label written is kept clear by the next. */
final class PlotLabels {

    private static final Color GROUND = new Color(255, 255, 255, 220);

    /** What a px of a curve under a label weighs against a px of distance from its point. */
    private static final double HIDDEN = 4;

    private static final double OTHER_LABEL = 10_000;
    private static final double OUTSIDE = 100_000;
    private static final double[] FURTHER = {0, 12, 30, 55};

    private final Lettering letters;
    private final Rectangle2D diagram;
    private final List<Line2D> curves = new ArrayList<>();
    private final List<Rectangle2D> taken = new ArrayList<>();

    PlotLabels(Lettering letters, Rectangle2D diagram) {
        this.letters = letters;
        this.diagram = diagram;
    }

    void avoid(Line2D pieceOfCurve) {
        curves.add(pieceOfCurve);
    }

    void keepClear(double x, double y, double radius) {
        taken.add(new Rectangle2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    /** Writes beside a point, tied to it by a line where it stands off. */
    void beside(Graphics2D g, String text, double x, double y, double aside) {
        double width = width(text);
        double height = height();
        Rectangle2D best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double further : FURTHER) {
            for (int toRight = 1; toRight >= -1; toRight--) {
                for (int down = -1; down <= 1; down++) {
                    if (toRight == 0 && down == 0) {
                        continue;
                    }
                    double off = aside + further;
                    Rectangle2D place = new Rectangle2D.Double(
                            x + toRight * off - (1 - toRight) * 0.5 * width,
                            y + down * off - (1 - down) * 0.5 * height,
                            width,
                            height);
                    double cost = cost(place) + further;
                    if (cost < least) {
                        least = cost;
                        best = place;
                    }
                }
            }
        }
        double nearX = Math.max(best.getMinX(), Math.min(x, best.getMaxX()));
        double nearY = Math.max(best.getMinY(), Math.min(y, best.getMaxY()));
        if (Math.hypot(nearX - x, nearY - y) > 1.5 * aside) {
            g.setStroke(new BasicStroke(0.8f));
            g.draw(new Line2D.Double(x, y, nearX, nearY));
        }
        write(g, text, best);
    }

    /** Writes in a range, along its top or its bottom. */
    void inside(Graphics2D g, String text, double left, double top, double right, double bottom) {
        double width = width(text);
        double height = height();
        Rectangle2D best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double y : new double[] {top + 2, bottom - height - 2, top - height - 2, bottom + 2}) {
            for (double x : new double[] {left + 2, right - width - 2, 0.5 * (left + right - width)}) {
                Rectangle2D place = new Rectangle2D.Double(x, y, width, height);
                double cost = cost(place) + (y < top || y + height > bottom ? OTHER_LABEL : 0);
                if (cost < least) {
                    least = cost;
                    best = place;
                }
            }
        }
        write(g, text, best);
    }

    private void write(Graphics2D g, String text, Rectangle2D place) {
        taken.add(place);
        Color ink = g.getColor();
        g.setColor(GROUND);
        g.fill(new RoundRectangle2D.Double(place.getX(), place.getY(), place.getWidth(), place.getHeight(), 5, 5));
        g.setColor(ink);
        double middle = 0.5 * Lettering.capitalPx(letters.plain());
        Lettering.write(g, letters.plain(), text, place.getCenterX(), place.getCenterY() + middle, 0.5);
    }

    private double width(String text) {
        return Lettering.widthPx(letters.plain(), text) + 8;
    }

    private double height() {
        return 1.45 * letters.plain().getSize2D();
    }

    private double cost(Rectangle2D place) {
        double cost = diagram.contains(place) ? 0 : OUTSIDE;
        for (Rectangle2D other : taken) {
            cost += other.intersects(place) ? OTHER_LABEL : 0;
        }
        for (Line2D piece : curves) {
            if (piece.intersects(place)) {
                cost += HIDDEN * Math.min(place.getWidth(), piece.getP1().distance(piece.getP2()));
            }
        }
        return cost;
    }
}
