package trimwright.desktop.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trimwright.file.ImportedMesh;
import trimwright.file.LoadedBoat;

/** The meshes of a boat as they were when they were read: size and time of each file, to notice what other programs do to it. */
public final class Stamps {

    private static final String GONE = "";

    private final Map<Path, String> known = new LinkedHashMap<>();

    /** Another boat was read. */
    public void read(LoadedBoat boat) {
        known.clear();
        add(boat);
    }

    /** She may have a mesh more. */
    public void add(LoadedBoat boat) {
        for (ImportedMesh mesh : boat.meshByPart().values()) {
            known.computeIfAbsent(file(boat, mesh), Stamps::of);
        }
    }

    /** Those that are otherwise than they were; one that is gone can wait until it is needed. */
    public List<Path> changed(LoadedBoat boat) {
        return boat.meshByPart().values().stream()
                .map(mesh -> file(boat, mesh))
                .distinct()
                .filter(f -> !of(f).equals(GONE) && !of(f).equals(known.getOrDefault(f, of(f))))
                .toList();
    }

    private static Path file(LoadedBoat boat, ImportedMesh mesh) {
        return boat.path().toAbsolutePath().resolveSibling(mesh.shape().file());
    }

    /** What tells a file from another one in its place. */
    public static String of(Path file) {
        try {
            return Files.size(file) + " " + Files.getLastModifiedTime(file);
        } catch (IOException e) {
            // Gone, or not to be looked at: either way there is nothing to be read again.
            return GONE;
        }
    }
}
