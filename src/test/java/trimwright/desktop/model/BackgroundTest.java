package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Work away from the pointer, with the workers and the front played by lists, so that every order can be had. */
class BackgroundTest {

    private final Deque<Runnable> workers = new ArrayDeque<>();
    private final Deque<Runnable> front = new ArrayDeque<>();
    private final Background background = new Background(workers::add, front::add);
    private final List<String> worked = new ArrayList<>();
    private final List<String> told = new ArrayList<>();

    private void ask(String what) {
        background.ask(
                () -> {
                    worked.add(what);
                    if (what.startsWith("bad")) {
                        throw new IllegalStateException(what);
                    }
                    return what;
                },
                told::add,
                e -> told.add("failed " + e.getMessage()));
    }

    private static void run(Deque<Runnable> queue) {
        while (!queue.isEmpty()) {
            queue.poll().run();
        }
    }

    @Test
    void theOutcomeComesToTheFront() {
        ask("a");
        run(workers);
        assertEquals(List.of(), told);
        run(front);
        assertEquals(List.of("a"), told);
    }

    @Test
    void whatWasNotBegunIsDroppedForTheNewest() {
        ask("a");
        ask("b");
        ask("c");
        run(workers);
        run(front);
        assertEquals(List.of("c"), worked);
        assertEquals(List.of("c"), told);
    }

    @Test
    void theOutcomeOfAnOlderRequestIsThrownAway() {
        ask("a");
        run(workers);
        ask("b");
        run(front);
        assertEquals(List.of(), told);
        run(workers);
        run(front);
        assertEquals(List.of("b"), told);
    }

    @Test
    void afterGivingUpNothingComesOfIt() {
        ask("a");
        run(workers);
        background.giveUp();
        run(front);
        assertEquals(List.of(), told);
    }

    @Test
    void aRequestAfterGivingUpDoesNotWait() {
        List<Runnable> handed = new ArrayList<>();
        Background slow = new Background(handed::add, Runnable::run);
        slow.ask(() -> "never ends", told::add, e -> told.add("failed"));
        slow.giveUp();
        slow.ask(() -> "b", told::add, e -> told.add("failed"));
        assertEquals(2, handed.size());
        handed.get(1).run();
        assertEquals(List.of("b"), told);
        handed.get(0).run();
        assertEquals(List.of("b"), told);
    }

    @Test
    void aFailureIsToldAndTheNextRequestWorks() {
        ask("bad");
        run(workers);
        run(front);
        ask("good");
        run(workers);
        run(front);
        assertEquals(List.of("failed bad", "good"), told);
    }

    /** Work that goes on until it is told to stop, on a thread of its own. */
    @Test
    void workThatIsGivenUpIsToldToStop() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch stopped = new CountDownLatch(1);
        Background threaded = new Background(r -> new Thread(r).start(), Runnable::run);
        threaded.ask(
                () -> {
                    begun.countDown();
                    while (!Thread.currentThread().isInterrupted()) {
                        Thread.onSpinWait();
                    }
                    stopped.countDown();
                    throw new CancellationException();
                },
                done -> told.add("done"),
                e -> told.add("failed"));
        assertTrue(begun.await(30, TimeUnit.SECONDS));
        threaded.giveUp();
        assertTrue(stopped.await(30, TimeUnit.SECONDS));
        assertEquals(List.of(), told);
    }
}
