package trimwright.desktop.model;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import trimwright.boat.Boat;
import trimwright.boat.pool.Reading;
import trimwright.file.LoadedBoat;
import trimwright.file.LoadedReadings;
import trimwright.file.PoolFile;
import trimwright.finding.UnusableInputException;
import trimwright.report.Wording;

/** What was read in the pool of the boat at hand: entered, changed, undone, opened and saved. Used from the front thread alone. */
public final class ReadingsDesk {

    /**
     * The readings after a step.
     *
     * @param boatText the boat's text when it was made, by which steps of boat and readings find their order
     */
    private record Step(String name, LoadedReadings readings, String boatText) {}

    private final Desk desk;
    private final Recovery recovery;
    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private String savedText;
    private final ReadOnlyObjectWrapper<LoadedReadings> readings = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Problem> misfit = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
    private final ObjectProperty<String> selected = new SimpleObjectProperty<>("");

    /** @param recovery where unsaved readings are kept */
    public ReadingsDesk(Desk desk, Recovery recovery) {
        this.desk = desk;
        this.recovery = recovery;
        take(PoolFile.none());
        desk.boat().addListener((o, was, now) -> {
            if (was != null && !was.path().equals(now.path())) {
                // Readings of one boat say nothing of another.
                take(PoolFile.none());
            } else {
                show();
            }
        });
    }

    /** Opens a readings file; those at hand stay where it cannot be read. Why it cannot, or nothing. */
    public Optional<Problem> open(Path file) {
        if (desk.boat().get() == null) {
            return Optional.of(new Problem(
                    "There is no boat yet",
                    List.of("Open the boat that the readings are of first."),
                    Optional.empty()));
        }
        try {
            take(PoolFile.load(file, boat()));
            return Optional.empty();
        } catch (UnusableInputException e) {
            return Optional.of(Problem.of("These readings could not be opened", e));
        }
    }

    /** Takes up readings that a crash left behind; they are unsaved. Why they cannot be taken up, or nothing. */
    public Optional<Problem> takeRecovered(String text) {
        try {
            LoadedReadings recovered = PoolFile.edited(PoolFile.none(), text, boat());
            take(PoolFile.none());
            edit("the readings that were recovered", (r, boat) -> recovered);
            return Optional.empty();
        } catch (UnusableInputException e) {
            return Optional.of(Problem.of("The unsaved readings could not be taken up", e));
        }
    }

    private void take(LoadedReadings taken) {
        done.clear();
        undone.clear();
        done.push(new Step("", taken, ""));
        savedText = taken.text();
        selected.set(
                taken.test().readings().stream().findFirst().map(Reading::id).orElse(""));
        show();
    }

    /**
     * Changes the readings, as one step that can be undone.
     *
     * @return why it could not be done, in a sentence; empty when it was
     */
    public Optional<String> edit(String name, BiFunction<LoadedReadings, Boat, LoadedReadings> change) {
        if (desk.boat().get() == null) {
            return Optional.of("There is no boat yet.");
        }
        try {
            LoadedReadings after = change.apply(now(), boat());
            if (!after.text().equals(now().text())) {
                done.push(new Step(name, after, boatText()));
                undone.clear();
                show();
            }
            return Optional.empty();
        } catch (UnusableInputException e) {
            return Optional.of(e.findings().stream().map(Wording::sentence).collect(Collectors.joining(" ")));
        } catch (IllegalArgumentException e) {
            return Optional.of("That is not possible: " + e.getMessage() + ".");
        }
    }

    /** Adds a reading and picks it. */
    public Optional<String> add(Reading reading) {
        Optional<String> refused = edit("add reading " + reading.id(), (r, boat) -> r.plus(reading, boat));
        if (refused.isEmpty()) {
            selected.set(reading.id());
        }
        return refused;
    }

