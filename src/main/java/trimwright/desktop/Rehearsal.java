package trimwright.desktop;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.util.Duration;
import trimwright.desktop.model.Job;

/**
 * The window opened, led through its jobs and closed again by itself, when the property {@code trimwright.rehearsal} says so: the packaging
 * notes which classes that takes, and keeps them ready for a quick start.
 */
final class Rehearsal {

    private static final Duration EACH = Duration.millis(500);

    private Rehearsal() {}

    static boolean isAsked() {
        return Boolean.getBoolean("trimwright.rehearsal");
    }

    /** Begins once she floats. */
    static void begin(MainWindow window) {
        window.desk().whole().addListener((o, was, now) -> {
            if (was == null && now != null) {
                walk(window);
            }
        });
    }

    private static void walk(MainWindow window) {
        Deque<Job> jobs = new ArrayDeque<>(List.of(Job.values()));
        Timeline steps = new Timeline(new KeyFrame(EACH, e -> {
            if (jobs.isEmpty()) {
                window.close();
            } else {
                window.choose(jobs.remove());
            }
        }));
        steps.setCycleCount(jobs.size() + 1);
        steps.play();
    }
}
