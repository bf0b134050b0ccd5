package trimwright.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.Margins;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Softness;
import trimwright.finding.Code;
import trimwright.mesh.MeshUse;

/** Reads one part of the boat. */
final class PartReader {

    private static final List<String> KINDS =
            Arrays.stream(Kind.values()).map(Kind::word).toList();

    private final ShapeReader shapes;
    private final MeshSource meshes;

    PartReader(MeshSource meshes) {
        this.meshes = meshes;
        this.shapes = new ShapeReader(meshes);
    }

    /**
     * What could be read of a part.
     *
     * @param fields where it stands
     * @param id its id, where it has one
     * @param inside the id it names as its container
     * @param part the part; empty when anything in it is wrong
     */
    record Draft(Fields fields, Optional<String> id, Optional<String> inside, Optional<Part> part) {}

    Draft read(Fields fields) {
        fields.require("id", "kind");
        Optional<String> id = fields.text("id");
        Optional<Kind> kind = fields.word("kind", Kind::ofWord, KINDS);
        Optional<String> inside = fields.text("inside");
        Optional<Part> part = kind.flatMap(k -> new OfKind(fields, k).part(id, inside));
        return new Draft(fields, id, inside, part);
    }

    /** The keys of a part whose kind is known; a key that the kind does not take is refused and not read. */
    private final class OfKind {

        private final Fields fields;
        private final Kind kind;
        private final Optional<String> build;

        OfKind(Fields fields, Kind kind) {
            this.fields = fields;
            this.kind = kind;
            for (String key : fields.present(Keys.part())) {
                if (!takes(key)) {
                    fields.reportAt(
                            key,
                            Code.KEY_NOT_FOR_KIND,
                            "key",
                            key,
                            "kind",
                            kind.word(),
                            "kinds",
                            Keys.kindsTaking(key));
                }
            }
            build = kind == Kind.HULL ? build() : Optional.empty();
        }

        private boolean takes(String key) {
            return Keys.part(kind).contains(key);
        }

        private Optional<String> build() {
            fields.require("build", "mesh");
            Optional<String> word =
                    fields.word("build", w -> Optional.of(w).filter(Keys.BUILDS::contains), Keys.BUILDS);
            word.ifPresent(way -> {
                for (String key : fields.present(Keys.dependingOnBuild())) {
                    if (!Keys.buildsTaking(key).contains(way)) {
                        fields.reportAt(
                                key,
                                Code.KEY_NOT_FOR_BUILD,
                                "key",
                                key,
                                "build",
                                way,
                                "builds",
                                Keys.buildsTaking(key));
                    }
                }
            });
            return word;
        }

        Optional<Part> part(Optional<String> id, Optional<String> inside) {
            Optional<Double> massG = takes("massG") ? fields.number("massG", Range.MASS_G) : Optional.empty();
            Optional<Double> density = takes("densityGPerCm3")
                    ? fields.number("densityGPerCm3", Range.DENSITY_G_PER_CM3)
                    : Optional.empty();
            Optional<Vector3D> centre = takes("centreMm") ? fields.point("centreMm") : Optional.empty();
            boolean mirror = fields.flag("mirror");
            double fill =
                    takes("fill") ? fields.number("fill", Range.from(0, 1)).orElse(0.0) : 0;
            Optional<Shape> shape = kind == Kind.HULL ? hullShape() : shapes.body(fields, kind);
            Optional<HullBuild> hullBuild = build.flatMap(this::hullBuild);
            requireMass();
            Softness softness = softness();
            boolean fixed = !takes("fixed") || !fields.has("fixed") || fields.flag("fixed");
            Margins margins = fields.object("plusMinus", Keys.PLUS_MINUS)
                    .map(PartReader::margins)
                    .orElse(Margins.USUAL);
            // A mesh that cannot be read is reported about its own file, not here.
            boolean unread = ShapeReader.isGiven(fields) && shape.isEmpty();
            if (fields.hasErrors() || unread) {
                return Optional.empty();
            }
            return Optional.of(new Part(
                    id.get(), kind, shape, hullBuild, massG, density, centre, inside, mirror, fill, softness, fixed,
                    margins));
        }

