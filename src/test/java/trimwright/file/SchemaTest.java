package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.boat.Kind;

/** Holds the published JSON Schema against the reader. */
class SchemaTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static JsonNode text;
    private static Schema schema;

    @BeforeAll
    static void load() throws IOException {
        text = MAPPER.readTree(Files.readString(Path.of("docs/boat-file.schema.json")));
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text);
    }

    private static List<String> complaints(String boat) throws JsonProcessingException {
        return schema.validate(MAPPER.readTree(boat)).stream()
                .map(Object::toString)
                .toList();
    }

    private static Set<String> keys(String pointer) {
        Set<String> keys = new TreeSet<>();
        JsonNode properties = text.at(pointer + "/properties");
        properties.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @Test
    void schemaAndReaderKnowTheSameKeys() {
        assertEquals(new TreeSet<>(Keys.BOAT), keys(""));
        assertEquals(new TreeSet<>(Keys.WATER), keys("/$defs/water"));
        assertEquals(new TreeSet<>(Keys.IMPORT), keys("/$defs/import"));
        assertEquals(new TreeSet<>(Keys.BOX), keys("/$defs/box"));
        assertEquals(new TreeSet<>(Keys.INFILL), keys("/$defs/infill"));
        assertEquals(new TreeSet<>(Keys.part()), keys("/$defs/part"));
        assertEquals(new TreeSet<>(Keys.ZONE), keys("/$defs/zone"));
        assertEquals(new TreeSet<>(Keys.TARGETS), keys("/$defs/targets"));
        assertEquals(new TreeSet<>(Keys.DIVE), keys("/$defs/dive"));
        assertEquals(new TreeSet<>(Keys.DIVE_STATE), keys("/$defs/dive/properties/schedule/items"));
    }

    @Test
    void everyKeyIsDescribedInTheSchemaAndOnThePage() throws IOException {
        String page = Files.readString(Path.of("docs/boat-file.md"));
        List<String> undescribed = new ArrayList<>();
        for (String object : List.of(
                "",
                "/$defs/water",
                "/$defs/import",
                "/$defs/box",
                "/$defs/infill",
                "/$defs/part",
                "/$defs/zone",
                "/$defs/targets",
                "/$defs/dive",
                "/$defs/dive/properties/schedule/items")) {
            for (String key : keys(object)) {
                JsonNode property = text.at(object + "/properties/" + key);
                JsonNode referred =
                        text.at(property.path("$ref").asText("#/none").substring(1));
                boolean described = property.has("description") || referred.has("description") || key.equals("parts");
                if (!described || !page.contains("`" + key + "`")) {
                    undescribed.add(object + "/" + key);
                }
            }
        }
        assertEquals(List.of(), undescribed);
    }

    /** What a kind of part does not take is refused by both: one part of each kind, one foreign key at a time. */
    @Test
    void schemaAndReaderAgreeOnWhichKindTakesWhat() throws JsonProcessingException {
        for (Kind kind : Kind.values()) {
            for (String key : Keys.part()) {
                if (Keys.part(kind).contains(key)) {
                    continue;
                }
                String part = "{\"id\": \"a\", \"kind\": \"" + kind.word() + "\", \"" + key + "\": 0.5}";
                List<String> complaints = complaints("{\"version\": 1, \"parts\": [" + part + "]}");
                String refusal = "/parts/0/" + key + ": schema for '" + key + "' is false";
                assertTrue(complaints.contains(refusal), kind + " " + complaints);
            }
        }
    }

    static List<WrongFiles.Wrong> wrongFiles() {
        return WrongFiles.ALL;
    }

    @ParameterizedTest
    @MethodSource("wrongFiles")
    void theSchemaRefusesWhatItCanSee(WrongFiles.Wrong wrong) throws JsonProcessingException {
        if (wrong.text().contains("NaN")) {
            assertThrows(JsonProcessingException.class, () -> complaints(wrong.text()));
        } else if (wrong.inSchema()) {
            assertFalse(complaints(wrong.text()).isEmpty(), wrong.text());
        } else {
            assertEquals(List.of(), complaints(wrong.text()));
        }
    }

    @Test
    void theExampleOnThePageIsRight(@TempDir Path folder) throws IOException {
        String page = Files.readString(Path.of("docs/boat-file.md"));
        int start = page.indexOf("```json\n") + "```json\n".length();
        String example = page.substring(start, page.indexOf("```", start));
        assertEquals(List.of(), complaints(example));
        assertEquals(
                List.of(),
                BoatFile.read(Files.writeString(folder.resolve("raft.boat.json"), example))
                        .findings());
    }

    @Test
    void theSchemaTakesWhatIsRight() throws IOException {
        assertEquals(List.of(), complaints(TestBoat.RIGHT));
        for (String right : RightFiles.ALL) {
            assertEquals(List.of(), complaints(right), right);
        }
    }

    @Test
    void theSampleBoatsAreRight() throws IOException {
        List<Path> boats;
        try (Stream<Path> files = Files.list(Path.of("sample-meshes"))) {
            boats = files.filter(f -> f.toString().endsWith(".boat.json")).toList();
        }
        assertFalse(boats.isEmpty());
        for (Path boat : boats) {
            assertEquals(List.of(), complaints(Files.readString(boat)), boat.toString());
            assertEquals(List.of(), BoatFile.read(boat).findings(), boat.toString());
        }
    }
}
