package trimwright.desktop.panes;

import java.math.BigDecimal;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import trimwright.boat.Targets;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.PlanDesk;
import trimwright.desktop.model.ToleranceDesk;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.Tolerance;
import trimwright.plan.pool.Tolerance.Spread;
import trimwright.report.EstimateWords;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.PoolWords;

/** How far she may be off before she gets wet: the run, the chance, the spread, what matters most, and what to keep in hand. */
final class ToleranceBox extends VBox {

    private static final int PARTS_TOLD = 5;
    private static final double MOST_SEED = 1e9;

    private final ToleranceDesk tolerances;
    private final TextField draws = new TextField(String.valueOf(Tolerance.USUAL_DRAWS));
    private final TextField seed = new TextField("1");
    private final Label complaint = Ui.words("", "error");
    private final VBox outcome = Ui.column(6);
    private final NumberField offLine;
    private final NumberField list;
    private final Label offLineUnit = new Label();
    private final Desk desk;
    private Measure measure = Measure.METRIC;

    ToleranceBox(Desk desk, ToleranceDesk tolerances, PlanDesk plans) {
        super(8);
        this.desk = desk;
        this.tolerances = tolerances;
        offLine = new NumberField(v -> told(plans.want(offLine(targets(), v.map(measure::typedMm)))));
        list = new NumberField(v -> told(plans.want(list(targets(), v))));
        offLine.setId("tolerance-line");
        list.setId("tolerance-list");
        draws.setId("tolerance-draws");
        seed.setId("tolerance-seed");
        for (TextField field : new TextField[] {draws, seed}) {
            field.getStyleClass().add("number");
        }
        Button run = Ui.button("Draw boats", "", this::run);
        run.setId("tolerance-run");
        run.getStyleClass().add("main-button");
        run.disableProperty().bind(tolerances.running());
        Button stop = Ui.button("Stop", "Give up; nothing changes", tolerances::stop);
        stop.setId("tolerance-stop");
        stop.visibleProperty().bind(tolerances.running());
        ProgressBar progress = new ProgressBar();
        progress.visibleProperty().bind(tolerances.running());
        progress.setPrefWidth(110);
        HBox runs = new HBox(8, run, stop, progress);
        runs.setAlignment(Pos.CENTER_LEFT);
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        complaint.setId("tolerance-complaint");
        outcome.setId("tolerance-outcome");
        GridPane grid = Ui.fields();
        row(grid, "Off the paint, at most", offLine, offLineUnit);
        row(grid, "List, at most", list, new Label("°"));
        row(grid, "Boats to draw", draws, new Label());
        row(grid, "Seed of the draws", seed, new Label());
        seed.setTooltip(Ui.tip("A whole number. The same one draws the same boats again."));
        getChildren()
                .addAll(
                        Ui.words(
                                "No part weighs exactly what its scale says, or lies exactly where it should. Many boats are drawn from how far each"
                                        + " part may be off (plusMinus in her file), and each is floated and dived.",
                                "quiet"),
                        grid,
                        runs,
                        complaint,
                        outcome);
        tolerances.tolerance().addListener((o, was, now) -> show(now));
        tolerances
                .problem()
                .addListener((o, was, now) -> complaint.setText(
                        now == null ? "" : "▲ " + now.title() + ". " + String.join(" ", now.lines())));
        desk.boat().addListener((o, was, now) -> refill());
    }

    private static void row(GridPane grid, String name, TextField field, Label unit) {
        Label label = Ui.words(name);
        label.setLabelFor(field);
        field.setAccessibleText(name + (unit.getText().isEmpty() ? "" : ", " + unit.getText()));
        unit.getStyleClass().add("quiet");
        grid.addRow(grid.getRowCount(), label, field, unit);
    }

    void setMeasure(Measure other) {
        measure = other;
        offLineUnit.setText(other.lengthUnit());
        refill();
        show(tolerances.tolerance().get());
    }

