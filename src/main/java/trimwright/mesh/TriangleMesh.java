package trimwright.mesh;

import java.util.List;

/**
 * A triangle mesh: vertices as x, y, z, x, y, z, … and triangles as three vertex indices each, counter-clockwise seen
 * from outside. The mesh owns its arrays and never changes them; kernels read them directly and must not write.
 *
 * <p>Nothing is promised about the surface: it may be open, inside out or in several shells. {@link Soundness} tells.
 */
public final class TriangleMesh {

    private final double[] xyz;
    private final int[] corners;
    private final Bounds bounds;

    private TriangleMesh(double[] xyz, int[] corners) {
        this.xyz = xyz;
        this.corners = corners;
        this.bounds = Bounds.of(xyz);
    }

    /**
     * Takes over both arrays; the caller must not touch them afterwards.
     *
     * @param xyz finite coordinates, three per vertex
     * @param corners vertex indices, three per triangle
     * @throws IllegalArgumentException when a length is not a multiple of three or an index points nowhere
     */
    public static TriangleMesh owning(double[] xyz, int[] corners) {
        if (xyz.length % 3 != 0 || corners.length % 3 != 0) {
            throw new IllegalArgumentException("three coordinates a vertex and three corners a triangle are needed");
        }
        int vertices = xyz.length / 3;
        for (int corner : corners) {
            if (corner < 0 || corner >= vertices) {
                throw new IllegalArgumentException("corner " + corner + " of " + vertices + " vertices");
            }
        }
        return new TriangleMesh(xyz, corners);
    }

    public int vertexCount() {
        return xyz.length / 3;
    }

    public int triangleCount() {
        return corners.length / 3;
    }

    /** The coordinates themselves, for kernels: read only. */
    public double[] xyz() {
        return xyz;
    }

    /** The corners themselves, for kernels: read only. */
    public int[] corners() {
        return corners;
    }

    public Bounds bounds() {
        return bounds;
    }

    /** Sum of the triangle areas, in the square of the mesh's unit. */
    public double area() {
        double sum = 0;
        for (int t = 0; t < corners.length; t += 3) {
            sum += Triangles.area(xyz, 3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]);
        }
        return sum;
    }

    /**
     * Volume enclosed, in the cube of the mesh's unit: negative when the mesh is inside out, without meaning when it is
     * not closed. Summed about the centre of the bounds, so that a mesh far from the origin loses nothing.
     */
    public double signedVolume() {
        double cx = bounds.centreX();
        double cy = bounds.centreY();
        double cz = bounds.centreZ();
        double sum = 0;
        for (int t = 0; t < corners.length; t += 3) {
            int a = 3 * corners[t];
            int b = 3 * corners[t + 1];
            int c = 3 * corners[t + 2];
            sum += Triangles.tripleProduct(
                    xyz[a] - cx,
                    xyz[a + 1] - cy,
                    xyz[a + 2] - cz,
                    xyz[b] - cx,
                    xyz[b + 1] - cy,
                    xyz[b + 2] - cz,
                    xyz[c] - cx,
                    xyz[c + 1] - cy,
                    xyz[c + 2] - cz);
        }
        return sum / 6;
    }

    /** The same surface turned inside out. */
    public TriangleMesh flipped() {
        return new TriangleMesh(xyz, swapped(corners));
    }

    /** The mirror image at the plane y = 0, with its outside still outside. */
    public TriangleMesh mirroredY() {
        double[] mirrored = xyz.clone();
        for (int i = 1; i < mirrored.length; i += 3) {
            mirrored[i] = -mirrored[i];
        }
        return new TriangleMesh(mirrored, swapped(corners));
    }

    /** The triangles of several meshes one after the other, with equal points merged. */
    public static TriangleMesh joined(List<TriangleMesh> meshes) {
        int triangles = meshes.stream().mapToInt(TriangleMesh::triangleCount).sum();
        int vertices = meshes.stream().mapToInt(TriangleMesh::vertexCount).sum();
        VertexMerger merger = new VertexMerger(vertices);
        int[] joined = new int[3 * triangles];
        int next = 0;
        for (TriangleMesh mesh : meshes) {
            for (int corner : mesh.corners) {
                joined[next++] = merger.add(mesh.xyz[3 * corner], mesh.xyz[3 * corner + 1], mesh.xyz[3 * corner + 2]);
            }
        }
        return new TriangleMesh(merger.toArray(), joined);
    }

    /**
     * The triangles for which {@code keep} is set, with the vertices they use, both in their old order.
     *
     * @param keep one flag per triangle
     */
    public TriangleMesh only(boolean[] keep) {
        int[] renumbered = new int[vertexCount()];
        int triangles = 0;
        for (int t = 0; t < keep.length; t++) {
            if (keep[t]) {
                triangles++;
                renumbered[corners[3 * t]] = 1;
                renumbered[corners[3 * t + 1]] = 1;
                renumbered[corners[3 * t + 2]] = 1;
            }
        }
        int vertices = 0;
        for (int v = 0; v < renumbered.length; v++) {
            if (renumbered[v] == 1) {
                renumbered[v] = vertices++;
            }
        }
        double[] keptXyz = new double[3 * vertices];
        int[] keptCorners = new int[3 * triangles];
        int next = 0;
        for (int t = 0; t < keep.length; t++) {
            if (!keep[t]) {
                continue;
            }
            for (int k = 0; k < 3; k++) {
                int old = corners[3 * t + k];
                int now = renumbered[old];
                keptCorners[next++] = now;
                System.arraycopy(xyz, 3 * old, keptXyz, 3 * now, 3);
            }
        }
        return new TriangleMesh(keptXyz, keptCorners);
    }

    private static int[] swapped(int[] corners) {
        int[] result = corners.clone();
        for (int t = 0; t < result.length; t += 3) {
            int second = result[t + 1];
            result[t + 1] = result[t + 2];
            result[t + 2] = second;
        }
        return result;
    }
}
