package trimwright.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.BarShape.Ends;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Shape;
import trimwright.finding.Code;
import trimwright.mesh.MeshUse;

/** Reads the shape of a part: a box, a round bar, a mesh, or none. */
final class ShapeReader {

    private static final List<String> BAR = List.of("fromMm", "toMm", "diameterMm", "ends");
    private static final List<String> ENDS =
            Arrays.stream(Ends.values()).map(Ends::word).toList();
    private static final List<String> BODY_SHAPES = List.of("box", "fromMm + toMm + diameterMm", "mesh");
    private static final List<String> BODY_SHAPES_OR_NONE =
            List.of("box", "fromMm + toMm + diameterMm", "mesh", "centreMm + massG");

    /** Share of the diameter by which a bar with round ends may be too short, so that a written-out ball passes. */
    private static final double BALL_ROUNDING = 1e-12;

    private final MeshSource meshes;

    ShapeReader(MeshSource meshes) {
        this.meshes = meshes;
    }

    /** Whether a part of that kind may do without a shape. */
    static boolean mayBeCompact(Kind kind) {
        return kind == Kind.BALLAST || kind == Kind.FITTING;
    }

    /** Whether any key of a shape is there. */
    static boolean isGiven(Fields part) {
        return part.has("box") || part.has("mesh") || part.hasAny(BAR);
    }

    /** Reads the shape of a part that is no hull; empty when it has none or a wrong one. */
    Optional<Shape> body(Fields part, Kind kind) {
        if (part.has("import") && !part.hasOrMeans("mesh")) {
            part.reportAt("import", Code.KEY_NEEDS_KEY, "key", "import", "needs", List.of("mesh"));
        }
        int shapes = (part.has("box") ? 1 : 0) + (part.has("mesh") ? 1 : 0) + (part.hasAny(BAR) ? 1 : 0);
        if (shapes > 1) {
            List<String> keys = new ArrayList<>(BAR);
            keys.add("box");
            keys.add("mesh");
            part.report(Code.SHAPE_AMBIGUOUS, "found", part.present(keys), "allowed", BODY_SHAPES);
            return Optional.empty();
        }
        if (part.has("box")) {
            return part.object("box", Keys.BOX).flatMap(ShapeReader::box);
        }
        if (part.has("mesh")) {
            return meshes.shape(part, MeshUse.SOLID).map(Shape.class::cast);
        }
        if (part.hasAny(BAR)) {
            return bar(part);
        }
        boolean meant = part.hasOrMeans("box")
                || part.hasOrMeans("mesh")
                || BAR.stream().anyMatch(part::hasOrMeans);
        boolean compact = mayBeCompact(kind) && (part.hasOrMeans("centreMm") || part.hasOrMeans("massG"));
        if (!meant && !compact) {
            part.report(
                    Code.SHAPE_MISSING,
                    "kind",
                    kind.word(),
                    "allowed",
                    mayBeCompact(kind) ? BODY_SHAPES_OR_NONE : BODY_SHAPES);
        }
        return Optional.empty();
    }

    /** A box whose sides all have a length. */
    static Optional<Shape> box(Fields box) {
        box.require("fromMm", "toMm");
        Optional<Vector3D> from = box.point("fromMm");
        Optional<Vector3D> to = box.point("toMm");
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        List<String> flat = new ArrayList<>();
        for (int axis = 0; axis < 3; axis++) {
            if (from.get().toArray()[axis] == to.get().toArray()[axis]) {
                flat.add("xyz".substring(axis, axis + 1));
            }
        }
        if (!flat.isEmpty()) {
            box.report(Code.BOX_FLAT, "found", box.written("fromMm") + " … " + box.written("toMm"), "axes", flat);
            return Optional.empty();
        }
        return Optional.of(new BoxShape(from.get(), to.get()));
    }

    private static Optional<Shape> bar(Fields part) {
        part.require("fromMm", "toMm", "diameterMm");
        Optional<Vector3D> from = part.point("fromMm");
        Optional<Vector3D> to = part.point("toMm");
        Optional<Double> diameter = part.number("diameterMm", Range.LENGTH_MM);
        Optional<Ends> ends = part.word("ends", Ends::ofWord, ENDS);
        if (from.isEmpty() || to.isEmpty() || diameter.isEmpty()) {
            return Optional.empty();
        }
        BarShape bar = new BarShape(from.get(), to.get(), diameter.get(), ends.orElse(Ends.FLAT));
        double length = bar.lengthMm();
        if (length == 0) {
            part.reportAt("toMm", Code.BAR_WITHOUT_LENGTH, "found", part.written("toMm"));
            return Optional.empty();
        }
        if (bar.ends() == Ends.ROUND && length < diameter.get() * (1 - BALL_ROUNDING)) {
            part.reportAt("diameterMm", Code.BAR_ROUNDER_THAN_LONG, "foundMm", diameter.get(), "greatestMm", length);
            return Optional.empty();
        }
        return Optional.of(bar);
    }
}
