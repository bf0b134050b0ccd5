package trimwright.desktop.model;

import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import trimwright.boat.Boat;
import trimwright.file.LoadedBoat;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/** How the boat on the desk floats, worked out in the background: at once where she settles, and when she is left alone the rest. */
final class Answers {

    private static final Logger LOG = Logger.getLogger(Answers.class.getName());

    private final Background settling;
    private final Background looking;
    private final ReadOnlyObjectWrapper<Flotation> flotation = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Flotation> whole = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<List<Misfit>> misfits = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private boolean isSettling;

    Answers(Executor workers, Executor front) {
        settling = new Background(workers, front);
        looking = new Background(workers, front);
    }

    /** Another boat is there: nothing is known of her yet. */
    void forget() {
        flotation.set(null);
        misfits.set(List.of());
    }

    void setBusy(boolean now) {
        busy.set(now);
    }

    boolean isSettling() {
        return isSettling;
    }

    /** Works out where she settles. */
    void settle(Supplier<Boat> boat, Consumer<Flotation> settled, Consumer<Throwable> failed) {
        busy.set(true);
        isSettling = true;
        settling.ask(
                () -> Flotation.settling(Condition.of(boat.get())),
                answer -> {
                    isSettling = false;
                    busy.set(false);
                    settled.accept(answer);
                },
                e -> {
                    isSettling = false;
                    busy.set(false);
                    failed.accept(e);
                });
    }

    void show(Flotation settled) {
        flotation.set(settled);
    }

    /** What takes longer: other attitudes, and whether the parts fit. */
    void look(LoadedBoat loaded) {
        Boat boat = loaded.boat();
        whole.set(null);
        record Looked(Flotation whole, List<Misfit> misfits) {}
        looking.askLater(
                Desk.LEFT_ALONE_MS,
                () -> new Looked(Flotation.of(Condition.of(boat)), Misfit.of(loaded)),
                done -> {
                    misfits.set(done.misfits());
                    whole.set(done.whole());
                },
                e -> LOG.log(Level.WARNING, "other attitudes could not be worked out", e));
    }

    ReadOnlyObjectProperty<Flotation> flotation() {
        return flotation.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Flotation> whole() {
        return whole.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<List<Misfit>> misfits() {
        return misfits.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty busy() {
        return busy.getReadOnlyProperty();
    }
}
