package trimwright.desktop.panes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.PaintedLine;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.ReadingEdits;
import trimwright.report.EstimateWords;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.PoolWords;

/** What was seen in a reading, a row each; and rows that wait for their number, which are in no file yet. */
final class SeenRows {

    private static final String BOW = "bow";
    private static final String STERN = "stern";
    private static final String POINT = "a point";
    private static final List<String> AXES = List.of("ahead", "to port", "up");

    /** Something to be seen whose number is still to come. */
    private static final class Awaited {
        private final Quantity quantity;
        private Optional<Double> error = Optional.empty();
        private Optional<Vector3D> at;

        Awaited(Quantity quantity, Optional<Vector3D> at) {
            this.quantity = quantity;
            this.at = at;
        }
    }

    private final Desk desk;
    private final ReadingForm form;
    private final Map<String, List<Awaited>> awaitedById = new HashMap<>();
    private List<Awaited> awaited = new ArrayList<>();

    SeenRows(Desk desk, ReadingForm form) {
        this.desk = desk;
        this.form = form;
    }

    /** Rows for a reading that is about to be added; of two heights the first is at the bow. */
    void expect(String id, List<Quantity> quantities) {
        List<Awaited> rows = new ArrayList<>();
        for (Quantity quantity : quantities) {
            boolean bowTaken = rows.stream().anyMatch(a -> a.quantity == quantity);
            rows.add(new Awaited(quantity, usualPlace(quantity, !bowTaken)));
        }
        awaitedById.put(id, rows);
    }

    /** Turns to the rows of a reading. */
    void turnTo(Reading reading) {
        awaited = awaitedById.computeIfAbsent(reading.id(), id -> new ArrayList<>());
    }

    /** A reading is called otherwise. */
    void renamed(String from, String to) {
        Optional.ofNullable(awaitedById.remove(from)).ifPresent(rows -> awaitedById.put(to, rows));
    }

    /** A row more. */
    void add(Quantity quantity) {
        awaited.add(new Awaited(quantity, usualPlace(quantity, true)));
        form.reshape();
        Platform.runLater(() -> Optional.ofNullable(
                        form.lookup("#seen-" + (form.now().seen().size() + awaited.size() - 1)))
                .ifPresent(Node::requestFocus));
    }

    private Optional<Vector3D> usualPlace(Quantity quantity, boolean bow) {
        return quantity.isAtAPoint()
                ? Optional.of(
                        line().map(l -> bow ? l.foremostMm() : l.aftmostMm()).orElse(Vector3D.ZERO))
                : Optional.empty();
    }

    private Optional<PaintedLine> line() {
        return desk.boat().get().boat().paintedLine();
    }

    /** What rows a reading needs. */
    String shape(Reading reading) {
        StringBuilder shape = new StringBuilder();
        reading.seen().forEach(s -> shape.append(s.quantity()));
        awaited.forEach(a -> shape.append(a.quantity));
        return shape.append(line().isPresent()).toString();
    }

    private String placeName(Vector3D at) {
        if (line().filter(l -> l.foremostMm().equals(at)).isPresent()) {
            return BOW;
        }
        return line().filter(l -> l.aftmostMm().equals(at)).isPresent() ? STERN : POINT;
    }

