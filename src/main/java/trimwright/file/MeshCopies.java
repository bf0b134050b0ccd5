package trimwright.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.WholeFile;

/**
 * The meshes that a boat takes along when she is saved to another folder, since her file names them relative to itself.
 *
 * @param fromByTo where each is and where it is to go; empty when she stays in her folder
 */
record MeshCopies(Map<Path, Path> fromByTo) {

    /**
     * What is not there yet.
     *
     * @throws UnusableInputException when a different file of such a name is there
     */
    static MeshCopies needed(LoadedBoat boat, Path to) {
        Path folder = boat.path().toAbsolutePath().normalize().getParent();
        Path target = to.toAbsolutePath().normalize().getParent();
        Map<Path, Path> needed = new LinkedHashMap<>();
        List<Finding> others = new ArrayList<>();
        for (ImportedMesh mesh : boat.meshByPart().values()) {
            Path from = folder.resolve(mesh.shape().file());
            Path copy = target.resolve(mesh.shape().file());
            if (!Files.exists(copy)) {
                needed.put(copy, from);
            } else if (!isSame(from, copy)) {
                others.add(
                        Finding.of(Code.MESH_OTHER_THERE, new Place.InFile(copy.toString()), "from", from.toString()));
            }
        }
        if (!others.isEmpty()) {
            throw new UnusableInputException(others);
        }
        return new MeshCopies(needed);
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.mismatch(one, other) < 0;
        } catch (IOException e) {
            throw new UnusableInputException(Finding.of(
                    Code.FILE_UNREADABLE, new Place.InFile(one.toString()), "reason", String.valueOf(e.getMessage())));
        }
    }

    /**
     * Copies them, and tells of each.
     *
     * @throws UnusableInputException when one cannot be written; those before it are then taken away again
     */
    List<Finding> make() {
        List<Finding> notes = new ArrayList<>();
        for (Map.Entry<Path, Path> copy : fromByTo.entrySet()) {
            Place place = new Place.InFile(copy.getKey().toString());
            try {
                Files.createDirectories(copy.getKey().getParent());
                WholeFile.write(copy.getKey(), false, out -> Files.copy(copy.getValue(), out));
            } catch (UnusableInputException e) {
                takeBack(notes.size());
                throw e;
            } catch (IOException e) {
                takeBack(notes.size());
                throw new UnusableInputException(
                        Finding.of(Code.FILE_NOT_WRITTEN, place, "reason", String.valueOf(e.getMessage())));
            }
            notes.add(
                    Finding.of(Code.MESH_COPIED, place, "from", copy.getValue().toString()));
        }
        return notes;
    }

    /** Takes the copies away again. */
    void takeBack() {
        takeBack(fromByTo.size());
    }

    private void takeBack(int made) {
        try {
            for (Path copy : fromByTo.keySet().stream().limit(made).toList()) {
                Files.deleteIfExists(copy);
            }
        } catch (IOException e) {
            // A whole copy of a mesh does no harm; the reason why nothing was saved is told.
        }
    }
}
