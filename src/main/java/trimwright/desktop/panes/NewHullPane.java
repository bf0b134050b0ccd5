package trimwright.desktop.panes;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import trimwright.boat.Boat;
import trimwright.desktop.model.NewHull;
import trimwright.desktop.model.Pose;
import trimwright.desktop.tank3d.PoolView;
import trimwright.mesh.Bounds;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshImport.Axis;
import trimwright.report.Measure;
import trimwright.report.Numbers;

/** From the mesh of a hull to a boat: size, bow and up, how she is built, her painted line; with the hull in view all the while. */
public final class NewHullPane extends VBox {

    private final PoolView pool;
    private final Label size = Ui.words("", "strong");
    private final Label complaint = Ui.words("", "error");
    private final ComboBox<LengthUnit> unit = Ui.choices(List.of(LengthUnit.values()), LengthUnit::symbol);
    private final ComboBox<Axis> forward = Ui.choices(List.of(Axis.values()), Axis::symbol);
    private final ComboBox<Axis> up = Ui.choices(List.of(Axis.values()), Axis::symbol);
    private final ComboBox<NewHull.Build> build =
            Ui.choices(Arrays.asList(NewHull.Build.values()), NewHull.Build::title);
    private final Label buildWords = Ui.words("", "quiet");
    private final NumberField scale = new NumberField(v -> put("scale", v, this::scaled));
    private final NumberField thickness = new NumberField(v -> put("thickness", v, this::thick));
    private final NumberField density = new NumberField(v -> put("density", v, this::dense));
    private final NumberField weighed = new NumberField(this::weigh);
    private final NumberField paint = new NumberField(v -> put("height", v, this::painted));
    private final Measure measure;
    private NewHull hull;
    private boolean showing;

    /**
     * Shows a hull with the guesses made for it.
     *
     * @param make takes the hull when all is said, and says what is wrong with it, or nothing
     */
    public NewHullPane(
            NewHull guessed,
            Measure measure,
            PoolView pool,
            Function<NewHull, Optional<String>> make,
            Runnable giveUp) {
        super(8);
        this.pool = pool;
        this.measure = measure;
        hull = guessed;
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        paint.setId("new-paint");
        build.setMaxWidth(Double.MAX_VALUE);
        var done = Ui.button(
                "Make the boat",
                "Saves her boat file beside the mesh",
                () -> make.apply(hull).ifPresent(why -> complaint.setText("▲ " + why)));
        done.setId("new-make");
        done.getStyleClass().add("main-button");
        GridPane sizes = Ui.fields();
        sizes.addRow(0, new Label("The file is in"), unit);
        sizes.addRow(1, new Label("times"), scale);
        GridPane axes = Ui.fields();
        axes.addRow(0, new Label("The bow is at the file's"), forward);
        axes.addRow(1, new Label("Up is the file's"), up);
        GridPane shell = Ui.fields();
        shell.addRow(0, new Label("Shell thickness"), thickness, new Label(measure.lengthUnit()));
        shell.addRow(1, new Label("Its density"), density, new Label("g/cm³"));
        shell.addRow(2, new Label("Weighed, if you did"), weighed, new Label(measure.massUnit()));
        GridPane line = Ui.fields();
        line.addRow(0, new Label("Height above the keel"), paint, new Label(measure.lengthUnit()));
        getChildren()
                .addAll(
                        Ui.heading("New boat from " + guessed.file().getFileName()),
                        Ui.heading("1  Her size"),
                        sizes,
                        size,
                        Ui.heading("2  Bow and up"),
                        axes,
                        Ui.words("The bow must point to the right in the side view, the deck up.", "quiet"),
                        Ui.heading("3  How she is built"),
                        build,
                        buildWords,
                        shell,
                        Ui.heading("4  Her painted line"),
                        line,
                        Ui.words(
                                pool.isTurnable()
                                        ? "The orange dashes, where the water is to stand. Click the hull to put them there."
                                        : "The orange dashes, where the water is to stand.",
                                "quiet"),
                        complaint,
                        new FlowPane(6, 6, done, Ui.button("Give up", "Nothing is saved", giveUp)));
        listen(unit, v -> hull.imported(v, hull.scale(), hull.forward(), hull.up()));
        listen(forward, v -> hull.imported(hull.unit(), hull.scale(), v, hull.up()));
        listen(up, v -> hull.imported(hull.unit(), hull.scale(), hull.forward(), v));
        listen(build, v -> hull.built(v, hull.thicknessMm(), hull.densityGPerCm3(), hull.weighedG()));
        set(guessed);
        pool.onPointed(Optional.of(p -> set(hull.paintedThrough(p))));
    }

    private <T> void listen(ComboBox<T> box, Function<T, NewHull> change) {
        Consumer<T> taken = value -> {
            try {
                set(change.apply(value));
            } catch (IllegalArgumentException e) {
                complaint.setText("▲ Bow and up must be square to each other.");
            }
        };
        box.setOnAction(e -> {
            if (!showing && box.getValue() != null) {
                taken.accept(box.getValue());
            }
        });
    }

    private NewHull scaled(double factor) {
        return hull.imported(hull.unit(), factor, hull.forward(), hull.up());
    }

    private NewHull thick(double typed) {
        return hull.built(hull.build(), measure.typedMm(typed), hull.densityGPerCm3(), hull.weighedG());
    }

    private NewHull dense(double gPerCm3) {
        return hull.built(hull.build(), hull.thicknessMm(), gPerCm3, hull.weighedG());
    }

    private NewHull painted(double typed) {
        return hull.painted(measure.typedMm(typed));
    }

    private Optional<String> weigh(Optional<Double> typed) {
        set(hull.built(hull.build(), hull.thicknessMm(), hull.densityGPerCm3(), typed.map(measure::typedG)));
        return Optional.empty();
    }

    private Optional<String> put(String what, Optional<Double> value, Function<Double, NewHull> change) {
        if (value.isEmpty() || !(value.get() > 0)) {
            complaint.setText("▲ The " + what + " must be above 0.");
            return Optional.of(what);
        }
        set(change.apply(value.get()));
        return Optional.empty();
    }

    private void set(NewHull next) {
        hull = next;
        complaint.setText("");
        showing = true;
        unit.setValue(hull.unit());
        forward.setValue(hull.forward());
        up.setValue(hull.up());
        build.setValue(hull.build());
        buildWords.setText(hull.build().words());
        showing = false;
        scale.show(Numbers.plain(hull.scale()));
        thickness.show(measure.lengthField(hull.thicknessMm()));
        density.show(Numbers.plain(hull.densityGPerCm3()));
        weighed.show(hull.weighedG().map(measure::massField).orElse(""));
        paint.show(measure.lengthField(hull.paintMm()));
        Boat boat = hull.boat();
        Bounds b = boat.parts().get(0).shape().orElseThrow().bounds();
        size.setText(measure.length(b.sizeX()) + " long, " + measure.length(b.sizeY()) + " wide, "
                + measure.length(b.sizeZ()) + " high");
        pool.showBoat(boat);
        pool.show(Pose.unweighed(boat, hull.paintMm()));
    }
}
