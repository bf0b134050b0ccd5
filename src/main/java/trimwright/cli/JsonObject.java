package trimwright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A JSON object in the making. Members keep the order in which they are put; a key is put once. Numbers are written in full and without a
 * minus before zero; one that is not finite has no place in JSON and becomes {@code null}.
 */
final class JsonObject {

    private static final JsonFactory JSON = new JsonFactory();

    private final Map<String, Object> members = new LinkedHashMap<>();

    JsonObject number(String key, double value) {
        return put(key, value);
    }

    /** Left out where there is none. */
    JsonObject number(String key, Optional<Double> value) {
        return value.isPresent() ? put(key, value.get()) : this;
    }

    JsonObject count(String key, long value) {
        return put(key, value);
    }

    JsonObject text(String key, String value) {
        return put(key, value);
    }

    JsonObject truth(String key, boolean value) {
        return put(key, value);
    }

    /** A point or direction as three numbers. */
    JsonObject vector(String key, Vector3D value) {
        return put(key, List.of(value.getX(), value.getY(), value.getZ()));
    }

    JsonObject object(String key, JsonObject value) {
        return put(key, value);
    }

    /** A list of objects, texts or numbers. */
    JsonObject list(String key, List<?> values) {
        return put(key, values);
    }

    /** A number, text or list of them, whichever it is. */
    JsonObject any(String key, Object value) {
        return put(key, value);
    }

    /** All members of the other object, after those that are here. */
    JsonObject all(JsonObject other) {
        other.members.forEach(this::put);
        return this;
    }

    private JsonObject put(String key, Object value) {
        if (members.putIfAbsent(key, value) != null) {
            throw new IllegalStateException("the key " + key + " is there already");
        }
        return this;
    }

    /** The text of the object, ending in a line feed. */
    String render() {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = JSON.createGenerator(text)) {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            generator.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
            write(generator, this);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be written", e);
        }
        return text.append('\n').toString();
    }

    private static void write(JsonGenerator generator, Object value) throws IOException {
        if (value instanceof JsonObject object) {
            generator.writeStartObject();
            for (Map.Entry<String, Object> member : object.members.entrySet()) {
                generator.writeFieldName(member.getKey());
                write(generator, member.getValue());
            }
            generator.writeEndObject();
        } else if (value instanceof List<?> list) {
            generator.writeStartArray();
            for (Object element : list) {
                write(generator, element);
            }
            generator.writeEndArray();
        } else if (value instanceof Double || value instanceof Float) {
            writeNumber(generator, ((Number) value).doubleValue());
        } else if (value instanceof Number number) {
            generator.writeNumber(number.longValue());
        } else if (value instanceof JsonNode node) {
            generator.writeRawValue(node.toString());
        } else if (value instanceof Boolean truth) {
            generator.writeBoolean(truth);
        } else {
            generator.writeString(value.toString());
        }
    }

    private static void writeNumber(JsonGenerator generator, double value) throws IOException {
        if (Double.isFinite(value)) {
            // Adding zero turns -0.0 into 0.0 and changes nothing else.
            generator.writeNumber(value + 0.0);
        } else {
            generator.writeNull();
        }
    }
}
