package trimwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.finding.Finding;

/**
 * A boat with the file it came from.
 *
 * @param path the file
 * @param boat the boat
 * @param text the file's text, which {@link BoatText} edits and {@link BoatFile#write} saves
 * @param document the values of the text; not to be changed
 * @param findings notes and warnings about the file and its meshes; errors only after {@link BoatFile#readLeniently}
 * @param meshByPart the mesh of every part that has one, by the part's id, in the order of the file
 */
public record LoadedBoat(
        Path path,
        Boat boat,
        String text,
        JsonNode document,
        List<Finding> findings,
        Map<String, ImportedMesh> meshByPart) {

    /** The mesh of a part. */
    public Optional<ImportedMesh> mesh(String partId) {
        return Optional.ofNullable(meshByPart.get(partId));
    }

    public boolean hasErrors() {
        return findings.stream().anyMatch(Finding::isError);
    }
}
