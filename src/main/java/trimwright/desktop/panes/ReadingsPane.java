package trimwright.desktop.panes;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
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

    private final Desk desk;
    private final Label change = Ui.words("", "change");
    private final VBox lines = Ui.column(0);
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
        getChildren().addAll(Ui.heading("Readings"), change, scroll);
        desk.flotation().addListener((o, was, now) -> show());
        desk.looked().addListener((o, was, now) -> show());
    }

    public void setMeasure(Measure other) {
        measure = other;
        show();
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
            lines.getChildren().add(new ReadingLine());
        }
        lines.getChildren().remove(figures.size(), lines.getChildren().size());
        for (int i = 0; i < figures.size(); i++) {
            ((ReadingLine) lines.getChildren().get(i)).show(figures.get(i));
        }
    }
}
