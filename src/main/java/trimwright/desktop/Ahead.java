package trimwright.desktop;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/** A boat that is read while the toolkit starts, which takes about as long. */
final class Ahead implements Callable<LoadedBoat> {

    private final CompletableFuture<LoadedBoat> boat;

    private Ahead(CompletableFuture<LoadedBoat> boat) {
        this.boat = boat;
    }

    static Ahead read(Path file) {
        CompletableFuture<LoadedBoat> boat = CompletableFuture.supplyAsync(() -> BoatFile.read(file));
        // What her answer rests on is kept with her shapes. A failure is not told here: the window works it out itself,
        // and meets it again.
        boat.thenAcceptAsync(loaded -> Flotation.settling(Condition.of(loaded.boat())));
        return new Ahead(boat);
    }

    @Override
    public LoadedBoat call() {
        try {
            return boat.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause;
            }
            throw e;
        }
    }
}
