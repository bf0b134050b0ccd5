package trimwright.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.Severity;
import trimwright.finding.UnusableInputException;

/**
 * The text of a JSON file, its values, and where in the text each value stands, so that an edit can leave everything else as
 * it was written. Collects what is wrong with the values.
 *
 * <p>The tree is built here instead of by an object mapper, which would cost a quarter of a second at every start.
 */
final class JsonDocument {

    /** A boat file of more bytes is not read. */
    static final int GREATEST_BYTES = 4 << 20;

    /** Values nested deeper than this are not read; a boat file needs six levels. */
    static final int GREATEST_DEPTH = 32;

    /** Letters of the pointers to all values, which a thousand parts stay far below; together they are what a document takes in memory. */
    static final int GREATEST_POINTERS = 20_000_000;

    private static final int GREATEST_NUMBER_LENGTH = 200;
    private static final int SHOWN = 60;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNumberLength(GREATEST_NUMBER_LENGTH)
                    .build())
            // NaN and the like are read in order to be refused with their place, by the reader of numbers.
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    /**
     * Where a value stands.
     *
     * @param start index of its first character
     * @param end index after its last character
     * @param line line of its first character, counted from 1
     */
    record Span(int start, int end, long line) {}

    private final String file;
    private final String text;
    private final int offset;
    private final Map<String, Span> spans = new HashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private long pointers;
    private JsonNode root;

    private JsonDocument(String file, String text) {
        this.file = file;
        this.text = text;
        this.offset = text.isEmpty() || text.charAt(0) != BYTE_ORDER_MARK ? 0 : 1;
    }

    /**
     * @param file name for the findings
     * @param bytes UTF-8, with or without a byte order mark
     * @throws UnusableInputException when it is not JSON; wrong values are only collected
     */
    static JsonDocument parse(String file, byte[] bytes) {
        if (bytes.length > GREATEST_BYTES) {
            throw new UnusableInputException(Finding.of(
                    Code.JSON_TOO_LARGE,
                    new Place.InFile(file),
                    "foundBytes",
                    bytes.length,
                    "greatestBytes",
                    GREATEST_BYTES));
        }
        return parse(file, decoded(file, bytes));
    }

    static JsonDocument parse(String file, String text) {
        JsonDocument document = new JsonDocument(file, text);
        if (text.isBlank() || text.length() == document.offset) {
            throw new UnusableInputException(Finding.of(Code.FILE_EMPTY, new Place.InFile(file)));
        }
        try (JsonParser parser = JSON.createParser(new StringReader(text.substring(document.offset)))) {
            parser.nextToken();
            document.root = document.value(parser, "", 1);
        } catch (JsonProcessingException e) {
            throw new UnusableInputException(syntax(file, e));
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
        document.refuseMore();
        return document;
    }

    /** Nothing may follow the document. */
    private void refuseMore() {
        int next = span("").end();
        while (next < text.length() && Character.isWhitespace(text.charAt(next))) {
            next++;
        }
        if (next < text.length()) {
            String before = text.substring(0, next);
            throw new UnusableInputException(Finding.of(
                    Code.JSON_TRAILING_TEXT,
                    new Place.AtLine(
                            file, 1 + before.chars().filter(c -> c == '\n').count()),
                    "column",
                    next - before.lastIndexOf('\n'),
                    "found",
                    shown(text.substring(next))));
        }
    }

    private static String decoded(String file, byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            throw new UnusableInputException(
                    Finding.of(Code.JSON_NOT_UTF8, new Place.AtByte(file, in.position()), "allowed", "UTF-8"));
        }
        return out.flip().toString();
    }

    private static Finding syntax(String file, JsonProcessingException e) {
        JsonLocation at = e.getLocation();
        String reason = e.getOriginalMessage();
        // The library's own advice speaks of its switches, which a builder of boats does not have.
        for (String aside : List.of(" (start marker", ": enable ", " (for ")) {
            int cut = reason.indexOf(aside);
            reason = cut > 0 ? reason.substring(0, cut) : reason;
        }
        return Finding.of(
                Code.JSON_SYNTAX,
                new Place.AtLine(file, at == null ? 1 : at.getLineNr()),
                "column",
                at == null ? 1 : at.getColumnNr(),
                "reason",
                reason);
    }

    private JsonNode value(JsonParser parser, String pointer, int depth) throws IOException {
        pointers += pointer.length();
        if (pointers > GREATEST_POINTERS) {
            throw new UnusableInputException(
                    Finding.of(Code.JSON_TOO_INTRICATE, new Place.InFile(file), "greatest", GREATEST_POINTERS));
        }
        JsonLocation from = parser.currentTokenLocation();
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        JsonToken token = parser.currentToken();
        JsonNode node;
        switch (token) {
            case START_OBJECT:
                node = object(parser, pointer, deeper(pointer, depth));
                break;
            case START_ARRAY:
                ArrayNode array = nodes.arrayNode();
                for (int i = 0; parser.nextToken() != JsonToken.END_ARRAY; i++) {
                    array.add(value(parser, pointer + "/" + i, deeper(pointer, depth)));
                }
                node = array;
                break;
            case VALUE_STRING:
                node = nodes.textNode(parser.getText());
                break;
            case VALUE_NUMBER_INT:
            case VALUE_NUMBER_FLOAT:
                node = nodes.numberNode(parser.getDoubleValue());
                break;
            case VALUE_NULL:
                node = nodes.nullNode();
                break;
            default:
                node = nodes.booleanNode(token == JsonToken.VALUE_TRUE);
        }
        int start = (int) from.getCharOffset() + offset;
        int end = (int) parser.currentLocation().getCharOffset() + offset;
        spans.put(pointer, new Span(start, end, from.getLineNr()));
        return node;
    }

    private ObjectNode object(JsonParser parser, String pointer, int depth) throws IOException {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String at = pointer + "/" + escaped(key);
            boolean again = node.has(key);
            Span before = spans.get(at);
            parser.nextToken();
            JsonNode value = value(parser, at, depth);
            if (again) {
                report(Code.JSON_DUPLICATE_KEY, at, "key", key, "firstLine", before.line());
            } else {
                node.set(key, value);
            }
        }
        return node;
    }

    private int deeper(String pointer, int depth) {
        if (depth > GREATEST_DEPTH) {
            throw new UnusableInputException(Finding.of(
                    Code.JSON_TOO_DEEP, new Place.InDocument(file, pointer), "greatestDepth", GREATEST_DEPTH));
        }
        return depth + 1;
    }

    /** A key as it stands in a JSON pointer (RFC 6901). */
    static String escaped(String key) {
        return key.replace("~", "~0").replace("/", "~1");
    }

    String file() {
        return file;
    }

    String text() {
        return text;
    }

    JsonNode root() {
        return root;
    }

    /** Where the value at the pointer stands. */
    Span span(String pointer) {
        return spans.get(pointer);
    }

    /** The value at the pointer as it is written, cut short when it is long. */
    String written(String pointer) {
        Span span = span(pointer);
        return shown(text.substring(span.start(), span.end()));
    }

    private static String shown(String text) {
        String line = text.replaceAll("\\s+", " ");
        return line.length() <= SHOWN ? line : line.substring(0, SHOWN) + "…";
    }

    /** Collects a finding about the value at the pointer, with its usual severity; its line is added to the values. */
    void report(Code code, String pointer, Object... namesAndValues) {
        report(code, code.severity(), pointer, namesAndValues);
    }

    void report(Code code, Severity severity, String pointer, Object... namesAndValues) {
        Object[] all = namesAndValues;
        if (spans.containsKey(pointer)) {
            all = Arrays.copyOf(namesAndValues, namesAndValues.length + 2);
            all[namesAndValues.length] = "line";
            all[namesAndValues.length + 1] = spans.get(pointer).line();
        }
        findings.add(Finding.of(code, severity, new Place.InDocument(file, pointer), all));
    }

    Place place(String pointer) {
        return new Place.InDocument(file, pointer);
    }

    /** Takes over findings that were made elsewhere. */
    void reportAll(List<Finding> others) {
        findings.addAll(others);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** Whether an error has been reported about the value at the pointer, or about one in it. */
    boolean hasErrorsIn(String pointer) {
        return findings.stream()
                .filter(Finding::isError)
                .map(Finding::place)
                .anyMatch(place ->
                        place instanceof Place.InDocument in && (in.pointer() + "/").startsWith(pointer + "/"));
    }

    /** How many errors have been reported. */
    int errors() {
        return (int) findings.stream().filter(Finding::isError).count();
    }
}
