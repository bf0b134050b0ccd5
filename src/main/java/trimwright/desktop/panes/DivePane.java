package trimwright.desktop.panes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import trimwright.desktop.model.Derived;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Pose;
import trimwright.report.AttitudeWords;
import trimwright.report.DiveWords;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.Wording;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.Equilibrium;
import trimwright.statics.Standing;

/** The dive: a slider from empty to full that takes the boat in the pool along, and the curves under it. */
public final class DivePane extends VBox {

    /** Steps of the dive that are worked out and can be shown. */
    public static final int STEPS = 40;

    private static final Color GM = Color.web("#2f80d0");
    private static final Color TRIM = Color.web("#d9480f");
    private static final Color LIST = Color.web("#8a63d2");

    private final Desk desk;
    private final Derived<DiveRun> run;
    private final Slider slider = new Slider(0, 100, 0);
    private final Label state = Ui.words("");
    private final Label verdict = Ui.words("", "strong");
    private final Label least = Ui.words("");
    private final VBox findings = Ui.column(4);
    private final VBox body;
    private final Label wait = Ui.words("Working out the dive …", "quiet");
    private final Curves firm = new Curves("tanks, % full", "GM upright, mm", this::choose);
    private final Curves angles = new Curves("tanks, % full", "degrees", this::choose);
    private Measure measure = Measure.METRIC;

    public DivePane(Desk desk, Derived<DiveRun> run) {
        super(8);
        this.desk = desk;
        this.run = run;
        slider.setId("dive-slider");
        slider.setBlockIncrement(100.0 / STEPS);
        slider.setMajorTickUnit(25);
        slider.setMinorTickCount(4);
        slider.setShowTickLabels(true);
        slider.setShowTickMarks(true);
        slider.setAccessibleText("How full the tanks are, in per cent");
        state.setId("dive-state");
        verdict.setId("dive-verdict");
        body = Ui.column(
                8, verdict, least, Ui.heading("How full the tanks are, %"), slider, state, firm, angles, findings);
        getChildren().addAll(wait, body);
        run.value().addListener((o, was, now) -> show());
        run.problem().addListener((o, was, now) -> show());
        slider.valueProperty().addListener((o, was, now) -> slid());
        desk.looked().addListener((o, was, now) -> {
            if (now == null) {
                firm.chosen().set(-1);
                angles.chosen().set(-1);
            }
        });
        show();
    }

    public void setMeasure(Measure other) {
        measure = other;
        show();
    }

    private void show() {
        DiveRun dive = run.value().get();
        body.setVisible(dive != null);
        body.setManaged(dive != null);
        wait.setVisible(dive == null);
        wait.setManaged(dive == null);
        wait.setText(
                run.problem().get() == null
                        ? "Working out the dive …"
                        : "▲ " + String.join(" ", run.problem().get().lines()));
        if (dive == null) {
            return;
        }
        verdict.setText(DiveWords.verdict(dive, measure));
        least.setText(DiveWords.leastFirm(dive.course(), measure).orElse(""));
        List<DiveStep> steps = dive.course().steps();
        double[] fills = steps.stream().mapToDouble(s -> 100 * s.fill()).toArray();
        List<Curves.Mark> marks = new ArrayList<>();
        dive.course().critical().ifPresent(c -> marks.add(new Curves.Mark("least firm", 100 * c.fill())));
        firm.setYTitle("GM upright, " + measure.lengthUnit());
        firm.show(
                fills,
                List.of(new Curves.Curve(
                        "GM upright",
                        steps.stream()
                                .mapToDouble(s ->
                                        measure.inLengthUnit(s.uprightGmMm().orElse(Double.NaN)))
                                .toArray(),
                        GM,
                        false)),
                marks);
        angles.show(
                fills,
                List.of(
                        new Curves.Curve("trim, bow up", angles(steps, Equilibrium::trimDeg), TRIM, false),
                        new Curves.Curve("list, starboard", angles(steps, Equilibrium::heelDeg), LIST, true)),
                marks);
        findings.getChildren().clear();
        dive.findings().forEach(f -> findings.getChildren().add(Ui.warning(Wording.sentence(f, measure))));
        slid();
    }

    private static double[] angles(List<DiveStep> steps, Function<Equilibrium, Double> angle) {
        return steps.stream()
                .mapToDouble(s -> s.settled().map(angle).orElse(Double.NaN))
                .toArray();
    }

    private void choose(int step) {
        DiveRun dive = run.value().get();
        if (dive != null) {
            slider.setValue(100 * dive.course().steps().get(step).fill());
            slid();
        }
    }

    /** Shows the state nearest to the slider: only states that were worked out are shown. */
    private void slid() {
        DiveRun dive = run.value().get();
        if (dive == null || getScene() == null) {
            return;
        }
        List<DiveStep> steps = dive.course().steps();
        int at = 0;
        for (int i = 1; i < steps.size(); i++) {
            double wanted = slider.getValue() / 100;
            if (Math.abs(steps.get(i).fill() - wanted) < Math.abs(steps.get(at).fill() - wanted)) {
                at = i;
            }
        }
        DiveStep step = steps.get(at);
        if (firm.chosen().get() == at && desk.looked().get() != null) {
            return;
        }
        firm.chosen().set(at);
        angles.chosen().set(at);
        String words = words(step);
        state.setText(words);
        desk.lookAt(Pose.of(step.flotation(), "Dive: " + words));
    }

    private String words(DiveStep step) {
        String fill = Numbers.fixed(100 * step.fill(), 0) + " % full";
        if (step.settled().isEmpty()) {
            return fill + ": she sinks";
        }
        Standing top = step.standing().isEmpty() ? null : step.standing().get(0);
        return fill + ": " + AttitudeWords.of(step.settled().get().plane().up())
                + (top == null ? "" : "; " + top.part() + " stands " + measure.length(top.aboveMm()) + " out");
    }

    /** Called when this job is turned to. */
    public void entered() {
        slider.setValue(0);
        slid();
    }
}
