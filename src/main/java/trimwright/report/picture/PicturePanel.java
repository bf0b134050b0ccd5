package trimwright.report.picture;

import com.jme3.math.Vector3f;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Kind;
import trimwright.immersion.WaterPlane;
import trimwright.report.picture.PictureLayout.Side;
import trimwright.report.picture.PictureMarks.Mark;
import trimwright.report.picture.PictureModel.Body;
import trimwright.report.raster.Canvas;
import trimwright.report.raster.Layer;
import trimwright.report.raster.View;

/** One view of the boat in the water: the boat from the rasteriser, and over it what is drawn with lines and letters. */
final class PicturePanel {

    /** Wider than the water line, so that it shows on both sides where she floats on her marks. */
    private static final double PAINT_WIDTH = 3;

    /** The water's edge seen from above, narrower than the paint for the same reason. */
    private static final double EDGE_WIDTH = 1.4;

    private static final double OUTLINE_WIDTH = 1;

    /** A change of depth that counts as an edge, as a share of the boat's height. */
    private static final double LEAP_SHARE = 0.03;

    /** How dense hull and cylinder become at a slant; from ahead all of a slender hull is seen at a slant. */
    private static final double GLASS = 0.75;

    private static final double GLASS_FROM_AHEAD = 0.2;

    private static final double MARK_RADIUS = 6.8;

    private static final double MISFIT_RADIUS = 9;

    /** Signs nearer than this many radii stand beside the boat, tied to their points. */
    private static final double CROWDED = 2.3;

    private static final double RULER = 44;
    private static final double RULER_TICK = 5;

    /** Below this sine between a side of the boat and the view's right, the view shows neither bow nor stern, port nor starboard. */
    private static final double ASIDE = 0.2;

    private final PictureModel model;
    private final PictureLayout layout;
    private final PictureLayout.Panel panel;
    private final View view;
    private final double unit;
    private final int width;
    private final int height;

    private record Spot(Mark mark, double x, double y) {}

    PicturePanel(PictureModel model, PictureLayout layout, PictureLayout.Panel panel) {
        this.model = model;
        this.layout = layout;
        this.panel = panel;
        this.view = panel.view();
        this.unit = layout.unitPx();
        this.width = panel.box().width;
        this.height = panel.box().height;
    }

