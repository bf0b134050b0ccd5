package trimwright.desktop.panes;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import trimwright.boat.Part;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Figures;
import trimwright.desktop.model.PlanDesk;
import trimwright.desktop.model.Pose;
import trimwright.desktop.tank3d.PoolView;
import trimwright.mesh.TriangleMesh;
import trimwright.plan.BallastPlan;
import trimwright.plan.Goal;
import trimwright.plan.Room;
import trimwright.report.Measure;
import trimwright.report.PlanWords;
import trimwright.report.raster.Bodies;
import trimwright.statics.Flotation;

/** The ballast plan: what is wanted, the run, the pieces in the pool before they are taken, the cut list; or what stands in the way. */
public final class BallastPane extends VBox {

    private static final String CAUTION =
            "A computed plan: fit it in steps and prove it in shallow water, with a line on the boat."
                    + " Lead is poisonous, above all molten or as dust; wash your hands, and leave casting to those who know how. Not for craft"
                    + " that carry people.";
    private static final double MOST_G = 1e6;

    private final Desk desk;
    private final PlanDesk plans;
    private final PoolView pool;
    private final WantedForm wanted;
    private final SeatBox seat;
    private final RadioButton least = new RadioButton("add as little as meets this");
    private final RadioButton firmest = new RadioButton("stand as firm as this much more allows:");
    private final TextField budget = new TextField("500");
    private final Label budgetUnit = new Label("g");
    private final Button run = Ui.button("Work out a plan", "", this::run);
    private final Button stop = Ui.button("Stop", "Give up; nothing changes", () -> {});
    private final ProgressBar progress = new ProgressBar();
    private final Label complaint = Ui.words("", "error");
    private final VBox outcome = Ui.column(6);
    private Measure measure = Measure.METRIC;

    public BallastPane(Desk desk, PlanDesk plans, PoolView pool) {
        super(8);
        this.desk = desk;
        this.plans = plans;
        this.pool = pool;
        wanted = new WantedForm(desk, plans);
        seat = new SeatBox(desk, plans);
        ToggleGroup goals = new ToggleGroup();
        least.setToggleGroup(goals);
        firmest.setToggleGroup(goals);
        least.setSelected(true);
        least.setWrapText(true);
        firmest.setWrapText(true);
        budget.setPrefColumnCount(6);
        budget.disableProperty().bind(firmest.selectedProperty().not());
        budget.setAccessibleText("How much may be added");
        run.setId("plan-run");
        run.getStyleClass().add("main-button");
        run.disableProperty().bind(plans.running());
        stop.setOnAction(e -> plans.stop());
        stop.setId("plan-stop");
        stop.visibleProperty().bind(plans.running());
        progress.visibleProperty().bind(plans.running());
        progress.setPrefWidth(110);
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        complaint.setId("plan-complaint");
        outcome.setId("plan-outcome");
        HBox runs = new HBox(8, run, stop, progress);
        runs.setAlignment(Pos.CENTER_LEFT);
        HBox amount = new HBox(6, budget, budgetUnit);
        amount.setAlignment(Pos.CENTER_LEFT);
        amount.setStyle("-fx-padding: 0 0 0 24;");
        getChildren()
                .addAll(
                        Ui.heading("What is wanted"),
                        wanted,
                        Ui.heading("And then"),
                        least,
                        firmest,
                        amount,
                        runs,
                        complaint,
                        outcome,
                        seat,
                        Ui.words(CAUTION, "quiet"));
        plans.planned().addListener((o, was, now) -> show(now));
        plans.problem()
                .addListener((o, was, now) -> complaint.setText(
                        now == null ? "" : "▲ " + now.title() + ". " + String.join(" ", now.lines())));
    }

    public void setMeasure(Measure other) {
        if (measure != other) {
            budget.setText(other == Measure.METRIC ? "500" : "16");
        }
        measure = other;
        budgetUnit.setText(other.massUnit());
        wanted.setMeasure(other);
        seat.setMeasure(other);
        show(plans.planned().get());
    }

