package trimwright.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;
import trimwright.finding.Code;
import trimwright.finding.UnusableInputException;

/** Reads and saves files of readings, {@code *.pool.json}. Every key, unit and default stands in {@code docs/pool-file.md}. */
public final class PoolFile {

    private static final Range FILL = Range.from(0, 1);
    private static final Range MASS_CHANGE_G = Range.from(-1e9, 1e9);
    private static final Range HEIGHT_MM = Range.from(-Range.FAR_MM, Range.FAR_MM);
    private static final Range LIST_DEG = Range.from(-180, 180);
    private static final Range TRIM_DEG = Range.from(-90, 90);
    private static final Range REST_DEG = Range.above(0, 90);
    private static final Range SECONDS = Range.above(0, 1000);
    private static final Range ERROR = Range.above(0, 1e6);
    private static final List<String> ENDS = List.of("bow", "stern");

    private final Boat boat;
    private final JsonDocument document;
    /** How many readings there must be at least, and how many things seen in each: none while they are being entered. */
    private final int fewest;

    private PoolFile(Boat boat, JsonDocument document, int fewest) {
        this.boat = boat;
        this.document = document;
        this.fewest = fewest;
    }

    /**
     * Reads the readings of a boat.
     *
     * @param boat the boat that was read: her tanks are filled, and her painted line is read at
     * @throws UnusableInputException with every error in the file
     */
    public static PoolTest read(Path path, Boat boat) {
        return load(path, boat).test();
    }

    /** The same, with the file's text, to be changed. */
    public static LoadedReadings load(Path path, Boat boat) {
        JsonDocument document = JsonDocument.parse(path.toString(), BoatFile.bytes(path));
        PoolTest test = new PoolFile(boat, document, 1).test(usualName(path));
        return new LoadedReadings(Optional.of(path), document.text(), test);
    }

    /** No readings yet, to be entered. */
    public static LoadedReadings none() {
        String text = "{\n  \"version\": 1,\n  \"readings\": []\n}\n";
        return new LoadedReadings(Optional.empty(), text, new PoolTest("", "", List.of()));
    }

    /**
     * Readings after a change of their text, or as they are for another boat; nothing is saved. There may be no reading, or one in which nothing was seen
     * yet.
     *
     * @throws UnusableInputException with every error in the text
     */
    public static LoadedReadings edited(LoadedReadings before, String text, Boat boat) {
        String name = before.path().map(Path::toString).orElse("readings");
        PoolTest test = new PoolFile(boat, JsonDocument.parse(name, text), 0)
                .test(before.path().map(PoolFile::usualName).orElse("Readings"));
        return new LoadedReadings(before.path(), text, test);
    }

    /**
     * Saves the text of readings, exactly as it is, whole or not at all.
     *
     * @param overwrite whether an existing file may be replaced
     * @throws UnusableInputException when there is no reading, or one in which nothing was seen; when the file exists and may not be replaced, or
     *     cannot be written
     */
    public static LoadedReadings write(LoadedReadings readings, Boat boat, Path to, boolean overwrite) {
        PoolTest test = new PoolFile(boat, JsonDocument.parse(to.toString(), readings.text()), 1).test(usualName(to));
        AtomicFile.write(to, readings.text().getBytes(StandardCharsets.UTF_8), overwrite);
        return new LoadedReadings(Optional.of(to), readings.text(), test);
    }

    private static String usualName(Path path) {
        return String.valueOf(path.getFileName());
    }

    private PoolTest test(String usualName) {
        Fields test = Fields.of(document, "", document.root(), Keys.POOL).orElseThrow(this::unusable);
        BoatReader.checkVersion(test);
        test.require("readings");
        Map<String, Fields> first = new HashMap<>();
        List<Reading> readings = new ArrayList<>();
        for (Fields reading : test.objects("readings", fewest, Keys.READING)) {
            reading.require("id", "seen");
            Optional<String> id = reading.text("id");
            BoatReader.reportIfAgain(reading, id, first);
            readings.add(new Reading(
                    id.orElse(""),
                    fills(reading),
                    reading.object("water", Keys.WATER).flatMap(BoatReader::water),
                    added(reading),
                    moved(reading),
                    seen(reading)));
        }
        if (document.errors() > 0) {
            throw unusable();
        }
        return new PoolTest(
                test.text("name").orElse(usualName), test.text("date").orElse(""), readings);
    }

    private UnusableInputException unusable() {
        return new UnusableInputException(document.findings());
    }

    private Map<String, Double> fills(Fields reading) {
        List<String> tanks =
                boat.parts().stream().filter(Part::isTank).map(Part::id).toList();
        Map<String, Double> fills = new LinkedHashMap<>();
        if (reading.has("fills") && tanks.isEmpty()) {
            reading.reportAt("fills", Code.DIVE_NO_TANK);
            return fills;
        }
        reading.object("fills", tanks)
                .ifPresent(f ->
                        f.present(tanks).forEach(id -> f.number(id, FILL).ifPresent(fill -> fills.put(id, fill))));
        return fills;
    }

