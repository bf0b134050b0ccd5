package trimwright.file;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.Severity;
import trimwright.mesh.MeshUse;
import trimwright.mesh.Soundness;

/**
 * A mesh in the place where a boat file uses it. Whether it encloses a volume at all is found when the file is read; what takes longer to find and changes the
 * result without a trace, since a surface that overlaps itself counts twice, is looked for meanwhile.
 *
 * @param place where the file names it
 * @param mesh the mesh
 * @param use what it is declared to be
 */
public record UsedMesh(Place place, ImportedMesh mesh, MeshUse use) {

    /** Larger meshes are not looked through unasked: it would take longer than the answer. */
    static final int MOST_TRIANGLES = 300_000;

    /** What counts twice, and that it was not all looked for. */
    private static final Set<Code> COUNTS_TWICE = EnumSet.of(
            Code.MESH_SHELLS_OVERLAP, Code.MESH_COUNTED_TWICE, Code.MESH_NESTING_SAMPLED, Code.MESH_CROSSINGS_SAMPLED);

    /** Begins to look the mesh through in a second thread. */
    void lookAhead() {
        if (mayCountTwice() && isLookedThrough()) {
            mesh.lookAhead();
        }
    }

    /** A skin of one shell has nothing to overlap: where it runs into itself, the material is there twice indeed. */
    private boolean mayCountTwice() {
        return use != MeshUse.SKIN || mesh.quickSoundness().shells().size() > 1;
    }

    private boolean isLookedThrough() {
        return mesh.shape().mesh().triangleCount() <= MOST_TRIANGLES;
    }

    /** What speaks against the result besides what was found when the file was read: the first of each kind, and how many more there are. Waits for it. */
    List<Finding> doubts() {
        if (!mayCountTwice()) {
            return List.of();
        }
        if (!isLookedThrough()) {
            return List.of(Finding.of(
                    Code.MESH_NOT_LOOKED_THROUGH,
                    place,
                    "triangles",
                    mesh.shape().mesh().triangleCount(),
                    "greatest",
                    MOST_TRIANGLES));
        }
        Soundness soundness = mesh.soundness();
        List<Finding> doubts = new ArrayList<>();
        COUNTS_TWICE.forEach(code -> first(soundness, code, doubts));
        if (use != MeshUse.SKIN) {
            first(soundness, Code.MESH_CROSSES_ITSELF, doubts);
        }
        Set<Code> told = mesh.quickSoundness().againstBuild(mesh.shape().mesh(), use).stream()
                .map(Finding::code)
                .collect(Collectors.toSet());
        List<Finding> against = soundness.againstBuild(mesh.shape().mesh(), use).stream()
                .filter(f -> !told.contains(f.code()))
                .toList();
        against.stream().map(Finding::code).distinct().forEach(code -> {
            List<Finding> alike = against.stream().filter(f -> f.code() == code).toList();
            first(alike.get(0), alike.size(), doubts);
        });
        return doubts;
    }

    private void first(Soundness soundness, Code code, List<Finding> doubts) {
        Optional<Finding> first =
                soundness.findings().stream().filter(f -> f.code() == code).findFirst();
        first.ifPresent(f -> first(f, ((Number) f.values().getOrDefault("total", 1)).intValue(), doubts));
    }

    private void first(Finding first, int total, List<Finding> doubts) {
        doubts.add(new Finding(first.code(), first.severity(), place, first.values()));
        if (total > 1) {
            doubts.add(Finding.of(
                    Code.MESH_MORE_OF_THE_SAME,
                    Severity.NOTE,
                    place,
                    "code",
                    first.code().name(),
                    "count",
                    total - 1));
        }
    }
}
