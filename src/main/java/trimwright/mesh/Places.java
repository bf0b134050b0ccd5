package trimwright.mesh;

import trimwright.finding.Place;

/** Places on a mesh. */
final class Places {

    private final double[] xyz;
    private final int[] corners;

    Places(TriangleMesh mesh) {
        xyz = mesh.xyz();
        corners = mesh.corners();
    }

    Place edge(int h) {
        int a = 3 * corners[h];
        int b = 3 * corners[HalfEdges.next(h)];
        return new Place.AtEdge(xyz[a], xyz[a + 1], xyz[a + 2], xyz[b], xyz[b + 1], xyz[b + 2]);
    }

    Place triangle(int t) {
        return new Place.AtTriangle(t, centroid(t, 0), centroid(t, 1), centroid(t, 2));
    }

    Place point(int t) {
        return new Place.AtPoint(centroid(t, 0), centroid(t, 1), centroid(t, 2));
    }

    private double centroid(int t, int k) {
        return (xyz[3 * corners[3 * t] + k] + xyz[3 * corners[3 * t + 1] + k] + xyz[3 * corners[3 * t + 2] + k]) / 3;
    }
}
