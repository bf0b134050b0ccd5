package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.TestMeshes;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Water;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/**
 * Boats of every sort that the boat file can describe, one for each seed: watertight hulls, skins and prints; bodies of revolution, boxes,
 * rough lumps and needles, turned any way; one hull, two shells, or a hull and its twin; a cylinder, tanks at any fill, foam, lead and fittings. From nearly
 * weightless to nearly sinking, some beyond it, from 10 cm to 3 m, in fresh and salt water.
 */
final class RandomFleet {

    private final Random random;
    private final List<Part> parts = new ArrayList<>();
    private final double size;

    private RandomFleet(long seed) {
        random = new Random(seed);
        size = 100 * Math.pow(30, random.nextDouble());
    }

    static Boat of(long seed) {
        return new RandomFleet(seed).boat();
    }

    private Boat boat() {
        Water water = Water.ofDensity(0.95 + 0.1 * random.nextDouble());
        hull();
        if (random.nextInt(4) > 0) {
            cylinder();
        }
        foam(random.nextInt(3));
        for (int i = random.nextInt(3); i > 0; i--) {
            parts.add(part(
                    "fitting " + i,
                    Kind.FITTING,
                    Optional.empty(),
                    mass(1e-4),
                    Optional.of(2.0 + 9 * random.nextDouble()),
                    near(0.4),
                    ""));
        }
        Condition light = Condition.of(TestBoats.boat(water, parts.toArray(Part[]::new)));
        double carries = light.massG() + light.reserveG();
        double lead = carries * (0.03 + random.nextDouble()) - light.massG();
        // Where the hull alone is heavier than that, she stays as she is; some then sink.
        if (lead > 0) {
            double low = random.nextInt(3) == 0 ? 0 : -0.1 * random.nextDouble();
            Vector3D centre = near(0.1).add(new Vector3D(0, 0, low * size));
            parts.add(part("lead", Kind.FITTING, Optional.empty(), lead, Optional.empty(), centre, "dry"));
        }
        return TestBoats.boat(water, parts.toArray(Part[]::new));
    }

    private void hull() {
        TriangleMesh outside = turned(form());
        switch (random.nextInt(4)) {
            case 0 -> addHull(outside, new HullBuild.Skin(size * (1e-3 + 4e-3 * random.nextDouble())), 0);
            case 1 -> {
                double wall = 0.9 + 0.09 * random.nextDouble();
                TriangleMesh plastic = TestMeshes.together(
                        outside,
                        TestMeshes.mapped(outside, p -> p.scalarMultiply(wall)).flipped());
                boolean solid = random.nextBoolean();
                addHull(
                        plastic,
                        new HullBuild.Printed(
                                solid
                                        ? Optional.empty()
                                        : Optional.of(new HullBuild.Infill(
                                                size * 1e-3, random.nextInt(101), random.nextBoolean()))),
                        0);
            }
            default -> {
                TriangleMesh whole = random.nextInt(5) > 0
                        ? outside
                        : TestMeshes.together(
                                outside, TestMeshes.mapped(outside, p -> p.add(new Vector3D(0, 0, 2 * size))));
                addHull(whole, new HullBuild.Sealed(Optional.empty()), mass(1e-2));
            }
        }
    }

    private void addHull(TriangleMesh mesh, HullBuild build, double massG) {
        boolean twin = random.nextInt(6) == 0;
        Vector3D aside = twin ? new Vector3D(0, size, 0) : Vector3D.ZERO;
        parts.add(new Part(
                "hull",
                Kind.HULL,
                Optional.of(TestBoats.shape(TestMeshes.mapped(mesh, p -> p.add(aside)))),
                Optional.of(build),
                massG > 0 ? Optional.of(massG) : Optional.empty(),
                massG > 0 ? Optional.empty() : Optional.of(0.9 + 0.5 * random.nextDouble()),
                massG > 0 ? Optional.of(near(0.1)) : Optional.empty(),
                Optional.empty(),
                twin,
                0));
    }

