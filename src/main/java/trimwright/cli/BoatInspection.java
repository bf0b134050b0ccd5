package trimwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import trimwright.boat.Boat;
import trimwright.boat.FitCheck;
import trimwright.boat.HullBuild;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.file.ImportedMesh;
import trimwright.file.LoadedBoat;
import trimwright.finding.Finding;
import trimwright.mesh.Bounds;
import trimwright.mesh.MeshUse;
import trimwright.statics.Condition;

/**
 * A boat looked over: her meshes, her parts, what does not fit.
 *
 * @param boat the boat
 * @param meshes the mesh of each part that has one, by its id
 * @param condition the boat with her masses; empty where a mesh does not allow to compute them
 * @param findings what is worth telling about file, meshes and fit
 */
record BoatInspection(Boat boat, Map<String, MeshReport> meshes, Optional<Condition> condition, List<Finding> findings)
        implements Answer {

    /**
     * @param loaded as read for a report
     * @param boat the same boat in the water and with the fills asked for
     */
    static BoatInspection of(LoadedBoat loaded, Boat boat) {
        Map<String, MeshReport> meshes = new LinkedHashMap<>();
        for (Part part : boat.parts()) {
            loaded.mesh(part.id()).ifPresent(mesh -> meshes.put(part.id(), report(part, mesh)));
        }
        Stream<Finding> unfit = loaded.hasErrors() ? Stream.empty() : FitCheck.of(boat).stream();
        return new BoatInspection(
                boat,
                meshes,
                loaded.hasErrors() ? Optional.empty() : Optional.of(Condition.of(boat)),
                Stream.concat(loaded.findings().stream(), unfit).toList());
    }

    private static MeshReport report(Part part, ImportedMesh mesh) {
        String unit = MeshReport.unit(mesh.shape().meshImport().unit(), mesh.fileUnit());
        return MeshReport.of(mesh.shape().mesh(), mesh.format(), unit, mesh.soundness(), Optional.of(use(part)));
    }

    private static MeshUse use(Part part) {
        HullBuild build = part.build().orElse(null);
        if (build instanceof HullBuild.Sealed) {
            return MeshUse.SEALED;
        }
        if (build instanceof HullBuild.Skin) {
            return MeshUse.SKIN;
        }
        return build instanceof HullBuild.Printed ? MeshUse.PRINTED : MeshUse.SOLID;
    }

    /** Whether every mesh is good for what it is used as. */
    boolean good() {
        return condition.isPresent() && meshes.values().stream().allMatch(MeshReport::good);
    }

    /** The box around every part that has a shape; empty for a boat of compact pieces alone. */
    Optional<Bounds> bounds() {
        List<Bounds> boxes = new ArrayList<>();
        for (Part part : boat.parts()) {
            for (Shape shape : part.shape().stream().toList()) {
                boxes.add(shape.bounds());
                if (part.mirror()) {
                    boxes.add(shape.mirrored().bounds());
                }
            }
        }
        return boxes.stream().reduce(Bounds::union);
    }

    @Override
    public int exitCode() {
        return good() ? ExitCode.DONE : ExitCode.NO;
    }

    @Override
    public void tell(Page page) {
        BoatInspectionText.tell(this, page);
    }

    @Override
    public JsonObject json() {
        return BoatInspectionJson.of(this);
    }
}
