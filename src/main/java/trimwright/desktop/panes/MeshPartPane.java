package trimwright.desktop.panes;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.desktop.model.FreshPart;
import trimwright.desktop.model.MeshPart;
import trimwright.desktop.tank3d.PoolView;
import trimwright.mesh.Bounds;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshImport.Axis;
import trimwright.report.Measure;
import trimwright.report.Numbers;

/** From a mesh to a part of the boat at hand: what it is, its size and axes; seen in green in the boat until it is added. */
public final class MeshPartPane extends VBox {

    private final PoolView pool;
    private final Boat boat;
    private final Vector3D middleMm;
    private final Measure measure;
    private final Label size = Ui.words("", "strong");
    private final Label placeWords = Ui.words("", "quiet");
    private final Label complaint = Ui.words("", "error");
    private final ComboBox<Kind> kind = Ui.choices(MeshPart.KINDS, FreshPart::name);
    private final ComboBox<LengthUnit> unit = Ui.choices(List.of(LengthUnit.values()), LengthUnit::symbol);
    private final ComboBox<Axis> forward = Ui.choices(List.of(Axis.values()), Axis::symbol);
    private final ComboBox<Axis> up = Ui.choices(List.of(Axis.values()), Axis::symbol);
    private final NumberField scale = new NumberField(this::scale);
    private MeshPart part;
    private boolean showing;

    /**
     * Shows a part with the guesses made for it.
     *
     * @param middleMm where in the boat it begins, unless it was drawn in its place
     * @param add takes the part when all is said, and who is told what is wrong with it
     */
    public MeshPartPane(
            MeshPart guessed,
            Boat boat,
            Vector3D middleMm,
            Measure measure,
            PoolView pool,
            BiConsumer<MeshPart, Consumer<String>> add,
            Runnable giveUp) {
        super(8);
        this.pool = pool;
        this.boat = boat;
        this.middleMm = middleMm;
        this.measure = measure;
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        kind.setId("mesh-kind");
        complaint.setId("mesh-complaint");
        var done = Ui.button(
                "Add the part",
                "One undo takes it out again",
                () -> add.accept(part, why -> complaint.setText("▲ " + why)));
        done.setId("mesh-add");
        done.getStyleClass().add("main-button");
        GridPane grid = Ui.fields();
        row(grid, 0, "It is", kind);
        row(grid, 1, "The file is in", unit);
        row(grid, 2, "times", scale);
        row(grid, 3, "The bow is at the file's", forward);
        row(grid, 4, "Up is the file's", up);
        getChildren()
                .addAll(
                        Ui.heading("New part from " + guessed.file().getFileName()),
                        grid,
                        size,
                        placeWords,
                        Ui.words("Weight, material and place can be typed once it is added.", "quiet"),
                        complaint,
                        new FlowPane(6, 6, done, Ui.button("Give up", "Nothing is added", giveUp)));
        listen(kind, v -> part.as(v));
        listen(unit, v -> part.imported(v, part.scale(), part.forward(), part.up()));
        listen(forward, v -> part.imported(part.unit(), part.scale(), v, part.up()));
        listen(up, v -> part.imported(part.unit(), part.scale(), part.forward(), v));
        set(guessed);
    }

    private static void row(GridPane grid, int row, String words, javafx.scene.control.Control input) {
        Label label = new Label(words);
        label.setLabelFor(input);
        input.setAccessibleText(words);
        grid.addRow(row, label, input);
    }

    private <T> void listen(ComboBox<T> box, Function<T, MeshPart> change) {
        box.setOnAction(e -> {
            if (!showing && box.getValue() != null) {
                try {
                    set(change.apply(box.getValue()));
                } catch (IllegalArgumentException axes) {
                    complaint.setText("▲ Bow and up must be square to each other.");
                }
            }
        });
    }

    private Optional<String> scale(Optional<Double> typed) {
        if (typed.isEmpty() || !(typed.get() > 0)) {
            complaint.setText("▲ The scale must be above 0.");
            return Optional.of("scale");
        }
        set(part.imported(part.unit(), typed.get(), part.forward(), part.up()));
        return Optional.empty();
    }

    private void set(MeshPart next) {
        part = next;
        complaint.setText("");
        showing = true;
        kind.setValue(part.kind());
        unit.setValue(part.unit());
        forward.setValue(part.forward());
        up.setValue(part.up());
        showing = false;
        scale.show(Numbers.plain(part.scale()));
        Part shown = part.part(boat, "", middleMm);
        MeshShape shape = (MeshShape) shown.shape().orElseThrow();
        Bounds b = shape.bounds();
        size.setText(measure.length(b.sizeX()) + " long, " + measure.length(b.sizeY()) + " wide, "
                + measure.length(b.sizeZ()) + " high");
        placeWords.setText(
                part.isInPlace()
                        ? "It lies where it was drawn, as the hull does."
                        : "It begins in the middle of what floats; drag it to its place.");
        pool.extra(List.of(shape.mesh()), true);
    }
}
