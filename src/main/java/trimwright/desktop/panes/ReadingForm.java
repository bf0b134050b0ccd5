package trimwright.desktop.panes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Water;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.WeightMoved;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.ReadingEdits;
import trimwright.desktop.model.ReadingsDesk;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.PoolWords;

/** One reading: the state she was in, and what was seen. */
final class ReadingForm extends VBox {

    private final Desk desk;
    private final ReadingsDesk readings;
    private final Label complaint = Ui.words("", "error");
    private final VBox body = Ui.column(6);
    private final SeenRows seen;
    /** What refills the fields when the same ones do for another state of the reading. */
    private final List<Runnable> refills = new ArrayList<>();

    private String shape = "";
    private Optional<Reading> shown = Optional.empty();
    private Measure measure = Measure.METRIC;

    ReadingForm(Desk desk, ReadingsDesk readings) {
        super(6);
        this.desk = desk;
        this.readings = readings;
        seen = new SeenRows(desk, this);
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        complaint.setId("reading-complaint");
        getChildren().addAll(body, complaint);
        desk.boat().addListener((o, was, now) -> show(shown));
    }

    void setMeasure(Measure other) {
        measure = other;
        shape = "";
        show(shown);
    }

    Measure measure() {
        return measure;
    }

    /** Rows for what there is to see in a reading that is about to be added. */
    void expect(String id, List<Quantity> quantities) {
        seen.expect(id, quantities);
    }

    /** The reading as it is now. */
    Reading now() {
        return shown.orElseThrow();
    }

    /** Puts another state of the reading in its place. */
    Optional<String> put(String what, Reading other) {
        Optional<String> refused = readings.replace(what + " of " + now().id(), other);
        complaint.setText(refused.map(why -> "▲ " + why).orElse(""));
        return refused;
    }

    /** Shows the same reading with other rows. */
    void reshape() {
        show(shown);
    }

    void show(Optional<Reading> reading) {
        boolean other = !reading.map(Reading::id).equals(shown.map(Reading::id));
        shown = reading;
        if (other) {
            complaint.setText("");
        }
        if (reading.isEmpty() || desk.boat().get() == null) {
            body.getChildren().clear();
            shape = "";
            return;
        }
        seen.turnTo(reading.get());
        String needed = shapeOf(reading.get());
        if (!needed.equals(shape)) {
            shape = needed;
            rebuild(reading.get());
        }
        refills.forEach(Runnable::run);
    }

    /** Fields are made anew only where others are needed, so that the cursor stays in its field. */
    private String shapeOf(Reading r) {
        Boat boat = desk.boat().get().boat();
        List<String> tanks =
                boat.parts().stream().filter(Part::isTank).map(Part::id).toList();
        return r.id() + "\n" + tanks + r.added().size() + "," + r.moved().size() + "\n" + seen.shape(r) + measure;
    }

    private void rebuild(Reading reading) {
        Node focused = getScene() == null ? null : getScene().getFocusOwner();
        String field = focused != null && focused.getId() != null && isMine(focused) ? focused.getId() : "";
        refills.clear();
        body.getChildren().clear();
        GridPane state = Ui.fields();
        TextField name = name();
        state.addRow(0, new Label("Name"), name);
        GridPane.setColumnSpan(name, 2);
        addFills(state);
        addWater(state);
        body.getChildren().addAll(Ui.heading("The state she was in"), state);
        addWeights(reading);
        body.getChildren().add(Ui.heading("What was seen"));
        seen.build(body, refills);
        body.getChildren().add(sightings());
        if (!field.isEmpty()) {
            Platform.runLater(
                    () -> Optional.ofNullable(body.lookup("#" + field)).ifPresent(Node::requestFocus));
        }
    }

    private boolean isMine(Node node) {
        for (Node n = node; n != null; n = n.getParent()) {
            if (n == this) {
                return true;
            }
        }
        return false;
    }

