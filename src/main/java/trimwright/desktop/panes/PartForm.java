package trimwright.desktop.panes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
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

    private static final String IN_THE_WATER = "the water";

    private final Desk desk;
    private final Label title = Ui.heading("");
    private final TextField name = new TextField();
    private final Label about = Ui.words("", "quiet");
    private final GridPane grid = Ui.fields();
    private final Label complaint = Ui.words("", "error");
    private final List<NumberField> inputs = new ArrayList<>();
    private List<PartField> fields = List.of();
    private Optional<Part> shown = Optional.empty();
    private Measure measure = Measure.METRIC;

    PartForm(Desk desk) {
        super(6);
        this.desk = desk;
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        complaint.setId("part-complaint");
        name.setId("part-name");
        name.setAccessibleText("Name of the part");
        name.setOnAction(e -> rename());
        name.focusedProperty().addListener((o, was, now) -> {
            if (!now) {
                rename();
            }
        });
        name.managedProperty().bind(name.visibleProperty());
        title.managedProperty().bind(title.visibleProperty());
        getChildren().addAll(title, name, about, grid, complaint);
    }

    void setMeasure(Measure other) {
        measure = other;
        show(desk.selectedPart());
    }

    /** A refusal that came later: the fields show again what is. */
    private void takeBack(String why) {
        shown.ifPresent(this::refill);
        complain(why);
    }

    void complain(String why) {
        complaint.setText("▲ " + why);
    }

    private void rename() {
        String typed = name.getText().strip();
        String id = shown.map(Part::id).orElse(typed);
        if (typed.equals(id)) {
            return;
        }
        Optional<String> refused = desk.edit("rename " + id, b -> Edits.renamed(b, id, typed));
        refused.ifPresentOrElse(
                why -> {
                    name.setText(id);
                    complain(why);
                },
                () -> {
                    desk.locks().renamed(id, typed);
                    desk.selected().set(typed);
                });
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
        title.setVisible(picked.isEmpty());
        name.setVisible(picked.isPresent());
        if (picked.isEmpty()) {
            title.setText("No part picked");
            about.setText("Click one in the list or in the water. A picked part can be dragged.");
            return;
        }
        Part part = picked.get();
        name.setText(part.id());
        about.setText(
                part.kind().word() + part.inside().map(i -> ", dry inside " + i).orElse(""));
        fields = PartField.of(desk.boat().get().boat(), part, measure);
        int row = 0;
        while (row < fields.size()) {
            add(row++);
        }
        if (!part.isTank() && !part.isAir() && part.weighedMassG().isEmpty()) {
            row = choice(row, "Material", materials(part));
        }
        List<String> containers = Edits.containers(desk.boat().get().boat(), part).stream()
                .map(Part::id)
                .toList();
        if (!part.isHull() && !part.isAir() && !containers.isEmpty()) {
            row = choice(row, "Stands in", containers(part, containers));
        }
        if (!part.isHull()) {
            row = tick(
                    row,
                    "A twin on the other side",
                    part.mirror(),
                    on -> edited(on ? "mirror " : "unmirror ", p -> Edits.mirrored(p, on)));
        }
        if (part.kind() == Kind.BALLAST || part.kind() == Kind.FOAM) {
            row = tick(
                    row,
                    "Not glued in: a plan may move it or take it out",
                    !part.fixed(),
                    on -> edited(on ? "loosen " : "fix ", p -> Edits.fixed(p, !on)));
        }
        if (!part.isHull()) {
            tick(row, "Locked: no slip of the hand moves it", desk.locked().contains(part.id()), on -> {
                lock(part.id(), on);
                return Optional.empty();
            });
        }
    }

    private void lock(String id, boolean on) {
        if (on) {
            desk.locked().add(id);
        } else {
            desk.locked().remove(id);
        }
    }

    private Optional<String> edited(String what, UnaryOperator<Part> change) {
        Part now = shown.orElseThrow();
        return desk.replace(what + now.id(), change.apply(now));
    }

    private int choice(int row, String name, ComboBox<?> box) {
        Label label = new Label(name);
        label.setLabelFor(box);
        box.setAccessibleText(name);
        box.setMaxWidth(Double.MAX_VALUE);
        grid.add(label, 0, row);
        grid.add(box, 1, row, 2, 1);
        return row + 1;
    }

    /** A box to tick; one that is refused goes back. */
    private int tick(int row, String text, boolean now, Function<Boolean, Optional<String>> put) {
        CheckBox box = new CheckBox(text);
        box.setWrapText(true);
        box.setSelected(now);
        box.setOnAction(e -> put.apply(box.isSelected()).ifPresent(why -> {
            box.setSelected(now);
            complain(why);
        }));
        grid.add(box, 0, row, 3, 1);
        return row + 1;
    }

    private ComboBox<String> containers(Part part, List<String> ids) {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().add(IN_THE_WATER);
        box.getItems().addAll(ids);
        box.setValue(part.inside().orElse(IN_THE_WATER));
        box.setOnAction(e -> {
            Optional<String> container = Optional.of(box.getValue()).filter(ids::contains);
            if (!container.equals(shown.flatMap(Part::inside))) {
                edited("where it stands: ", p -> Edits.inside(p, container)).ifPresent(this::complain);
            }
        });
        return box;
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
            String step = what.replaceAll(",.*", "") + " of " + id;
            PartField now = fields.get(row);
            if (now.slow()) {
                desk.editAside(step, b -> now.change().in(b, value), refused -> refused.ifPresent(this::takeBack));
                return Optional.empty();
            }
            Optional<String> refused = desk.edit(step, b -> now.change().in(b, value));
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
        box.setPromptText("choose one");
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
