package trimwright.report.raster;

import com.jme3.math.Matrix4f;
import com.jme3.math.Vector3f;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/**
 * A parallel view of the boat: from mm in the boat's frame to pixels, x to the right, y down, and depth away from the viewer in
 * pixels of the same scale, so that shapes keep their proportions in all three.
 *
 * <p>Points are moved to the view's own centre in double before they become float, so that a boat far from her origin loses
 * nothing.
 */
public final class View {

    private final Vector3D centreMm;
    private final double pxPerMm;
    private final Matrix4f toPixels;

    private View(Vector3D centreMm, double pxPerMm, Matrix4f toPixels) {
        this.centreMm = centreMm;
        this.pxPerMm = pxPerMm;
        this.toPixels = toPixels;
    }

    /**
     * A view that looks along {@code up} × {@code right}.
     *
     * @param centreMm the point that lands on ({@code xPx}, {@code yPx})
     * @param right unit vector that points to the right in the picture
     * @param up unit vector that points up in the picture, square to {@code right}
     * @param pxPerMm scale, positive
     */
    public static View of(Vector3D centreMm, Vector3D right, Vector3D up, double pxPerMm, double xPx, double yPx) {
        Vector3f across = single(right.scalarMultiply(pxPerMm));
        Vector3f down = single(up.scalarMultiply(-pxPerMm));
        Vector3f away = single(up.crossProduct(right).scalarMultiply(pxPerMm));
        return new View(
                centreMm,
                pxPerMm,
                new Matrix4f(
                        across.x,
                        across.y,
                        across.z,
                        (float) xPx,
                        down.x,
                        down.y,
                        down.z,
                        (float) yPx,
                        away.x,
                        away.y,
                        away.z,
                        0,
                        0,
                        0,
                        0,
                        1));
    }

    public double pxPerMm() {
        return pxPerMm;
    }

    /** Where a point lands: x and y in pixels, z its depth. */
    public Vector3f project(Vector3D pointMm) {
        return toPixels.mult(single(pointMm.subtract(centreMm)));
    }

    /** Where the vertices of a mesh land: x, y, depth, x, y, depth, … */
    public float[] project(TriangleMesh mesh) {
        double[] xyz = mesh.xyz();
        float[] pixels = new float[xyz.length];
        double cx = centreMm.getX();
        double cy = centreMm.getY();
        double cz = centreMm.getZ();
        Matrix4f m = toPixels;
        for (int i = 0; i < xyz.length; i += 3) {
            float x = (float) (xyz[i] - cx);
            float y = (float) (xyz[i + 1] - cy);
            float z = (float) (xyz[i + 2] - cz);
            pixels[i] = m.m00 * x + m.m01 * y + m.m02 * z + m.m03;
            pixels[i + 1] = m.m10 * x + m.m11 * y + m.m12 * z + m.m13;
            pixels[i + 2] = m.m20 * x + m.m21 * y + m.m22 * z + m.m23;
        }
        return pixels;
    }

    private static Vector3f single(Vector3D v) {
        return new Vector3f((float) v.getX(), (float) v.getY(), (float) v.getZ());
    }
}
