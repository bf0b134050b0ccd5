package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.HullBuild.Infill;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.report.AttitudeWords;
import trimwright.report.FloatVerdict;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.statics.Flotation;

/** What printed parts take: plastic, infill, weight, and the water that creeps into an infill that is not sealed, with what it does to the trim. */
final class SheetPrints {

    private final Subject subject;
    private final Measure measure;

    SheetPrints(Subject subject) {
        this.subject = subject;
        measure = subject.measure();
    }

    /** Empty for a boat with nothing printed. */
    Optional<Sheet.Section> section() {
        List<Part> printed = subject.boat().parts().stream()
                .filter(p ->
                        p.build().filter(HullBuild.Printed.class::isInstance).isPresent())
                .toList();
        if (printed.isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(table(printed));
        blocks.addAll(soaking(printed));
        return Optional.of(new Sheet.Section("What the printed parts take", Sheet.Pages.RUNS_ON, blocks));
    }

    private Block table(List<Part> printed) {
        List<List<String>> rows = new ArrayList<>();
        double[] sums = new double[4];
        for (Part part : printed) {
            int pieces = part.mirror() ? 2 : 1;
            double enclosed = pieces * enclosedMm3(part);
            double hollow = pieces * hollowMm3(part);
            double mass = pieces
                    * subject.boat().withParts(List.of(part)).pieces().get(0).massG();
            double[] values = {enclosed, enclosed - hollow, mass, hollow};
            for (int i = 0; i < sums.length; i++) {
                sums[i] += values[i];
            }
            rows.add(row(part.id() + (part.mirror() ? " (both)" : ""), infill(part), values));
        }
        boolean several = rows.size() > 1;
        if (several) {
            rows.add(row("all together", "", sums));
        }
        return new Block.Grid(
                "prints",
                "Print estimate; weight as weighed, else from the plastic and its density",
                "llrrrr",
                List.of(
                        "part",
                        "infill",
                        subject.inVolume("mesh encloses"),
                        subject.inVolume("plastic"),
                        subject.inMass("weight"),
                        subject.inVolume("hollow")),
                rows,
                several);
    }

    private List<String> row(String what, String infill, double[] values) {
        return List.of(
                what,
                infill,
                measure.volumeNumber(values[0], 1),
                measure.volumeNumber(values[1], 1),
                measure.massNumber(values[2], 1),
                measure.volumeNumber(values[3], 1));
    }

    private String infill(Part part) {
        return infillOf(part)
                .map(i -> Numbers.plain(i.percent()) + " %, walls " + measure.briefLength(i.wallMm()) + " "
                        + measure.lengthUnit() + (i.floods() ? ", floods" : ""))
                .orElse("solid");
    }

    private List<Block> soaking(List<Part> printed) {
        double dry = printed.stream()
                .filter(p -> infillOf(p).filter(i -> !i.floods()).isPresent())
                .mapToDouble(p -> (p.mirror() ? 2 : 1) * hollowMm3(p))
                .sum();
        if (printed.stream().noneMatch(p -> infillOf(p).isPresent())) {
            return List.of(new Block.Words(
                    "They count as solid: nothing in them can take up water. State the infill in the boat file"
                            + " if they are not.",
                    false));
        }
        if (!(dry > 0)) {
            boolean floods = printed.stream()
                    .anyMatch(p -> infillOf(p).filter(Infill::floods).isPresent());
            return List.of(new Block.Words(
                    floods
                            ? "The infill counts as full of water already, so soaking changes nothing."
                            : "Walls of that thickness on both sides leave no room for infill: they count as solid.",
                    false));
        }
        double density = subject.condition().densityGPerMm3();
        Boat soaked = subject.boat()
                .withParts(subject.boat().parts().stream()
                        .map(SheetPrints::flooded)
                        .toList());
        Subject wet = Subject.of(soaked, measure);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words(
                "If the infill is not sealed it fills: up to " + measure.volume(dry, 1) + ", "
                        + measure.mass(density * dry)
                        + " of water. Count on it within an hour under water (common practice); above the water it stays dry. Then, wholly"
                        + " soaked:",
                false));
        blocks.add(compared(wet.afloat()));
        return blocks;
    }

    /** Her as she is beside her soaked. */
    private Block compared(Flotation wet) {
        Flotation dry = subject.afloat();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("afloat", FloatVerdict.of(dry, measure), FloatVerdict.of(wet, measure)));
        if (subject.dives()) {
            rows.add(List.of("dived, tanks full", dived(dry), dived(wet)));
        }
        return new Block.Grid("soaked", "Dry and soaked", "lll", List.of("", "dry", "soaked"), rows);
    }

    private String dived(Flotation flotation) {
        double left = flotation.submerged().residualG();
        return (left >= 0
                        ? measure.mass(left) + " of buoyancy left"
                        : "sinks: " + measure.mass(-left) + " too heavy, and does not come back by herself")
                + "; " + AttitudeWords.of(flotation.submerged().up());
    }

    private static Optional<Infill> infillOf(Part part) {
        return part.build().orElse(null) instanceof HullBuild.Printed printed ? printed.infill() : Optional.empty();
    }

    /** The part with water in all that is not plastic; other parts as they are. A print that was not weighed keeps the weight of its plastic. */
    private static Part flooded(Part part) {
        return infillOf(part)
                .map(i -> part.withBuild(new HullBuild.Printed(Optional.of(new Infill(i.wallMm(), i.percent(), true)))))
                .orElse(part);
    }

    private static double enclosedMm3(Part part) {
        return ((MeshShape) part.shape().orElseThrow()).solid().volumeMm3();
    }

    /** What of a piece is neither wall nor infill. */
    private double hollowMm3(Part part) {
        if (infillOf(part).isEmpty()) {
            return 0;
        }
        return enclosedMm3(part)
                - subject.boat()
                        .withParts(List.of(flooded(part)))
                        .pieces()
                        .get(0)
                        .body()
                        .orElseThrow()
                        .volumeMm3();
    }
}
