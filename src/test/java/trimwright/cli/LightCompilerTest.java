package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.management.ObjectName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.OtherProcess;

/** The virtual machine takes the directive, says so itself, and no file is left. In a process of its own: the tests want both compilers. */
class LightCompilerTest {

    @TempDir
    Path folder;

    @Test
    void theVirtualMachineLeavesOutItsSecondCompiler() throws Exception {
        Process process = OtherProcess.of(List.of("-Djava.io.tmpdir=" + folder), Other.class)
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        assertTrue(said.contains("matching: *.*"), said);
        assertTrue(said.matches("(?s).*c2 directives:.*Exclude:true.*"), said);
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(), left.toList());
        }
    }

    /** Asks, and tells what the virtual machine holds then. */
    static final class Other {

        private Other() {}

        public static void main(String[] args) throws Exception {
            System.out.println(LightCompiler.ask());
            System.out.println(ManagementFactory.getPlatformMBeanServer()
                    .invoke(
                            new ObjectName("com.sun.management:type=DiagnosticCommand"),
                            "compilerDirectivesPrint",
                            null,
                            null));
        }
    }
}
