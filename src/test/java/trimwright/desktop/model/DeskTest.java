package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.TestMeshes;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.file.BoatFile;
import trimwright.finding.Code;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;
import trimwright.mesh.StlWriter;
import trimwright.mesh.TriangleMesh;
import trimwright.report.Measure;

/**
 * The window without its controls. The boat is a box 400 × 100 mm in water of 1 g/cm³ that weighs 1200 g: she draws 30 mm, and a
 * weight w at x lists or trims her by the formulas of any handbook.
 */
class DeskTest {

    private static final String BOX = """
            {"version": 1, "name": "Box", "water": {"densityGPerCm3": 1}, "paintedLine": [[0, 0, 30], [400, 0, 30]],
             "parts": [
               {"id": "box", "kind": "cylinder", "box": {"fromMm": [0, -50, 0], "toMm": [400, 50, 80]}, "massG": 1000,
                "centreMm": [200, 0, 24]},
               {"id": "lead", "kind": "fitting", "inside": "box", "centreMm": [200, 0, 24], "massG": 200}
             ]}
            """;

    @TempDir
    Path folder;

    private Path file;
    private Desk desk;
    private final List<Problem> problems = new ArrayList<>();

    @BeforeEach
    void open() throws IOException {
        file = Files.writeString(folder.resolve("box.boat.json"), BOX);
        desk = new Desk(Runnable::run, Runnable::run, new Recovery(folder.resolve("kept")));
        desk.onProblem(problems::add);
        desk.open(file, false, () -> {});
    }

    private double trimDeg() {
        return desk.flotation().get().settled().orElseThrow().trimDeg();
    }

    private Part lead() {
        return desk.boat().get().boat().part("lead").orElseThrow();
    }

    @Test
    void anOpenedBoatFloats() {
        assertEquals(30, desk.flotation().get().settled().orElseThrow().plane().heightMm(), 1e-9);
        assertFalse(desk.unsaved().get());
        assertTrue(problems.isEmpty());
        assertTrue(desk.whole().get().attitudes().size() >= 1);
    }

    /** Closed form: 200 g moved 60 mm ahead trims by the moment over weight times the longitudinal metacentric height. */
    @Test
    void draggingShowsWhatTheDropThenKeeps() {
        desk.moves().drag("lead", new Vector3D(60, 0, 0));
        double dragged = trimDeg();
        double bm = 400.0 * 400 / 12 / 30;
        double gm = 15 + bm - 24;
        assertEquals(-Math.toDegrees(Math.atan(200 * 60 / (1200 * gm))), dragged, 0.01);
        assertEquals(200, lead().givenCentreMm().orElseThrow().getX(), 0, "the file's boat is not touched by a drag");
        desk.moves().dragged("lead", new Vector3D(60, 0, 0), refused -> assertEquals(Optional.empty(), refused));
        assertEquals(dragged, trimDeg(), 1e-9);
        assertEquals(260, lead().givenCentreMm().orElseThrow().getX(), 0);
        assertEquals(0, desk.before().get().settled().orElseThrow().trimDeg(), 1e-9, "before is before the drag");
        assertTrue(desk.unsaved().get());
        desk.undo();
        assertEquals(0, trimDeg(), 1e-9);
        assertFalse(desk.unsaved().get());
        desk.redo();
        assertEquals(dragged, trimDeg(), 1e-9);
    }

    @Test
    void aDragThatEndsWhereItBeganIsNoStep() {
        desk.moves().drag("lead", new Vector3D(60, 0, 0));
        desk.moves().dragged("lead", Vector3D.ZERO, refused -> {});
        assertEquals(Optional.empty(), desk.undoName());
        assertEquals(0, trimDeg(), 1e-9);
    }

    @Test
    void movingAContainerTakesAlongWhatStandsInIt() {
        desk.edit("move", b -> Edits.moved(b, "box", new Vector3D(10, 0, 0)));
        assertEquals(210, lead().givenCentreMm().orElseThrow().getX(), 0);
    }

    @Test
    void whatTheFileCannotHoldIsRefusedInWordsAndChangesNothing() {
        String before = desk.boat().get().text();
        Optional<String> refused = desk.edit("delete box", b -> b.without("box"));
        assertTrue(refused.orElseThrow().contains("box"), refused.get());
        assertEquals(before, desk.boat().get().text());
        assertEquals(Optional.empty(), desk.undoName());
    }

