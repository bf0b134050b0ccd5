package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * How often a surface winds round a point: the solid angle under which it is seen, over 4π. 1 inside a closed surface, 0 outside; a surface
 * with holes gives something between, which still tells inside from outside at one half (generalised winding number: Jacobson, Kavan,
 * Sorkine-Hornung, ACM Trans. Graph. 32, 2013).
 *
 * <p>A node of the tree that is small against its distance counts as one facet, S · r / |r|³ with its vector area S at its centroid; what
 * that leaves out is of the order of the square of size over distance, far from the half that decides.
 */
final class WindingNumber {

    /** Distance, in half diagonals of a node's box, from which the node counts as one facet. */
    private static final double FAR = 4;

    private WindingNumber() {}

    static double of(MeshTree t, Vector3D point) {
        double px = point.getX() - t.originX;
        double py = point.getY() - t.originY;
        double pz = point.getZ() - t.originZ;
        double[] nodes = t.nodes;
        double solidAngle = 0;
        int node = 0;
        while (node < t.skip.length) {
            int at = node * MeshTree.STRIDE;
            double dx = nodes[at] - px;
            double dy = nodes[at + 1] - py;
            double dz = nodes[at + 2] - pz;
            double size = nodes[at + 3] * nodes[at + 3] + nodes[at + 4] * nodes[at + 4] + nodes[at + 5] * nodes[at + 5];
            if (dx * dx + dy * dy + dz * dz > FAR * FAR * size && nodes[at + MeshTree.AREA] > 0) {
                solidAngle += ofFacet(nodes, at, px, py, pz);
                node = t.skip[node];
            } else {
                if (t.first[node] >= 0) {
                    solidAngle += ofLeaf(t, t.first[node], px, py, pz);
                }
                node++;
            }
        }
        return solidAngle / (4 * Math.PI);
    }

    private static double ofFacet(double[] nodes, int at, double px, double py, double pz) {
        double area = nodes[at + MeshTree.AREA];
        double x = nodes[at + MeshTree.AREA_M] / area - px;
        double y = nodes[at + MeshTree.AREA_M + 1] / area - py;
        double z = nodes[at + MeshTree.AREA_M + 2] / area - pz;
        double r = Math.sqrt(x * x + y * y + z * z);
        int s = at + MeshTree.S;
        return (nodes[s] * x + nodes[s + 1] * y + nodes[s + 2] * z) / (r * r * r);
    }

    private static double ofLeaf(MeshTree t, int firstTriangle, double px, double py, double pz) {
        double[] xyz = t.xyz;
        double sum = 0;
        int end = 3 * t.leafEnd(firstTriangle);
        for (int k = 3 * firstTriangle; k < end; k += 3) {
            int a = t.corners[k];
            int b = t.corners[k + 1];
            int c = t.corners[k + 2];
            sum += ofTriangle(
                    xyz[a] - px,
                    xyz[a + 1] - py,
                    xyz[a + 2] - pz,
                    xyz[b] - px,
                    xyz[b + 1] - py,
                    xyz[b + 2] - pz,
                    xyz[c] - px,
                    xyz[c + 1] - py,
                    xyz[c + 2] - pz);
        }
        return sum;
    }

    /** Solid angle of a triangle seen from the origin (Van Oosterom and Strackee, IEEE Trans. Biomed. Eng. 30, 1983). */
    private static double ofTriangle(
            double ax, double ay, double az, double bx, double by, double bz, double cx, double cy, double cz) {
        double a = Math.sqrt(ax * ax + ay * ay + az * az);
        double b = Math.sqrt(bx * bx + by * by + bz * bz);
        double c = Math.sqrt(cx * cx + cy * cy + cz * cz);
        double six = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
        double below = a * b * c
                + (ax * bx + ay * by + az * bz) * c
                + (bx * cx + by * cy + bz * cz) * a
                + (cx * ax + cy * ay + cz * az) * b;
        return 2 * Math.atan2(six, below);
    }
}
