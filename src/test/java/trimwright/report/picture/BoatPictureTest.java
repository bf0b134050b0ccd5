package trimwright.report.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.jme3.math.Vector3f;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/** What a picture shows, measured on its pixels. */
class BoatPictureTest {

    private static final int WIDTH = 1200;
    private static final Vector3D B = new Vector3D(200, 0, 15);
    private static final Vector3D G = new Vector3D(120, 20, 50);
    private static final Vector3D M = new Vector3D(280, -20, 75);

    private static Part part(String id, Kind kind, Shape shape, double massG, double fill) {
        return new Part(
                id,
                kind,
                Optional.of(shape),
                Optional.empty(),
                kind == Kind.TANK ? Optional.empty() : Optional.of(massG),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                fill);
    }

    private static Boat boat(Part... parts) {
        return new Boat("Box", Water.ofDensity(1), Optional.empty(), List.of(parts), List.of(), Targets.NONE);
    }

    /** 400 × 100 × 80 mm. */
    private static Part box() {
        return part("box", Kind.CYLINDER, new BoxShape(new Vector3D(0, -50, 0), new Vector3D(400, 50, 80)), 1200, 0);
    }

    private static BoatPicture.Scene plain(Boat boat, WaterPlane water) {
        return new BoatPicture.Scene(
                boat, water, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "Box", "");
    }

    private static BoatPicture.Scene full(String caption) {
        PaintedLine line = new PaintedLine(List.of(new Vector3D(0, 0, 60), new Vector3D(400, 0, 60)));
        return new BoatPicture.Scene(
                boat(box()),
                WaterPlane.level(30),
                Optional.of(line),
                Optional.of(B),
                Optional.of(G),
                Optional.of(M),
                "Box",
                caption);
    }

    private static PictureLayout layout(BoatPicture.Scene scene) {
        return PictureLayout.of(PictureModel.of(scene), WIDTH);
    }

    private static int rgb(BufferedImage image, int x, int y) {
        return image.getRGB(x, y) & 0xffffff;
    }

    private static boolean isPaint(int rgb) {
        return rgb == (Palette.PAINT.getRGB() & 0xffffff);
    }

    /** The first and last row of a column where the box is: neither air nor water. */
    private static int[] boxRows(BufferedImage image, Rectangle panel, int x) {
        int first = -1;
        int last = -1;
        // The title above and the scale bar below are left out.
        for (int y = panel.y + 30; y < panel.y + panel.height - 45; y++) {
            int rgb = rgb(image, x, y);
            boolean empty = rgb == Palette.AIR || rgb == Palette.WATER_BEHIND || isWaterLine(rgb);
            if (!empty) {
                first = first < 0 ? y : first;
                last = y;
            }
        }
        return new int[] {first, last + 1};
    }

    private static boolean isWaterLine(int rgb) {
        return ((rgb >> 16) & 0xff) < 0x80;
    }

    /** Box 80 mm high in 30 mm of water: in both views the surface lies 5/8 down the box, to a pixel. */
    @Test
    void waterStandsWhereItMust() {
        BoatPicture.Scene scene = plain(boat(box()), WaterPlane.level(30));
        BufferedImage image = BoatPicture.draw(scene, WIDTH);
        for (PictureLayout.Panel panel :
                List.of(layout(scene).side(), layout(scene).front())) {
            Rectangle box = panel.box();
            int beside = box.x + box.width - 4;
            int surface = box.y + 30;
            while (rgb(image, beside, surface) == Palette.AIR) {
                surface++;
            }
            int[] rows = boxRows(image, box, box.x + (int) Math.round(box.width * 0.4));
            assertEquals(rows[0] + (rows[1] - rows[0]) * 5 / 8.0, surface, 2);
            assertEquals(Palette.WATER_BEHIND, rgb(image, beside, surface + 4));
        }
    }

    /** Scale: the box is 400 mm long and 80 mm high. */
    @Test
    void boxKeepsItsProportions() {
        BoatPicture.Scene scene = plain(boat(box()), WaterPlane.level(30));
        BufferedImage image = BoatPicture.draw(scene, WIDTH);
        PictureLayout.Panel side = layout(scene).side();
        int[] rows = boxRows(image, side.box(), side.box().x + side.box().width / 2);
        int y = rows[0] + 5;
        int left = side.box().x + 60;
        while (rgb(image, left, y) == Palette.AIR) {
            left++;
        }
        int right = side.box().x + side.box().width - 3;
        while (rgb(image, right, y) == Palette.AIR) {
            right--;
        }
        assertEquals(5, (right + 1 - left) / (double) (rows[1] - rows[0]), 0.05);
    }

