package trimwright.report.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * The range of an axis and its ticks.
 *
 * @param least value at the left or bottom end
 * @param greatest value at the other end, larger
 * @param step between ticks
 */
record PlotScale(double least, double greatest, double step) {

    /** A range that begins within this share of its end above zero begins at zero. */
    private static final double NEAR_ZERO = 0.4;

    /** What a range without extent is widened to, as a share of its value. */
    private static final double FLAT_SHARE = 0.1;

    private static final double ROUNDING = 1e-9;

    /** The x axis: as far as the curves reach, not further; in steps that divide a right angle where its title ends in °. */
    static PlotScale across(List<Plot.Panel> panels, int ticks) {
        Range range =
                Range.of(panels, Plot.Curve::x, panel -> panel.marks().stream().mapToDouble(Plot.Mark::x));
        double least = (range.greatest - range.least) / ticks;
        boolean degrees = panels.get(0).xTitle().endsWith("°");
        return new PlotScale(range.least, range.greatest, degrees ? Steps.degreesAtLeast(least) : Steps.atLeast(least));
    }

    /** The y axis: whole steps around the curves, from zero where they begin near it. */
    static PlotScale up(Plot.Panel panel, int ticks) {
        Range range =
                Range.of(List.of(panel), Plot.Curve::y, p -> p.marks().stream().mapToDouble(Plot.Mark::y));
        double least = range.least > 0 && range.least < NEAR_ZERO * range.greatest ? 0 : range.least;
        double greatest = range.greatest < 0 && range.greatest > NEAR_ZERO * range.least ? 0 : range.greatest;
        double step = Steps.atLeast((greatest - least) / ticks);
        return new PlotScale(
                Math.floor(least / step + ROUNDING) * step, Math.ceil(greatest / step - ROUNDING) * step, step);
    }

    /** The ticks, as multiples of the step that lie in the range. */
    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        double last = Math.floor(greatest / step + ROUNDING);
        for (double i = Math.ceil(least / step - ROUNDING); i <= last; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    double share(double value) {
        return (value - least) / (greatest - least);
    }

    private record Range(double least, double greatest) {

        static Range of(
                List<Plot.Panel> panels,
                Function<Plot.Curve, double[]> values,
                Function<Plot.Panel, DoubleStream> marks) {
            double least = Double.POSITIVE_INFINITY;
            double greatest = Double.NEGATIVE_INFINITY;
            for (Plot.Panel panel : panels) {
                DoubleStream curves = panel.curves().stream().map(values).flatMapToDouble(DoubleStream::of);
                for (double value : DoubleStream.concat(curves, marks.apply(panel))
                        .filter(v -> !Double.isNaN(v))
                        .toArray()) {
                    least = Math.min(least, value);
                    greatest = Math.max(greatest, value);
                }
            }
            if (least == greatest) {
                double half = least == 0 ? 1 : FLAT_SHARE * Math.abs(least);
                return new Range(least - half, greatest + half);
            }
            return new Range(least, greatest);
        }
    }
}
