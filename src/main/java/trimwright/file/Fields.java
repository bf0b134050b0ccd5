package trimwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.finding.Code;

/**
 * One object of the boat file, read key by key. A missing key gives an empty result; a wrong value too, after it has been
 * reported.
 */
final class Fields {

    /** The most parts, zones, readings or steps of a plan in one file. */
    static final int MOST_OBJECTS = 1000;

    private final JsonDocument document;
    private final String pointer;
    private final JsonNode node;
    /** Known keys that a mistyped one probably stands for: they are not reported as missing as well. */
    private final Set<String> mistyped = new HashSet<>();

    private Fields(JsonDocument document, String pointer, JsonNode node, List<String> known) {
        this.document = document;
        this.pointer = pointer;
        this.node = node;
        node.fieldNames().forEachRemaining(key -> {
            if (!known.contains(key)) {
                String nearest = Nearest.to(key, known);
                mistyped.add(nearest);
                document.report(Code.UNKNOWN_KEY, at(key), "key", key, "nearest", nearest, "allowed", known);
            }
        });
    }

    /** The object at the pointer; empty when there is another kind of value. */
    static Optional<Fields> of(JsonDocument document, String pointer, JsonNode node, List<String> known) {
        if (!node.isObject()) {
            reportType(document, pointer, node, "object");
            return Optional.empty();
        }
        return Optional.of(new Fields(document, pointer, node, known));
    }

    private static void reportType(JsonDocument document, String at, JsonNode node, String allowed) {
        document.report(
                Code.WRONG_TYPE,
                at,
                "found",
                document.written(at),
                "foundType",
                node.getNodeType().name().toLowerCase(Locale.ROOT),
                "allowedType",
                allowed);
    }

    String pointer() {
        return pointer;
    }

    /** The JSON pointer of a key of this object. */
    String at(String key) {
        return pointer + "/" + JsonDocument.escaped(key);
    }

    boolean has(String key) {
        return node.has(key);
    }

    boolean hasAny(List<String> keys) {
        return keys.stream().anyMatch(this::has);
    }

    /** The keys of this object, in its order, that are among the given ones. */
    List<String> present(Collection<String> keys) {
        List<String> present = new ArrayList<>();
        node.fieldNames().forEachRemaining(key -> {
            if (keys.contains(key)) {
                present.add(key);
            }
        });
        return present;
    }

    /** Whether a key is there, or was probably meant by one that is not known. */
    boolean hasOrMeans(String key) {
        return has(key) || mistyped.contains(key);
    }

    /** Whether anything in this object is wrong, unknown keys included. */
    boolean hasErrors() {
        return document.hasErrorsIn(pointer);
    }

    /** How many errors have been found in the whole document so far. */
    int errorsInDocument() {
        return document.errors();
    }

    /** Reports about the object itself. */
    void report(Code code, Object... values) {
        document.report(code, pointer, values);
    }

    /** Reports about the value of a key. */
    void reportAt(String key, Code code, Object... values) {
        document.report(code, at(key), values);
    }

    /** The value of a key as it is written. */
    String written(String key) {
        return document.written(at(key));
    }

    /** Reports every key that is missing, unless a mistyped one probably stands for it. */
    void require(String... keys) {
        for (String key : keys) {
            if (!hasOrMeans(key)) {
                report(Code.KEY_MISSING, "key", key);
            }
        }
    }

    boolean isNumber(String key, double value) {
        return node.path(key).isNumber() && node.get(key).doubleValue() == value;
    }

    Optional<Double> number(String key, Range range) {
        return has(key) ? number(at(key), node.get(key), range) : Optional.empty();
    }

    private Optional<Double> number(String at, JsonNode value, Range range) {
        if (!value.isNumber()) {
            reportType(document, at, value, "number");
            return Optional.empty();
        }
        double number = value.doubleValue();
        if (!range.holds(number)) {
            document.report(
                    Code.NUMBER_OUT_OF_RANGE,
                    at,
                    "key",
                    keyOf(at),
                    "found",
                    document.written(at),
                    range.lowName(),
                    range.low(),
                    "greatest",
                    range.high());
            return Optional.empty();
        }
        return Optional.of(number);
    }

    /** The last key in a pointer, which carries the unit; the index of an array says nothing. */
    private static String keyOf(String at) {
        String[] steps = at.split("/", -1);
        int last = steps.length - 1;
        while (last > 0 && steps[last].chars().allMatch(Character::isDigit)) {
            last--;
        }
        return steps[last];
    }

    Optional<String> text(String key) {
        if (!has(key)) {
            return Optional.empty();
        }
        JsonNode value = node.get(key);
        if (!value.isTextual()) {
            reportType(document, at(key), value, "string");
            return Optional.empty();
        }
        if (value.textValue().isBlank()) {
            reportAt(key, Code.TEXT_EMPTY, "key", key);
            return Optional.empty();
        }
        return Optional.of(value.textValue());
    }

