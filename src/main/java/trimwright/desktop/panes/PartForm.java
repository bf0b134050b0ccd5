package trimwright.desktop.panes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import trimwright.boat.Kind;
import trimwright.boat.Materials;
import trimwright.boat.Part;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Edits;
import trimwright.desktop.model.PartField;
import trimwright.report.Measure;
import trimwright.report.Numbers;

/** The numbers of one part, to be typed. */
final class PartForm extends VBox {

    private final Desk desk;
    private final Label title = Ui.heading("");
    private final Label about = Ui.words("", "quiet");
    private final GridPane grid = new GridPane();
    private final Label complaint = Ui.words("", "error");
    private final List<NumberField> inputs = new ArrayList<>();
    private List<PartField> fields = List.of();
    private Optional<Part> shown = Optional.empty();
    private Measure measure = Measure.METRIC;

    PartForm(Desk desk) {
        super(6);
        this.desk = desk;
        grid.setHgap(8);
        grid.setVgap(5);
        ColumnConstraints wide = new ColumnConstraints();
        wide.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(wide, new ColumnConstraints(92), new ColumnConstraints(44));
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        complaint.setId("part-complaint");
        getChildren().addAll(title, about, grid, complaint);
    }

    void setMeasure(Measure other) {
        measure = other;
        show(desk.selectedPart());
    }

    void complain(String why) {
        complaint.setText("▲ " + why);
    }

    void show(Optional<Part> picked) {
        complaint.setText("");
        Optional<Part> before = shown;
        shown = picked;
        if (picked.isPresent() && before.isPresent() && isLike(picked.get(), before.get())) {
            refill(picked.get());
            return;
        }
        grid.getChildren().clear();
        inputs.clear();
        if (picked.isEmpty()) {
            title.setText("No part picked");
            about.setText("Click one in the list or in the water. A picked part can be dragged.");
            return;
        }
        Part part = picked.get();
        title.setText(part.id());
        about.setText(
                part.kind().word() + part.inside().map(i -> ", dry inside " + i).orElse(""));
        fields = PartField.of(desk.boat().get().boat(), part, measure);
        int row = 0;
        for (PartField field : fields) {
            add(row++);
        }
        if (!part.isTank() && !part.isAir() && part.weighedMassG().isEmpty()) {
            grid.addRow(row++, new Label("Material"), materials(part));
            GridPane.setColumnSpan(grid.getChildren().get(grid.getChildren().size() - 1), 2);
        }
        if (!part.isHull()) {
            CheckBox mirror = new CheckBox("A twin on the other side");
            mirror.setSelected(part.mirror());
            mirror.setOnAction(e -> desk.replace(
                            (mirror.isSelected() ? "mirror " : "unmirror ") + part.id(),
                            Edits.mirrored(shown.orElseThrow(), mirror.isSelected()))
                    .ifPresent(why -> {
                        mirror.setSelected(part.mirror());
                        complain(why);
                    }));
            grid.add(mirror, 0, row++, 3, 1);
        }
        if (part.kind() == Kind.BALLAST || part.kind() == Kind.FOAM) {
            CheckBox loose = new CheckBox("Not glued in: a plan may move it or take it out");
            loose.setSelected(!part.fixed());
            loose.setOnAction(e -> desk.replace(
                            (loose.isSelected() ? "loosen " : "fix ") + part.id(),
                            Edits.fixed(shown.orElseThrow(), !loose.isSelected()))
                    .ifPresent(why -> {
                        loose.setSelected(!part.fixed());
                        complain(why);
                    }));
            grid.add(loose, 0, row, 3, 1);
        }
    }

    /** Whether the same fields do for both: while a part is nudged, they are filled anew instead of made anew. */
    private boolean isLike(Part part, Part before) {
        return part.id().equals(before.id())
                && part.kind() == before.kind()
                && part.inside().equals(before.inside())
                && part.mirror() == before.mirror()
                && part.fixed() == before.fixed()
                && part.weighedMassG().isPresent() == before.weighedMassG().isPresent()
                && !inputs.isEmpty()
                && PartField.of(desk.boat().get().boat(), part, measure).stream()
                        .map(f -> f.name() + f.unit())
                        .toList()
                        .equals(fields.stream().map(f -> f.name() + f.unit()).toList());
    }

    private void refill(Part part) {
        fields = PartField.of(desk.boat().get().boat(), part, measure);
        for (int i = 0; i < inputs.size(); i++) {
            inputs.get(i).show(fields.get(i).text());
        }
    }

    private void add(int row) {
        PartField field = fields.get(row);
        Label name = new Label(field.name());
        NumberField input = new NumberField(value -> {
            String id = shown.orElseThrow().id();
            String what =
                    field.name().equals("Weighed") ? "weight" : field.name().toLowerCase(Locale.ROOT);
            Optional<String> refused = desk.edit(
                    what.replaceAll(",.*", "") + " of " + id,
                    b -> fields.get(row).change().in(b, value));
            refused.ifPresent(this::complain);
            return refused;
        });
        input.show(field.text());
        input.setId("field-" + field.name().replaceAll("[^A-Za-z].*", "").toLowerCase(Locale.ROOT));
        if (!field.hint().isEmpty()) {
            input.setTooltip(Ui.tip(field.hint()));
        }
        input.setAccessibleText(field.name() + ", " + field.unit());
        name.setLabelFor(input);
        Label unit = new Label(field.unit());
        unit.getStyleClass().add("quiet");
        grid.addRow(row, name, input, unit);
        inputs.add(input);
    }

    private ComboBox<Materials.Material> materials(Part part) {
        ComboBox<Materials.Material> box = new ComboBox<>();
        box.getItems().setAll(Materials.of(part.kind()));
        box.setPromptText("choose a material");
        box.setMaxWidth(Double.MAX_VALUE);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(Materials.Material m) {
                return m == null ? "" : m.name() + ", " + Numbers.plain(m.usualGPerCm3());
            }

            @Override
            public Materials.Material fromString(String text) {
                return null;
            }
        });
        box.setOnAction(e -> {
            if (box.getValue() != null) {
                Part now = shown.orElseThrow();
                desk.replace(
                                "material of " + now.id(),
                                Edits.weighing(
                                        now,
                                        now.weighedMassG(),
                                        Optional.of(box.getValue().usualGPerCm3())))
                        .ifPresent(this::complain);
            }
        });
        return box;
    }
}