    /** A square bar floating corner down is √2 times as high as its side. */
    @Test
    void listIsSeenFromAheadAndTheWaterStaysLevel() {
        Boat bar = boat(
                part("bar", Kind.CYLINDER, new BoxShape(new Vector3D(0, -50, 0), new Vector3D(400, 50, 100)), 2000, 0));
        BoatPicture.Scene scene = plain(bar, WaterPlane.of(new Vector3D(0, 1, 1), 50 * Math.sqrt(0.5)));
        BufferedImage image = BoatPicture.draw(scene, WIDTH);
        PictureLayout.Panel front = layout(scene).front();
        int middle = front.box().x + Math.round(front.view().project(new Vector3D(0, 0, 50)).x);
        int[] rows = boxRows(image, front.box(), middle);
        assertEquals(100 * Math.sqrt(2) * front.view().pxPerMm(), rows[1] - rows[0], 3);
    }

    /** Painted at 60 mm of 80: a quarter down the box, in dashes on more than half and less than nine tenths of the columns. */
    @Test
    void paintedLineRunsAtItsHeight() {
        BoatPicture.Scene scene = full("");
        BufferedImage image = BoatPicture.draw(scene, WIDTH);
        Rectangle panel = layout(scene).side().box();
        int[] rows = boxRows(image, panel, panel.x + 100);
        double wanted = rows[0] + 0.25 * (rows[1] - rows[0]);
        int painted = 0;
        int columns = 0;
        for (int x = panel.x + 90; x < panel.x + panel.width - 40; x++) {
            columns++;
            boolean here = false;
            for (int y = panel.y + 30; y < panel.y + panel.height - 45; y++) {
                if (isPaint(rgb(image, x, y))) {
                    assertEquals(wanted, y + 0.5, 2);
                    here = true;
                }
            }
            painted += here ? 1 : 0;
        }
        assertTrue(painted > columns / 2 && painted < columns * 0.9, painted + " of " + columns);
    }

    /** Leaving out B, G or M changes the picture at the point itself, in both views, and in the key. */
    @Test
    void marksStandAtTheirPoints() {
        BoatPicture.Scene all = full("");
        BufferedImage with = BoatPicture.draw(all, WIDTH);
        PictureLayout layout = layout(all);
        for (Vector3D point : List.of(B, G, M)) {
            BoatPicture.Scene fewer = new BoatPicture.Scene(
                    all.boat(),
                    all.water(),
                    all.paintedLine(),
                    all.centreOfBuoyancyMm().filter(p -> !p.equals(point)),
                    all.centreOfGravityMm().filter(p -> !p.equals(point)),
                    all.metacentreMm().filter(p -> !p.equals(point)),
                    all.title(),
                    all.caption());
            BufferedImage without = BoatPicture.draw(fewer, WIDTH);
            for (PictureLayout.Panel panel : List.of(layout.side(), layout.front())) {
                Vector3f at = panel.view().project(point);
                int x = panel.box().x + Math.round(at.x);
                int y = panel.box().y + Math.round(at.y);
                assertTrue(changed(with, without, x - 3, y - 3, 6, 6) > 0, "sign at " + point);
            }
            int keyTop = layout.side().box().y + layout.side().box().height;
            assertTrue(
                    changed(
                                    with,
                                    without,
                                    layout.side().box().x,
                                    keyTop,
                                    layout.side().box().width,
                                    40)
                            > 50,
                    "key");
        }
    }

    /** The letter stands to the right of its sign: dark pixels that go with the point. */
    @Test
    void letterStandsBesideItsMark() {
        BoatPicture.Scene scene = full("");
        PictureLayout.Panel side = layout(scene).side();
        BufferedImage image = BoatPicture.draw(scene, WIDTH);
        for (Vector3D point : List.of(B, G, M)) {
            Vector3f at = side.view().project(point);
            int dark = 0;
            for (int y = -6; y < 6; y++) {
                for (int x = 10; x < 24; x++) {
                    int rgb = rgb(image, side.box().x + Math.round(at.x) + x, side.box().y + Math.round(at.y) + y);
                    dark += (rgb & 0xff) < 0x60 && ((rgb >> 16) & 0xff) < 0x60 ? 1 : 0;
                }
            }
            assertTrue(dark > 20, "letter beside " + point + ": " + dark);
        }
    }

