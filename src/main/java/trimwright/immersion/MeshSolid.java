package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/**
 * The solid that a closed, outward oriented mesh encloses. Closedness is the caller's to check
 * ({@link trimwright.mesh.Soundness}); an open mesh gives sums without meaning.
 *
 * @param tree the mesh
 */
public record MeshSolid(MeshTree tree) implements Displacer {

    public static MeshSolid of(TriangleMesh mesh) {
        return new MeshSolid(MeshTree.of(mesh));
    }

    @Override
    public double volumeMm3() {
        return tree.signedVolumeMm3();
    }

    @Override
    public Vector3D centroidMm() {
        double d = tree.nodes[MeshTree.D];
        if (d == 0) {
            return Vector3D.ZERO;
        }
        return new Vector3D(
                tree.originX + tree.nodes[MeshTree.F] / d,
                tree.originY + tree.nodes[MeshTree.F + 1] / d,
                tree.originZ + tree.nodes[MeshTree.F + 2] / d);
    }

    @Override
    public double topMm(Vector3D up) {
        return tree.topMm(up);
    }

    @Override
    public Vector3D highestMm(Vector3D up) {
        return tree.highestMm(up);
    }

    @Override
    public double outlineMm(WaterPlane plane) {
        return tree.outlineMm(plane);
    }

    @Override
    public void addBelow(Immersion s) {
        MeshTree t = tree;
        double[] nodes = t.nodes;
        // The reference and the plane's height seen from the tree's origin.
        double rx = s.rx - t.originX;
        double ry = s.ry - t.originY;
        double rz = s.rz - t.originZ;
        double h = t.cutHeight(s.plane());
        double absX = Math.abs(s.nx);
        double absY = Math.abs(s.ny);
        double absZ = Math.abs(s.nz);
        int node = 0;
        int end = t.skip.length;
        while (node < end) {
            int at = node * MeshTree.STRIDE;
            double height = s.nx * nodes[at] + s.ny * nodes[at + 1] + s.nz * nodes[at + 2] - h;
            double reach = absX * nodes[at + 3] + absY * nodes[at + 4] + absZ * nodes[at + 5] + t.margin;
            if (height > reach) {
                node = t.skip[node];
            } else if (height < -reach) {
                addWholeNode(s, nodes, at, rx, ry, rz);
                node = t.skip[node];
            } else {
                if (t.first[node] >= 0) {
                    addLeaf(s, t, t.first[node], rx, ry, rz, h);
                }
                node++;
            }
        }
    }

    /** V(r) = D − r·S/3 and M(r) = F + D r/4 − Tᵀr/3 − (r·S) r/12, then the moment taken about r itself. */
    private static void addWholeNode(Immersion s, double[] nodes, int at, double rx, double ry, double rz) {
        double rs = rx * nodes[at + MeshTree.S] + ry * nodes[at + MeshTree.S + 1] + rz * nodes[at + MeshTree.S + 2];
        double d = nodes[at + MeshTree.D];
        double volume = d - rs / 3;
        double own = d / 4 - rs / 12 - volume;
        s.volume += volume;
        int f = at + MeshTree.F;
        int m = at + MeshTree.T;
        s.mx += nodes[f] + own * rx - (nodes[m] * rx + nodes[m + 3] * ry + nodes[m + 6] * rz) / 3;
        s.my += nodes[f + 1] + own * ry - (nodes[m + 1] * rx + nodes[m + 4] * ry + nodes[m + 7] * rz) / 3;
        s.mz += nodes[f + 2] + own * rz - (nodes[m + 2] * rx + nodes[m + 5] * ry + nodes[m + 8] * rz) / 3;
    }

    private static void addLeaf(Immersion s, MeshTree t, int firstTriangle, double rx, double ry, double rz, double h) {
        double[] xyz = t.xyz;
        int end = 3 * t.leafEnd(firstTriangle);
        for (int k = 3 * firstTriangle; k < end; k += 3) {
            int a = t.corners[k];
            int b = t.corners[k + 1];
            int c = t.corners[k + 2];
            double da = s.nx * xyz[a] + s.ny * xyz[a + 1] + s.nz * xyz[a + 2] - h;
            double db = s.nx * xyz[b] + s.ny * xyz[b + 1] + s.nz * xyz[b + 2] - h;
            double dc = s.nx * xyz[c] + s.ny * xyz[c + 1] + s.nz * xyz[c + 2] - h;
            TriangleCut.any(
                    s,
                    xyz[a] - rx,
                    xyz[a + 1] - ry,
                    xyz[a + 2] - rz,
                    da,
                    xyz[b] - rx,
                    xyz[b + 1] - ry,
                    xyz[b + 2] - rz,
                    db,
                    xyz[c] - rx,
                    xyz[c + 1] - ry,
                    xyz[c + 2] - rz,
                    dc);
        }
    }
}
