package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.Boat;
import trimwright.boat.Water;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;
import trimwright.file.PoolFile;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.PoolOutcome;
import trimwright.plan.pool.Tolerance;

/** Readings in the window without its controls, on a box that draws 30 mm. */
class ReadingsDeskTest {

    private static final String BOX = """
            {"version": 1, "name": "Box", "water": {"densityGPerCm3": 1}, "paintedLine": [[0, 0, 30], [400, 0, 30]],
             "parts": [
               {"id": "box", "kind": "cylinder", "box": {"fromMm": [0, -50, 0], "toMm": [400, 50, 80]}, "massG": 1000,
                "centreMm": [200, 0, 24], "plusMinus": {"massG": 30}},
               {"id": "tank", "kind": "tank", "inside": "box", "box": {"fromMm": [150, -30, 5], "toMm": [250, 30, 25]}},
               {"id": "lead", "kind": "fitting", "inside": "box", "centreMm": [200, 20, 24], "massG": 100, "mirror": true}
             ]}
            """;

    @TempDir
    Path folder;

    private Desk desk;
    private ReadingsDesk readings;
    private PoolTestDesk tests;
    private Timeline timeline;

    @BeforeEach
    void open() throws IOException {
        Path file = Files.writeString(folder.resolve("box.boat.json"), BOX);
        desk = new Desk(Runnable::run, Runnable::run, new Recovery(folder.resolve("kept")));
        readings = new ReadingsDesk(desk, Recovery.ofReadings(folder.resolve("kept")));
        tests = new PoolTestDesk(desk, readings, Runnable::run, Runnable::run);
        timeline = new Timeline(desk, readings);
        desk.open(file, false, () -> {});
    }

    private Boat boat() {
        return desk.boat().get().boat();
    }

    private String text() {
        return readings.readings().get().text();
    }

    private Reading now() {
        return readings.selectedReading().orElseThrow();
    }

    private Sighting deeper(double mm, boolean bow) {
        var line = boat().paintedLine().orElseThrow();
        return new Sighting(Quantity.WATER_ABOVE, mm, 0.5, Optional.of(bow ? line.foremostMm() : line.aftmostMm()));
    }

    private void put(String name, Reading other) {
        assertEquals(Optional.empty(), readings.replace(name, other));
    }

    private void seeTwoMillimetres() {
        readings.add(Preset.LINE.reading(boat(), readings.readings().get().test()));
        put("bow", ReadingEdits.seeing(now(), 0, Optional.of(deeper(2, true))));
        put("stern", ReadingEdits.seeing(now(), 1, Optional.of(deeper(2, false))));
    }

    /** Every change of a reading is a step, and what it is undone to is the text before it, letter by letter. */
    @Test
    void everyChangeOfAReadingIsAStep() {
        readings.add(Preset.LINE.reading(boat(), readings.readings().get().test()));
        List<Reading> steps = List.of(
                ReadingEdits.filled(now(), "tank", Optional.of(0.25)),
                ReadingEdits.in(now(), Optional.of(Water.of(15, 35))),
                ReadingEdits.in(now(), Optional.of(Water.ofDensity(1.01))),
                ReadingEdits.adding(
                        now(), 0, Optional.of(new KnownWeight(40, new Vector3D(1, 2, 3), Optional.of(11.3)))),
                ReadingEdits.moving(now(), 0, Optional.of(new WeightMoved(50, new Vector3D(0, -20, 0)))),
                ReadingEdits.seeing(now(), 0, Optional.of(deeper(1, true))),
                ReadingEdits.seeing(now(), 0, Optional.of(new Sighting(Quantity.ROLL, 1.4, 0.1, Optional.empty()))),
                ReadingEdits.seeing(
                        now(),
                        0,
                        Optional.of(new Sighting(Quantity.FREEBOARD, 4, 0.5, Optional.of(new Vector3D(5, 6, 7))))),
                ReadingEdits.named(now(), "another"));
        for (Reading step : steps) {
            String before = text();
            put("step", step);
            assertEquals(step, now(), "the file says what was meant");
            timeline.undo();
            assertEquals(before, text());
            timeline.redo();
            assertEquals(step, now());
            timeline.undo();
        }
        assertTrue(readings.unsaved().get());
    }

    @Test
    void boatAndReadingsAreUndoneInTheOrderInWhichTheyWereDone() {
        seeTwoMillimetres();
        String afterReadings = text();
        desk.edit("move", b -> Edits.moved(b, "lead", new Vector3D(5, 0, 0)));
        String moved = desk.boat().get().text();
        put("list", ReadingEdits.seeing(now(), 2, Optional.of(new Sighting(Quantity.LIST, 1, 0.3, Optional.empty()))));
        assertEquals(Optional.of("list"), timeline.undoName());
        timeline.undo();
        assertEquals(afterReadings, text());
        assertEquals(moved, desk.boat().get().text());
        timeline.undo();
        assertFalse(desk.unsaved().get(), "then the boat");
        timeline.undo();
        assertEquals(1, now().seen().size(), "then the readings again");
        timeline.redo();
        timeline.redo();
        assertEquals(moved, desk.boat().get().text());
        assertEquals(afterReadings, text());
        timeline.redo();
        assertEquals(3, now().seen().size());
        assertEquals(Optional.empty(), timeline.redoName());
    }

    @Test
    void whatTheFileCannotHoldIsRefusedAndChangesNothing() {
        seeTwoMillimetres();
        String before = text();
        Optional<String> refused = readings.replace("fill", ReadingEdits.filled(now(), "tank", Optional.of(1.4)));
        assertTrue(refused.orElseThrow().contains("1.4"), refused.get());
        readings.add(Preset.OTHER.reading(boat(), readings.readings().get().test()));
        refused = readings.replace("name", ReadingEdits.named(now(), "surfaced"));
        assertTrue(refused.orElseThrow().contains("surfaced"), refused.get());
        assertEquals(Optional.empty(), readings.remove());
        assertEquals(before, text());
    }

