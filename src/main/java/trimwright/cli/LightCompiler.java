package trimwright.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import javax.management.JMException;
import javax.management.ObjectName;

/**
 * Leaves a run of a few seconds to the first, quick compiler of the virtual machine. A sheet goes through ten thousand methods of four libraries, each a few times:
 * compiling the busiest of them once more, and thoroughly, takes two processors longer than it saves (docs/decisions/0007-light-compiler.md).
 */
final class LightCompiler {

    private static final String DIRECTIVE = "[{match: \"*.*\", c2: {Exclude: true}}]";

    private LightCompiler() {}

    /** Asks for it in a thread of its own; where the virtual machine has no such thing to ask for, everything runs as usual and takes longer. */
    static void begin() {
        Thread thread = new Thread(LightCompiler::ask, "light compiler");
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler((t, failure) -> {});
        thread.start();
    }

    /** Asks the virtual machine, and says whether it knew what to do. */
    static boolean ask() {
        try {
            // It is taken from a file alone. Without CREATE, so that none is left where the program ends meanwhile.
            Path directives = Files.createTempFile("trimwright", ".json");
            directives.toFile().deleteOnExit();
            try {
                Files.writeString(directives, DIRECTIVE, StandardOpenOption.WRITE);
                ManagementFactory.getPlatformMBeanServer()
                        .invoke(
                                new ObjectName("com.sun.management:type=DiagnosticCommand"),
                                "compilerDirectivesAdd",
                                new Object[] {new String[] {directives.toString()}},
                                new String[] {String[].class.getName()});
            } finally {
                Files.deleteIfExists(directives);
            }
            return true;
        } catch (IOException | JMException e) {
            // Nothing but time depends on it.
            return false;
        }
    }
}
