package trimwright.desktop.panes;

import java.util.List;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.PlanDesk;
import trimwright.desktop.model.PoolTestDesk;
import trimwright.desktop.model.ReadingsDesk;
import trimwright.desktop.model.ToleranceDesk;
import trimwright.desktop.tank3d.PoolView;
import trimwright.report.Measure;

/** The pool test: how far she may be off before she gets wet, and after it what the readings say and what to change. */
public final class PoolTestPane extends VBox {

    private final ReadingsBox readings;
    private final EstimateBox estimate;
    private final ToleranceBox tolerance;
    private final VBox after;

    /** @param files what opening and saving readings does */
    public PoolTestPane(
            Desk desk,
            ReadingsDesk readingsDesk,
            PoolTestDesk tests,
            ToleranceDesk tolerances,
            PlanDesk plans,
            PoolView pool,
            ReadingsBox.Files files) {
        super(8);
        readings = new ReadingsBox(desk, readingsDesk, files);
        estimate = new EstimateBox(desk, tests, pool);
        tolerance = new ToleranceBox(desk, tolerances, plans);
        after = Ui.column(8, readings, estimate);
        ToggleGroup stages = new ToggleGroup();
        ToggleButton before = stage("Before she gets wet", "pool-before", stages);
        ToggleButton wet = stage("What was read", "pool-after", stages);
        wet.setSelected(true);
        HBox bar = new HBox(before, wet);
        bar.getStyleClass().add("segments");
        stages.selectedToggleProperty().addListener((o, was, now) -> {
            if (now == null) {
                stages.selectToggle(was);
            } else {
                show(now == wet);
                if (now == wet) {
                    estimate.entered();
                } else {
                    // What the readings ask for lies in the hull only while they are looked at.
                    estimate.left();
                    desk.lookAt(null);
                }
            }
        });
        getChildren().addAll(bar, tolerance, after);
        show(true);
    }

    private static ToggleButton stage(String text, String id, ToggleGroup stages) {
        ToggleButton button = new ToggleButton(text);
        button.setId(id);
        button.setToggleGroup(stages);
        button.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(button, Priority.ALWAYS);
        return button;
    }

    private void show(boolean isAfter) {
        for (VBox box : List.of(after, tolerance)) {
            boolean shown = (box == after) == isAfter;
            box.setVisible(shown);
            box.setManaged(shown);
        }
    }

    public void setMeasure(Measure other) {
        readings.setMeasure(other);
        estimate.setMeasure(other);
        tolerance.setMeasure(other);
    }

    /** Called when another job is turned to: what was only shown is taken away. */
    public void left() {
        estimate.left();
    }

    /** Called when this job is turned to. */
    public void entered() {
        if (after.isVisible()) {
            estimate.entered();
        }
    }
}
