package trimwright.report.picture;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;
import trimwright.report.Measure;
import trimwright.report.picture.PictureModel.Reach;
import trimwright.report.raster.View;

/**
 * Where everything stands in the picture: heading on top, the view from starboard with that from above and the key under it, the
 * view from ahead to the right, as large as it can be.
 *
 * @param unitPx what one pixel of a picture as wide as it was designed is here
 */
record PictureLayout(
        int heightPx,
        double unitPx,
        Measure measure,
        Lettering letters,
        Heading heading,
        Panel side,
        Optional<Panel> plan,
        Panel front,
        Optional<PictureKey> key) {

    private static final double MARGIN = 22;
    private static final double GAP = 14;
    private static final double LETTERS = 13.5;
    private static final double SIDE_SHARE = 0.70;
    private static final double LEAST_FRONT_HEIGHT = 330;
    private static final double LEAST_FRONT_HEIGHT_BESIDE_PLAN = 220;

    /** Room inside a panel beside the boat: for the ruler, the panel's title, the scale bar. */
    private static final double INSET_LEFT = 58;

    private static final double INSET_RIGHT = 26;
    private static final double INSET_TOP = 44;
    private static final double INSET_BOTTOM = 52;
    /** The same where room is scarce, since there is a view from above as well. */
    private static final double LESS = 9;

    /** A metacentre further than this share of the boat's height above or below her is told, not drawn. */
    private static final double FURTHEST_METACENTRE = 0.6;

    /** Room above and below the boat in the view from above, which has neither ruler nor scale bar: it has the scale of the view over it. */
    private static final double PLAN_INSET_TOP = 32;

    private static final double PLAN_INSET_BOTTOM = 14;

    /** Where the viewer stands. */
    enum Side {
        STARBOARD("From starboard"),
        ABOVE("From above"),
        AHEAD("From ahead");

        private final String words;

        Side(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * One of the two views.
     *
     * @param side where the viewer stands
     * @param box where it stands in the picture
     * @param view from mm to pixels of the panel
     * @param surfacePx y of the water surface in the panel; without meaning from above
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

    List<Panel> panels() {
        return Stream.of(Optional.of(side), plan, Optional.of(front))
                .flatMap(Optional::stream)
                .toList();
    }

    static PictureLayout of(PictureModel model, int widthPx) {
        return of(model, widthPx, BoatPicture.Style.SCREEN);
    }

    static PictureLayout of(PictureModel model, int widthPx, BoatPicture.Style style) {
        double unit = widthPx / (double) style.designWidth();
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
        double insetTop = style.plan() ? INSET_TOP - LESS : INSET_TOP;
        double insetBottom = style.plan() ? INSET_BOTTOM - LESS : INSET_BOTTOM;
        double down = insetTop + insetBottom;
        double planDown = style.plan() ? PLAN_INSET_TOP + PLAN_INSET_BOTTOM : 0;
        double high = up.size() + (style.plan() ? model.port().size() : 0);
        double sideScale = Math.min(
                (sideWidth - across * unit) / model.ahead().size(),
                (style.greatestHeight() - down - planDown) * unit / high);
        // Under a view from above there is room for the key over the whole width.
        Optional<PictureKey> key = style.key()
                ? Optional.of(PictureKey.of(model, letters, style.plan() ? inner : sideWidth))
                : Optional.empty();
        int keyHeight = key.map(k -> (int) Math.ceil(k.heightPx())).orElse(0);
        int besideKey = style.plan() ? 0 : key.map(k -> gap).orElse(0) + keyHeight;
        int planHeight = style.plan() ? (int) Math.ceil(sideScale * model.port().size() + planDown * unit) : 0;
        int planGap = style.plan() ? gap : 0;
        int sideHeight = (int) Math.ceil(sideScale * up.size() + down * unit);
        int frontHeight = (int) Math.max(
                sideHeight + planGap + planHeight + besideKey,
                (style.plan() ? LEAST_FRONT_HEIGHT_BESIDE_PLAN : LEAST_FRONT_HEIGHT) * unit);
        sideHeight = frontHeight - planGap - planHeight - besideKey;
        double frontScale =
                Math.min((frontWidth - across * unit) / model.port().size(), (frontHeight - down * unit) / up.size());

        Rectangle sideBox = new Rectangle(left, top, sideWidth, sideHeight);
        Rectangle planBox = new Rectangle(left, top + sideHeight + planGap, sideWidth, planHeight);
        Rectangle frontBox = new Rectangle(left + sideWidth + gap, top, frontWidth, frontHeight);
        int keyTop = style.plan() ? top + frontHeight + gap / 2 : top + sideHeight + gap;
        int foot = style.plan() && key.isPresent() ? keyTop + keyHeight : top + frontHeight;
        return new PictureLayout(
                foot + (key.isPresent() ? left : (int) unit),
                unit,
                style.measure(),
                letters,
                heading,
                panel(Side.STARBOARD, sideBox, unit, sideScale, model, up, insetTop - insetBottom),
                style.plan() ? Optional.of(plan(planBox, unit, sideScale, model)) : Optional.empty(),
                panel(Side.AHEAD, frontBox, unit, frontScale, model, up, insetTop - insetBottom),
                key.map(k -> k.at(left, keyTop)));
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

    private static Panel panel(
            Side side, Rectangle box, double unit, double scale, PictureModel model, Reach up, double moreOnTop) {
        WaterPlane water = model.scene().water();
        Vector3D right = side == Side.STARBOARD ? water.ahead() : water.port();
        double x = 0.5 * ((INSET_LEFT - INSET_RIGHT) * unit + box.width);
        double y = 0.5 * (moreOnTop * unit + box.height);
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

    /** From above, at the same scale and over the same stations as the view from starboard. */
    private static Panel plan(Rectangle box, double unit, double scale, PictureModel model) {
        WaterPlane water = model.scene().water();
        double x = 0.5 * ((INSET_LEFT - INSET_RIGHT) * unit + box.width);
        double y = 0.5 * ((PLAN_INSET_TOP - PLAN_INSET_BOTTOM) * unit + box.height);
        Vector3D middle = new Vector3D(
                model.ahead().middle(),
                water.ahead(),
                model.port().middle(),
                water.port(),
                water.heightMm(),
                water.up());
        return new Panel(Side.ABOVE, box, View.of(middle, water.ahead(), water.port(), scale, x, y), 0, water.ahead());
    }
}
