package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import trimwright.plan.TradeOff;
import trimwright.plan.Wanted;
import trimwright.report.Numbers;
import trimwright.report.picture.Plot;
import trimwright.report.picture.Plot.Axis;
import trimwright.report.picture.Plot.Band;
import trimwright.report.picture.Plot.Curve;
import trimwright.report.picture.Plot.Mark;
import trimwright.report.picture.Plot.Panel;

/** What stability costs, as curves over the added mass. */
final class TradeOffPlot {

    private static final String ADDED = "lead and foam added, g";

    private final TradeOff curve;

    private TradeOffPlot(TradeOff curve) {
        this.curve = curve;
    }

    /** BG (of a boat that dives) and GM over the added mass, with the knee marked; nothing where no plan can be had. */
    static Optional<Plot> of(String name, TradeOff curve, Wanted wanted, boolean dives) {
        if (curve.points().isEmpty()) {
            return Optional.empty();
        }
        TradeOffPlot plot = new TradeOffPlot(curve);
        List<Panel> panels = new ArrayList<>();
        if (dives) {
            panels.add(plot.panel("B above G dived, mm", TradeOff.Point::bgMm, wanted.bgMm()));
        }
        panels.add(plot.panel("GM surfaced, mm", TradeOff.Point::gmMm, wanted.gmMm()));
        return Optional.of(new Plot(name + ": what stability costs", panels));
    }

    private Panel panel(String title, ToDoubleFunction<TradeOff.Point> value, double wanted) {
        double[] x = curve.points().stream().mapToDouble(TradeOff.Point::addedG).toArray();
        double[] y = curve.points().stream().mapToDouble(value).toArray();
        List<Mark> marks = new ArrayList<>();
        if (curve.knee() >= 0) {
            TradeOff.Point knee = curve.points().get(curve.knee());
            double at = value.applyAsDouble(knee);
            marks.add(new Mark("knee: " + Numbers.g(knee.addedG()) + ", " + Numbers.mm(at), knee.addedG(), at));
        }
        List<Band> bands = wanted > 0 ? List.of(new Band("less than wanted", Axis.Y, -1e6, wanted)) : List.of();
        return new Panel(ADDED, title, List.of(new Curve(title, x, y)), marks, bands);
    }
}
