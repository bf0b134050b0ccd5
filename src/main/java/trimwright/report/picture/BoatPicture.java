package trimwright.report.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.PaintedLine;
import trimwright.immersion.WaterPlane;
import trimwright.report.Measure;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;

/**
 * A picture of a boat as she lies in the water: from starboard and from ahead, side by side, the water level and the boat
 * trimmed and listed as she is. Marks differ by shape and lines by dashes, so that it reads in black and white.
 */
public final class BoatPicture {

    /** Least and greatest width that can be drawn, px. */
    public static final int LEAST_WIDTH_PX = 600;

    public static final int GREATEST_WIDTH_PX = 6000;

    private BoatPicture() {}

    /**
     * What is to be drawn. Points in mm in the boat's frame; a missing one is left out.
     *
     * @param boat the boat with her fills as they are
     * @param water where the water surface lies
     * @param paintedLine the line she is meant to float on
     * @param centreOfBuoyancyMm B
     * @param centreOfGravityMm G
     * @param metacentreMm the transverse metacentre M
     * @param title what stands above the picture
     * @param caption the verdict; broken into lines where needed, left out when blank
     * @param misfitsMm where something does not fit
     */
    public record Scene(
            Boat boat,
            WaterPlane water,
            Optional<PaintedLine> paintedLine,
            Optional<Vector3D> centreOfBuoyancyMm,
            Optional<Vector3D> centreOfGravityMm,
            Optional<Vector3D> metacentreMm,
            String title,
            String caption,
            List<Vector3D> misfitsMm) {

        public Scene {
            misfitsMm = List.copyOf(misfitsMm);
        }

        /** The same without anything that does not fit. */
        public Scene(
                Boat boat,
                WaterPlane water,
                Optional<PaintedLine> paintedLine,
                Optional<Vector3D> centreOfBuoyancyMm,
                Optional<Vector3D> centreOfGravityMm,
                Optional<Vector3D> metacentreMm,
                String title,
                String caption) {
            this(
                    boat,
                    water,
                    paintedLine,
                    centreOfBuoyancyMm,
                    centreOfGravityMm,
                    metacentreMm,
                    title,
                    caption,
                    List.of());
        }

        /** A boat at rest in an attitude that was solved for her. */
        public static Scene of(Condition condition, Equilibrium at, String caption) {
            // B and M lie on one plumb line, M by GM above G.
            Vector3D metacentre = new Vector3D(
                    1,
                    at.centreOfBuoyancyMm(),
                    at.gmTransverseMm() - at.bgMm(),
                    at.plane().up());
            return new Scene(
                    condition.boat(),
                    at.plane(),
                    condition.boat().paintedLine(),
                    Optional.of(at.centreOfBuoyancyMm()),
                    Optional.of(at.centreOfGravityMm()),
                    Optional.of(metacentre),
                    condition.boat().name(),
                    caption);
        }
    }

    /**
     * How a picture is laid out.
     *
     * @param designWidth how many letters' worth it is wide: 1200 for a screen, less for large letters on paper
     * @param plan whether she is also shown from above
     * @param key whether it says what signs and tints mean
     * @param greatestHeight most that the views of her length may take in height, in the units of the width
     * @param measure units of rulers and scale bars
     */
    public record Style(int designWidth, boolean plan, boolean key, double greatestHeight, Measure measure) {

        /** For a screen: from starboard and from ahead. */
        public static final Style SCREEN = new Style(1200, false, true, 620, Measure.METRIC);
    }

    /**
     * Draws the picture from starboard and from ahead; the height follows from the boat.
     *
     * @param widthPx {@value #LEAST_WIDTH_PX}…{@value #GREATEST_WIDTH_PX}
     * @throws IllegalArgumentException when the width is out of that range or the boat has nothing that could be drawn
     * @throws trimwright.finding.UnusableInputException when the machine has no fonts
     */
    public static BufferedImage draw(Scene scene, int widthPx) {
        return draw(scene, widthPx, Style.SCREEN);
    }

    /**
     * Draws the picture; the height follows from the boat.
     *
     * @param widthPx {@value #LEAST_WIDTH_PX}…{@value #GREATEST_WIDTH_PX}
     * @throws IllegalArgumentException when the width is out of that range or the boat has nothing that could be drawn
     * @throws trimwright.finding.UnusableInputException when the machine has no fonts
     */
    public static BufferedImage draw(Scene scene, int widthPx, Style style) {
        if (widthPx < LEAST_WIDTH_PX || widthPx > GREATEST_WIDTH_PX) {
            throw new IllegalArgumentException("width " + widthPx + " px");
        }
        PictureModel model = PictureModel.of(scene);
        PictureLayout layout = PictureLayout.of(model, widthPx, style);
        BufferedImage image = new BufferedImage(widthPx, layout.heightPx(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Lettering.smooth(g);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        layout.heading().draw(g);
        layout.panels().forEach(panel -> new PicturePanel(model, layout, panel).draw(g));
        layout.key().ifPresent(key -> key.draw(g));
        g.dispose();
        return image;
    }
}
