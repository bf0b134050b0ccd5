package trimwright.desktop;

import java.nio.file.Path;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import trimwright.file.OwnFolder;

/**
 * Opens the window. A class apart from the application, since the toolkit reads its settings when the application class
 * is loaded.
 */
public final class Launcher {

    /** Held, since loggers are forgotten otherwise. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private Launcher() {}

    /**
     * Opens the window and waits until it is closed. The command line calls this by name.
     *
     * @param file a boat file, or the mesh of a hull
     * @param sample whether it is the sample, which is never saved over
     * @return why there is no window; empty after it was closed
     */
    public static String open(Path file, boolean sample) {
        // Software drivers, as in virtual machines, would otherwise be refused and leave the 3D view empty.
        if (System.getProperty("prism.forceGPU") == null) {
            System.setProperty("prism.forceGPU", "true");
        }
        // The toolkit unpacks its libraries, once, and would make a folder of its own for that.
        if (System.getProperty("javafx.cachedir") == null && OwnFolder.usual().isAbsolute()) {
            System.setProperty(
                    "javafx.cachedir", OwnFolder.usual().resolve("toolkit").toString());
        }
        // The toolkit warns that it does not come as a module, which does no harm.
        TOOLKIT.setLevel(Level.SEVERE);
        try {
            WindowApplication.opening(file, sample);
            Application.launch(WindowApplication.class);
            return "";
        } catch (UnsupportedOperationException e) {
            return "no display";
        }
    }
}
