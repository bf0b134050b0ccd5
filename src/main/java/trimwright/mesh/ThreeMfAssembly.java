package trimwright.mesh;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import trimwright.finding.Code;
import trimwright.finding.Place;
import trimwright.mesh.ThreeMfModel.Item;
import trimwright.mesh.ThreeMfModel.Use;

/** Puts the objects of a 3MF package where its build items and components say. */
final class ThreeMfAssembly {

    /** Components within components, far beyond any honest file and well within the call stack. */
    private static final int DEEPEST = 100;

    /** Objects put into place, each as often as it is used: a few lines of components of components can ask for any number. */
    private static final int MOST_PLACED = 1_000_000;

    private final Map<String, ThreeMfModel> models;
    private final Problems problems;
    private final MeshBuilder whole = new MeshBuilder();
    private final Map<Key, Size> sizes = new HashMap<>();
    private final Set<Key> beingCounted = new HashSet<>();
    private long supportsLeftOut;

    private record Key(String part, int object) {}

    /** What one use of an object comes to, with all that it is made of. */
    private record Size(long triangles, long placed) {

        /** Capped, since components of components can double without end. */
        Size plus(Size other) {
            return new Size(
                    Math.min(triangles + other.triangles, 2L * MeshFiles.MOST_TRIANGLES),
                    Math.min(placed + other.placed, 2L * MOST_PLACED));
        }
    }

    ThreeMfAssembly(Map<String, ThreeMfModel> models, Problems problems) {
        this.models = models;
        this.problems = problems;
    }

    /**
     * Everything that the root model builds, in its unit.
     *
     * @throws trimwright.finding.UnusableInputException when objects are missing or contain themselves, or nothing or too
     *     much is built
     */
    TriangleMesh build(String root) {
        ThreeMfModel model = models.get(root);
        Size all = new Size(0, 0);
        for (Use use : model.build()) {
            all = all.plus(size(root, use, 0));
        }
        Place place = new Place.InFile(problems.file());
        if (all.triangles > MeshFiles.MOST_TRIANGLES) {
            problems.add(
                    Code.MESH_TOO_MANY_TRIANGLES, place, "found", all.triangles, "allowed", MeshFiles.MOST_TRIANGLES);
        } else if (all.placed > MOST_PLACED) {
            problems.add(Code.MESH_3MF_TOO_MANY_PLACED, place, "found", all.placed, "allowed", MOST_PLACED);
        } else if (all.triangles == 0) {
            problems.add(Code.MESH_NO_TRIANGLES, place);
        }
        problems.throwIfAny();
        double unit = model.unit().factor();
        double[] toUnit = {unit, 0, 0, 0, unit, 0, 0, 0, unit, 0, 0, 0};
        for (Use use : model.build()) {
            place(root, use, toUnit, model);
        }
        problems.throwIfAny();
        return whole.build();
    }

    /** How many objects were not built because they only support the print. */
    long supportsLeftOut() {
        return supportsLeftOut;
    }

    /** Determinant of the turning part of a transform; negative when it mirrors. */
    static double determinant(double[] m) {
        return Triangles.tripleProduct(m[0], m[1], m[2], m[3], m[4], m[5], m[6], m[7], m[8]);
    }

    /** What a use comes to. Each object is counted once, however often it is used. */
    private Size size(String fromPart, Use use, int depth) {
        Key key = new Key(use.part().orElse(fromPart), use.object());
        Item item = item(key);
        if (item == null) {
            problems.add(Code.MESH_3MF_OBJECT_MISSING, use.place(), "object", use.object());
            return new Size(0, 0);
        }
        Size known = sizes.get(key);
        if (known != null) {
            return known;
        }
        if (!beingCounted.add(key)) {
            problems.add(Code.MESH_3MF_OBJECT_IN_ITSELF, use.place(), "object", use.object());
            return new Size(0, 0);
        }
        if (depth > DEEPEST) {
            problems.add(Code.MESH_3MF_NESTED_TOO_DEEP, use.place(), "object", use.object(), "allowed", DEEPEST);
            problems.throwIfAny();
        }
        Size size = new Size(item.mesh().triangleCount(), 1);
        for (Use component : item.components()) {
            size = size.plus(size(key.part(), component, depth + 1));
        }
        size = item.isSupport() ? new Size(0, 1) : size;
        sizes.put(key, size);
        return size;
    }

    private void place(String fromPart, Use use, double[] outer, ThreeMfModel root) {
        Key key = new Key(use.part().orElse(fromPart), use.object());
        Item item = item(key);
        if (item.isSupport()) {
            supportsLeftOut++;
            return;
        }
        if (sizes.get(key).triangles == 0) {
            return;
        }
        double[] transform = product(use.transform(), outer);
        for (Use component : item.components()) {
            place(key.part(), component, transform, root);
        }
        ThreeMfModel own = models.get(key.part());
        // A further model part may be in a unit of its own; transforms are in that of the part that has them.
        double scale = mm(own) / mm(root);
        addMesh(item.mesh(), transform, scale, use.place());
    }

    private static double mm(ThreeMfModel model) {
        return model.unit().factor() * model.unit().length().mm();
    }

    private void addMesh(MeshBuilder mesh, double[] m, double scale, Place place) {
        int offset = whole.vertexCount();
        double[] xyz = mesh.xyz();
        for (int i = 0; i < 3 * mesh.vertexCount(); i += 3) {
            double x = scale * xyz[i];
            double y = scale * xyz[i + 1];
            double z = scale * xyz[i + 2];
            double placedX = x * m[0] + y * m[3] + z * m[6] + m[9];
            double placedY = x * m[1] + y * m[4] + z * m[7] + m[10];
            double placedZ = x * m[2] + y * m[5] + z * m[8] + m[11];
            double largest = Math.max(Math.max(Math.abs(placedX), Math.abs(placedY)), Math.abs(placedZ));
            if (!(largest <= MeshFiles.LARGEST_COORDINATE)) {
                problems.badCoordinate(largest, place, "vertex", i / 3);
            }
            whole.addVertex(placedX, placedY, placedZ);
        }
        boolean mirrored = determinant(m) < 0;
        for (int i = 0; i < mesh.corners().size(); i += 3) {
            int b = mesh.corners().get(i + 1);
            int c = mesh.corners().get(i + 2);
            whole.corners().add(offset + mesh.corners().get(i));
            whole.corners().add(offset + (mirrored ? c : b));
            whole.corners().add(offset + (mirrored ? b : c));
        }
    }

    private Item item(Key key) {
        ThreeMfModel model = models.get(key.part());
        return model == null ? null : model.objects().get(key.object());
    }

    /** First {@code inner}, then {@code outer}. */
    private static double[] product(double[] inner, double[] outer) {
        double[] result = new double[12];
        for (int row = 0; row < 4; row++) {
            for (int column = 0; column < 3; column++) {
                double sum = row == 3 ? outer[9 + column] : 0;
                for (int k = 0; k < 3; k++) {
                    sum += inner[3 * row + k] * outer[3 * k + column];
                }
                result[3 * row + column] = sum;
            }
        }
        return result;
    }
}
