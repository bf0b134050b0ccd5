package trimwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import trimwright.file.AtomicFile;
import trimwright.file.OwnFolder;

/** The sample boat: as it lies in the project's folder, or else unpacked from the program into its own folder. */
final class SampleBoat {

    private static final Path IN_PROJECT = Path.of("sample-meshes", "heron.boat.json");
    private static final List<String> FILES = List.of("heron.boat.json", "heron-hull.stl");

    private SampleBoat() {}

    static Path path() {
        return Files.isRegularFile(IN_PROJECT) ? IN_PROJECT : unpacked();
    }

    private static Path unpacked() {
        try {
            Path folder = Files.createDirectories(OwnFolder.usual().resolve("sample"));
            for (String name : FILES) {
                unpack(name, folder.resolve(name));
            }
            return folder.resolve(FILES.get(0));
        } catch (IOException e) {
            throw new UncheckedIOException("the sample boat could not be unpacked", e);
        }
    }

    private static void unpack(String name, Path file) throws IOException {
        try (InputStream in = SampleBoat.class.getResourceAsStream("/trimwright/sample/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the sample boat is missing from the program");
            }
            byte[] bytes = in.readAllBytes();
            if (!Files.exists(file) || !Arrays.equals(Files.readAllBytes(file), bytes)) {
                AtomicFile.write(file, bytes, true);
            }
        }
    }
}
