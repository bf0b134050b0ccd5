package trimwright.desktop.model;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Targets;
import trimwright.file.BoatFile;
import trimwright.file.JsonText;
import trimwright.file.LoadedBoat;
import trimwright.mesh.MeshImport;

/** The changes a builder makes, each as a new boat. Those on a file throw {@code UnusableInputException} when the file could not hold the outcome. */
public final class Edits {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Edits() {}

    /** The part moved as a whole, its stated centre of mass with it. */
    public static Part moved(Part part, Vector3D byMm) {
        return part.withBody(
                part.shape().map(s -> moved(s, byMm)),
                part.weighedMassG(),
                part.givenCentreMm().map(c -> c.add(byMm)));
    }

    private static Shape moved(Shape shape, Vector3D by) {
        if (shape instanceof BoxShape box) {
            return new BoxShape(box.fromMm().add(by), box.toMm().add(by));
        }
        if (shape instanceof BarShape bar) {
            return new BarShape(bar.fromMm().add(by), bar.toMm().add(by), bar.diameterMm(), bar.ends());
        }
        MeshShape mesh = (MeshShape) shape;
        MeshImport old = mesh.meshImport();
        MeshImport other = new MeshImport(
                old.unit(),
                old.scale(),
                old.forward(),
                old.up(),
                old.moveXMm() + by.getX(),
                old.moveYMm() + by.getY(),
                old.moveZMm() + by.getZ(),
                old.shells());
        MeshImport shift = new MeshImport(
                Optional.empty(),
                1,
                MeshImport.Axis.PLUS_X,
                MeshImport.Axis.PLUS_Z,
                by.getX(),
                by.getY(),
                by.getZ(),
                List.of());
        return new MeshShape(mesh.file(), other, shift.apply(mesh.mesh(), Optional.empty()));
    }

    /** The parts that stand in a part, directly or in one that does. */
    public static List<Part> contents(Boat boat, Part container) {
        List<Part> found = new ArrayList<>();
        for (Part part : boat.parts()) {
            if (part.inside().filter(container.id()::equals).isPresent()) {
                found.add(part);
                found.addAll(contents(boat, part));
            }
        }
        return found;
    }

    /** Whether a mesh moves along with a part: that takes a while, since a big one is brought to its place, and looked through there. */
    public static boolean movesMesh(Boat boat, String id) {
        return boat.part(id)
                .filter(p -> isMesh(p) || contents(boat, p).stream().anyMatch(Edits::isMesh))
                .isPresent();
    }

    /** Whether it is shaped by a mesh. */
    public static boolean isMesh(Part part) {
        return part.shape().filter(MeshShape.class::isInstance).isPresent();
    }

    /** The boat with a part, and all that stands in it, moved. Nothing of the file is touched: for looking, while a part is dragged. */
    public static Boat moved(Boat boat, String id, Vector3D byMm) {
        Part part = boat.part(id).orElseThrow();
        List<Part> moving = new ArrayList<>(contents(boat, part));
        moving.add(part);
        return boat.withParts(boat.parts().stream()
                .map(p -> moving.contains(p) ? moved(p, byMm) : p)
                .toList());
    }

    /** The same in the file. */
    public static LoadedBoat moved(LoadedBoat boat, String id, Vector3D byMm) {
        Boat after = moved(boat.boat(), id, byMm);
        LoadedBoat changed = boat;
        for (Part part : boat.boat().parts()) {
            Part other = after.part(part.id()).orElseThrow();
            if (other != part) {
                changed = changed.replacing(other);
            }
        }
        return changed;
    }

    /** An id that is not taken: the one wished for, or that with a number. */
    public static String freeId(Boat boat, String wished) {
        String id = wished;
        for (int n = 2; boat.part(id).isPresent(); n++) {
            id = wished + " " + n;
        }
        return id;
    }

    /** The part under another id. */
    public static Part named(Part p, String id) {
        return with(p, id, p.weighedMassG(), p.densityGPerCm3(), p.inside(), p.mirror(), p.fixed());
    }

    /** The part of another material, or weighed; one of the two may be missing. */
    public static Part weighing(Part p, Optional<Double> massG, Optional<Double> densityGPerCm3) {
        return with(p, p.id(), massG, densityGPerCm3, p.inside(), p.mirror(), p.fixed());
    }

