package trimwright.mesh;

import java.util.List;
import trimwright.finding.Finding;

/**
 * What a repair came to.
 *
 * @param mesh the mended mesh; the original is as it was
 * @param changes what was changed, in the order in which it was done; none when there was nothing to mend
 * @param before the original looked over, without a search for crossings: its area, and its volume where it has one
 * @param after the mended mesh looked over as a whole: what could not be mended is among its findings
 */
public record RepairResult(TriangleMesh mesh, List<Finding> changes, Soundness before, Soundness after) {

    public RepairResult {
        changes = List.copyOf(changes);
    }
}