    private Targets targets() {
        return desk.boat().get().boat().targets();
    }

    private void refill() {
        if (desk.boat().get() != null) {
            offLine.show(targets().offLineMm().map(measure::lengthField).orElse(""));
            list.show(targets().listDeg().map(Numbers::plain).orElse(""));
        }
    }

    private Optional<String> told(Optional<String> refused) {
        complaint.setText(refused.map(why -> "▲ " + why).orElse(""));
        return refused;
    }

    private static Targets offLine(Targets t, Optional<Double> mm) {
        return new Targets(t.bgMm(), t.gmMm(), t.residualG(), mm, t.listDeg(), t.divedTrimDeg());
    }

    private static Targets list(Targets t, Optional<Double> deg) {
        return new Targets(t.bgMm(), t.gmMm(), t.residualG(), t.offLineMm(), deg, t.divedTrimDeg());
    }

    private void run() {
        complaint.setText("");
        Optional<Long> many = whole(draws, Tolerance.FEWEST_DRAWS, Tolerance.MOST_DRAWS);
        Optional<Long> from = whole(seed, -MOST_SEED, MOST_SEED);
        if (many.isPresent() && from.isPresent()) {
            tolerances.run(many.get().intValue(), from.get());
        } else {
            complaint.setText("▲ How many boats is a whole number from " + Tolerance.FEWEST_DRAWS + " to "
                    + Tolerance.MOST_DRAWS + ", and the seed a whole number; found \"" + draws.getText()
                    + "\" and \"" + seed.getText() + "\".");
        }
    }

    private static Optional<Long> whole(TextField field, double least, double most) {
        try {
            long value = new BigDecimal(field.getText().strip()).longValueExact();
            return value >= least && value <= most ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException | ArithmeticException e) {
            return Optional.empty();
        }
    }

    private void show(Tolerance t) {
        outcome.getChildren().clear();
        if (t == null) {
            return;
        }
        Label chance = Ui.words(PoolWords.chance(t), "strong");
        chance.setId("tolerance-chance");
        outcome.getChildren().addAll(Ui.heading("Of " + t.draws() + " such boats"), chance);
        if (t.sinks() > 0) {
            outcome.getChildren().add(Ui.warning(PoolWords.percent(t.sinks()) + " of them sink surfaced."));
        }
        t.inHand().ifPresent(i -> {
            Label inHand = Ui.words(PoolWords.of(i, measure));
            inHand.setId("tolerance-in-hand");
            outcome.getChildren().addAll(Ui.heading("What to keep in hand"), inHand);
        });
        outcome.getChildren().add(Ui.heading("What matters most"));
        t.causes().stream()
                .limit(PARTS_TOLD)
                .forEach(c -> outcome.getChildren()
                        .add(Ui.words("• " + c.part() + ": " + PoolWords.percent(c.share()) + " of all scatter")));
        outcome.getChildren()
                .addAll(
                        Ui.heading("How they scatter"),
                        Ui.words("± is a standard deviation; 90 of 100 boats lie between.", "quiet"),
                        table(t));
    }

    private GridPane table(Tolerance t) {
        GridPane grid = EstimateBox.halves("as in the file", "between");
        for (Figure figure : Figure.values()) {
            Spread s = t.spreads().get(figure);
            if (s != null) {
                Label given = Ui.words(EstimateWords.plusMinus(figure, s.asGiven(), s.error(), measure));
                given.setId("spread-" + figure.key());
                EstimateBox.addHalves(
                        grid,
                        PoolWords.of(figure) + wanted(t, figure),
                        given,
                        Ui.words(EstimateWords.number(figure, s.low(), measure) + " … "
                                + EstimateWords.number(figure, s.high(), measure)));
            }
        }
        return grid;
    }

    private static String wanted(Tolerance t, Figure figure) {
        return Optional.ofNullable(t.withinByFigure().get(figure))
                .map(share -> ": " + PoolWords.percent(share) + " as wanted")
                .orElse("");
    }
}
