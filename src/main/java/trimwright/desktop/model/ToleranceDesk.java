package trimwright.desktop.model;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import trimwright.boat.Boat;
import trimwright.plan.pool.Tolerance;

/** How far the boat may be off before she gets wet: asked for, and forgotten when she changes. */
public final class ToleranceDesk {

    private final Desk desk;
    private final Background work;
    private AtomicBoolean stopped = new AtomicBoolean();
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Tolerance> tolerance = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Problem> problem = new ReadOnlyObjectWrapper<>();

    public ToleranceDesk(Desk desk, Executor workers, Executor front) {
        this.desk = desk;
        work = new Background(workers, front);
        desk.boat().addListener((o, was, now) -> {
            stop();
            tolerance.set(null);
            problem.set(null);
        });
    }

    /**
     * Begins to draw boats.
     *
     * @param draws how many, from {@link Tolerance#FEWEST_DRAWS} to {@link Tolerance#MOST_DRAWS}
     */
    public void run(int draws, long seed) {
        if (desk.boat().get() == null) {
            return;
        }
        Boat boat = desk.boat().get().boat();
        AtomicBoolean stop = new AtomicBoolean();
        stopped = stop;
        tolerance.set(null);
        problem.set(null);
        running.set(true);
        work.ask(
                () -> Tolerance.of(boat, draws, seed, () -> !stop.get()),
                done -> {
                    running.set(false);
                    tolerance.set(done);
                },
                e -> {
                    running.set(false);
                    problem.set(Problem.of("Nothing can be said about her margins", e));
                });
    }

    /** Gives up; the boats that are not drawn yet are not drawn. */
    public void stop() {
        if (running.get()) {
            stopped.set(true);
            work.giveUp();
            running.set(false);
        }
    }

    public ReadOnlyBooleanProperty running() {
        return running.getReadOnlyProperty();
    }

    /** What was worked out; null for nothing. */
    public ReadOnlyObjectProperty<Tolerance> tolerance() {
        return tolerance.getReadOnlyProperty();
    }

    /** Why nothing came of it; null for no reason. */
    public ReadOnlyObjectProperty<Problem> problem() {
        return problem.getReadOnlyProperty();
    }
}
