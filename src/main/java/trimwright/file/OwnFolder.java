package trimwright.file;

import java.nio.file.Path;
import java.util.Map;

/** The folder for what the program keeps for itself: settings, what a crash would lose, and the like. Nothing else is written where the user did not say so. */
public final class OwnFolder {

    private OwnFolder() {}

    /** As the property {@code trimwright.home} says, or else where the system has such things; it need not be there. */
    public static Path usual() {
        String told = System.getProperty("trimwright.home");
        return told != null
                ? Path.of(told)
                : usual(System.getProperty("os.name"), Path.of(System.getProperty("user.home")), System.getenv());
    }

    /**
     * Where the system has such things: the XDG base directory specification on Linux and the like, Apple's file system guide, and the
     * roaming application data of Windows.
     *
     * @param environment variables of the environment
     */
    static Path usual(String system, Path home, Map<String, String> environment) {
        if (system.startsWith("Windows")) {
            String data = environment.get("APPDATA");
            return (data == null ? home.resolve("AppData").resolve("Roaming") : Path.of(data)).resolve("Trimwright");
        }
        if (system.startsWith("Mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Trimwright");
        }
        String config = environment.get("XDG_CONFIG_HOME");
        // The specification says to pass over a path that is not absolute.
        boolean named = config != null && Path.of(config).isAbsolute();
        return (named ? Path.of(config) : home.resolve(".config")).resolve("trimwright");
    }
}
