package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.pool.Quantity;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.Tolerance;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.PoolWords;
import trimwright.report.Wording;

/** What has to do with the pool: how far she may be off, what was read, and what to read. */
final class SheetPool {

    private static final int PARTS_TOLD = 6;
    private static final int CAUSES_TOLD = 4;
    private static final int NEXT_TOLD = 3;

    private final Subject subject;
    private final Measure measure;

    SheetPool(Subject subject) {
        this.subject = subject;
        measure = subject.measure();
    }

    /** A figure in the units of the sheet, as finely as so many decimals of a mm or g tell it. */
    static String number(Figure figure, double value, int decimals, Measure measure) {
        return switch (figure.unit()) {
            case "mm" -> measure.lengthNumber(value, decimals);
            case "g" -> measure.massNumber(value, decimals);
            default -> Numbers.fixed(value, decimals);
        };
    }

    private String number(Figure figure, double value) {
        return number(figure, value, 1, measure);
    }

    private String unit(Figure figure) {
        return switch (figure.unit()) {
            case "mm" -> measure.lengthUnit();
            case "g" -> measure.massUnit();
            default -> figure.unit();
        };
    }

    List<Block> of(Tolerance t) {
        List<List<String>> rows = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            Tolerance.Spread s = t.spreads().get(figure);
            if (s != null) {
                rows.add(List.of(
                        PoolWords.of(figure),
                        unit(figure),
                        number(figure, s.asGiven()),
                        number(figure, s.error()),
                        number(figure, s.low()),
                        number(figure, s.high())));
            }
        }
        List<String> points = new ArrayList<>();
        t.within()
                .ifPresent(share -> points.add("Of 100 such boats " + Numbers.fixed(100 * share, 0)
                        + " would meet everything that is wanted without a change."));
        if (t.sinks() > 0) {
            points.add("Of 100 such boats " + Numbers.fixed(100 * t.sinks(), 0) + " would sink.");
        }
        List<String> causes = t.causes().stream()
                .limit(CAUSES_TOLD)
                .filter(c -> c.share() >= 0.005)
                .map(c -> c.part() + " " + Numbers.fixed(100 * c.share(), 0) + " %")
                .toList();
        if (!causes.isEmpty()) {
            points.add(
                    "Most of the scatter comes from " + String.join(", ", causes) + ": weigh and place these first.");
        }
        t.inHand().ifPresent(i -> points.add(PoolWords.of(i, measure)));
        List<Block> blocks = new ArrayList<>();
        if (!points.isEmpty()) {
            blocks.add(new Block.Points(points));
        }
        blocks.add(new Block.Grid(
                "tolerance",
                "From " + t.draws() + " boats drawn from the margins of her parts; 90 of 100 lie between low and high",
                "llrrrr",
                List.of("", "", "as given", "may be off by ±", "low", "high"),
                rows));
        return blocks;
    }

    List<Block> of(PoolEstimate estimate) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(known(estimate));
        blocks.add(parts(estimate));
        blocks.add(readings(estimate));
        List<String> points = new ArrayList<>();
        estimate.inclining()
                .ifPresent(i -> points.add("The lists under moved weights by themselves give a GM of "
                        + measure.length(i.gmMm()) + " ± " + measure.length(i.gmErrorMm()) + "."));
        estimate.findings().forEach(f -> points.add(Wording.of(f, measure)));
        estimate.next().stream()
                .limit(NEXT_TOLD)
                .forEach(n -> points.add("To read next, the best for its trouble first: " + PoolWords.of(n, measure)
                        + " (settles " + Numbers.fixed(100 * n.gain(), 0) + " % of what is open)."));
        if (!points.isEmpty()) {
            blocks.add(new Block.Points(points));
        }
        return blocks;
    }

    private Block known(PoolEstimate estimate) {
        List<List<String>> rows = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            PoolEstimate.Known k = estimate.figures().get(figure);
            if (k != null) {
                rows.add(List.of(
                        PoolWords.of(figure),
                        unit(figure),
                        number(figure, k.before()),
                        number(figure, k.beforeError()),
                        number(figure, k.after()),
                        number(figure, k.afterError())));
            }
        }
        return new Block.Grid(
                "known",
                "What is known of her",
                "llrrrr",
                List.of("", "", "from the file", "±", "with the readings", "±"),
                rows);
    }

    private Block parts(PoolEstimate estimate) {
        List<List<String>> rows = new ArrayList<>();
        estimate.parts().stream()
                .limit(PARTS_TOLD)
                .forEach(p -> rows.add(List.of(
                        p.part(),
                        measure.massNumber(p.massG(), 1),
                        measure.massNumber(p.massErrorG(), 1),
                        measure.lengthNumber(p.moveMm().getX(), 1),
                        measure.lengthNumber(p.moveMm().getY(), 1),
                        measure.lengthNumber(p.moveMm().getZ(), 1))));
        return new Block.Grid(
                "corrections",
                "Corrections: what is most likely off, per piece",
                "lrrrrr",
                List.of(
                        "part",
                        subject.inMass("heavier by"),
                        subject.inMass("±"),
                        subject.inLength("ahead by"),
                        subject.inLength("to port by"),
                        subject.inLength("up by")),
                rows);
    }

    private Block readings(PoolEstimate estimate) {
        List<List<String>> rows = new ArrayList<>();
        for (PoolEstimate.Compared c : estimate.sightings()) {
            Quantity quantity = c.sighting().quantity();
            rows.add(List.of(
                    c.reading(),
                    PoolWords.of(quantity),
                    unit(quantity),
                    number(quantity, c.sighting().value()),
                    number(quantity, c.sighting().error()),
                    c.after().map(v -> number(quantity, v)).orElse("–")));
        }
        return new Block.Grid(
                "readings",
                "The readings, and what the corrected boat would show",
                "lllrrr",
                List.of("reading", "what", "", "read", "±", "corrected boat"),
                rows);
    }

    private String number(Quantity quantity, double value) {
        return switch (quantity.unit().strip()) {
            case "mm" -> measure.lengthNumber(value, 1);
            case "g" -> measure.massNumber(value, 1);
            default -> Numbers.fixed(value, 1);
        };
    }

    private String unit(Quantity quantity) {
        return switch (quantity.unit().strip()) {
            case "mm" -> measure.lengthUnit();
            case "g" -> measure.massUnit();
            default -> quantity.unit().strip();
        };
    }

    /** Lines to write readings on, in the order of a file of readings. */
    List<Block> checklist() {
        List<Block> blocks = new ArrayList<>();
        List<String> before = new ArrayList<>();
        if (subject.afloat().settled().isEmpty()) {
            before.add("She sinks as she is: mend that first, there is nothing to read before.");
        }
        before.add((subject.dives() ? "Line on the boat, somebody" : "Somebody")
                + " watching, " + (SheetCautions.mayHaveABattery(subject.boat()) ? "batteries sealed in, " : "")
                + "shallow water. Wipe off air bubbles, let her come to rest, read twice.");
        before.add(
                "Each heading is one reading of a file for pool, in the order in which that takes them; each line is one value of it,"
                        + " under the name in brackets. The file takes mm, g and degrees"
                        + (measure == Measure.METRIC
                                ? "."
                                : ": multiply inches by " + Numbers.plain(measure.typedMm(1)) + " and ounces by "
                                        + Numbers.fixed(measure.typedG(1), 2) + "."));
        blocks.add(new Block.Points(before));
        blocks.add(new Block.Blank("Day, place, who", "(date, name)"));
        blocks.add(new Block.Blank("Water: temperature, and salt if any", "°C, g/kg (water)"));
        blocks.add(new Block.Heading(subject.dives() ? "Surfaced, tanks empty" : "Afloat"));
        heights(blocks);
        blocks.add(list());
        blocks.add(new Block.Heading("A known weight aboard moved to starboard"));
        moved(blocks);
        blocks.add(new Block.Heading("The same weight moved to port"));
        moved(blocks);
        if (subject.dives()) {
            blocks.add(new Block.Heading("Dived, tanks full"));
            heights(blocks);
            blocks.add(list());
            blocks.add(new Block.Blank("Trim, bow up (+) or down (–)", "° (trimDeg)"));
            blocks.add(new Block.Heading("Hanging from a scale, wholly under water, tanks full"));
            blocks.add(new Block.Blank(
                    "Weight laid on her to take her under, and x, y, z of its place", twoUnits("added")));
            blocks.add(new Block.Blank("The scale shows", measure.massUnit() + " (hangingG)"));
        }
        blocks.add(new Block.Heading("Rolling; last, since the water that moves with her blurs it"));
        blocks.add(new Block.Blank("Ten rolls, over and back; a tenth of it", "s (rollS)"));
        blocks.add(new Block.Blank("What was changed on the day, and where", ""));
        return blocks;
    }

    private void moved(List<Block> blocks) {
        blocks.add(new Block.Blank("Its weight, and how far it was moved", twoUnits("moved")));
        blocks.add(list());
    }

    private static Block list() {
        return new Block.Blank("List, to starboard (+) or to port (–)", "° (heelDeg)");
    }

    private String twoUnits(String key) {
        return measure.massUnit() + ", " + measure.lengthUnit() + " (" + key + ")";
    }

    private void heights(List<Block> blocks) {
        boolean line = subject.boat().paintedLine().isPresent();
        String where =
                line ? "Water above (+) or below (–) the paint" : "A marked point of known x, y, z above the water";
        String unit = measure.lengthUnit() + (line ? " (aboveMm)" : " (freeboardMm)");
        blocks.add(new Block.Blank(where + ", bow", unit));
        blocks.add(new Block.Blank(where + ", stern", unit));
    }
}
