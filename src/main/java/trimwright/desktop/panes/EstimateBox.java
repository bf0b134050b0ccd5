package trimwright.desktop.panes;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.PoolTestDesk;
import trimwright.desktop.model.PoolTestDesk.Estimated;
import trimwright.desktop.model.Pose;
import trimwright.desktop.model.Problem;
import trimwright.desktop.tank3d.PoolView;
import trimwright.finding.Finding;
import trimwright.finding.Severity;
import trimwright.plan.BallastPlan;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.PoolEstimate.Compared;
import trimwright.plan.pool.PoolEstimate.Known;
import trimwright.plan.pool.PoolEstimate.PartOff;
import trimwright.report.EstimateWords;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.PlanWords;
import trimwright.report.PoolWords;
import trimwright.report.Wording;
import trimwright.report.raster.Bodies;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/** What the readings say: the run, the change to make now, what is known, which part and which reading is suspect, what to read next. */
final class EstimateBox extends VBox {

    private static final int PARTS_TOLD = 6;
    private static final double UNSUSPECTED = 0.1;
    private static final int NEXT_TOLD = 3;
    private static final double OUTLIER = 3;
    private static final String CAUTION =
            "Fit a change in steps, and prove it in shallow water, with a line on the boat. Lead is poisonous, above all molten or as dust; leave"
                    + " casting to those who know how. Not for craft that carry people.";

    private final Desk desk;
    private final PoolTestDesk tests;
    private final PoolView pool;
    private final Label complaint = Ui.words("", "error");
    private final Label taken = Ui.words(
            "▲ What these readings say is in the boat already. Take new readings after the change: the same ones would count twice.",
            "warning");
    private final VBox outcome = Ui.column(6);
    private Measure measure = Measure.METRIC;

    EstimateBox(Desk desk, PoolTestDesk tests, PoolView pool) {
        super(8);
        this.desk = desk;
        this.tests = tests;
        this.pool = pool;
        Button run = Ui.button("Work out what they say", "", tests::run);
        run.setId("pool-run");
        run.getStyleClass().add("main-button");
        run.disableProperty().bind(tests.running());
        Button stop = Ui.button("Stop", "Give up; nothing changes", tests::stop);
        stop.setId("pool-stop");
        stop.visibleProperty().bind(tests.running());
        ProgressBar progress = new ProgressBar();
        progress.visibleProperty().bind(tests.running());
        progress.setPrefWidth(90);
        HBox runs = new HBox(8, run, stop, progress);
        runs.setAlignment(Pos.CENTER_LEFT);
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        complaint.setId("pool-complaint");
        outcome.setId("pool-outcome");
        taken.setId("pool-taken");
        getChildren().addAll(runs, taken, complaint, outcome, Ui.words(CAUTION, "quiet"));
        tests.estimated().addListener((o, was, now) -> {
            show(now);
            if (now != null) {
                Ui.reveal(this);
            }
        });
        tests.problem().addListener((o, was, now) -> complain(now));
        tests.running().addListener((o, was, now) -> showTaken());
        desk.boat().addListener((o, was, now) -> showTaken());
        showTaken();
    }

    void setMeasure(Measure other) {
        measure = other;
        show(tests.estimated().get());
    }

    private void showTaken() {
        boolean shown = tests.isTaken();
        taken.setVisible(shown);
        taken.setManaged(shown);
    }

    private void complain(Problem problem) {
        complaint.setText(problem == null ? "" : "▲ " + problem.title() + ". " + String.join(" ", problem.lines()));
    }

    private void show(Estimated estimated) {
        outcome.getChildren().clear();
        pool.extra(List.of(), true);
        showTaken();
        if (estimated == null) {
            return;
        }
        PoolEstimate estimate = estimated.outcome().estimate();
        Label verdict = Ui.words(EstimateWords.verdict(estimate, measure), "strong");
        verdict.setId("pool-verdict");
        add(Ui.heading("What they say"), verdict);
        estimate.findings().forEach(f -> add(told(f)));
        addChange(estimated);
        addFigures(estimate);
        addParts(estimate);
        addReadings(estimate);
        estimate.inclining().ifPresent(i -> add(Ui.heading("Inclining"), Ui.words(EstimateWords.of(i, measure))));
        add(
                Ui.heading("What to read next"),
                Ui.words("In brackets the share of what is still open that it would settle.", "quiet"));
        estimate.next().stream()
                .limit(NEXT_TOLD)
                .forEach(n -> add(Ui.words("• " + PoolWords.of(n) + " (" + Numbers.fixed(100 * n.gain(), 0) + " %)")));
    }

