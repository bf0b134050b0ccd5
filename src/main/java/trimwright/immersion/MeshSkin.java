package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The material of a thin shell: each triangle of the mesh stands for the prism between it and its copy moved inward by the thickness
 * along its normal. The prism itself is cut, not the face, so that a flat deck goes under over its thickness. The surface may be open.
 *
 * @param tree the outer surface, outward oriented
 * @param thicknessMm thickness of the shell; not negative
 */
public record MeshSkin(MeshTree tree, double thicknessMm) implements Displacer {

    public MeshSkin {
        if (!(thicknessMm >= 0)) {
            throw new IllegalArgumentException("a shell of thickness " + thicknessMm + " mm");
        }
    }

    @Override
    public double volumeMm3() {
        return thicknessMm * tree.areaMm2();
    }

    @Override
    public Vector3D centroidMm() {
        double area = tree.areaMm2();
        Vector3D inward = new Vector3D(tree.nodes[MeshTree.S], tree.nodes[MeshTree.S + 1], tree.nodes[MeshTree.S + 2]);
        return new Vector3D(1, tree.areaCentroidMm(), -thicknessMm / (2 * area), inward);
    }

    /** A bound: the highest vertex of the outer surface and the thickness, since an inner face may stand higher than its outer one. */
    @Override
    public double topMm(Vector3D up) {
        return tree.topMm(up) + thicknessMm;
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
        double rx = s.rx - t.originX;
        double ry = s.ry - t.originY;
        double rz = s.rz - t.originZ;
        double h = t.cutHeight(s.plane());
        double absX = Math.abs(s.nx);
        double absY = Math.abs(s.ny);
        double absZ = Math.abs(s.nz);
        double beyond = thicknessMm + t.margin;
        int node = 0;
        int end = t.skip.length;
        while (node < end) {
            int at = node * MeshTree.STRIDE;
            double height = s.nx * nodes[at] + s.ny * nodes[at + 1] + s.nz * nodes[at + 2] - h;
            double reach = absX * nodes[at + 3] + absY * nodes[at + 4] + absZ * nodes[at + 5] + beyond;
            if (height > reach) {
                node = t.skip[node];
            } else if (height < -reach) {
                addWholeNode(s, nodes, at, rx, ry, rz);
                node = t.skip[node];
            } else {
                if (t.first[node] >= 0) {
                    addLeaf(s, t.first[node], rx, ry, rz, h);
                }
                node++;
            }
        }
    }

    private void addWholeNode(Immersion s, double[] nodes, int at, double rx, double ry, double rz) {
        double area = nodes[at + MeshTree.AREA];
        double half = 0.5 * thicknessMm;
        int m = at + MeshTree.AREA_M;
        int n = at + MeshTree.S;
        s.volume += thicknessMm * area;
        s.mx += thicknessMm * (nodes[m] - area * rx - half * nodes[n]);
        s.my += thicknessMm * (nodes[m + 1] - area * ry - half * nodes[n + 1]);
        s.mz += thicknessMm * (nodes[m + 2] - area * rz - half * nodes[n + 2]);
    }

    private void addLeaf(Immersion s, int firstTriangle, double rx, double ry, double rz, double h) {
        double[] xyz = tree.xyz;
        int end = 3 * tree.leafEnd(firstTriangle);
        for (int k = 3 * firstTriangle; k < end; k += 3) {
            int a = tree.corners[k];
            int b = tree.corners[k + 1];
            int c = tree.corners[k + 2];
            double da = s.nx * xyz[a] + s.ny * xyz[a + 1] + s.nz * xyz[a + 2] - h;
            double db = s.nx * xyz[b] + s.ny * xyz[b + 1] + s.nz * xyz[b + 2] - h;
            double dc = s.nx * xyz[c] + s.ny * xyz[c + 1] + s.nz * xyz[c + 2] - h;
            addPrism(
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

    /** Adds one prism: abc is the outer face, def its copy inward. */
    private void addPrism(
            Immersion s,
            double ax,
            double ay,
            double az,
            double da,
            double bx,
            double by,
            double bz,
            double db,
            double cx,
            double cy,
            double cz,
            double dc) {
        double sx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
        double sy = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
        double sz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
        double twice = Math.sqrt(sx * sx + sy * sy + sz * sz);
        if (twice == 0) {
            return;
        }
        double ox = -thicknessMm * sx / twice;
        double oy = -thicknessMm * sy / twice;
        double oz = -thicknessMm * sz / twice;
        double fall = s.nx * ox + s.ny * oy + s.nz * oz;
        double dd = da + fall;
        double de = db + fall;
        double df = dc + fall;
        if (da >= 0 && db >= 0 && dc >= 0 && dd >= 0 && de >= 0 && df >= 0) {
            return;
        }
        if (da < 0 && db < 0 && dc < 0 && dd < 0 && de < 0 && df < 0) {
            double volume = 0.5 * thicknessMm * twice;
            s.volume += volume;
            s.mx += volume * ((ax + bx + cx) / 3 + ox / 2);
            s.my += volume * ((ay + by + cy) / 3 + oy / 2);
            s.mz += volume * ((az + bz + cz) / 3 + oz / 2);
            return;
        }
        double dx = ax + ox;
        double dy = ay + oy;
        double dz = az + oz;
        double ex = bx + ox;
        double ey = by + oy;
        double ez = bz + oz;
        double fx = cx + ox;
        double fy = cy + oy;
        double fz = cz + oz;
        TriangleCut.any(s, ax, ay, az, da, bx, by, bz, db, cx, cy, cz, dc);
        TriangleCut.any(s, dx, dy, dz, dd, fx, fy, fz, df, ex, ey, ez, de);
        TriangleCut.any(s, ax, ay, az, da, dx, dy, dz, dd, bx, by, bz, db);
        TriangleCut.any(s, bx, by, bz, db, dx, dy, dz, dd, ex, ey, ez, de);
        TriangleCut.any(s, bx, by, bz, db, ex, ey, ez, de, cx, cy, cz, dc);
        TriangleCut.any(s, cx, cy, cz, dc, ex, ey, ez, de, fx, fy, fz, df);
        TriangleCut.any(s, cx, cy, cz, dc, fx, fy, fz, df, ax, ay, az, da);
        TriangleCut.any(s, ax, ay, az, da, fx, fy, fz, df, dx, dy, dz, dd);
    }
}
