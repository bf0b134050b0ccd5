package trimwright.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/** Looks at a mesh edge by edge and shell by shell, and writes down what it finds. */
final class SoundnessCheck {

    /** So many places of one kind are listed. */
    static final int LISTED = 10;

    /** Volume over area and length below which a closed shell encloses nothing but rounding. */
    private static final double FLAT_SHELL = 1e-9;

    private final TriangleMesh mesh;
    private final Places places;
    private final Duplicates duplicates;
    private final HalfEdges edges;
    private final Shells shells;
    private final boolean closed;
    private final boolean oriented;
    private final List<Finding> findings = new ArrayList<>();

    SoundnessCheck(TriangleMesh mesh) {
        this.mesh = mesh;
        this.places = new Places(mesh);
        boolean[] skipped = withVertexTwice(mesh);
        HalfEdges all = HalfEdges.of(mesh, skipped);
        duplicates = Duplicates.in(mesh, all);
        boolean[] bare = skipped.clone();
        for (int i = 0; i < duplicates.copies().size(); i++) {
            bare[duplicates.copies().get(i)] = true;
        }
        edges = duplicates.copies().size() == 0 ? all : HalfEdges.of(mesh, bare);
        shells = Shells.of(mesh, edges, duplicates);
        closed = isClosed(all) && isClosed(edges);
        oriented = isOriented(all) && isOriented(edges);
        noteOpenLoops();
        noteEdgesOfMany();
        noteDisagreements();
        noteDuplicates();
        noteDegenerate(skipped);
        noteShells();
        SizeCheck.of(mesh.bounds()).ifPresent(findings::add);
    }

    /** Which triangles have a vertex twice; they take no part in the pairing of edges. */
    static boolean[] withVertexTwice(TriangleMesh mesh) {
        int[] corners = mesh.corners();
        boolean[] result = new boolean[mesh.triangleCount()];
        for (int t = 0; t < result.length; t++) {
            int a = corners[3 * t];
            int b = corners[3 * t + 1];
            int c = corners[3 * t + 2];
            result[t] = a == b || b == c || c == a;
        }
        return result;
    }

    /**
     * The distance below which two things count as touching: two steps of single precision at the farthest coordinate, since
     * nearer than that a rounded file cannot say on which side anything is.
     */
    static double tolerance(Bounds bounds) {
        return 2 * Math.ulp((float) bounds.farthestCoordinate());
    }

    Soundness quick() {
        double volume = shells.totalVolume();
        if (closed && oriented && volume < 0) {
            findings.add(Finding.of(
                    Code.MESH_INSIDE_OUT,
                    new Place.OnShell(1),
                    "index",
                    1,
                    "total",
                    1,
                    "shell",
                    1,
                    "volumeMm3",
                    volume));
        }
        return new Soundness(
                closed,
                oriented,
                mesh.triangleCount(),
                mesh.vertexCount(),
                shells.totalArea(),
                closed && oriented ? Optional.of(volume) : Optional.empty(),
                mesh.bounds(),
                shells,
                Optional.empty(),
                findings);
    }

    private static boolean isClosed(HalfEdges edges) {
        boolean even = edges.open.length == 0;
        for (int i = 0; i < edges.many.length; i += 1 + edges.many[i]) {
            even &= edges.many[i] % 2 == 0;
        }
        return even;
    }

    private boolean isOriented(HalfEdges edges) {
        boolean balanced = edges.disagreeing.length == 0;
        for (int i = 0; i < edges.many.length; i += 1 + edges.many[i]) {
            int count = edges.many[i];
            int oneWay = 0;
            for (int k = i + 1; k <= i + count; k++) {
                oneWay += HalfEdges.sameWay(mesh.corners(), edges.many[i + 1], edges.many[k]) ? 1 : 0;
            }
            balanced &= Math.abs(2 * oneWay - count) <= count % 2;
        }
        return balanced;
    }

    private void noteOpenLoops() {
        if (edges.open.length == 0) {
            return;
        }
        List<OpenLoops.Loop> loops = OpenLoops.of(mesh, edges);
        double lengthInAll = 0;
        for (OpenLoops.Loop loop : loops) {
            lengthInAll += loop.length();
        }
        for (int i = 0; i < Math.min(LISTED, loops.size()); i++) {
            OpenLoops.Loop loop = loops.get(i);
            note(
                    Code.MESH_OPEN_LOOP,
                    places.edge(loop.place()),
                    i,
                    loops.size(),
                    "edges",
                    loop.halfEdges().length,
                    "lengthMm",
                    loop.length(),
                    "ring",
                    loop.isRing(),
                    "edgesInAll",
                    edges.open.length,
                    "lengthInAllMm",
                    lengthInAll);
        }
    }