    void build(VBox into, List<Runnable> refills) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("seen");
        ColumnConstraints wide = new ColumnConstraints();
        wide.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().add(wide);
        int count = form.now().seen().size() + awaited.size();
        for (int i = 0; i < count; i++) {
            add(grid, i, refills);
        }
        into.getChildren().add(grid);
    }

    private boolean isAwaited(int i) {
        return i >= form.now().seen().size();
    }

    private Awaited awaited(int i) {
        return awaited.get(i - form.now().seen().size());
    }

    private Quantity quantity(int i) {
        return isAwaited(i) ? awaited(i).quantity : form.now().seen().get(i).quantity();
    }

    private Optional<Vector3D> at(int i) {
        return isAwaited(i) ? awaited(i).at : form.now().seen().get(i).atMm();
    }

    private void add(GridPane grid, int i, List<Runnable> refills) {
        Quantity quantity = quantity(i);
        NumberField value = new NumberField(v -> putValue(i, v));
        NumberField error = new NumberField(v -> putError(i, v));
        value.setId("seen-" + i);
        error.setId("seen-error-" + i);
        error.getStyleClass().add("error-of");
        value.setMinWidth(Region.USE_PREF_SIZE);
        error.setMinWidth(Region.USE_PREF_SIZE);
        Label name = Ui.words(PoolWords.of(quantity));
        name.setLabelFor(value);
        String unit = EstimateWords.unit(quantity, form.measure()).strip();
        value.setAccessibleText(PoolWords.of(quantity) + ", " + unit);
        error.setAccessibleText("how far that may be off, " + unit);
        error.setPromptText(field(quantity, quantity.usualError()));
        error.setTooltip(
                Ui.tip(
                        "How far it may be off, a standard deviation: two times in three the truth lies within. Empty: the usual."));
        Label unitLabel = new Label(unit);
        unitLabel.getStyleClass().add("quiet");
        unitLabel.setMinWidth(Region.USE_PREF_SIZE);
        Button out = Ui.button("×", "Take this out of the reading", () -> remove(i));
        int row = grid.getRowCount();
        grid.add(name, 0, row, 6, 1);
        grid.addRow(row + 1, Ui.filler(), value, new Label("±"), error, unitLabel, out);
        refills.add(() -> {
            Optional<Sighting> seen = isAwaited(i)
                    ? Optional.empty()
                    : Optional.of(form.now().seen().get(i));
            value.show(seen.map(s -> field(quantity, s.value())).orElse(""));
            Optional<Double> own = seen.isPresent()
                    ? seen.map(Sighting::error).filter(e -> e != quantity.usualError())
                    : awaited(i).error;
            error.show(own.map(e -> field(quantity, e)).orElse(""));
        });
        if (quantity.isAtAPoint()) {
            HBox place = place(i, refills);
            grid.add(place, 0, row + 2, 6, 1);
        }
    }

    /** Where a height was read: at a painted end, or at a point by its numbers, which any change of them makes it. */
    private HBox place(int i, List<Runnable> refills) {
        ComboBox<String> where = new ComboBox<>();
        where.getItems().addAll(line().isPresent() ? List.of(BOW, STERN, POINT) : List.of(POINT));
        where.setAccessibleText("Where the height was read");
        where.setId("seen-where-" + i);
        where.setOnAction(e -> {
            if (BOW.equals(where.getValue())) {
                putPlace(i, line().orElseThrow().foremostMm());
            } else if (STERN.equals(where.getValue())) {
                putPlace(i, line().orElseThrow().aftmostMm());
            }
        });
        where.setMinWidth(Region.USE_PREF_SIZE);
        Label at = new Label("at");
        at.setMinWidth(Region.USE_PREF_SIZE);
        HBox place = new HBox(4, at, where);
        place.setStyle("-fx-padding: 0 0 4 12; -fx-alignment: center-left;");
        refills.add(() -> where.setValue(placeName(at(i).orElseThrow())));
        for (int axis = 0; axis < AXES.size(); axis++) {
            int a = axis;
            NumberField coordinate = new NumberField(v -> putPlace(
                    i, ReadingEdits.with(at(i).orElseThrow(), a, form.measure().typedMm(v.orElse(0.0)))));
            coordinate.setPrefColumnCount(4);
            coordinate.setAccessibleText(AXES.get(a));
            coordinate.setTooltip(Ui.tip(AXES.get(a) + ", " + form.measure().lengthUnit()));
            coordinate.setId("seen-at-" + i + "-" + a);
            refills.add(() -> coordinate.show(
                    form.measure().lengthField(at(i).orElseThrow().toArray()[a])));
            place.getChildren().add(coordinate);
        }
        return place;
    }

    private String field(Quantity quantity, double value) {
        Measure measure = form.measure();
        return switch (quantity) {
            case WATER_ABOVE, FREEBOARD -> measure.lengthField(value);
            case HANGING -> measure.massField(value);
            case LIST, TRIM, RESTS_AT, ROLL -> Numbers.plain(value);
        };
    }

    private double typed(Quantity quantity, double value) {
        Measure measure = form.measure();
        return switch (quantity) {
            case WATER_ABOVE, FREEBOARD -> measure.typedMm(value);
            case HANGING -> measure.typedG(value);
            case LIST, TRIM, RESTS_AT, ROLL -> value;
        };
    }

    private Optional<String> putValue(int i, Optional<Double> typed) {
        if (typed.isEmpty()) {
            return isAwaited(i) ? Optional.empty() : remove(i);
        }
        Quantity quantity = quantity(i);
        double value = typed(quantity, typed.get());
        if (!isAwaited(i)) {
            Sighting s = form.now().seen().get(i);
            return put(i, new Sighting(quantity, value, s.error(), s.atMm()));
        }
        Awaited row = awaited(i);
        Sighting sighting = new Sighting(quantity, value, row.error.orElse(quantity.usualError()), row.at);
        // It waits no longer: the reading has it.
        int index = awaited.indexOf(row);
        awaited.remove(row);
        Optional<String> refused = put(form.now().seen().size(), sighting);
        if (refused.isPresent()) {
            awaited.add(index, row);
        }
        return refused;
    }

    private Optional<String> putError(int i, Optional<Double> typed) {
        Quantity quantity = quantity(i);
        Optional<Double> error = typed.map(e -> typed(quantity, e));
        if (error.isPresent() && !(error.get() > 0)) {
            return Optional.of("An error is above 0.");
        }
        if (isAwaited(i)) {
            awaited(i).error = error;
            return Optional.empty();
        }
        Sighting s = form.now().seen().get(i);
        return put(i, new Sighting(quantity, s.value(), error.orElse(quantity.usualError()), s.atMm()));
    }

    private Optional<String> putPlace(int i, Vector3D at) {
        if (at(i).filter(at::equals).isPresent()) {
            return Optional.empty();
        }
        if (isAwaited(i)) {
            awaited(i).at = Optional.of(at);
            form.reshape();
            return Optional.empty();
        }
        Sighting s = form.now().seen().get(i);
        return put(i, new Sighting(s.quantity(), s.value(), s.error(), Optional.of(at)));
    }

    private Optional<String> put(int i, Sighting sighting) {
        return form.put(
                PoolWords.of(sighting.quantity()).replaceAll(", \\+.*", ""),
                ReadingEdits.seeing(form.now(), i, Optional.of(sighting)));
    }

    private Optional<String> remove(int i) {
        if (isAwaited(i)) {
            awaited.remove(awaited(i));
            form.reshape();
            return Optional.empty();
        }
        return form.put("what was seen", ReadingEdits.seeing(form.now(), i, Optional.empty()));
    }
}
