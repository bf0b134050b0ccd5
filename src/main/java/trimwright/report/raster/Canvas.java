package trimwright.report.raster;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.List;

/**
 * A picture in the making: a backdrop, translucent layers in front of it, and water over all that lies below its
 * surface. Needs no display. Confined to one thread.
 */
public final class Canvas {

    private final int widthPx;
    private final int heightPx;
    private final int backdrop;
    private final List<Layer> layers = new ArrayList<>();
    private double surfacePx = Double.POSITIVE_INFINITY;
    private int waterBehind;
    private int waterInFront;

    /**
     * @param backdrop opaque colour behind everything, RGB
     * @throws IllegalArgumentException when width or height is not positive
     */
    public Canvas(int widthPx, int heightPx, int backdrop) {
        if (widthPx <= 0 || heightPx <= 0) {
            throw new IllegalArgumentException("a picture of " + widthPx + " by " + heightPx + " pixels");
        }
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.backdrop = backdrop;
    }

    /**
     * A new layer, seen through or hiding the others by depth.
     *
     * @param denser how much of what it lets through a translucent face loses when it is seen edge-on, 0…1: 0 for a tinted film,
     *     more for the look of glass
     */
    public Layer layer(double denser) {
        Layer layer = new Layer(widthPx, heightPx, denser);
        layers.add(layer);
        return layer;
    }

    /**
     * Puts water behind and in front of everything below a level surface seen edge-on.
     *
     * @param surfacePx y of the surface
     * @param behind opaque colour of the backdrop under water, RGB
     * @param inFront tint of what is seen through water, ARGB
     */
    public void water(double surfacePx, int behind, int inFront) {
        this.surfacePx = surfacePx;
        this.waterBehind = behind;
        this.waterInFront = inFront;
    }

    /** The finished picture, opaque RGB. */
    public BufferedImage image() {
        BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        int[] rgb = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        int firstWet = Layer.firstSample(surfacePx);
        int across = widthPx * Layer.SAMPLES;
        int[] upper = new int[across];
        int[] lower = new int[across];
        for (int y = 0; y < heightPx; y++) {
            int row = y * Layer.SAMPLES;
            mix(upper, row * across, row >= firstWet);
            mix(lower, (row + 1) * across, row + 1 >= firstWet);
            for (int x = 0; x < widthPx; x++) {
                rgb[y * widthPx + x] = mean(upper[2 * x], upper[2 * x + 1], lower[2 * x], lower[2 * x + 1]);
            }
        }
        return image;
    }

    /** The mean of the four samples of a pixel, red and blue at one go: they are far enough apart to be summed in one number. */
    private static int mean(int a, int b, int c, int d) {
        int redBlue = (a & 0xff00ff) + (b & 0xff00ff) + (c & 0xff00ff) + (d & 0xff00ff) + 0x020002;
        int green = (a & 0xff00) + (b & 0xff00) + (c & 0xff00) + (d & 0xff00) + 0x0200;
        return (redBlue >> 2 & 0xff00ff) | (green >> 2 & 0xff00);
    }

    /**
     * Mixes ground, layers and water along a row of samples, at each the furthest layer first; of equal depths the layer made later
     * is in front.
     *
     * @param row receives the colours, RGB
     * @param start where the row begins in the layers
     */
    private void mix(int[] row, int start, boolean wet) {
        int ground = wet ? waterBehind : backdrop;
        Layer[] all = layers.toArray(new Layer[0]);
        Layer[] seen = new Layer[all.length];
        for (int x = 0; x < row.length; x++) {
            int i = start + x;
            int count = 0;
            for (Layer layer : all) {
                float z = layer.depth[i];
                if (z < Float.POSITIVE_INFINITY) {
                    int at = count++;
                    while (at > 0 && seen[at - 1].depth[i] < z) {
                        seen[at] = seen[at - 1];
                        at--;
                    }
                    seen[at] = layer;
                }
            }
            int colour = ground;
            for (int k = 0; k < count; k++) {
                colour = over(colour, seen[k].argb[i]);
            }
            row[x] = wet && count > 0 ? over(colour, waterInFront) : colour;
        }
    }

    private static int over(int rgb, int argb) {
        int alpha = argb >>> 24;
        return mix(rgb >> 16 & 0xff, argb >> 16 & 0xff, alpha) << 16
                | mix(rgb >> 8 & 0xff, argb >> 8 & 0xff, alpha) << 8
                | mix(rgb & 0xff, argb & 0xff, alpha);
    }

    private static int mix(int below, int above, int alpha) {
        return (below * (255 - alpha) + above * alpha + 127) / 255;
    }
}
