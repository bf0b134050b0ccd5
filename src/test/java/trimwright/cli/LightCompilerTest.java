package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.management.ObjectName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.OtherProcess;

/** The virtual machine takes the directive, and says so itself. In processes of their own: the tests want both compilers. */
class LightCompilerTest {

    private static final String OPEN = "--add-opens=" + LightCompiler.DOOR + "=ALL-UNNAMED";

    @TempDir
    Path folder;

    @Test
    void theVirtualMachineLeavesOutItsSecondCompiler() throws Exception {
        Path own = folder.resolve("a folder, with \u00e4").resolve("own");
        for (String time : List.of("first", "second")) {
            String said = said(List.of(OPEN), own);
            assertTrue(said.startsWith("true"), time + ": " + said);
            assertTrue(said.contains("matching: *.*"), said);
            assertTrue(said.matches("(?s).*c2 directives:.*Exclude:true.*"), said);
            assertEquals(List.of(LightCompiler.FILE), files(own));
        }
    }

    @Test
    void aDirectiveThatSomethingElseWroteOverIsWrittenAnew() throws Exception {
        Files.writeString(folder.resolve(LightCompiler.FILE), "[{match: ");
        assertTrue(said(List.of(OPEN), folder).startsWith("true"));
    }

    @Test
    void behindAClosedDoorAllRunsAsUsualAndNothingIsWritten() throws Exception {
        Path own = folder.resolve("own");
        assertTrue(said(List.of(), own).startsWith("false"));
        assertFalse(Files.exists(own));
    }

    @Test
    void whereNothingCanBeKeptAllRunsAsUsual() throws Exception {
        Path taken = Files.writeString(folder.resolve("taken"), "mine");
        assertTrue(said(List.of(OPEN), taken).startsWith("false"));
        assertTrue(said(List.of(OPEN), Path.of("no home")).startsWith("false"));
        assertEquals("mine", Files.readString(taken));
        assertFalse(Files.exists(Path.of("no home")));
    }

    @Test
    void theJarOpensTheDoor() throws IOException {
        assertTrue(Files.readString(Path.of("pom.xml")).contains("<Add-Opens>" + LightCompiler.DOOR + "</Add-Opens>"));
    }

    @Test
    void longRunsKeepBothCompilers() {
        assertTrue(LightCompiler.suits());
        assertTrue(LightCompiler.suits("float", "a.boat.json"));
        assertFalse(LightCompiler.suits("float", "a.boat.json", "--tolerance"));
        assertFalse(LightCompiler.suits("inspect", "a.stl"));
    }

    private static String said(List<String> options, Path own) throws Exception {
        // Asked for again, this is what a plain start would have: both compilers.
        List<String> all = new ArrayList<>(List.of("-XX:TieredStopAtLevel=4"));
        all.addAll(options);
        Process process =
                OtherProcess.of(all, Other.class, own).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        return said;
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> there = Files.list(folder)) {
            return there.map(p -> p.getFileName().toString()).toList();
        }
    }

    /** Asks, and tells what the virtual machine holds then. */
    static final class Other {

        private Other() {}

        public static void main(String[] args) throws Exception {
            System.out.println(LightCompiler.ask(Path.of(args[0])));
            System.out.println(ManagementFactory.getPlatformMBeanServer()
                    .invoke(
                            new ObjectName("com.sun.management:type=DiagnosticCommand"),
                            "compilerDirectivesPrint",
                            null,
                            null));
        }
    }
}
