package trimwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.MeshFiles;

/** Reads and saves boat files, {@code *.boat.json}. Every key, unit and default stands in {@code docs/boat-file.md}. */
public final class BoatFile {

    /** The version of the boat file that is read and written. */
    public static final int VERSION = 1;

    private static final String ENDING = ".boat.json";

    private BoatFile() {}

    /**
     * Reads a boat and her meshes.
     *
     * @throws UnusableInputException with every error in the file, and meshes that enclose no volume where they should
     */
    public static LoadedBoat read(Path path) {
        LoadedBoat loaded = readLeniently(path);
        if (loaded.hasErrors()) {
            throw new UnusableInputException(loaded.findings());
        }
        return loaded;
    }

    /**
     * Reads a boat in order to report about her: meshes that enclose no volume where they should are errors among the findings,
     * and nothing may be computed with them.
     *
     * @throws UnusableInputException with every error in the file, when there are any besides such meshes
     */
    public static LoadedBoat readLeniently(Path path) {
        return load(path, JsonDocument.parse(path.toString(), bytes(path)), List.of());
    }

    /**
     * The boat after an edit of her file's text; nothing is saved. Meshes are not read again.
     *
     * @throws UnusableInputException with every error in the new text
     */
    public static LoadedBoat edited(LoadedBoat before, String text) {
        Path path = before.path();
        LoadedBoat loaded = load(
                path,
                JsonDocument.parse(path.toString(), text),
                List.copyOf(before.meshByPart().values()));
        if (loaded.hasErrors()) {
            throw new UnusableInputException(loaded.findings());
        }
        return loaded;
    }

    /**
     * Saves the text of a boat, exactly as it is, whole or not at all. Saved to another folder, she takes along those of her meshes
     * that are not there.
     *
     * @param overwrite whether an existing boat file may be replaced; meshes never are
     * @return what was done besides, as notes
     * @throws UnusableInputException when the file exists and may not be replaced, cannot be written, or when another mesh of
     *     the same name lies where hers would have to go
     */
    public static List<Finding> write(LoadedBoat boat, Path to, boolean overwrite) {
        MeshCopies copies = MeshCopies.needed(boat, to);
        if (Files.isDirectory(to)) {
            throw new UnusableInputException(Finding.of(Code.FILE_IS_DIRECTORY, new Place.InFile(to.toString())));
        }
        if (!overwrite && Files.exists(to)) {
            throw new UnusableInputException(Finding.of(Code.FILE_EXISTS, new Place.InFile(to.toString())));
        }
        // Meshes first, so that no boat file ever lies there without them.
        List<Finding> notes = copies.make();
        try {
            AtomicFile.write(to, boat.text().getBytes(StandardCharsets.UTF_8), overwrite);
        } catch (UnusableInputException e) {
            copies.takeBack();
            throw e;
        }
        return notes;
    }

    /** The bytes of a file; one more than the most where it is longer. */
    static byte[] bytes(Path path) {
        Place file = new Place.InFile(path.toString());
        if (!Files.exists(path)) {
            throw new UnusableInputException(Finding.of(Code.FILE_MISSING, file));
        }
        if (Files.isDirectory(path)) {
            throw new UnusableInputException(Finding.of(Code.FILE_IS_DIRECTORY, file));
        }
        try (InputStream in = Files.newInputStream(path)) {
            // One byte too many tells a file that is too long from one that just fits.
            byte[] bytes = in.readNBytes(JsonDocument.GREATEST_BYTES + 1);
            refuseMesh(bytes, Files.size(path), file);
            return bytes;
        } catch (IOException e) {
            throw new UnusableInputException(
                    Finding.of(Code.FILE_UNREADABLE, file, "reason", String.valueOf(e.getMessage())));
        }
    }

    /** Whoever has a hull tries to float its mesh; that it is no text, or no JSON, would not help. */
    private static void refuseMesh(byte[] bytes, long size, Place file) {
        int at = 0;
        while (at < bytes.length && Character.isWhitespace(bytes[at])) {
            at++;
        }
        boolean json = at < bytes.length && (bytes[at] == '{' || bytes[at] == '[');
        Optional<String> mesh = json || bytes.length == 0 ? Optional.empty() : MeshFiles.looksLike(bytes, size);
        if (mesh.isPresent()) {
            throw new UnusableInputException(Finding.of(Code.FILE_IS_MESH, file, "looksLike", mesh.get()));
        }
    }

    private static LoadedBoat load(Path path, JsonDocument document, List<ImportedMesh> known) {
        refuseNewer(document);
        Path absolute = path.toAbsolutePath();
        MeshSource meshes = new MeshSource(absolute.getParent(), document, known);
        Boat boat = new BoatReader(document, meshes).read(usualName(path));
        Map<String, ImportedMesh> meshByPart = new LinkedHashMap<>();
        for (Part part : boat.parts()) {
            if (part.shape().orElse(null) instanceof MeshShape shape) {
                meshByPart.put(part.id(), meshes.imported(shape));
            }
        }
        List<Finding> findings = new ArrayList<>(document.findings());
        findings.addAll(meshes.unsound());
        return new LoadedBoat(
                path,
                boat,
                document.text(),
                document.root(),
                List.copyOf(findings),
                Collections.unmodifiableMap(meshByPart),
                meshes.used());
    }

    /** A newer file is refused before anything else in it is looked at, since nothing of it may mean what it seems to. */
    private static void refuseNewer(JsonDocument document) {
        JsonNode version = document.root().path("version");
        if (version.isNumber() && version.doubleValue() > VERSION) {
            document.report(Code.VERSION_NEWER, "/version", "found", document.written("/version"), "greatest", VERSION);
            throw new UnusableInputException(document.findings().stream()
                    .filter(f -> f.code() == Code.VERSION_NEWER)
                    .toList());
        }
    }

    private static String usualName(Path path) {
        String name = String.valueOf(path.getFileName());
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }
}