        /** How the part gives way to the water; one that stands inside another does not meet it. */
        private Softness softness() {
            List<String> present =
                    fields.present(Keys.SOFTNESS).stream().filter(this::takes).toList();
            if (fields.has("inside") && !present.isEmpty()) {
                List<String> found = new ArrayList<>(present);
                found.add(0, "inside");
                fields.report(Code.KEYS_EXCLUDE, "found", found);
            }
            Optional<Double> compression = numberOf("compressionPercentPerM");
            Optional<Double> uptake = numberOf("uptakePercent");
            boolean softFoam = takes("softFoam") && fields.flag("softFoam");
            if (softFoam && fields.has("compressionPercentPerM")) {
                fields.report(Code.KEYS_EXCLUDE, "found", present);
                return Softness.NONE;
            }
            return new Softness(compression, softFoam, uptake);
        }

        private Optional<Double> numberOf(String percentKey) {
            return takes(percentKey) ? fields.number(percentKey, Range.from(0, 100)) : Optional.empty();
        }

        private Optional<Shape> hullShape() {
            if (!fields.has("mesh")) {
                return Optional.empty();
            }
            // Of a hull whose build cannot be read nothing is asked.
            MeshUse use = build.map(word -> MeshUse.valueOf(word.toUpperCase(Locale.ROOT)))
                    .orElse(MeshUse.SKIN);
            return meshes.shape(fields, use).map(Shape.class::cast);
        }

        private Optional<HullBuild> hullBuild(String way) {
            switch (way) {
                case "sealed":
                    return Optional.of(new HullBuild.Sealed(fields.number("thicknessMm", Range.LENGTH_MM)));
                case "skin":
                    fields.require("thicknessMm");
                    return fields.number("thicknessMm", Range.LENGTH_MM).map(HullBuild.Skin::new);
                default:
                    return Optional.of(new HullBuild.Printed(
                            fields.object("infill", Keys.INFILL).flatMap(PartReader::infill)));
            }
        }

        /** Every part but air needs a mass or what it is computed from. */
        private void requireMass() {
            if (kind == Kind.AIR) {
                return;
            }
            boolean weighed = fields.hasOrMeans("massG");
            boolean dense = fields.hasOrMeans("densityGPerCm3");
            if (kind == Kind.TANK) {
                if (fields.has("centreMm") && !weighed) {
                    fields.reportAt("centreMm", Code.KEY_NEEDS_KEY, "key", "centreMm", "needs", List.of("massG"));
                }
            } else if (kind == Kind.HULL) {
                if (build.isPresent()) {
                    boolean sealed = build.get().equals("sealed");
                    boolean computed = dense && (!sealed || fields.hasOrMeans("thicknessMm"));
                    requireMass(weighed || computed, sealed ? "thicknessMm + densityGPerCm3" : "densityGPerCm3");
                }
            } else if (ShapeReader.isGiven(fields)) {
                requireMass(weighed || dense, "densityGPerCm3");
            } else if (ShapeReader.mayBeCompact(kind) && (fields.has("centreMm") || fields.has("massG"))) {
                fields.require("centreMm", "massG");
                if (!fields.hasOrMeans("inside")) {
                    fields.require("densityGPerCm3");
                }
            }
        }

        private void requireMass(boolean there, String computedFrom) {
            if (!there) {
                fields.report(Code.MASS_MISSING, "kind", kind.word(), "needsOneOf", List.of("massG", computedFrom));
            }
        }
    }

    private static Margins margins(Fields margins) {
        return new Margins(
                margins.number("massG", Range.MASS_G),
                margins.number("placeMm", Range.from(0, Range.FAR_MM)),
                margins.number("volumePercent", Range.from(0, 100)));
    }

    private static Optional<HullBuild.Infill> infill(Fields infill) {
        infill.require("wallMm", "percent");
        Optional<Double> wall = infill.number("wallMm", Range.from(0, Range.FAR_MM));
        Optional<Double> percent = infill.number("percent", Range.from(0, 100));
        boolean floods = infill.flag("floods");
        if (wall.isEmpty() || percent.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new HullBuild.Infill(wall.get(), percent.get(), floods));
    }
}
