package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.mesh.Bounds;
import trimwright.plan.BallastPlan;
import trimwright.report.Numbers;
import trimwright.report.PlanWords;
import trimwright.statics.Condition;

/** The ballast plan on a sheet: what to cut and cast, with drawings of where each piece sits. */
final class SheetPlan {

    private final Boat boat;
    private final BallastPlan plan;

    SheetPlan(Boat boat, BallastPlan plan) {
        this.boat = boat;
        this.plan = plan;
    }

    Sheet.Section section() {
        List<Block> blocks = new ArrayList<>();
        if (!plan.feasible()) {
            blocks.add(new Block.Words("What is wanted cannot be met together:", false));
            blocks.add(
                    new Block.Points(plan.misses().stream().map(PlanWords::of).toList()));
            return new Sheet.Section("Ballast plan", true, blocks);
        }
        Condition condition = Condition.of(boat);
        double stern = condition.bottomMm(Vector3D.PLUS_I);
        double keel = condition.bottomMm(Vector3D.PLUS_K);
        blocks.add(new Block.Words(
                "Add " + Numbers.g(plan.addedLeadG()) + " of lead and " + Numbers.fixed(plan.addedFoamMm3() / 1000, 0)
                        + " cm³ of foam.",
                false));
        List<String> changes = PlanWords.changes(boat, plan);
        blocks.add(new Block.Points(changes.isEmpty() ? List.of("Nothing: she is as wanted.") : changes));
        if (!plan.pieces().isEmpty()) {
            PlaceDrawing drawing = new PlaceDrawing(plan.planned(), plan.pieces(), stern);
            blocks.add(new Block.Drawing(
                    drawing.svg(), drawing.aspect(), "Where each piece sits, from the side and from above"));
            blocks.add(pieces(stern, keel));
        }
        return new Sheet.Section("Ballast plan", true, blocks);
    }

    private Block pieces(double stern, double keel) {
        List<List<String>> rows = new ArrayList<>();
        int number = 1;
        for (Part piece : plan.pieces()) {
            Bounds b = piece.shape().orElseThrow().bounds();
            double mass = boat.withParts(List.of(piece)).pieces().get(0).massG();
            rows.add(List.of(
                    String.valueOf(number++),
                    piece.kind() == Kind.FOAM ? "foam" : "lead",
                    Numbers.brief(b.sizeX()) + " × " + Numbers.brief(b.sizeY()) + " × " + Numbers.brief(b.sizeZ()),
                    Numbers.fixed(mass, 1),
                    Numbers.fixed(b.minX() - stern, 1) + " to " + Numbers.fixed(b.maxX() - stern, 1),
                    Numbers.fixed(b.minY(), 1) + " to " + Numbers.fixed(b.maxY(), 1),
                    Numbers.fixed(b.minZ() - keel, 1) + " to " + Numbers.fixed(b.maxZ() - keel, 1)));
        }
        return new Block.Grid(
                "The pieces: length × breadth × height, and where they sit",
                "rllrlll",
                List.of("no.", "", "mm", "g", "from stern mm", "to port mm", "above keel mm"),
                rows);
    }
}
