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
    public void addBelow(Immersion sum) {
        if (thicknessMm > 0) {
            Walk walk = new Walk(tree, thicknessMm, sum);
            walk.run(thicknessMm);
            walk.prisms.finish();
        }
    }

    /** Adds to the sums what of the prisms lies below the plane. */
    private static final class Walk extends PlaneWalk {

        final PrismCut prisms;
        private final double thickness;
        private final Immersion s;
        /** The reference, seen from the tree's origin. */
        private final double rx;

        private final double ry;
        private final double rz;

        Walk(MeshTree tree, double thickness, Immersion s) {
            super(tree, s.plane().up(), tree.cutHeight(s.plane()), s.grainMm());
            this.thickness = thickness;
            this.s = s;
            this.prisms = new PrismCut(s, thickness);
            rx = s.rx - tree.originX;
            ry = s.ry - tree.originY;
            rz = s.rz - tree.originZ;
        }

        @Override
        void node(int at, double share, double perMm) {
            double[] nodes = tree.nodes;
            double area = nodes[at + MeshTree.AREA];
            double half = 0.5 * thickness;
            int m = at + MeshTree.AREA_M;
            int n = at + MeshTree.S;
            // First moment over the thickness, about the reference.
            double x = nodes[m] - area * rx - half * nodes[n];
            double y = nodes[m + 1] - area * ry - half * nodes[n + 1];
            double z = nodes[m + 2] - area * rz - half * nodes[n + 2];
            double volume = thickness * share;
            s.volume += volume * area;
            s.mx += volume * x;
            s.my += volume * y;
            s.mz += volume * z;
            if (perMm > 0 && area > 0) {
                double u = (s.ux * x + s.uy * y + s.uz * z) / area;
                double v = (s.vx * x + s.vy * y + s.vz * z) / area;
                s.waterplanePatch(thickness * area * perMm, u, v);
            }
        }

        /** A flat part, as a deck is, whose prisms are all crossed between their faces. */
        @Override
        boolean crossed(int at, double lowest, double highest) {
            double[] nodes = tree.nodes;
            int n = at + MeshTree.NORMAL;
            int half = at + MeshTree.NORMAL_HALF;
            if (nodes[half] != 0 || nodes[half + 1] != 0 || nodes[half + 2] != 0) {
                return false;
            }
            double rise = -thickness * (nx * nodes[n] + ny * nodes[n + 1] + nz * nodes[n + 2]);
            boolean isBetweenFaces = rise < 0 ? lowest >= 0 && highest + rise < 0 : highest < 0 && lowest + rise >= 0;
            if (isBetweenFaces) {
                prisms.crossedPatch(nodes, at, rx, ry, rz);
            }
            return isBetweenFaces;
        }

        @Override
        boolean isOnePatch(int at) {
            return true;
        }

        @Override
        void leaf(int firstTriangle, int endTriangle) {
            int[] corners = tree.corners;
            double[] faces = tree.faces;
            for (int t = firstTriangle; t < endTriangle; t++) {
                int a = corners[3 * t];
                int b = corners[3 * t + 1];
                int c = corners[3 * t + 2];
                double aw = height(a);
                double bw = height(b);
                double cw = height(c);
                int face = 4 * t;
                double rise = -thickness * (nx * faces[face] + ny * faces[face + 1] + nz * faces[face + 2]);
                // How much lower and higher than the outer face the inner one lies.
                double lower = 0.5 * (rise - Math.abs(rise));
                double higher = 0.5 * (rise + Math.abs(rise));
                if (!TriangleCut.anyBelow(aw + lower, bw + lower, cw + lower)) {
                    continue;
                }
                if (TriangleCut.allBelow(aw + higher, bw + higher, cw + higher)) {
                    wholePrism(a, b, c, face);
                } else if (faces[face + 3] > 0) {
                    prisms.begin(faces[face], faces[face + 1], faces[face + 2], faces[face + 3]);
                    prisms.corner(0, ahead(a), port(a), aw);
                    prisms.corner(3, ahead(b), port(b), bw);
                    prisms.corner(6, ahead(c), port(c), cw);
                    boolean isBetweenFaces = rise < 0
                            ? !TriangleCut.anyBelow(aw, bw, cw) && TriangleCut.allBelow(aw + rise, bw + rise, cw + rise)
                            : TriangleCut.allBelow(aw, bw, cw)
                                    && !TriangleCut.anyBelow(aw + rise, bw + rise, cw + rise);
                    if (isBetweenFaces) {
                        prisms.crossedTriangle();
                    } else {
                        prisms.cut();
                    }
                }
            }
        }

        private void wholePrism(int a, int b, int c, int face) {
            double[] xyz = tree.xyz;
            double[] faces = tree.faces;
            double volume = thickness * faces[face + 3];
            double half = 0.5 * thickness;
            s.volume += volume;
            s.mx += volume * ((xyz[a] + xyz[b] + xyz[c]) * (1.0 / 3) - rx - half * faces[face]);
            s.my += volume * ((xyz[a + 1] + xyz[b + 1] + xyz[c + 1]) * (1.0 / 3) - ry - half * faces[face + 1]);
            s.mz += volume * ((xyz[a + 2] + xyz[b + 2] + xyz[c + 2]) * (1.0 / 3) - rz - half * faces[face + 2]);
        }

        private double ahead(int vertex) {
            double[] xyz = tree.xyz;
            return s.ux * (xyz[vertex] - rx) + s.uy * (xyz[vertex + 1] - ry) + s.uz * (xyz[vertex + 2] - rz);
        }

        private double port(int vertex) {
            double[] xyz = tree.xyz;
            return s.vx * (xyz[vertex] - rx) + s.vy * (xyz[vertex + 1] - ry) + s.vz * (xyz[vertex + 2] - rz);
        }
    }
}
