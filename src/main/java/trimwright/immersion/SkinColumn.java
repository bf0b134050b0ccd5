package trimwright.immersion;

/** Where an upright line runs through the material of a thin shell: the prisms that {@link MeshSkin} stands for. */
public final class SkinColumn {

    /** Takes one stretch of the line that lies in the material. */
    public interface Stretch {
        void between(double lowMm, double highMm);
    }

    private SkinColumn() {}

    /**
     * Reports each stretch of the line through (x, y) that lies in a prism and meets a range of heights; stretches may overlap, reach beyond the range, and
     * come in no order.
     *
     * @param thicknessMm of the shell, inward of the surface
     * @param lowMm lower end of the range
     * @param highMm upper end
     */
    public static void through(
            MeshTree tree, double thicknessMm, double xMm, double yMm, double lowMm, double highMm, Stretch stretch) {
        double x = xMm - tree.originX;
        double y = yMm - tree.originY;
        double middle = 0.5 * (lowMm + highMm) - tree.originZ;
        double half = 0.5 * (highMm - lowMm);
        double beyond = thicknessMm + tree.margin;
        int node = 0;
        while (node < tree.skip.length) {
            int at = node * MeshTree.STRIDE;
            if (Math.abs(x - tree.nodes[at]) > tree.nodes[at + 3] + beyond
                    || Math.abs(y - tree.nodes[at + 1]) > tree.nodes[at + 4] + beyond
                    || Math.abs(middle - tree.nodes[at + 2]) > tree.nodes[at + 5] + half + beyond) {
                node = tree.skip[node];
                continue;
            }
            if (tree.first[node] >= 0) {
                int end = 3 * tree.leafEnd(tree.first[node]);
                for (int k = 3 * tree.first[node]; k < end; k += 3) {
                    if (isNear(tree, k, beyond, x, y)) {
                        prism(tree, k, thicknessMm, x, y, stretch);
                    }
                }
            }
            node++;
        }
    }

    /** Whether the line comes near the box around a triangle: most do not, and this is quicker than their prisms. */
    private static boolean isNear(MeshTree tree, int k, double beyond, double x, double y) {
        double[] p = tree.xyz;
        int a = tree.corners[k];
        int b = tree.corners[k + 1];
        int c = tree.corners[k + 2];
        return x >= Math.min(p[a], Math.min(p[b], p[c])) - beyond
                && x <= Math.max(p[a], Math.max(p[b], p[c])) + beyond
                && y >= Math.min(p[a + 1], Math.min(p[b + 1], p[c + 1])) - beyond
                && y <= Math.max(p[a + 1], Math.max(p[b + 1], p[c + 1])) + beyond;
    }

    private static void prism(MeshTree tree, int k, double t, double x, double y, Stretch stretch) {
        double[] p = tree.xyz;
        int a = tree.corners[k];
        int b = tree.corners[k + 1];
        int c = tree.corners[k + 2];
        double ux = p[b] - p[a];
        double uy = p[b + 1] - p[a + 1];
        double uz = p[b + 2] - p[a + 2];
        double vx = p[c] - p[a];
        double vy = p[c + 1] - p[a + 1];
        double vz = p[c + 2] - p[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
        if (size == 0) {
            return;
        }
        nx /= size;
        ny /= size;
        nz /= size;
        Span span = new Span();
        double face = nx * (x - p[a]) + ny * (y - p[a + 1]) - nz * p[a + 2];
        span.atMostZero(face, nz);
        span.atMostZero(-face - t, -nz);
        span.side(p, a, b, nx, ny, nz, x, y);
        span.side(p, b, c, nx, ny, nz, x, y);
        span.side(p, c, a, nx, ny, nz, x, y);
        if (span.high > span.low) {
            stretch.between(span.low + tree.originZ, span.high + tree.originZ);
        }
    }

    /** The part of the line that satisfies every half-space so far. */
    private static final class Span {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;

        /** Keeps where constant + slope · z ≤ 0. */
        void atMostZero(double constant, double slope) {
            if (slope > 0) {
                high = Math.min(high, -constant / slope);
            } else if (slope < 0) {
                low = Math.max(low, -constant / slope);
            } else if (constant > 0) {
                high = Double.NEGATIVE_INFINITY;
            }
        }

        /** Keeps the inner side of the wall that stands on an edge along the normal. */
        void side(double[] p, int a, int b, double nx, double ny, double nz, double x, double y) {
            double ex = p[b] - p[a];
            double ey = p[b + 1] - p[a + 1];
            double ez = p[b + 2] - p[a + 2];
            double ox = ey * nz - ez * ny;
            double oy = ez * nx - ex * nz;
            double oz = ex * ny - ey * nx;
            atMostZero(ox * (x - p[a]) + oy * (y - p[a + 1]) - oz * p[a + 2], oz);
        }
    }
}
