package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.mesh.Bounds;
import trimwright.plan.BallastPlan;
import trimwright.report.Measure;
import trimwright.report.PlanWords;

/** The ballast plan on a sheet: what to cut and cast, with drawings of where each piece sits. */
final class SheetPlan {

    private final Boat boat;
    private final BallastPlan plan;
    private final Measure measure;

    SheetPlan(Boat boat, BallastPlan plan, Measure measure) {
        this.boat = boat;
        this.plan = plan;
        this.measure = measure;
    }

    Sheet.Section section() {
        List<Block> blocks = new ArrayList<>();
        if (!plan.feasible()) {
            blocks.add(new Block.Words(
                    "There is no plan: what is wanted cannot be met together. All other pages show her as she is.",
                    true));
            blocks.add(new Block.Points(
                    plan.misses().stream().map(m -> PlanWords.of(m, measure)).toList()));
            return new Sheet.Section("Ballast plan", Sheet.Pages.BEGINS_ONE, blocks);
        }
        List<String> changes = PlanWords.changes(boat, plan, measure);
        if (changes.isEmpty()) {
            blocks.add(new Block.Words("Nothing has to be added, taken out or moved: she is as wanted.", false));
            return new Sheet.Section("Ballast plan", Sheet.Pages.RUNS_ON, blocks);
        }
        blocks.add(new Block.Words(added(), false));
        blocks.add(new Block.Points(changes));
        if (!plan.pieces().isEmpty()) {
            PlaceDrawing drawing = new PlaceDrawing(plan.planned(), plan.pieces(), measure);
            blocks.add(new Block.Drawing(
                    drawing.svg(),
                    drawing.aspect(),
                    "Where each piece sits, from starboard and from above, with its distances from the stern, the keel and the centreline; the table"
                            + " below has the same numbers"));
            blocks.add(pieces());
        }
        return new Sheet.Section("Ballast plan", Sheet.Pages.BEGINS_ONE, blocks);
    }

    private String added() {
        if (plan.pieces().isEmpty()) {
            return "Nothing has to be added.";
        }
        List<String> what = new ArrayList<>();
        if (plan.addedLeadG() > 0) {
            what.add(measure.mass(plan.addedLeadG()) + " of lead");
        }
        if (plan.addedFoamMm3() > 0) {
            what.add(measure.volume(plan.addedFoamMm3(), 1) + " of foam");
        }
        return "Add " + String.join(" and ", what)
                + ". Fit it in steps, the lead loosely at first, and see where she floats.";
    }

    private Block pieces() {
        Bounds hull = PlanWords.hull(boat);
        List<List<String>> rows = new ArrayList<>();
        int number = 1;
        for (Part piece : plan.pieces()) {
            Bounds b = piece.shape().orElseThrow().bounds();
            double mass = boat.withParts(List.of(piece)).pieces().get(0).massG();
            rows.add(List.of(
                    String.valueOf(number++),
                    piece.kind() == Kind.FOAM ? "foam" : "lead",
                    measure.briefLength(b.sizeX()),
                    measure.briefLength(b.sizeY()),
                    measure.briefLength(b.sizeZ()),
                    measure.massNumber(mass, 1),
                    mm(b.minX() - hull.minX()),
                    mm(b.maxX() - hull.minX()),
                    mm(b.minY()),
                    mm(b.maxY()),
                    mm(b.minZ() - hull.minZ()),
                    mm(b.maxZ() - hull.minZ())));
        }
        String unit = " " + measure.lengthUnit();
        return new Block.Grid(
                "pieces",
                "Cut list: sizes in " + measure.lengthWord()
                        + "; ends from the stern, edges off the centreline (– to starboard), underside and top above the keel",
                "rlrrrrrrrrrr",
                List.of(
                        "no.",
                        "of",
                        "long" + unit,
                        "broad" + unit,
                        "high" + unit,
                        "weight " + measure.massUnit(),
                        "aft end" + unit,
                        "fore end" + unit,
                        "from y" + unit,
                        "to y" + unit,
                        "under" + unit,
                        "top" + unit),
                rows);
    }

    private String mm(double value) {
        return measure.lengthNumber(value, 1);
    }
}
