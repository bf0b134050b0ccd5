package trimwright.report.raster;

import com.jme3.math.Vector3f;
import java.util.Arrays;

/**
 * A z-buffer: at every sample the nearest surface, its colour and its depth. Surfaces within a layer hide each other; layers are
 * seen through one another as far as their colours are translucent. Confined to one thread; the same calls give the
 * same bits.
 *
 * <p>Every pixel has 2 × 2 samples. A sample belongs to a triangle when its centre lies inside, or on a top or left edge, so that
 * triangles that share an edge cover each sample once. Colours are ARGB, not premultiplied.
 */
public final class Layer {

    /** Samples along one side of a pixel. */
    static final int SAMPLES = 2;

    /** Steps between two samples to which corners are snapped. */
    private static final int STEPS = 256;

    private static final int HALF_STEP = STEPS / 2;

    /** Corners further out than this would overflow the edge functions, px. */
    private static final float FURTHEST_PX = 1 << 20;

    /**
     * A fall of depth counts as a leap when it is this many times steeper than the slopes before and beyond it: a round side falls
     * off gradually, and a deck seen at a slant goes on falling.
     */
    private static final int LEAP_OVER_SLOPE = 3;

    /** Samples over which a leap may spread, as where a sliver of deck shows between hull and tower. */
    private static final int REACH = 3;

    private final double denser;
    final int width;
    final int height;
    final int[] argb;
    final float[] depth;

    /** The triangle being drawn: corners in steps, depth at the corners. */
    private long x0;

    private long y0;
    private long x1;
    private long y1;
    private long x2;
    private long y2;
    private float z0;
    private float z1;
    private float z2;

    Layer(int widthPx, int heightPx, double denser) {
        this.denser = denser;
        width = widthPx * SAMPLES;
        height = heightPx * SAMPLES;
        argb = new int[width * height];
        depth = new float[width * height];
        Arrays.fill(depth, Float.POSITIVE_INFINITY);
    }

    /**
     * Draws triangles, lit from above by their face normals; which way round a face is does not matter.
     *
     * @param pixels corners as {@link View#project} gives them
     * @param corners three indices a triangle
     * @param tint colour in full light
     * @throws IllegalArgumentException when a corner is not finite or lies more than a million pixels away
     */
    public void surface(float[] pixels, int[] corners, int tint) {
        surface(pixels, corners, tint, 0, (double) height / SAMPLES);
    }

