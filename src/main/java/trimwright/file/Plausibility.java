package trimwright.file;

import java.util.List;
import java.util.Optional;
import trimwright.boat.HullBuild;
import trimwright.boat.Materials;
import trimwright.boat.MeshShape;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.finding.Code;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;

/** Doubts about values that are allowed but probably not meant: none of these findings is an error. */
final class Plausibility {

    /** A weighed mass this many times the computed one, or the computed one the weighed, is doubted: common practice. */
    private static final double MASS_FACTOR = 1.5;

    /** Lengths of models that float and can be carried to the water: common practice. */
    private static final double LEAST_HULL_MM = 80;

    private static final double GREATEST_HULL_MM = 8000;
    private static final double MM3_PER_CM3 = 1000;

    private Plausibility() {}

    static void check(Fields boat, List<PartReader.Draft> drafts, Optional<PaintedLine> line) {
        for (PartReader.Draft draft : drafts) {
            draft.part().ifPresent(part -> {
                checkDensity(draft.fields(), part);
                checkMass(draft.fields(), part);
            });
        }
        if (drafts.stream().anyMatch(d -> d.part().isEmpty())) {
            // A part that could not be read may be the hull, or most of it.
            return;
        }
        Optional<Bounds> hull = drafts.stream()
                .flatMap(d -> d.part().stream())
                .filter(Part::isHull)
                .map(p -> bounds(p))
                .reduce(Bounds::union);
        hull.ifPresent(bounds -> {
            checkAxes(boat, bounds);
            checkSize(boat, bounds);
            line.ifPresent(l -> checkLine(boat, bounds, l));
        });
    }

    private static Bounds bounds(Part part) {
        Shape shape = part.shape().orElseThrow();
        Bounds bounds = shape.bounds();
        if (!part.mirror()) {
            return bounds;
        }
        double reach = Math.max(Math.abs(bounds.minY()), Math.abs(bounds.maxY()));
        return bounds.union(new Bounds(bounds.minX(), -reach, bounds.minZ(), bounds.maxX(), reach, bounds.maxZ()));
    }

    private static void checkDensity(Fields fields, Part part) {
        if (part.densityGPerCm3().isEmpty()) {
            return;
        }
        double found = part.densityGPerCm3().get();
        double least = Materials.leastPlausibleGPerCm3(part.kind());
        double greatest = Materials.greatestPlausibleGPerCm3(part.kind());
        if (found >= least && found <= greatest) {
            return;
        }
        double asKgPerM3 = found / 1000;
        boolean perhaps = asKgPerM3 >= least && asKgPerM3 <= greatest;
        Object[] values = {
            "foundGPerCm3", found, "kind", part.kind().word(), "usualFromGPerCm3", least, "usualToGPerCm3", greatest
        };
        if (perhaps) {
            values = withPair(values, "ifKgPerM3ThenGPerCm3", asKgPerM3);
        }
        fields.reportAt("densityGPerCm3", Code.DENSITY_DOUBTFUL, values);
    }

    private static Object[] withPair(Object[] values, String name, Object value) {
        Object[] more = java.util.Arrays.copyOf(values, values.length + 2);
        more[values.length] = name;
        more[values.length + 1] = value;
        return more;
    }

    /** Where a mass is both weighed and to be computed, the weighed one counts; the two should not be far apart. */
    private static void checkMass(Fields fields, Part part) {
        Optional<Double> volume = materialMm3(part);
        if (part.weighedMassG().isEmpty() || part.densityGPerCm3().isEmpty() || volume.isEmpty()) {
            return;
        }
        double weighed = part.weighedMassG().get();
        double computed = part.densityGPerCm3().get() * volume.get() / MM3_PER_CM3;
        if (weighed > MASS_FACTOR * computed || computed > MASS_FACTOR * weighed) {
            fields.reportAt("massG", Code.MASS_DOUBTFUL, "weighedG", weighed, "computedG", computed);
        }
    }

    private static Optional<Double> materialMm3(Part part) {
        HullBuild build = part.build().orElse(null);
        if (build instanceof HullBuild.Skin skin) {
            return Optional.of(skin.thicknessMm() * mesh(part).area());
        }
        if (build instanceof HullBuild.Sealed sealed) {
            return sealed.thicknessMm().map(t -> t * mesh(part).area());
        }
        if (build instanceof HullBuild.Printed printed) {
            return printed.infill().isPresent()
                    ? Optional.empty()
                    : Optional.of(mesh(part).signedVolume());
        }
        return part.shape()
                .map(s -> s instanceof MeshShape m
                        ? m.mesh().signedVolume()
                        : s.solid().volumeMm3());
    }

    private static trimwright.mesh.TriangleMesh mesh(Part part) {
        return ((MeshShape) part.shape().orElseThrow()).mesh();
    }

    private static void checkAxes(Fields boat, Bounds hull) {
        if (hull.sizeX() < Math.max(hull.sizeY(), hull.sizeZ())) {
            boat.reportAt(
                    "parts",
                    Code.HULL_AXES_DOUBTFUL,
                    "sizeXMm",
                    hull.sizeX(),
                    "sizeYMm",
                    hull.sizeY(),
                    "sizeZMm",
                    hull.sizeZ());
        }
    }

    private static void checkSize(Fields boat, Bounds hull) {
        double longest = Math.max(hull.sizeX(), Math.max(hull.sizeY(), hull.sizeZ()));
        if (longest < LEAST_HULL_MM || longest > GREATEST_HULL_MM) {
            boat.reportAt(
                    "parts",
                    Code.HULL_SIZE_DOUBTFUL,
                    "longestMm",
                    longest,
                    "usualFromMm",
                    LEAST_HULL_MM,
                    "usualToMm",
                    GREATEST_HULL_MM);
        }
    }

    private static void checkLine(Fields boat, Bounds hull, PaintedLine line) {
        WaterPlane plane = line.plane();
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int corner = 0; corner < 8; corner++) {
            double height = plane.up().getX() * ((corner & 1) == 0 ? hull.minX() : hull.maxX())
                    + plane.up().getY() * ((corner & 2) == 0 ? hull.minY() : hull.maxY())
                    + plane.up().getZ() * ((corner & 4) == 0 ? hull.minZ() : hull.maxZ());
            lowest = Math.min(lowest, height);
            highest = Math.max(highest, height);
        }
        if (plane.heightMm() <= lowest || plane.heightMm() >= highest) {
            boat.reportAt(
                    "paintedLine",
                    Code.PAINTED_LINE_MISSES_HULL,
                    "lineMm",
                    plane.heightMm(),
                    "hullFromMm",
                    lowest,
                    "hullToMm",
                    highest);
        }
    }
}
