package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.mesh.Bounds;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.PlanWords;

/**
 * Where pieces sit in a boat: her outline from starboard and from above, pieces as numbered boxes, their ends as distances from the stern, the keel and
 * the centreline. Lead is filled dark, foam is hatched, so that it reads in black and white.
 */
final class PlaceDrawing {

    private static final double WIDTH = 1000;
    private static final double LEFT = 56;
    private static final double GAP = 34;
    private static final double ROW = 19;
    private static final double COLUMN = 52;
    /** More pieces than that have their heights and breadths in the table alone, for want of room beside the boat. */
    private static final int MOST_COLUMNS = 6;
    /** Greatest height of both views together. */
    private static final double MOST = 460;

    private static final String INK = "#1b2430";

    private final Measure measure;
    private final HullOutline outline;
    private final Bounds hull;
    private final List<Piece> pieces = new ArrayList<>();
    private final boolean columns;
    private final double scale;
    private final double height;
    private final double sideZero;
    private final double laddersTop;
    private final double planTop;
    private final double planZero;
    private final List<double[]> badges = new ArrayList<>();
    private final StringBuilder out = new StringBuilder();

    /** A piece, or a pair of mirrored ones, which share x and z. */
    private record Piece(String numbers, Kind kind, List<Bounds> boxes) {

        Bounds first() {
            return boxes.get(0);
        }
    }

    /**
     * @param boat the boat with her hull
     * @param placed boxes, numbered from 1 in this order
     */
    PlaceDrawing(Boat boat, List<Part> placed, Measure measure) {
        this.measure = measure;
        outline = new HullOutline(boat);
        hull = PlanWords.hull(boat);
        group(placed);
        columns = pieces.size() <= MOST_COLUMNS;
        Bounds whole = outline.bounds();
        double right = columns ? COLUMN * pieces.size() + 16 : 24;
        scale = Math.min((WIDTH - LEFT - right) / whole.sizeX(), MOST / (whole.sizeZ() + whole.sizeY()));
        sideZero = GAP + scale * whole.sizeZ();
        laddersTop = sideZero + GAP;
        planTop = laddersTop + ROW * pieces.size() + GAP;
        planZero = planTop + scale * whole.maxY();
        height = planTop + scale * whole.sizeY() + GAP;
    }

    private void group(List<Part> placed) {
        boolean[] done = new boolean[placed.size()];
        for (int i = 0; i < placed.size(); i++) {
            if (done[i]) {
                continue;
            }
            Bounds box = bounds(placed.get(i));
            String numbers = String.valueOf(i + 1);
            List<Bounds> boxes = new ArrayList<>(List.of(box));
            for (int k = i + 1; k < placed.size(); k++) {
                if (!done[k] && placed.get(k).kind() == placed.get(i).kind() && areTwins(box, bounds(placed.get(k)))) {
                    done[k] = true;
                    numbers += ", " + (k + 1);
                    boxes.add(bounds(placed.get(k)));
                    break;
                }
            }
            pieces.add(new Piece(numbers, placed.get(i).kind(), boxes));
        }
    }

    private static Bounds bounds(Part part) {
        return part.shape().orElseThrow().bounds();
    }

    private static boolean areTwins(Bounds a, Bounds b) {
        double same = 0.05;
        return Math.abs(a.minX() - b.minX()) < same
                && Math.abs(a.maxX() - b.maxX()) < same
                && Math.abs(a.minZ() - b.minZ()) < same
                && Math.abs(a.maxZ() - b.maxZ()) < same
                && Math.abs(a.minY() + b.maxY()) < same
                && Math.abs(a.maxY() + b.minY()) < same;
    }

    /** Width over height. */
    double aspect() {
        return WIDTH / height;
    }

