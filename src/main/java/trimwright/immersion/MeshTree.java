package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.Bounds;
import trimwright.mesh.TriangleMesh;

/**
 * A mesh in the order of its place in space, under a tree of boxes. Each node keeps the sums of its triangles about the mesh's own centre,
 * so that a node wholly below the water costs a handful of products and only the triangles that the plane cuts are
 * touched: about √n of n (docs/statics.md, section 1).
 *
 * <p>Nodes lie in preorder in one array; a node that needs no look inside is passed over by its skip pointer. Immutable.
 */
public final class MeshTree {

    /** Doubles per node; the offsets below name them. */
    static final int STRIDE = 38;

    static final int BOX_X = 0;
    static final int BOX_Y = 1;
    static final int BOX_Z = 2;
    static final int HALF_X = 3;
    static final int HALF_Y = 4;
    static final int HALF_Z = 5;
    /** Middle of the box around the unit normals: three doubles. */
    static final int NORMAL = 6;
    /** Half the size of that box: three doubles. */
    static final int NORMAL_HALF = 9;
    /** S = Σ s, s = ½ (b − a) × (c − a): three doubles. */
    static final int S = 12;
    /** D = Σ d, d = a · (b × c) / 6. */
    static final int D = 15;
    /** F = Σ d g, g = (a + b + c) / 4: three doubles. */
    static final int F = 16;
    /** T = Σ s ⊗ g, row by row: nine doubles. */
    static final int T = 19;
    /** Σ |s|. */
    static final int AREA = 28;
    /** Σ |s| m, m the triangle's centroid: three doubles. */
    static final int AREA_M = 29;
    /** Second moments of the area, ∫ p pᵀ dA: xx, xy, xz, yy, yz, zz. */
    static final int AREA_MM = 32;

    private static final int LEAF = 16;

    final double[] nodes;
    /** Per node: index of the node that follows when this one is passed over. */
    final int[] skip;
    /** Per node: first triangle of a leaf; -1 for an inner node. */
    final int[] first;
    /**
     * Coordinates about {@link #originX}…, and corners as offsets into them, both in the tree's order. A leaf's vertices lie side by side and belong to it
     * alone; the first is the first corner of its first triangle.
     */
    final double[] xyz;

    final int[] corners;
    /** Per triangle in the tree's order: its unit normal, zero where it has no area, and its area. */
    final double[] faces;

    final double originX;
    final double originY;
    final double originZ;
    private final double lowering;
    /** A node nearer to the plane than this is looked into, since its box is rounded at every level of the tree. */
    final double margin;

    private final Bounds bounds;

    MeshTree(
            double[] nodes,
            int[] skip,
            int[] first,
            double[] xyz,
            int[] corners,
            double[] faces,
            double originX,
            double originY,
            double originZ,
            Bounds bounds) {
        this.nodes = nodes;
        this.skip = skip;
        this.first = first;
        this.xyz = xyz;
        this.corners = corners;
        this.faces = faces;
        this.originX = originX;
        this.originY = originY;
        this.originZ = originZ;
        this.bounds = bounds;
        this.lowering = TriangleCut.loweringMm(bounds);
        this.margin = 5 * lowering;
    }

    /**
     * Builds the tree.
     *
     * @param mesh at least one triangle
     * @throws IllegalArgumentException for a mesh without triangles
     */
    public static MeshTree of(TriangleMesh mesh) {
        return MeshTreeBuilder.build(mesh);
    }

    /** The triangle that stands last in the leaf which begins at {@code firstTriangle}, plus one. */
    int leafEnd(int firstTriangle) {
        return Math.min(firstTriangle + LEAF, triangleCount());
    }

    /** Where the vertices begin of the leaf whose first triangle this is, or end if it is the number of triangles. */
    int verticesFrom(int firstTriangle) {
        return firstTriangle < triangleCount() ? corners[3 * firstTriangle] : xyz.length;
    }

    /** Height of the plane, seen from the tree's origin. */
    double height(WaterPlane plane) {
        Vector3D up = plane.up();
        return plane.heightMm() - up.getX() * originX - up.getY() * originY - up.getZ() * originZ;
    }

    /** Height at which the plane cuts, seen from the tree's origin: a little lower ({@link TriangleCut#loweringMm}). */
    double cutHeight(WaterPlane plane) {
        return height(plane) - lowering;
    }

    static int leafSize() {
        return LEAF;
    }

    public int triangleCount() {
        return corners.length / 3;
    }

    public Bounds bounds() {
        return bounds;
    }

    /** Area of all triangles, mm². */
    public double areaMm2() {
        return nodes[AREA];
    }

    /** Centroid of the surface. */
    public Vector3D areaCentroidMm() {
        double a = nodes[AREA];
        return new Vector3D(
                originX + nodes[AREA_M] / a, originY + nodes[AREA_M + 1] / a, originZ + nodes[AREA_M + 2] / a);
    }

    /** Volume enclosed, mm³: negative when inside out, without meaning when open. */
    public double signedVolumeMm3() {
        return nodes[D];
    }

    /** Area of the surface strictly below the plane, mm². */
    public double areaBelowMm2(WaterPlane plane) {
        return AreaBelow.of(this, plane);
    }

    /** Length of the line along which the plane cuts the surface, mm. */
    public double outlineMm(WaterPlane plane) {
        return OutlineLength.of(this, plane);
    }

    /** How often the surface winds round a point: about 1 inside a closed surface, 0 outside ({@link WindingNumber}). */
    public double windingNumber(Vector3D point) {
        return WindingNumber.of(this, point);
    }

    /** Height of the highest vertex along the unit vector {@code up}. */
    public double topMm(Vector3D up) {
        return up.dotProduct(highestMm(up));
    }

    /** The highest vertex along the unit vector {@code up}; the first in the tree's order where several are. */
    public Vector3D highestMm(Vector3D up) {
        double nx = up.getX();
        double ny = up.getY();
        double nz = up.getZ();
        double best = Double.NEGATIVE_INFINITY;
        int bestVertex = 0;
        int node = 0;
        while (node < skip.length) {
            int at = node * STRIDE;
            double reach = Math.abs(nx) * nodes[at + HALF_X]
                    + Math.abs(ny) * nodes[at + HALF_Y]
                    + Math.abs(nz) * nodes[at + HALF_Z];
            double highest = nx * nodes[at + BOX_X] + ny * nodes[at + BOX_Y] + nz * nodes[at + BOX_Z] + reach;
            if (highest <= best) {
                node = skip[node];
                continue;
            }
            if (first[node] >= 0) {
                int end = 3 * leafEnd(first[node]);
                for (int k = 3 * first[node]; k < end; k++) {
                    int v = corners[k];
                    double height = nx * xyz[v] + ny * xyz[v + 1] + nz * xyz[v + 2];
                    if (height > best) {
                        best = height;
                        bestVertex = v;
                    }
                }
            }
            node++;
        }
        return new Vector3D(originX + xyz[bestVertex], originY + xyz[bestVertex + 1], originZ + xyz[bestVertex + 2]);
    }
}