    /** The box of 1200 g at 40 g a millimetre, seen 2 mm deeper than painted at both ends, so 80 g heavier: the same figures as the command line's own way. */
    @Test
    void whatTheReadingsSayIsTakenOverAsOneStep() {
        seeTwoMillimetres();
        String before = desk.boat().get().text();
        assertFalse(tests.isTaken());
        tests.run();
        PoolOutcome outcome = tests.estimated().get().outcome();
        PoolOutcome same = PoolOutcome.of(boat(), readings.readings().get().test());
        assertEquals(same.estimate().figures(), outcome.estimate().figures());
        double after = outcome.estimate().figures().get(Figure.MASS).after();
        assertTrue(after > 1260 && after < 1280, "drawn back a little by what her file says: " + after);
        assertEquals(Optional.empty(), tests.takeCorrections());
        assertEquals(
                after,
                desk.flotation().get().condition().dryMassG(),
                0.03,
                "what is written is rounded to 0.01 g, part by part");
        assertTrue(tests.isTaken());
        assertEquals(null, tests.estimated().get(), "it was worked out for another boat");
        timeline.undo();
        assertEquals(before, desk.boat().get().text());
        assertFalse(tests.isTaken());
    }

    @Test
    void withoutNumbersNothingIsSaid() {
        tests.run();
        assertTrue(tests.problem().get().title().contains("Nothing was read"));
        readings.add(Preset.LINE.reading(boat(), readings.readings().get().test()));
        assertEquals(null, tests.problem().get());
        tests.run();
        assertTrue(tests.problem().get().title().contains("Nothing was read"));
        put(
                "list",
                ReadingEdits.seeing(
                        ReadingEdits.filled(now(), "tank", Optional.of(1.0)),
                        0,
                        Optional.of(new Sighting(Quantity.HANGING, 3, 1, Optional.empty()))));
        tests.run();
        assertTrue(
                tests.problem().get().lines().get(0).contains("does not sink"),
                tests.problem().get().toString());
    }

    @Test
    void savedIsWhatTheCommandLineReads() throws IOException {
        seeTwoMillimetres();
        Path file = folder.resolve("first.pool.json");
        assertEquals(Optional.empty(), readings.saveTo(file, false));
        assertFalse(readings.unsaved().get());
        assertEquals(
                readings.readings().get().test().readings(),
                PoolFile.read(file, boat()).readings());
        assertTrue(readings.saveTo(file, false).isPresent(), "not over another without asking");
        assertFalse(readings.isChangedByOthers());
        Files.writeString(file, text() + "\n");
        assertTrue(readings.isChangedByOthers());
        readings.add(Preset.ROLL.reading(boat(), readings.readings().get().test()));
        assertTrue(readings.saveTo(file, true).orElseThrow().contains("seen"), "a reading without anything seen");
    }

    @Test
    void anotherBoatHasNoReadingsYetAndTheSameOneMayLoseWhatTheyNeed() throws IOException {
        seeTwoMillimetres();
        desk.edit("no tank", b -> b.without("tank"));
        assertTrue(readings.misfit().get().lines().get(0).contains("tank"));
        tests.run();
        assertEquals(readings.misfit().get(), tests.problem().get());
        timeline.undo();
        assertEquals(null, readings.misfit().get());
        desk.open(Files.writeString(folder.resolve("other.boat.json"), BOX), false, () -> {});
        assertEquals(List.of(), readings.readings().get().test().readings());
        assertFalse(readings.unsaved().get());
    }

    @Test
    void theBoatsThatAreDrawnAreThoseOfTheCommandLine() {
        ToleranceDesk tolerances = new ToleranceDesk(desk, Runnable::run, Runnable::run);
        tolerances.run(200, 7);
        assertEquals(Tolerance.of(boat(), 200, 7), tolerances.tolerance().get());
        desk.edit("move", b -> Edits.moved(b, "lead", new Vector3D(5, 0, 0)));
        assertEquals(null, tolerances.tolerance().get(), "of another boat they say nothing");
    }

    @Test
    void presetsFillTanksAndWaitForNumbers() {
        Reading dived = Preset.DIVED.reading(boat(), readings.readings().get().test());
        assertEquals(Map.of("tank", 1.0), dived.fills());
        assertEquals(List.of(), dived.seen());
        readings.add(dived);
        assertEquals(
                "dived 2",
                Preset.DIVED.reading(boat(), readings.readings().get().test()).id());
        assertFalse(Preset.HANGING.isFor(boat().withParts(List.of(boat().parts().get(0)))));
    }

    /** A process id that no process can have stands for a window that crashed. */
    @Test
    void readingsOutliveACrash() throws IOException {
        long nobody = 1L << 40;
        Path kept = folder.resolve("other");
        ReadingsDesk crashed = new ReadingsDesk(desk, Recovery.ofReadings(kept, nobody));
        crashed.add(Preset.LINE.reading(boat(), crashed.readings().get().test()));
        String text = crashed.readings().get().text();
        assertEquals(List.of(), new Recovery(kept).lost(), "they are no boat");
        Recovery.Lost lost = Recovery.ofReadings(kept).lost().get(0);
        assertEquals(folder.resolve("box.boat.json"), lost.boatFile());
        assertEquals(Optional.empty(), readings.takeRecovered(lost.text()));
        assertEquals(text, text());
        assertTrue(readings.unsaved().get());
        timeline.undo();
        assertFalse(readings.unsaved().get());
        assertEquals(List.of(), Recovery.ofReadings(folder.resolve("kept")).lost());
    }
}
