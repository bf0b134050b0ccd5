package trimwright.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Margins;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Softness;
import trimwright.mesh.MeshImport;

/** Writes a part as the boat file has it; keys whose value is the default are left out. */
public final class PartJson {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private PartJson() {}

    /** The part as an object of the boat file, keys in the order of the documentation. */
    public static ObjectNode of(Part part) {
        ObjectNode node = NODES.objectNode();
        node.put("id", part.id());
        node.put("kind", part.kind().word());
        part.inside().ifPresent(id -> node.put("inside", id));
        part.shape().ifPresent(shape -> putShape(node, shape));
        part.build().ifPresent(build -> putBuild(node, build));
        part.weighedMassG().ifPresent(massG -> node.put("massG", massG));
        part.densityGPerCm3().ifPresent(density -> node.put("densityGPerCm3", density));
        part.givenCentreMm().ifPresent(centre -> node.set("centreMm", point(centre)));
        if (part.fill() != 0) {
            node.put("fill", part.fill());
        }
        if (part.mirror()) {
            node.put("mirror", true);
        }
        Softness softness = part.softness();
        softness.compressionPercentPerM().ifPresent(percent -> node.put("compressionPercentPerM", percent));
        if (softness.softFoam()) {
            node.put("softFoam", true);
        }
        softness.uptakePercent().ifPresent(percent -> node.put("uptakePercent", percent));
        if (!part.fixed()) {
            node.put("fixed", false);
        }
        if (!part.margins().equals(Margins.USUAL)) {
            ObjectNode margins = node.putObject("plusMinus");
            part.margins().massG().ifPresent(g -> margins.put("massG", g));
            part.margins().placeMm().ifPresent(mm -> margins.put("placeMm", mm));
            part.margins().volumePercent().ifPresent(percent -> margins.put("volumePercent", percent));
        }
        return node;
    }

    private static void putShape(ObjectNode node, Shape shape) {
        if (shape instanceof BoxShape box) {
            ObjectNode corners = node.putObject("box");
            corners.set("fromMm", point(box.fromMm()));
            corners.set("toMm", point(box.toMm()));
        } else if (shape instanceof BarShape bar) {
            node.set("fromMm", point(bar.fromMm()));
            node.set("toMm", point(bar.toMm()));
            node.put("diameterMm", bar.diameterMm());
            if (bar.ends() != BarShape.Ends.FLAT) {
                node.put("ends", bar.ends().word());
            }
        } else if (shape instanceof MeshShape mesh) {
            node.put("mesh", mesh.file());
            if (!mesh.meshImport().equals(MeshImport.AS_IS)) {
                node.set("import", meshImport(mesh.meshImport()));
            }
        }
    }

    private static ObjectNode meshImport(MeshImport meshImport) {
        ObjectNode node = NODES.objectNode();
        meshImport.unit().ifPresent(unit -> node.put("unit", unit.symbol()));
        node.put("scale", meshImport.scale());
        node.put("forward", meshImport.forward().symbol());
        node.put("up", meshImport.up().symbol());
        node.set("moveMm", point(new Vector3D(meshImport.moveXMm(), meshImport.moveYMm(), meshImport.moveZMm())));
        if (!meshImport.shells().isEmpty()) {
            ArrayNode shells = node.putArray("shells");
            meshImport.shells().forEach(shells::add);
        }
        return node;
    }

    private static void putBuild(ObjectNode node, HullBuild build) {
        if (build instanceof HullBuild.Sealed sealed) {
            node.put("build", "sealed");
            sealed.thicknessMm().ifPresent(t -> node.put("thicknessMm", t));
        } else if (build instanceof HullBuild.Skin skin) {
            node.put("build", "skin");
            node.put("thicknessMm", skin.thicknessMm());
        } else if (build instanceof HullBuild.Printed printed) {
            node.put("build", "printed");
            printed.infill().ifPresent(infill -> {
                ObjectNode keys = node.putObject("infill");
                keys.put("wallMm", infill.wallMm());
                keys.put("percent", infill.percent());
                if (infill.floods()) {
                    keys.put("floods", true);
                }
            });
        }
    }

    private static ArrayNode point(Vector3D p) {
        return NODES.arrayNode().add(p.getX()).add(p.getY()).add(p.getZ());
    }
}
