package trimwright.mesh;

import java.util.List;
import java.util.Optional;
import trimwright.finding.Finding;

/**
 * What a mesh file held: its triangles with identical vertices merged, in the file's own unit and axes.
 *
 * @param mesh the triangles, in the order of the file
 * @param format which format the content showed
 * @param unit the unit that the file states (3MF); empty where the format states none
 * @param findings what is worth knowing about the reading; never an error, since errors are thrown
 */
public record MeshFile(TriangleMesh mesh, Format format, Optional<LengthUnit> unit, List<Finding> findings) {

    public MeshFile {
        findings = List.copyOf(findings);
    }

    /** Mesh formats, told apart by content, not by the file's name. */
    public enum Format {
        STL_BINARY,
        STL_ASCII,
        OBJ,
        THREE_MF
    }
}
