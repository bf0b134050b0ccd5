package trimwright.desktop.panes;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.PaintedLine;
import trimwright.boat.Water;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Edits;
import trimwright.desktop.model.Painting;
import trimwright.desktop.model.Pose;
import trimwright.desktop.model.Trial;
import trimwright.desktop.tank3d.PoolView;
import trimwright.file.LoadedBoat;
import trimwright.report.AttitudeWords;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.Wording;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.FlotationFindings;

/** Afloat: her water, her painted line, what a gram does, what to look at, and every other way she can rest. */
public final class AfloatPane extends VBox {

    private static final double USUAL_TEMPERATURE_C = 20;
    private static final double SEA_G_PER_KG = 35;
    private static final double SAME_RAD = 1e-3;

    private final Desk desk;
    private final PoolView pool;
    private final Label water = Ui.words("", "quiet");
    private final NumberField temperature = new NumberField(v -> typedWater(v, Optional.empty()));
    private final NumberField salinity = new NumberField(v -> typedWater(Optional.empty(), v));
    private final NumberField bow = new NumberField(v -> typedLine(v, true));
    private final NumberField stern = new NumberField(v -> typedLine(v, false));
    private final Label unitBow = new Label();
    private final Label unitStern = new Label();
    private final Label complaint = Ui.words("", "error");
    private final ToggleButton point = new ToggleButton("Click it on the hull");
    private final VBox grams = Ui.column(2);
    private final VBox findings = Ui.column(4);
    private final VBox others = Ui.column(4);
    private final TrialBox trial;
    private Measure measure = Measure.METRIC;

    public AfloatPane(Desk desk, Trial tried, PoolView pool) {
        super(8);
        this.desk = desk;
        this.pool = pool;
        point.setId("paint-point");
        point.setTooltip(Ui.tip("Then click the hull: the nearer end of the painted line goes through that point"));
        point.selectedProperty().addListener((o, was, now) -> pointing(now));
        point.setVisible(pool.isTurnable());
        point.managedProperty().bind(point.visibleProperty());
        trial = new TrialBox(desk, tried);
        bow.setId("paint-bow");
        stern.setId("paint-stern");
        temperature.setId("water-temperature");
        salinity.setId("water-salinity");
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        FlowPane kinds = new FlowPane(6, 6);
        kinds.getChildren()
                .addAll(
                        Ui.button(
                                "Fresh",
                                "Fresh water of this temperature",
                                () -> typedWater(Optional.empty(), Optional.of(0.0))),
                        Ui.button(
                                "Sea",
                                "Sea water of 35 g/kg",
                                () -> typedWater(Optional.empty(), Optional.of(SEA_G_PER_KG))));
        GridPane waterGrid = Ui.fields();
        waterGrid.addRow(0, new Label("Temperature"), temperature, new Label("°C"));
        waterGrid.addRow(1, new Label("Salt"), salinity, new Label("g/kg"));
        GridPane lineGrid = Ui.fields();
        lineGrid.addRow(0, new Label("Height at the bow"), bow, unitBow);
        lineGrid.addRow(1, new Label("Height at the stern"), stern, unitStern);
        getChildren()
                .addAll(
                        Ui.heading("Water"),
                        water,
                        kinds,
                        waterGrid,
                        Ui.heading("Painted line"),
                        lineGrid,
                        point,
                        complaint,
                        trial,
                        Ui.heading("What a gram does"),
                        grams,
                        findings,
                        others);
        desk.boat().addListener((o, was, now) -> show(now));
        desk.flotation().addListener((o, was, now) -> showGrams(now));
        desk.whole().addListener((o, was, now) -> showWhole(now));
    }

    public void setMeasure(Measure other) {
        measure = other;
        trial.setMeasure(other);
        if (desk.boat().get() != null) {
            show(desk.boat().get());
            showGrams(desk.flotation().get());
            showWhole(desk.whole().get());
        }
    }

