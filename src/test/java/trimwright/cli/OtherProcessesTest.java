package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.OtherProcess;

/**
 * Every command in processes that may use one, two and eight processors: each writes the same bytes, and no file anywhere but where it was
 * told to, and asks for no connection, nor does any library that it uses.
 */
class OtherProcessesTest {

    private static final List<Integer> PROCESSORS = List.of(1, 2, 8);

    /** Where Java on Linux keeps a list of the machine's fonts once text was drawn; no setting of its keeps it from that. */
    private static final String FONTS = "home/.java/fonts/";

    @TempDir
    Path folder;

    @Test
    void sameBytesOnAnyNumberOfProcessorsAndNoFileThatNobodyAskedFor() throws Exception {
        Path in = Files.createDirectory(folder.resolve("in"));
        EveryCommand.prepare(in);
        Map<String, byte[]> before = contents(in);
        Map<Integer, Process> running = new TreeMap<>();
        for (int processors : PROCESSORS) {
            running.put(processors, started(in, processors));
        }
        Map<String, byte[]> first = null;
        for (int processors : PROCESSORS) {
            assertEquals(0, running.get(processors).waitFor());
            Set<String> more = new TreeSet<>(contents(own(processors)).keySet());
            more.removeIf(file -> file.replace('\\', '/').startsWith(FONTS));
            assertEquals(Set.of(), more, "files that nobody asked for");
            Path out = out(processors);
            Map<String, byte[]> now = contents(out);
            assertEquals(
                    EveryCommand.count(in, out),
                    now.keySet().stream().filter(n -> n.endsWith(".txt")).count());
            assertTrue(now.keySet().containsAll(EveryCommand.WRITTEN), () -> "written are only " + now.keySet());
            if (first != null) {
                same(first, now, "with " + processors + " processors");
            }
            first = now;
        }
        same(before, contents(in), "though it was only read");
    }

    private static void same(Map<String, byte[]> expected, Map<String, byte[]> found, String when) {
        assertEquals(expected.keySet(), found.keySet(), when);
        expected.forEach((name, bytes) -> {
            String one = comparable(name, bytes);
            String other = comparable(name, found.get(name));
            int at = 0;
            while (at < Math.min(one.length(), other.length()) && one.charAt(at) == other.charAt(at)) {
                at++;
            }
            int from = Math.max(0, at - 40);
            assertTrue(
                    one.equals(other),
                    name + " differs " + when + ": \"" + one.substring(from, Math.min(one.length(), at + 40))
                            + "\" and \"" + other.substring(from, Math.min(other.length(), at + 40)) + "\"");
        });
    }

    private Path own(int processors) {
        return folder.resolve("own-" + processors);
    }

    private Path out(int processors) {
        return folder.resolve("out-" + processors);
    }

    /** All commands, with a home, a working folder and a folder for passing files of their own, which are to stay empty. */
    private Process started(Path in, int processors) throws IOException {
        Path home = Files.createDirectories(own(processors).resolve("home"));
        Path work = Files.createDirectories(own(processors).resolve("work"));
        Path passing = Files.createDirectories(own(processors).resolve("passing"));
        ProcessBuilder process = OtherProcess.of(
                        List.of(
                                "-XX:ActiveProcessorCount=" + processors,
                                "-Djava.awt.headless=true",
                                "-Duser.home=" + home,
                                "-Djava.io.tmpdir=" + passing),
                        EveryCommand.class,
                        in,
                        Files.createDirectory(out(processors)))
                .directory(work.toFile())
                .inheritIO();
        process.environment().put("HOME", home.toString());
        process.environment().keySet().removeAll(Set.of("XDG_CONFIG_HOME", "XDG_CACHE_HOME", "DISPLAY"));
        return process.start();
    }

    private static Map<String, byte[]> contents(Path folder) throws IOException {
        Map<String, byte[]> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return contents;
    }

    /** The bytes as text, in a PDF without the moment at which it was made. */
    private static String comparable(String name, byte[] bytes) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        return name.endsWith(".pdf")
                ? text.replaceAll("D:\\d{14}[^)]*|\\d{4}-\\d\\d-\\d\\dT[0-9:+.Z-]*|/ID \\[[^]]*]", "")
                : text;
    }
}
