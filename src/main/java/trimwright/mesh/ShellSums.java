package trimwright.mesh;

import java.util.Arrays;

/**
 * What is summed over the triangles of each shell. Neighbouring triangles mostly belong to one shell, so that sums run in
 * local variables and are written down only where the shell changes.
 */
final class ShellSums {

    /** Doubles per shell: area, volume, area × centroid (3), least corner (3), greatest corner (3). */
    static final int STRIDE = 11;

    static final int VOLUME = 1;
    static final int MOMENT = 2;
    static final int BOX = 5;

    /** All about the centre of the mesh, but for the corners of the boxes; shell after shell, the first for triangles of none. */
    final double[] values;

    final int[] triangles;
    final int[] firstTriangle;

    private double area;
    private double volume;
    private double momentX;
    private double momentY;
    private double momentZ;
    private double minX = Double.POSITIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double minZ = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;
    private double maxZ = Double.NEGATIVE_INFINITY;

    /** @param shellOf for each triangle a number from 0 to {@code shells} */
    ShellSums(TriangleMesh mesh, int[] shellOf, int shells) {
        values = new double[STRIDE * (shells + 1)];
        triangles = new int[shells + 1];
        firstTriangle = new int[shells + 1];
        Arrays.fill(firstTriangle, -1);
        for (int i = BOX; i < values.length; i += STRIDE) {
            Arrays.fill(values, i, i + 3, Double.POSITIVE_INFINITY);
            Arrays.fill(values, i + 3, i + 6, Double.NEGATIVE_INFINITY);
        }
        int start = 0;
        while (start < shellOf.length) {
            int shell = shellOf[start];
            int end = start;
            while (end < shellOf.length && shellOf[end] == shell) {
                end++;
            }
            addRun(mesh, start, end);
            writeDown(shell);
            triangles[shell] += end - start;
            if (firstTriangle[shell] < 0) {
                firstTriangle[shell] = start;
            }
            start = end;
        }
    }

    private void addRun(TriangleMesh mesh, int start, int end) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        double originX = mesh.bounds().centreX();
        double originY = mesh.bounds().centreY();
        double originZ = mesh.bounds().centreZ();
        double runArea = 0;
        double runVolume = 0;
        double runX = 0;
        double runY = 0;
        double runZ = 0;
        for (int t = start; t < end; t++) {
            int a = 3 * corners[3 * t];
            int b = 3 * corners[3 * t + 1];
            int c = 3 * corners[3 * t + 2];
            double ax = xyz[a] - originX;
            double ay = xyz[a + 1] - originY;
            double az = xyz[a + 2] - originZ;
            double ux = xyz[b] - xyz[a];
            double uy = xyz[b + 1] - xyz[a + 1];
            double uz = xyz[b + 2] - xyz[a + 2];
            double vx = xyz[c] - xyz[a];
            double vy = xyz[c + 1] - xyz[a + 1];
            double vz = xyz[c + 2] - xyz[a + 2];
            double nx = uy * vz - uz * vy;
            double ny = uz * vx - ux * vz;
            double nz = ux * vy - uy * vx;
            double triangle = 0.5 * Math.sqrt(nx * nx + ny * ny + nz * nz);
            runArea += triangle;
            // a · (b × c) = a · ((b − a) × (c − a))
            runVolume += ax * nx + ay * ny + az * nz;
            runX += triangle * (ax + (ux + vx) / 3);
            runY += triangle * (ay + (uy + vy) / 3);
            runZ += triangle * (az + (uz + vz) / 3);
            grow(xyz[a], xyz[a + 1], xyz[a + 2]);
            grow(xyz[b], xyz[b + 1], xyz[b + 2]);
            grow(xyz[c], xyz[c + 1], xyz[c + 2]);
        }
        area = runArea;
        volume = runVolume / 6;
        momentX = runX;
        momentY = runY;
        momentZ = runZ;
    }

    private void grow(double x, double y, double z) {
        if (x < minX) {
            minX = x;
        }
        if (x > maxX) {
            maxX = x;
        }
        if (y < minY) {
            minY = y;
        }
        if (y > maxY) {
            maxY = y;
        }
        if (z < minZ) {
            minZ = z;
        }
        if (z > maxZ) {
            maxZ = z;
        }
    }

    private void writeDown(int shell) {
        int i = STRIDE * shell;
        values[i] += area;
        values[i + VOLUME] += volume;
        values[i + MOMENT] += momentX;
        values[i + MOMENT + 1] += momentY;
        values[i + MOMENT + 2] += momentZ;
        int box = i + BOX;
        values[box] = Math.min(values[box], minX);
        values[box + 1] = Math.min(values[box + 1], minY);
        values[box + 2] = Math.min(values[box + 2], minZ);
        values[box + 3] = Math.max(values[box + 3], maxX);
        values[box + 4] = Math.max(values[box + 4], maxY);
        values[box + 5] = Math.max(values[box + 5], maxZ);
        minX = Double.POSITIVE_INFINITY;
        minY = Double.POSITIVE_INFINITY;
        minZ = Double.POSITIVE_INFINITY;
        maxX = Double.NEGATIVE_INFINITY;
        maxY = Double.NEGATIVE_INFINITY;
        maxZ = Double.NEGATIVE_INFINITY;
    }
}
