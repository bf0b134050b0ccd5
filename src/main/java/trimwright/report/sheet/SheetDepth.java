package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.report.DepthWords;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.statics.DepthRun;

/** What is left of her buoyancy with depth, where parts of her give way to pressure or soak. */
final class SheetDepth {

    private static final double DEEPEST_M = 5;
    private static final double STEP_M = 0.5;

    private final DepthRun depth;
    private final Subject subject;

    private SheetDepth(DepthRun depth, Subject subject) {
        this.depth = depth;
        this.subject = subject;
    }

    /** Nothing for a boat all of whose parts stay as they are. */
    static List<Block> of(Subject subject) {
        Optional<DepthRun> depth = DepthRun.ifPartsGiveWay(subject.condition(), DEEPEST_M, STEP_M);
        return depth.map(d -> new SheetDepth(d, subject).blocks()).orElse(List.of());
    }

    private List<Block> blocks() {
        Measure measure = subject.measure();
        boolean soaks = depth.soakedG() > 0;
        List<String> head =
                new ArrayList<>(List.of("depth " + DepthWords.depthUnit(measure), subject.inMass("buoyancy left")));
        if (soaks) {
            head.add(subject.inMass("when soaked"));
        }
        head.addAll(List.of(subject.inLength("B above G"), "trim °"));
        List<List<String>> rows = new ArrayList<>();
        for (DepthRun.Row row : depth.rows()) {
            List<String> cells = new ArrayList<>(
                    List.of(DepthWords.depthNumber(row.depthM(), measure), measure.massNumber(row.residualG(), 1)));
            if (soaks) {
                cells.add(measure.massNumber(row.soakedResidualG(), 1));
            }
            cells.add(measure.lengthNumber(row.bgMm(), 1));
            cells.add(Numbers.fixed(row.trimDeg(), 1));
            rows.add(cells);
        }
        List<String> points = new ArrayList<>(List.of(DepthWords.noReturn(depth, measure)));
        DepthWords.soaking(depth, measure).ifPresent(points::add);
        return List.of(
                new Block.Grid(
                        "depth",
                        "With depth parts of her give way: depth of her highest point, tanks full, trim bow up",
                        "r".repeat(head.size()),
                        head,
                        rows),
                new Block.Points(points));
    }
}
