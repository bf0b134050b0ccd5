package trimwright.cli;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Optional;

/** The way from the command line to the window, which is looked for by name: no command may load the window's toolkit. */
@FunctionalInterface
interface WindowDoor {

    /**
     * Opens the window and waits until it is closed.
     *
     * @param file a boat file, or the mesh of a hull
     * @param sample whether it is the sample, which is never saved over
     * @return why there is no window; empty after it was closed
     */
    Optional<String> open(Path file, boolean sample);

    /** The real one. */
    static Optional<String> reflective(Path file, boolean sample) {
        try {
            Class<?> launcher = Class.forName("trimwright.desktop.Launcher");
            String reason = (String)
                    launcher.getMethod("open", Path.class, boolean.class).invoke(null, file, sample);
            return Optional.of(reason).filter(r -> !r.isEmpty());
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the window failed: " + e.getCause(), e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the window is missing from the program", e);
        }
    }
}
