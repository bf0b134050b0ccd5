package trimwright.desktop.model;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.ObservableSet;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.finding.UnusableInputException;
import trimwright.report.Wording;
import trimwright.statics.Flotation;

/**
 * The window without its controls: one boat, what is done to her, and how she floats after it. Used from the front thread
 * alone; whatever takes time runs in the background and comes back to it.
 */
public final class Desk {

    private static final Logger LOG = Logger.getLogger(Desk.class.getName());

    /** What takes long waits this long for the boat to be left alone. */
    static final long LEFT_ALONE_MS = 300;

    private final Background reading;
    private final Answers answers;
    private final Recovery recovery;
    private History history;
    private boolean sample;
    private Path path;
    private Consumer<Problem> problems = p -> {};
    private String lastChange = "";
    private final Moves moves = new Moves(this);
    private final Asides asides;
    private final Locks locks = new Locks();

    private final ReadOnlyObjectWrapper<LoadedBoat> boat = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Flotation> before = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
    private final ObjectProperty<String> selected = new SimpleObjectProperty<>("");
    private final ObjectProperty<Pose> looked = new SimpleObjectProperty<>();

    /**
     * @param workers where work is done
     * @param front the thread on which this is used
     * @param recovery where unsaved work is kept
     */
    public Desk(Executor workers, Executor front, Recovery recovery) {
        reading = new Background(workers, front);
        answers = new Answers(workers, front);
        asides = new Asides(this, workers, front);
        this.recovery = recovery;
    }

    /** Who shows problems. */
    public void onProblem(Consumer<Problem> listener) {
        problems = listener;
    }

    /** Opens a boat file; the boat at hand stays until the other is there. */
    public void open(Path file, boolean isSample, Runnable then) {
        open(() -> BoatFile.read(file), isSample, then);
    }

    /** Opens a boat as soon as she is read. */
    public void open(Callable<LoadedBoat> read, boolean isSample, Runnable then) {
        answers.setBusy(true);
        reading.ask(
                read,
                loaded -> {
                    take(loaded, isSample);
                    then.run();
                },
                e -> {
                    answers.setBusy(false);
                    problem("This boat could not be opened", e);
                });
    }

    /** Takes up a boat that was read. */
    public void take(LoadedBoat loaded, boolean isSample) {
        asides.giveUp();
        moves.dragEnded();
        history = new History(loaded);
        path = loaded.path();
        sample = isSample;
        selected.set("");
        locks.turnTo(path);
        lastChange = "";
        answers.forget();
        forgetRecovery();
        changed();
    }

    /** Takes up work that a crash left behind; it is unsaved. */
    public void takeRecovered(LoadedBoat saved, LoadedBoat recovered) {
        // A boat that is still being read must not take the place of the work when it comes.
        reading.giveUp();
        take(saved, false);
        history.add("the work that was recovered", recovered, false);
        lastChange = "Recovered";
        changed();
    }

    /** Takes up a boat that no file has yet. */
    public void takeNew(LoadedBoat loaded) {
        take(loaded, false);
        history.neverSaved();
        changed();
    }

    /**
     * Changes the boat, as one step that can be undone.
     *
     * @param name what is done, as in "move battery"
     * @return why it could not be done, in a sentence; empty when it was
     */
    public Optional<String> edit(String name, UnaryOperator<LoadedBoat> change) {
        if (history == null) {
            return Optional.of("There is no boat yet.");
        }
        try {
            Flotation was = moves.before();
            boolean joined = moves.joins(name);
            if (history.add(name, change.apply(history.now()), joined)) {
                lastChange = name;
                moves.stepped();
                if (!joined) {
                    before.set(was);
                }
                changed();
            }
            moves.dragEnded();
            return Optional.empty();
        } catch (UnusableInputException e) {
            return Optional.of(e.findings().stream().map(Wording::sentence).collect(Collectors.joining(" ")));
        } catch (IllegalArgumentException e) {
            return Optional.of("That is not possible: " + e.getMessage() + ".");
        }
    }

    /**
     * Changes the boat where that may take a while, as when a mesh is brought to another place: in the background, and as a step when it is done. Undo
     * gives it up until then.
     *
     * @param then told why it could not be done; empty when it was
     */
    public void editAside(String name, UnaryOperator<LoadedBoat> change, Consumer<Optional<String>> then) {
        answers.setBusy(true);
        unsaved.set(true);
        asides.make(name, change, refused -> {
            asideEnded();
            then.accept(refused);
        });
    }

    /** A step has set itself whether she is busy; one that was refused, or changed nothing, has not. */
    private void asideEnded() {
        unsaved.set(history.isUnsaved());
        if (!answers.isSettling()) {
            answers.setBusy(asides.isWaiting());
        }
    }

    /** Parts that are held where they are, against a slip of the hand; their numbers can still be typed. */
    public Locks locks() {
        return locks;
    }

    /** Ids of those parts. */
    public ObservableSet<String> locked() {
        return locks.ids();
    }

    /** Parts dragged and nudged. */
    public Moves moves() {
        return moves;
    }

    /** Puts a part in the place of the one with its id, as a step. */
    public Optional<String> replace(String name, Part part) {
        return edit(name, b -> b.replacing(part));
    }

