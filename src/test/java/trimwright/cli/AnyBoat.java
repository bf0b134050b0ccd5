package trimwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.TestMeshes;
import trimwright.mesh.StlWriter;
import trimwright.mesh.TriangleMesh;

/**
 * Boats as builders make them, one for each seed, as a file beside its mesh: a slender hull with or without a tower, as skin, print or sealed; a cylinder with a tank
 * or two; lead, foam and fittings; some with a painted line, zones, targets, a plan for the dive; trimmed more or less well, a few beyond
 * help.
 */
final class AnyBoat {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Random random;
    private final double length;
    private final double radius;
    private final ObjectNode boat = NODES.objectNode();
    private final ArrayNode parts = NODES.arrayNode();

    private AnyBoat(long seed) {
        random = new Random(seed);
        length = 300 + 1500 * random.nextDouble();
        radius = length * (0.04 + 0.04 * random.nextDouble());
    }

    /** Writes the boat of a seed and her mesh into a folder. */
    static Path of(Path folder, long seed) throws IOException {
        return new AnyBoat(seed).written(folder);
    }

    private Path written(Path folder) throws IOException {
        boat.put("version", 1).put("name", "any");
        if (chance(0.5)) {
            boat.putObject("water")
                    .put("temperatureC", between(0, 30))
                    .put("salinityGPerKg", chance(0.5) ? 0 : between(0, 40));
        }
        double line = between(-0.2, 0.8) * radius;
        if (chance(0.8)) {
            ArrayNode painted = boat.putArray("paintedLine");
            painted.add(point(0.1 * length, 0, line)).add(point(0.9 * length, 0, line + between(-2, 2)));
        }
        boat.set("parts", parts);
        hull(folder);
        cylinder();
        if (chance(0.7)) {
            bodies(line);
        }
        if (chance(0.5)) {
            zones(line);
        }
        if (chance(0.5)) {
            targets();
        }
        return Files.writeString(folder.resolve("any.boat.json"), boat.toPrettyString());
    }

    private void hull(Path folder) throws IOException {
        double[] x = new double[17];
        double[] r = new double[17];
        for (int i = 0; i < x.length; i++) {
            double u = i / 16.0;
            x[i] = u * length;
            r[i] = radius * Math.pow(Math.sin(Math.PI * u), 0.3 + 0.4 * random.nextDouble());
        }
        r[0] = 0;
        r[16] = 0;
        double flat = 0.7 + 0.6 * random.nextDouble();
        TriangleMesh outside = TestMeshes.mapped(
                TestMeshes.revolved(x, r, 12 + random.nextInt(20)),
                p -> new Vector3D(p.getX(), p.getY(), p.getZ() * flat));
        ObjectNode hull =
                parts.addObject().put("id", "hull").put("kind", "hull").put("mesh", "any.stl");
        switch (random.nextInt(4)) {
            case 0 ->
                hull.put("build", "sealed")
                        .put("massG", mass(0.05, 0.2))
                        .set("centreMm", point(0.5 * length, 0, -0.2 * radius));
            case 1 -> {
                Vector3D middle = new Vector3D(0.5 * length, 0, 0);
                double inner = 1 - between(0.02, 0.06);
                outside = TestMeshes.together(
                        outside,
                        TestMeshes.mapped(outside, p -> middle.add(inner, p.subtract(middle)))
                                .flipped());
                hull.put("build", "printed").put("densityGPerCm3", 1.24);
                if (chance(0.5)) {
                    hull.putObject("infill")
                            .put("wallMm", 1)
                            .put("percent", random.nextInt(60))
                            .put("floods", chance(0.5));
                }
            }
            default ->
                hull.put("build", "skin").put("thicknessMm", between(0.8, 3)).put("densityGPerCm3", between(1, 1.9));
        }
        StlWriter.write(folder.resolve("any.stl"), outside);
        if (chance(0.5)) {
            double at = between(0.4, 0.6) * length;
            ObjectNode tower = parts.addObject().put("id", "tower").put("kind", "fitting");
            box(tower, at, -0.15 * radius, 0.9 * radius, at + 0.08 * length, 0.15 * radius, 1.6 * radius);
            tower.put("massG", mass(0.002, 0.01));
        }
    }

