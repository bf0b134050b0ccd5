package trimwright.report.picture;

import com.jme3.math.Vector3f;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;
import trimwright.report.raster.Layer;
import trimwright.report.raster.View;

/** The painted line where it runs on a surface, drawn in dashes that keep their length in the picture. */
final class PaintedTrace {

    private final View view;
    private final WaterPlane paint;
    private final double widthPx;
    private final double dashPx;
    private final double periodPx;

    /** Unit vector in the picture along which dashes are counted: the way the line runs across it. */
    private final double runX;

    private final double runY;

    PaintedTrace(View view, WaterPlane paint, Vector3D right, Vector3D up, double widthPx) {
        this.view = view;
        this.paint = paint;
        this.widthPx = widthPx;
        this.dashPx = 3.5 * widthPx;
        this.periodPx = 5.5 * widthPx;
        // In the picture the line runs square to the paint's own up direction, with y counted down.
        double upX = paint.up().dotProduct(right);
        double upY = -paint.up().dotProduct(up);
        double length = Math.hypot(upX, upY);
        runX = length > 0 ? -upY / length : 1;
        runY = length > 0 ? upX / length : 0;
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
            layer.line(between(from, to, s0), between(from, to, s1), widthPx, colour, 2 * widthPx);
        }
    }

    private static Vector3f between(Vector3f from, Vector3f to, double share) {
        return new Vector3f().interpolateLocal(from, to, (float) share);
    }
}