    private TriangleMesh form() {
        double beam = 0.05 + 0.2 * random.nextDouble();
        double depth = beam * (0.5 + random.nextDouble());
        return switch (random.nextInt(6)) {
            case 0 -> TestMeshes.ellipsoid(size / 2, beam * size, depth * size, 2);
            case 1 -> Solids.box(-size / 2, -beam * size, -depth * size, size / 2, beam * size, depth * size);
            case 2 -> scaled(TestMeshes.random(random, 1, 0.6 * random.nextDouble()));
            case 3 ->
                random.nextBoolean()
                        ? TestMeshes.ellipsoid(size / 2, size / 150, size / 150, 2)
                        : Solids.box(-size / 2, -size / 200, -size / 150, size / 2, size / 200, size / 150);
            default -> {
                double[] x = new double[9];
                double[] r = new double[9];
                for (int i = 0; i < 9; i++) {
                    x[i] = size * (i / 8.0 - 0.5);
                    r[i] = i == 0 || i == 8 ? 0 : beam * size * (0.5 + 0.5 * random.nextDouble());
                }
                yield TestMeshes.revolved(x, r, 6 + random.nextInt(12));
            }
        };
    }

    private TriangleMesh scaled(TriangleMesh mesh) {
        double factor = size / mesh.bounds().diagonal();
        return TestMeshes.mapped(mesh, p -> p.scalarMultiply(factor));
    }

    /** Half of the hulls lie fore and aft as drawn, the others any way. */
    private TriangleMesh turned(TriangleMesh mesh) {
        if (random.nextBoolean()) {
            return mesh;
        }
        Rotation rotation = new Rotation(
                TestMeshes.direction(random), 2 * Math.PI * random.nextDouble(), RotationConvention.VECTOR_OPERATOR);
        return TestMeshes.mapped(mesh, rotation::applyTo);
    }

    private void cylinder() {
        double half = size * (0.1 + 0.2 * random.nextDouble());
        double diameter = size * (0.03 + 0.1 * random.nextDouble());
        Vector3D along = random.nextInt(3) > 0 ? Vector3D.PLUS_I : TestMeshes.direction(random);
        Vector3D middle = near(0.05);
        BarShape bar = new BarShape(
                middle.add(-half, along),
                middle.add(half, along),
                diameter,
                random.nextBoolean() && diameter < 2 * half ? BarShape.Ends.ROUND : BarShape.Ends.FLAT);
        parts.add(part(
                "wtc",
                Kind.CYLINDER,
                Optional.of(bar),
                0.5 * bar.solid().volumeMm3() / 1000,
                Optional.empty(),
                middle.add(near(0.02)),
                ""));
        for (int i = random.nextInt(4); i > 0; i--) {
            Vector3D at = middle.add((2 * random.nextDouble() - 1) * 0.5 * half, along);
            Shape room = random.nextBoolean()
                    ? new BarShape(at, at.add(0.4 * half, along), 0.9 * diameter, BarShape.Ends.FLAT)
                    : new BoxShape(at, at.add(new Vector3D(0.3 * half, -0.5 * diameter, 0.6 * diameter)));
            double fill = switch (random.nextInt(5)) {
                case 0 -> 0;
                case 1 -> 1;
                case 2 -> 1e-4;
                default -> random.nextDouble();
            };
            parts.add(new Part(
                    "tank " + i,
                    Kind.TANK,
                    Optional.of(room),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of("wtc"),
                    random.nextInt(4) == 0,
                    fill));
        }
    }

    private void foam(int blocks) {
        for (int i = 0; i < blocks; i++) {
            Vector3D corner = near(0.2);
            Vector3D edges = new Vector3D(0.2 * random.nextDouble() + 0.01, 0.05, 0.01 + 0.05 * random.nextDouble());
            parts.add(new Part(
                    "foam " + i,
                    Kind.FOAM,
                    Optional.of(new BoxShape(corner, corner.add(size, edges))),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(0.03),
                    Optional.empty(),
                    Optional.empty(),
                    random.nextBoolean(),
                    0));
        }
    }

    private static Part part(
            String id,
            Kind kind,
            Optional<Shape> shape,
            double massG,
            Optional<Double> density,
            Vector3D centre,
            String inside) {
        return new Part(
                id,
                kind,
                shape,
                Optional.empty(),
                Optional.of(massG),
                density,
                Optional.of(centre),
                inside.isEmpty() ? Optional.empty() : Optional.of(inside),
                false,
                0);
    }

    /** A mass as a share of that of a ball of water as large as the boat is long. */
    private double mass(double most) {
        return most * random.nextDouble() * size * size * size / 2000;
    }

    private Vector3D near(double share) {
        return TestMeshes.direction(random).scalarMultiply(share * size * random.nextDouble());
    }
}
