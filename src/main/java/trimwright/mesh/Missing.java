package trimwright.mesh;

import java.util.ArrayList;
import java.util.List;

/**
 * What a mesh lacks of enclosing a volume, and within what bounds the volume lies where openings are all that is wrong. A lid is taken as flat, a
 * fan about the middle of its border; then as a dome, inward or outward, of two thirds of its area times its height. The height is the area over π times the
 * farthest corner from the middle: over a round opening half a ball, over a long one some two thirds of its width.
 */
final class Missing {

    private final TriangleMesh mesh;
    private final HalfEdges edges;
    private final List<OpenLoops.Loop> loops;
    private double volume;
    private double bulge;

    Missing(TriangleMesh mesh) {
        this.mesh = mesh;
        edges = HalfEdges.of(mesh, SoundnessCheck.withVertexTwice(mesh));
        loops = OpenLoops.of(mesh, edges);
    }

    /** The values of a finding, name by name; those that do not apply are left out. */
    List<Object> values() {
        List<Object> values = new ArrayList<>();
        if (!loops.isEmpty()) {
            values.addAll(List.of(
                    "openings",
                    loops.size(),
                    "borderMm",
                    loops.stream().mapToDouble(OpenLoops.Loop::length).sum()));
        }
        if (edges.disagreeing.length > 0) {
            values.addAll(List.of("turned", edges.disagreeing.length));
        }
        int many = 0;
        for (int i = 0; i < edges.many.length; i += 1 + edges.many[i]) {
            many++;
        }
        if (many > 0) {
            values.addAll(List.of("many", many));
        }
        if (many == 0
                && edges.disagreeing.length == 0
                && !loops.isEmpty()
                && loops.stream().allMatch(OpenLoops.Loop::isRing)) {
            sum();
            values.addAll(List.of("flatMm3", volume, "leastMm3", volume - bulge, "mostMm3", volume + bulge));
        }
        return values;
    }

    private void sum() {
        Bounds bounds = mesh.bounds();
        double[] o = {bounds.centreX(), bounds.centreY(), bounds.centreZ()};
        for (int t = 0; t < mesh.triangleCount(); t++) {
            volume += tetrahedron(o, point(3 * t), point(3 * t + 1), point(3 * t + 2));
        }
        for (OpenLoops.Loop loop : loops) {
            addLid(o, loop.halfEdges());
        }
    }

    private void addLid(double[] o, int[] halfEdges) {
        double[] middle = new double[3];
        for (int h : halfEdges) {
            double[] p = point(h);
            for (int k = 0; k < 3; k++) {
                middle[k] += p[k] / halfEdges.length;
            }
        }
        double area = 0;
        double farthest = 0;
        for (int h : halfEdges) {
            double[] a = point(h);
            double[] b = point(HalfEdges.next(h));
            // The lid runs against the triangles around it.
            volume += tetrahedron(o, b, a, middle);
            area += area(a, b, middle);
            farthest = Math.max(farthest, Math.hypot(Math.hypot(a[0] - middle[0], a[1] - middle[1]), a[2] - middle[2]));
        }
        double height = farthest == 0 ? 0 : area / (Math.PI * farthest);
        bulge += 2.0 / 3 * area * height;
    }

    private double[] point(int corner) {
        int v = 3 * mesh.corners()[corner];
        return new double[] {mesh.xyz()[v], mesh.xyz()[v + 1], mesh.xyz()[v + 2]};
    }

    private static double tetrahedron(double[] o, double[] a, double[] b, double[] c) {
        return Triangles.tripleProduct(
                        a[0] - o[0],
                        a[1] - o[1],
                        a[2] - o[2],
                        b[0] - o[0],
                        b[1] - o[1],
                        b[2] - o[2],
                        c[0] - o[0],
                        c[1] - o[1],
                        c[2] - o[2])
                / 6;
    }

    private static double area(double[] a, double[] b, double[] c) {
        return Triangles.area(new double[] {a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]}, 0, 3, 6);
    }
}
