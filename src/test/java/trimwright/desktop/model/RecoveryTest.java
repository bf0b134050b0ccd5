package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.OtherProcess;
import trimwright.file.BoatFile;

/** What becomes of unsaved work when a window is killed, and of a file that two windows have open. */
class RecoveryTest {

    private static final String BOX = """
            {"version": 1, "name": "Box", "water": {"densityGPerCm3": 1},
             "parts": [
               {"id": "box", "kind": "cylinder", "box": {"fromMm": [0, -50, 0], "toMm": [400, 50, 80]}, "massG": 1000,
                "centreMm": [200, 0, 24]}
             ]}
            """;

    @TempDir
    Path folder;

    private Path kept() {
        return folder.resolve("kept");
    }

    private Path boat() throws IOException {
        return Files.writeString(folder.resolve("box.boat.json"), BOX);
    }

    private Desk opened(Path file) {
        Desk desk = new Desk(Runnable::run, Runnable::run, new Recovery(kept()));
        desk.open(file, false, () -> {});
        return desk;
    }

    /** Keeps work as a window does, and waits to be killed. */
    static final class Working {
        private Working() {}

        public static void main(String[] args) throws IOException {
            new Recovery(Path.of(args[0])).keep(BoatFile.read(Path.of(args[1])));
            System.out.write('.');
            System.out.flush();
            System.in.read();
        }
    }

    @Test
    void theWorkOfAKilledProcessIsFoundAndThatOfARunningOneIsLeft() throws Exception {
        Path file = boat();
        Process window = OtherProcess.of(List.of(), Working.class, kept(), file).start();
        try {
            assertEquals('.', window.getInputStream().read());
            assertEquals(List.of(), new Recovery(kept()).lost(), "the other window runs");
        } finally {
            window.destroyForcibly();
            assertTrue(window.waitFor(60, TimeUnit.SECONDS));
        }
        List<Recovery.Lost> lost = new Recovery(kept()).lost();
        assertEquals(1, lost.size());
        assertEquals(BOX, lost.get(0).text());
        assertEquals(file, lost.get(0).boatFile());
    }

    /** After a restart of the machine another program may have the number of the window that crashed. */
    @Test
    void aNumberThatWasGivenAgainHidesNoWork() throws IOException {
        Path file = boat();
        Optional<Instant> started = ProcessHandle.current().info().startInstant();
        ProcessHandle another = ProcessHandle.allProcesses()
                .filter(p -> p.info().startInstant().isPresent())
                .filter(p -> !p.info().startInstant().equals(started))
                .findAny()
                .orElseThrow();
        new Recovery(kept(), another.pid()).keep(BoatFile.read(file));
        assertEquals(1, new Recovery(kept()).lost().size());
    }

    @Test
    void rubbishAmongTheKeptWorkIsPassedOver() throws IOException {
        Files.createDirectories(kept());
        Files.write(kept().resolve("1099511627776.unsaved"), new byte[] {(byte) 0xFF, 0, 1});
        Files.writeString(kept().resolve("1099511627777.unsaved"), "file=\\u12");
        Files.writeString(kept().resolve("mine.unsaved"), "file=a\ntext=b");
        assertEquals(List.of(), new Recovery(kept()).lost());
    }

    @Test
    void theSecondWindowIsToldThatTheFirstHasSaved() throws IOException {
        Path file = boat();
        Desk first = opened(file);
        Desk second = opened(file);
        first.edit("move", b -> Edits.moved(b, "box", new Vector3D(5, 0, 0)));
        second.edit("move", b -> Edits.moved(b, "box", new Vector3D(0, 5, 0)));
        assertEquals(Optional.empty(), first.save());
        assertTrue(second.isChangedByOthers(), "the second would save over what the first wrote");
        assertFalse(first.isChangedByOthers());
    }

    @Test
    void aFileThatIsNoTextAnyMoreCountsAsChanged() throws IOException {
        Path file = boat();
        Desk desk = opened(file);
        Files.write(file, "{\"name\": \"Möwe\"}".getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(desk.isChangedByOthers());
    }

    @Test
    void aFileThatWasRemovedIsWrittenAnewAndAFolderThatWasRemovedIsTold() throws IOException {
        Path home = Files.createDirectory(folder.resolve("home"));
        Path file = Files.writeString(home.resolve("box.boat.json"), BOX);
        Desk desk = opened(file);
        desk.edit("move", b -> Edits.moved(b, "box", new Vector3D(5, 0, 0)));
        Files.delete(file);
        assertEquals(Optional.empty(), desk.save());
        assertEquals(desk.boat().get().text(), Files.readString(file));

        desk.edit("move", b -> Edits.moved(b, "box", new Vector3D(5, 0, 0)));
        Files.delete(file);
        Files.delete(home);
        String refused = desk.save().orElseThrow();
        assertTrue(refused.contains("no folder " + home), refused);
        assertTrue(desk.unsaved().get(), "she counts as saved");
        assertEquals(desk.boat().get().text(), keptText(), "the work is no longer kept aside");
    }

    private String keptText() throws IOException {
        Path own = kept().resolve(ProcessHandle.current().pid() + ".unsaved");
        Properties values = new Properties();
        try (var reader = Files.newBufferedReader(own)) {
            values.load(reader);
        }
        return values.getProperty("text");
    }
}
