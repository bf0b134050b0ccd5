package trimwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;

/**
 * The boat that the first words of a command line name, read in a second thread while that line is taken apart, which takes a good part of the time that her
 * reading does. What is wrong with her file is told when she is asked for, as if she had been read then.
 */
final class BoatAhead {

    /** Nothing is read ahead. */
    static final BoatAhead NONE = new BoatAhead(Optional.empty(), new FutureTask<>(() -> null));

    private final Optional<String> file;
    private final FutureTask<LoadedBoat> boat;

    private BoatAhead(Optional<String> file, FutureTask<LoadedBoat> boat) {
        this.file = file;
        this.boat = boat;
    }

    /** @param arguments a command and its arguments; read ahead is what follows the command at once and is called like a boat file */
    static BoatAhead of(String... arguments) {
        if (arguments.length < 2 || !arguments[1].endsWith(".boat.json")) {
            return NONE;
        }
        String file = arguments[1];
        FutureTask<LoadedBoat> boat = new FutureTask<>(() -> BoatFile.read(Path.of(file)));
        Thread reading = new Thread(boat, "reading " + file);
        reading.setDaemon(true);
        reading.start();
        return new BoatAhead(Optional.of(file), boat);
    }

    /**
     * The boat of a file, which is read now unless it was read ahead.
     *
     * @throws trimwright.finding.UnusableInputException with every error in the file
     */
    LoadedBoat read(Path path) {
        if (!file.equals(Optional.of(path.toString()))) {
            return BoatFile.read(path);
        }
        try {
            return boat.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause;
            }
            throw new IllegalStateException(e);
        }
    }
}
