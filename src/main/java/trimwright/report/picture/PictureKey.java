package trimwright.report.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import trimwright.boat.Kind;

/** What the signs, lines and tints of a picture mean; only those that are in it. */
final class PictureKey {

    private static final double ROW = 1.75;
    private static final double SAMPLE = 2.2;
    private static final double SPACE = 0.6;
    private static final double BETWEEN = 1.5;

    private final Lettering letters;
    private final double size;
    private final List<List<Entry>> rows;
    private final double leftPx;
    private final double topPx;

    /** A sample in a box of {@code SAMPLE} by one letter sizes, and what it means. */
    private record Entry(Sample sample, String meaning) {}

    @FunctionalInterface
    private interface Sample {
        /** Draws around the middle of the box; {@code size} is the height of the letters. */
        void draw(Graphics2D g, double x, double y, double size);
    }

    private PictureKey(Lettering letters, List<List<Entry>> rows, double leftPx, double topPx) {
        this.letters = letters;
        this.size = letters.plain().getSize2D();
        this.rows = rows;
        this.leftPx = leftPx;
        this.topPx = topPx;
    }

    /** The key to a picture, in rows of at most the given width. */
    static PictureKey of(PictureModel model, Lettering letters, double widthPx) {
        List<List<Entry>> rows = new ArrayList<>();
        double size = letters.plain().getSize2D();
        for (List<Entry> group : List.of(signs(model), tints(model))) {
            List<Entry> row = new ArrayList<>();
            double used = 0;
            for (Entry entry : group) {
                double width = widthPx(letters, entry);
                if (!row.isEmpty() && used + width > widthPx + BETWEEN * size) {
                    rows.add(row);
                    row = new ArrayList<>();
                    used = 0;
                }
                row.add(entry);
                used += width;
            }
            rows.add(row);
        }
        return new PictureKey(letters, rows, 0, 0);
    }

    /** The same key with its top left corner elsewhere. */
    PictureKey at(double newLeftPx, double newTopPx) {
        return new PictureKey(letters, rows, newLeftPx, newTopPx);
    }

    double heightPx() {
        return rows.size() * ROW * size;
    }

    void draw(Graphics2D g) {
        double middle = topPx + 0.5 * ROW * size;
        double baseline = 0.5 * Lettering.capitalPx(letters.plain());
        for (List<Entry> row : rows) {
            double x = leftPx;
            for (Entry entry : row) {
                entry.sample().draw(g, x + 0.5 * SAMPLE * size, middle, size);
                g.setColor(Palette.INK);
                Lettering.write(g, letters.plain(), entry.meaning(), x + (SAMPLE + SPACE) * size, middle + baseline, 0);
                x += widthPx(letters, entry);
            }
            middle += ROW * size;
        }
    }

    private static double widthPx(Lettering letters, Entry entry) {
        double size = letters.plain().getSize2D();
        return Lettering.widthPx(letters.plain(), entry.meaning()) + (SAMPLE + SPACE + BETWEEN) * size;
    }

    private static List<Entry> signs(PictureModel model) {
        BoatPicture.Scene scene = model.scene();
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry(
                (g, x, y, size) -> {
                    line(g, Palette.WATER_LINE, PicturePanel.waterLine(size / 8), x, y + 0.25 * size, size);
                    PictureMarks.level(g, x, y + 0.25 * size, 0.42 * size);
                },
                "water level"));
        if (scene.paintedLine().isPresent()) {
            entries.add(new Entry(
                    (g, x, y, size) -> {
                        float width = (float) (0.22 * size);
                        float[] dashes = {0.8f * (float) size, 0.48f * (float) size};
                        BasicStroke dashed =
                                new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0);
                        line(g, Palette.PAINT, dashed, x, y, size);
                    },
                    "painted line"));
        }
        if (scene.centreOfBuoyancyMm().isPresent()) {
            entries.add(mark(PictureMarks.Mark.BUOYANCY));
        }
        if (scene.centreOfGravityMm().isPresent()) {
            entries.add(mark(PictureMarks.Mark.GRAVITY));
        }
        if (scene.metacentreMm().isPresent()) {
            entries.add(mark(PictureMarks.Mark.METACENTRE));
        }
        if (!scene.misfitsMm().isEmpty()) {
            entries.add(new Entry(
                    (g, x, y, size) -> PictureMarks.misfit(g, x + 0.5 * size, y, 0.55 * size), "does not fit"));
        }
        return entries;
    }

    private static Entry mark(PictureMarks.Mark mark) {
        return new Entry(
                (g, x, y, size) -> mark.draw(g, x + 0.5 * size, y, 0.5 * size), mark.letter() + "  " + mark.meaning());
    }

    private static List<Entry> tints(PictureModel model) {
        List<Entry> entries = new ArrayList<>();
        for (Kind kind : model.kinds()) {
            entries.add(tint(Palette.tint(kind), kind.word()));
            if (kind == Kind.TANK && model.hasTankWater()) {
                entries.add(tint(Palette.TANK_WATER, "water in the tank"));
            }
        }
        return entries;
    }

    private static Entry tint(int argb, String meaning) {
        return new Entry(
                (g, x, y, size) -> {
                    Rectangle2D box =
                            new Rectangle2D.Double(x - 0.5 * SAMPLE * size, y - 0.5 * size, SAMPLE * size, size);
                    g.setColor(Color.WHITE);
                    g.fill(box);
                    g.setColor(new Color(argb, true));
                    g.fill(box);
                    g.setColor(Palette.INK);
                    g.setStroke(new BasicStroke((float) (0.07 * size)));
                    g.draw(box);
                },
                meaning);
    }

    private static void line(Graphics2D g, Color colour, BasicStroke stroke, double x, double y, double size) {
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(new Line2D.Double(x - 0.5 * SAMPLE * size, y, x + 0.5 * SAMPLE * size, y));
    }
}