    private TextField name() {
        TextField name = new TextField();
        name.setId("reading-name");
        name.setAccessibleText("Name of the reading");
        Runnable commit = () -> {
            String typed = name.getText().strip();
            String was = now().id();
            if (typed.equals(was)) {
                return;
            }
            if (typed.isEmpty() || !rename(was, typed)) {
                name.setText(was);
            }
        };
        name.setOnAction(e -> commit.run());
        name.focusedProperty().addListener((o, was, focused) -> {
            if (!focused && shown.isPresent()) {
                commit.run();
            }
        });
        refills.add(() -> name.setText(now().id()));
        return name;
    }

    private boolean rename(String was, String typed) {
        seen.renamed(was, typed);
        boolean refused = put("name", ReadingEdits.named(now(), typed)).isPresent();
        if (refused) {
            seen.renamed(typed, was);
        }
        return !refused;
    }

    private void addFills(GridPane grid) {
        Boat boat = desk.boat().get().boat();
        for (Part tank : boat.parts().stream().filter(Part::isTank).toList()) {
            NumberField fill = new NumberField(v -> put(
                    "fill of " + tank.id(), ReadingEdits.filled(now(), tank.id(), v.map(percent -> percent / 100))));
            fill.setId("fill-" + grid.getRowCount());
            fill.setPromptText(Numbers.plain(100 * tank.fill()));
            fill.setTooltip(Ui.tip("0 to 100; empty: as full as in her file"));
            refills.add(() -> fill.show(Optional.ofNullable(now().fills().get(tank.id()))
                    .map(f -> Numbers.plain(Math.rint(1e6 * f) / 1e4))
                    .orElse("")));
            labelled(grid, tank.id() + ", full", fill, "%");
        }
    }

    private void addWater(GridPane grid) {
        NumberField warm = new NumberField(v -> put("water", ReadingEdits.in(now(), ReadingEdits.water(v, salt()))));
        NumberField salt = new NumberField(v -> put("water", ReadingEdits.in(now(), ReadingEdits.water(degrees(), v))));
        NumberField dense = new NumberField(v -> put("water", ReadingEdits.in(now(), v.map(Water::ofDensity))));
        List<NumberField> all = List.of(warm, salt, dense);
        List<Function<Water, Optional<Double>>> values = List.of(
                Water::temperatureC,
                Water::salinityGPerKg,
                w -> w.temperatureC().isPresent() ? Optional.empty() : Optional.of(w.densityGPerCm3()));
        List<String> names = List.of("Water, temperature", "Salt", "or its density");
        List<String> units = List.of("°C", "g/kg", "g/cm³");
        for (int i = 0; i < all.size(); i++) {
            NumberField field = all.get(i);
            Function<Water, Optional<Double>> value = values.get(i);
            field.setId("reading-water-" + i);
            field.setTooltip(Ui.tip("All three empty: the water of her file"));
            refills.add(() -> {
                field.show(now().water().flatMap(value).map(Numbers::plain).orElse(""));
                Water file = desk.boat().get().boat().water();
                field.setPromptText(
                        now().water().isPresent()
                                ? ""
                                : value.apply(file).map(Numbers::plain).orElse(""));
            });
            labelled(grid, names.get(i), field, units.get(i));
        }
    }

    private Optional<Double> degrees() {
        return now().water().flatMap(Water::temperatureC);
    }

    private Optional<Double> salt() {
        return now().water().flatMap(Water::salinityGPerKg);
    }

    private static void labelled(GridPane grid, String text, NumberField field, String unitText) {
        Label label = Ui.words(text);
        label.setLabelFor(field);
        field.setAccessibleText(text + ", " + unitText);
        Label unit = new Label(unitText);
        unit.getStyleClass().add("quiet");
        grid.addRow(grid.getRowCount(), label, field, unit);
    }

