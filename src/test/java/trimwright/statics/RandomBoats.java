package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.TestMeshes;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.immersion.Displacer;
import trimwright.immersion.MeshSolid;
import trimwright.mesh.TriangleMesh;

/** Boats without any symmetry: a rough hull, a bar and a box beside it, two tanks partly filled, G somewhere in the middle. */
final class RandomBoats {

    private RandomBoats() {}

    static Boat of(int seed) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.random(random, 1 + random.nextInt(2), 0.7 * random.nextDouble());
        MeshSolid hull = MeshSolid.of(mesh);
        double size = mesh.bounds().diagonal();
        Part bar = TestBoats.body(
                "bar", TestBoats.bar(point(random, size / 2), point(random, size / 2), size / 8), 0, Vector3D.ZERO);
        Vector3D corner = point(random, size / 2);
        Part box = TestBoats.body(
                "box",
                TestBoats.box(
                        corner.getX(),
                        corner.getY(),
                        corner.getZ(),
                        corner.getX() + size / 5,
                        corner.getY() + size / 6,
                        corner.getZ() + size / 9),
                0,
                Vector3D.ZERO);
        Part round = TestBoats.tank(
                "round",
                TestBoats.bar(point(random, size / 4), point(random, size / 4), size / 6),
                random.nextDouble());
        Part square = TestBoats.tank(
                "square", TestBoats.box(0, 0, -size / 9, size / 7, size / 6, size / 9), random.nextDouble());
        double volume = hull.volumeMm3()
                + bar.shape().orElseThrow().solid().volumeMm3()
                + box.shape().orElseThrow().solid().volumeMm3();
        double water = water(round) + water(square);
        double share = 0.1 + 0.85 * random.nextDouble();
        double mass = Math.max(0.02 * volume, share * volume - water) / 1000;
        List<Part> parts = new ArrayList<>();
        parts.add(TestBoats.hull(mesh, mass, hull.centroidMm().add(point(random, size / 8))));
        parts.addAll(List.of(bar, box, round, square));
        return TestBoats.boat(parts.toArray(Part[]::new));
    }

    private static double water(Part tank) {
        Displacer room = tank.shape().orElseThrow().solid();
        return tank.fill() * room.volumeMm3();
    }

    private static Vector3D point(Random random, double far) {
        return TestMeshes.direction(random).scalarMultiply(far * random.nextDouble());
    }
}