    /** Takes the picked reading out; the one before it is picked then. */
    public Optional<String> remove() {
        List<String> ids = now().test().readings().stream().map(Reading::id).toList();
        String id = selected.get();
        int index = ids.indexOf(id);
        if (index < 0) {
            return Optional.of("No reading is picked.");
        }
        Optional<String> refused = edit("delete reading " + id, (r, boat) -> r.without(id, boat));
        if (refused.isEmpty() && ids.size() > 1) {
            selected.set(ids.get(index == 0 ? 1 : index - 1));
        }
        return refused;
    }

    /** Puts a reading in the place of the picked one. */
    public Optional<String> replace(String name, Reading reading) {
        String id = selected.get();
        Optional<String> refused = edit(name, (r, boat) -> r.replacing(id, reading, boat));
        if (refused.isEmpty() && !reading.id().equals(id)) {
            selected.set(reading.id());
        }
        return refused;
    }

    /** Whether the last thing done, to boat or readings, was done to the readings. */
    boolean isLast() {
        return done.size() > 1 && done.peek().boatText().equals(boatText());
    }

    /** Whether the next thing to do again is one of the readings. */
    boolean isNext() {
        return !undone.isEmpty() && undone.peek().boatText().equals(boatText());
    }

    void undo() {
        undone.push(done.pop());
        show();
    }

    void redo() {
        done.push(undone.pop());
        show();
    }

    String undoName() {
        return done.peek().name();
    }

    String redoName() {
        return undone.peek().name();
    }

    /** As they are, for the boat as she is now: a painted end may lie elsewhere, a tank be gone. */
    private void show() {
        LoadedReadings shown = now();
        misfit.set(null);
        if (desk.boat().get() != null) {
            try {
                shown = PoolFile.edited(shown, shown.text(), boat());
            } catch (UnusableInputException e) {
                misfit.set(Problem.of("The readings do not fit this boat", e));
            }
        }
        List<String> ids = shown.test().readings().stream().map(Reading::id).toList();
        if (!ids.contains(selected.get())) {
            selected.set(ids.isEmpty() ? "" : ids.get(ids.size() - 1));
        }
        unsaved.set(!shown.text().equals(savedText));
        if (unsaved.get() && desk.boat().get() != null) {
            recovery.keepLogged(desk.boat().get().path(), shown.text());
        } else {
            recovery.forgetLogged();
        }
        readings.set(shown);
    }

    private LoadedReadings now() {
        return done.peek().readings();
    }

    private Boat boat() {
        return desk.boat().get().boat();
    }

    private String boatText() {
        LoadedBoat boat = desk.boat().get();
        return boat == null ? "" : boat.text();
    }

    /** Saves to a file, which is theirs from then on. Why not, or nothing. */
    public Optional<String> saveTo(Path to, boolean overwrite) {
        try {
            LoadedReadings saved = PoolFile.write(now(), boat(), to, overwrite);
            Step last = done.pop();
            done.push(new Step(last.name(), saved, last.boatText()));
            savedText = saved.text();
            show();
            return Optional.empty();
        } catch (UnusableInputException e) {
            return Optional.of(e.findings().stream().map(Wording::of).collect(Collectors.joining("\n")));
        }
    }

    /** Whether their file holds something else than what was read from it or saved to it. */
    public boolean isChangedByOthers() {
        Optional<Path> file = now().path().filter(Files::exists);
        try {
            return file.isPresent()
                    && !Files.readString(file.get(), StandardCharsets.UTF_8).equals(savedText);
        } catch (IOException e) {
            return false;
        }
    }

    /** Unsaved readings are given up on purpose. */
    public void forgetRecovery() {
        recovery.forgetLogged();
    }

    /** The picked reading. */
    public Optional<Reading> selectedReading() {
        return readings.get().test().readings().stream()
                .filter(r -> r.id().equals(selected.get()))
                .findFirst();
    }

    public ReadOnlyObjectProperty<LoadedReadings> readings() {
        return readings.getReadOnlyProperty();
    }

    /** Why they do not fit the boat at hand any more; null when they do. */
    public ReadOnlyObjectProperty<Problem> misfit() {
        return misfit.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty unsaved() {
        return unsaved.getReadOnlyProperty();
    }

    /** Id of the reading that is picked; empty for none. */
    public ObjectProperty<String> selected() {
        return selected;
    }
}
