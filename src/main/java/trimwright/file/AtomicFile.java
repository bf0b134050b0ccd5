package trimwright.file;

import java.nio.file.Path;
import trimwright.mesh.WholeFile;

/** Saves bytes as a file, whole or not at all, and over another only when asked to. */
public final class AtomicFile {

    private AtomicFile() {}

    /**
     * @param to the file; a symbolic link is followed
     * @param overwrite whether an existing file may be replaced
     * @throws trimwright.finding.UnusableInputException when it exists and may not be replaced, or cannot be written
     */
    public static void write(Path to, byte[] bytes, boolean overwrite) {
        WholeFile.write(to, overwrite, out -> out.write(bytes));
    }
}
