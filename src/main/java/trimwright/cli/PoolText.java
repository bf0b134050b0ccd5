package trimwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.plan.BallastPlan;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.Inclining;
import trimwright.plan.pool.NextReading;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.PoolEstimate.Compared;
import trimwright.plan.pool.PoolEstimate.Known;
import trimwright.plan.pool.PoolEstimate.PartOff;
import trimwright.report.EstimateWords;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.PlanWords;
import trimwright.report.PoolWords;

/** A pool test as text: the change to make now, then what is known, then what it rests on. */
final class PoolText {

    /** Parts told one by one. */
    private static final int PARTS_TOLD = 6;
    /** Suspicion, in standard deviations, below which a part is as it should be. */
    private static final double UNSUSPECTED = 0.1;

    private static final int NEXT_TOLD = 3;

    private PoolText() {}

    static void tell(PoolAnswer answer, Page page) {
        PoolEstimate estimate = answer.estimate();
        page.line(answer.boat().name())
                .line(answer.test().name()
                        + (answer.test().date().isEmpty()
                                ? ""
                                : ", " + answer.test().date()))
                .gap();
        page.paragraph(EstimateWords.verdict(estimate, Measure.METRIC));
        change(page, answer);
        figures(page, estimate);
        parts(page, estimate);
        sightings(page, estimate);
        estimate.inclining().ifPresent(i -> inclining(page, i));
        next(page, estimate.next());
        answer.written().ifPresent(p -> page.heading("Saved as " + p));
        answer.log().ifPresent(p -> page.heading("Kept in " + p));
    }

    private static void change(Page page, PoolAnswer answer) {
        if (answer.estimate().isContradictory()) {
            page.heading("What to change now").point("nothing on the boat: first read again what does not fit");
            return;
        }
        if (answer.plan().isEmpty()) {
            page.paragraph("Without a painted line there is nothing to trim her to.");
            return;
        }
        BallastPlan plan = answer.plan().get();
        Boat corrected = answer.estimate().corrected();
        page.heading("What to change now");
        if (!plan.feasible()) {
            plan.misses().forEach(m -> page.point(PlanWords.of(m)));
            page.paragraph("Save the corrected boat with --write and ask trimwright ballast about the ways out.");
            return;
        }
        List<String> lines = PlanWords.changes(corrected, plan);
        if (lines.isEmpty()) {
            page.point("nothing: she is within what is wanted");
        }
        lines.forEach(page::point);
        page.gap().paragraph(EstimateWords.outcome(answer.estimate(), Measure.METRIC));
    }

    private static void figures(Page page, PoolEstimate estimate) {
        TextTable table = TextTable.of("lrlrll").head("", "in the file", "", "now", "", "");
        for (Figure figure : Figure.values()) {
            Known known = estimate.figures().get(figure);
            if (known != null) {
                table.row(
                        PoolWords.of(figure),
                        Numbers.fixed(known.before(), 1),
                        "± " + Numbers.fixed(known.beforeError(), 1),
                        Numbers.fixed(known.after(), 1),
                        "± " + Numbers.fixed(known.afterError(), 1),
                        figure.unit());
            }
        }
        page.heading("What is known of her, tanks empty or dived").table(table);
        List<Figure> unknown = estimate.unknown();
        if (!unknown.isEmpty()) {
            page.paragraph("The readings say next to nothing about: "
                    + unknown.stream().map(PoolWords::of).collect(Collectors.joining("; ")) + ".");
        }
    }

    private static void parts(Page page, PoolEstimate estimate) {
        List<PartOff> off = estimate.parts().stream()
                .filter(p -> p.suspicion() > UNSUSPECTED)
                .limit(PARTS_TOLD)
                .toList();
        if (off.isEmpty()) {
            page.heading("No part is likely to be off.");
            return;
        }
        TextTable table = TextTable.of("lrlrrrrr");
        table.head("", "mass", "", "ahead", "to port", "up", "volume", "suspicion");
        table.head("", "g", "", "mm", "mm", "mm", "%", "");
        for (PartOff part : off) {
            Vector3D by = part.moveMm();
            table.row(
                    part.part(),
                    signed(part.massG(), 1),
                    "± " + Numbers.fixed(part.massErrorG(), 1),
                    signed(by.getX(), 1),
                    signed(by.getY(), 1),
                    signed(by.getZ(), 1),
                    signed(part.volumePercent(), 1),
                    Numbers.fixed(part.suspicion(), 1));
        }
        page.heading("Which parts are most likely off (suspicion: the largest, over how far it might be off)")
                .table(table);
    }

    private static void sightings(Page page, PoolEstimate estimate) {
        TextTable table = TextTable.of("llrlrrr");
        table.head("", "", "seen", "", "file says", "now says", "off by");
        for (Compared c : estimate.sightings()) {
            table.row(
                    c.reading(),
                    PoolWords.of(c.sighting().quantity()),
                    Numbers.fixed(c.sighting().value(), 1),
                    "± " + Numbers.fixed(c.sighting().error(), 1)
                            + c.sighting().quantity().unit(),
                    number(c.before()),
                    number(c.after()),
                    Numbers.fixed(Math.abs(c.timesItsError()), 1) + " σ");
        }
        page.heading("The readings").table(table);
    }

    private static String number(Optional<Double> value) {
        return value.map(v -> Numbers.fixed(v, 1)).orElse("–");
    }

    private static void inclining(Page page, Inclining inclining) {
        page.heading("Inclining").paragraph(EstimateWords.of(inclining, Measure.METRIC));
    }

    private static void next(Page page, List<NextReading> next) {
        page.heading("What to read next: share of what is still open that it would settle");
        next.stream()
                .limit(NEXT_TOLD)
                .forEach(n -> page.point(PoolWords.of(n) + ": " + Numbers.fixed(100 * n.gain(), 0) + " %"));
    }

    private static String signed(double value, int decimals) {
        return Numbers.roundsToZero(value, decimals) ? "0" : (value > 0 ? "+" : "") + Numbers.fixed(value, decimals);
    }
}
