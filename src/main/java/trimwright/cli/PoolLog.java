package trimwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import trimwright.file.AtomicFile;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/**
 * The dated history of a boat's pool tests, in a folder beside her file: of each a text to be read or printed, and a copy of the readings. What is there is never
 * replaced.
 */
final class PoolLog {

    private static final String ENDING = ".boat.json";
    private static final int MOST_A_DAY = 1000;

    private PoolLog() {}

    /**
     * Adds to the history.
     *
     * @param boat the boat file
     * @param day as in 2026-05-17; what cannot stand in the name of a file becomes a dash
     * @return the text
     * @throws UnusableInputException when it cannot be written
     */
    static Path keep(Path boat, String day, String text, Path readings) {
        String name = String.valueOf(boat.getFileName());
        String base = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
        Path folder = boat.toAbsolutePath().resolveSibling(base + ".pool-log");
        String date = day.replaceAll("[^0-9A-Za-z.-]", "-");
        try {
            Files.createDirectories(folder);
            for (int i = 1; i <= MOST_A_DAY; i++) {
                Path kept = folder.resolve(date + "-" + i + ".txt");
                Path copy = folder.resolve(date + "-" + i + ".pool.json");
                if (!Files.exists(kept) && !Files.exists(copy)) {
                    AtomicFile.write(copy, Files.readAllBytes(readings), false);
                    AtomicFile.write(kept, text.getBytes(StandardCharsets.UTF_8), false);
                    return kept;
                }
            }
            throw new IOException("there are " + MOST_A_DAY + " tests of that day already");
        } catch (IOException e) {
            throw new UnusableInputException(Finding.of(
                    Code.FILE_NOT_WRITTEN,
                    new Place.InFile(folder.toString()),
                    "reason",
                    String.valueOf(e.getMessage())));
        }
    }
}
