package trimwright.mesh;

/**
 * The triangles of a mesh sorted into columns along one coordinate axis, so that the few that stand above or below a
 * point are found at once.
 */
final class Columns {

    /** Triangles that share a column, as a mean to aim at. */
    private static final int PER_COLUMN = 4;

    private final double[] xyz;
    private final int[] corners;
    private final double tolerance;
    private final int u;
    private final int v;
    private final BoxGrid grid;

    /** What lies above and below a point, told triangle by triangle. */
    interface Visitor {

        /**
         * A triangle whose plane the column's axis pierces within the triangle.
         *
         * @param sense 1 where its outside looks along the axis, −1 where it looks back
         * @param distance signed distance of the point from the triangle's plane, positive on its outside
         */
        void crosses(int triangle, int sense, double distance);

        /** A triangle on which the point lies, or in whose plane it lies so nearly that its side cannot be told. */
        void touches(int triangle);
    }

    /**
     * @param axis along which the columns run: 0, 1 or 2
     * @param tolerance distance below which a point counts as lying on a triangle
     */
    Columns(TriangleMesh mesh, int axis, double tolerance) {
        xyz = mesh.xyz();
        corners = mesh.corners();
        this.tolerance = tolerance;
        u = (axis + 1) % 3;
        v = (axis + 2) % 3;
        Bounds bounds = mesh.bounds();
        double[] size = {bounds.sizeX(), bounds.sizeY(), bounds.sizeZ()};
        double cell = Math.sqrt(size[u] * size[v] * PER_COLUMN / mesh.triangleCount());
        grid = new BoxGrid(mesh.triangleCount(), this::write, bounds, cell, axis);
    }

    /** The axis along which columns hold the fewest triangles: that of the shortest side. */
    static int shortestAxis(Bounds bounds) {
        double shortest = bounds.shortestSide();
        return bounds.sizeZ() == shortest ? 2 : bounds.sizeY() == shortest ? 1 : 0;
    }

    /** Shows all triangles that lie above, below or at the point; how many were looked at for it. */
    int visit(double x, double y, double z, Visitor visitor) {
        double pu = u == 0 ? x : u == 1 ? y : z;
        double pv = v == 0 ? x : v == 1 ? y : z;
        int cell = grid.cell(x, y, z);
        for (int i = grid.start(cell); i < grid.start(cell + 1); i++) {
            int t = grid.entry(i);
            int a = 3 * corners[3 * t];
            int b = 3 * corners[3 * t + 1];
            int c = 3 * corners[3 * t + 2];
            int sense = edge(pu, pv, a, b) + edge(pu, pv, b, c) + edge(pu, pv, c, a);
            boolean near = isInBox(x, 0, a, b, c) && isInBox(y, 1, a, b, c) && isInBox(z, 2, a, b, c);
            if (sense == 0 && !near) {
                continue;
            }
            double distance = distance(x, y, z, a, b, c);
            if (Math.abs(distance) <= tolerance) {
                visitor.touches(t);
            } else if (sense != 0) {
                visitor.crosses(t, sense, distance);
            }
        }
        return grid.start(cell + 1) - grid.start(cell);
    }

    /**
     * Whether the ray along +u from the point crosses the edge: 1 upward in v, −1 downward, 0 not. A point on the edge counts
     * as shifted a little along +u, whichever edge it is and whoever asks, so that no point falls between two triangles.
     */
    private int edge(double pu, double pv, int from, int to) {
        boolean fromBelow = xyz[from + v] <= pv;
        if (fromBelow == xyz[to + v] <= pv) {
            return 0;
        }
        int low = fromBelow ? from : to;
        int high = fromBelow ? to : from;
        double turn = (xyz[high + u] - xyz[low + u]) * (pv - xyz[low + v])
                - (xyz[high + v] - xyz[low + v]) * (pu - xyz[low + u]);
        return turn <= 0 ? 0 : fromBelow ? 1 : -1;
    }

    private boolean isInBox(double p, int k, int a, int b, int c) {
        double least = Math.min(xyz[a + k], Math.min(xyz[b + k], xyz[c + k]));
        double most = Math.max(xyz[a + k], Math.max(xyz[b + k], xyz[c + k]));
        return p >= least - tolerance && p <= most + tolerance;
    }

    private double distance(double x, double y, double z, int a, int b, int c) {
        double ux = xyz[b] - xyz[a];
        double uy = xyz[b + 1] - xyz[a + 1];
        double uz = xyz[b + 2] - xyz[a + 2];
        double vx = xyz[c] - xyz[a];
        double vy = xyz[c + 1] - xyz[a + 1];
        double vz = xyz[c + 2] - xyz[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        if (length == 0) {
            // A triangle without area is a line: whatever lies in its box is as good as on it.
            return 0;
        }
        return (nx * (x - xyz[a]) + ny * (y - xyz[a + 1]) + nz * (z - xyz[a + 2])) / length;
    }

    /** The box of a triangle, wider by the tolerance. */
    private void write(int t, double[] box) {
        for (int k = 0; k < 3; k++) {
            double a = xyz[3 * corners[3 * t] + k];
            double b = xyz[3 * corners[3 * t + 1] + k];
            double c = xyz[3 * corners[3 * t + 2] + k];
            box[k] = Math.min(a, Math.min(b, c)) - tolerance;
            box[3 + k] = Math.max(a, Math.max(b, c)) + tolerance;
        }
    }
}