    static BasicStroke waterLine(double widthPx) {
        return new BasicStroke((float) widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }

    void draw(Graphics2D whole) {
        Rectangle box = panel.box();
        Graphics2D g = (Graphics2D) whole.create(box.x, box.y, width, height);
        g.drawImage(boat().image(), new AffineTransform(), null);
        if (panel.side() != Side.ABOVE) {
            surface(g);
            ruler(g);
        }
        labels(g);
        for (Vector3D misfit : model.scene().misfitsMm()) {
            Vector3f p = view.project(misfit);
            PictureMarks.misfit(g, p.x, p.y, MISFIT_RADIUS * unit);
        }
        marks(g);
        g.setColor(Palette.FRAME);
        g.setStroke(new BasicStroke((float) unit));
        g.draw(new Rectangle2D.Double(unit / 2, unit / 2, width - unit, height - unit));
        g.dispose();
    }

    /** The boat and the water, without letters. */
    private Canvas boat() {
        boolean above = panel.side() == Side.ABOVE;
        Canvas canvas = new Canvas(width, height, above ? Palette.WATER_BEHIND : Palette.AIR);
        Map<Kind, Layer> layers = layers(canvas, panel.side() == Side.AHEAD ? GLASS_FROM_AHEAD : GLASS);
        for (Body body : model.bodies()) {
            Layer layer = layers.get(body.kind());
            float[] pixels = view.project(body.mesh());
            int tint = Palette.tint(body.kind());
            if (above && body.levelMm().isPresent()) {
                layer.surface(pixels, body.mesh().corners(), Palette.TANK_WATER);
            } else if (body.levelMm().isPresent()) {
                double level = panel.surfacePx() - body.levelMm().get() * view.pxPerMm();
                layer.surface(pixels, body.mesh().corners(), tint, 0, level);
                layer.surface(pixels, body.mesh().corners(), Palette.TANK_WATER, level, height);
            } else {
                layer.surface(pixels, body.mesh().corners(), tint);
            }
        }
        double leap = LEAP_SHARE * model.up().size() * view.pxPerMm();
        layers.values().stream()
                .distinct()
                .forEach(layer -> layer.outline(
                        OUTLINE_WIDTH * unit,
                        leap,
                        layer == layers.get(Kind.HULL) ? Palette.OUTLINE : Palette.FAINT_OUTLINE));
        WaterPlane water = model.scene().water();
        model.scene()
                .paintedLine()
                .map(line -> above
                        ? PaintedTrace.fromAbove(view, line.plane(), PAINT_WIDTH * unit, true)
                        : PaintedTrace.fromTheSide(view, line.plane(), panel.right(), water.up(), PAINT_WIDTH * unit))
                .ifPresent(trace -> trace(trace, layers, Palette.PAINT));
        if (above) {
            trace(PaintedTrace.fromAbove(view, water, EDGE_WIDTH * unit, false), layers, Palette.WATER_LINE);
        } else {
            canvas.water(panel.surfacePx(), Palette.WATER_BEHIND, Palette.WATER_IN_FRONT);
        }
        return canvas;
    }

    private void trace(PaintedTrace trace, Map<Kind, Layer> layers, Color colour) {
        for (Body body : model.painted()) {
            trace.draw(body.mesh(), layers.get(body.kind()), colour.getRGB());
        }
    }

    /** What stands in the hull and the cylinder shares one layer; what may hide it has layers of its own to be seen through. */
    private static Map<Kind, Layer> layers(Canvas canvas, double glass) {
        Map<Kind, Layer> layers = new EnumMap<>(Kind.class);
        Layer inside = canvas.layer(0);
        layers.put(Kind.TANK, inside);
        layers.put(Kind.BALLAST, inside);
        layers.put(Kind.FITTING, inside);
        Layer light = canvas.layer(glass);
        layers.put(Kind.FOAM, light);
        layers.put(Kind.AIR, light);
        layers.put(Kind.CYLINDER, canvas.layer(glass));
        layers.put(Kind.HULL, canvas.layer(glass));
        return layers;
    }

    private void surface(Graphics2D g) {
        double y = panel.surfacePx();
        g.setColor(Palette.WATER_LINE);
        g.setStroke(waterLine(1.5 * unit));
        g.draw(new Line2D.Double((RULER + RULER_TICK) * unit, y, width, y));
        PictureMarks.level(g, width - 15 * unit, y, 6 * unit);
    }

    /** Heights above and below the water surface along the left side. */
    private void ruler(Graphics2D g) {
        double perUnit = view.pxPerMm() * layout.measure().typedMm(1);
        double step = Steps.atLeast(24 * unit / perUnit);
        double top = 40 * unit;
        double bottom = height - 40 * unit;
        double x = RULER * unit;
        double letter = 0.5 * Lettering.capitalPx(layout.letters().plain());
        g.setStroke(new BasicStroke((float) unit));
        int first = (int) Math.ceil((panel.surfacePx() - bottom) / perUnit / step);
        int last = (int) Math.floor((panel.surfacePx() - top) / perUnit / step);
        for (int i = first; i <= last; i++) {
            double y = panel.surfacePx() - i * step * perUnit;
            g.setColor(Palette.QUIET_INK);
            g.draw(new Line2D.Double(x, y, x + RULER_TICK * unit, y));
            Lettering.write(
                    g, layout.letters().times(0.85).plain(), Steps.text(i * step, step), x - 4 * unit, y + letter, 1);
        }
        g.draw(new Line2D.Double(
                x + RULER_TICK * unit,
                panel.surfacePx() - first * step * perUnit,
                x + RULER_TICK * unit,
                panel.surfacePx() - last * step * perUnit));
    }

    private void labels(Graphics2D g) {
        Lettering small = layout.letters().times(0.9);
        String title = panel.side().words();
        g.setColor(Palette.INK);
        Lettering.write(g, layout.letters().bold(), title, 12 * unit, 21 * unit, 0);
        double titleEnd = 12 * unit + Lettering.widthPx(layout.letters().bold(), title);
        g.setColor(Palette.QUIET_INK);
        String note = note();
        if (titleEnd + 12 * unit + Lettering.widthPx(small.plain(), note) < width - 6 * unit) {
            Lettering.write(g, small.plain(), note, titleEnd + 12 * unit, 21 * unit, 0);
        }
        if (panel.side() == Side.ABOVE) {
            return;
        }
        double foot = height - 13 * unit;
        boolean side = panel.side() != Side.AHEAD;
        double toward = panel.right().dotProduct(side ? Vector3D.PLUS_I : Vector3D.PLUS_J);
        if (Math.abs(toward) > ASIDE) {
            String right = side ? "bow" : "port";
            String left = side ? "stern" : "starboard";
            Lettering.write(g, small.plain(), toward > 0 ? left : right, 12 * unit, foot, 0);
            Lettering.write(g, small.plain(), toward > 0 ? right : left, width - 12 * unit, foot, 1);
        }
        double perUnit = view.pxPerMm() * layout.measure().typedMm(1);
        double bar = Steps.atMost(0.3 * width / perUnit);
        double barPx = bar * perUnit;
        double x = 0.5 * (width - barPx);
        PictureMarks.scaleBar(g, x, foot - 6 * unit, barPx, 6 * unit);
        Lettering.write(
                g,
                small.plain(),
                Steps.text(bar, bar) + " " + layout.measure().lengthUnit(),
                0.5 * width,
                foot - 12 * unit,
                0.5);
    }

    /** What the view shows besides the boat. */
    private String note() {
        if (panel.side() != Side.ABOVE) {
            String unitName = layout.measure().lengthWord();
            return panel.side() == Side.STARBOARD
                    ? "heights in " + unitName + " from the water"
                    : "heights in " + unitName;
        }
        boolean portUp = model.scene().water().port().getY() > 0;
        return (portUp ? "port" : "starboard") + " side up; the thin line is the water's edge";
    }

    private void marks(Graphics2D g) {
        BoatPicture.Scene scene = model.scene();
        List<Spot> spots = new ArrayList<>();
        place(spots, Mark.BUOYANCY, scene.centreOfBuoyancyMm());
        place(spots, Mark.GRAVITY, scene.centreOfGravityMm());
        // From above M lies over B, whatever its height.
        scene.metacentreMm().filter(m -> panel.side() != Side.ABOVE).ifPresent(m -> {
            double y = view.project(m).y;
            if (y > 0 && y < height) {
                place(spots, Mark.METACENTRE, scene.metacentreMm());
            } else {
                outOfSight(g, m);
            }
        });
        double r = MARK_RADIUS * unit;
        if (crowded(spots, r)) {
            beside(g, spots, r);
        } else {
            for (Spot spot : spots) {
                spot.mark().draw(g, spot.x(), spot.y(), r);
                letter(g, spot.mark(), spot.x(), spot.y(), r);
            }
        }
    }

    private void place(List<Spot> spots, Mark mark, Optional<Vector3D> point) {
        if (point.isPresent()) {
            Vector3f p = view.project(point.get());
            spots.add(new Spot(mark, p.x, p.y));
        }
    }

    private static boolean crowded(List<Spot> spots, double r) {
        for (int i = 0; i < spots.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (Math.hypot(
                                spots.get(i).x() - spots.get(k).x(),
                                spots.get(i).y() - spots.get(k).y())
                        < CROWDED * r) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Signs in a column beside their points, each as near to the height of its point as the others leave room. */
    private void beside(Graphics2D g, List<Spot> spots, double r) {
        List<Spot> sorted = new ArrayList<>(spots);
        sorted.sort(Comparator.comparingDouble(Spot::y));
        double x = sorted.stream().mapToDouble(Spot::x).max().orElseThrow() + 5 * r;
        double[] y = spread(sorted.stream().mapToDouble(Spot::y).toArray(), 2.7 * r);
        g.setStroke(new BasicStroke((float) (0.16 * r)));
        for (int i = 0; i < y.length; i++) {
            g.setColor(Palette.INK);
            g.draw(new Line2D.Double(sorted.get(i).x(), sorted.get(i).y(), x, y[i]));
        }
        for (int i = 0; i < y.length; i++) {
            Spot spot = sorted.get(i);
            PictureMarks.dot(g, spot.x(), spot.y(), 0.34 * r);
            spot.mark().draw(g, x, y[i], r);
            letter(g, spot.mark(), x, y[i], r);
        }
    }

    /**
     * Moves sorted places apart until neighbours keep the spacing: those that are too near form a group, evenly spaced about the
     * middle of where they want to be.
     */
    private static double[] spread(double[] wanted, double spacing) {
        double[] placed = wanted.clone();
        int[] groupStart = new int[wanted.length];
        for (int i = 0; i < wanted.length; i++) {
            int start = i;
            while (start > 0 && placed[start] - placed[start - 1] < spacing) {
                start = groupStart[start - 1];
                double middle = 0;
                for (int k = start; k <= i; k++) {
                    middle += wanted[k] / (i - start + 1);
                }
                for (int k = start; k <= i; k++) {
                    placed[k] = middle + (k - 0.5 * (start + i)) * spacing;
                }
            }
            groupStart[i] = start;
        }
        return placed;
    }

    private void letter(Graphics2D g, Mark mark, double x, double y, double r) {
        g.setColor(Palette.INK);
        double down = 0.5 * Lettering.capitalPx(layout.letters().bold());
        Lettering.writeRimmed(g, layout.letters().bold(), mark.letter(), x + 1.6 * r, y + down, 0);
    }

    /** A metacentre far above or below the boat: an arrow at the edge, and how far. */
    private void outOfSight(Graphics2D g, Vector3D metacentre) {
        WaterPlane water = model.scene().water();
        double aboveMm = water.up().dotProduct(metacentre) - water.heightMm();
        double x = view.project(metacentre).x;
        boolean up = aboveMm > 0;
        double tip = up ? 30 * unit : height - 30 * unit;
        double back = up ? 10 * unit : -10 * unit;
        g.setColor(Palette.INK);
        g.setStroke(new BasicStroke((float) (1.6 * unit)));
        g.draw(new Line2D.Double(x, tip, x, tip + 2 * back));
        g.draw(new Line2D.Double(x, tip, x - 5 * unit, tip + back));
        g.draw(new Line2D.Double(x, tip, x + 5 * unit, tip + back));
        String text = "M " + layout.measure().lengthNumber(aboveMm, 0) + " "
                + layout.measure().lengthUnit();
        Lettering.writeRimmed(g, layout.letters().bold(), text, x + 10 * unit, tip + back + 4 * unit, 0);
    }
}
