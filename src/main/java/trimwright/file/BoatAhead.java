package trimwright.file;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * A boat that is read in a second thread while the command line is taken apart or the toolkit starts, which takes about as long. What is wrong with her file is told when
 * she is asked for, as if she had been read then.
 */
public final class BoatAhead implements Callable<LoadedBoat> {

    private final String file;
    private final FutureTask<LoadedBoat> boat;

    private BoatAhead(String file) {
        this.file = file;
        boat = new FutureTask<>(() -> BoatFile.read(Path.of(file)));
    }

    /** Begins to read. */
    public static BoatAhead of(String file) {
        BoatAhead ahead = new BoatAhead(file);
        Thread reading = new Thread(ahead.boat, "reading " + file);
        reading.setDaemon(true);
        reading.start();
        return ahead;
    }

    /** Whether it is this file that is read. */
    public boolean isOf(Path path) {
        return file.equals(path.toString());
    }

    /**
     * Waits until she is read.
     *
     * @throws trimwright.finding.UnusableInputException with every error in the file
     */
    @Override
    public LoadedBoat call() {
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
