package trimwright.desktop.panes;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.PlanDesk;
import trimwright.plan.Wanted;
import trimwright.report.Measure;
import trimwright.report.Numbers;

/** What is wanted of the finished boat. An empty field leaves it to the plan, and shows in grey what that takes. */
final class WantedForm extends VBox {

    private final Desk desk;
    private final PlanDesk plans;
    private final GridPane grid = Ui.fields();
    private final Label complaint = Ui.words("", "error");
    private Measure measure = Measure.METRIC;
    private int row;

    WantedForm(Desk desk, PlanDesk plans) {
        super(6);
        this.desk = desk;
        this.plans = plans;
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        getChildren().addAll(grid, complaint);
        desk.flotation().addListener((o, was, now) -> {
            if (was == null
                    || now == null
                    || was.condition().boat().targets()
                            != now.condition().boat().targets()) {
                show();
            }
        });
    }

    void setMeasure(Measure other) {
        measure = other;
        show();
    }

    private void show() {
        Optional<Wanted> all = plans.wanted();
        if (all.isEmpty()) {
            return;
        }
        Wanted w = all.get();
        grid.getChildren().clear();
        row = 0;
        boolean dives = desk.boat().get().boat().parts().stream().anyMatch(Part::isTank);
        if (dives) {
            length("BG dived, at least", w.bgMm(), Targets::bgMm, WantedForm::bg);
        }
        length("GM afloat, at least", w.gmMm(), Targets::gmMm, WantedForm::gm);
        length("Off the paint, at most", w.offLineMm(), Targets::offLineMm, WantedForm::offLine);
        field(
                "List, at most",
                "°",
                Numbers.plain(w.listDeg()),
                t().listDeg().map(Numbers::plain),
                v -> with(t -> list(t, v)));
        if (dives) {
            dived(w);
        }
    }

    private void dived(Wanted w) {
        field(
                "Trim dived, at most",
                "°",
                Numbers.plain(w.divedTrimDeg()),
                t().divedTrimDeg().map(Numbers::plain),
                v -> with(t -> divedTrim(t, v)));
        Optional<Targets.Band> band = t().residualG();
        field(
                "Buoyancy left, least",
                measure.massUnit(),
                Numbers.brief(measure.inMassUnit(w.residualG().least())),
                band.map(b -> measure.massField(b.least())),
                v -> with(t -> residual(t, v.map(measure::typedG), band.map(Targets.Band::greatest), w)));
        field(
                "Buoyancy left, most",
                measure.massUnit(),
                Numbers.brief(measure.inMassUnit(w.residualG().greatest())),
                band.map(b -> measure.massField(b.greatest())),
                v -> with(t -> residual(t, band.map(Targets.Band::least), v.map(measure::typedG), w)));
    }

    private Targets t() {
        return desk.boat().get().boat().targets();
    }

    private Optional<String> with(Function<Targets, Targets> change) {
        Optional<String> refused = plans.want(change.apply(t()));
        complaint.setText(refused.map(why -> "▲ " + why).orElse(""));
        return refused;
    }

    private void length(
            String name,
            double taken,
            Function<Targets, Optional<Double>> now,
            BiFunction<Targets, Optional<Double>, Targets> change) {
        field(
                name,
                measure.lengthUnit(),
                measure.lengthField(taken),
                now.apply(t()).map(measure::lengthField),
                v -> with(t -> change.apply(t, v.map(measure::typedMm))));
    }

    private void field(
            String name,
            String unit,
            String taken,
            Optional<String> now,
            Function<Optional<Double>, Optional<String>> put) {
        NumberField input = new NumberField(put);
        input.show(now.orElse(""));
        input.setPromptText(taken);
        input.setAccessibleText(name + ", " + unit);
        input.setId("wanted-" + row);
        Label unitLabel = new Label(unit);
        unitLabel.getStyleClass().add("quiet");
        Label label = new Label(name);
        label.setLabelFor(input);
        grid.addRow(row++, label, input, unitLabel);
    }

    private static Targets bg(Targets t, Optional<Double> v) {
        return new Targets(v, t.gmMm(), t.residualG(), t.offLineMm(), t.listDeg(), t.divedTrimDeg());
    }

    private static Targets gm(Targets t, Optional<Double> v) {
        return new Targets(t.bgMm(), v, t.residualG(), t.offLineMm(), t.listDeg(), t.divedTrimDeg());
    }

    private static Targets offLine(Targets t, Optional<Double> v) {
        return new Targets(t.bgMm(), t.gmMm(), t.residualG(), v, t.listDeg(), t.divedTrimDeg());
    }

    private static Targets list(Targets t, Optional<Double> v) {
        return new Targets(t.bgMm(), t.gmMm(), t.residualG(), t.offLineMm(), v, t.divedTrimDeg());
    }

    private static Targets divedTrim(Targets t, Optional<Double> v) {
        return new Targets(t.bgMm(), t.gmMm(), t.residualG(), t.offLineMm(), t.listDeg(), v);
    }

    /** A band with one end given takes the other from the plan; with neither it is left to the plan altogether. */
    private static Targets residual(Targets t, Optional<Double> least, Optional<Double> most, Wanted w) {
        Optional<Targets.Band> band = least.isEmpty() && most.isEmpty()
                ? Optional.empty()
                : Optional.of(new Targets.Band(
                        least.orElse(w.residualG().least()),
                        most.orElse(w.residualG().greatest())));
        return new Targets(t.bgMm(), t.gmMm(), band, t.offLineMm(), t.listDeg(), t.divedTrimDeg());
    }
}
