package trimwright.cli;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import trimwright.file.AtomicFile;

/**
 * Leaves a short run to the first, quick compiler of the virtual machine. Such a run goes through thousands of methods, each a few times: compiling the busiest
 * of them once more, and thoroughly, takes the processors longer than it saves (docs/decisions/0007-light-compiler.md).
 */
final class LightCompiler {

    static final String FILE = "quick-compiler.json";

    /** What the manifest of the jar opens for it (Add-Opens), module and package. */
    static final String DOOR = "jdk.management/com.sun.management.internal";

    private static final String DIRECTIVE = "[{match: \"*.*\", c2: {Exclude: true}}]\n";

    /** What is done sooner that way: measured one by one, docs/benchmarks.md. The others look through large meshes or work for many seconds. */
    private static final Set<String> SHORT_RUNS = Set.of("float", "waterlines", "dive", "righting", "sheet", "view");

    private static final String LONG_RUN = "--tolerance";

    private LightCompiler() {}

    /** Whether a command line is for a run that is done sooner with the quick compiler alone. */
    static boolean suits(String... arguments) {
        return arguments.length == 0
                || SHORT_RUNS.contains(arguments[0])
                        && !Arrays.asList(arguments).contains(LONG_RUN);
    }

    /**
     * Asks for it. Where the virtual machine has no such thing to ask for, or its directive cannot be kept, everything runs as usual and takes longer.
     *
     * @param folder where the directive is kept, since the virtual machine takes it from a file alone
     * @return whether it knew what to do
     */
    static boolean ask(Path folder) {
        if (!folder.isAbsolute()) {
            // No home: anything kept would lie about in the folder at hand.
            return false;
        }
        try {
            // By its managed beans, as anyone outside would, it takes a fifth of a second of processor time; at the
            // door behind them, 4 ms.
            Class.forName("com.sun.management.internal.PlatformMBeanProviderImpl");
            Class<?> commands = Class.forName("com.sun.management.internal.DiagnosticCommandImpl");
            Method all = commands.getDeclaredMethod("getDiagnosticCommandMBean");
            Method execute = commands.getDeclaredMethod("executeDiagnosticCommand", String.class);
            all.setAccessible(true);
            execute.setAccessible(true);
            Object said = execute.invoke(all.invoke(null), "Compiler.directives_add \"" + kept(folder) + "\"");
            return String.valueOf(said).startsWith("1 ");
        } catch (ReflectiveOperationException | IOException | RuntimeException e) {
            // Nothing but time depends on it.
            return false;
        }
    }

    private static Path kept(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        if (!Files.exists(file) || !Files.readString(file).equals(DIRECTIVE)) {
            Files.createDirectories(folder);
            AtomicFile.write(file, DIRECTIVE.getBytes(StandardCharsets.US_ASCII), true);
        }
        return file;
    }
}