    private void addWeights(Reading reading) {
        String mm = measure.lengthUnit();
        String g = measure.massUnit();
        if (!reading.added().isEmpty()) {
            WeightGrid grid = new WeightGrid(
                    "Laid on her, " + g + ", and where, " + mm + "; how dense, where it lies in the water",
                    List.of("weight", "ahead", "to port", "up", "g/cm³"));
            for (int i = 0; i < reading.added().size(); i++) {
                addLaid(grid, i);
            }
            body.getChildren().add(grid);
        }
        if (!reading.moved().isEmpty()) {
            WeightGrid grid =
                    new WeightGrid("Moved, " + g + ", and how far, " + mm, List.of("weight", "ahead", "to port", "up"));
            for (int i = 0; i < reading.moved().size(); i++) {
                addMoved(grid, i);
            }
            body.getChildren().add(grid);
        }
        Button lay = Ui.button(
                "Lay a weight on her",
                "Negative where something was taken out",
                () -> put(
                        "weight",
                        ReadingEdits.adding(
                                now(),
                                now().added().size(),
                                Optional.of(new KnownWeight(0, Vector3D.ZERO, Optional.empty())))));
        Button move = Ui.button(
                "Move a weight",
                "A weight aboard, moved for the reading",
                () -> put(
                        "weight",
                        ReadingEdits.moving(
                                now(), now().moved().size(), Optional.of(new WeightMoved(0, Vector3D.ZERO)))));
        lay.setId("lay-weight");
        move.setId("move-weight");
        body.getChildren().add(new FlowPane(6, 6, lay, move));
    }

    private void addLaid(WeightGrid grid, int i) {
        List<NumberField> fields = new ArrayList<>();
        fields.add(new NumberField(v -> putLaid(i, w -> new KnownWeight(grams(v), w.centreMm(), w.densityGPerCm3()))));
        for (int axis = 0; axis < 3; axis++) {
            int a = axis;
            fields.add(new NumberField(v -> putLaid(
                    i,
                    w -> new KnownWeight(w.massG(), ReadingEdits.with(w.centreMm(), a, mm(v)), w.densityGPerCm3()))));
        }
        fields.add(new NumberField(v -> putLaid(i, w -> new KnownWeight(w.massG(), w.centreMm(), v))));
        grid.row("laid-" + i, fields, () -> put("weight", ReadingEdits.adding(now(), i, Optional.empty())));
        refills.add(() -> {
            KnownWeight w = now().added().get(i);
            show(fields, w.massG(), w.centreMm());
            fields.get(4).show(w.densityGPerCm3().map(Numbers::plain).orElse(""));
            fields.get(4).setPromptText("dry");
        });
    }

    private void addMoved(WeightGrid grid, int i) {
        List<NumberField> fields = new ArrayList<>();
        fields.add(new NumberField(v -> putMoved(i, w -> new WeightMoved(grams(v), w.byMm()))));
        for (int axis = 0; axis < 3; axis++) {
            int a = axis;
            fields.add(new NumberField(v ->
                    putMoved(i, w -> new WeightMoved(w.massG(), ReadingEdits.with(w.byMm(), a, mm(v))))));
        }
        grid.row("moved-" + i, fields, () -> put("weight", ReadingEdits.moving(now(), i, Optional.empty())));
        refills.add(() -> {
            WeightMoved w = now().moved().get(i);
            show(fields, w.massG(), w.byMm());
        });
    }

    private void show(List<NumberField> fields, double massG, Vector3D mm) {
        fields.get(0).show(measure.massField(massG));
        fields.get(1).show(measure.lengthField(mm.getX()));
        fields.get(2).show(measure.lengthField(mm.getY()));
        fields.get(3).show(measure.lengthField(mm.getZ()));
    }

    private Optional<String> putLaid(int i, Function<KnownWeight, KnownWeight> change) {
        return put(
                "weight",
                ReadingEdits.adding(
                        now(), i, Optional.of(change.apply(now().added().get(i)))));
    }

    private Optional<String> putMoved(int i, Function<WeightMoved, WeightMoved> change) {
        return put(
                "weight",
                ReadingEdits.moving(
                        now(), i, Optional.of(change.apply(now().moved().get(i)))));
    }

    private double grams(Optional<Double> typed) {
        return measure.typedG(typed.orElse(0.0));
    }

    private double mm(Optional<Double> typed) {
        return measure.typedMm(typed.orElse(0.0));
    }

    private MenuButton sightings() {
        MenuButton more = new MenuButton("Something else was seen");
        more.setId("add-sighting");
        for (Quantity quantity : Quantity.values()) {
            MenuItem item = new MenuItem(PoolWords.of(quantity));
            item.setOnAction(e -> seen.add(quantity));
            more.getItems().add(item);
        }
        VBox.setVgrow(more, Priority.NEVER);
        return more;
    }
}