    @Test
    void everyFieldOfAPartTakesItsOwnValueBack() {
        for (Part part : desk.boat().get().boat().parts()) {
            for (PartField field : PartField.of(desk.boat().get().boat(), part, Measure.METRIC)) {
                Optional<Double> value =
                        field.text().isEmpty() ? Optional.empty() : Optional.of(Double.parseDouble(field.text()));
                String before = desk.boat().get().text();
                assertEquals(
                        Optional.empty(),
                        desk.edit(field.name(), b -> field.change().in(b, value)),
                        field.name());
                assertEquals(before, desk.boat().get().text(), field.name());
            }
        }
    }

    @Test
    void savedAndReadAgainSheIsTheSame() {
        desk.moves().dragged("lead", new Vector3D(60, 0, 0), refused -> {});
        assertEquals(Optional.empty(), desk.save());
        assertFalse(desk.unsaved().get());
        assertEquals(desk.boat().get().text(), BoatFile.read(file).text());
        assertEquals(
                desk.boat().get().boat().parts(), BoatFile.read(file).boat().parts());
    }

    @Test
    void aSampleIsNeverSavedOver() {
        desk.open(file, true, () -> {});
        assertTrue(desk.needsNewFile());
        assertEquals(Optional.empty(), desk.saveTo(folder.resolve("mine.boat.json"), false));
        assertFalse(desk.needsNewFile());
    }

    /** Work on her that is not saved belongs to the new file, also after a crash. */
    @Test
    void savedElsewhereSheBelongsThere() throws IOException {
        Path other = folder.resolve("other").resolve("mine.boat.json");
        Files.createDirectories(other.getParent());
        assertEquals(Optional.empty(), desk.saveTo(other, false));
        assertEquals(other, desk.boat().get().path());
        assertFalse(desk.unsaved().get());
        assertEquals(Optional.empty(), desk.edit("salt water", b -> Edits.water(b, 10, 30)));
        assertEquals(other, desk.boat().get().path());
        assertEquals(Optional.empty(), desk.save());
        assertEquals(desk.boat().get().text(), BoatFile.read(other).text());
        assertEquals(BOX, Files.readString(file));
    }

    @Test
    void aFileChangedByAnotherProgramIsNoticed() throws IOException {
        assertFalse(desk.isChangedByOthers());
        Files.writeString(file, BOX.replace("Box", "Other"));
        assertTrue(desk.isChangedByOthers());
    }

