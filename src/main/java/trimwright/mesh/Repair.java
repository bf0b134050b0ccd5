package trimwright.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/**
 * Mends what can be mended without guessing a shape: copies and degenerate triangles go, neighbours are turned to agree, small flat
 * holes are closed, closed shells are turned outward and hollows inward. No vertex is moved. What remains, it says.
 * Every step is told with counts; nothing is ever repaired unasked.
 */
public final class Repair {

    /** Holes up to this share of the mesh's longest side are closed unless told otherwise: 22 mm on a hull of 1.1 m. */
    public static final double HOLE_SHARE = 0.02;

    private final List<Finding> changes = new ArrayList<>();
    private TriangleMesh mesh;

    private Repair(TriangleMesh mesh) {
        this.mesh = mesh;
    }

    /** Mends a mesh, closing holes up to {@link #HOLE_SHARE} of its longest side. */
    public static RepairResult of(TriangleMesh mesh) {
        return of(mesh, HOLE_SHARE * mesh.bounds().longestSide());
    }

    /**
     * Mends a mesh.
     *
     * @param largestHoleMm longest side of the box around a hole up to which it is closed; zero for none
     */
    public static RepairResult of(TriangleMesh mesh, double largestHoleMm) {
        Repair repair = new Repair(mesh);
        repair.dropVerticesTwice();
        repair.dropDuplicates();
        repair.turnTriangles();
        repair.mendFlatTriangles();
        repair.mesh = new Holes(repair.mesh, largestHoleMm).closed(repair.changes);
        repair.turnShells();
        // A mesh of nothing but copies and lines is left as it is rather than emptied.
        TriangleMesh result = repair.mesh.triangleCount() == 0 || repair.changes.isEmpty() ? mesh : repair.mesh;
        List<Finding> changes = result == mesh ? List.of() : repair.changes;
        return new RepairResult(result, changes, Soundness.quick(mesh), Soundness.of(result));
    }

    private void dropVerticesTwice() {
        boolean[] twice = SoundnessCheck.withVertexTwice(mesh);
        int count = without(twice);
        if (count > 0) {
            changed(Code.REPAIR_VERTEX_TWICE_DROPPED, "count", count);
        }
    }

    /**
     * Of each set of copies one stays. Where two lie back to back they may also be a wall of no thickness between two bodies,
     * and then neither must stay: whichever way leaves fewer bad edges is taken.
     */
    private void dropDuplicates() {
        boolean[] none = new boolean[mesh.triangleCount()];
        Duplicates duplicates = Duplicates.in(mesh, HalfEdges.of(mesh, none));
        if (duplicates.copies().size() == 0) {
            return;
        }
        boolean[] copies = new boolean[mesh.triangleCount()];
        int[] turns = new int[mesh.triangleCount()];
        Arrays.fill(turns, 1);
        for (int i = 0; i < duplicates.copies().size(); i++) {
            copies[duplicates.copies().get(i)] = true;
            turns[duplicates.originals().get(i)] += duplicates.sameWay().get(i) == 1 ? 1 : -1;
        }
        boolean[] walls = copies.clone();
        for (int t = 0; t < turns.length; t++) {
            walls[t] |= turns[t] == 0;
        }
        boolean wallsGo = badEdges(walls) < badEdges(copies);
        int count = without(wallsGo ? walls : copies);
        changed(
                Code.REPAIR_DUPLICATES_DROPPED,
                "count",
                count,
                "pairsOfNoThickness",
                wallsGo ? count - duplicates.copies().size() : 0);
    }

    private int badEdges(boolean[] skipped) {
        boolean any = false;
        for (boolean skip : skipped) {
            any |= !skip;
        }
        HalfEdges edges = HalfEdges.of(mesh, skipped);
        return any ? edges.open.length + edges.many.length : Integer.MAX_VALUE;
    }

    private void turnTriangles() {
        HalfEdges edges = HalfEdges.of(mesh, new boolean[mesh.triangleCount()]);
        if (edges.disagreeing.length == 0) {
            return;
        }
        Orientation orientation = Orientation.of(mesh, edges);
        int count = turn(orientation.turned);
        if (count > 0) {
            changed(Code.REPAIR_TRIANGLES_TURNED, "count", count, "edgesLeft", orientation.impossible.length);
        }
    }

    private void mendFlatTriangles() {
        int before = FlatTriangles.count(mesh);
        if (before > 0) {
            mesh = FlatTriangles.mended(mesh);
            int left = FlatTriangles.count(mesh);
            if (left < before) {
                changed(Code.REPAIR_FLAT_TRIANGLES_MENDED, "count", before - left, "left", left);
            }
        }
    }

    private void turnShells() {
        boolean[] none = SoundnessCheck.withVertexTwice(mesh);
        HalfEdges edges = HalfEdges.of(mesh, none);
        Shells shells = Shells.of(mesh, edges, Duplicates.in(mesh, edges));
        Nesting nesting = new Nesting(mesh, shells, SoundnessCheck.tolerance(mesh.bounds()));
        IntList turned = new IntList(16);
        boolean[] wrong = new boolean[shells.count() + 1];
        for (int shell = 1; shell <= shells.count(); shell++) {
            boolean isHollow = nesting.depth(shell) % 2 == 1;
            double volume = shells.volume(shell);
            if (nesting.isLookedAt(shell) && shells.isSolid(shell) && volume != 0 && volume < 0 != isHollow) {
                wrong[shell] = true;
                turned.add(shell);
            }
        }
        boolean[] turn = new boolean[mesh.triangleCount()];
        for (int t = 0; t < turn.length; t++) {
            turn[t] = wrong[shells.shellOf(t)];
        }
        turn(turn);
        for (int i = 0; i < Math.min(SoundnessCheck.LISTED, turned.size()); i++) {
            int shell = turned.get(i);
            changes.add(Finding.of(
                    Code.REPAIR_SHELL_TURNED,
                    new Place.OnShell(shell),
                    "index",
                    i + 1,
                    "total",
                    turned.size(),
                    "shell",
                    shell,
                    "inside",
                    nesting.parent(shell),
                    "volumeMm3",
                    -shells.volume(shell)));
        }
    }

    /** Leaves out triangles; how many. */
    private int without(boolean[] dropped) {
        boolean[] keep = new boolean[dropped.length];
        int count = 0;
        for (int t = 0; t < dropped.length; t++) {
            keep[t] = !dropped[t];
            count += dropped[t] ? 1 : 0;
        }
        mesh = count == 0 ? mesh : mesh.only(keep);
        return count;
    }

    /** Turns triangles over; how many. */
    private int turn(boolean[] turned) {
        int[] corners = mesh.corners().clone();
        int count = 0;
        for (int t = 0; t < turned.length; t++) {
            if (turned[t]) {
                int second = corners[3 * t + 1];
                corners[3 * t + 1] = corners[3 * t + 2];
                corners[3 * t + 2] = second;
                count++;
            }
        }
        mesh = count == 0 ? mesh : TriangleMesh.owning(mesh.xyz(), corners);
        return count;
    }

    private void changed(Code code, Object... values) {
        changes.add(Finding.of(code, new Place.Whole(), values));
    }
}
