package trimwright.report.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The signs of a picture, told apart by their shape: B a ring, G a quartered disc, M a triangle, the water's level a wedge. */
final class PictureMarks {

    private PictureMarks() {}

    /** A point of the boat that has a sign and a letter. */
    enum Mark {
        BUOYANCY("B", "centre of buoyancy"),
        GRAVITY("G", "centre of gravity"),
        METACENTRE("M", "metacentre");

        private final String letter;
        private final String meaning;

        Mark(String letter, String meaning) {
            this.letter = letter;
            this.meaning = meaning;
        }

        String letter() {
            return letter;
        }

        String meaning() {
            return meaning;
        }

        /** Draws the sign around its point; {@code r} is its radius. */
        void draw(Graphics2D g, double x, double y, double r) {
            g.setStroke(new BasicStroke((float) (r * 0.28), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            switch (this) {
                case BUOYANCY -> {
                    filled(g, disc(x, y, r));
                    g.fill(disc(x, y, r * 0.3));
                }
                case GRAVITY -> {
                    filled(g, disc(x, y, r));
                    g.fill(new Arc2D.Double(x - r, y - r, 2 * r, 2 * r, 0, 90, Arc2D.PIE));
                    g.fill(new Arc2D.Double(x - r, y - r, 2 * r, 2 * r, 180, 90, Arc2D.PIE));
                }
                case METACENTRE -> {
                    Path2D triangle = new Path2D.Double();
                    triangle.moveTo(x, y - 1.15 * r);
                    triangle.lineTo(x + 1.1 * r, y + 0.85 * r);
                    triangle.lineTo(x - 1.1 * r, y + 0.85 * r);
                    triangle.closePath();
                    filled(g, triangle);
                    g.fill(disc(x, y + 0.15 * r, r * 0.22));
                }
            }
        }
    }

    /** Something does not fit here: an exclamation mark in a triangle, with the warner's thick rim. */
    static void misfit(Graphics2D g, double x, double y, double r) {
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(x, y - 1.1 * r);
        triangle.lineTo(x + 1.15 * r, y + 0.85 * r);
        triangle.lineTo(x - 1.15 * r, y + 0.85 * r);
        triangle.closePath();
        g.setColor(Color.WHITE);
        g.fill(triangle);
        g.setColor(Palette.MISFIT);
        g.setStroke(new BasicStroke((float) (r * 0.3), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(triangle);
        g.draw(new Line2D.Double(x, y - 0.35 * r, x, y + 0.25 * r));
        g.fill(disc(x, y + 0.52 * r, 0.16 * r));
    }

    private static Shape disc(double x, double y, double r) {
        return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }

    private static void filled(Graphics2D g, Shape shape) {
        g.setColor(Color.WHITE);
        g.fill(shape);
        g.setColor(Palette.INK);
        g.draw(shape);
    }

    /** A dot for the very point, where the sign stands beside it. */
    static void dot(Graphics2D g, double x, double y, double r) {
        g.setColor(Color.WHITE);
        g.fill(disc(x, y, r * 1.6));
        g.setColor(Palette.INK);
        g.fill(disc(x, y, r));
    }

    /** The draughtsman's sign for a level: a wedge standing on the surface, with two strokes under it. */
    static void level(Graphics2D g, double x, double surfaceY, double r) {
        Path2D wedge = new Path2D.Double();
        wedge.moveTo(x, surfaceY);
        wedge.lineTo(x - r, surfaceY - 1.6 * r);
        wedge.lineTo(x + r, surfaceY - 1.6 * r);
        wedge.closePath();
        g.setColor(Color.WHITE);
        g.fill(wedge);
        g.setColor(Palette.WATER_LINE);
        g.setStroke(new BasicStroke((float) (r * 0.25)));
        g.draw(wedge);
        g.draw(new Line2D.Double(x - 0.65 * r, surfaceY + 0.65 * r, x + 0.65 * r, surfaceY + 0.65 * r));
        g.draw(new Line2D.Double(x - 0.3 * r, surfaceY + 1.25 * r, x + 0.3 * r, surfaceY + 1.25 * r));
    }

    /** A scale bar in black and white fields, its left end at x. */
    static void scaleBar(Graphics2D g, double x, double y, double lengthPx, double heightPx) {
        int fields = 4;
        for (int i = 0; i < fields; i++) {
            g.setColor(i % 2 == 0 ? Palette.INK : Color.WHITE);
            g.fill(new Rectangle2D.Double(x + i * lengthPx / fields, y, lengthPx / fields, heightPx));
        }
        g.setColor(Palette.INK);
        g.setStroke(new BasicStroke((float) (heightPx * 0.16)));
        g.draw(new Rectangle2D.Double(x, y, lengthPx, heightPx));
    }
}
