package trimwright.desktop.panes;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.desktop.model.Background;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Pose;
import trimwright.immersion.WaterPlane;
import trimwright.report.AttitudeWords;
import trimwright.report.Measure;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.Waterline;

/** A waterline to try: the water is moved and tilted through the hull, and tells what it would carry there. */
final class TrialBox extends VBox {

    private static final double MOST_LIST_DEG = 30;
    private static final double MOST_TRIM_DEG = 10;

    private final Desk desk;
    private final Background work;
    private final Slider height = new Slider(0, 1, 0.5);
    private final Slider list = new Slider(-MOST_LIST_DEG, MOST_LIST_DEG, 0);
    private final Slider trim = new Slider(-MOST_TRIM_DEG, MOST_TRIM_DEG, 0);
    private final Label words = Ui.words("Move a slider: the water goes there, and says what it would carry.", "quiet");
    private Measure measure = Measure.METRIC;
    private boolean resetting;

    TrialBox(Desk desk, Executor workers) {
        super(6);
        this.desk = desk;
        work = new Background(workers, Platform::runLater);
        words.setId("trial-words");
        height.setId("trial-height");
        list.setId("trial-list");
        GridPane grid = new GridPane();
        grid.setHgap(8);
        grid.setVgap(4);
        row(grid, 0, "Height", height);
        row(grid, 1, "List", list);
        row(grid, 2, "Trim", trim);
        getChildren().addAll(Ui.heading("Try a waterline"), grid, words);
        desk.flotation().addListener((o, was, now) -> reset());
        desk.looked().addListener((o, was, now) -> {
            if (now == null) {
                reset();
            }
        });
    }

    private void row(GridPane grid, int row, String name, Slider slider) {
        Label label = new Label(name);
        label.setLabelFor(slider);
        slider.setAccessibleText(name + " of a trial waterline");
        slider.setMaxWidth(Double.MAX_VALUE);
        GridPane.setHgrow(slider, Priority.ALWAYS);
        grid.addRow(row, label, slider);
        slider.valueProperty().addListener((o, was, now) -> {
            if (!resetting) {
                tried();
            }
        });
    }

    void setMeasure(Measure other) {
        measure = other;
    }

    /** Back to where the water stands. */
    private void reset() {
        Flotation now = desk.flotation().get();
        if (now == null || desk.looked().get() != null) {
            return;
        }
        resetting = true;
        Condition condition = now.condition();
        height.setMin(condition.bottomMm(Vector3D.PLUS_K));
        height.setMax(condition.topMm(Vector3D.PLUS_K));
        Optional<Equilibrium> rest = now.settled();
        height.setValue(rest.map(e -> e.plane().heightMm()).orElse(height.getMax()));
        list.setValue(rest.map(Equilibrium::heelDeg).orElse(0.0));
        trim.setValue(rest.map(Equilibrium::trimDeg).orElse(0.0));
        words.setText("Move a slider: the water goes there, and says what it would carry.");
        resetting = false;
    }

    private void tried() {
        Flotation now = desk.flotation().get();
        if (now == null) {
            return;
        }
        WaterPlane plane = WaterPlane.of(Equilibrium.up(list.getValue(), trim.getValue()), height.getValue());
        Condition condition = now.condition();
        work.ask(
                () -> Waterline.of(condition, plane),
                line -> show(condition, line),
                e -> desk.problem("This waterline could not be worked out", e));
    }

    private void show(Condition condition, Waterline line) {
        double less = line.displacementG() - condition.massG();
        String carried = "carries " + measure.mass(line.displacementG()) + ", " + measure.mass(Math.abs(less))
                + (less < 0 ? " less than she weighs" : " more than she weighs");
        words.setText("Here the water " + carried + "; 1 mm is " + measure.mass(line.gramsPerMmImmersion())
                + ", waterplane " + Math.round(line.sums().waterplaneMm2() / 100) + " cm²"
                + line.bmTransverseMm().map(bm -> ", BM " + measure.length(bm)).orElse("") + ".");
        desk.lookAt(new Pose(
                condition.boat(),
                line.plane(),
                Optional.of(condition.centreOfGravityMm(line.plane())),
                line.centreOfBuoyancyMm(),
                Optional.empty(),
                Optional.empty(),
                "A waterline to try, " + AttitudeWords.of(line.plane().up()) + ": " + carried));
    }
}
