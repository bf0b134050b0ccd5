package trimwright.report.picture;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;
import trimwright.report.picture.PictureModel.Reach;
import trimwright.report.raster.View;

/**
 * Where everything stands in the picture: heading on top, the view from starboard with the key under it, the view from ahead to
 * the right, as large as it can be.
 *
 * @param unitPx what one pixel of a picture 1200 px wide is here
 */
record PictureLayout(
        int heightPx, double unitPx, Lettering letters, Heading heading, Panel side, Panel front, PictureKey key) {

    /** Widths in a picture of this width; everything grows in proportion. */
    private static final double DESIGN_WIDTH = 1200;

    private static final double MARGIN = 22;
    private static final double GAP = 14;
    private static final double LETTERS = 13.5;
    private static final double SIDE_SHARE = 0.70;
    private static final double LEAST_FRONT_HEIGHT = 330;
    private static final double GREATEST_SIDE_HEIGHT = 620;

    /** Room inside a panel beside the boat: for the ruler, the panel's title, the scale bar. */
    private static final double INSET_LEFT = 58;

    private static final double INSET_RIGHT = 26;
    private static final double INSET_TOP = 44;
    private static final double INSET_BOTTOM = 52;

    /** A metacentre further than this share of the boat's height above or below her is told, not drawn. */
    private static final double FURTHEST_METACENTRE = 0.6;

    /** Where the viewer stands. */
    enum Side {
        STARBOARD,
        AHEAD
    }

    /**
     * One of the two views.
     *
     * @param side where the viewer stands
     * @param box where it stands in the picture
     * @param view from mm to pixels of the panel
     * @param surfacePx y of the water surface in the panel
     * @param right what points to the right in it, unit vector in the boat's frame
     */
    record Panel(Side side, Rectangle box, View view, double surfacePx, Vector3D right) {}

    /** Title and caption. */
    record Heading(String title, List<String> caption, Lettering letters, double leftPx, double topPx) {

        private static final double TITLE_FACTOR = 1.5;
        private static final double LEADING = 1.35;

        double heightPx() {
            double size = letters.plain().getSize2D();
            return size * (TITLE_FACTOR * LEADING + caption.size() * LEADING * 1.1);
        }

        void draw(Graphics2D g) {
            double size = letters.plain().getSize2D();
            double y = topPx + size * TITLE_FACTOR;
            g.setColor(Palette.INK);
            Lettering.write(g, letters.times(TITLE_FACTOR).bold(), title, leftPx, y, 0);
            for (String line : caption) {
                y += size * LEADING * 1.1;
                Lettering.write(g, letters.times(1.1).plain(), line, leftPx, y, 0);
            }
        }
    }

    static PictureLayout of(PictureModel model, int widthPx) {
        double unit = widthPx / DESIGN_WIDTH;
        Lettering letters = Lettering.of(LETTERS * unit);
        double inner = widthPx - 2 * MARGIN * unit;
        int left = (int) Math.round(MARGIN * unit);
        String caption = model.scene().caption();
        Heading heading = new Heading(
                model.scene().title(),
                caption.isBlank()
                        ? List.of()
                        : Lettering.lines(letters.times(1.1).plain(), caption, inner),
                letters,
                left,
                left * 0.8);
        int top = (int) Math.round(left * 0.8 + heading.heightPx() + GAP * unit);
        int gap = (int) Math.round(GAP * unit);
        int sideWidth = (int) Math.round(inner * SIDE_SHARE);
        int frontWidth = (int) Math.round(inner) - sideWidth - gap;

        Reach up = height(model);
        double across = INSET_LEFT + INSET_RIGHT;
        double down = INSET_TOP + INSET_BOTTOM;
        double sideScale = Math.min(
                (sideWidth - across * unit) / model.ahead().size(), (GREATEST_SIDE_HEIGHT - down) * unit / up.size());
        PictureKey key = PictureKey.of(model, letters, sideWidth);
        int sideHeight = (int) Math.ceil(sideScale * up.size() + down * unit);
        int frontHeight = (int) Math.max(sideHeight + gap + key.heightPx(), LEAST_FRONT_HEIGHT * unit);
        sideHeight = frontHeight - gap - (int) Math.ceil(key.heightPx());
        double frontScale =
                Math.min((frontWidth - across * unit) / model.port().size(), (frontHeight - down * unit) / up.size());

        Rectangle sideBox = new Rectangle(left, top, sideWidth, sideHeight);
        Rectangle frontBox = new Rectangle(left + sideWidth + gap, top, frontWidth, frontHeight);
        return new PictureLayout(
                top + frontHeight + left,
                unit,
                letters,
                heading,
                panel(Side.STARBOARD, sideBox, unit, sideScale, model, up),
                panel(Side.AHEAD, frontBox, unit, frontScale, model, up),
                key.at(left, top + sideHeight + gap));
    }

    /** How far the views reach up and down from the water surface: the boat, the surface, and B, G and M. */
    private static Reach height(PictureModel model) {
        BoatPicture.Scene scene = model.scene();
        Reach boat = model.up().with(0);
        Reach up = boat;
        for (Optional<Vector3D> point : List.of(scene.centreOfBuoyancyMm(), scene.centreOfGravityMm())) {
            up = point.isPresent() ? up.with(above(scene.water(), point.get())) : up;
        }
        if (scene.metacentreMm().isPresent()) {
            double m = above(scene.water(), scene.metacentreMm().get());
            double most = FURTHEST_METACENTRE * boat.size();
            up = m < boat.greatest() + most && m > boat.least() - most ? up.with(m) : up;
        }
        return up;
    }

    private static double above(WaterPlane water, Vector3D point) {
        return water.up().dotProduct(point) - water.heightMm();
    }

    private static Panel panel(Side side, Rectangle box, double unit, double scale, PictureModel model, Reach up) {
        WaterPlane water = model.scene().water();
        Vector3D right = side == Side.STARBOARD ? water.ahead() : water.port();
        double x = 0.5 * ((INSET_LEFT - INSET_RIGHT) * unit + box.width);
        double y = 0.5 * ((INSET_TOP - INSET_BOTTOM) * unit + box.height);
        Vector3D middle = new Vector3D(
                model.ahead().middle(),
                water.ahead(),
                model.port().middle(),
                water.port(),
                water.heightMm() + up.middle(),
                water.up());
        View view = View.of(middle, right, water.up(), scale, x, y);
        return new Panel(side, box, view, y + up.middle() * scale, right);
    }
}