    private void show(LoadedBoat boat) {
        complaint.setText("");
        Water w = boat.boat().water();
        water.setText(Numbers.fixed(w.densityGPerCm3(), 4) + " g/cm³");
        temperature.show(w.temperatureC().map(Numbers::plain).orElse(""));
        salinity.show(w.salinityGPerKg().map(Numbers::plain).orElse(""));
        Optional<PaintedLine> line = boat.boat().paintedLine();
        bow.show(line.map(l -> measure.lengthField(l.foremostMm().getZ())).orElse(""));
        stern.show(line.map(l -> measure.lengthField(l.aftmostMm().getZ())).orElse(""));
        unitBow.setText(measure.lengthUnit());
        unitStern.setText(measure.lengthUnit());
    }

    private Optional<String> typedWater(Optional<Double> degrees, Optional<Double> salt) {
        Water w = desk.boat().get().boat().water();
        double t = degrees.or(w::temperatureC).orElse(USUAL_TEMPERATURE_C);
        double s = salt.or(w::salinityGPerKg).orElse(0.0);
        return told(desk.edit("water", b -> Edits.water(b, t, s)));
    }

    private Optional<String> typedLine(Optional<Double> height, boolean atBow) {
        if (height.isEmpty()) {
            return told(Optional.of("The painted line needs a height."));
        }
        return painted(Painting.with(desk.boat().get().boat(), atBow, measure.typedMm(height.get())));
    }

    private Optional<String> painted(List<Vector3D> points) {
        return told(desk.edit("painted line", b -> Edits.paintedLine(b, points)));
    }

    private void pointing(boolean on) {
        pool.onPointed(
                on ? Optional.of(p -> painted(Painting.through(desk.boat().get().boat(), p))) : Optional.empty());
    }

    /** Called when another job is turned to. */
    public void left() {
        point.setSelected(false);
    }

    private Optional<String> told(Optional<String> refused) {
        complaint.setText(refused.map(why -> "▲ " + why).orElse(""));
        return refused;
    }

    private void showGrams(Flotation now) {
        grams.getChildren().clear();
        if (now == null || now.settled().isEmpty()) {
            return;
        }
        double moment = 10;
        double deeperMm = measure == Measure.METRIC ? 1 : measure.typedMm(0.05);
        grams.getChildren()
                .addAll(
                        Ui.words(measure.mass(now.gramsPerMmImmersion() * deeperMm) + " puts her "
                                + measure.lengthField(deeperMm) + " " + measure.lengthUnit() + " deeper"),
                        Ui.words(measure.mass(moment) + " moved " + measure.length(now.gmmPerDegreeList() / moment)
                                + " across lists her 1°"),
                        Ui.words(measure.mass(moment) + " moved " + measure.length(now.gmmPerDegreeTrim() / moment)
                                + " along trims her 1°"));
    }

    private void showWhole(Flotation whole) {
        findings.getChildren().clear();
        others.getChildren().clear();
        if (whole == null) {
            others.getChildren().add(Ui.words("Looking for other ways she can rest …", "quiet"));
            return;
        }
        var found = FlotationFindings.of(whole);
        if (!found.isEmpty()) {
            findings.getChildren().add(Ui.heading("What to look at"));
            found.forEach(f -> findings.getChildren().add(Ui.warning(Wording.sentence(f, measure))));
        }
        others.getChildren().add(Ui.heading("Ways she can rest"));
        for (Equilibrium e : whole.attitudes()) {
            boolean own = whole.settled()
                    .map(s -> Vector3D.angle(s.plane().up(), e.plane().up()) < SAME_RAD)
                    .orElse(false);
            String words = AttitudeWords.of(e.plane().up());
            Button show = Ui.button(own ? "as she lies: " + words : words, "Show her so", () -> lookAt(whole, e, own));
            show.setMinWidth(0);
            show.setMaxWidth(Double.MAX_VALUE);
            show.setWrapText(true);
            others.getChildren().add(show);
        }
    }

    private void lookAt(Flotation whole, Equilibrium e, boolean own) {
        Flotation there =
                new Flotation(whole.condition(), Optional.of(e), List.of(), Optional.empty(), whole.submerged());
        desk.lookAt(
                own
                        ? null
                        : Pose.of(there, "At rest " + AttitudeWords.of(e.plane().up())));
    }
}
