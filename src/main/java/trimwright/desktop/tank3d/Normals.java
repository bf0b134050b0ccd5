package trimwright.desktop.tank3d;

import java.util.Arrays;
import trimwright.mesh.TriangleMesh;

/**
 * The directions in which a surface faces at the corners of its triangles, averaged over the neighbours that bend little.
 *
 * @param vectors unit vectors, three numbers each
 * @param indices for every corner of the mesh, which vector it has
 */
record Normals(float[] vectors, int[] indices) {

    static Normals of(TriangleMesh mesh, double leastCosine) {
        int[] corners = mesh.corners();
        int triangles = corners.length / 3;
        float[] faces = faces(mesh);
        float[] sums = new float[3 * mesh.vertexCount()];
        for (int i = 0; i < corners.length; i++) {
            for (int k = 0; k < 3; k++) {
                sums[3 * corners[i] + k] += faces[i / 3 * 3 + k];
            }
        }
        normalise(sums);
        normalise(faces);
        // A corner takes the vertex's mean where its own face agrees with it, and otherwise the face's own direction.
        int vertices = mesh.vertexCount();
        float[] vectors = Arrays.copyOf(sums, sums.length + faces.length);
        System.arraycopy(faces, 0, vectors, sums.length, faces.length);
        int[] indices = new int[corners.length];
        for (int t = 0; t < triangles; t++) {
            for (int k = 0; k < 3; k++) {
                int v = corners[3 * t + k];
                double cosine = sums[3 * v] * faces[3 * t]
                        + sums[3 * v + 1] * faces[3 * t + 1]
                        + sums[3 * v + 2] * faces[3 * t + 2];
                indices[3 * t + k] = cosine >= leastCosine ? v : vertices + t;
            }
        }
        return new Normals(vectors, indices);
    }

    /** Face by face, as long as twice its area. */
    private static float[] faces(TriangleMesh mesh) {
        double[] p = mesh.xyz();
        int[] corners = mesh.corners();
        float[] normals = new float[corners.length];
        for (int t = 0; t < corners.length; t += 3) {
            int a = 3 * corners[t];
            int b = 3 * corners[t + 1];
            int c = 3 * corners[t + 2];
            double ux = p[b] - p[a];
            double uy = p[b + 1] - p[a + 1];
            double uz = p[b + 2] - p[a + 2];
            double vx = p[c] - p[a];
            double vy = p[c + 1] - p[a + 1];
            double vz = p[c + 2] - p[a + 2];
            normals[t] = (float) (uy * vz - uz * vy);
            normals[t + 1] = (float) (uz * vx - ux * vz);
            normals[t + 2] = (float) (ux * vy - uy * vx);
        }
        return normals;
    }

    private static void normalise(float[] vectors) {
        for (int i = 0; i < vectors.length; i += 3) {
            double length = Math.sqrt(
                    vectors[i] * vectors[i] + vectors[i + 1] * vectors[i + 1] + vectors[i + 2] * vectors[i + 2]);
            if (length > 0) {
                vectors[i] /= (float) length;
                vectors[i + 1] /= (float) length;
                vectors[i + 2] /= (float) length;
            } else {
                vectors[i + 2] = 1;
            }
        }
    }
}
