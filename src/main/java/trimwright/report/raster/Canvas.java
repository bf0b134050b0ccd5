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
        Layer[] near = layers.toArray(new Layer[0]);
        int firstWet = Layer.firstSample(surfacePx);
        int samplesAcross = widthPx * Layer.SAMPLES;
        int[] mixed = new int[3];
        int[] sum = new int[3];
        int count = Layer.SAMPLES * Layer.SAMPLES;
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                sum[0] = 0;
                sum[1] = 0;
                sum[2] = 0;
                for (int s = 0; s < count; s++) {
                    int sy = y * Layer.SAMPLES + s / Layer.SAMPLES;
                    int i = sy * samplesAcross + x * Layer.SAMPLES + s % Layer.SAMPLES;
                    boolean wet = sy >= firstWet;
                    boolean seen = paint(mixed, near, i, wet ? waterBehind : backdrop);
                    if (wet && seen) {
                        over(mixed, waterInFront);
                    }
                    sum[0] += mixed[0];
                    sum[1] += mixed[1];
                    sum[2] += mixed[2];
                }
                int half = count / 2;
                rgb[y * widthPx + x] =
                        (sum[0] + half) / count << 16 | (sum[1] + half) / count << 8 | (sum[2] + half) / count;
            }
        }
        return image;
    }

    /**
     * Mixes what is behind and the layers at one sample, the furthest first; of equal depths the layer made later is in front.
     *
     * @return whether there is anything of a layer
     */
    private static boolean paint(int[] mixed, Layer[] near, int i, int behind) {
        mixed[0] = (behind >> 16) & 0xff;
        mixed[1] = (behind >> 8) & 0xff;
        mixed[2] = behind & 0xff;
        float done = Float.POSITIVE_INFINITY;
        int lastDone = -1;
        while (true) {
            int furthest = -1;
            for (int k = 0; k < near.length; k++) {
                float z = near[k].depth[i];
                boolean waiting = z < done || (z == done && k > lastDone && lastDone >= 0);
                if (waiting && (furthest < 0 || z > near[furthest].depth[i])) {
                    furthest = k;
                }
            }
            if (furthest < 0) {
                return lastDone >= 0;
            }
            over(mixed, near[furthest].argb[i]);
            done = near[furthest].depth[i];
            lastDone = furthest;
        }
    }

    private static void over(int[] mixed, int argb) {
        int alpha = argb >>> 24;
        mixed[0] = mix(mixed[0], (argb >> 16) & 0xff, alpha);
        mixed[1] = mix(mixed[1], (argb >> 8) & 0xff, alpha);
        mixed[2] = mix(mixed[2], argb & 0xff, alpha);
    }

    private static int mix(int below, int above, int alpha) {
        return (below * (255 - alpha) + above * alpha + 127) / 255;
    }
}