    String svg() {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\" viewBox=\"0 0 %.0f %.0f\""
                        + " font-family=\"Helvetica, Arial, sans-serif\" font-size=\"13.5\">",
                WIDTH, height, WIDTH, height);
        add("<defs><pattern id=\"hatch\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\">"
                + "<path d=\"M0,6 L6,0\" stroke=\"#1f4e79\" stroke-width=\"1\"/></pattern></defs>");
        contour(outline::topMm, outline::bottomMm, this::sideY);
        contour(outline::portMm, outline::starboardMm, this::planY);
        String unit = measure.lengthWord();
        text(LEFT, 15, "start", "From starboard; " + unit + " from the stern and above the keel");
        text(
                LEFT,
                planTop - 10,
                "start",
                "From above, port side up" + (columns ? "; " + unit + " to port (– to starboard)" : ""));
        line(
                "centre",
                x(hull.minX()) - 8,
                planY(0),
                x(hull.maxX()) + 8,
                planY(0),
                "stroke-dasharray=\"10,4,2,4\" stroke-width=\"0.8\"");
        rulers();
        pieces.forEach(p -> p.boxes().forEach(box -> boxes(p.kind(), box)));
        pieces.forEach(this::badges);
        for (int i = 0; i < pieces.size(); i++) {
            alongLadder(i, pieces.get(i));
            if (columns) {
                upAndAcross(i, pieces.get(i));
            }
        }
        add("</svg>");
        return out.toString();
    }

    private double x(double mm) {
        return LEFT + scale * (mm - outline.bounds().minX());
    }

    private double sideY(double zMm) {
        return sideZero - scale * (zMm - outline.bounds().minZ());
    }

    private double planY(double yMm) {
        return planZero - scale * yMm;
    }

    private void contour(IntToDoubleFunction high, IntToDoubleFunction low, DoubleUnaryOperator y) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i <= HullOutline.STATIONS; i++) {
            point(path, i, high, y);
        }
        for (int i = HullOutline.STATIONS; i >= 0; i--) {
            point(path, i, low, y);
        }
        out.append("<path class=\"hull\" d=\"")
                .append(path)
                .append("Z\" fill=\"#f3f5f8\" stroke=\"" + INK + "\" stroke-width=\"1.2\"/>");
    }

    private void point(StringBuilder path, int i, IntToDoubleFunction of, DoubleUnaryOperator y) {
        if (outline.isThere(i)) {
            path.append(path.isEmpty() ? 'M' : 'L')
                    .append(Numbers.fixed(x(outline.xMm(i)), 1))
                    .append(',')
                    .append(Numbers.fixed(y.applyAsDouble(of.applyAsDouble(i)), 1))
                    .append(' ');
        }
    }

    /** Distances from the stern under the boat, heights above the keel beside her. */
    private void rulers() {
        double alongMm = stepMm(50);
        double y = sideZero + 5;
        for (int i = 0; i * alongMm <= hull.sizeX() + 1e-9; i++) {
            double at = x(hull.minX() + i * alongMm);
            line("along", at, y, at, y + 5, "");
            text(at, y + 18, "middle", tick(i * alongMm));
        }
        double upMm = stepMm(20);
        for (int i = 0; i * upMm <= hull.sizeZ() + 1e-9; i++) {
            double at = sideY(hull.minZ() + i * upMm);
            line("up", LEFT - 14, at, LEFT - 8, at, "");
            text(LEFT - 17, at + 4.5, "end", tick(i * upMm));
        }
    }

    /** The least round step of the sheet's unit that takes so many px. */
    private double stepMm(double leastPx) {
        double unit = measure.typedMm(1);
        double power = Math.pow(10, Math.floor(Math.log10(leastPx / scale / unit)));
        for (double digit : new double[] {1, 2, 5}) {
            if (scale * digit * power * unit >= leastPx) {
                return digit * power * unit;
            }
        }
        return 10 * power * unit;
    }

    private String tick(double mm) {
        return Numbers.plain(measure.inLengthUnit(mm));
    }

    private void boxes(Kind kind, Bounds b) {
        box(kind, "side", x(b.minX()), sideY(b.maxZ()), scale * b.sizeX(), scale * b.sizeZ());
        box(kind, "plan", x(b.minX()), planY(b.maxY()), scale * b.sizeX(), scale * b.sizeY());
    }

    private void box(Kind kind, String view, double left, double top, double wide, double high) {
        add(
                "<rect class=\"%s %s\" x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"%s\" stroke=\"%s\"/>",
                kind == Kind.FOAM ? "foam" : "lead",
                view,
                left,
                top,
                wide,
                high,
                kind == Kind.FOAM ? "url(#hatch)" : "#3b4654",
                INK);
    }

    private void badges(Piece p) {
        Bounds b = p.first();
        badge(p.numbers(), 0.5 * (x(b.minX()) + x(b.maxX())), 0.5 * (sideY(b.minZ()) + sideY(b.maxZ())));
        String[] numbers = p.numbers().split(", ", -1);
        for (int i = 0; i < numbers.length; i++) {
            Bounds box = p.boxes().get(i);
            badge(numbers[i], 0.5 * (x(box.minX()) + x(box.maxX())), 0.5 * (planY(box.minY()) + planY(box.maxY())));
        }
    }

    /** A number on white, moved along where another one stands. */
    private void badge(String words, double x, double y) {
        double half = 6 + 3.6 * words.length();
        double at = x;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (double[] other : badges) {
                if (Math.abs(other[0] - at) < half + other[2] && Math.abs(other[1] - y) < 17) {
                    at = other[0] + half + other[2] + 1;
                    moved = true;
                }
            }
        }
        badges.add(new double[] {at, y, half});
        add(
                "<rect class=\"badge\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"16\" rx=\"8\" fill=\"#ffffff\" stroke=\"%s\" stroke-width=\"0.8\"/>",
                at - half, y - 8, 2 * half, INK);
        text(at, y + 4.7, "middle", words);
    }

    /** Under the boat: from the stern to the after and to the fore end. */
    private void alongLadder(int row, Piece p) {
        Bounds b = p.first();
        double y = laddersTop + ROW * (row + 0.5);
        text(LEFT - 30, y + 4.7, "middle", p.numbers());
        line("ladder", x(hull.minX()), y, x(b.minX()), y, "stroke-width=\"0.6\"");
        line("ladder", x(hull.minX()), y - 4, x(hull.minX()), y + 4, "stroke-width=\"0.6\"");
        line("bar", x(b.minX()), y, x(b.maxX()), y, "stroke-width=\"4\"");
        String from = measure.lengthNumber(b.minX() - hull.minX(), 1);
        boolean room = x(b.minX()) - x(hull.minX()) > 8.0 * from.length() + 6;
        String to = measure.lengthNumber(b.maxX() - hull.minX(), 1);
        if (room) {
            text(x(b.minX()) - 5, y - 2, "end", from);
            text(x(b.maxX()) + 5, y + 4.7, "start", to);
        } else {
            text(x(b.maxX()) + 5, y + 4.7, "start", from + " to " + to);
        }
    }

    /** Beside the boat: underside and top above the keel, and the edges off the centreline. */
    private void upAndAcross(int column, Piece p) {
        double at = x(outline.bounds().maxX()) + 16 + COLUMN * (column + 0.5);
        Bounds b = p.first();
        text(at, 15, "middle", p.numbers());
        bar(at, sideY(b.minZ()), sideY(b.maxZ()), b.minZ() - hull.minZ(), b.maxZ() - hull.minZ());
        text(at, planTop - 10, "middle", p.numbers());
        for (Bounds box : p.boxes()) {
            bar(at, planY(box.minY()), planY(box.maxY()), box.minY(), box.maxY());
        }
    }

    private void bar(double at, double lowY, double highY, double lowMm, double highMm) {
        line("bar", at, lowY, at, highY, "stroke-width=\"4\"");
        text(at, highY - 4, "middle", measure.lengthNumber(highMm, 1));
        text(at, lowY + 13, "middle", measure.lengthNumber(lowMm, 1));
    }

    private void line(String name, double x0, double y0, double x1, double y1, String style) {
        add(
                "<path class=\"%s\" d=\"M%.2f,%.2f L%.2f,%.2f\" stroke=\"%s\" fill=\"none\" %s/>",
                name, x0, y0, x1, y1, INK, style);
    }

    private void text(double x, double y, String anchor, String words) {
        add("<text x=\"%.2f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>", x, y, anchor, INK, Xml.text(words));
    }

    private void add(String format, Object... values) {
        out.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    }
}
