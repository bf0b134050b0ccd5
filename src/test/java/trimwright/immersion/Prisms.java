package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.TestMeshes;
import trimwright.mesh.TriangleMesh;

/** A shell written out as a mesh: the closed prism of every triangle. */
final class Prisms {

    private static final int[] FACES = {
        0, 1, 2, 3, 5, 4, 0, 3, 1, 1, 3, 4, 1, 4, 2, 2, 4, 5, 2, 5, 0, 0, 5, 3,
    };

    private Prisms() {}

    static TriangleMesh of(TriangleMesh mesh, double thickness) {
        int n = mesh.triangleCount();
        double[] xyz = new double[18 * n];
        int[] corners = new int[FACES.length * n];
        for (int t = 0; t < n; t++) {
            Vector3D[] p = new Vector3D[3];
            for (int k = 0; k < 3; k++) {
                p[k] = TestMeshes.vertex(mesh, mesh.corners()[3 * t + k]);
            }
            Vector3D normal = p[1].subtract(p[0]).crossProduct(p[2].subtract(p[0]));
            Vector3D inward = normal.scalarMultiply(-thickness / normal.getNorm());
            for (int k = 0; k < 6; k++) {
                Vector3D q = k < 3 ? p[k] : p[k - 3].add(inward);
                xyz[18 * t + 3 * k] = q.getX();
                xyz[18 * t + 3 * k + 1] = q.getY();
                xyz[18 * t + 3 * k + 2] = q.getZ();
            }
            for (int k = 0; k < FACES.length; k++) {
                corners[FACES.length * t + k] = 6 * t + FACES[k];
            }
        }
        return TriangleMesh.owning(xyz, corners);
    }
}
