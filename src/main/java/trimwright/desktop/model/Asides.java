package trimwright.desktop.model;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import trimwright.file.LoadedBoat;

/**
 * Changes that take a while, as when a mesh is brought to another place: made away from the pointer, one after the other, each on the boat as she
 * is by then.
 */
final class Asides {

    private record Wanted(String name, UnaryOperator<LoadedBoat> change, Consumer<Optional<String>> then) {}

    private final Desk desk;
    private final Background making;
    private final Deque<Wanted> waiting = new ArrayDeque<>();

    Asides(Desk desk, Executor workers, Executor front) {
        this.desk = desk;
        making = new Background(workers, front);
    }

    /** Makes a change after those that wait. */
    void make(String name, UnaryOperator<LoadedBoat> change, Consumer<Optional<String>> then) {
        waiting.add(new Wanted(name, change, then));
        if (waiting.size() == 1) {
            begin();
        }
    }

    boolean isWaiting() {
        return !waiting.isEmpty();
    }

    /** Forgets what waits and what is being made. */
    void giveUp() {
        waiting.clear();
        making.giveUp();
    }

    private void begin() {
        Wanted next = waiting.element();
        LoadedBoat from = desk.boat().get();
        making.ask(
                () -> next.change.apply(from),
                made -> made(from, () -> made),
                e -> made(from, () -> {
                    throw rethrown(e);
                }));
    }

    private void made(LoadedBoat from, Supplier<LoadedBoat> outcome) {
        if (desk.boat().get() != from) {
            // Something else was done meanwhile; this comes on top of it.
            begin();
            return;
        }
        Wanted wanted = waiting.remove();
        wanted.then.accept(desk.edit(wanted.name, b -> outcome.get()));
        if (!waiting.isEmpty()) {
            begin();
        }
    }

    private static RuntimeException rethrown(Throwable e) {
        if (e instanceof Error error) {
            throw error;
        }
        return e instanceof RuntimeException known ? known : new IllegalStateException(e);
    }
}
