package trimwright.mesh;

/** An axis-parallel box, in the unit of the mesh (mm after import). */
public record Bounds(double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {

    /** The smallest box around points stored as x, y, z, x, y, z, …; all NaN when there are none. */
    public static Bounds of(double[] xyz) {
        if (xyz.length == 0) {
            return new Bounds(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        double minX = xyz[0];
        double minY = xyz[1];
        double minZ = xyz[2];
        double maxX = minX;
        double maxY = minY;
        double maxZ = minZ;
        for (int i = 3; i < xyz.length; i += 3) {
            minX = Math.min(minX, xyz[i]);
            maxX = Math.max(maxX, xyz[i]);
            minY = Math.min(minY, xyz[i + 1]);
            maxY = Math.max(maxY, xyz[i + 1]);
            minZ = Math.min(minZ, xyz[i + 2]);
            maxZ = Math.max(maxZ, xyz[i + 2]);
        }
        return new Bounds(minX, minY, minZ, maxX, maxY, maxZ);
    }

    public double sizeX() {
        return maxX - minX;
    }

    public double sizeY() {
        return maxY - minY;
    }

    public double sizeZ() {
        return maxZ - minZ;
    }

    public double centreX() {
        return 0.5 * (minX + maxX);
    }

    public double centreY() {
        return 0.5 * (minY + maxY);
    }

    public double centreZ() {
        return 0.5 * (minZ + maxZ);
    }

    /** Length of the longest of the three sides. */
    public double longestSide() {
        return Math.max(sizeX(), Math.max(sizeY(), sizeZ()));
    }

    /** Length of the shortest of the three sides. */
    public double shortestSide() {
        return Math.min(sizeX(), Math.min(sizeY(), sizeZ()));
    }

    /** The largest coordinate in it, of either sign. */
    public double farthestCoordinate() {
        double x = Math.max(Math.abs(minX), Math.abs(maxX));
        double y = Math.max(Math.abs(minY), Math.abs(maxY));
        double z = Math.max(Math.abs(minZ), Math.abs(maxZ));
        return Math.max(x, Math.max(y, z));
    }

    /** Length of the diagonal. */
    public double diagonal() {
        return Math.sqrt(sizeX() * sizeX() + sizeY() * sizeY() + sizeZ() * sizeZ());
    }

    /** The smallest box around this one and the other. */
    public Bounds union(Bounds other) {
        return new Bounds(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.min(minZ, other.minZ),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY),
                Math.max(maxZ, other.maxZ));
    }

    /** The box that this one and the other share; where they share none, a size is not positive. */
    public Bounds intersection(Bounds other) {
        return new Bounds(
                Math.max(minX, other.minX),
                Math.max(minY, other.minY),
                Math.max(minZ, other.minZ),
                Math.min(maxX, other.maxX),
                Math.min(maxY, other.maxY),
                Math.min(maxZ, other.maxZ));
    }

    /** Whether a point lies in the box or on its surface. */
    public boolean holds(double x, double y, double z) {
        return x >= minX && x <= maxX && y >= minY && y <= maxY && z >= minZ && z <= maxZ;
    }
}
