package trimwright.report.raster;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.BoxShape;
import trimwright.boat.MeshShape;
import trimwright.boat.Shape;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Meshes for drawing only: round bodies are given by facets, so nothing may be measured on them. */
public final class Bodies {

    /** Facets around a bar; at 96 the outline is off by 0.05 % of the radius, less than a pixel in any picture. */
    private static final int AROUND = 96;

    private static final int FROM_TIP_TO_SHOULDER = 16;

    private Bodies() {}

    /** The surface of a shape, mm in the boat's frame. */
    public static TriangleMesh mesh(Shape shape) {
        if (shape instanceof MeshShape given) {
            return given.mesh();
        }
        if (shape instanceof BoxShape box) {
            Vector3D a = box.fromMm();
            Vector3D b = box.toMm();
            return Solids.box(a.getX(), a.getY(), a.getZ(), b.getX(), b.getY(), b.getZ());
        }
        BarShape bar = (BarShape) shape;
        double radius = bar.diameterMm() / 2;
        Vector3D axis = bar.toMm().subtract(bar.fromMm()).normalize();
        return bar.ends() == BarShape.Ends.FLAT
                ? turned(bar.fromMm(), axis, new double[] {0, 0, bar.lengthMm(), bar.lengthMm()}, new double[] {
                    0, radius, radius, 0
                })
                : round(bar.fromMm(), axis, bar.lengthMm(), radius);
    }

    /** A ball. */
    public static TriangleMesh ball(Vector3D centreMm, double radiusMm) {
        Vector3D tip = new Vector3D(1, centreMm, -radiusMm, Vector3D.PLUS_I);
        return round(tip, Vector3D.PLUS_I, 2 * radiusMm, radiusMm);
    }

    /** An eight-sided marker that stands for a thing whose size is not known. */
    public static TriangleMesh marker(Vector3D centreMm, double radiusMm) {
        double x = centreMm.getX();
        double y = centreMm.getY();
        double z = centreMm.getZ();
        double r = radiusMm;
        return TriangleMesh.owning(
                new double[] {x + r, y, z, x - r, y, z, x, y + r, z, x, y - r, z, x, y, z + r, x, y, z - r},
                new int[] {0, 2, 4, 2, 1, 4, 1, 3, 4, 3, 0, 4, 2, 0, 5, 1, 2, 5, 3, 1, 5, 0, 3, 5});
    }

    private static TriangleMesh round(Vector3D tip, Vector3D axis, double length, double radius) {
        int half = FROM_TIP_TO_SHOULDER + 1;
        double[] along = new double[2 * half];
        double[] out = new double[2 * half];
        for (int i = 0; i < half; i++) {
            double angle = Math.PI / 2 * i / FROM_TIP_TO_SHOULDER;
            along[i] = radius * (1 - Math.cos(angle));
            out[i] = radius * Math.sin(angle);
            along[2 * half - 1 - i] = length - along[i];
            out[2 * half - 1 - i] = out[i];
        }
        return turned(tip, axis, along, out);
    }

    /** The surface that a line of points makes when it turns about an axis. */
    private static TriangleMesh turned(Vector3D from, Vector3D axis, double[] along, double[] out) {
        Vector3D side = axis.orthogonal();
        Vector3D other = axis.crossProduct(side);
        double[] xyz = new double[3 * along.length * AROUND];
        for (int ring = 0; ring < along.length; ring++) {
            for (int k = 0; k < AROUND; k++) {
                double angle = 2 * Math.PI * k / AROUND;
                Vector3D p = new Vector3D(
                        1,
                        from,
                        along[ring],
                        axis,
                        out[ring] * Math.cos(angle),
                        side,
                        out[ring] * Math.sin(angle),
                        other);
                int at = 3 * (ring * AROUND + k);
                xyz[at] = p.getX();
                xyz[at + 1] = p.getY();
                xyz[at + 2] = p.getZ();
            }
        }
        int[] corners = new int[6 * (along.length - 1) * AROUND];
        int next = 0;
        for (int ring = 0; ring + 1 < along.length; ring++) {
            for (int k = 0; k < AROUND; k++) {
                int a = ring * AROUND + k;
                int b = ring * AROUND + (k + 1) % AROUND;
                int c = a + AROUND;
                int d = b + AROUND;
                corners[next++] = a;
                corners[next++] = b;
                corners[next++] = c;
                corners[next++] = b;
                corners[next++] = d;
                corners[next++] = c;
            }
        }
        return TriangleMesh.owning(xyz, corners);
    }
}