    private static List<KnownWeight> added(Fields reading) {
        List<KnownWeight> added = new ArrayList<>();
        for (Fields weight : reading.objects("added", Keys.ADDED)) {
            weight.require("massG", "centreMm");
            Optional<Double> massG = weight.number("massG", MASS_CHANGE_G);
            Optional<Vector3D> centre = weight.point("centreMm");
            Optional<Double> density = weight.number("densityGPerCm3", Range.DENSITY_G_PER_CM3);
            if (massG.isPresent() && centre.isPresent()) {
                added.add(new KnownWeight(massG.get(), centre.get(), density));
            }
        }
        return added;
    }

    private static List<WeightMoved> moved(Fields reading) {
        List<WeightMoved> moved = new ArrayList<>();
        for (Fields weight : reading.objects("moved", Keys.MOVED)) {
            weight.require("massG", "byMm");
            Optional<Double> massG = weight.number("massG", Range.MASS_G);
            Optional<Vector3D> by = weight.point("byMm");
            if (massG.isPresent() && by.isPresent()) {
                moved.add(new WeightMoved(massG.get(), by.get()));
            }
        }
        return moved;
    }

    private List<Sighting> seen(Fields reading) {
        List<Sighting> seen = new ArrayList<>();
        for (Fields sighting : reading.objects("seen", fewest, Keys.seen())) {
            sighting(sighting).ifPresent(seen::add);
        }
        return seen;
    }

    private Optional<Sighting> sighting(Fields fields) {
        List<String> keys = Stream.of(Quantity.values()).map(Quantity::key).toList();
        List<String> present = fields.present(keys);
        if (present.isEmpty()) {
            if (keys.stream().noneMatch(fields::hasOrMeans)) {
                fields.report(Code.KEY_MISSING, "key", keys.get(0), "needsOneOf", keys);
            }
            return Optional.empty();
        }
        if (present.size() > 1) {
            fields.report(Code.KEYS_EXCLUDE, "found", present);
            return Optional.empty();
        }
        Quantity quantity = Stream.of(Quantity.values())
                .filter(q -> q.key().equals(present.get(0)))
                .findFirst()
                .orElseThrow();
        refuseErrorsInOtherUnits(fields, quantity);
        Optional<Double> value = fields.number(quantity.key(), range(quantity));
        Optional<Double> error = fields.has(quantity.errorKey())
                ? fields.number(quantity.errorKey(), ERROR)
                : Optional.of(quantity.usualError());
        Optional<Vector3D> at = quantity.isAtAPoint() ? point(fields) : noPoint(fields, quantity);
        boolean complete = value.isPresent() && error.isPresent() && at.isPresent() == quantity.isAtAPoint();
        return complete ? Optional.of(new Sighting(quantity, value.get(), error.get(), at)) : Optional.empty();
    }

    /** A list of 2° ± 0.5 mm makes no sense, and must not be taken for one with the usual error. */
    private static void refuseErrorsInOtherUnits(Fields fields, Quantity quantity) {
        for (Quantity other : Quantity.values()) {
            if (!other.errorKey().equals(quantity.errorKey()) && fields.has(other.errorKey())) {
                fields.reportAt(
                        other.errorKey(),
                        Code.POOL_ERROR_IN_OTHER_UNIT,
                        "key",
                        other.errorKey(),
                        "quantity",
                        quantity.key(),
                        "allowed",
                        quantity.errorKey());
                return;
            }
        }
    }

    private Optional<Vector3D> point(Fields fields) {
        if (fields.has("at") && fields.has("atMm")) {
            fields.report(Code.KEYS_EXCLUDE, "found", List.of("at", "atMm"));
            return Optional.empty();
        }
        if (fields.has("atMm")) {
            return fields.point("atMm");
        }
        if (!fields.has("at")) {
            fields.report(Code.KEY_MISSING, "key", "at", "needsOneOf", List.of("at", "atMm"));
            return Optional.empty();
        }
        Optional<String> end = fields.word("at", w -> Optional.of(w).filter(ENDS::contains), ENDS);
        if (end.isPresent() && boat.paintedLine().isEmpty()) {
            fields.reportAt("at", Code.POOL_NO_LINE);
            return Optional.empty();
        }
        return end.map(word -> word.equals("bow") ? line().foremostMm() : line().aftmostMm());
    }

    private PaintedLine line() {
        return boat.paintedLine().orElseThrow();
    }

    private static Optional<Vector3D> noPoint(Fields fields, Quantity quantity) {
        for (String key : fields.present(List.of("at", "atMm"))) {
            fields.reportAt(key, Code.POOL_POINT_UNUSED, "key", key, "quantity", quantity.key());
        }
        return Optional.empty();
    }

    private static Range range(Quantity quantity) {
        return switch (quantity) {
            case WATER_ABOVE, FREEBOARD -> HEIGHT_MM;
            case LIST -> LIST_DEG;
            case TRIM -> TRIM_DEG;
            case HANGING -> Range.MASS_G;
            case RESTS_AT -> REST_DEG;
            case ROLL -> SECONDS;
        };
    }
}
