package trimwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/**
 * A boat with the file it came from.
 *
 * @param path the file
 * @param boat the boat
 * @param text the file's text, which {@link JsonText} edits and {@link BoatFile#write} saves
 * @param document the values of the text; not to be changed
 * @param findings notes and warnings about the file and its meshes; errors only after {@link BoatFile#readLeniently}
 * @param meshByPart the mesh of every part that has one, by the part's id, in the order of the file
 * @param usedMeshes every mesh where the file uses it
 */
public record LoadedBoat(
        Path path,
        Boat boat,
        String text,
        JsonNode document,
        List<Finding> findings,
        Map<String, ImportedMesh> meshByPart,
        List<UsedMesh> usedMeshes) {

    /**
     * All findings about the file and her meshes, with what takes longer to find: pieces that overlap or lie in each other, and surfaces that go through
     * themselves. It is looked for in a second thread while her results are worked out; ask for it after those.
     */
    public List<Finding> allFindings() {
        return Stream.concat(findings.stream(), usedMeshes.stream().flatMap(u -> u.doubts().stream()))
                .distinct()
                .toList();
    }

    /** What a look through the mesh of each part finds to count twice or not to be what it is declared as, at the part. Takes a while. */
    public List<Finding> meshDoubts() {
        List<Finding> doubts = new ArrayList<>();
        meshByPart.forEach((id, mesh) -> usedMeshes.stream()
                .filter(u -> u.mesh() == mesh)
                .findFirst()
                .ifPresent(u -> u.doubts()
                        .forEach(f ->
                                doubts.add(new Finding(f.code(), f.severity(), new Place.OnPart(id), f.values())))));
        return doubts;
    }

    /** The same boat as the file to which she was saved: what she needs further is looked for beside that. */
    public LoadedBoat at(Path file) {
        return new LoadedBoat(file, boat, text, document, findings, meshByPart, usedMeshes);
    }

    /** The mesh of a part. */
    public Optional<ImportedMesh> mesh(String partId) {
        return Optional.ofNullable(meshByPart.get(partId));
    }

    /**
     * The boat with parts added at the end; nothing is saved.
     *
     * @throws trimwright.finding.UnusableInputException when a part does not fit in, say because its id is taken
     */
    public LoadedBoat plus(List<Part> added) {
        String edited = text;
        for (Part part : added) {
            edited = JsonText.with(edited, "/parts/-", PartJson.of(part));
        }
        return BoatFile.edited(this, edited);
    }

    /**
     * The boat with a part in the place of the one with its id; what is the same in both stays as it was written. Nothing is
     * saved.
     *
     * @throws java.util.NoSuchElementException when there is no part of that id
     */
    public LoadedBoat replacing(Part part) {
        Part old = boat.part(part.id()).orElseThrow();
        String pointer = "/parts/" + boat.parts().indexOf(old) + "/";
        ObjectNode before = PartJson.of(old);
        ObjectNode after = PartJson.of(part);
        String edited = text;
        for (Map.Entry<String, JsonNode> entry : after.properties()) {
            if (!entry.getValue().equals(before.get(entry.getKey()))) {
                edited = JsonText.with(edited, pointer + entry.getKey(), entry.getValue());
            }
        }
        for (Map.Entry<String, JsonNode> entry : before.properties()) {
            if (!after.has(entry.getKey())) {
                edited = JsonText.without(edited, pointer + entry.getKey());
            }
        }
        return BoatFile.edited(this, edited);
    }

    /** The boat with the parts of another: those that differ, those that are gone, those that are new at the end. Nothing is saved. */
    public LoadedBoat withPartsOf(Boat other) {
        LoadedBoat changed = this;
        for (Part part : boat.parts()) {
            Optional<Part> after = other.part(part.id());
            if (after.isEmpty()) {
                changed = changed.without(part.id());
            } else if (!after.get().equals(part)) {
                changed = changed.replacing(after.get());
            }
        }
        return changed.plus(
                other.parts().stream().filter(p -> boat.part(p.id()).isEmpty()).toList());
    }

    /**
     * The boat without a part; nothing is saved.
     *
     * @throws java.util.NoSuchElementException when there is no part of that id
     * @throws trimwright.finding.UnusableInputException when others stand inside it, or nothing is left
     */
    public LoadedBoat without(String partId) {
        int index = boat.parts().indexOf(boat.part(partId).orElseThrow());
        return BoatFile.edited(this, JsonText.without(text, "/parts/" + index));
    }

    public boolean hasErrors() {
        return findings.stream().anyMatch(Finding::isError);
    }
}
