package trimwright.cli;

import java.util.EnumSet;
import java.util.Set;
import trimwright.finding.Code;
import trimwright.mesh.MeshUse;

/** Which faults of a surface change what a hull displaces and weighs, by how she is built. */
final class MeshMatters {

    /** A skin displaces thickness times area, whether or not it is closed; so only its area and its outside count. */
    private static final Set<Code> NOT_FOR_A_SKIN =
            EnumSet.of(Code.MESH_OPEN_LOOP, Code.MESH_EDGE_OF_MANY, Code.MESH_CROSSES_ITSELF);

    /** Doubts that only the builder can settle. */
    private static final Set<Code> DOUBTS =
            EnumSet.of(Code.MESH_SIZE_IMPLAUSIBLE, Code.MESH_LOOKS_LIKE_WALL, Code.MESH_LOOKS_LIKE_OUTER_SURFACE);

    private MeshMatters() {}

    /** Whether a fault makes the mesh unfit for that build. */
    static boolean spoils(Code code, MeshUse use) {
        return !isDoubt(code) && !(use == MeshUse.SKIN && NOT_FOR_A_SKIN.contains(code));
    }

    /** Whether it is only a doubt about what the builder means. */
    static boolean isDoubt(Code code) {
        return DOUBTS.contains(code);
    }
}
