package trimwright.desktop.panes;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Figure;
import trimwright.desktop.model.Figures;
import trimwright.desktop.model.Pose;
import trimwright.report.Measure;
import trimwright.statics.Flotation;

/** The readings, each with what it was before the last change. */
public final class ReadingsPane extends VBox {

    private static final PseudoClass BELOW = PseudoClass.getPseudoClass("below");

    private final Desk desk;
    private final Label change = Ui.words("", "change");
    private final Label heading = Ui.heading("Readings");
    private final FlowPane lines = new FlowPane();
    private final IntegerProperty columns = new SimpleIntegerProperty(1);
    private Measure measure = Measure.METRIC;

    public ReadingsPane(Desk desk) {
        super(6);
        this.desk = desk;
        getStyleClass().addAll("side-pane", "readings");
        ScrollPane scroll = new ScrollPane(lines);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("plain-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        change.setId("last-change");
        heading.managedProperty().bind(heading.visibleProperty());
        lines.prefWrapLengthProperty().bind(lines.widthProperty());
        getChildren().addAll(heading, change, scroll);
        desk.flotation().addListener((o, was, now) -> show());
        desk.looked().addListener((o, was, now) -> show());
    }

    public void setMeasure(Measure other) {
        measure = other;
        show();
    }

    /** Whether it stands below the pool, where it is wide and low, and not beside it. */
    public void setBelow(boolean below) {
        pseudoClassStateChanged(BELOW, below);
        heading.setVisible(!below);
        columns.set(below ? 2 : 1);
    }

    private void show() {
        Flotation loaded = desk.flotation().get();
        if (loaded == null) {
            return;
        }
        Pose looked = desk.looked().get();
        boolean shown = looked != null && looked.flotation().isPresent();
        Flotation now = shown ? looked.flotation().get() : loaded;
        Flotation before =
                shown || desk.before().get() == null ? loaded : desk.before().get();
        List<Figure> figures = Figures.of(before, now, measure);
        String last = desk.lastChange();
        change.setText(
                shown
                        ? "As shown in the water, against her as loaded."
                        : looked != null
                                ? "As loaded, not as she is held."
                                : last.isEmpty() ? "Change something and see here what it does." : "Last: " + last);
        while (lines.getChildren().size() < figures.size()) {
            ReadingLine line = new ReadingLine();
            line.prefWidthProperty()
                    .bind(Bindings.createDoubleBinding(
                            () -> Math.floor(lines.getWidth() / columns.get()), lines.widthProperty(), columns));
            lines.getChildren().add(line);
        }
        lines.getChildren().remove(figures.size(), lines.getChildren().size());
        for (int i = 0; i < figures.size(); i++) {
            ((ReadingLine) lines.getChildren().get(i)).show(figures.get(i));
        }
    }
}
