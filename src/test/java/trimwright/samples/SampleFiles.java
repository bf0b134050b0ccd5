package trimwright.samples;

import java.nio.file.Path;
import trimwright.mesh.StlWriter;

/** Writes the meshes of the sample boats anew: run from the project's folder after changing one. */
final class SampleFiles {

    private SampleFiles() {}

    public static void main(String[] args) {
        SampleHulls.files().forEach((name, mesh) -> StlWriter.write(Path.of("sample-meshes", name), mesh, true));
    }
}