    public void undo() {
        if (history != null) {
            if (asides.isWaiting()) {
                asides.giveUp();
                asideEnded();
                settleAsLoaded();
                return;
            }
            String name = history.undoName().orElse("");
            Flotation was = flotation().get();
            if (history.undo()) {
                stepped("undone: " + name, was);
            }
        }
    }

    public void redo() {
        if (history != null) {
            String name = history.redoName().orElse("");
            Flotation was = flotation().get();
            if (history.redo()) {
                stepped(name, was);
            }
        }
    }

    private void stepped(String what, Flotation was) {
        lastChange = what;
        before.set(was);
        changed();
    }

    void settleDragged(String change, Flotation was, Supplier<Boat> shown) {
        before.set(was);
        lastChange = change;
        settle(shown, () -> {});
    }

    void settleAsLoaded() {
        settle(() -> history.now().boat(), () -> {});
    }

    private void changed() {
        LoadedBoat now = history.now();
        if (now.boat().part(selected.get()).isEmpty()) {
            selected.set("");
        }
        looked.set(null);
        boat.set(now);
        unsaved.set(history.isUnsaved());
        if (history.isUnsaved()) {
            recovery.keepLogged(now);
        } else {
            recovery.forgetLogged();
        }
        settle(now::boat, () -> answers.look(now));
    }

    private void settle(Supplier<Boat> shown, Runnable then) {
        answers.settle(
                shown,
                settled -> {
                    if (flotation().get() == null) {
                        before.set(settled);
                    }
                    answers.show(settled);
                    then.run();
                    moves.nudgeOn();
                },
                e -> problem("How she floats could not be worked out", e));
    }

    /** Shows the boat otherwise than afloat as loaded; null shows that again. */
    public void lookAt(Pose pose) {
        looked.set(pose);
    }

    /** Saves to the file she came from. */
    public Optional<String> save() {
        return saveTo(path, true);
    }

    /** Saves to a file, taking her meshes along; from then on that file is hers. */
    public Optional<String> saveTo(Path to, boolean overwrite) {
        try {
            BoatFile.write(history.now(), to, overwrite);
            path = to;
            sample = false;
            history.saved(to);
            locks.savedTo(to);
            boat.set(history.now());
            unsaved.set(false);
            forgetRecovery();
            return Optional.empty();
        } catch (UnusableInputException e) {
            return Optional.of(e.findings().stream().map(Wording::of).collect(Collectors.joining("\n")));
        }
    }

    /** Whether the file holds something else than what was read from it or saved to it. */
    public boolean isChangedByOthers() {
        if (history == null || sample || !Files.exists(path)) {
            return false;
        }
        try {
            return !Files.readString(path, StandardCharsets.UTF_8).equals(history.savedText());
        } catch (IOException e) {
            // What cannot be read as the boat's text is not the boat's text.
            return true;
        }
    }

    /** Unsaved work is given up on purpose, or saved. */
    public void forgetRecovery() {
        recovery.forgetLogged();
    }

    /** Tells a problem to whoever shows them. */
    public void problem(String title, Throwable e) {
        LOG.log(e instanceof UnusableInputException ? Level.FINE : Level.WARNING, title, e);
        problems.accept(Problem.of(title, e));
    }

    /** The file she came from or was saved to. */
    public Path path() {
        return path;
    }

    /** Whether she is the sample, or has no file yet: she is then saved to a new one. */
    public boolean needsNewFile() {
        return sample || path == null || history.savedText().isEmpty();
    }

    /** What was done last. */
    public String lastChange() {
        return lastChange;
    }

    public Optional<String> undoName() {
        return history == null ? Optional.empty() : history.undoName();
    }

    public Optional<String> redoName() {
        return history == null ? Optional.empty() : history.redoName();
    }

    public ReadOnlyObjectProperty<LoadedBoat> boat() {
        return boat.getReadOnlyProperty();
    }

    /** How she floats as loaded, or as she would with the part where it is being dragged. */
    public ReadOnlyObjectProperty<Flotation> flotation() {
        return answers.flotation();
    }

    /** How she floated before the last change. */
    public ReadOnlyObjectProperty<Flotation> before() {
        return before.getReadOnlyProperty();
    }

    /** The same as {@link #flotation} with every other attitude; null while they are looked for. */
    public ReadOnlyObjectProperty<Flotation> whole() {
        return answers.whole();
    }

    /** Parts in each other's way, or outside; as of when {@link #whole} was there last. */
    public ReadOnlyObjectProperty<List<Misfit>> misfits() {
        return answers.misfits();
    }

    public ReadOnlyBooleanProperty busy() {
        return answers.busy();
    }

    public ReadOnlyBooleanProperty unsaved() {
        return unsaved.getReadOnlyProperty();
    }

    /** Id of the part that is picked; empty for none. */
    public ObjectProperty<String> selected() {
        return selected;
    }

    /** What is shown instead of the boat afloat as loaded; null for that. */
    public ObjectProperty<Pose> looked() {
        return looked;
    }

    /** The part that is picked. */
    public Optional<Part> selectedPart() {
        return boat.get() == null ? Optional.empty() : boat.get().boat().part(selected.get());
    }
}
