package trimwright.desktop.panes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import trimwright.desktop.model.Derived;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Levers;
import trimwright.desktop.model.Pose;
import trimwright.report.AttitudeWords;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.StabilityWords;
import trimwright.report.Wording;
import trimwright.statics.RightingCurve;

/** How firmly she stands up: the righting levers afloat and dived; a point of the curve afloat is shown in the pool. */
public final class StandPane extends VBox {

    private static final Color AFLOAT = Color.web("#2f80d0");
    private static final Color DIVED = Color.web("#d9480f");

    private final Desk desk;
    private final Derived<Levers> levers;
    private final Label wait = Ui.words("", "quiet");
    private final Label afloat = Ui.words("", "strong");
    private final Label dived = Ui.words("", "strong");
    private final Curves curve = new Curves("list, degrees (starboard positive)", "righting lever, mm", this::choose);
    private final Label chosen = Ui.words("Click the curve: the boat lies over so far.", "quiet");
    private final Label summary = Ui.words("");
    private final VBox findings = Ui.column(4);
    private final VBox body;
    private List<RightingCurve.Row> rows = List.of();
    private Measure measure = Measure.METRIC;

    public StandPane(Desk desk, Derived<Levers> levers) {
        super(8);
        this.desk = desk;
        this.levers = levers;
        afloat.setId("stand-afloat");
        curve.setId("stand-curve");
        chosen.setId("stand-chosen");
        curve.setTall(240);
        body = Ui.column(
                8,
                Ui.heading("Afloat"),
                afloat,
                Ui.heading("Dived, tanks full"),
                dived,
                Ui.heading("What brings her back"),
                curve,
                chosen,
                summary,
                findings);
        getChildren().addAll(wait, body);
        levers.value().addListener((o, was, now) -> show());
        levers.problem().addListener((o, was, now) -> show());
        desk.looked().addListener((o, was, now) -> {
            if (now == null) {
                curve.chosen().set(-1);
            }
        });
        show();
    }

    public void setMeasure(Measure other) {
        measure = other;
        show();
    }

    private void show() {
        Levers now = levers.value().get();
        body.setVisible(now != null);
        body.setManaged(now != null);
        wait.setVisible(now == null);
        wait.setManaged(now == null);
        wait.setText(
                levers.problem().get() == null
                        ? "Working out her righting levers …"
                        : "▲ " + String.join(" ", levers.problem().get().lines()));
        if (now == null) {
            return;
        }
        afloat.setText(
                now.afloat().isEmpty()
                        ? "She sinks, so nothing rights her afloat."
                        : now.steadiness()
                                .map(s -> StabilityWords.of(s, measure))
                                .orElse(
                                        "Held upright she finds no trim that is stable: she stands on end or lies over."));
        dived.setText(StabilityWords.of(now.submerged(), measure));
        rows = now.afloat().orElse(now.dived()).rows();
        double[] lists = rows.stream().mapToDouble(RightingCurve.Row::heelDeg).toArray();
        List<Curves.Curve> curves = new ArrayList<>();
        now.afloat().ifPresent(a -> curves.add(new Curves.Curve("afloat", levers(a, lists), AFLOAT, false)));
        curves.add(new Curves.Curve("dived", levers(now.dived(), lists), DIVED, true));
        curve.setYTitle("righting lever, " + measure.lengthUnit());
        curve.show(lists, curves, List.of());
        summary.setText(now.afloat().map(a -> words("Afloat", a)).orElse("") + words("Dived", now.dived()));
        findings.getChildren().clear();
        now.afloat()
                .ifPresent(a -> a.findings()
                        .forEach(f -> findings.getChildren().add(Ui.warning(Wording.sentence(f, measure)))));
    }

    private double[] levers(RightingCurve of, double[] lists) {
        double[] y = new double[lists.length];
        for (int i = 0; i < y.length; i++) {
            double list = lists[i];
            y[i] = of.rows().stream()
                    .filter(r -> Math.abs(r.heelDeg() - list) < 1e-6)
                    .findFirst()
                    .map(r -> measure.inLengthUnit(r.gzMm()))
                    .orElse(Double.NaN);
        }
        return y;
    }

    private String words(String state, RightingCurve of) {
        RightingCurve.Summary s = of.summary();
        return state + " to starboard: rights herself over " + Numbers.fixed(s.rangeDeg(), 0) + "°, most at "
                + Numbers.fixed(s.maxGzAtDeg(), 0) + "° with a lever of " + measure.length(s.maxGzMm()) + ". ";
    }

    private void choose(int i) {
        Levers now = levers.value().get();
        if (now == null || now.afloat().isEmpty()) {
            return;
        }
        RightingCurve.Row row = rows.get(i);
        curve.chosen().set(i);
        String way = Optional.of(row.gzMm())
                .map(gz -> Numbers.roundsToZero(gz, 2)
                        ? "nothing turns her"
                        : (gz > 0) == (row.heelDeg() > 0)
                                ? "a lever of " + measure.length(Math.abs(gz)) + " brings her back"
                                : "a lever of " + measure.length(Math.abs(gz)) + " takes her farther over")
                .get();
        String words = AttitudeWords.of(row.heelDeg(), row.trimDeg()) + ": " + way;
        chosen.setText(words);
        desk.lookAt(Pose.at(now.condition(), row, "Held at " + words));
    }
}
