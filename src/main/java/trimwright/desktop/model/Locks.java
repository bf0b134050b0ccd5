package trimwright.desktop.model;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.TreeSet;
import javafx.collections.FXCollections;
import javafx.collections.ObservableSet;
import javafx.collections.SetChangeListener;

/**
 * Ids of parts that are held where they are, against a slip of the hand. A lock is about handling, not about the boat: it is kept for each boat file in the
 * settings of the window, not in the file.
 */
public final class Locks {

    private static final String LOCKED = "locked.";

    private final ObservableSet<String> ids = FXCollections.observableSet(new LinkedHashSet<>());
    private Settings settings;
    private Path boat;
    private boolean turning;

    Locks() {
        ids.addListener((SetChangeListener<String>) c -> keep());
    }

    /** From now on they are kept in these settings. */
    public void keepIn(Settings kept) {
        settings = kept;
    }

    public ObservableSet<String> ids() {
        return ids;
    }

    /** Another boat is there: those of her. */
    void turnTo(Path file) {
        boat = file;
        turning = true;
        ids.clear();
        if (settings != null) {
            ids.addAll(settings.list(name()));
        }
        turning = false;
    }

    /** The boat at hand has another file. */
    void savedTo(Path file) {
        boat = file;
        keep();
    }

    /** A part is called otherwise; it stays as locked as it was. */
    public void renamed(String from, String to) {
        if (ids.remove(from)) {
            ids.add(to);
        }
    }

    private void keep() {
        if (settings != null && boat != null && !turning) {
            Set<String> now = new TreeSet<>(ids);
            if (!now.equals(new TreeSet<>(settings.list(name())))) {
                settings.set(name(), now);
            }
        }
    }

    private String name() {
        return LOCKED + boat.toAbsolutePath();
    }
}
