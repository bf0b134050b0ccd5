package trimwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import trimwright.report.picture.Plot;
import trimwright.report.picture.Plot.Curve;
import trimwright.report.picture.Plot.Mark;
import trimwright.report.picture.Plot.Panel;
import trimwright.statics.Course;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.SurfacingRun;
import trimwright.statics.UnstableRange;

/** The curves of a dive over the fill of the tanks. */
public final class DivePlot {

    private static final String FILL = "water in the tanks, %";

    private final Course course;
    private final Optional<Course> up;
    private final Measure measure;

    private DivePlot(Course course, Optional<Course> up, Measure measure) {
        this.course = course;
        this.up = up;
        this.measure = measure;
    }

    /**
     * @param up the way up with water inside, where it was asked for
     * @return empty when she floats at no step
     */
    public static Optional<Plot> of(String name, DiveRun run, Optional<SurfacingRun> up) {
        return of(name + ": the dive", run, up, Measure.METRIC);
    }

    /**
     * The same with a title of its own, in other units.
     *
     * @param up the way up with water inside, where it was asked for
     * @return empty when she floats at no step
     */
    public static Optional<Plot> of(String title, DiveRun run, Optional<SurfacingRun> up, Measure measure) {
        boolean floats = run.course().steps().stream().anyMatch(s -> s.settled().isPresent());
        return floats
                ? Optional.of(new DivePlot(run.course(), up.map(SurfacingRun::course), measure).plot(title))
                : Optional.empty();
    }

    private Plot plot(String title) {
        List<Mark> least = new ArrayList<>();
        course.critical()
                .ifPresent(c -> least.add(new Mark(
                        "least firm, " + measure.length(c.gmMm()), 100 * c.fill(), measure.inLengthUnit(c.gmMm()))));
        Panel firm = new Panel(FILL, measure.lengthUnit(), firmness(), least, bands());
        Panel turned = new Panel(
                FILL,
                "degrees",
                List.of(
                        curve("list, + to starboard", s -> s.settled().map(e -> e.heelDeg())),
                        curve("trim, + bow up", s -> s.settled().map(e -> e.trimDeg()))),
                List.of());
        Panel out = new Panel(
                FILL,
                "highest point above water, " + measure.lengthUnit(),
                List.of(curve(
                        "stands out",
                        s -> s.standing().stream().findFirst().map(o -> measure.inLengthUnit(o.aboveMm())))),
                List.of());
        List<Panel> panels = new ArrayList<>(List.of(firm, turned));
        if (course.steps().stream().anyMatch(s -> !s.standing().isEmpty())) {
            panels.add(out);
        }
        return new Plot(title, panels);
    }

    private List<Curve> firmness() {
        List<Curve> curves = new ArrayList<>();
        curves.add(curve("GM upright", s -> s.uprightGmMm().map(measure::inLengthUnit)));
        curves.add(curve("B above G", s -> s.settled().map(e -> measure.inLengthUnit(e.bgMm()))));
        up.ifPresent(u -> curves.add(
                curve("GM coming up with water inside", u, s -> s.uprightGmMm().map(measure::inLengthUnit))));
        return curves;
    }

    private List<Plot.Band> bands() {
        List<Plot.Band> bands = new ArrayList<>();
        for (UnstableRange range : course.unstable()) {
            double from = 100 * Math.min(range.fromFill(), range.toFill());
            double to = 100 * Math.max(range.fromFill(), range.toFill());
            if (from < to) {
                bands.add(new Plot.Band("lies over", Plot.Axis.X, from, to));
            }
        }
        return bands;
    }

    private Curve curve(String name, Function<DiveStep, Optional<Double>> value) {
        return curve(name, course, value);
    }

    private static Curve curve(String name, Course along, Function<DiveStep, Optional<Double>> value) {
        double[] x = along.steps().stream().mapToDouble(s -> 100 * s.fill()).toArray();
        double[] y = along.steps().stream()
                .mapToDouble(s -> value.apply(s).orElse(Double.NaN))
                .toArray();
        return new Curve(name, x, y);
    }
}