    private void run() {
        complaint.setText("");
        if (least.isSelected()) {
            plans.run(Goal.LEAST_MASS);
            return;
        }
        try {
            double grams =
                    measure.typedG(new BigDecimal(budget.getText().strip().replace(',', '.')).doubleValue());
            if (grams > 0 && grams <= MOST_G) {
                plans.run(Goal.firmestFor(grams));
                return;
            }
        } catch (NumberFormatException e) {
            // Told below, as numbers out of range are.
        }
        complaint.setText("▲ How much may be added is a number above 0, in " + measure.massUnit() + "; found \""
                + budget.getText() + "\".");
    }

    private void show(PlanDesk.Planned planned) {
        outcome.getChildren().clear();
        pool.extra(List.of(), true);
        if (planned == null) {
            return;
        }
        if (planned.plan().feasible()) {
            showPlan(planned);
        } else {
            showConflict(planned);
        }
        planned.findings().forEach(f -> outcome.getChildren().add(Ui.warning(PlanDesk.words(f, measure))));
    }

    private void showPlan(PlanDesk.Planned planned) {
        BallastPlan plan = planned.plan();
        Button take = Ui.button(
                "Carry it out",
                "As one step that can be undone",
                () -> plans.take().ifPresent(why -> complaint.setText("▲ " + why)));
        take.setId("plan-take");
        take.getStyleClass().add("main-button");
        Button leave = Ui.button("Throw it away", "Nothing changes", plans::leave);
        Button afloat = Ui.button("Afloat", "Show her so, with the pieces in", () -> look(plan.surfaced(), "afloat"));
        FlowPane looks = new FlowPane(6, 6, new Label("Show her"), afloat);
        plan.dived().ifPresent(d -> looks.getChildren().add(Ui.button("Dived", "Tanks full", () -> look(d, "dived"))));
        looks.setRowValignment(VPos.CENTER);
        outcome.getChildren()
                .addAll(
                        Ui.heading("The plan"),
                        Ui.words(added(plan), "strong"),
                        Ui.words(Figures.verdict(plan.surfaced(), measure)),
                        looks,
                        new FlowPane(6, 6, take, leave),
                        Ui.heading("What to do"));
        for (String line : PlanWords.changes(planned.request().boat(), plan, measure)) {
            outcome.getChildren().add(Ui.words("• " + line));
        }
        pool.extra(plan.pieces().stream().map(BallastPane::mesh).toList(), true);
        look(plan.surfaced(), "afloat");
    }

    private String added(BallastPlan plan) {
        return "Add " + measure.mass(plan.addedLeadG()) + " of lead and " + measure.volume(plan.addedFoamMm3())
                + " of foam (" + measure.mass(plan.addedFoamG()) + ").";
    }

    private static TriangleMesh mesh(Part piece) {
        return Bodies.mesh(piece.shape().orElseThrow());
    }

    private void look(Flotation flotation, String how) {
        desk.lookAt(Pose.of(flotation, "The plan, " + how + "; not carried out yet"));
    }

    private void showConflict(PlanDesk.Planned planned) {
        BallastPlan plan = planned.plan();
        outcome.getChildren()
                .addAll(Ui.heading("No plan meets all of this"), Ui.words("What cannot be met together:", "strong"));
        plan.misses().forEach(m -> outcome.getChildren().add(Ui.words("✖ " + PlanWords.of(m, measure))));
        outcome.getChildren()
                .add(Ui.words(
                        planned.ways().isEmpty()
                                ? "No single change would help."
                                : "Any one of these would help, the easiest first:",
                        "strong"));
        planned.ways().forEach(w -> outcome.getChildren().add(Ui.words("• " + PlanWords.of(w, measure))));
        outcome.getChildren()
                .add(Ui.button("Show the room there is", "Free room in the zones", () -> showRoom(plan.rooms())));
    }

    private void showRoom(List<Room> rooms) {
        pool.extra(
                rooms.stream()
                        .flatMap(r -> r.cells().stream())
                        .map(c -> Bodies.mesh(c.box()))
                        .toList(),
                false);
    }

    /** Called when another job is turned to: what was only shown is taken away. */
    public void left() {
        pool.extra(List.of(), true);
    }

    /** Called when this job is turned to. */
    public void entered() {
        Optional.ofNullable(plans.planned().get()).ifPresent(this::show);
    }
}
