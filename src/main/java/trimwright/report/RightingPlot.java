package trimwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.report.picture.Plot;
import trimwright.report.picture.Plot.Curve;
import trimwright.report.picture.Plot.Mark;
import trimwright.report.picture.Plot.Panel;
import trimwright.statics.RightingCurve;

/** The righting levers over the list. */
public final class RightingPlot {

    private static final String LIST = "list, degrees, + to starboard";

    private RightingPlot() {}

    /** Empty when no list has a stable trim, neither surfaced nor dived. */
    public static Optional<Plot> of(String name, RightingCurve surfaced, RightingCurve submerged) {
        List<Panel> panels = new ArrayList<>();
        if (!surfaced.rows().isEmpty()) {
            panels.add(panel("surfaced", surfaced));
        }
        if (!submerged.rows().isEmpty()) {
            panels.add(panel("dived", submerged));
        }
        return panels.isEmpty() ? Optional.empty() : Optional.of(new Plot(name + ": righting levers", panels));
    }

    private static Panel panel(String state, RightingCurve curve) {
        double[] lists =
                curve.rows().stream().mapToDouble(RightingCurve.Row::heelDeg).toArray();
        double[] levers =
                curve.rows().stream().mapToDouble(RightingCurve.Row::gzMm).toArray();
        RightingCurve.Summary s = curve.summary();
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark("greatest, " + Numbers.mm(s.maxGzMm()), s.maxGzAtDeg(), s.maxGzMm()));
        double end = curve.equilibrium().heelDeg() + s.rangeDeg();
        if (!s.endsWithoutTrim() && end <= 180) {
            marks.add(new Mark("ends at " + Numbers.degrees(end), end, 0));
        }
        return new Panel(LIST, "lever " + state + ", mm", List.of(new Curve(state, lists, levers)), marks);
    }
}