    /**
     * The same between two heights of the picture only.
     *
     * @param topPx least y of the sample centres that are drawn
     * @param bottomPx y at which drawing stops
     */
    public void surface(float[] pixels, int[] corners, int tint, double topPx, double bottomPx) {
        for (int i = 0; i < pixels.length; i += 3) {
            if (!(Math.abs(pixels[i]) <= FURTHEST_PX
                    && Math.abs(pixels[i + 1]) <= FURTHEST_PX
                    && Math.abs(pixels[i + 2]) < Float.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("corner " + i / 3 + " lies out of reach of the picture");
            }
        }
        int firstRow = Math.max(0, firstSample(topPx));
        int endRow = Math.min(height, firstSample(bottomPx));
        for (int t = 0; t < corners.length; t += 3) {
            int a = 3 * corners[t];
            int b = 3 * corners[t + 1];
            int c = 3 * corners[t + 2];
            x0 = steps(pixels[a]);
            y0 = steps(pixels[a + 1]);
            x1 = steps(pixels[b]);
            y1 = steps(pixels[b + 1]);
            x2 = steps(pixels[c]);
            y2 = steps(pixels[c + 1]);
            z0 = pixels[a + 2];
            z1 = pixels[b + 2];
            z2 = pixels[c + 2];
            if (touchesASample(firstRow, endRow)) {
                triangle(Light.on(pixels, a, b, c, tint, denser), firstRow, endRow);
            }
        }
    }

    /**
     * A straight line of constant thickness with square ends, hidden where something nearer was drawn before it.
     *
     * @param from one end as {@link View#project} gives it
     * @param to the other end
     * @param widthPx thickness
     * @param colour ARGB; lines are not lit
     * @param nearerPx how much nearer to the viewer it counts, so that a line on a surface stays in sight
     */
    public void line(Vector3f from, Vector3f to, double widthPx, int colour, double nearerPx) {
        double dx = to.x - from.x;
        double dy = to.y - from.y;
        double length = Math.hypot(dx, dy);
        double alongX = length > 0 ? dx / length : 1;
        double alongY = length > 0 ? dy / length : 0;
        double half = widthPx / 2;
        double sx = -alongY * half;
        double sy = alongX * half;
        double ex = alongX * half;
        double ey = alongY * half;
        float zFrom = from.z - (float) nearerPx;
        float zTo = to.z - (float) nearerPx;
        float[] corners = {
            (float) (from.x - ex + sx), (float) (from.y - ey + sy), zFrom,
            (float) (from.x - ex - sx), (float) (from.y - ey - sy), zFrom,
            (float) (to.x + ex - sx), (float) (to.y + ey - sy), zTo,
            (float) (to.x + ex + sx), (float) (to.y + ey + sy), zTo
        };
        half(corners, 0, 3, 6, colour);
        half(corners, 0, 6, 9, colour);
    }

    /**
     * Draws the outline of what is in this layer: where it ends, and where its depth leaps.
     *
     * @param widthPx thickness, drawn inside the outline
     * @param leapPx least change of depth that can be an edge; where the surface falls off gradually, as on a round side, it is none
     * @param colour ARGB
     */
    public void outline(double widthPx, double leapPx, int colour) {
        int thick = Math.max(1, (int) Math.round(widthPx * SAMPLES));
        boolean[] edge = new boolean[argb.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int i = y * width + x;
                if (depth[i] < Float.POSITIVE_INFINITY) {
                    mark(edge, i, x, width - 1 - x, 1, thick, leapPx);
                    mark(edge, i, width - 1 - x, x, -1, thick, leapPx);
                    mark(edge, i, y, height - 1 - y, width, thick, leapPx);
                    mark(edge, i, height - 1 - y, y, -width, thick, leapPx);
                }
            }
        }
        for (int i = 0; i < edge.length; i++) {
            if (edge[i]) {
                argb[i] = colour;
            }
        }
    }

    /**
     * Marks the samples from {@code i} inward when the surface has an edge on the far side of {@code i}.
     *
     * @param inward samples there are against the direction of {@code stride}
     * @param outward samples there are along it
     */
    private void mark(boolean[] edge, int i, int inward, int outward, int stride, int thick, double leapPx) {
        float here = depth[i];
        float fall = outward > 0 ? depth[i + stride] - here : Float.POSITIVE_INFINITY;
        if (!(fall > leapPx / REACH)) {
            return;
        }
        if (fall < Float.POSITIVE_INFINITY && outward > REACH) {
            float before = inward > 0 ? Math.abs(here - depth[i - stride]) : Float.POSITIVE_INFINITY;
            float across = depth[i + REACH * stride];
            float beyond = Math.abs(depth[i + (REACH + 1) * stride] - across);
            if (across - here < leapPx || !isLeap(across - here, before, beyond)) {
                return;
            }
        }
        for (int k = 0; k < thick && k <= inward && depth[i - k * stride] < Float.POSITIVE_INFINITY; k++) {
            edge[i - k * stride] = true;
        }
    }

    /** Whether the depth falls much faster than the surfaces on both sides slope; before the first sample there is no slope. */
    private static boolean isLeap(float fall, float before, float beyond) {
        float most = LEAP_OVER_SLOPE * REACH;
        return (before == Float.POSITIVE_INFINITY || fall > most * before) && fall > most * beyond;
    }

    private void half(float[] p, int a, int b, int c, int colour) {
        x0 = steps(p[a]);
        y0 = steps(p[a + 1]);
        z0 = p[a + 2];
        x1 = steps(p[b]);
        y1 = steps(p[b + 1]);
        z1 = p[b + 2];
        x2 = steps(p[c]);
        y2 = steps(p[c + 1]);
        z2 = p[c + 2];
        if (touchesASample(0, height)) {
            triangle(colour, 0, height);
        }
    }

    /** Whether the box around the triangle holds any sample centre of the rows; most triangles of a big mesh hold none. */
    private boolean touchesASample(int firstRow, int endRow) {
        long left = Math.min(x0, Math.min(x1, x2));
        long right = Math.max(x0, Math.max(x1, x2));
        long top = Math.min(y0, Math.min(y1, y2));
        long bottom = Math.max(y0, Math.max(y1, y2));
        long firstX = sampleAtOrAfter(left);
        long firstY = sampleAtOrAfter(top);
        return firstX * STEPS + HALF_STEP <= right
                && firstY * STEPS + HALF_STEP <= bottom
                && firstX < width
                && right >= HALF_STEP
                && firstY < endRow
                && bottom >= (long) firstRow * STEPS + HALF_STEP;
    }

