package trimwright.desktop.panes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Preset;
import trimwright.desktop.model.Problem;
import trimwright.desktop.model.ReadingsDesk;
import trimwright.file.LoadedReadings;
import trimwright.report.EstimateWords;
import trimwright.report.Measure;

/** The readings: a list, the file they are in, and the numbers of the one that is picked. */
public final class ReadingsBox extends VBox {

    private static final int ROWS = 5;

    /** What opening and saving do; each asks what it needs to ask. */
    public interface Files {
        void openReadings();

        void saveReadings();

        void saveReadingsAs();
    }

    private final Desk desk;
    private final ReadingsDesk readings;
    private final Label file = Ui.words("", "quiet");
    private final Label hint = Ui.words("Nothing was read yet. Add what you saw, or open a file of readings.", "quiet");
    private final Label complaint = Ui.words("", "error");
    private final ListView<Reading> list = new ListView<>();
    private final MenuButton add = new MenuButton("Add");
    private final Button delete;
    private final ReadingForm form;
    private Measure measure = Measure.METRIC;
    private boolean following;

    ReadingsBox(Desk desk, ReadingsDesk readings, Files files) {
        super(8);
        this.desk = desk;
        this.readings = readings;
        form = new ReadingForm(desk, readings);
        list.setId("readings");
        list.setCellFactory(l -> new ReadingCell());
        add.setId("add-reading");
        delete = Ui.button("Delete", "Take the picked reading out", () -> complain(readings.remove()));
        delete.setId("delete-reading");
        Button save = Ui.button("Save", "Save the readings", files::saveReadings);
        save.setId("save-readings");
        FlowPane buttons = new FlowPane(
                6,
                6,
                add,
                delete,
                Ui.button("Open…", "Open a file of readings", files::openReadings),
                save,
                Ui.button("Save as…", "Save the readings in another file", files::saveReadingsAs));
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        complaint.setId("readings-complaint");
        getChildren().addAll(Ui.heading("Readings"), file, hint, list, buttons, complaint, form);
        readings.readings().addListener((o, was, now) -> show(now));
        readings.unsaved().addListener((o, was, now) -> show(readings.readings().get()));
        readings.misfit().addListener((o, was, now) -> complain(now));
        readings.selected().addListener((o, was, now) -> follow());
        desk.boat().addListener((o, was, now) -> listPresets());
        list.getSelectionModel().selectedItemProperty().addListener((o, was, now) -> {
            if (!following && now != null) {
                readings.selected().set(now.id());
            }
        });
        show(readings.readings().get());
    }

    void setMeasure(Measure other) {
        measure = other;
        form.setMeasure(other);
        show(readings.readings().get());
    }

    private void listPresets() {
        add.getItems().clear();
        for (Preset preset : Preset.values()) {
            if (preset.isFor(desk.boat().get().boat())) {
                MenuItem item = new MenuItem(preset.title());
                item.setId("preset-" + preset.ordinal());
                item.setOnAction(e -> add(preset));
                add.getItems().add(item);
            }
        }
    }

    private void add(Preset preset) {
        Reading reading = preset.reading(
                desk.boat().get().boat(), readings.readings().get().test());
        form.expect(reading.id(), preset.seen());
        complain(readings.add(reading));
    }

    private void complain(Optional<String> refused) {
        complaint.setText(refused.map(why -> "▲ " + why).orElse(""));
    }

    private void complain(Problem problem) {
        complaint.setText(problem == null ? "" : "▲ " + problem.title() + ". " + String.join(" ", problem.lines()));
    }

    private void show(LoadedReadings now) {
        List<Reading> all = now.test().readings();
        following = true;
        list.getItems().setAll(all);
        following = false;
        boolean any = !all.isEmpty();
        list.setVisible(any);
        list.setManaged(any);
        // In rows of text, which the style sheet makes as high as the text is.
        double rows = 3.54 * Math.min(ROWS, all.size()) + 0.3;
        list.setStyle("-fx-fixed-cell-size: 3.54em; -fx-pref-height: " + rows + "em; -fx-min-height: "
                + (3.54 * Math.min(2, all.size()) + 0.3) + "em;");
        hint.setVisible(!any);
        hint.setManaged(!any);
        String saved = readings.unsaved().get() ? "● " : "";
        file.setText(saved + now.path().map(p -> p.getFileName().toString()).orElse(any ? "in no file yet" : ""));
        file.setVisible(!file.getText().isEmpty());
        file.setManaged(file.isVisible());
        follow();
    }

    private void follow() {
        following = true;
        Optional<Reading> picked = readings.selectedReading();
        picked.ifPresentOrElse(
                r -> list.getSelectionModel().select(r),
                () -> list.getSelectionModel().clearSelection());
        following = false;
        delete.setDisable(picked.isEmpty());
        form.show(picked);
    }

    /** A reading in the list: its name, and what was seen. */
    private final class ReadingCell extends ListCell<Reading> {

        private final Label name = new Label();
        private final Label seen = new Label();
        private final VBox both = new VBox(1, name, seen);

        ReadingCell() {
            seen.getStyleClass().add("quiet");
            // A long list of sightings ends in dots instead of widening the pane.
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(Reading reading, boolean empty) {
            super.updateItem(reading, empty);
            setText(null);
            if (empty || reading == null) {
                setGraphic(null);
                return;
            }
            name.setText(reading.id());
            seen.setText(
                    reading.seen().isEmpty()
                            ? "nothing seen yet"
                            : reading.seen().stream()
                                    .map(ReadingsBox.this::brief)
                                    .collect(Collectors.joining(", ")));
            setGraphic(both);
            setAccessibleText("reading " + reading.id() + ", " + seen.getText());
        }
    }

    private String brief(Sighting s) {
        List<String> words = new ArrayList<>();
        words.add(
                switch (s.quantity()) {
                    case WATER_ABOVE -> place(s) + " water";
                    case FREEBOARD -> place(s) + " freeboard";
                    case LIST -> "list";
                    case TRIM -> "trim";
                    case HANGING -> "hangs";
                    case RESTS_AT -> "rests at";
                    case ROLL -> "roll";
                });
        words.add(EstimateWords.number(s.quantity(), Optional.of(s.value()), measure)
                + EstimateWords.unit(s.quantity(), measure));
        return String.join(" ", words);
    }

    private String place(Sighting s) {
        return desk.boat()
                .get()
                .boat()
                .paintedLine()
                .map(line -> line.foremostMm().equals(s.atMm().orElseThrow())
                        ? "bow"
                        : line.aftmostMm().equals(s.atMm().orElseThrow()) ? "stern" : "a point")
                .orElse("a point");
    }
}