    private void noteEdgesOfMany() {
        int total = 0;
        for (int i = 0; i < edges.many.length; i += 1 + edges.many[i]) {
            total++;
        }
        int index = 0;
        for (int i = 0; i < edges.many.length && index < LISTED; i += 1 + edges.many[i]) {
            Place place = places.edge(edges.many[i + 1]);
            note(Code.MESH_EDGE_OF_MANY, place, index++, total, "triangles", edges.many[i]);
        }
    }

    private void noteDisagreements() {
        if (edges.disagreeing.length == 0) {
            return;
        }
        Orientation orientation = Orientation.of(mesh, edges);
        int[] impossible = orientation.impossible;
        boolean[] oneSided = new boolean[shells.count() + 1];
        for (int h : impossible) {
            oneSided[shells.shellOf(h / 3)] = true;
        }
        // In a one-sided shell none is turned more wrongly than the others.
        IntList flipped = new IntList(16);
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (orientation.turned[t] && !oneSided[shells.shellOf(t)]) {
                flipped.add(t);
            }
        }
        for (int i = 0; i < Math.min(LISTED, flipped.size()); i++) {
            int t = flipped.get(i);
            note(Code.MESH_TRIANGLE_FLIPPED, places.triangle(t), i, flipped.size(), "shell", shells.shellOf(t));
        }
        for (int i = 0; i < Math.min(LISTED, impossible.length); i++) {
            int shell = shells.shellOf(impossible[i] / 3);
            note(Code.MESH_ONE_SIDED, places.edge(impossible[i]), i, impossible.length, "shell", shell);
        }
    }

    private void noteDuplicates() {
        int total = duplicates.copies().size();
        for (int i = 0; i < Math.min(LISTED, total); i++) {
            note(
                    Code.MESH_TRIANGLE_DUPLICATE,
                    places.triangle(duplicates.copies().get(i)),
                    i,
                    total,
                    "original",
                    duplicates.originals().get(i),
                    "sameWay",
                    duplicates.sameWay().get(i) == 1,
                    "sameWayTotal",
                    duplicates.sameWayCount());
        }
    }

    private void noteDegenerate(boolean[] vertexTwice) {
        IntList twice = new IntList(16);
        IntList flat = new IntList(16);
        for (int t = 0; t < vertexTwice.length; t++) {
            if (vertexTwice[t]) {
                twice.add(t);
            } else if (Triangles.isFlat(mesh, t)) {
                flat.add(t);
            }
        }
        for (int i = 0; i < Math.min(LISTED, twice.size()); i++) {
            note(Code.MESH_TRIANGLE_VERTEX_TWICE, places.triangle(twice.get(i)), i, twice.size());
        }
        for (int i = 0; i < Math.min(LISTED, flat.size()); i++) {
            note(Code.MESH_TRIANGLE_WITHOUT_AREA, places.triangle(flat.get(i)), i, flat.size());
        }
    }

    private void noteShells() {
        int closedShells = 0;
        for (int shell = 1; shell <= shells.count(); shell++) {
            closedShells += shells.isClosed(shell) ? 1 : 0;
            double limit =
                    FLAT_SHELL * shells.area(shell) * shells.bounds(shell).diagonal();
            if (shells.isSolid(shell) && Math.abs(shells.volume(shell)) <= limit) {
                findings.add(Finding.of(
                        Code.MESH_SHELL_FLAT,
                        new Place.OnShell(shell),
                        "shell",
                        shell,
                        "areaMm2",
                        shells.area(shell),
                        "volumeMm3",
                        shells.volume(shell)));
            }
        }
        if (shells.count() > 1) {
            findings.add(Finding.of(
                    Code.MESH_SEVERAL_SHELLS,
                    new Place.Whole(),
                    "shells",
                    shells.count(),
                    "closedShells",
                    closedShells));
        }
    }

    private void note(Code code, Place place, int index, int total, Object... more) {
        findings.add(listed(code, place, index, total, more));
    }

    /** One of the first few of a kind: the index-th, from 0, of so many in all. */
    static Finding listed(Code code, Place place, int index, int total, Object... more) {
        List<Object> values = new ArrayList<>(List.of("index", index + 1, "total", total));
        values.addAll(List.of(more));
        return Finding.of(code, place, values.toArray());
    }
}
