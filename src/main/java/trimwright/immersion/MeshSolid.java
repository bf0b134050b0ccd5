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
    public void addBelow(Immersion sum) {
        new Walk(tree, sum).run(0);
    }

    /** Share of its area by which the area vector of a patch must be long: 1 for a flat one. */
    private static final double FLAT = 0.9;

    /** Adds to the sums what the surface encloses below the plane. */
    private static final class Walk extends PlaneWalk {

        private final Immersion s;
        /** The reference, seen from the tree's origin. */
        private final double rx;

        private final double ry;
        private final double rz;

        Walk(MeshTree tree, Immersion s) {
            super(tree, s.plane().up(), tree.cutHeight(s.plane()), isThickerThan(s.grainMm(), tree) ? s.grainMm() : 0);
            this.s = s;
            rx = s.rx - tree.originX;
            ry = s.ry - tree.originY;
            rz = s.rz - tree.originZ;
        }

        /** A body that is all walls is the small difference of its two sides, of which a rough answer would leave nothing. */
        private static boolean isThickerThan(double grain, MeshTree tree) {
            return 2 * Math.abs(tree.signedVolumeMm3()) > grain * tree.areaMm2();
        }

        /** V(r) = D − r·S/3 and M(r) = F + D r/4 − Tᵀr/3 − (r·S) r/12, then the moment taken about r itself. */
        @Override
        void node(int at, double share, double perMm) {
            double[] nodes = tree.nodes;
            int n = at + MeshTree.S;
            double rs = rx * nodes[n] + ry * nodes[n + 1] + rz * nodes[n + 2];
            double d = nodes[at + MeshTree.D];
            double volume = d - rs / 3;
            double own = d / 4 - rs / 12 - volume;
            int f = at + MeshTree.F;
            int m = at + MeshTree.T;
            s.volume += share * volume;
            s.mx += share * (nodes[f] + own * rx - (nodes[m] * rx + nodes[m + 3] * ry + nodes[m + 6] * rz) / 3);
            s.my += share * (nodes[f + 1] + own * ry - (nodes[m + 1] * rx + nodes[m + 4] * ry + nodes[m + 7] * rz) / 3);
            s.mz += share * (nodes[f + 2] + own * rz - (nodes[m + 2] * rx + nodes[m + 5] * ry + nodes[m + 8] * rz) / 3);
            if (perMm > 0 && nodes[at + MeshTree.AREA] > 0) {
                outline(at, perMm);
            }
        }

        /**
         * A patch of the surface crosses the plane along up × S over its height, where the steepest line through its centroid
         * meets the plane.
         */
        private void outline(int at, double perMm) {
            double[] nodes = tree.nodes;
            double area = nodes[at + MeshTree.AREA];
            int n = at + MeshTree.S;
            int m = at + MeshTree.AREA_M;
            double x = nodes[m] / area - rx;
            double y = nodes[m + 1] / area - ry;
            double z = nodes[m + 2] / area - rz;
            double su = s.ux * nodes[n] + s.uy * nodes[n + 1] + s.uz * nodes[n + 2];
            double sv = s.vx * nodes[n] + s.vy * nodes[n + 1] + s.vz * nodes[n + 2];
            double sw = nx * nodes[n] + ny * nodes[n + 1] + nz * nodes[n + 2];
            double level = su * su + sv * sv;
            if (level == 0) {
                return;
            }
            double slide = (nx * x + ny * y + nz * z) * sw / level;
            double u = s.ux * x + s.uy * y + s.uz * z + slide * su;
            double v = s.vx * x + s.vy * y + s.vz * z + slide * sv;
            double half = 0.5 * perMm;
            s.waterline(1, u + half * sv, v - half * su, u - half * sv, v + half * su);
        }

        /** The two sides of a fin, or a sharp corner, are no patch: their area vectors cancel. */
        @Override
        boolean isOnePatch(int at) {
            double[] nodes = tree.nodes;
            int n = at + MeshTree.S;
            double square = nodes[n] * nodes[n] + nodes[n + 1] * nodes[n + 1] + nodes[n + 2] * nodes[n + 2];
            double least = FLAT * nodes[at + MeshTree.AREA];
            return square >= least * least;
        }

        @Override
        void leaf(int firstTriangle, int endTriangle) {
            double[] xyz = tree.xyz;
            int[] corners = tree.corners;
            for (int k = 3 * firstTriangle; k < 3 * endTriangle; k += 3) {
                int a = corners[k];
                int b = corners[k + 1];
                int c = corners[k + 2];
                double da = height(a);
                double db = height(b);
                double dc = height(c);
                if (!TriangleCut.anyBelow(da, db, dc)) {
                    continue;
                }
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
}
