package trimwright.desktop.model;

import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Work of one kind, done away from the pointer. Of several requests only the newest counts: an older one that has not begun is dropped, and
 * the outcome of one that is under way is thrown away. At most one is under way, unless it was given up.
 */
public final class Background {

    private static final Logger LOG = Logger.getLogger(Background.class.getName());

    private final Executor workers;
    private final Executor front;
    private Worker current = new Worker();

    /** Requests of one kind that follow each other; replaced by a fresh one when the work under way is given up. */
    private static final class Worker {
        private Runnable waiting;
        private boolean busy;
        private long newest;
        /** Who works on it; none between two requests. */
        private Thread thread;
    }

    /**
     * @param workers where the work is done
     * @param front where outcomes are handed over: the window's own thread
     */
    public Background(Executor workers, Executor front) {
        this.workers = workers;
        this.front = front;
    }

    /** Asks for work; {@code done} or {@code failed} is called in front, unless something newer was asked for meanwhile. */
    public <T> void ask(Callable<T> work, Consumer<T> done, Consumer<Throwable> failed) {
        askLater(0, work, done, failed);
    }

    /** Asks for work that is not begun before some time has passed without a newer request. */
    public synchronized <T> void askLater(
            long delayMs, Callable<T> work, Consumer<T> done, Consumer<Throwable> failed) {
        Worker worker = current;
        long number = ++worker.newest;
        worker.waiting = () -> {
            try {
                T outcome = outcome(worker, number, delayMs, work);
                front.execute(() -> deliver(worker, number, () -> done.accept(outcome)));
            } catch (InterruptedException | CancellationException e) {
                // It was given up, or the window is closing: nobody waits for the outcome.
                LOG.log(Level.FINE, "given up", e);
            } catch (Exception | OutOfMemoryError | StackOverflowError e) {
                front.execute(() -> deliver(worker, number, () -> failed.accept(e)));
            }
        };
        if (!worker.busy) {
            worker.busy = true;
            workers.execute(() -> workOff(worker));
        }
    }

    private <T> T outcome(Worker worker, long number, long delayMs, Callable<T> work) throws Exception {
        synchronized (this) {
            worker.thread = Thread.currentThread();
        }
        try {
            if (delayMs > 0) {
                Thread.sleep(delayMs);
            }
            if (!counts(worker, number)) {
                throw new CancellationException("something newer was asked for");
            }
            return work.call();
        } finally {
            synchronized (this) {
                worker.thread = null;
            }
        }
    }

    /** Forgets what is asked for and what is under way, and tells it to stop; the next request does not wait for it. */
    public synchronized void giveUp() {
        current.newest++;
        current.waiting = null;
        if (current.thread != null) {
            current.thread.interrupt();
        }
        current = new Worker();
    }

    private void workOff(Worker worker) {
        while (true) {
            Runnable next;
            synchronized (this) {
                next = worker.waiting;
                worker.waiting = null;
                if (next == null) {
                    worker.busy = false;
                    return;
                }
            }
            next.run();
        }
    }

    private void deliver(Worker worker, long number, Runnable delivery) {
        if (counts(worker, number)) {
            delivery.run();
        }
    }

    private synchronized boolean counts(Worker worker, long number) {
        return worker == current && number == worker.newest;
    }
}
