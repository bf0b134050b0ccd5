package trimwright.report.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

/** How layers, backdrop and water are mixed. */
class CanvasTest {

    private static final int[] SQUARE = {0, 1, 2, 0, 2, 3};

    private static float[] sheet(float left, float right, float depth) {
        return new float[] {left, 0, depth, right, 0, depth, right, 10, depth, left, 10, depth};
    }

    private static int mix(int below, int above, int alpha) {
        return (int) Math.round((below * (255.0 - alpha) + above * (double) alpha) / 255);
    }

    private static int flat(int tint) {
        return Light.on(sheet(0, 10, 1), 0, 3, 6, tint, 0);
    }

    /** Half a pixel covered: the mean of sheet and backdrop. */
    @Test
    void edgesAreTheMeanOfTheirSamples() {
        Canvas canvas = new Canvas(10, 10, 0x204060);
        canvas.layer(0).surface(sheet(0, 4.5f, 1), SQUARE, 0xffffffff);
        BufferedImage image = canvas.image();
        int white = flat(0xffffffff) & 0xff;
        assertEquals(0x204060, image.getRGB(6, 5) & 0xffffff);
        assertEquals(white << 16 | white << 8 | white, image.getRGB(3, 5) & 0xffffff);
        assertEquals((int) Math.round((white + 0x40) / 2.0), (image.getRGB(4, 5) >> 8) & 0xff);
    }

    /** Two films: the nearer is mixed over the further, whichever layer was made first. */
    @Test
    void filmsAreMixedByDepth() {
        int far = flat(0x80ff0000);
        int near = flat(0x400000ff);
        for (boolean nearFirst : new boolean[] {true, false}) {
            Canvas canvas = new Canvas(10, 10, 0xffffff);
            Layer first = canvas.layer(0);
            Layer second = canvas.layer(0);
            (nearFirst ? first : second).surface(sheet(0, 10, 1), SQUARE, 0x400000ff);
            (nearFirst ? second : first).surface(sheet(0, 10, 2), SQUARE, 0x80ff0000);
            int pixel = canvas.image().getRGB(5, 5);
            int red = mix(mix(255, (far >> 16) & 0xff, 0x80), 0, 0x40);
            int blue = mix(mix(255, 0, 0x80), near & 0xff, 0x40);
            assertEquals(red, (pixel >> 16) & 0xff);
            assertEquals(blue, pixel & 0xff);
        }
    }

    @Test
    void opaqueHidesWhatIsBehindIt() {
        Canvas canvas = new Canvas(10, 10, 0xffffff);
        canvas.layer(0).surface(sheet(0, 10, 2), SQUARE, 0x80ff0000);
        canvas.layer(0).surface(sheet(0, 5, 1), SQUARE, 0xff00ff00);
        assertEquals(flat(0xff00ff00) & 0xffffff, canvas.image().getRGB(2, 5) & 0xffffff);
    }

    /** The surface at y = 6.5: rows above are dry, row 6 is half and half, rows below are wet. */
    @Test
    void waterBeginsAtItsSurface() {
        Canvas canvas = new Canvas(10, 10, 0xffffff);
        canvas.layer(0).surface(sheet(0, 5, 1), SQUARE, 0xff808080);
        canvas.water(6.5, 0x0000ff, 0x80000000);
        BufferedImage image = canvas.image();
        int grey = flat(0xff808080) & 0xff;
        assertEquals(0xffffff, image.getRGB(8, 5) & 0xffffff);
        assertEquals(0x8080ff, image.getRGB(8, 6) & 0xffffff);
        assertEquals(0x0000ff, image.getRGB(8, 7) & 0xffffff);
        assertEquals(grey, image.getRGB(2, 5) & 0xff);
        assertEquals(mix(grey, 0, 0x80), image.getRGB(2, 7) & 0xff);
    }

    @Test
    void refusesAPictureWithoutSize() {
        assertThrows(IllegalArgumentException.class, () -> new Canvas(0, 10, 0));
    }
}
