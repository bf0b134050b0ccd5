package trimwright.desktop.model;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import trimwright.file.AtomicFile;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.finding.UnusableInputException;

/** Unsaved work, kept aside after every change, so that it outlives a crash. Each window has a file of its own there. */
public final class Recovery {

    private static final Logger LOG = Logger.getLogger(Recovery.class.getName());
    private static final String ENDING = ".unsaved";
    private static final String ENDING_OF_READINGS = ".unsaved-readings";

    private final Path folder;
    private final String ending;
    private final Path own;

    /** @param folder where the window keeps what is its own */
    public Recovery(Path folder) {
        this(folder, ProcessHandle.current().pid());
    }

    Recovery(Path folder, long pid) {
        this(folder, pid, ENDING);
    }

    private Recovery(Path folder, long pid, String ending) {
        this.folder = folder;
        this.ending = ending;
        own = folder.resolve(pid + ending);
    }

    /** The same for readings of a boat. */
    public static Recovery ofReadings(Path folder) {
        return ofReadings(folder, ProcessHandle.current().pid());
    }

    static Recovery ofReadings(Path folder, long pid) {
        return new Recovery(folder, pid, ENDING_OF_READINGS);
    }

    /**
     * Work that a window left behind when it ended without closing.
     *
     * @param kept the file it is kept in
     * @param boatFile the boat file it belongs to
     * @param text what the boat file, or that of her readings, would have become
     */
    public record Lost(Path kept, Path boatFile, String text) {

        /** The boat as she was, with the meshes as they are now. */
        public LoadedBoat boat() {
            return BoatFile.edited(BoatFile.read(boatFile), text);
        }
    }

    /** Keeps the boat as she is now. */
    public void keep(LoadedBoat boat) throws IOException {
        keep(boat.path(), boat.text());
    }

    private void keep(Path boatFile, String kept) throws IOException {
        Files.createDirectories(folder);
        Properties values = new Properties();
        values.setProperty("file", boatFile.toAbsolutePath().toString());
        values.setProperty("text", kept);
        started(ProcessHandle.current()).ifPresent(time -> values.setProperty("started", time));
        StringWriter text = new StringWriter();
        values.store(text, null);
        try {
            AtomicFile.write(own, text.toString().getBytes(StandardCharsets.UTF_8), true);
        } catch (UnusableInputException e) {
            throw new IOException("unsaved work could not be kept in " + own, e);
        }
    }

    /** All is saved, or given up on purpose. */
    public void forget() throws IOException {
        Files.deleteIfExists(own);
    }

    /** Keeps the boat where that is possible; where it is not, the log says so and work goes on. */
    void keepLogged(LoadedBoat boat) {
        keepLogged(boat.path(), boat.text());
    }

    void keepLogged(Path boatFile, String kept) {
        try {
            keep(boatFile, kept);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "unsaved work could not be kept aside", e);
        }
    }

    /** Forgets where that is possible. */
    void forgetLogged() {
        try {
            forget();
        } catch (IOException e) {
            LOG.log(Level.WARNING, "kept work could not be taken away", e);
        }
    }

    /** Forgets what was taken up again or given up. */
    public static void forget(Lost lost) throws IOException {
        Files.deleteIfExists(lost.kept());
    }

    /** What windows that run no more have left; those that cannot be read are left where they are. */
    public List<Lost> lost() throws IOException {
        List<Lost> found = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return found;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ending)).toList()) {
                Properties values = values(file);
                if (!file.equals(own) && !isRunning(file, values)) {
                    lost(file, values).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    /** Whether the window that keeps its work there still runs. A number of a process is given again, say after the machine was started anew. */
    private boolean isRunning(Path file, Properties values) {
        String name = file.getFileName().toString();
        try {
            long pid = Long.parseLong(name.substring(0, name.length() - ending.length()));
            Optional<ProcessHandle> process = ProcessHandle.of(pid).filter(ProcessHandle::isAlive);
            String started = values.getProperty("started");
            return process.isPresent()
                    && (started == null || started.equals(started(process.get()).orElse(started)));
        } catch (NumberFormatException e) {
            return true;
        }
    }

    private static Optional<String> started(ProcessHandle process) {
        return process.info().startInstant().map(Instant::toString);
    }

    /** What the file holds; nothing where it cannot be read. */
    private static Properties values(Path file) {
        Properties values = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            values.load(reader);
        } catch (IOException | IllegalArgumentException e) {
            values.clear();
        }
        return values;
    }

    private static Optional<Lost> lost(Path file, Properties values) {
        String boatFile = values.getProperty("file");
        String text = values.getProperty("text");
        return boatFile == null || text == null
                ? Optional.empty()
                : Optional.of(new Lost(file, Path.of(boatFile), text));
    }
}