    @Test
    void anotherBoatThatCannotBeReadLeavesTheFirst() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.boat.json"), "{\"version\": 1, \"parts\": 3}");
        desk.open(bad, false, () -> {});
        assertEquals("Box", desk.boat().get().boat().name());
        assertEquals(1, problems.size());
        assertTrue(
                problems.get(0).lines().get(0).contains("parts"),
                problems.get(0).toString());
        assertTrue(problems.get(0).unexpected().isEmpty());
    }

    /** A process id that no process can have stands for a window that crashed. */
    @Test
    void workOutlivesACrash() throws IOException {
        long nobody = 1L << 40;
        Path kept = folder.resolve("other");
        Desk crashed = new Desk(Runnable::run, Runnable::run, new Recovery(kept, nobody));
        crashed.open(file, false, () -> {});
        crashed.moves().dragged("lead", new Vector3D(60, 0, 0), refused -> {});
        Recovery.Lost lost = new Recovery(kept).lost().get(0);
        assertEquals(crashed.boat().get().text(), lost.boat().text());
        Recovery.forget(lost);
        assertEquals(List.of(), new Recovery(kept).lost());
    }

    /** Two boxes that share a corner: what they share counts twice, whatever else is right. */
    @Test
    void aHullThatOverlapsItselfIsToldAtHerPart() throws IOException {
        TriangleMesh one = Solids.box(0, 0, 0, 300, 100, 80);
        TriangleMesh two = Solids.box(200, 50, 20, 500, 150, 60);
        StlWriter.write(folder.resolve("two.stl"), TestMeshes.together(one, two));
        Path boat = Files.writeString(folder.resolve("two.boat.json"), """
                {"version": 1, "parts": [
                  {"id": "hull", "kind": "hull", "mesh": "two.stl", "build": "sealed", "massG": 900, "centreMm": [200, 60, 30]}]}
                """);
        desk.open(boat, false, () -> {});
        List<Misfit> misfits = desk.misfits().get();
        assertEquals(1, misfits.size(), misfits::toString);
        assertEquals(Code.MESH_SHELLS_OVERLAP, misfits.get(0).finding().code());
        assertEquals(Set.of("hull"), misfits.get(0).parts());
    }

    @Test
    void nothingIsKeptAsideOfASavedBoat() throws IOException {
        desk.moves().dragged("lead", new Vector3D(60, 0, 0), refused -> {});
        try (var files = Files.list(folder.resolve("kept"))) {
            assertEquals(1, files.count());
        }
        desk.save();
        try (var files = Files.list(folder.resolve("kept"))) {
            assertEquals(0, files.count());
        }
    }

    @Test
    void figuresTellWhatChangedAndWhatIsWanted() {
        desk.moves().dragged("lead", new Vector3D(60, 0, 0), refused -> {});
        List<Figure> figures = Figures.of(desk.before().get(), desk.flotation().get(), Measure.METRIC);
        Figure bow = figures.get(0);
        assertEquals("on the paint", bow.before());
        assertTrue(bow.now().endsWith("too deep"), bow.now());
        assertEquals(Figure.Standing.OFF, bow.standing());
        assertEquals("OFF HER LINE", Figures.shortVerdict(desk.flotation().get()));
        assertEquals("AS WANTED", Figures.shortVerdict(desk.before().get()));
    }

    @Test
    void aBoatThatSinksIsSaidToSink() {
        desk.replace("weigh", Edits.weighing(lead(), Optional.of(5000.0), Optional.empty()));
        assertEquals("SHE SINKS", Figures.shortVerdict(desk.flotation().get()));
        assertEquals(Figure.Standing.LOST, Figures.standing(desk.flotation().get()));
        assertTrue(Figures.of(desk.before().get(), desk.flotation().get(), Measure.METRIC).stream()
                .allMatch(f -> !f.now().isEmpty()));
    }

    @Test
    void aLockedPartIsNotNudgedButCanBeTyped() {
        desk.locked().add("lead");
        assertTrue(
                desk.moves().nudge("lead", new Vector3D(1, 0, 0)).orElseThrow().contains("locked"));
        assertEquals(200, lead().givenCentreMm().orElseThrow().getX(), 0);
        assertEquals(Optional.empty(), desk.edit("type", b -> Edits.moved(b, "lead", new Vector3D(5, 0, 0))));
        desk.locked().remove("lead");
        assertEquals(Optional.empty(), desk.moves().nudge("lead", new Vector3D(1, 0, 0)));
        assertEquals(206, lead().givenCentreMm().orElseThrow().getX(), 0);
    }

    @Test
    void aPartIsRenamedAlsoWhereOthersStandInIt() {
        assertEquals(Optional.empty(), desk.edit("rename", b -> Edits.renamed(b, "box", "hold")));
        assertEquals(Optional.of("hold"), lead().inside());
        assertTrue(desk.boat().get().boat().part("box").isEmpty());
        assertTrue(desk.edit("rename", b -> Edits.renamed(b, "hold", "lead")).isPresent(), "a name that is taken");
        assertTrue(desk.edit("rename", b -> Edits.renamed(b, "hold", "")).isPresent(), "no name");
    }

    @Test
    void everyKindOfNewPartFitsIntoTheFile() {
        for (Kind kind : List.of(Kind.BALLAST, Kind.FOAM, Kind.FITTING, Kind.CYLINDER, Kind.TANK)) {
            Part part = FreshPart.of(desk.boat().get().boat(), kind, new Vector3D(200, 0, 40));
            assertEquals(Optional.empty(), desk.edit("add", b -> b.plus(List.of(part))), kind.word());
            assertEquals(
                    kind, desk.boat().get().boat().part(part.id()).orElseThrow().kind());
        }
        Part tank = desk.boat().get().boat().part("tank").orElseThrow();
        assertEquals(Optional.of("cylinder"), tank.inside(), "a tank goes into the cylinder");
    }

    @Test
    void whatDoesNotFitIsToldWithItsPlace() {
        desk.edit("move", b -> b.replacing(Edits.moved(lead(), new Vector3D(400, 0, 0))));
        Misfit misfit = desk.misfits().get().get(0);
        assertEquals(Set.of("lead", "box"), misfit.parts());
        assertEquals(600, misfit.room().orElseThrow().middleMm().getX(), 0);
        desk.undo();
        assertEquals(List.of(), desk.misfits().get());
    }

    /** 1200 g in water of 1 g/cm³ is 30 mm of 400 × 100 mm: at 40 mm the box would carry 1600 g. */
    @Test
    void aTriedWaterlineTellsWhatItWouldCarry() {
        Trial trial = new Trial(desk, Runnable::run, Runnable::run);
        trial.at(WaterPlane.level(40), true);
        assertEquals(1600, trial.tried().get().line().displacementG(), 1e-6);
        assertEquals(null, desk.looked().get(), "while it is held she stays as she is");
        trial.at(WaterPlane.level(40), false);
        assertEquals(40, desk.looked().get().water().heightMm(), 0);
        assertTrue(
                desk.looked().get().caption().contains("400.0 g more"),
                desk.looked().get().caption());
        desk.lookAt(null);
        assertEquals(null, trial.tried().get());
    }
}
