package trimwright.cli;

import java.util.Locale;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Zone;
import trimwright.mesh.Bounds;
import trimwright.report.Numbers;
import trimwright.statics.Condition;

/** A boat that was looked over, as text. */
final class BoatInspectionText {

    private BoatInspectionText() {}

    static void tell(BoatInspection inspection, Page page) {
        Boat boat = inspection.boat();
        page.line(boat.name()).line(FloatText.loading(boat)).gap();
        page.paragraph(verdict(inspection));
        for (Map.Entry<String, MeshReport> mesh : inspection.meshes().entrySet()) {
            page.heading("Mesh of part \"" + mesh.getKey() + "\"");
            MeshText.tell(mesh.getValue(), page);
        }
        inspection.condition().ifPresent(condition -> {
            page.heading("Parts").table(parts(condition));
            page.paragraph(
                    "Mass: w weighed, c computed. Centre: of mass. Displaces: when under water. A twin at -y has a row of"
                            + " its own.");
            page.heading("All together").table(totals(condition));
        });
        if (!boat.zones().isEmpty()) {
            page.heading("Zones for lead and foam").table(zones(boat));
        }
    }

    private static String verdict(BoatInspection inspection) {
        if (inspection.condition().isEmpty()) {
            return "Not fit to be computed: a mesh encloses no volume where it should, see below.";
        }
        if (!inspection.good()) {
            return "Her meshes have faults that change what she displaces, see below.";
        }
        return inspection.findings().isEmpty()
                ? "Fit to be computed, nothing wrong found."
                : "Fit to be computed; see below what to look at.";
    }

    private static TextTable parts(Condition condition) {
        TextTable table = TextTable.of("llrlrrrrl")
                .head("Part", "Kind", "Mass", "", "Centre x", "y", "z", "Displaces", "Inside")
                .head("", "", "g", "", "mm", "mm", "mm", "cm³", "");
        for (Piece piece : condition.pieces()) {
            Part part = piece.part();
            table.row(
                    part.id() + (piece.twin() ? " (twin)" : ""),
                    part.kind().word(),
                    massFrom(part).equals("none") ? "-" : Numbers.fixed(piece.massG(), 1),
                    massFrom(part).equals("none") ? "" : massFrom(part).substring(0, 1),
                    Numbers.fixed(piece.centreMm().getX(), 1),
                    Numbers.fixed(piece.centreMm().getY(), 1),
                    Numbers.fixed(piece.centreMm().getZ(), 1),
                    piece.displacer()
                            .map(d -> Numbers.fixed(d.volumeMm3() / 1000, 1))
                            .orElse("-"),
                    part.inside().orElse(""));
        }
        return table;
    }

    /** How a part got its mass: weighed, computed, or none (a tank weighs nothing itself). */
    static String massFrom(Part part) {
        if (part.weighedMassG().isPresent()) {
            return "weighed";
        }
        return part.isTank() ? "none" : "computed";
    }

    private static TextTable totals(Condition condition) {
        TextTable table = TextTable.of("lrl");
        table.row(
                "Mass without tank water",
                Numbers.fixed(condition.dryMassG(), 1),
                "g, centre at " + point(dryCentre(condition)));
        table.row("Mass with tank water", Numbers.fixed(condition.massG(), 1), "g");
        table.row(
                "Can displace",
                Numbers.fixed(condition.volumeMm3() / 1000, 1),
                "cm³, centre at " + point(condition.volumeCentroidMm()));
        table.row("Tanks hold", Numbers.fixed(condition.tankVolumeMm3() / 1000, 1), "cm³");
        table.row(
                "Reserve", Numbers.fixed(condition.reserveG(), 1), "g that she could still carry before all is under");
        return table;
    }

    /** Centre of gravity without tank water. */
    static Vector3D dryCentre(Condition condition) {
        Vector3D moment = Vector3D.ZERO;
        for (Piece piece : condition.pieces()) {
            moment = moment.add(piece.massG() / condition.dryMassG(), piece.centreMm());
        }
        return moment;
    }

    private static TextTable zones(Boat boat) {
        TextTable table = TextTable.of("lllllrl")
                .head("Zone", "For", "x", "y", "z", "At most", "")
                .head("", "", "mm", "mm", "mm", "g", "");
        for (Zone zone : boat.zones()) {
            Bounds b = zone.box().bounds();
            table.row(
                    zone.id(),
                    zone.use().name().toLowerCase(Locale.ROOT),
                    MeshText.range(b.minX(), b.maxX()),
                    MeshText.range(b.minY(), b.maxY()),
                    MeshText.range(b.minZ(), b.maxZ()),
                    zone.maxG().map(Numbers::plain).orElse("-"),
                    zone.mirror() ? "and its twin" : "");
        }
        return table;
    }

    private static String point(Vector3D p) {
        return Numbers.point(p.getX(), p.getY(), p.getZ());
    }
}
