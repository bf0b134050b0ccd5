package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.Part;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.mesh.Solids;
import trimwright.mesh.StlWriter;

/** A part that is a mesh is brought to another place away from the pointer. Work waits here until it is let run. */
class AsidesTest {

    private static final String BOAT = """
            {"version": 1, "name": "Box", "water": {"densityGPerCm3": 1},
             "parts": [
               {"id": "box", "kind": "cylinder", "box": {"fromMm": [0, -50, 0], "toMm": [400, 50, 80]}, "massG": 1000,
                "centreMm": [200, 0, 24]},
               {"id": "sail", "kind": "fitting", "mesh": "sail.stl", "massG": 50}
             ]}
            """;

    private static final Vector3D AHEAD = new Vector3D(7.3, 0, 0);

    @TempDir
    Path folder;

    private final Deque<Runnable> work = new ArrayDeque<>();
    private final List<String> refusals = new ArrayList<>();
    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        StlWriter.write(folder.resolve("sail.stl"), Solids.box(180, -5, 80, 220, 5, 120));
        Path file = Files.writeString(folder.resolve("box.boat.json"), BOAT);
        desk = new Desk(work::add, Runnable::run, new Recovery(folder.resolve("kept")));
        desk.open(file, false, () -> {});
        letRun();
    }

    private void letRun() {
        while (!work.isEmpty()) {
            work.remove().run();
        }
    }

    private void drop(Vector3D by) {
        desk.moves().dragged("sail", by, refused -> refused.ifPresent(refusals::add));
    }

    private double aftEndMm() {
        return sail().shape().orElseThrow().bounds().minX();
    }

    private Part sail() {
        return desk.boat().get().boat().part("sail").orElseThrow();
    }

    @Test
    void theOutcomeIsThatOfTheFileReadAgain() {
        drop(AHEAD);
        assertEquals(180, aftEndMm(), 0, "nothing is done before its turn comes");
        assertTrue(desk.busy().get() && desk.unsaved().get(), "but it is known that something is to come");
        letRun();
        assertFalse(desk.busy().get());
        assertEquals(List.of(), refusals);
        assertEquals(Optional.empty(), desk.save());
        Part read = BoatFile.read(desk.path()).boat().part("sail").orElseThrow();
        assertEquals(read.shape().orElseThrow().bounds().minX(), aftEndMm(), 0);
        assertEquals(187.3, aftEndMm(), 1e-5);
        desk.undo();
        assertEquals(180, aftEndMm(), 0);
    }

    @Test
    void undoGivesUpWhatIsUnderWay() {
        drop(AHEAD);
        desk.undo();
        letRun();
        assertEquals(180, aftEndMm(), 0);
        assertFalse(desk.unsaved().get() || desk.busy().get());
        assertEquals(Optional.empty(), desk.redoName());
    }

    @Test
    void whatIsDoneMeanwhileIsNotLost() {
        drop(AHEAD);
        desk.edit("weight", b -> b.replacing(Edits.weighing(sail(), Optional.of(60.0), Optional.empty())));
        drop(new Vector3D(10, 0, 0));
        letRun();
        assertEquals(197.3, aftEndMm(), 1e-5);
        assertEquals(Optional.of(60.0), sail().weighedMassG());
        assertFalse(desk.busy().get());
    }

    @Test
    void recoveredWorkIsNotReplacedByABoatThatWasStillBeingRead() {
        desk.open(desk.path(), false, () -> {});
        LoadedBoat saved = desk.boat().get();
        desk.takeRecovered(saved, Edits.renamed(saved, "sail", "fin"));
        letRun();
        assertTrue(desk.boat().get().boat().part("fin").isPresent());
        assertTrue(desk.unsaved().get());
    }

    /** Leaving the field after Enter must not move the part once more. */
    @Test
    void aPlaceThatIsPutTwiceIsThatPlace() {
        PartField along = PartField.of(desk.boat().get().boat(), sail(), trimwright.report.Measure.METRIC).stream()
                .filter(f -> f.name().startsWith("Along"))
                .findFirst()
                .orElseThrow();
        assertTrue(along.slow());
        for (int i = 0; i < 2; i++) {
            desk.editAside("place", b -> along.change().in(b, Optional.of(250.0)), r -> r.ifPresent(refusals::add));
        }
        letRun();
        assertEquals(230, aftEndMm(), 1e-5);
        assertFalse(desk.busy().get());
    }

    @Test
    void whatCannotBeIsToldAndChangesNothing() throws IOException {
        Files.delete(folder.resolve("sail.stl"));
        drop(AHEAD);
        letRun();
        assertTrue(refusals.get(0).contains("sail.stl"), refusals.toString());
        assertEquals(180, aftEndMm(), 0);
        assertFalse(desk.busy().get() || desk.unsaved().get());
    }
}