    private void add(Node... nodes) {
        outcome.getChildren().addAll(nodes);
    }

    private Label told(Finding finding) {
        String words = Wording.of(finding, measure);
        return finding.severity() == Severity.NOTE ? Ui.words("• " + words) : Ui.warning(words);
    }

    private void addChange(Estimated estimated) {
        PoolEstimate estimate = estimated.outcome().estimate();
        add(Ui.heading("What to change now"));
        Optional<BallastPlan> plan = estimated.outcome().change();
        if (plan.isEmpty()) {
            add(Ui.words(
                    estimate.isContradictory()
                            ? "Nothing on the boat: first read again what does not fit."
                            : "Without a painted line there is nothing to trim her to."));
        } else if (plan.get().feasible()) {
            List<String> lines = PlanWords.changes(estimate.corrected(), plan.get(), measure);
            if (lines.isEmpty()) {
                add(Ui.words("• nothing: she is within what is wanted"));
            }
            lines.forEach(line -> add(Ui.words("• " + line)));
            add(Ui.words(EstimateWords.outcome(estimate, measure), "quiet"));
            pool.extra(
                    plan.get().pieces().stream()
                            .map(p -> Bodies.mesh(p.shape().orElseThrow()))
                            .toList(),
                    true);
        } else {
            plan.get().misses().forEach(m -> add(Ui.words("✖ " + PlanWords.of(m, measure))));
            add(Ui.words("Take over what was read, then see the job Ballast for ways out."));
        }
        addLooksAndTakes(estimated, plan);
    }

    private void addLooksAndTakes(Estimated estimated, Optional<BallastPlan> plan) {
        FlowPane looks = new FlowPane(6, 6, new Label("Show her"));
        looks.setRowValignment(VPos.CENTER);
        looks.getChildren()
                .add(Ui.button(
                        "As read",
                        "As the readings have her, nothing changed yet",
                        () -> desk.lookAt(Pose.of(corrected(estimated), "As the readings have her"))));
        plan.filter(BallastPlan::feasible).ifPresent(p -> {
            looks.getChildren()
                    .add(Ui.button("Changed", "With the change carried out", () -> look(p.surfaced(), "afloat")));
            p.dived()
                    .ifPresent(d -> looks.getChildren()
                            .add(Ui.button(
                                    "Dived", "With the change carried out, tanks full", () -> look(d, "dived"))));
        });
        Button over = Ui.button(
                "Take over what was read",
                "The boat becomes what the readings say; one step that can be undone",
                () -> complain(tests.takeCorrections()));
        over.setId("pool-take");
        FlowPane takes = new FlowPane(6, 6);
        plan.filter(p -> p.feasible() && isAnything(estimated, p)).ifPresent(p -> {
            Button both = Ui.button(
                    "… and carry the change out",
                    "The same, with the pieces in; one step that can be undone",
                    () -> complain(tests.takeChange()));
            both.setId("pool-take-change");
            takes.getChildren().add(both);
        });
        takes.getChildren().add(0, over);
        add(looks, takes);
    }

    private static boolean isAnything(Estimated estimated, BallastPlan plan) {
        return !PlanWords.changes(estimated.outcome().estimate().corrected(), plan)
                .isEmpty();
    }

    private void complain(Optional<String> refused) {
        complaint.setText(refused.map(why -> "▲ " + why).orElse(""));
    }

    private static Flotation corrected(Estimated estimated) {
        return Flotation.settling(Condition.of(estimated.outcome().estimate().corrected()));
    }

    private void look(Flotation flotation, String how) {
        desk.lookAt(Pose.of(flotation, "The change, " + how + "; not carried out yet"));
    }

