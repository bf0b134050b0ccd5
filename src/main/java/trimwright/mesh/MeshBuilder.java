package trimwright.mesh;

import java.util.Arrays;
import trimwright.finding.Code;
import trimwright.finding.Place;

/** Gathers listed vertices and the triangles between them, and merges the vertices that the triangles use. */
final class MeshBuilder {

    private double[] listed = new double[48];
    private int listedCount;
    private final IntList corners = new IntList(16);

    void addVertex(double x, double y, double z) {
        if (3 * listedCount >= listed.length) {
            listed = Arrays.copyOf(listed, 3 * Growth.next(listedCount));
        }
        listed[3 * listedCount] = x;
        listed[3 * listedCount + 1] = y;
        listed[3 * listedCount + 2] = z;
        listedCount++;
    }

    int vertexCount() {
        return listedCount;
    }

    /** The vertices as listed so far, followed by room; read only. */
    double[] xyz() {
        return listed;
    }

    /** Where the corners of triangles go, three vertex numbers each. */
    IntList corners() {
        return corners;
    }

    int triangleCount() {
        return corners.size() / 3;
    }

    /**
     * Leaves out vertices that no triangle uses where there are more vertices than corners, so that copies of this mesh cost no more than
     * their triangles.
     */
    void dropUnusedVertices() {
        if (listedCount <= corners.size()) {
            return;
        }
        int[] renumbered = new int[listedCount];
        Arrays.fill(renumbered, -1);
        double[] used = new double[3 * corners.size()];
        int usedCount = 0;
        for (int i = 0; i < corners.size(); i++) {
            int v = corners.get(i);
            if (renumbered[v] < 0) {
                renumbered[v] = usedCount;
                System.arraycopy(listed, 3 * v, used, 3 * usedCount, 3);
                usedCount++;
            }
            corners.set(i, renumbered[v]);
        }
        listed = used;
        listedCount = usedCount;
    }

    /** Gives up where there are more triangles than can be handled. */
    void checkSize(Problems problems, Place place) {
        if (triangleCount() > MeshFiles.MOST_TRIANGLES) {
            problems.add(
                    Code.MESH_TOO_MANY_TRIANGLES,
                    place,
                    "found",
                    (long) triangleCount(),
                    "allowed",
                    MeshFiles.MOST_TRIANGLES);
            problems.throwIfAny();
        }
    }

    /** The mesh, its vertices in the order in which triangles first name them; all corners must name listed vertices. */
    TriangleMesh build() {
        VertexMerger merger = new VertexMerger(listedCount);
        int[] merged = new int[listedCount];
        Arrays.fill(merged, -1);
        int[] result = corners.toArray();
        for (int i = 0; i < result.length; i++) {
            int v = result[i];
            if (merged[v] < 0) {
                merged[v] = merger.add(listed[3 * v], listed[3 * v + 1], listed[3 * v + 2]);
            }
            result[i] = merged[v];
        }
        return TriangleMesh.owning(merger.toArray(), result);
    }
}
