package trimwright.desktop;

import javafx.geometry.Orientation;
import javafx.geometry.Rectangle2D;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.stage.Screen;
import javafx.stage.Stage;
import trimwright.desktop.panes.ReadingsPane;

/**
 * Where the job, the pool and the readings stand. Where the window has few letters' width, since it is small or the text large, the readings
 * go below the pool: beside it they would leave the boat no room.
 */
final class Arrangement {

    /** Widths in letters: below this the readings go below. */
    private static final double NARROW = 76;

    private static final double JOB = 26;
    private static final double LEAST_JOB = 22;
    /** The share of the window that the job takes at most. */
    private static final double JOB_SHARE = 0.4;

    private final BorderPane root;
    private final ScrollPane job;
    private final Region pool;
    private final ReadingsPane readings;
    private final SplitPane split = new SplitPane();
    private boolean below;
    private double textPx = 13;

    Arrangement(BorderPane root, Region rail, ScrollPane job, Region pool, ReadingsPane readings) {
        this.root = root;
        this.job = job;
        this.pool = pool;
        this.readings = readings;
        pool.setMinWidth(0);
        split.setOrientation(Orientation.VERTICAL);
        root.setLeft(new HBox(rail, job));
        root.setCenter(pool);
        root.setRight(readings);
        root.widthProperty().addListener((o, was, now) -> arrange());
        readings.managedProperty().addListener((o, was, now) -> arrange());
    }

    /** How large the text is. */
    void setTextPx(double px) {
        textPx = px;
        arrange();
    }

    private void arrange() {
        double width = root.getWidth();
        if (width <= 0) {
            return;
        }
        job.setPrefWidth(Math.max(LEAST_JOB * textPx, Math.min(JOB * textPx, JOB_SHARE * width)));
        boolean now = width < NARROW * textPx && readings.isManaged();
        if (now == below) {
            return;
        }
        below = now;
        root.setCenter(null);
        root.setRight(null);
        split.getItems().clear();
        if (below) {
            split.getItems().addAll(pool, readings);
            split.setDividerPositions(0.6);
            SplitPane.setResizableWithParent(readings, false);
            root.setCenter(split);
        } else {
            root.setCenter(pool);
            root.setRight(readings);
        }
        readings.setBelow(below);
    }

    /** Sees to it that a window is no larger than the screen it opens on. */
    static void fit(Stage stage) {
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        if (stage.getWidth() > screen.getWidth() || stage.getHeight() > screen.getHeight()) {
            stage.setX(screen.getMinX());
            stage.setY(screen.getMinY());
            stage.setWidth(Math.min(stage.getWidth(), screen.getWidth()));
            stage.setHeight(Math.min(stage.getHeight(), screen.getHeight()));
        }
    }
}
