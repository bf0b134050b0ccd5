package trimwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.report.AttitudeWords;
import trimwright.report.DiveWords;
import trimwright.report.Numbers;
import trimwright.report.WaterWords;
import trimwright.statics.Course;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.Equilibrium;
import trimwright.statics.PaintedOffset;
import trimwright.statics.SurfacingRun;

/** A dive as text: whether she comes back, how she lies and stands on the way, and then what else it rests on. */
final class DiveText {

    private DiveText() {}

    static void tell(DiveAnswer answer, Page page) {
        DiveRun run = answer.run();
        DiveStep first = run.course().steps().get(0);
        Boat boat = first.flotation().condition().boat();
        page.line(boat.name())
                .line(WaterWords.of(boat.water()) + "; tanks: " + tanks(boat))
                .gap();
        page.paragraph(DiveWords.verdict(run));
        DiveWords.leastFirm(run.course()).ifPresent(page::paragraph);
        if (first.settled().isPresent()) {
            lies(page, run.course(), "How she lies on the way down");
            stands(page, run.course(), "How firmly she stands");
        }
        page.heading("Dived, everything under water, tanks full")
                .table(FloatText.dived(first.flotation().submerged()));
        answer.up().ifPresent(up -> comingUp(page, up));
        DiveNotes.tell(answer, page);
    }

    private static String tanks(Boat boat) {
        return boat.parts().stream().filter(Part::isTank).map(Part::id).collect(Collectors.joining(", "));
    }

    private static void comingUp(Page page, SurfacingRun up) {
        page.heading("Coming up").paragraph(DiveWords.comingUp(up));
        lies(page, up.course(), "How she lies on the way up");
    }

    private static void lies(Page page, Course course, String title) {
        boolean several = severalTanks(course);
        boolean holds = course.steps().stream().anyMatch(s -> s.heldWaterG() > 0.05);
        boolean painted = course.steps().stream()
                .anyMatch(s -> s.flotation().fromPaintedLine().isPresent());
        TextTable table = TextTable.of("rrrrrrllrl");
        String line = painted ? "off line" : "";
        table.head("full", holds ? "held" : "weight", "draught", "", line, "", "list", "trim", "stands out", "");
        table.head(
                "%",
                "g",
                "bow mm",
                "stern",
                painted ? "bow mm" : "",
                painted ? "stern" : "",
                "degrees",
                "degrees",
                "mm",
                "");
        for (DiveStep step : course.steps()) {
            step.settled()
                    .ifPresentOrElse(
                            rest -> lies(table, step, rest, holds),
                            () -> table.row(
                                    full(step),
                                    Numbers.fixed(step.flotation().condition().massG(), 0),
                                    "sinks"));
        }
        page.heading(title).table(table);
        if (several) {
            page.paragraph("Full is the water in all tanks as a share of their volume; with --json each tank is told.");
        }
    }

    private static boolean severalTanks(Course course) {
        return course.steps().get(0).fillById().size() > 1;
    }

    private static void lies(TextTable table, DiveStep step, Equilibrium rest, boolean holds) {
        Optional<PaintedOffset> off = step.flotation().fromPaintedLine();
        table.row(
                full(step),
                holds
                        ? Numbers.fixed(step.heldWaterG(), 0)
                        : Numbers.fixed(step.flotation().condition().massG(), 0),
                step.draughts().map(d -> Numbers.fixed(d.bowMm(), 1)).orElse("–"),
                step.draughts().map(d -> Numbers.fixed(d.sternMm(), 1)).orElse("–"),
                off.map(o -> Numbers.fixed(o.bowMm(), 1)).orElse(""),
                off.map(o -> Numbers.fixed(o.sternMm(), 1)).orElse(""),
                turned(rest.heelDeg(), "starboard", "port"),
                turned(rest.trimDeg(), "bow up", "bow down"),
                step.standing().isEmpty()
                        ? ""
                        : Numbers.fixed(step.standing().get(0).aboveMm(), 1),
                step.standing().isEmpty() ? "" : step.standing().get(0).part());
    }

    private static void stands(Page page, Course course, String title) {
        TextTable table = TextTable.of("rrrrrr");
        table.head("full", "GM upright", "GM as she lies", "GM along", "B above G", "waterplane");
        table.head("%", "mm", "mm", "mm", "mm", "cm²");
        for (DiveStep step : course.steps()) {
            step.settled()
                    .ifPresent(rest -> table.row(
                            full(step),
                            step.uprightGmMm().map(gm -> Numbers.fixed(gm, 1)).orElse("–"),
                            Numbers.fixed(rest.gmTransverseMm(), 1),
                            Numbers.fixed(rest.gmLongitudinalMm(), 0),
                            Numbers.fixed(rest.bgMm(), 1),
                            Numbers.fixed(rest.sums().waterplaneMm2() / 100, 1)));
        }
        page.heading(title).table(table);
        List<Optional<String>> hard = List.of(
                course.largestTrim()
                        .filter(s -> !Numbers.roundsToZero(s.settled().get().trimDeg(), 1))
                        .map(s -> "Largest trim: "
                                + AttitudeWords.trim(s.settled().get().trimDeg()) + " at " + full(s) + " %."),
                course.softestInTrim()
                        .map(s -> "Softest along: GM "
                                + Numbers.mm(s.settled().get().gmLongitudinalMm()) + " at " + full(s) + " %."));
        page.gap();
        hard.forEach(h -> h.ifPresent(page::paragraph));
    }

    private static String full(DiveStep step) {
        return Numbers.fixed(100 * step.fill(), 0);
    }

    private static String turned(double deg, String positive, String negative) {
        return Numbers.roundsToZero(deg, 1)
                ? "0.0"
                : Numbers.fixed(Math.abs(deg), 1) + " " + (deg > 0 ? positive : negative);
    }
}
