package trimwright.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.DivePlan;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.boat.Zone;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;

/** Turns the values of a boat file into a boat, and collects all that is wrong with them. */
final class BoatReader {

    /** Salinity and temperature where the file names only the other. */
    private static final double USUAL_TEMPERATURE_C = 20;

    private static final double USUAL_SALINITY_G_PER_KG = 0;

    /** Density of the water, g/cm³: wide enough for spirit and for brine, and no kg/m³. */
    static final Range WATER_DENSITY_G_PER_CM3 = Range.from(0.5, 2);

    private static final Range DEGREES = Range.from(0, 90);
    private static final Range HEIGHT_MM = Range.from(0, Range.FAR_MM);
    private static final Range FORCE_G = Range.from(-1e9, 1e9);
    private static final List<String> USES =
            Arrays.stream(Zone.Use.values()).map(Zone.Use::word).toList();

    private final JsonDocument document;
    private final MeshSource meshes;

    BoatReader(JsonDocument document, MeshSource meshes) {
        this.document = document;
        this.meshes = meshes;
    }

    /**
     * Reads the boat.
     *
     * @param usualName her name when the file gives none
     * @throws UnusableInputException with every error of the document; meshes that are only unsound are not among them
     */
    Boat read(String usualName) {
        Fields boat = Fields.of(document, "", document.root(), Keys.BOAT).orElseThrow(this::unusable);
        checkVersion(boat);
        boat.require("parts");
        String name = boat.text("name").orElse(usualName);
        Optional<Water> water = boat.object("water", Keys.WATER).flatMap(BoatReader::water);
        Optional<PaintedLine> line = paintedLine(boat);
        List<PartReader.Draft> drafts = parts(boat);
        Plausibility.check(boat, drafts, line);
        List<Zone> zones = zones(boat);
        Targets targets =
                boat.object("targets", Keys.TARGETS).map(BoatReader::targets).orElse(Targets.NONE);
        Optional<DivePlan> divePlan = DiveReader.read(boat, drafts);
        if (document.errors() > 0) {
            throw unusable();
        }
        List<Part> parts = drafts.stream().map(d -> d.part().orElseThrow()).toList();
        return new Boat(name, water.orElse(Water.FRESH), line, parts, zones, targets, divePlan);
    }

    private UnusableInputException unusable() {
        List<Finding> findings = new ArrayList<>(document.findings());
        findings.addAll(meshes.unsound());
        return new UnusableInputException(findings);
    }

    static void checkVersion(Fields boat) {
        List<Integer> allowed = List.of(BoatFile.VERSION);
        if (!boat.hasOrMeans("version")) {
            boat.report(Code.VERSION_MISSING, "allowed", allowed);
        } else if (boat.has("version") && !boat.isNumber("version", BoatFile.VERSION)) {
            boat.reportAt("version", Code.VERSION_UNKNOWN, "found", boat.written("version"), "allowed", allowed);
        }
    }

    static Optional<Water> water(Fields water) {
        boolean outright = water.has("densityGPerCm3");
        if (outright && water.hasAny(List.of("temperatureC", "salinityGPerKg"))) {
            water.report(Code.KEYS_EXCLUDE, "found", water.present(Keys.WATER));
            return Optional.empty();
        }
        if (Keys.WATER.stream().noneMatch(water::hasOrMeans)) {
            water.report(Code.KEY_MISSING, "key", "temperatureC", "needsOneOf", Keys.WATER);
        }
        if (outright) {
            return water.number("densityGPerCm3", WATER_DENSITY_G_PER_CM3).map(Water::ofDensity);
        }
        Range temperatures = Range.from(Water.LEAST_TEMPERATURE_C, Water.GREATEST_TEMPERATURE_C);
        Range salinities = Range.from(0, Water.GREATEST_SALINITY_G_PER_KG);
        return Optional.of(Water.of(
                water.number("temperatureC", temperatures).orElse(USUAL_TEMPERATURE_C),
                water.number("salinityGPerKg", salinities).orElse(USUAL_SALINITY_G_PER_KG)));
    }

