package trimwright.report.raster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.jme3.math.Vector3f;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Coverage, depth and edges of the z-buffer, against counts that can be worked out by hand. */
class LayerTest {

    private static final int GREY = 0xff808080;
    private static final int RED = 0xffff0000;
    private static final int[] ONE = {0, 1, 2};

    private static Layer layer(int widthPx, int heightPx) {
        return new Layer(widthPx, heightPx, 0);
    }

    private static int covered(Layer layer) {
        int count = 0;
        for (float z : layer.depth) {
            count += z < Float.POSITIVE_INFINITY ? 1 : 0;
        }
        return count;
    }

    /**
     * A right triangle with legs of n samples holds the centres with i + j + 1 &lt; n: n(n − 1)/2 of them; those on the long side
     * belong to the neighbour below, which makes the square whole.
     */
    @Test
    void rightTriangleCoversWhatCanBeCounted() {
        int px = 40;
        int n = px * Layer.SAMPLES;
        Layer upper = layer(px, px);
        upper.surface(new float[] {0, 0, 1, px, 0, 1, 0, px, 1}, ONE, GREY);
        assertEquals(n * (n - 1) / 2, covered(upper));
        Layer lower = layer(px, px);
        lower.surface(new float[] {px, 0, 1, px, px, 1, 0, px, 1}, ONE, GREY);
        assertEquals(n * (n + 1) / 2, covered(lower));
    }

    /** Corners on quarters of a sample: every edge function is exact in double, and no centre lies on an edge. */
    @Test
    void coverageIsThatOfPointInTriangle() {
        Random random = new Random(7);
        int px = 24;
        int compared = 0;
        for (int round = 0; round < 300; round++) {
            float[] p = new float[9];
            for (int k = 0; k < 3; k++) {
                p[3 * k] = (random.nextInt(8 * (px + 20)) - 80) / 8f;
                p[3 * k + 1] = (random.nextInt(8 * (px + 20)) - 80) / 8f;
            }
            Layer layer = layer(px, px);
            layer.surface(p, ONE, GREY);
            for (int y = 0; y < layer.height; y++) {
                for (int x = 0; x < layer.width; x++) {
                    double cx = (x + 0.5) / Layer.SAMPLES;
                    double cy = (y + 0.5) / Layer.SAMPLES;
                    double a = side(p, 0, 3, cx, cy);
                    double b = side(p, 3, 6, cx, cy);
                    double c = side(p, 6, 0, cx, cy);
                    if (a == 0 || b == 0 || c == 0) {
                        continue;
                    }
                    boolean inside = (a > 0 && b > 0 && c > 0) || (a < 0 && b < 0 && c < 0);
                    assertEquals(inside, layer.depth[y * layer.width + x] < Float.POSITIVE_INFINITY);
                    compared++;
                }
            }
        }
        assertTrue(compared > 600_000, "compared " + compared);
    }

    private static double side(float[] p, int from, int to, double x, double y) {
        return (double) (p[to] - p[from]) * (y - p[from + 1]) - (double) (p[to + 1] - p[from + 1]) * (x - p[from]);
    }

    /** A fan that fills the picture: whatever point its triangles share, no sample is missed and none is covered twice. */
    @Test
    void neighboursShareEverySampleOnce() {
        Random random = new Random(11);
        int px = 31;
        for (int round = 0; round < 100; round++) {
            float x = random.nextFloat() * px;
            float y = random.nextFloat() * px;
            float[] p = {0, 0, 1, px, 0, 1, px, px, 1, 0, px, 1, x, y, 1};
            int total = 0;
            for (int k = 0; k < 4; k++) {
                Layer layer = layer(px, px);
                layer.surface(p, new int[] {k, (k + 1) % 4, 4}, GREY);
                total += covered(layer);
            }
            assertEquals(px * Layer.SAMPLES * px * Layer.SAMPLES, total);
        }
    }

    /** Two sheets that cross down the middle: left the one is nearer, right the other, whichever is drawn first. */
    @Test
    void theNearerIsSeenWhateverTheOrder() {
        float[] rising = {0, 0, 10, 20, 0, 30, 20, 20, 30, 0, 20, 10};
        float[] falling = {0, 0, 30, 20, 0, 10, 20, 20, 10, 0, 20, 30};
        int[] square = {0, 1, 2, 0, 2, 3};
        Layer one = layer(20, 20);
        one.surface(rising, square, GREY);
        one.surface(falling, square, RED);
        Layer other = layer(20, 20);
        other.surface(falling, square, RED);
        other.surface(rising, square, GREY);
        assertArrayEquals(one.argb, other.argb);
        assertArrayEquals(one.depth, other.depth);
        int reddest = one.argb[one.width - 1];
        int greyest = one.argb[0];
        assertTrue((reddest & 0xffff) == 0 && (greyest & 0xffff) != 0, "colours");
        for (int x = 0; x < one.width; x++) {
            double cx = (x + 0.5) / Layer.SAMPLES;
            // Depths are kept as float: 24 bits of a number up to 30.
            assertEquals(Math.min(10 + cx, 30 - cx), one.depth[x], 30 * Math.scalb(1.0, -23));
            assertEquals(cx < 10 ? greyest : reddest, one.argb[x]);
        }
    }