    /** The part with a twin at -y, or without. */
    public static Part mirrored(Part p, boolean mirror) {
        return with(p, p.id(), p.weighedMassG(), p.densityGPerCm3(), p.inside(), mirror, p.fixed());
    }

    /** The part fixed where it is, or not: a plan then leaves it alone. */
    public static Part fixed(Part p, boolean fixed) {
        return with(p, p.id(), p.weighedMassG(), p.densityGPerCm3(), p.inside(), p.mirror(), fixed);
    }

    private static Part with(
            Part p,
            String id,
            Optional<Double> massG,
            Optional<Double> densityGPerCm3,
            Optional<String> inside,
            boolean mirror,
            boolean fixed) {
        return new Part(
                id,
                p.kind(),
                p.shape(),
                p.build(),
                massG,
                densityGPerCm3,
                p.givenCentreMm(),
                inside,
                mirror,
                p.fill(),
                p.softness(),
                fixed,
                p.margins());
    }

    /** The part dry in a container, or standing in the water. */
    public static Part inside(Part p, Optional<String> container) {
        return with(p, p.id(), p.weighedMassG(), p.densityGPerCm3(), container, p.mirror(), p.fixed());
    }

    /** The parts in which another could stand. */
    public static List<Part> containers(Boat boat, Part part) {
        List<Part> within = contents(boat, part);
        return boat.parts().stream()
                .filter(p -> p.kind() == Kind.CYLINDER || p.build().orElse(null) instanceof HullBuild.Sealed)
                .filter(p -> !p.id().equals(part.id()) && !within.contains(p))
                .toList();
    }

    /** The part under another id, also where others stand in it. */
    public static LoadedBoat renamed(LoadedBoat boat, String id, String other) {
        List<Part> parts = boat.boat().parts();
        String text = boat.text();
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).id().equals(id)) {
                text = JsonText.with(text, "/parts/" + i + "/id", NODES.textNode(other));
            } else if (parts.get(i).inside().filter(id::equals).isPresent()) {
                text = JsonText.with(text, "/parts/" + i + "/inside", NODES.textNode(other));
            }
        }
        return BoatFile.edited(boat, text);
    }

    /** The boat with one value of her file replaced or added. */
    public static LoadedBoat with(LoadedBoat boat, String pointer, JsonNode value) {
        return BoatFile.edited(boat, JsonText.with(boat.text(), pointer, value));
    }

    /** The boat in water of a temperature and salinity. */
    public static LoadedBoat water(LoadedBoat boat, double temperatureC, double salinityGPerKg) {
        ObjectNode node = NODES.objectNode();
        node.put("temperatureC", temperatureC);
        node.put("salinityGPerKg", salinityGPerKg);
        return with(boat, "/water", node);
    }

    /** The boat with a painted line through these points. */
    public static LoadedBoat paintedLine(LoadedBoat boat, List<Vector3D> pointsMm) {
        ArrayNode points = NODES.arrayNode();
        for (Vector3D p : pointsMm) {
            points.addArray().add(p.getX()).add(p.getY()).add(p.getZ());
        }
        return with(boat, "/paintedLine", points);
    }

    /** The boat with what is wanted of her; what is left out is left to the plan. */
    public static LoadedBoat targets(LoadedBoat boat, Targets targets) {
        ObjectNode node = NODES.objectNode();
        targets.bgMm().ifPresent(v -> node.put("bgMm", v));
        targets.gmMm().ifPresent(v -> node.put("gmMm", v));
        targets.residualG()
                .ifPresent(band -> node.putArray("residualG").add(band.least()).add(band.greatest()));
        targets.offLineMm().ifPresent(v -> node.put("offLineMm", v));
        targets.listDeg().ifPresent(v -> node.put("listDeg", v));
        targets.divedTrimDeg().ifPresent(v -> node.put("divedTrimDeg", v));
        return with(boat, "/targets", node);
    }

    /** The boat with a plan's parts: those changed, those gone, those added. Fills stay those of the file. */
    public static LoadedBoat planned(LoadedBoat boat, Boat planned, List<Part> added) {
        LoadedBoat changed = boat;
        for (Part part : boat.boat().parts()) {
            Optional<Part> after = planned.part(part.id());
            if (after.isEmpty()) {
                changed = changed.without(part.id());
            } else if (!after.get().withFill(part.fill()).equals(part)) {
                changed = changed.replacing(after.get().withFill(part.fill()));
            }
        }
        return changed.plus(added);
    }
}
