package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.finding.Finding;
import trimwright.report.FloatVerdict;
import trimwright.report.Numbers;
import trimwright.report.Wording;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;
import trimwright.statics.RightingCurve;

/** The tables of a sheet that tell what a boat is made of. */
final class SheetTables {

    private static final double MM3_PER_CM3 = 1000;

    private final Boat boat;
    private final Condition condition;

    SheetTables(Boat boat, Condition condition) {
        this.boat = boat;
        this.condition = condition;
    }

    /** Mass, centre, moments and displaced volume, piece by piece, and the sums. */
    List<Block> weights() {
        List<List<String>> rows = new ArrayList<>();
        double mass = condition.dryMassG();
        Vector3D moment = Vector3D.ZERO;
        double volume = 0;
        for (Piece piece : condition.pieces()) {
            double lifts =
                    piece.displacer().map(d -> d.volumeMm3() / MM3_PER_CM3).orElse(0.0);
            rows.add(row(piece.id(), piece.massG(), piece.centreMm(), lifts, mass));
            moment = moment.add(piece.massG(), piece.centreMm());
            volume += lifts;
        }
        if (mass > 0) {
            rows.add(row("all together", mass, moment.scalarMultiply(1 / mass), volume, mass));
        }
        return List.of(new Block.Grid(
                "Weights, tanks empty; moments about the origin; a prime is the twin of a mirrored part",
                "lrrrrrrrr",
                List.of("part", "g", "x mm", "y mm", "z mm", "g·m along", "g·m up", "lifts cm³", "share %"),
                rows));
    }

    private static List<String> row(String id, double massG, Vector3D centre, double liftsCm3, double wholeG) {
        return List.of(
                id,
                Numbers.fixed(massG, 1),
                Numbers.fixed(centre.getX(), 1),
                Numbers.fixed(centre.getY(), 1),
                Numbers.fixed(centre.getZ(), 1),
                Numbers.fixed(massG * centre.getX() / 1000, 1),
                Numbers.fixed(massG * centre.getZ() / 1000, 1),
                Numbers.fixed(liftsCm3, 1),
                Numbers.fixed(100 * massG / wholeG, 1));
    }

    /** What was weighed and what computed, and what was found about meshes and file. */
    List<Block> restsOn(List<Finding> findings) {
        List<String> weighed = new ArrayList<>();
        List<String> computed = new ArrayList<>();
        for (Part part : boat.parts()) {
            if (part.weighedMassG().isPresent()) {
                weighed.add(part.id());
            } else if (part.densityGPerCm3().isPresent()) {
                computed.add(
                        part.id() + " (" + Numbers.plain(part.densityGPerCm3().get()) + " g/cm³)");
            }
        }
        List<String> points = new ArrayList<>();
        points.add("Weighed: " + (weighed.isEmpty() ? "nothing" : String.join(", ", weighed)) + ".");
        points.add("Computed from a density, so weigh it: "
                + (computed.isEmpty() ? "nothing" : String.join(", ", computed)) + ".");
        findings.forEach(f -> points.add(Wording.of(f)));
        points.add("Still water, no way on. Figures are as good as what is stated above.");
        return List.of(new Block.Points(points));
    }

