package trimwright.mesh;

import java.util.Arrays;

/** Meshes with known volume, area and faults, for tests. */
final class Shapes {

    private Shapes() {}

    /** Both meshes side by side; equal coordinates are not merged. */
    static TriangleMesh together(TriangleMesh... meshes) {
        int vertices = 0;
        int triangles = 0;
        for (TriangleMesh mesh : meshes) {
            vertices += mesh.vertexCount();
            triangles += mesh.triangleCount();
        }
        double[] xyz = new double[3 * vertices];
        int[] corners = new int[3 * triangles];
        int v = 0;
        int c = 0;
        for (TriangleMesh mesh : meshes) {
            System.arraycopy(mesh.xyz(), 0, xyz, 3 * v, mesh.xyz().length);
            for (int corner : mesh.corners()) {
                corners[c++] = v + corner;
            }
            v += mesh.vertexCount();
        }
        return TriangleMesh.owning(xyz, corners);
    }

    /** The same with equal coordinates merged, as a reader would. */
    static TriangleMesh merged(TriangleMesh mesh) {
        MeshBuilder builder = new MeshBuilder();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            builder.addVertex(mesh.xyz()[3 * v], mesh.xyz()[3 * v + 1], mesh.xyz()[3 * v + 2]);
        }
        for (int corner : mesh.corners()) {
            builder.corners().add(corner);
        }
        return builder.build();
    }

    /** A ball of the given radius about a point, from latitudes and longitudes, with single vertices at its poles. */
    static TriangleMesh ball(double x, double y, double z, double radius, int rings, int sides) {
        double[] xyz = new double[3 * ((rings - 1) * sides + 2)];
        IntList corners = new IntList(6 * rings * sides);
        int south = 0;
        int north = xyz.length / 3 - 1;
        point(xyz, south, x, y, z - radius);
        point(xyz, north, x, y, z + radius);
        for (int ring = 1; ring < rings; ring++) {
            double latitude = Math.PI * ring / rings - Math.PI / 2;
            for (int side = 0; side < sides; side++) {
                double longitude = 2 * Math.PI * side / sides;
                point(
                        xyz,
                        1 + (ring - 1) * sides + side,
                        x + radius * Math.cos(latitude) * Math.cos(longitude),
                        y + radius * Math.cos(latitude) * Math.sin(longitude),
                        z + radius * Math.sin(latitude));
            }
        }
        for (int side = 0; side < sides; side++) {
            int next = (side + 1) % sides;
            triangle(corners, south, 1 + next, 1 + side);
            for (int ring = 0; ring < rings - 2; ring++) {
                int a = 1 + ring * sides + side;
                int b = 1 + ring * sides + next;
                triangle(corners, a, b, b + sides);
                triangle(corners, a, b + sides, a + sides);
            }
            int last = 1 + (rings - 2) * sides;
            triangle(corners, last + side, last + next, north);
        }
        return TriangleMesh.owning(xyz, corners.toArray());
    }

    /** The mesh with every vertex moved. */
    static TriangleMesh moved(TriangleMesh mesh, double dx, double dy, double dz) {
        double[] xyz = mesh.xyz().clone();
        for (int i = 0; i < xyz.length; i += 3) {
            xyz[i] += dx;
            xyz[i + 1] += dy;
            xyz[i + 2] += dz;
        }
        return TriangleMesh.owning(xyz, mesh.corners().clone());
    }

    /** The mesh with every vertex multiplied by a factor. */
    static TriangleMesh scaled(TriangleMesh mesh, double factor) {
        double[] xyz = mesh.xyz().clone();
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] *= factor;
        }
        return TriangleMesh.owning(xyz, mesh.corners().clone());
    }

    /** The mesh without some of its triangles, by number from 0. */
    static TriangleMesh without(TriangleMesh mesh, int... triangles) {
        boolean[] keep = new boolean[mesh.triangleCount()];
        Arrays.fill(keep, true);
        for (int t : triangles) {
            keep[t] = false;
        }
        return mesh.only(keep);
    }

    /** The mesh with further triangles between its vertices, three corners each. */
    static TriangleMesh with(TriangleMesh mesh, int... moreCorners) {
        int[] corners = Arrays.copyOf(mesh.corners(), mesh.corners().length + moreCorners.length);
        System.arraycopy(moreCorners, 0, corners, mesh.corners().length, moreCorners.length);
        return TriangleMesh.owning(mesh.xyz().clone(), corners);
    }

    /** The mesh with one triangle turned over. */
    static TriangleMesh turned(TriangleMesh mesh, int triangle) {
        int[] corners = mesh.corners().clone();
        int second = corners[3 * triangle + 1];
        corners[3 * triangle + 1] = corners[3 * triangle + 2];
        corners[3 * triangle + 2] = second;
        return TriangleMesh.owning(mesh.xyz().clone(), corners);
    }

    private static void point(double[] xyz, int vertex, double x, double y, double z) {
        xyz[3 * vertex] = x;
        xyz[3 * vertex + 1] = y;
        xyz[3 * vertex + 2] = z;
    }

    private static void triangle(IntList corners, int a, int b, int c) {
        corners.add(a);
        corners.add(b);
        corners.add(c);
    }
}
