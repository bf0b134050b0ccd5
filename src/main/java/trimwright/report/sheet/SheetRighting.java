package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.RightingPlot;
import trimwright.report.StabilityWords;
import trimwright.statics.RightingCurve;
import trimwright.statics.Steadiness;

/** What brings her back from a list: levers as a table and as curves, with range and greatest lever. */
final class SheetRighting {

    private static final double LIST_STEP_DEG = 5;
    private static final double TOLD_EVERY_DEG = 15;

    private final Subject subject;
    private final Measure measure;
    private final int decimals;

    SheetRighting(Subject subject) {
        this.subject = subject;
        measure = subject.measure();
        // Thousandths of an inch are as fine as a lever is known.
        decimals = measure == Measure.METRIC ? 2 : 1;
    }

    /** Empty for a boat that sinks. */
    Optional<Sheet.Section> section() {
        Optional<RightingCurve> surfaced = RightingCurve.surfaced(subject.condition(), LIST_STEP_DEG);
        if (surfaced.isEmpty()) {
            return Optional.empty();
        }
        // Under water a boat without tanks is a boat that sank; her levers there help nobody.
        Optional<RightingCurve> dived = subject.dives()
                ? Optional.of(RightingCurve.submerged(subject.condition(), LIST_STEP_DEG))
                : Optional.empty();
        List<Block> blocks = new ArrayList<>();
        Steadiness.afloat(subject.condition())
                .ifPresent(s -> blocks.add(new Block.Words(StabilityWords.of(s, measure), false)));
        blocks.add(new Block.Points(summaries(surfaced.get(), dived)));
        RightingPlot.of("", surfaced.get(), dived, measure)
                .ifPresent(plot -> blocks.add(SheetDive.drawing(
                        plot, "The righting lever over the list, with its range and greatest value")));
        blocks.add(levers(surfaced.get(), dived));
        return Optional.of(new Sheet.Section("What brings her back from a list", Sheet.Pages.RUNS_ON, blocks));
    }

    private List<String> summaries(RightingCurve surfaced, Optional<RightingCurve> dived) {
        List<String> points = new ArrayList<>();
        points.add(summary("Surfaced", surfaced));
        surfaced.deckEdgeUnderDeg()
                .ifPresent(d -> points.add("The edge of her deck goes under at a list of " + Numbers.degrees(d) + "."));
        surfaced.topUnder()
                .ifPresent(t -> points.add(
                        "What stands highest, " + t.part() + ", goes under at " + Numbers.degrees(t.heelDeg()) + "."));
        dived.ifPresent(d -> points.add(summary("Dived", d)));
        return points;
    }

    private String summary(String state, RightingCurve curve) {
        RightingCurve.Summary s = curve.summary();
        if (curve.rows().isEmpty()) {
            return state + " she finds no stable trim at any list.";
        }
        String end = s.endsWithoutTrim() ? " where no trim is stable any more" : "";
        return state + ", to starboard: range " + Numbers.degrees(s.rangeDeg()) + " from rest" + end
                + "; greatest lever " + length(s.maxGzMm()) + " at " + Numbers.degrees(s.maxGzAtDeg()) + ".";
    }

    private String length(double mm) {
        return measure.lengthNumber(mm, decimals) + " " + measure.lengthUnit();
    }

    private Block levers(RightingCurve surfaced, Optional<RightingCurve> submerged) {
        Map<Double, RightingCurve.Row> dived = new TreeMap<>();
        submerged.ifPresent(curve -> curve.rows().forEach(r -> dived.put(r.heelDeg(), r)));
        List<List<String>> rows = new ArrayList<>();
        for (RightingCurve.Row row : surfaced.rows()) {
            if (row.heelDeg() >= 0 && row.heelDeg() % TOLD_EVERY_DEG == 0) {
                List<String> cells = new ArrayList<>(List.of(
                        Numbers.plain(row.heelDeg()),
                        measure.lengthNumber(row.gzMm(), decimals),
                        measure.momentNumber(row.momentGmm())));
                RightingCurve.Row under = dived.get(row.heelDeg());
                if (submerged.isPresent()) {
                    cells.add(under == null ? "–" : measure.lengthNumber(under.gzMm(), decimals));
                    cells.add(under == null ? "–" : measure.momentNumber(under.momentGmm()));
                }
                rows.add(cells);
            }
        }
        String moment = "moment " + measure.momentUnit();
        List<String> head = submerged.isPresent()
                ? List.of(
                        "list °", subject.inLength("surfaced: lever"), moment, subject.inLength("dived: lever"), moment)
                : List.of("list °", subject.inLength("lever"), moment);
        return new Block.Grid(
                "levers",
                "Righting levers and moments to starboard"
                        + (submerged.isPresent() ? "; – where no trim is stable" : ""),
                "r".repeat(head.size()),
                head,
                rows);
    }
}
