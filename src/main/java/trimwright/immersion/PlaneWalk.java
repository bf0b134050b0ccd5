package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One pass over a tree against a plane: a node wholly below is taken at once, a leaf that the plane may cut is looked into, and everything
 * above is passed over. Where a rough answer will do, a node that the plane cuts is taken at once as well if it is no higher
 * than a grain, as if it were spread evenly over its height.
 */
abstract class PlaneWalk {

    final MeshTree tree;
    /** The unit vector up. */
    final double nx;

    final double ny;
    final double nz;
    /** Height of the plane, seen from the tree's origin. */
    final double h;
    /** Height up to which a node need not be looked into, mm; 0 for an exact answer. */
    private final double grain;
    /** Heights of the vertices of the leaf at hand, where their offsets begin. */
    private final double[] heights = new double[9 * MeshTree.leafSize()];

    private int leafBegin;

    /**
     * @param h height of the plane, seen from the tree's origin
     * @param grain height up to which a node need not be looked into, mm; 0 for an exact answer
     */
    PlaneWalk(MeshTree tree, Vector3D up, double h, double grain) {
        this.tree = tree;
        this.nx = up.getX();
        this.ny = up.getY();
        this.nz = up.getZ();
        this.h = h;
        this.grain = grain;
    }

    /**
     * A node taken as one.
     *
     * @param at where it begins in the tree's nodes
     * @param share how much of it lies below the plane: 1 for all, less only in a rough answer
     * @param perMm by how much that share grows with each mm of height; 0 when it is wholly below
     */
    abstract void node(int at, double share, double perMm);

    /** The triangles of a leaf whose box the plane cuts. */
    abstract void leaf(int firstTriangle, int endTriangle);

    /**
     * Takes a node at once, exactly, though the plane cuts it.
     *
     * @param lowest height above the plane that nothing on its surface lies below
     * @param highest height that nothing lies above
     * @return whether that could be done; otherwise nothing was added
     */
    boolean crossed(int at, double lowest, double highest) {
        return false;
    }

    /** Whether a node may be taken as one in a rough answer, if it is small enough. */
    abstract boolean isOnePatch(int at);

    /** @param inward how thick the body is that lies inward of the surface, mm; 0 for the surface alone or the solid it encloses */
    final void run(double inward) {
        double[] nodes = tree.nodes;
        double absX = Math.abs(nx);
        double absY = Math.abs(ny);
        double absZ = Math.abs(nz);
        int node = 0;
        int end = tree.skip.length;
        while (node < end) {
            int at = node * MeshTree.STRIDE;
            double height = nx * nodes[at] + ny * nodes[at + 1] + nz * nodes[at + 2] - h;
            double reach = absX * nodes[at + 3] + absY * nodes[at + 4] + absZ * nodes[at + 5] + tree.margin;
            if (height > reach + inward) {
                node = tree.skip[node];
                continue;
            }
            if (height < -reach - inward) {
                node(at, 1, 0);
                node = tree.skip[node];
                continue;
            }
            double upward = 0;
            double downward = 0;
            if (inward > 0) {
                // The material lies against the normals, so that a steep side reaches hardly higher or lower than its
                // surface.
                int n = at + MeshTree.NORMAL;
                double middle = nx * nodes[n] + ny * nodes[n + 1] + nz * nodes[n + 2];
                double half = absX * nodes[n + 3] + absY * nodes[n + 4] + absZ * nodes[n + 5];
                upward = Math.max(0, inward * (half - middle));
                downward = Math.max(0, inward * (half + middle));
            }
            if (height > reach + downward) {
                node = tree.skip[node];
            } else if (height < -reach - upward) {
                node(at, 1, 0);
                node = tree.skip[node];
            } else if (2 * reach + downward + upward < grain && isOnePatch(at)) {
                double perMm = 1 / (2 * reach + downward + upward);
                node(at, (reach + downward - height) * perMm, perMm);
                node = tree.skip[node];
            } else if (inward > 0 && crossed(at, height - reach, height + reach)) {
                node = tree.skip[node];
            } else {
                int first = tree.first[node];
                if (first >= 0) {
                    int leafEnd = tree.leafEnd(first);
                    findHeights(first, leafEnd);
                    leaf(first, leafEnd);
                }
                node++;
            }
        }
    }

    private void findHeights(int firstTriangle, int endTriangle) {
        double[] xyz = tree.xyz;
        leafBegin = tree.verticesFrom(firstTriangle);
        int count = tree.verticesFrom(endTriangle) - leafBegin;
        // Adding 0 leaves no -0.
        for (int i = 0; i < count; i += 3) {
            int v = leafBegin + i;
            heights[i] = nx * xyz[v] + ny * xyz[v + 1] + nz * xyz[v + 2] - h + 0.0;
        }
    }

    /** Height above the plane of a vertex of the leaf at hand; the vertex as an offset into the tree's coordinates. */
    final double height(int vertex) {
        return heights[vertex - leafBegin];
    }
}