    private void triangle(int colour, int firstRow, int endRow) {
        long area = (x1 - x0) * (y2 - y0) - (y1 - y0) * (x2 - x0);
        if (area == 0) {
            return;
        }
        if (area < 0) {
            long x = x1;
            x1 = x2;
            x2 = x;
            long y = y1;
            y1 = y2;
            y2 = y;
            float z = z1;
            z1 = z2;
            z2 = z;
            area = -area;
        }
        int left = (int) Math.max(0, sampleAtOrAfter(Math.min(x0, Math.min(x1, x2))));
        int right = (int) Math.min(width - 1, sampleAtOrBefore(Math.max(x0, Math.max(x1, x2))));
        int top = (int) Math.max(firstRow, sampleAtOrAfter(Math.min(y0, Math.min(y1, y2))));
        int bottom = (int) Math.min(endRow - 1, sampleAtOrBefore(Math.max(y0, Math.max(y1, y2))));
        long startX = (long) left * STEPS + HALF_STEP;
        long startY = (long) top * STEPS + HALF_STEP;
        // Twice the area against each edge, positive inside; an edge that is neither top nor left gives its own points
        // away.
        long row0 = (x2 - x1) * (startY - y1) - (y2 - y1) * (startX - x1) - givenAway(x2 - x1, y2 - y1);
        long row1 = (x0 - x2) * (startY - y2) - (y0 - y2) * (startX - x2) - givenAway(x0 - x2, y0 - y2);
        long row2 = (x1 - x0) * (startY - y0) - (y1 - y0) * (startX - x0) - givenAway(x1 - x0, y1 - y0);
        long right0 = -(y2 - y1) * STEPS;
        long right1 = -(y0 - y2) * STEPS;
        long right2 = -(y1 - y0) * STEPS;
        long down0 = (x2 - x1) * STEPS;
        long down1 = (x0 - x2) * STEPS;
        long down2 = (x1 - x0) * STEPS;
        double dz1 = z1 - z0;
        double dz2 = z2 - z0;
        double depthRight = (dz1 * (y2 - y0) - dz2 * (y1 - y0)) / area;
        double depthDown = (dz2 * (x1 - x0) - dz1 * (x2 - x0)) / area;
        double rowDepth = z0 + depthRight * (startX - x0) + depthDown * (startY - y0);
        double stepRight = depthRight * STEPS;
        double stepDown = depthDown * STEPS;
        for (int y = top; y <= bottom; y++) {
            long e0 = row0;
            long e1 = row1;
            long e2 = row2;
            boolean entered = false;
            int i = y * width + left;
            for (int x = left; x <= right; x++, i++) {
                if ((e0 | e1 | e2) >= 0) {
                    entered = true;
                    float z = (float) (rowDepth + stepRight * (x - left));
                    if (z < depth[i]) {
                        depth[i] = z;
                        argb[i] = colour;
                    }
                } else if (entered) {
                    break;
                }
                e0 += right0;
                e1 += right1;
                e2 += right2;
            }
            row0 += down0;
            row1 += down1;
            row2 += down2;
            rowDepth += stepDown;
        }
    }

    /** 1 for an edge whose own points belong to the neighbour, 0 for a top or left one (y down, inside to the right). */
    private static int givenAway(long dx, long dy) {
        boolean topOrLeft = dy < 0 || (dy == 0 && dx > 0);
        return topOrLeft ? 0 : 1;
    }

    private static long steps(float px) {
        return Math.round((double) px * (SAMPLES * STEPS));
    }

    private static long sampleAtOrAfter(long steps) {
        return -Math.floorDiv(HALF_STEP - steps, STEPS);
    }

    private static long sampleAtOrBefore(long steps) {
        return Math.floorDiv(steps - HALF_STEP, STEPS);
    }

    /** The first row or column of samples whose centre is at or after {@code px}. */
    static int firstSample(double px) {
        return (int) Math.ceil(px * SAMPLES - 0.5);
    }
}