    /** Plastic, infill, and what soaking infill does; empty for a boat with nothing printed. */
    Optional<List<Block>> prints() {
        List<List<String>> rows = new ArrayList<>();
        List<Part> soaked = new ArrayList<>();
        double water = 0;
        for (Part part : boat.parts()) {
            HullBuild.Infill infill = part.build().orElse(null) instanceof HullBuild.Printed printed
                    ? printed.infill().orElse(null)
                    : null;
            boolean print = part.build().orElse(null) instanceof HullBuild.Printed;
            soaked.add(part);
            if (!print) {
                continue;
            }
            Piece piece = boat.withParts(List.of(part)).pieces().get(0);
            double outside = ((MeshShape) part.shape().orElseThrow()).solid().volumeMm3() / MM3_PER_CM3;
            double hollow = 0;
            if (infill != null) {
                Part flooding = part.withBuild(new HullBuild.Printed(
                        Optional.of(new HullBuild.Infill(infill.wallMm(), infill.percent(), true))));
                Piece wet = boat.withParts(List.of(flooding)).pieces().get(0);
                hollow = outside - wet.displacer().orElseThrow().volumeMm3() / MM3_PER_CM3;
                // The mass of a print that was not weighed stays that of its plastic.
                soaked.set(soaked.size() - 1, flooding);
                water += infill.floods() ? 0 : hollow;
            }
            rows.add(List.of(
                    part.id(),
                    Numbers.fixed(outside, 1),
                    infill == null
                            ? "solid"
                            : Numbers.plain(infill.percent()) + " %, walls " + Numbers.plain(infill.wallMm()) + " mm",
                    Numbers.fixed(piece.massG(), 1),
                    Numbers.fixed(hollow, 1)));
        }
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Grid(
                "Print estimate", "lrlrr", List.of("part", "printed cm³", "infill", "g", "hollow cm³"), rows));
        if (water > 0) {
            Flotation after =
                    Flotation.settling(Condition.of(boat.withParts(soaked)).withAllTanksAt(0));
            blocks.add(new Block.Words(
                    "If the infill is not sealed, up to " + Numbers.fixed(water, 0)
                            + " cm³ of water creep into it; after some time, an hour is enough for coarse prints: "
                            + FloatVerdict.of(after),
                    false));
        }
        return Optional.of(blocks);
    }

    static Block levers(RightingCurve surfaced, RightingCurve submerged) {
        Map<Double, RightingCurve.Row> dived = new TreeMap<>();
        submerged.rows().forEach(r -> dived.put(r.heelDeg(), r));
        List<List<String>> rows = new ArrayList<>();
        for (RightingCurve.Row row : surfaced.rows()) {
            if (row.heelDeg() >= 0 && row.heelDeg() % 15 == 0) {
                RightingCurve.Row under = dived.get(row.heelDeg());
                rows.add(List.of(
                        Numbers.plain(row.heelDeg()),
                        Numbers.fixed(row.gzMm(), 2),
                        Numbers.fixed(row.momentGmm(), 0),
                        under == null ? "–" : Numbers.fixed(under.gzMm(), 2),
                        under == null ? "–" : Numbers.fixed(under.momentGmm(), 0)));
            }
        }
        RightingCurve.Summary s = surfaced.summary();
        return new Block.Grid(
                "Righting lever to starboard; surfaced it reaches " + Numbers.degrees(s.rangeDeg())
                        + " from rest, at most " + Numbers.fixed(s.maxGzMm(), 2) + " mm at "
                        + Numbers.degrees(s.maxGzAtDeg()),
                "rrrrr",
                List.of("list °", "surfaced mm", "g·mm", "dived mm", "g·mm"),
                rows);
    }

    static List<String> cautions(Boat boat) {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "Prove every computed figure in shallow water, with a line on the boat, somebody watching, and a way to bring her up that needs no"
                        + " signal. A boat that stays down is fetched from the bank, never swum after.");
        if (boat.parts().stream()
                .anyMatch(p -> p.id().toLowerCase(Locale.ROOT).contains("batter") || p.kind() == Kind.CYLINDER)) {
            cautions.add(
                    "Lithium batteries burn when wet, crushed or badly charged: charge them outside the boat, watched, and follow the maker.");
        }
        if (boat.parts().stream().anyMatch(p -> p.kind() == Kind.BALLAST)) {
            cautions.add(
                    "Lead is poisonous, above all molten or as dust: wash your hands, keep it from children, leave casting to those who know how.");
        }
        if (boat.parts().stream().anyMatch(p -> p.isTank() || p.kind() == Kind.CYLINDER)) {
            cautions.add("What holds gas or pressure can burst: use only what is rated for it.");
        }
        cautions.add(
                "Open water: mind others, wildlife and local rules; where they or licensed practice say otherwise, they hold."
                        + " For models only, not for craft that carry people.");
        return cautions;
    }
}