    private void cylinder() {
        double low = between(-0.3, 0.1) * radius;
        double from = between(0.2, 0.35) * length;
        double to = between(0.6, 0.75) * length;
        double diameter = between(0.6, 1.1) * radius;
        ObjectNode cylinder = bar("wtc", "cylinder", from, to, low, diameter);
        cylinder.put("ends", chance(0.3) ? "round" : "flat");
        cylinder.put("massG", Math.PI / 4 * diameter * diameter * (to - from) / 1000 * between(0.3, 0.7));
        if (chance(0.8)) {
            cylinder.set("centreMm", point(0.5 * (from + to) + between(-0.03, 0.03) * length, between(-1, 1), low - 3));
        }
        int tanks = random.nextInt(4) == 0 ? random.nextInt(3) : 1;
        for (int i = 0; i < tanks; i++) {
            double at = from + (to - from) * (i + between(0.2, 0.4)) / tanks;
            ObjectNode tank = bar("tank " + i, "tank", at, at + 0.3 * (to - from) / tanks, low, 0.92 * diameter);
            tank.put("inside", "wtc").put("fill", chance(0.6) ? 0 : random.nextDouble());
        }
        if (tanks > 0 && chance(0.3)) {
            ArrayNode stages = boat.putObject("dive").putArray("order");
            for (int i = tanks - 1; i >= 0; i--) {
                stages.addArray().add("tank " + i);
            }
        }
    }

    private void bodies(double line) {
        ObjectNode lead =
                parts.addObject().put("id", "keel lead").put("kind", "ballast").put("densityGPerCm3", 11.34);
        double low = -0.6 * radius;
        box(lead, 0.3 * length, -4, low, between(0.4, 0.7) * length, 4, low + between(2, 8));
        if (chance(0.5)) {
            lead.put("fixed", false);
        }
        ObjectNode foam =
                parts.addObject().put("id", "foam").put("kind", "foam").put("densityGPerCm3", 0.03);
        double top = line - between(-5, 10);
        box(foam, 0.35 * length, 0.5 * radius, top - between(5, 20), between(0.4, 0.65) * length, 0.7 * radius, top);
        foam.put("mirror", true);
        if (chance(0.3)) {
            foam.put("compressionPercentPerM", between(0, 5)).put("uptakePercent", between(0, 3));
        }
        parts.addObject()
                .put("id", "battery")
                .put("kind", "fitting")
                .put("inside", "wtc")
                .put("massG", mass(0.01, 0.05))
                .set("centreMm", point(between(0.4, 0.6) * length, between(-3, 3), -0.3 * radius));
        parts.addObject()
                .put("id", "propeller")
                .put("kind", "fitting")
                .put("massG", mass(0.001, 0.004))
                .put("densityGPerCm3", 8.5)
                .set("centreMm", point(-5, 0, 0));
    }

    private void zones(double line) {
        ArrayNode zones = boat.putArray("zones");
        ObjectNode keel = zones.addObject().put("id", "keel").put("for", "ballast");
        box(keel, 0.15 * length, -0.15 * radius, -0.8 * radius, 0.85 * length, 0.15 * radius, -0.6 * radius);
        ObjectNode sides =
                zones.addObject().put("id", "sides").put("for", "foam").put("mirror", true);
        box(sides, 0.2 * length, 0.55 * radius, line - 0.5 * radius, 0.8 * length, 0.75 * radius, line);
    }

    private void targets() {
        ObjectNode targets = boat.putObject("targets");
        targets.put("bgMm", between(1, 10)).put("gmMm", between(1, 8));
        if (chance(0.7)) {
            double least = between(0, 0.004) * volumeCm3();
            targets.putArray("residualG").add(least).add(least + between(1, 40));
        }
    }

    private ObjectNode bar(String id, String kind, double from, double to, double z, double diameter) {
        ObjectNode bar = parts.addObject().put("id", id).put("kind", kind);
        bar.set("fromMm", point(from, 0, z));
        bar.set("toMm", point(to, 0, z));
        return bar.put("diameterMm", diameter);
    }

    private static void box(ObjectNode owner, double x0, double y0, double z0, double x1, double y1, double z1) {
        ObjectNode box = owner.putObject("box");
        box.set("fromMm", point(x0, y0, z0));
        box.set("toMm", point(x1, y1, z1));
    }

    private static ArrayNode point(double x, double y, double z) {
        return NODES.arrayNode().add(x).add(y).add(z);
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private double between(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    /** Roughly what the hull encloses. */
    private double volumeCm3() {
        return 2.2 * radius * radius * length / 1000;
    }

    private double mass(double from, double to) {
        return between(from, to) * volumeCm3();
    }
}