    @Test
    void drawsBetweenTwoHeightsOnly() {
        float[] p = {0, 0, 1, 10, 0, 1, 10, 10, 1, 0, 10, 1};
        int[] square = {0, 1, 2, 0, 2, 3};
        Layer layer = layer(10, 10);
        layer.surface(p, square, GREY, 0, 3.5);
        assertEquals(7 * 20, covered(layer));
        layer.surface(p, square, RED, 3.5, 10);
        assertEquals(20 * 20, covered(layer));
        assertEquals(0, layer.argb[7 * 20] & 0xffff);
        assertTrue((layer.argb[6 * 20] & 0xffff) != 0);
    }

    /** 10 px long, 3 px thick, with square ends of half the thickness: 13 by 3 px. */
    @Test
    void lineHasItsThicknessAndSquareEnds() {
        Layer layer = layer(30, 20);
        layer.line(new Vector3f(10, 10, 5), new Vector3f(20, 10, 5), 3, RED, 0);
        assertEquals(13 * 3 * Layer.SAMPLES * Layer.SAMPLES, covered(layer));
        assertEquals(RED, layer.argb[20 * layer.width + 30]);
    }

    @Test
    void lineHidesBehindWhatIsNearer() {
        float[] p = {0, 0, 4, 15, 0, 4, 15, 20, 4, 0, 20, 4};
        Layer layer = layer(30, 20);
        layer.surface(p, new int[] {0, 1, 2, 0, 2, 3}, GREY);
        layer.line(new Vector3f(5, 10, 5), new Vector3f(25, 10, 5), 2, RED, 0.5);
        int middle = 20 * layer.width;
        assertTrue(layer.argb[middle + 20] != RED);
        assertEquals(RED, layer.argb[middle + 40]);
        layer.line(new Vector3f(5, 10, 5), new Vector3f(25, 10, 5), 2, RED, 1.5);
        assertEquals(RED, layer.argb[middle + 20]);
    }

    /** A square 4 px wide in front of a larger one, and a slope of any steepness: only ends and steps are outlined. */
    @Test
    void outlinesEndsAndStepsButNoSlopes() {
        int[] square = {0, 1, 2, 0, 2, 3};
        Layer layer = layer(20, 20);
        layer.surface(new float[] {2, 2, 50, 18, 2, 90, 18, 18, 90, 2, 18, 50}, square, GREY);
        layer.surface(new float[] {8, 8, 1, 12, 8, 1, 12, 12, 1, 8, 12, 1}, square, GREY);
        layer.outline(0.5, 1, RED);
        int red = 0;
        for (int argb : layer.argb) {
            red += argb == RED ? 1 : 0;
        }
        assertEquals(4 * (32 - 1) + 4 * (8 - 1), red);
        assertTrue(layer.argb[20 * layer.width + 10] != RED);
    }

    /** Light falls from above: a face turned up is brighter than one turned down, whichever way round it is listed. */
    @Test
    void aboveIsBrighter() {
        float[] p = {0, 0, 10, 10, 0, 10, 10, 10, 0, 10, 20, 10, 0, 20, 10};
        int up = Light.on(p, 0, 3, 6, GREY, 0);
        int down = Light.on(p, 6, 9, 12, GREY, 0);
        assertTrue((up & 0xff) > (down & 0xff));
        assertEquals(up, Light.on(p, 0, 6, 3, GREY, 0));
        assertEquals(0xff, up >>> 24);
    }

    @Test
    void refusesCornersOutOfReach() {
        Layer layer = layer(10, 10);
        float[] p = {0, 0, 0, 1, Float.NaN, 0, 1, 1, 0};
        assertThrows(IllegalArgumentException.class, () -> layer.surface(p, ONE, GREY));
        float[] far = {0, 0, 0, 1, 1e9f, 0, 1, 1, 0};
        assertThrows(IllegalArgumentException.class, () -> layer.surface(far, ONE, GREY));
    }
}
