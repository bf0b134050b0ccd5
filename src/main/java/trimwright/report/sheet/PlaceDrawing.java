package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;

/**
 * Where pieces sit in a boat: her outline from starboard and from above, pieces as numbered boxes, with a scale from the stern in mm. Lead is filled dark, foam is hatched, so
 * that it reads in black and white.
 */
final class PlaceDrawing {

    private static final double WIDTH = 1000;
    private static final double MARGIN = 40;
    /** Greatest height of both views together. */
    private static final double MOST = 700;

    private static final int STATIONS = 160;

    private final List<Part> pieces;
    private final double stern;
    private final double scale;
    private final double height;
    private final double sideZero;
    private final double planZero;
    private final double[] top = new double[STATIONS + 1];
    private final double[] bottom = new double[STATIONS + 1];
    private final double[] starboard = new double[STATIONS + 1];
    private final double[] port = new double[STATIONS + 1];
    private final Bounds whole;
    private final StringBuilder out = new StringBuilder();

    PlaceDrawing(Boat boat, List<Part> pieces, double sternXMm) {
        this.pieces = pieces;
        stern = sternXMm;
        List<Shape> outer = new ArrayList<>();
        boolean hull = boat.parts().stream().anyMatch(Part::isHull);
        for (Part part : boat.parts()) {
            if (part.shape().isPresent()
                    && (part.isHull() || !hull && part.inside().isEmpty())) {
                outer.add(part.shape().get());
                if (part.mirror()) {
                    outer.add(part.shape().get().mirrored());
                }
            }
        }
        whole = around(outer);
        scale = Math.min((WIDTH - 2 * MARGIN) / whole.sizeX(), MOST / (whole.sizeZ() + whole.sizeY()));
        height = 3 * MARGIN + scale * (whole.sizeZ() + whole.sizeY());
        sideZero = 0.7 * MARGIN + scale * whole.sizeZ();
        planZero = height - 0.3 * MARGIN - scale * whole.sizeY() / 2;
        Arrays.fill(top, Double.NaN);
        outer.forEach(this::trace);
    }

    private static Bounds around(List<Shape> shapes) {
        double[] corners = shapes.stream()
                .flatMapToDouble(s -> {
                    Bounds b = s.bounds();
                    return DoubleStream.of(b.minX(), b.minY(), b.minZ(), b.maxX(), b.maxY(), b.maxZ());
                })
                .toArray();
        return Bounds.of(corners);
    }

    /** Widens the outline by the points of a mesh, or the box of another shape, station by station. */
    private void trace(Shape shape) {
        if (shape instanceof MeshShape mesh) {
            double[] p = mesh.mesh().xyz();
            int[] corners = mesh.mesh().corners();
            for (int t = 0; t < corners.length; t += 3) {
                span(p, 3 * corners[t], 3 * corners[t + 1]);
                span(p, 3 * corners[t + 1], 3 * corners[t + 2]);
                span(p, 3 * corners[t + 2], 3 * corners[t]);
            }
            return;
        }
        Bounds b = shape.bounds();
        for (int i = station(b.minX()); i <= station(b.maxX()); i++) {
            widen(i, b.minY(), b.minZ());
            widen(i, b.maxY(), b.maxZ());
        }
    }

    /** The stations that an edge runs over. */
    private void span(double[] p, int a, int b) {
        int from = Math.min(station(p[a]), station(p[b]));
        int to = Math.max(station(p[a]), station(p[b]));
        for (int i = from; i <= to; i++) {
            double x = whole.minX() + i * whole.sizeX() / STATIONS;
            double share = p[a] == p[b] ? 0 : (x - p[a]) / (p[b] - p[a]);
            double within = Math.min(1, Math.max(0, share));
            widen(i, p[a + 1] + within * (p[b + 1] - p[a + 1]), p[a + 2] + within * (p[b + 2] - p[a + 2]));
        }
    }

    private int station(double x) {
        return (int) Math.round((x - whole.minX()) / whole.sizeX() * STATIONS);
    }

