package trimwright.mesh;

import java.util.List;
import java.util.Optional;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Severity;

/**
 * What can be said of a mesh as a surface. Lengths are in the unit of the mesh, which counts as mm.
 *
 * @param closed whether an even number of triangles meets at every edge, duplicates counted or not
 * @param oriented whether at every edge as many triangles run one way as the other, but for the odd one at a border
 * @param triangles how many
 * @param vertices how many
 * @param areaMm2 area of all triangles
 * @param volumeMm3 enclosed volume, negative when inside out; only where the mesh is closed and oriented
 * @param bounds the box around it
 * @param numbering its shells
 * @param crossings how thoroughly crossing triangles were looked for; missing after {@link #quick}
 * @param findings what is worth telling, with places; the first few of each kind and how many there are
 */
public record Soundness(
        boolean closed,
        boolean oriented,
        int triangles,
        int vertices,
        double areaMm2,
        Optional<Double> volumeMm3,
        Bounds bounds,
        Shells numbering,
        Optional<CrossingSearch> crossings,
        List<Finding> findings) {

    public Soundness {
        findings = List.copyOf(findings);
    }

    /**
     * How thoroughly crossing triangles were looked for.
     *
     * @param pairsTested pairs of near triangles that were looked at
     * @param pairs pairs of near triangles that there are
     */
    public record CrossingSearch(long pairsTested, long pairs) {

        /** Whether every pair was looked at. */
        public boolean complete() {
            return pairsTested == pairs;
        }
    }

    /** Everything: edges, shells, size, crossing triangles and shells inside shells. About a second for a million triangles. */
    public static Soundness of(TriangleMesh mesh) {
        return quick(mesh).thorough(mesh);
    }

    /**
     * Edges, shells and size only, fast enough for every run: whether the integrals of the mesh have a meaning. A closed and
     * oriented mesh may still run into itself, which {@link #of} finds.
     */
    public static Soundness quick(TriangleMesh mesh) {
        return new SoundnessCheck(mesh).quick();
    }

    /**
     * The same with crossing triangles and shells inside shells looked for as well.
     *
     * @param mesh the mesh that this is about
     */
    public Soundness thorough(TriangleMesh mesh) {
        return new ThoroughCheck(mesh, this).run(Crossings.MOST_PAIRS);
    }

    /**
     * Whether she encloses exactly what her surface shows: closed, oriented, and nothing found that is more than a note.
     * Her size does not matter for it.
     */
    public boolean sound() {
        return closed
                && oriented
                && findings.stream()
                        .allMatch(f -> f.severity() == Severity.NOTE || f.code() == Code.MESH_SIZE_IMPLAUSIBLE);
    }

    /**
     * Whether the mesh looks like what it is declared to be: closed where it must be (an error where it is not), an outer
     * surface rather than the two surfaces of a printed wall, or the other way round (warnings).
     *
     * @param mesh the mesh that this is about, in mm
     */
    public List<Finding> againstBuild(TriangleMesh mesh, MeshUse use) {
        return new WallCheck(mesh, this, use).run();
    }

    /** The shells in the order of their numbers. */
    public List<Shell> shells() {
        return numbering.list();
    }

    /** The number of the shell that a triangle belongs to; 0 for one with a vertex twice, which belongs to none. */
    public int shellOf(int triangle) {
        return numbering.shellOf(triangle);
    }
}
