package trimwright.desktop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** Where the window writes what went wrong, so that a user can find it and send it. */
final class LogFile {

    private static final String NAME = "window.log";
    private static final int MOST_BYTES = 1_000_000;
    private static Path file;

    private LogFile() {}

    /** Begins to write; without a folder that can be written to, nothing is. */
    static void begin(Path folder) {
        Logger logger = Logger.getLogger("trimwright");
        logger.setUseParentHandlers(false);
        try {
            Files.createDirectories(folder);
            Path to = folder.resolve(NAME);
            FileHandler handler = new FileHandler(to.toString().replace("%", "%%"), MOST_BYTES, 1, true);
            handler.setFormatter(new SimpleFormatter());
            logger.addHandler(handler);
            file = to;
        } catch (IOException e) {
            file = null;
        }
    }

    /** The file, or that there is none, in words. */
    static String told() {
        return file == null ? "No log could be written." : "Details are in " + file + ".";
    }
}
