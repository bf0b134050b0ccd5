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
        return of(name + ": righting levers", surfaced, Optional.of(submerged), Measure.METRIC);
    }

    /** The same with a title of its own, dived only where it is given, in other units. */
    public static Optional<Plot> of(
            String title, RightingCurve surfaced, Optional<RightingCurve> submerged, Measure measure) {
        List<Panel> panels = new ArrayList<>();
        if (!surfaced.rows().isEmpty()) {
            panels.add(panel("surfaced", surfaced, measure));
        }
        submerged
                .filter(curve -> !curve.rows().isEmpty())
                .ifPresent(curve -> panels.add(panel("dived", curve, measure)));
        return panels.isEmpty() ? Optional.empty() : Optional.of(new Plot(title, panels));
    }

    private static Panel panel(String state, RightingCurve curve, Measure measure) {
        double[] lists =
                curve.rows().stream().mapToDouble(RightingCurve.Row::heelDeg).toArray();
        double[] levers = curve.rows().stream()
                .mapToDouble(r -> measure.inLengthUnit(r.gzMm()))
                .toArray();
        RightingCurve.Summary s = curve.summary();
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark(
                "greatest, " + measure.length(s.maxGzMm()), s.maxGzAtDeg(), measure.inLengthUnit(s.maxGzMm())));
        double end = curve.equilibrium().heelDeg() + s.rangeDeg();
        if (!s.endsWithoutTrim() && end <= 180) {
            marks.add(new Mark("ends at " + Numbers.degrees(end), end, 0));
        }
        return new Panel(
                LIST, "lever " + state + ", " + measure.lengthUnit(), List.of(new Curve(state, lists, levers)), marks);
    }
}