    /** A metacentre far above is told at the edge, and does not shrink the boat. */
    @Test
    void farMetacentreLeavesTheBoatAlone() {
        BoatPicture.Scene near = full("");
        BoatPicture.Scene far = new BoatPicture.Scene(
                near.boat(),
                near.water(),
                near.paintedLine(),
                near.centreOfBuoyancyMm(),
                near.centreOfGravityMm(),
                Optional.of(new Vector3D(200, 0, 900)),
                near.title(),
                near.caption());
        PictureLayout layout = layout(far);
        assertEquals(layout(near).side().view().pxPerMm(), layout.side().view().pxPerMm(), 0);
        BufferedImage image = BoatPicture.draw(far, WIDTH);
        Rectangle box = layout.side().box();
        int x = box.x + Math.round(layout.side().view().project(new Vector3D(200, 0, 900)).x);
        int dark = 0;
        for (int y = box.y + 30; y < box.y + 50; y++) {
            for (int across = x - 2; across <= x + 2; across++) {
                dark += (rgb(image, across, y) & 0xff) < 0xc0 ? 1 : 0;
            }
        }
        assertTrue(dark > 20, "arrow: " + dark);
    }

    /** A tank lying level, 60 mm in diameter and half full: its water stands at the axis. */
    @Test
    void tankWaterStandsAtItsLevel() {
        Part tank = part(
                "tank",
                Kind.TANK,
                new BarShape(new Vector3D(50, 0, 40), new Vector3D(350, 0, 40), 60, BarShape.Ends.FLAT),
                0,
                0.5);
        PictureModel model = PictureModel.of(plain(boat(box(), tank), WaterPlane.level(30)));
        double level = model.bodies().stream()
                .flatMap(body -> body.levelMm().stream())
                .findFirst()
                .orElseThrow();
        assertEquals(40 - 30, level, 2e-3);
        assertTrue(model.hasTankWater());
    }

    @Test
    void captionIsDrawnAndMakesRoom() {
        BufferedImage without = BoatPicture.draw(full(""), WIDTH);
        BufferedImage with = BoatPicture.draw(full("Floats level. ".repeat(30)), WIDTH);
        assertTrue(with.getHeight() > without.getHeight() + 3 * 15);
        int dark = 0;
        for (int y = 40; y < 70; y++) {
            for (int x = 20; x < 1100; x++) {
                dark += (rgb(with, x, y) & 0xff) < 0x80 ? 1 : 0;
            }
        }
        assertTrue(dark > 1000, "caption: " + dark);
    }

    @Test
    void theSameSceneGivesTheSameBits() {
        int[][] twice = new int[2][];
        for (int i = 0; i < 2; i++) {
            BufferedImage image = BoatPicture.draw(full("Twice"), 900);
            twice[i] = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        }
        assertArrayEquals(twice[0], twice[1]);
    }

    /** Box barge afloat: KB = T/2, BM = B²/12T (closed form). */
    @Test
    void settledSceneHasTheMetacentreOfTheClosedForm() {
        Condition condition = Condition.of(boat(box()));
        Equilibrium settled = Flotation.of(condition).settled().orElseThrow();
        BoatPicture.Scene scene = BoatPicture.Scene.of(condition, settled, "");
        assertEquals(
                15 + 100.0 * 100 / 12 / 30, scene.metacentreMm().orElseThrow().getZ(), 1e-6);
        assertEquals("Box", scene.title());
    }

    @Test
    void refusesWhatCannotBeDrawn() {
        BoatPicture.Scene scene = full("");
        assertThrows(IllegalArgumentException.class, () -> BoatPicture.draw(scene, 100));
        Boat nothing = boat();
        assertThrows(
                IllegalArgumentException.class, () -> BoatPicture.draw(plain(nothing, WaterPlane.level(0)), WIDTH));
    }

    private static int changed(BufferedImage a, BufferedImage b, int left, int top, int width, int height) {
        int count = 0;
        for (int y = top; y < top + height; y++) {
            for (int x = left; x < left + width; x++) {
                count += a.getRGB(x, y) != b.getRGB(x, y) ? 1 : 0;
            }
        }
        return count;
    }
}
