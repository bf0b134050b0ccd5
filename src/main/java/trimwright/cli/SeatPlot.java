package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.BarShape;
import trimwright.plan.CylinderSeat;
import trimwright.plan.CylinderSeat.Station;
import trimwright.report.Numbers;
import trimwright.report.picture.Plot;
import trimwright.report.picture.Plot.Axis;
import trimwright.report.picture.Plot.Band;
import trimwright.report.picture.Plot.Curve;
import trimwright.report.picture.Plot.Mark;
import trimwright.report.picture.Plot.Panel;

/** The room under and over each cylinder along the hull. */
final class SeatPlot {

    private static final String ALONG = "along the boat, x in mm";

    private SeatPlot() {}

    /** Two panels a cylinder: her inner surface in the plane of its axis, and how thick it could be. Nothing where its axis never runs inside. */
    static Optional<Plot> of(String name, List<CylinderSeat> seats) {
        List<Panel> panels = new ArrayList<>();
        for (CylinderSeat seat : seats) {
            if (!seat.profile().isEmpty()) {
                panels.add(heights(seat));
                panels.add(thickness(seat));
            }
        }
        return panels.isEmpty() ? Optional.empty() : Optional.of(new Plot(name + ": room for the cylinder", panels));
    }

    private static Panel heights(CylinderSeat seat) {
        BarShape bar = bar(seat);
        double[] x = seat.profile().stream().mapToDouble(Station::xMm).toArray();
        double[] bottom =
                seat.profile().stream().mapToDouble(s -> finite(s.bottomZMm())).toArray();
        double[] top =
                seat.profile().stream().mapToDouble(s -> finite(s.topZMm())).toArray();
        double axis = bar.fromMm().getZ();
        double radius = bar.diameterMm() / 2;
        double[] ends = {aft(bar), fore(bar), fore(bar), aft(bar), aft(bar)};
        double[] outline = {axis - radius, axis - radius, axis + radius, axis + radius, axis - radius};
        List<Mark> marks = new ArrayList<>();
        if (Double.isFinite(seat.clearanceMm())) {
            marks.add(new Mark(
                    "nearest, " + Numbers.mm(seat.clearanceMm()),
                    seat.touches().pointMm().getX(),
                    seat.touches().pointMm().getZ()));
        }
        seat.lowestAxisMm()
                .ifPresent(z -> marks.add(new Mark("lowest axis, " + Numbers.mm(z), 0.5 * (aft(bar) + fore(bar)), z)));
        return new Panel(
                ALONG,
                "height z, mm",
                List.of(
                        new Curve("inside of the hull, under", x, bottom),
                        new Curve("inside of the hull, over", x, top),
                        new Curve(seat.part().id(), ends, outline)),
                marks);
    }

    /** A place with nothing under or over it leaves a gap. */
    private static double finite(double z) {
        return Double.isFinite(z) ? z : Double.NaN;
    }

    private static Panel thickness(CylinderSeat seat) {
        BarShape bar = bar(seat);
        double[] x = seat.profile().stream().mapToDouble(Station::xMm).toArray();
        double[] fits =
                seat.profile().stream().mapToDouble(s -> finite(s.diameterMm())).toArray();
        double d = bar.diameterMm();
        List<Band> bands = new ArrayList<>();
        seat.longest().ifPresent(s -> bands.add(new Band("fits as thick as it is", Axis.X, s.fromXMm(), s.toXMm())));
        return new Panel(
                ALONG,
                "thickness, mm",
                List.of(
                        new Curve("greatest at this axis", x, fits),
                        new Curve(seat.part().id(), new double[] {aft(bar), fore(bar)}, new double[] {d, d})),
                List.of(),
                bands);
    }

    private static BarShape bar(CylinderSeat seat) {
        return (BarShape) seat.part().shape().orElseThrow();
    }

    private static double aft(BarShape bar) {
        return Math.min(bar.fromMm().getX(), bar.toMm().getX());
    }

    private static double fore(BarShape bar) {
        return Math.max(bar.fromMm().getX(), bar.toMm().getX());
    }
}
