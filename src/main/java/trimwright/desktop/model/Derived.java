package trimwright.desktop.model;

import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import trimwright.boat.Boat;

/**
 * Something that is worked out from the boat while anyone looks at it, and thrown away when she changes.
 *
 * @param <T> what is worked out
 */
public final class Derived<T> {

    private final Desk desk;
    private final Background background;
    private final Function<Boat, T> work;
    private final ReadOnlyObjectWrapper<T> value = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Problem> problem = new ReadOnlyObjectWrapper<>();
    private Boat of;
    private boolean looked;

    /** @param work works it out, away from the front */
    public Derived(Desk desk, Executor workers, Executor front, Function<Boat, T> work) {
        this.desk = desk;
        this.work = work;
        background = new Background(workers, front);
        desk.boat().addListener((o, was, now) -> renew());
    }

    /** Somebody looks at it, or nobody does. */
    public void setLookedAt(boolean now) {
        looked = now;
        renew();
    }

    private void renew() {
        if (!looked || desk.boat().get() == null) {
            return;
        }
        Boat boat = desk.boat().get().boat();
        if (boat.equals(of)) {
            return;
        }
        of = boat;
        value.set(null);
        problem.set(null);
        Callable<T> call = () -> work.apply(boat);
        background.askLater(Desk.LEFT_ALONE_MS, call, value::set, e -> problem.set(Problem.of("", e)));
    }

    /** What was worked out; null while it is not. */
    public ReadOnlyObjectProperty<T> value() {
        return value.getReadOnlyProperty();
    }

    /** Why there is none; null when there is no reason. */
    public ReadOnlyObjectProperty<Problem> problem() {
        return problem.getReadOnlyProperty();
    }
}