    /** One of a few words. */
    <T> Optional<T> word(String key, Function<String, Optional<T>> meaning, List<String> allowed) {
        Optional<String> word = text(key);
        Optional<T> value = word.flatMap(meaning);
        if (word.isPresent() && value.isEmpty()) {
            String nearest = Nearest.to(word.get(), allowed);
            reportAt(
                    key,
                    Code.WORD_NOT_ALLOWED,
                    "key",
                    key,
                    "found",
                    word.get(),
                    "nearest",
                    nearest,
                    "allowed",
                    allowed);
        }
        return value;
    }

    /** True or false; a missing key means false. */
    boolean flag(String key) {
        if (has(key) && !node.get(key).isBoolean()) {
            reportType(document, at(key), node.get(key), "boolean");
        }
        return has(key) && node.get(key).booleanValue();
    }

    /** The object under a key. */
    Optional<Fields> object(String key, List<String> known) {
        return has(key) ? of(document, at(key), node.get(key), known) : Optional.empty();
    }

    /** The objects of the array under a key; what is no object is reported and left out. */
    List<Fields> objects(String key, List<String> known) {
        return objects(key, 0, known);
    }

    /** The same, of which there must be a few; and never more than {@link #MOST_OBJECTS}, since every part is compared with every other. */
    List<Fields> objects(String key, int fewest, List<String> known) {
        List<Fields> objects = new ArrayList<>();
        for (Element element : elements(key, fewest, MOST_OBJECTS).orElse(List.of())) {
            of(document, element.at(), element.node(), known).ifPresent(objects::add);
        }
        return objects;
    }

    /** A point or shift: three numbers, mm. */
    Optional<Vector3D> point(String key) {
        return elements(key, 3, 3).flatMap(this::pointOf);
    }

    /** An array of points. */
    Optional<List<Vector3D>> points(String key, int fewest, int most) {
        Optional<List<Element>> elements = elements(key, fewest, most);
        if (elements.isEmpty()) {
            return Optional.empty();
        }
        List<Vector3D> points = new ArrayList<>();
        for (Element element : elements.get()) {
            elements(element.at(), element.node(), 3, 3).flatMap(this::pointOf).ifPresent(points::add);
        }
        return points.size() == elements.get().size() ? Optional.of(points) : Optional.empty();
    }

    private Optional<Vector3D> pointOf(List<Element> three) {
        Optional<List<Double>> numbers = numbersOf(three, Range.COORDINATE_MM);
        return numbers.map(n -> new Vector3D(n.get(0), n.get(1), n.get(2)));
    }

    /** A non-empty array of non-empty arrays of texts; empty when missing or wrong. */
    Optional<List<List<String>>> groupsOfTexts(String key) {
        Optional<List<Element>> groups = elements(key, 1, Integer.MAX_VALUE);
        if (groups.isEmpty()) {
            return Optional.empty();
        }
        int before = document.errors();
        List<List<String>> all = new ArrayList<>();
        for (Element group : groups.get()) {
            List<String> texts = new ArrayList<>();
            for (Element element :
                    elements(group.at(), group.node(), 1, Integer.MAX_VALUE).orElse(List.of())) {
                if (element.node().isTextual()) {
                    texts.add(element.node().textValue());
                } else {
                    reportType(document, element.at(), element.node(), "string");
                }
            }
            all.add(texts);
        }
        return document.errors() > before ? Optional.empty() : Optional.of(all);
    }

    /** An array of whole numbers of one range; empty when missing or wrong. */
    List<Integer> wholeNumbers(String key, Range range) {
        List<Integer> whole = new ArrayList<>();
        for (Element element : elements(key, 1, Integer.MAX_VALUE).orElse(List.of())) {
            Optional<Double> number = number(element.at(), element.node(), range);
            if (number.isPresent() && number.get() != Math.rint(number.get())) {
                reportType(document, element.at(), element.node(), "whole number");
            } else {
                number.ifPresent(n -> whole.add(n.intValue()));
            }
        }
        return whole;
    }

    /** An array of numbers, all of one range. */
    Optional<List<Double>> numbers(String key, int fewest, int most, Range range) {
        return elements(key, fewest, most).flatMap(all -> numbersOf(all, range));
    }

    private Optional<List<Double>> numbersOf(List<Element> elements, Range range) {
        List<Double> numbers = new ArrayList<>();
        for (Element element : elements) {
            number(element.at(), element.node(), range).ifPresent(numbers::add);
        }
        return numbers.size() == elements.size() ? Optional.of(numbers) : Optional.empty();
    }

    private record Element(String at, JsonNode node) {}

    private Optional<List<Element>> elements(String key, int fewest, int most) {
        return has(key) ? elements(at(key), node.get(key), fewest, most) : Optional.empty();
    }

    private Optional<List<Element>> elements(String at, JsonNode array, int fewest, int most) {
        if (!array.isArray()) {
            reportType(document, at, array, "array");
            return Optional.empty();
        }
        int count = array.size();
        if (count < fewest || count > most) {
            List<Object> values = new ArrayList<>(List.of("key", keyOf(at), "found", count, "least", fewest));
            if (most < Integer.MAX_VALUE) {
                values.addAll(List.of("greatest", most));
            }
            document.report(Code.WRONG_LENGTH, at, values.toArray());
            return Optional.empty();
        }
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            elements.add(new Element(at + "/" + i, array.get(i)));
        }
        return Optional.of(elements);
    }
}
