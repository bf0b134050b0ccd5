package trimwright.desktop;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Recovery;
import trimwright.desktop.model.Settings;
import trimwright.file.BoatAhead;
import trimwright.file.OwnFolder;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/** The window as the toolkit starts it. */
public final class WindowApplication extends Application {

    private static final Logger LOG = Logger.getLogger(WindowApplication.class.getName());
    private static Path file;
    private static boolean isSample;
    private static Optional<BoatAhead> ahead = Optional.empty();

    private final ExecutorService workers = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "trimwright-work");
        thread.setDaemon(true);
        thread.setPriority(Thread.NORM_PRIORITY - 1);
        return thread;
    });

    private MainWindow window;

    /** The window, once it was started. */
    MainWindow window() {
        return window;
    }

    /** Says what the next window opens. */
    static void opening(Path toOpen, boolean sample) {
        file = toOpen;
        ahead = Files.isBoat(toOpen) ? Optional.of(BoatAhead.of(toOpen.toString())) : Optional.empty();
        // What her answer rests on is kept with her shapes. A failure is not told here: the window works it out itself,
        // and meets it again.
        ahead.ifPresent(boat -> CompletableFuture.runAsync(
                () -> Flotation.settling(Condition.of(boat.call().boat()))));
        isSample = sample;
    }

    @Override
    public void start(Stage stage) {
        Settings settings = Settings.in(OwnFolder.usual());
        LogFile.begin(settings.folder());
        Recovery recovery = new Recovery(settings.folder());
        Desk desk = new Desk(workers, Platform::runLater, recovery);
        desk.locks().keepIn(settings);
        window = new MainWindow(stage, desk, settings, workers);
        Thread.currentThread().setUncaughtExceptionHandler((thread, e) -> window.unexpected(e));
        if (Rehearsal.isAsked()) {
            Rehearsal.begin(window);
        }
        window.show();
        ahead.ifPresentOrElse(boat -> window.files().open(boat, file, isSample), () -> window.open(file, isSample));
        ahead = Optional.empty();
        try {
            recovery.lost().forEach(window::offerLost);
            Recovery.ofReadings(settings.folder())
                    .lost()
                    .forEach(window.poolTest().files()::offerLost);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "unsaved work of earlier windows could not be looked for", e);
        }
    }

    @Override
    public void stop() {
        workers.shutdownNow();
    }
}
