package trimwright.desktop.panes;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Trial;
import trimwright.immersion.WaterPlane;
import trimwright.report.AttitudeWords;
import trimwright.report.Measure;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/** A waterline to try, by sliders; the grips in the pool do the same. */
final class TrialBox extends VBox {

    private static final double MOST_LIST_DEG = 45;
    private static final double MOST_TRIM_DEG = 20;
    private static final String NOTHING =
            "Move a slider, or drag a grip in the water: the water goes there, and says what it would carry.";

    private final Desk desk;
    private final Trial trial;
    private final Slider height = new Slider(0, 1, 0.5);
    private final Slider list = new Slider(-MOST_LIST_DEG, MOST_LIST_DEG, 0);
    private final Slider trim = new Slider(-MOST_TRIM_DEG, MOST_TRIM_DEG, 0);
    private final Label heightNow = new Label();
    private final Label listNow = new Label();
    private final Label trimNow = new Label();
    private final Label words = Ui.words(NOTHING, "quiet");
    private Measure measure = Measure.METRIC;
    private boolean following;

    TrialBox(Desk desk, Trial trial) {
        super(6);
        this.desk = desk;
        this.trial = trial;
        words.setId("trial-words");
        height.setId("trial-height");
        list.setId("trial-list");
        trim.setId("trial-trim");
        GridPane grid = new GridPane();
        grid.setHgap(8);
        grid.setVgap(4);
        row(grid, 0, "Height", height, heightNow);
        row(grid, 1, "List", list, listNow);
        row(grid, 2, "Trim", trim, trimNow);
        getChildren().addAll(Ui.heading("Try a waterline"), grid, words);
        desk.flotation().addListener((o, was, now) -> reset());
        trial.tried().addListener((o, was, now) -> follow(now));
    }

    private void row(GridPane grid, int row, String name, Slider slider, Label now) {
        Label label = new Label(name);
        label.setLabelFor(slider);
        slider.setAccessibleText(name + " of a trial waterline");
        slider.setMaxWidth(Double.MAX_VALUE);
        GridPane.setHgrow(slider, Priority.ALWAYS);
        now.setMinWidth(USE_PREF_SIZE);
        grid.addRow(row, label, slider, now);
        slider.valueProperty().addListener((o, was, to) -> {
            if (!following) {
                trial.at(WaterPlane.of(Equilibrium.up(list.getValue(), trim.getValue()), height.getValue()), false);
            }
        });
    }

    void setMeasure(Measure other) {
        measure = other;
        follow(trial.tried().get());
    }

    private void follow(Trial.Tried now) {
        if (now == null) {
            reset();
            return;
        }
        WaterPlane plane = now.line().plane();
        put(
                plane.heightMm(),
                Math.toDegrees(Math.atan2(plane.up().getY(), plane.up().getZ())),
                Math.toDegrees(Math.asin(plane.up().getX())));
        words.setText(now.words(measure));
    }

    /** Back to where the water stands. */
    private void reset() {
        Flotation now = desk.flotation().get();
        if (now == null || trial.tried().get() != null) {
            return;
        }
        Condition condition = now.condition();
        following = true;
        height.setMin(condition.bottomMm(Vector3D.PLUS_K));
        height.setMax(condition.topMm(Vector3D.PLUS_K));
        following = false;
        Optional<Equilibrium> rest = now.settled();
        put(
                rest.map(e -> e.plane().heightMm()).orElse(height.getMax()),
                rest.map(Equilibrium::heelDeg).orElse(0.0),
                rest.map(Equilibrium::trimDeg).orElse(0.0));
        words.setText(NOTHING);
    }

    private void put(double heightMm, double listDeg, double trimDeg) {
        following = true;
        height.setValue(heightMm);
        list.setValue(listDeg);
        trim.setValue(trimDeg);
        following = false;
        heightNow.setText(measure.length(heightMm));
        listNow.setText(AttitudeWords.list(listDeg));
        trimNow.setText(AttitudeWords.trim(trimDeg));
    }
}
