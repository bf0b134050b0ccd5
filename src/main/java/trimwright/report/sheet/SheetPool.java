package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.Tolerance;
import trimwright.report.Numbers;
import trimwright.report.PoolWords;

/** What has to do with the pool: how far she may be off, what was read, and what to read. */
final class SheetPool {

    private static final int PARTS_TOLD = 6;

    private SheetPool() {}

    static List<Block> of(Tolerance t) {
        List<List<String>> rows = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            Tolerance.Spread s = t.spreads().get(figure);
            if (s != null) {
                rows.add(List.of(
                        PoolWords.of(figure),
                        Numbers.fixed(s.asGiven(), 1),
                        "± " + Numbers.fixed(s.error(), 1),
                        Numbers.fixed(s.low(), 1) + " to " + Numbers.fixed(s.high(), 1),
                        figure.unit()));
            }
        }
        List<Block> blocks = new ArrayList<>();
        t.inHand().ifPresent(i -> blocks.add(new Block.Words(PoolWords.of(i), false)));
        blocks.add(new Block.Grid(
                "From " + t.draws() + " boats drawn from the margins of her parts; 90 of 100 lie between",
                "lrrll",
                List.of("", "as given", "", "between", ""),
                rows));
        return blocks;
    }

    static List<Block> of(PoolEstimate estimate) {
        List<List<String>> figures = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            PoolEstimate.Known k = estimate.figures().get(figure);
            if (k != null) {
                figures.add(List.of(
                        PoolWords.of(figure),
                        Numbers.fixed(k.before(), 1) + " ± " + Numbers.fixed(k.beforeError(), 1),
                        Numbers.fixed(k.after(), 1) + " ± " + Numbers.fixed(k.afterError(), 1),
                        figure.unit()));
            }
        }
        List<List<String>> parts = new ArrayList<>();
        estimate.parts().stream()
                .limit(PARTS_TOLD)
                .forEach(p -> parts.add(List.of(
                        p.part(),
                        Numbers.fixed(p.massG(), 1) + " ± " + Numbers.fixed(p.massErrorG(), 1),
                        Numbers.fixed(p.moveMm().getX(), 1),
                        Numbers.fixed(p.moveMm().getY(), 1),
                        Numbers.fixed(p.moveMm().getZ(), 1))));
        List<List<String>> readings = new ArrayList<>();
        estimate.sightings()
                .forEach(c -> readings.add(List.of(
                        c.reading(),
                        PoolWords.of(c.sighting().quantity()),
                        Numbers.fixed(c.sighting().value(), 1) + " ± "
                                + Numbers.fixed(c.sighting().error(), 1)
                                + c.sighting().quantity().unit(),
                        c.after().map(v -> Numbers.fixed(v, 1)).orElse("–"))));
        return List.of(
                new Block.Grid("What is known of her", "lrrl", List.of("", "from the file", "now", ""), figures),
                new Block.Grid(
                        "What is most likely off",
                        "lrrrr",
                        List.of("part", "g more", "ahead mm", "to port mm", "up mm"),
                        parts),
                new Block.Grid("The readings", "llrr", List.of("", "", "seen", "corrected boat"), readings));
    }

    /** Lines to write readings on, in the order of a file of readings. */
    static List<Block> checklist(Boat boat) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Points(List.of(
                "Line on the boat, somebody watching, batteries sealed in, shallow water.",
                "Wipe off air bubbles, let her come to rest, read twice.")));
        boolean line = boat.paintedLine().isPresent();
        boolean tank = boat.parts().stream().anyMatch(Part::isTank);
        blocks.add(new Block.Words("Surfaced, tanks empty", true));
        blocks.add(new Block.Blank("Water temperature", "°C"));
        heights(blocks, line);
        blocks.add(new Block.Blank("List, and to which side", "°"));
        blocks.add(new Block.Blank("With a known weight moved to starboard: weight, way", "g, mm"));
        blocks.add(new Block.Blank("List then, and to which side", "°"));
        blocks.add(new Block.Blank("The same moved to port: list, and to which side", "°"));
        blocks.add(new Block.Blank("Ten rolls, over and back, take", "s"));
        if (tank) {
            blocks.add(new Block.Words("Dived, tanks full", true));
            heights(blocks, line);
            blocks.add(new Block.Blank("List, and to which side", "°"));
            blocks.add(new Block.Blank("Trim, bow up or down", "°"));
            blocks.add(new Block.Blank("Weight laid on her to take her under", "g"));
            blocks.add(new Block.Blank("Hanging from a scale then, wholly under water", "g"));
        }
        blocks.add(new Block.Blank("What was added, moved or taken out", ""));
        blocks.add(new Block.Blank("Date and who", ""));
        return blocks;
    }

    private static void heights(List<Block> blocks, boolean line) {
        String where = line ? "Water above (+) or below (–) the paint" : "Height of a marked point above the water";
        blocks.add(new Block.Blank(where + ", bow", "mm"));
        blocks.add(new Block.Blank(where + ", stern", "mm"));
    }
}
