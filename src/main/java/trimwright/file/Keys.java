package trimwright.file;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import trimwright.boat.Kind;
import trimwright.boat.pool.Quantity;

/**
 * Every key of the boat file, version 1. One table for the reader, for the suggestions after a mistyped key and for the
 * lists of what is allowed; the JSON Schema in {@code docs} is held against it by a test.
 */
final class Keys {

    static final List<String> BOAT =
            List.of("version", "name", "water", "paintedLine", "parts", "zones", "targets", "dive");
    static final List<String> WATER = List.of("temperatureC", "salinityGPerKg", "densityGPerCm3");
    static final List<String> IMPORT = List.of("unit", "scale", "forward", "up", "moveMm", "shells");
    static final List<String> BOX = List.of("fromMm", "toMm");
    static final List<String> INFILL = List.of("wallMm", "percent", "floods");
    static final List<String> ZONE = List.of("id", "for", "box", "maxG", "mirror");
    static final List<String> TARGETS = List.of("bgMm", "gmMm", "residualG", "offLineMm", "listDeg", "divedTrimDeg");

    static final List<String> DIVE = List.of("order", "schedule");
    static final List<String> DIVE_STATE = List.of("fills");

    static final List<String> POOL = List.of("version", "name", "date", "readings");
    static final List<String> READING = List.of("id", "fills", "water", "added", "moved", "seen");
    static final List<String> ADDED = List.of("massG", "centreMm", "densityGPerCm3");
    static final List<String> MOVED = List.of("massG", "byMm");

    /** How far what is said of a part may be off. */
    static final List<String> PLUS_MINUS = List.of("massG", "placeMm", "volumePercent");

    /** The keys that say how a part gives way to the water. */
    static final List<String> SOFTNESS = List.of("compressionPercentPerM", "softFoam", "uptakePercent");

    /** The keys of a part, and the kinds that take each. */
    private static final Map<String, Set<Kind>> PART = new LinkedHashMap<>();

    /** The keys of a hull that not every way of building takes, and the ways that take each. */
    private static final Map<String, List<String>> HULL =
            Map.of("thicknessMm", List.of("sealed", "skin"), "infill", List.of("printed"));

    static final List<String> BUILDS = List.of("sealed", "skin", "printed");

    static {
        Set<Kind> all = EnumSet.allOf(Kind.class);
        Set<Kind> hull = EnumSet.of(Kind.HULL);
        Set<Kind> bodies = EnumSet.complementOf(EnumSet.of(Kind.HULL));
        Set<Kind> tank = EnumSet.of(Kind.TANK);
        Set<Kind> heavy = EnumSet.complementOf(EnumSet.of(Kind.AIR));
        Set<Kind> material = EnumSet.complementOf(EnumSet.of(Kind.TANK, Kind.AIR));
        PART.put("id", all);
        PART.put("kind", all);
        PART.put("inside", heavy);
        PART.put("mirror", all);
        PART.put("mesh", all);
        PART.put("import", all);
        PART.put("box", bodies);
        PART.put("fromMm", bodies);
        PART.put("toMm", bodies);
        PART.put("diameterMm", bodies);
        PART.put("ends", bodies);
        PART.put("build", hull);
        PART.put("thicknessMm", hull);
        PART.put("infill", hull);
        PART.put("massG", heavy);
        PART.put("densityGPerCm3", material);
        PART.put("centreMm", heavy);
        PART.put("fill", tank);
        PART.put("compressionPercentPerM", material);
        PART.put("softFoam", EnumSet.of(Kind.FOAM));
        PART.put("uptakePercent", material);
        PART.put("plusMinus", all);
        PART.put("fixed", EnumSet.of(Kind.BALLAST, Kind.FOAM));
    }

    /** The keys of something that was seen: where, one quantity, and how far it may be off. */
    static List<String> seen() {
        return Stream.of(
                        Stream.of("at", "atMm"),
                        Stream.of(Quantity.values()).map(Quantity::key),
                        Stream.of(Quantity.values()).map(Quantity::errorKey).distinct())
                .flatMap(keys -> keys)
                .toList();
    }

    private Keys() {}

    /** Every key that some kind of part takes. */
    static List<String> part() {
        return List.copyOf(PART.keySet());
    }

    /** The keys that a kind of part takes. */
    static List<String> part(Kind kind) {
        List<String> keys = new ArrayList<>();
        PART.forEach((key, kinds) -> {
            if (kinds.contains(kind)) {
                keys.add(key);
            }
        });
        return keys;
    }

    /** The kinds that take a key of a part. */
    static List<String> kindsTaking(String key) {
        return PART.get(key).stream().map(Kind::word).toList();
    }

    /** The ways of building a hull that take a key which hulls take. */
    static List<String> buildsTaking(String key) {
        return HULL.getOrDefault(key, BUILDS);
    }

    /** The keys that hulls take, but not hulls of every build. */
    static Set<String> dependingOnBuild() {
        return HULL.keySet();
    }
}
