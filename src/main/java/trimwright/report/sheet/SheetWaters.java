package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import trimwright.report.Measure;
import trimwright.report.WaterWords;
import trimwright.statics.WaterChange;

/** The same boat in other water. */
final class SheetWaters {

    private final Subject subject;
    private final Measure measure;

    SheetWaters(Subject subject) {
        this.subject = subject;
        measure = subject.measure();
    }

    Sheet.Section section() {
        boolean painted = subject.boat().paintedLine().isPresent();
        List<String> head = new ArrayList<>(List.of("water"));
        if (painted) {
            head.add(subject.inLength("bow"));
            head.add(subject.inLength("stern"));
        }
        head.add(subject.inMass("to add"));
        if (subject.dives()) {
            head.add(subject.inMass("left dived"));
            head.add("dive");
        }
        List<List<String>> rows = new ArrayList<>();
        for (WaterChange change : WaterChange.of(subject.condition(), WaterChange.USUAL)) {
            rows.add(row(change, painted));
        }
        String columns = "l" + "r".repeat(head.size() - (subject.dives() ? 2 : 1)) + (subject.dives() ? "l" : "");
        Block table = new Block.Grid(
                "waters",
                (painted ? "Water above the paint" + (subject.dives() ? " with empty tanks, and w" : ", and w") : "W")
                        + "hat has to be added (taken out where negative) for the line that she has at home",
                columns,
                head,
                rows);
        return new Sheet.Section("In other water", Sheet.Pages.RUNS_ON, List.of(table));
    }

    private List<String> row(WaterChange change, boolean painted) {
        List<String> cells = new ArrayList<>(List.of(WaterWords.brief(change.water())));
        if (painted) {
            cells.add(change.fromPaintedLine()
                    .map(o -> measure.lengthNumber(o.bowMm(), 1))
                    .orElse("–"));
            cells.add(change.fromPaintedLine()
                    .map(o -> measure.lengthNumber(o.sternMm(), 1))
                    .orElse("–"));
        }
        cells.add(change.gramsForLineG().map(g -> measure.massNumber(g, 1)).orElse("–"));
        if (subject.dives()) {
            cells.add(measure.massNumber(change.residualG(), 1));
            cells.add(
                    switch (change.dive()) {
                        case DIVES -> "dives and comes back";
                        case STAYS_UP -> "stays up";
                        case SINKS -> "sinks when dived";
                    });
        }
        return cells;
    }
}
