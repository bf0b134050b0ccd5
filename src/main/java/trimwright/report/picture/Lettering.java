package trimwright.report.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/**
 * Text in pictures and plots, in the machine's own sans-serif. A machine without a display may hold no fonts at all: then there
 * are no pictures, and a finding says so.
 *
 * @param plain for most text
 * @param bold for titles and letters beside marks
 */
record Lettering(Font plain, Font bold) {

    private static final FontRenderContext SMOOTH = new FontRenderContext(null, true, true);

    /**
     * @param sizePx height of the plain text
     * @throws UnusableInputException when the machine has no fonts
     */
    static Lettering of(double sizePx) {
        Font plain = new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) sizePx);
        try {
            plain.getLineMetrics("x", SMOOTH);
        } catch (InternalError | LinkageError | IllegalStateException | NullPointerException e) {
            // The runtime reports missing fonts as an error of its own insides, a different one each time.
            Throwable root = e;
            while (root.getCause() != null) {
                root = root.getCause();
            }
            throw new UnusableInputException(
                    Finding.of(Code.FONTS_MISSING, new Place.Whole(), "reason", String.valueOf(root.getMessage())));
        }
        return new Lettering(plain, plain.deriveFont(Map.of(TextAttribute.WEIGHT, TextAttribute.WEIGHT_BOLD)));
    }

    /** The same lettering larger or smaller. */
    Lettering times(double factor) {
        float size = (float) (plain.getSize2D() * factor);
        return new Lettering(plain.deriveFont(size), bold.deriveFont(size));
    }

    static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    static double widthPx(Font font, String text) {
        return font.getStringBounds(text, SMOOTH).getWidth();
    }

    /** From the baseline up to the top of capital letters. */
    static double capitalPx(Font font) {
        return font.createGlyphVector(SMOOTH, "H").getVisualBounds().getHeight();
    }

    /** Writes with the text's left end, middle or right end ({@code share} 0, ½, 1) at x. */
    static void write(Graphics2D g, Font font, String text, double x, double baseline, double share) {
        g.setFont(font);
        g.drawString(text, (float) (x - share * widthPx(font, text)), (float) baseline);
    }

    /** Writes on a rim of the ground colour, so that the text stays readable over anything. */
    static void writeRimmed(Graphics2D g, Font font, String text, double x, double baseline, double share) {
        double left = x - share * widthPx(font, text);
        Shape outline = font.createGlyphVector(SMOOTH, text).getOutline((float) left, (float) baseline);
        Color ink = g.getColor();
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(font.getSize2D() / 4, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(outline);
        g.setColor(ink);
        g.fill(outline);
    }

    /** Breaks a text into lines at its spaces and line ends; a word wider than the line keeps a line of its own. */
    static List<String> lines(Font font, String text, double widthPx) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.strip().split("\\R", -1)) {
            StringBuilder line = new StringBuilder();
            for (String word : paragraph.split(" +", -1)) {
                if (line.length() > 0 && widthPx(font, line + " " + word) > widthPx) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.length() > 0 ? " " : "").append(word);
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
