package trimwright.report.sheet;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/** Something that is worked out in another thread while this one goes on. */
final class Meanwhile<T> {

    private final CompletableFuture<T> future;

    private Meanwhile(CompletableFuture<T> future) {
        this.future = future;
    }

    static <T> Meanwhile<T> of(Supplier<T> work) {
        return new Meanwhile<>(CompletableFuture.supplyAsync(work));
    }

    /** The outcome, waiting for it where it must; what the work threw, as if it had been done here. */
    T get() {
        try {
            return future.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw e;
        }
    }
}
