package trimwright.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Piece;
import trimwright.boat.Zone;
import trimwright.mesh.Bounds;
import trimwright.statics.Condition;

/** The JSON keys of a boat that was looked over. Described in docs/commands.md. */
final class BoatInspectionJson {

    private static final double MM2_PER_CM2 = 100;
    private static final double MM3_PER_CM3 = 1000;

    private BoatInspectionJson() {}

    static JsonObject of(BoatInspection inspection) {
        Collection<MeshReport> reports = inspection.meshes().values();
        JsonObject json = new JsonObject()
                .text("name", inspection.boat().name())
                .truth("sound", reports.stream().allMatch(r -> r.soundness().sound()))
                .truth("closed", reports.stream().allMatch(r -> r.soundness().closed()))
                .truth("oriented", reports.stream().allMatch(r -> r.soundness().oriented()))
                .truth("goodForBuild", inspection.good())
                .count(
                        "triangles",
                        reports.stream()
                                .mapToLong(r -> r.soundness().triangles())
                                .sum())
                .count(
                        "shells",
                        reports.stream()
                                .mapToLong(r -> r.soundness().shells().size())
                                .sum())
                .number(
                        "areaCm2",
                        reports.stream()
                                        .mapToDouble(r -> r.soundness().areaMm2())
                                        .sum()
                                / MM2_PER_CM2)
                .number("volumeCm3", volumeCm3(reports));
        inspection.bounds().ifPresent(b -> json.vector("sizeMm", size(b)));
        List<JsonObject> defects = new ArrayList<>();
        List<JsonObject> meshes = new ArrayList<>();
        for (Map.Entry<String, MeshReport> mesh : inspection.meshes().entrySet()) {
            JsonObject part = new JsonObject().text("part", mesh.getKey());
            meshes.add(mesh.getValue().json(part));
            mesh.getValue().defects().forEach(d -> defects.add(FindingJson.of(d).text("part", mesh.getKey())));
        }
        json.list("defects", defects).list("meshes", meshes);
        inspection.condition().ifPresent(condition -> {
            json.list(
                    "parts",
                    condition.pieces().stream().map(BoatInspectionJson::of).toList());
            json.object("totals", totals(condition));
        });
        return json.list(
                "zones",
                inspection.boat().zones().stream().map(BoatInspectionJson::of).toList());
    }

    /** Only where every mesh encloses a volume. */
    private static Optional<Double> volumeCm3(Collection<MeshReport> reports) {
        if (reports.stream().anyMatch(r -> r.soundness().volumeMm3().isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(reports.stream()
                        .mapToDouble(r -> r.soundness().volumeMm3().orElseThrow())
                        .sum()
                / MM3_PER_CM3);
    }

    private static JsonObject of(Piece piece) {
        JsonObject json = new JsonObject()
                .text("id", piece.part().id())
                .text("kind", piece.part().kind().word())
                .truth("twin", piece.twin())
                .number("massG", piece.massG())
                .text("massFrom", BoatInspectionText.massFrom(piece.part()))
                .vector("centreMm", piece.centreMm());
        piece.displacer()
                .ifPresent(d -> json.number("displacesCm3", d.volumeMm3() / MM3_PER_CM3)
                        .vector("displacesAtMm", d.centroidMm()));
        piece.part().inside().ifPresent(inside -> json.text("inside", inside));
        piece.tankRoom()
                .ifPresent(room -> json.number("holdsCm3", room.volumeMm3() / MM3_PER_CM3)
                        .number("fill", piece.part().fill()));
        return json;
    }

    private static JsonObject totals(Condition condition) {
        return new JsonObject()
                .number("massG", condition.massG())
                .number("dryMassG", condition.dryMassG())
                .vector("dryCentreOfGravityMm", BoatInspectionText.dryCentre(condition))
                .number("displacesCm3", condition.volumeMm3() / MM3_PER_CM3)
                .vector("displacesAtMm", condition.volumeCentroidMm())
                .number("tanksHoldCm3", condition.tankVolumeMm3() / MM3_PER_CM3)
                .number("reserveG", condition.reserveG());
    }

    private static JsonObject of(Zone zone) {
        Bounds b = zone.box().bounds();
        return new JsonObject()
                .text("id", zone.id())
                .text("for", zone.use().name().toLowerCase(Locale.ROOT))
                .vector("fromMm", new Vector3D(b.minX(), b.minY(), b.minZ()))
                .vector("toMm", new Vector3D(b.maxX(), b.maxY(), b.maxZ()))
                .number("boxCm3", b.sizeX() * b.sizeY() * b.sizeZ() / MM3_PER_CM3)
                .number("maxG", zone.maxG())
                .truth("mirror", zone.mirror());
    }

    private static Vector3D size(Bounds b) {
        return new Vector3D(b.sizeX(), b.sizeY(), b.sizeZ());
    }
}
