package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.report.DivePlot;
import trimwright.report.Numbers;
import trimwright.report.WaterWords;
import trimwright.report.picture.Plot;
import trimwright.statics.Condition;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.TankSizing;
import trimwright.statics.WaterChange;

/** The dive on a sheet: curves, tank, other waters. */
final class SheetDive {

    private static final double MM3_PER_CM3 = 1000;
    private static final int EVERY = 2;

    private final Boat boat;
    private final Condition condition;
    private final DiveRun run;

    SheetDive(Boat boat, Condition condition, DiveRun run) {
        this.boat = boat;
        this.condition = condition;
        this.run = run;
    }

    Sheet.Section section() {
        List<Block> blocks = new ArrayList<>();
        DivePlot.of(boat.name(), run, Optional.empty())
                .ifPresent(plot -> blocks.add(drawing(
                        plot, "GM, distance of B above G, list, trim and what stands out of the water over the fill")));
        blocks.add(steps());
        TankSizing.of(condition).ifPresent(s -> blocks.add(tank(s)));
        blocks.add(waters());
        return new Sheet.Section("The dive", true, blocks);
    }

    static Block drawing(Plot plot, String alt) {
        String svg = plot.svg();
        return new Block.Drawing(svg, aspect(svg), alt);
    }

    private static double aspect(String svg) {
        return number(svg, "width=\"") / number(svg, "height=\"");
    }

    private static double number(String svg, String key) {
        int from = svg.indexOf(key) + key.length();
        return Double.parseDouble(svg.substring(from, svg.indexOf('"', from)).replaceAll("[^0-9.]", ""));
    }

    private Block steps() {
        List<List<String>> rows = new ArrayList<>();
        List<DiveStep> steps = run.course().steps();
        for (int i = 0; i < steps.size(); i += EVERY) {
            DiveStep step = steps.get(i);
            rows.add(List.of(
                    Numbers.fixed(100 * step.fill(), 0),
                    step.draughts().map(d -> Numbers.fixed(d.bowMm(), 1)).orElse("–"),
                    step.draughts().map(d -> Numbers.fixed(d.sternMm(), 1)).orElse("–"),
                    step.settled().map(e -> Numbers.fixed(e.heelDeg(), 1)).orElse("sinks"),
                    step.settled().map(e -> Numbers.fixed(e.trimDeg(), 1)).orElse(""),
                    step.uprightGmMm().map(gm -> Numbers.fixed(gm, 1)).orElse("–"),
                    step.settled().map(e -> Numbers.fixed(e.bgMm(), 1)).orElse(""),
                    step.standing().isEmpty()
                            ? ""
                            : Numbers.fixed(step.standing().get(0).aboveMm(), 1)));
        }
        return new Block.Grid(
                "On the way down",
                "rrrrrrrr",
                List.of("full %", "bow mm", "stern mm", "list °", "trim °", "GM mm", "BG mm", "out mm"),
                rows);
    }

    private static Block tank(TankSizing sizing) {
        List<List<String>> rows = new ArrayList<>();
        for (TankSizing.Above above : sizing.above()) {
            rows.add(List.of(
                    above.piece().id()
                            + (above.piece().part().kind() == Kind.FOAM ? " (foam: costs as much tank)" : ""),
                    Numbers.fixed(above.volumeMm3() / MM3_PER_CM3, 1)));
        }
        rows.add(List.of("above the line in all", Numbers.fixed(sizing.aboveMm3() / MM3_PER_CM3, 1)));
        rows.add(List.of(
                "tank needed for a reserve of " + Numbers.g(sizing.wanted().middleG()),
                Numbers.fixed(sizing.neededMm3() / MM3_PER_CM3, 1)));
        rows.add(List.of("tank there", Numbers.fixed(sizing.thereMm3() / MM3_PER_CM3, 1)));
        if (sizing.wantedCentreMm().isPresent() && sizing.centreMm().isPresent()) {
            rows.add(List.of(
                    "its middle belongs at x (mm), to take her under level",
                    Numbers.fixed(sizing.wantedCentreMm().get().getX(), 1)));
            rows.add(List.of(
                    "its middle is at x (mm)",
                    Numbers.fixed(sizing.centreMm().get().getX(), 1)));
        }
        return new Block.Grid("The tank", "lr", List.of("stands above the line", "cm³"), rows);
    }

    private Block waters() {
        List<List<String>> rows = new ArrayList<>();
        for (WaterChange change : WaterChange.of(condition, WaterChange.USUAL)) {
            rows.add(List.of(
                    WaterWords.brief(change.water()),
                    change.fromPaintedLine()
                            .map(o -> Numbers.fixed(o.bowMm(), 1))
                            .orElse("–"),
                    change.fromPaintedLine()
                            .map(o -> Numbers.fixed(o.sternMm(), 1))
                            .orElse("–"),
                    change.gramsForLineG().map(g -> Numbers.fixed(g, 1)).orElse("–"),
                    Numbers.fixed(change.residualG(), 1),
                    switch (change.dive()) {
                        case DIVES -> "dives and comes back";
                        case STAYS_UP -> "stays up";
                        case SINKS -> "sinks when dived";
                    }));
        }
        return new Block.Grid(
                "In other water", "lrrrrl", List.of("water", "bow mm", "stern mm", "add g", "left dived g", ""), rows);
    }
}