    private void addFigures(PoolEstimate estimate) {
        GridPane grid = halves("in the file", "now");
        for (Figure figure : Figure.values()) {
            Known known = estimate.figures().get(figure);
            if (known != null) {
                Label now =
                        Ui.words(EstimateWords.plusMinus(figure, known.after(), known.afterError(), measure), "strong");
                now.setId("figure-" + figure.key());
                addHalves(
                        grid,
                        PoolWords.of(figure),
                        Ui.words(EstimateWords.plusMinus(figure, known.before(), known.beforeError(), measure)),
                        now);
            }
        }
        add(
                Ui.heading("What is known of her"),
                Ui.words("Tanks empty or dived; ± is a standard deviation.", "quiet"),
                grid);
        List<Figure> unknown = estimate.unknown();
        if (!unknown.isEmpty()) {
            add(Ui.words("The readings say next to nothing about: "
                    + String.join("; ", unknown.stream().map(PoolWords::of).toList()) + "."));
        }
    }

    private void addParts(PoolEstimate estimate) {
        List<PartOff> off = estimate.parts().stream()
                .filter(p -> p.suspicion() > UNSUSPECTED)
                .limit(PARTS_TOLD)
                .toList();
        add(Ui.heading("Which parts are most likely off"));
        if (off.isEmpty()) {
            add(Ui.words("None."));
            return;
        }
        add(Ui.words("The most suspect first; in brackets the largest error over how far it might be off.", "quiet"));
        off.forEach(p -> add(Ui.words("• " + EstimateWords.of(p, measure))));
    }

    private void addReadings(PoolEstimate estimate) {
        GridPane grid = table(3);
        heads(grid, "", "seen", "now", "off by");
        for (Compared c : estimate.sightings()) {
            boolean off = Math.abs(c.timesItsError()) > OUTLIER;
            grid.addRow(
                    grid.getRowCount(),
                    Ui.words(c.reading() + ": " + PoolWords.of(c.sighting().quantity())),
                    Ui.words(EstimateWords.number(
                                    c.sighting().quantity(),
                                    Optional.of(c.sighting().value()),
                                    measure)
                            + EstimateWords.unit(c.sighting().quantity(), measure)),
                    Ui.words(EstimateWords.number(c.sighting().quantity(), c.after(), measure)),
                    Ui.words(
                            (off ? "▲ " : "") + Numbers.fixed(Math.abs(c.timesItsError()), 1) + " σ",
                            off ? "warning" : "quiet"));
        }
        add(Ui.heading("The readings against her"), grid);
    }

    /** A table whose first column takes what the others leave. */
    private static GridPane table(int numbers) {
        GridPane grid = new GridPane();
        grid.setHgap(8);
        grid.setVgap(4);
        ColumnConstraints wide = new ColumnConstraints();
        wide.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().add(wide);
        for (int i = 0; i < numbers; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setMinWidth(USE_PREF_SIZE);
            grid.getColumnConstraints().add(column);
        }
        return grid;
    }

    /** A table of two columns as wide as each other, with what each row is about above it. */
    static GridPane halves(String left, String right) {
        GridPane grid = new GridPane();
        grid.setHgap(8);
        grid.setVgap(1);
        for (int i = 0; i < 2; i++) {
            ColumnConstraints half = new ColumnConstraints();
            half.setPercentWidth(50);
            grid.getColumnConstraints().add(half);
        }
        heads(grid, left, right);
        return grid;
    }

    static void addHalves(GridPane grid, String about, Label left, Label right) {
        Label name = Ui.words(about, "quiet");
        name.setStyle("-fx-padding: 4 0 0 0;");
        int row = grid.getRowCount();
        grid.add(name, 0, row, 2, 1);
        grid.addRow(row + 1, left, right);
    }

    private static void heads(GridPane grid, String... names) {
        for (int i = 0; i < names.length; i++) {
            Label head = new Label(names[i]);
            head.getStyleClass().add("quiet");
            grid.add(head, i, 0);
        }
    }

    void left() {
        pool.extra(List.of(), true);
    }

    void entered() {
        show(tests.estimated().get());
    }
}