    private static Optional<PaintedLine> paintedLine(Fields boat) {
        Optional<List<Vector3D>> points = boat.points("paintedLine", 2, 3);
        if (points.isPresent() && !PaintedLine.spansAPlane(points.get())) {
            boat.reportAt("paintedLine", Code.PAINTED_LINE_NO_PLANE, "found", boat.written("paintedLine"));
            return Optional.empty();
        }
        return points.map(PaintedLine::new);
    }

    private List<PartReader.Draft> parts(Fields boat) {
        int before = document.errors();
        List<Fields> objects = boat.objects("parts", Keys.part());
        if (objects.isEmpty() && boat.has("parts") && document.errors() == before) {
            boat.reportAt("parts", Code.NO_PARTS);
        }
        PartReader reader = new PartReader(meshes);
        List<PartReader.Draft> drafts = objects.stream().map(reader::read).toList();
        Map<String, Fields> first = new HashMap<>();
        drafts.forEach(d -> reportIfAgain(d.fields(), d.id(), first));
        Containers.check(drafts);
        if (!drafts.isEmpty()
                && drafts.stream()
                        .allMatch(
                                d -> d.part().isPresent() && isMassless(d.part().get()))) {
            boat.reportAt("parts", Code.NO_MASS);
        }
        return drafts;
    }

    /** @param first the first object of each id so far */
    static void reportIfAgain(Fields object, Optional<String> id, Map<String, Fields> first) {
        Fields before = id.isPresent() ? first.putIfAbsent(id.get(), object) : null;
        if (before != null) {
            object.reportAt("id", Code.ID_DUPLICATE, "found", id.get(), "firstAt", before.at("id"));
        }
    }

    private static boolean isMassless(Part part) {
        return part.weighedMassG().map(m -> m == 0).orElse(part.isTank() || part.isAir());
    }

    private static List<Zone> zones(Fields boat) {
        Map<String, Fields> first = new HashMap<>();
        List<Zone> zones = new ArrayList<>();
        for (Fields zone : boat.objects("zones", Keys.ZONE)) {
            zone.require("id", "for", "box");
            Optional<String> id = zone.text("id");
            Optional<Zone.Use> use = zone.word("for", Zone.Use::ofWord, USES);
            Optional<BoxShape> box =
                    zone.object("box", Keys.BOX).flatMap(ShapeReader::box).map(BoxShape.class::cast);
            Optional<Double> most = zone.number("maxG", Range.MASS_G);
            boolean mirror = zone.flag("mirror");
            reportIfAgain(zone, id, first);
            if (id.isPresent() && use.isPresent() && box.isPresent()) {
                zones.add(new Zone(id.get(), use.get(), box.get(), most, mirror));
            }
        }
        return zones;
    }

    private static Targets targets(Fields targets) {
        Optional<List<Double>> residual = targets.numbers("residualG", 2, 2, FORCE_G);
        if (residual.isPresent()) {
            double least = residual.get().get(0);
            double greatest = residual.get().get(1);
            if (least > greatest) {
                targets.reportAt("residualG", Code.BAND_REVERSED, "leastG", least, "greatestG", greatest);
            } else if (least < 0) {
                targets.reportAt("residualG", Code.RESIDUAL_MAY_SINK, "leastG", least, "greatestG", greatest);
            }
        }
        return new Targets(
                targets.number("bgMm", HEIGHT_MM),
                targets.number("gmMm", HEIGHT_MM),
                residual.map(r -> new Targets.Band(r.get(0), r.get(1))),
                targets.number("offLineMm", HEIGHT_MM),
                targets.number("listDeg", DEGREES),
                targets.number("divedTrimDeg", DEGREES));
    }
}
