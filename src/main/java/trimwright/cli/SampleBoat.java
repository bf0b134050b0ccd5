package trimwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The sample boat: as it lies in the project's folder, or else taken from the program into a folder of its own. */
final class SampleBoat {

    private static final Path IN_PROJECT = Path.of("sample-meshes", "heron.boat.json");
    private static final List<String> FILES = List.of("heron.boat.json", "heron-hull.stl");

    private SampleBoat() {}

    static Path path() {
        return Files.isRegularFile(IN_PROJECT) ? IN_PROJECT : unpacked();
    }

    private static Path unpacked() {
        try {
            Path folder = Files.createTempDirectory("trimwright-sample");
            folder.toFile().deleteOnExit();
            for (String name : FILES) {
                Path file = folder.resolve(name);
                file.toFile().deleteOnExit();
                try (InputStream in = SampleBoat.class.getResourceAsStream("/trimwright/sample/" + name)) {
                    if (in == null) {
                        throw new IllegalStateException("the sample boat is missing from the program");
                    }
                    Files.copy(in, file);
                }
            }
            return folder.resolve(FILES.get(0));
        } catch (IOException e) {
            throw new UncheckedIOException("the sample boat could not be unpacked", e);
        }
    }
}
