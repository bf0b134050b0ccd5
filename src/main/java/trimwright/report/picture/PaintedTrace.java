package trimwright.report.picture;

import com.jme3.math.Vector3f;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;
import trimwright.report.raster.Layer;
import trimwright.report.raster.View;

/** A line where a plane cuts a surface: the painted line in dashes that keep their length in the picture, or the water's edge without gaps. */
final class PaintedTrace {

    /** Lengths of a dash, and of a dash with its gap, in widths of the line. */
    private static final double DASH = 3.5;

    private static final double PERIOD = 5.5;
    /** Nearer than anything of the boat, px. */
    private static final double ABOVE_ALL = 1e5;

    private final View view;
    private final WaterPlane paint;
    private final double widthPx;
    private final double dashPx;
    private final double periodPx;

    /** Unit vector in the picture along which dashes are counted: the way the line runs across it. */
    private final double runX;

    private final double runY;

    /** How much nearer to the viewer the line counts, px. */
    private final double nearerPx;

    private PaintedTrace(
            View view,
            WaterPlane paint,
            double widthPx,
            double dashPx,
            double periodPx,
            double runX,
            double runY,
            double nearerPx) {
        this.view = view;
        this.paint = paint;
        this.widthPx = widthPx;
        this.dashPx = dashPx;
        this.periodPx = periodPx;
        this.runX = runX;
        this.runY = runY;
        this.nearerPx = nearerPx;
    }

    /** Seen edge-on, or nearly so. */
    static PaintedTrace fromTheSide(View view, WaterPlane paint, Vector3D right, Vector3D up, double widthPx) {
        // In the picture the line runs square to the paint's own up direction, with y counted down.
        double upX = paint.up().dotProduct(right);
        double upY = -paint.up().dotProduct(up);
        double length = Math.hypot(upX, upY);
        return new PaintedTrace(
                view,
                paint,
                widthPx,
                DASH * widthPx,
                PERIOD * widthPx,
                length > 0 ? -upY / length : 1,
                length > 0 ? upX / length : 0,
                2 * widthPx);
    }

    /** Seen from above, where it runs round the boat and nothing that overhangs hides it. */
    static PaintedTrace fromAbove(View view, WaterPlane plane, double widthPx, boolean dashed) {
        // Counted along a slant, dashes neither fill nor miss the sides or the ends.
        return new PaintedTrace(
                view,
                plane,
                widthPx,
                (dashed ? DASH : PERIOD) * widthPx,
                PERIOD * widthPx,
                0.8,
                0.6,
                dashed ? ABOVE_ALL : 2 * ABOVE_ALL);
    }

    /** Draws the line on a mesh that is already in the layer. */
    void draw(TriangleMesh mesh, Layer layer, int colour) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        for (int t = 0; t < corners.length; t += 3) {
            int a = 3 * corners[t];
            int b = 3 * corners[t + 1];
            int c = 3 * corners[t + 2];
            double above = height(xyz, a);
            double bAbove = height(xyz, b);
            double cAbove = height(xyz, c);
            boolean low = above < 0;
            boolean bLow = bAbove < 0;
            boolean cLow = cAbove < 0;
            if (low == bLow && bLow == cLow) {
                continue;
            }
            // The corner that is alone on its side of the paint has both cut edges.
            if (bLow == cLow) {
                segment(layer, crossing(xyz, a, b, above, bAbove), crossing(xyz, a, c, above, cAbove), colour);
            } else if (low == cLow) {
                segment(layer, crossing(xyz, b, a, bAbove, above), crossing(xyz, b, c, bAbove, cAbove), colour);
            } else {
                segment(layer, crossing(xyz, c, a, cAbove, above), crossing(xyz, c, b, cAbove, bAbove), colour);
            }
        }
    }

    private double height(double[] xyz, int at) {
        Vector3D up = paint.up();
        return up.getX() * xyz[at] + up.getY() * xyz[at + 1] + up.getZ() * xyz[at + 2] - paint.heightMm();
    }

    private static Vector3D crossing(double[] xyz, int from, int to, double fromAbove, double toAbove) {
        double share = fromAbove / (fromAbove - toAbove);
        return new Vector3D(
                xyz[from] + share * (xyz[to] - xyz[from]),
                xyz[from + 1] + share * (xyz[to + 1] - xyz[from + 1]),
                xyz[from + 2] + share * (xyz[to + 2] - xyz[from + 2]));
    }

    /** Draws what of a segment falls on dashes. */
    private void segment(Layer layer, Vector3D fromMm, Vector3D toMm, int colour) {
        Vector3f from = view.project(fromMm);
        Vector3f to = view.project(toMm);
        double start = runX * from.x + runY * from.y;
        double end = runX * to.x + runY * to.y;
        if (start > end) {
            Vector3f swapped = from;
            from = to;
            to = swapped;
            double s = start;
            start = end;
            end = s;
        }
        for (double dash = Math.floor(start / periodPx) * periodPx; dash <= end; dash += periodPx) {
            double first = Math.max(start, dash);
            double last = Math.min(end, dash + dashPx);
            if (first > last) {
                continue;
            }
            double length = end - start;
            double s0 = length > 0 ? (first - start) / length : 0;
            double s1 = length > 0 ? (last - start) / length : 1;
            layer.line(between(from, to, s0), between(from, to, s1), widthPx, colour, nearerPx);
        }
    }

    private static Vector3f between(Vector3f from, Vector3f to, double share) {
        return new Vector3f().interpolateLocal(from, to, (float) share);
    }
}
