package trimwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Reading;

/**
 * Readings with the file they came from. Each change is one of the file's text: what is not changed stays as it was written. Nothing is saved before
 * {@link PoolFile#write}.
 *
 * @param path the file; empty while there is none
 * @param text its text
 * @param test what it says of a boat; a reading here may have nothing seen yet
 */
public record LoadedReadings(Optional<Path> path, String text, PoolTest test) {

    private static final String READINGS = "/readings/";

    /**
     * With a reading more, at the end.
     *
     * @throws trimwright.finding.UnusableInputException when it cannot be, say because its id is taken
     */
    public LoadedReadings plus(Reading reading, Boat boat) {
        ObjectNode node = ReadingJson.of(reading, boat);
        String edited = test.readings().isEmpty() ? beginning(node) : JsonText.with(text, "/readings/-", node);
        return PoolFile.edited(this, edited, boat);
    }

    /** The first reading takes a line of its own, and so do all that follow. */
    private String beginning(ObjectNode first) {
        JsonDocument.Span list = JsonDocument.parse("", text).span("/readings");
        String indent = "    ";
        return text.substring(0, list.start()) + "[\n" + indent + JsonText.written(first, indent.length()) + "\n  ]"
                + text.substring(list.end());
    }

    /** Without a reading. */
    public LoadedReadings without(String id, Boat boat) {
        return PoolFile.edited(this, JsonText.without(text, READINGS + index(id)), boat);
    }

    /**
     * With a reading in the place of another; what is the same in both stays as it was written.
     *
     * @param id of the reading to replace
     */
    public LoadedReadings replacing(String id, Reading reading, Boat boat) {
        int index = index(id);
        ObjectNode before = ReadingJson.of(test.readings().get(index), boat);
        ObjectNode after = ReadingJson.of(reading, boat);
        return PoolFile.edited(this, changed(text, READINGS + index, before, after), boat);
    }

    /** With another name or day; an empty text takes the key away. */
    public LoadedReadings called(String key, String value, Boat boat) {
        ObjectNode before = ReadingJson.texts(Map.of(key, written(key)));
        ObjectNode after = ReadingJson.texts(Map.of(key, value));
        return PoolFile.edited(this, changed(text, "", before, after), boat);
    }

    /** What stands in the file under a key of the whole test; empty where nothing does. */
    private String written(String key) {
        return JsonDocument.parse("", text).root().path(key).asText("");
    }

    private int index(String id) {
        List<String> ids = test.readings().stream().map(Reading::id).toList();
        if (!ids.contains(id)) {
            throw new IllegalArgumentException("there is no reading " + id);
        }
        return ids.indexOf(id);
    }

    private static String changed(String text, String at, ObjectNode before, ObjectNode after) {
        String edited = text;
        for (Map.Entry<String, JsonNode> entry : after.properties()) {
            String pointer = at + "/" + JsonDocument.escaped(entry.getKey());
            JsonNode was = before.get(entry.getKey());
            if (was instanceof ArrayNode some
                    && entry.getValue() instanceof ArrayNode other
                    && some.size() == other.size()) {
                for (int i = 0; i < some.size(); i++) {
                    if (!some.get(i).equals(other.get(i))) {
                        edited = JsonText.with(edited, pointer + "/" + i, other.get(i));
                    }
                }
            } else if (!entry.getValue().equals(was)) {
                edited = JsonText.with(edited, pointer, entry.getValue());
            }
        }
        for (Map.Entry<String, JsonNode> entry : before.properties()) {
            if (!after.has(entry.getKey())) {
                edited = JsonText.without(edited, at + "/" + JsonDocument.escaped(entry.getKey()));
            }
        }
        return edited;
    }
}