    private void widen(int i, double y, double z) {
        boolean first = Double.isNaN(top[i]);
        top[i] = first ? z : Math.max(top[i], z);
        bottom[i] = first ? z : Math.min(bottom[i], z);
        port[i] = first ? y : Math.max(port[i], y);
        starboard[i] = first ? y : Math.min(starboard[i], y);
    }

    /** Width over height. */
    double aspect() {
        return WIDTH / height;
    }

    String svg() {
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\" viewBox=\"0 0 %.0f %.0f\""
                        + " font-family=\"Helvetica, Arial, sans-serif\" font-size=\"13\">",
                WIDTH,
                height,
                WIDTH,
                height));
        out.append("<defs><pattern id=\"hatch\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\">"
                + "<path d=\"M0,6 L6,0\" stroke=\"#1f4e79\" stroke-width=\"1\"/></pattern></defs>");
        outline(top, bottom, this::sideY);
        outline(port, starboard, this::planY);
        label(MARGIN, 16, "from starboard, bow to the right; mm from the stern");
        label(MARGIN, planZero - scale * whole.sizeY() / 2 - 8, "from above, port side up");
        ruler();
        for (int i = 0; i < pieces.size(); i++) {
            piece(i + 1, pieces.get(i));
        }
        out.append("</svg>");
        return out.toString();
    }

    private double x(double mm) {
        return MARGIN + scale * (mm - whole.minX());
    }

    private double sideY(double zMm) {
        return sideZero - scale * (zMm - whole.minZ());
    }

    private double planY(double yMm) {
        return planZero - scale * (yMm - (whole.minY() + whole.maxY()) / 2);
    }

    private void outline(double[] high, double[] low, DoubleUnaryOperator y) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i <= STATIONS; i++) {
            point(path, i, high, y);
        }
        for (int i = STATIONS; i >= 0; i--) {
            point(path, i, low, y);
        }
        out.append("<path d=\"").append(path).append("Z\" fill=\"#f3f5f8\" stroke=\"#1b2430\" stroke-width=\"1.2\"/>");
    }

    private void point(StringBuilder path, int i, double[] of, DoubleUnaryOperator y) {
        if (!Double.isNaN(top[i])) {
            double x = whole.minX() + i * whole.sizeX() / STATIONS;
            path.append(String.format(
                    Locale.ROOT, "%s%.1f,%.1f ", path.isEmpty() ? "M" : "L", x(x), y.applyAsDouble(of[i])));
        }
    }

    private void ruler() {
        double step = 100;
        while (scale * step < 50) {
            step *= 2;
        }
        double y = sideZero + 6;
        for (double mm = 0; mm <= whole.maxX() - stern; mm += step) {
            out.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M%.1f,%.1f v6\" stroke=\"#1b2430\"/><text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-size=\"11\">%.0f</text>",
                    x(stern + mm),
                    y,
                    x(stern + mm),
                    y + 17,
                    mm));
        }
    }

    private void piece(int number, Part piece) {
        Bounds b = piece.shape().orElseThrow().bounds();
        String fill = piece.kind() == Kind.FOAM ? "url(#hatch)" : "#3b4654";
        String ink = piece.kind() == Kind.FOAM ? "#1b2430" : "#ffffff";
        box(number, b.minX(), b.maxX(), sideY(b.maxZ()), sideY(b.minZ()), fill, ink);
        box(number, b.minX(), b.maxX(), planY(b.maxY()), planY(b.minY()), fill, ink);
    }

    private void box(int number, double fromX, double toX, double topY, double bottomY, String fill, String ink) {
        out.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\" stroke=\"#1b2430\"/>",
                x(fromX),
                topY,
                scale * (toX - fromX),
                bottomY - topY,
                fill));
        boolean fits = bottomY - topY > 12;
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-weight=\"bold\" fill=\"%s\">%d</text>",
                0.5 * (x(fromX) + x(toX)),
                fits ? 0.5 * (topY + bottomY) + 4.5 : topY - 3,
                fits ? ink : "#1b2430",
                number));
    }

    private void label(double x, double y, String words) {
        out.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\">", x, y))
                .append(Xml.text(words))
                .append("</text>");
    }
}
