package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Kind;
import trimwright.report.DivePlot;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.picture.Plot;
import trimwright.statics.Condition;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.TankSizing;

/** The dive on a sheet: curves, steps, tank. */
final class SheetDive {

    private static final int EVERY = 2;

    private final Subject subject;
    private final Condition condition;
    private final DiveRun run;
    private final Measure measure;

    SheetDive(Subject subject, DiveRun run) {
        this.subject = subject;
        this.run = run;
        condition = subject.condition();
        measure = subject.measure();
    }

    Sheet.Section section() {
        List<Block> blocks = new ArrayList<>();
        DivePlot.of("", run, Optional.empty(), measure)
                .ifPresent(plot -> blocks.add(drawing(
                        plot, "GM, distance of B above G, list, trim and what stands out of the water over the fill")));
        blocks.add(steps());
        TankSizing.of(condition).ifPresent(s -> blocks.add(tank(s)));
        blocks.addAll(SheetDepth.of(subject));
        return new Sheet.Section("The dive", Sheet.Pages.RUNS_ON, blocks);
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
                    step.draughts().map(d -> measure.lengthNumber(d.bowMm(), 1)).orElse("–"),
                    step.draughts()
                            .map(d -> measure.lengthNumber(d.sternMm(), 1))
                            .orElse("–"),
                    step.settled().map(e -> Numbers.fixed(e.heelDeg(), 1)).orElse("sinks"),
                    step.settled().map(e -> Numbers.fixed(e.trimDeg(), 1)).orElse(""),
                    step.uprightGmMm().map(gm -> measure.lengthNumber(gm, 1)).orElse("–"),
                    step.settled().map(e -> measure.lengthNumber(e.bgMm(), 1)).orElse(""),
                    step.standing().isEmpty()
                            ? ""
                            : measure.lengthNumber(step.standing().get(0).aboveMm(), 1)));
        }
        return new Block.Grid(
                "dive",
                "On the way down: water above the keel at bow and stern, list to starboard, trim bow up, GM upright, B above G, highest point out",
                "rrrrrrrr",
                List.of(
                        "tank full %",
                        subject.inLength("bow"),
                        subject.inLength("stern"),
                        "list °",
                        "trim °",
                        subject.inLength("GM"),
                        subject.inLength("BG"),
                        subject.inLength("out")),
                rows);
    }

    private Block tank(TankSizing sizing) {
        List<List<String>> rows = new ArrayList<>();
        for (TankSizing.Above above : sizing.above()) {
            rows.add(List.of(
                    above.piece().id()
                            + (above.piece().part().kind() == Kind.FOAM ? " (foam: costs as much tank)" : ""),
                    measure.volumeNumber(above.volumeMm3(), 1),
                    ""));
        }
        rows.add(List.of("above the line in all", measure.volumeNumber(sizing.aboveMm3(), 1), ""));
        rows.add(List.of(
                "tank needed for a reserve of " + measure.mass(sizing.wanted().middleG()),
                measure.volumeNumber(sizing.neededMm3(), 1),
                middle(sizing.wantedCentreMm())));
        rows.add(List.of("tank there", measure.volumeNumber(sizing.thereMm3(), 1), middle(sizing.centreMm())));
        return new Block.Grid(
                "tank",
                "The tank: what stands above the line has to go under, and level if the middle of the tank lies where it belongs",
                "lrr",
                List.of("", subject.inVolume(""), "middle at x, " + measure.lengthUnit()),
                rows);
    }

    private String middle(Optional<Vector3D> middle) {
        return middle.map(m -> measure.lengthNumber(m.getX(), 1)).orElse("");
    }
}
