package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;

/** Whatever stands in a boat file, it is either read or refused with findings; nothing else is ever thrown. */
class AnythingTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TempDir
    Path folder;

    private LoadedBoat right;
    private int read;
    private int refused;

    @BeforeEach
    void readOnce() {
        right = BoatFile.read(TestBoat.written(folder, TestBoat.RIGHT));
    }

    private void tryToRead(String text) {
        try {
            BoatFile.edited(right, text);
            read++;
        } catch (UnusableInputException e) {
            refused++;
            assertFalse(e.findings().isEmpty());
            assertTrue(e.findings().stream().anyMatch(Finding::isError));
        }
    }

    private static void collect(JsonNode node, String pointer, List<String> pointers) {
        pointers.add(pointer);
        node.properties().forEach(e -> collect(e.getValue(), pointer + "/" + e.getKey(), pointers));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(node.get(i), pointer + "/" + i, pointers);
        }
    }

    @Test
    void anyValueMayStandAnywhere() throws IOException {
        List<String> pointers = new ArrayList<>();
        collect(MAPPER.readTree(TestBoat.RIGHT), "", pointers);
        List<String> values = List.of("null", "-1", "1e300", "\"wtc\"", "[]", "{\"x\": 1}");
        for (String pointer : pointers) {
            for (String value : values) {
                tryToRead(JsonText.with(TestBoat.RIGHT, pointer, MAPPER.readTree(value)));
            }
            if (!pointer.isEmpty()) {
                tryToRead(JsonText.without(TestBoat.RIGHT, pointer));
            }
        }
        // Some changes are harmless, such as another name or place; most are not.
        assertTrue(read > 50 && refused > 400, read + " read, " + refused + " refused");
    }

    @Test
    void anyCharacterMayBeMissingOrWrong() {
        String text = TestBoat.RIGHT;
        for (int i = 0; i < text.length(); i += 3) {
            tryToRead(text.substring(0, i) + text.substring(i + 1));
            tryToRead(text.substring(0, i) + "\"{[,0\\".charAt(i / 3 % 6) + text.substring(i + 1));
        }
        tryToRead(text.substring(0, text.length() / 2));
        assertTrue(read > 50 && refused > 400, read + " read, " + refused + " refused");
    }
}
