package trimwright.file;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Changes single values in the text of a JSON document and leaves everything else as it was written: the order of keys, the
 * digits of numbers, the layout.
 */
public final class JsonText {

    /** Lines of inserted values are broken before this column. */
    private static final int WIDTH = 120;

    private JsonText() {}

    /**
     * The text with one value replaced or added.
     *
     * @param text a JSON document
     * @param pointer JSON pointer to the value to replace; or, to add one at the end, to a key that its object does not have
     *     yet, or to the {@code -} of an array
     * @param value the new value
     * @throws IllegalArgumentException when there is no such object or array
     */
    public static String with(String text, String pointer, JsonNode value) {
        JsonDocument document = JsonDocument.parse("", text);
        JsonDocument.Span there = document.span(pointer);
        if (there != null) {
            String written = written(value, column(text, there.start()));
            return text.substring(0, there.start()) + written + text.substring(there.end());
        }
        int slash = pointer.lastIndexOf('/');
        String parent = pointer.substring(0, Math.max(0, slash));
        JsonNode container = document.root().at(parent);
        JsonDocument.Span span = document.span(parent);
        String key = pointer.substring(slash + 1).replace("~1", "/").replace("~0", "~");
        boolean fits = container.isObject() || container.isArray() && key.equals("-");
        if (slash < 0 || !fits) {
            throw new IllegalArgumentException("nothing can be put at " + pointer);
        }
        String name = container.isObject() ? quoted(key) + ": " : "";
        if (container.isEmpty()) {
            int at = span.start() + 1;
            String inserted = name + written(value, column(text, at) + name.length());
            return text.substring(0, at) + inserted + text.substring(span.end() - 1);
        }
        JsonDocument.Span lastSpan =
                document.span(parent + "/" + steps(container).get(container.size() - 1));
        // New members take lines of their own where the ones before them do.
        String gap = container.isArray() ? spaceBefore(text, lastSpan.start()) : spaceAfter(text, span.start() + 1);
        String separator = gap.indexOf('\n') < 0 ? ", " : "," + gap;
        int column = columnAfter(column(text, lastSpan.end()), separator + name);
        return text.substring(0, lastSpan.end())
                + separator
                + name
                + written(value, column)
                + text.substring(lastSpan.end());
    }

    /**
     * The text without one value, its key, and the comma that it needed.
     *
     * @param pointer JSON pointer to a value in an object or array
     * @throws IllegalArgumentException when there is no such value
     */
    public static String without(String text, String pointer) {
        JsonDocument document = JsonDocument.parse("", text);
        JsonDocument.Span span = document.span(pointer);
        if (span == null || pointer.isEmpty()) {
            throw new IllegalArgumentException("there is nothing to take away at " + pointer);
        }
        String parent = pointer.substring(0, pointer.lastIndexOf('/'));
        JsonNode container = document.root().at(parent);
        List<String> steps = steps(container);
        int index = steps.indexOf(pointer.substring(pointer.lastIndexOf('/') + 1));
        if (index > 0) {
            int from = document.span(parent + "/" + steps.get(index - 1)).end();
            return text.substring(0, from) + text.substring(span.end());
        }
        int open = document.span(parent).start() + 1;
        int from = open + spaceAfter(text, open).length();
        int to = span.end() + spaceAfter(text, span.end()).length();
        if (text.charAt(to) == ',') {
            to++;
            to += spaceAfter(text, to).length();
        }
        return text.substring(0, from) + text.substring(to);
    }

    /** The last steps of the JSON pointers to the members of an object or array. */
    private static List<String> steps(JsonNode container) {
        List<String> steps = new ArrayList<>();
        for (int i = 0; container.isArray() && i < container.size(); i++) {
            steps.add(String.valueOf(i));
        }
        names(container).forEach(name -> steps.add(JsonDocument.escaped(name)));
        return steps;
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static String spaceAfter(String text, int from) {
        int end = from;
        while (Character.isWhitespace(text.charAt(end))) {
            end++;
        }
        return text.substring(from, end);
    }

    private static String spaceBefore(String text, int end) {
        int start = end;
        while (Character.isWhitespace(text.charAt(start - 1))) {
            start--;
        }
        return text.substring(start, end);
    }

    private static int column(String text, int at) {
        return at - 1 - text.lastIndexOf('\n', at - 1);
    }

    /**
     * A value as text: on one line as far as it fits, long objects and arrays broken between their members.
     *
     * @param column column at which the value begins
     */
    static String written(JsonNode value, int column) {
        if (value.isObject() || value.isArray()) {
            return members(value, column);
        }
        if (value.isNumber()) {
            return new BigDecimal(value.asText()).stripTrailingZeros().toPlainString();
        }
        return value.isTextual() ? quoted(value.textValue()) : value.asText();
    }

    private static String members(JsonNode container, int column) {
        List<String> names = names(container);
        StringBuilder text = new StringBuilder(container.isObject() ? "{" : "[");
        int at = column + 1;
        for (int i = 0; i < container.size(); i++) {
            String name = container.isObject() ? quoted(names.get(i)) + ": " : "";
            JsonNode member = container.isObject() ? container.get(names.get(i)) : container.get(i);
            String separator = i == 0 ? "" : ", ";
            String written = name + written(member, at + separator.length() + name.length());
            boolean fits = at + separator.length() + written.length() < WIDTH && written.indexOf('\n') < 0;
            if (i > 0 && !fits) {
                separator = ",\n" + " ".repeat(column + 1);
                written = name + written(member, column + 1 + name.length());
            }
            text.append(separator).append(written);
            at = columnAfter(at, separator + written);
        }
        return text.append(container.isObject() ? "}" : "]").toString();
    }

    private static int columnAfter(int column, String text) {
        int line = text.lastIndexOf('\n');
        return line < 0 ? column + text.length() : text.length() - line - 1;
    }

    private static String quoted(String text) {
        return "\"" + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + "\"";
    }
}
