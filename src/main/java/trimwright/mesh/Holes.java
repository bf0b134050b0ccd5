package trimwright.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.finding.Code;
import trimwright.finding.Finding;

/** Closes small holes that are as good as flat, with triangles between the vertices of their border. */
final class Holes {

    /**
     * How far a hole's border may leave its mean plane, as a share of the hole's size. The volume is then uncertain by less than
     * this share of the cube of its size.
     */
    static final double PLANAR = 0.05;

    private final TriangleMesh mesh;
    private final double largestHoleMm;
    private final List<OpenLoops.Loop> loops;
    private final EdgeSet edges;
    private final IntList lids = new IntList(16);
    private final List<Finding> closed = new ArrayList<>();

    Holes(TriangleMesh mesh, double largestHoleMm) {
        this.mesh = mesh;
        this.largestHoleMm = largestHoleMm;
        this.loops = OpenLoops.of(mesh, HalfEdges.of(mesh, SoundnessCheck.withVertexTwice(mesh)));
        this.edges = new EdgeSet(loops.isEmpty() ? new int[0] : mesh.corners());
    }

    /**
     * The mesh with lids on its holes.
     *
     * @param changes gets a finding for the first few holes that were closed
     */
    TriangleMesh closed(List<Finding> changes) {
        for (OpenLoops.Loop loop : loops) {
            if (loop.isRing()) {
                close(loop);
            }
        }
        for (int i = 0; i < Math.min(SoundnessCheck.LISTED, closed.size()); i++) {
            Finding hole = closed.get(i);
            List<Object> values = new ArrayList<>(List.of("index", i + 1, "total", closed.size()));
            hole.values().forEach((name, value) -> values.addAll(List.of(name, value)));
            changes.add(Finding.of(hole.code(), hole.place(), values.toArray()));
        }
        int[] corners = Arrays.copyOf(mesh.corners(), mesh.corners().length + lids.size());
        System.arraycopy(lids.toArray(), 0, corners, mesh.corners().length, lids.size());
        return TriangleMesh.owning(mesh.xyz(), corners);
    }

    private void close(OpenLoops.Loop loop) {
        int size = loop.halfEdges().length;
        // The lid runs against the triangles around it.
        int[] ring = new int[size];
        for (int i = 0; i < size; i++) {
            ring[i] = mesh.corners()[loop.halfEdges()[size - 1 - i]];
        }
        double longest = Polygons.longestSide(mesh.xyz(), ring, size);
        if (longest > largestHoleMm || Polygons.gap(mesh.xyz(), ring, size) > PLANAR * longest) {
            return;
        }
        IntList lid = new IntList(3 * size);
        if (!Polygons.triangulate(mesh.xyz(), ring, size, lid) || meetsAnotherEdge(ring, lid)) {
            return;
        }
        for (int i = 0; i < lid.size(); i++) {
            lids.add(lid.get(i));
        }
        double[] normal = Polygons.areaVector(mesh.xyz(), ring, size);
        double twiceArea = Math.sqrt(normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]);
        closed.add(Finding.of(
                Code.REPAIR_HOLE_CLOSED,
                new Places(mesh).edge(loop.place()),
                "edges",
                size,
                "sizeMm",
                longest,
                "areaMm2",
                twiceArea / 2));
    }

    /** Whether a lid has an edge that is already there, other than its border; if not, its edges count from now on. */
    private boolean meetsAnotherEdge(int[] ring, IntList lid) {
        List<int[]> inner = new ArrayList<>();
        for (int h = 0; h < lid.size(); h++) {
            int a = lid.get(h);
            int b = lid.get(HalfEdges.next(h));
            if (a < b && !areNeighbours(ring, a, b)) {
                if (edges.contains(a, b)) {
                    return true;
                }
                inner.add(new int[] {a, b});
            }
        }
        inner.forEach(edge -> edges.add(edge[0], edge[1]));
        return false;
    }

    private static boolean areNeighbours(int[] ring, int a, int b) {
        for (int i = 0; i < ring.length; i++) {
            int next = ring[(i + 1) % ring.length];
            if ((ring[i] == a && next == b) || (ring[i] == b && next == a)) {
                return true;
            }
        }
        return false;
    }
}
