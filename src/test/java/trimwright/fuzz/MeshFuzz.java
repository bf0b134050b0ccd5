package trimwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshFiles;
import trimwright.mesh.Repair;
import trimwright.mesh.Soundness;
import trimwright.mesh.TriangleMesh;

/** Any file given as a mesh: STL of both kinds, OBJ, and the zip around a 3MF. What can be read is checked and mended too. */
class MeshFuzz {

    private static final Path FILE = Promise.folder().resolve("any.mesh");

    @DictionaryEntries({
        "solid",
        "facet normal 0 0 0",
        "outer loop",
        "vertex ",
        "endloop",
        "endfacet",
        "endsolid",
        "v ",
        "f ",
        "1//1",
        "-1",
        "nan",
        "1e9",
        "1e-300",
        "12,5",
        "vn ",
        "usemtl ",
        "curv ",
        "\\"
    })
    @FuzzTest(maxDuration = "3m")
    void anyFile(byte[] bytes) throws Throwable {
        Promise.isKept(() -> {
            MeshFile read = MeshFiles.read(Promise.written(FILE, bytes));
            Promise.canBeWorded(read.findings());
            holdsTogether(read.mesh());
            Soundness soundness = Soundness.of(read.mesh());
            Promise.canBeWorded(soundness.findings());
            holdsTogether(Repair.of(read.mesh()).mesh());
        });
    }

    /** Finite coordinates within the limit, and corners that name vertices. */
    static void holdsTogether(TriangleMesh mesh) {
        for (double x : mesh.xyz()) {
            assertTrue(Math.abs(x) <= MeshFiles.LARGEST_COORDINATE, "coordinate " + x);
        }
        for (int corner : mesh.corners()) {
            assertTrue(corner >= 0 && corner < mesh.vertexCount(), "corner " + corner);
        }
    }
}
