package trimwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/** Holds the codes of findings and their sentences together. */
class WordingTest {

    private static final Path CODES = Path.of("src/main/java/trimwright/finding/Code.java");
    private static final Pattern CONSTANT =
            Pattern.compile("/\\*\\*(.*?)\\*/\\s*([A-Z0-9_]+)\\(Severity", Pattern.DOTALL);
    private static final Pattern VALUE = Pattern.compile("\\{@code[\\s*]+(\\w+)}");

    /** The values that the Javadoc of each code names. */
    private static Map<Code, Set<String>> documented() throws IOException {
        Map<Code, Set<String>> values = new EnumMap<>(Code.class);
        String source = Files.readString(CODES);
        Matcher constant = CONSTANT.matcher(source.substring(source.indexOf("enum Code")));
        while (constant.find()) {
            values.put(
                    Code.valueOf(constant.group(2)),
                    VALUE.matcher(constant.group(1))
                            .results()
                            .map(r -> r.group(1))
                            .collect(Collectors.toCollection(TreeSet::new)));
        }
        return values;
    }

    @ParameterizedTest
    @EnumSource
    void everyCodeHasASentenceOfItsDocumentedValues(Code code) throws IOException {
        Set<String> unknown = new TreeSet<>(Wording.template(code).names());
        unknown.removeAll(documented().get(code));
        assertEquals(Set.of(), unknown, "values in the wording of " + code + " that its Javadoc does not name");
    }

    @Test
    void noSentenceIsLeftOverFromACodeThatIsGone() {
        Set<String> leftOver = new TreeSet<>(Wording.codes());
        for (Code code : Code.values()) {
            leftOver.remove(code.name());
        }
        assertEquals(Set.of(), leftOver);
    }

    @Test
    void aLineNamesSeverityPlaceAndValue() {
        Finding finding = Finding.of(
                Code.NUMBER_OUT_OF_RANGE,
                new Place.InDocument("heron.boat.json", "/parts/2/fill"),
                "key",
                "fill",
                "found",
                "1.4",
                "least",
                0.0,
                "greatest",
                1.0,
                "line",
                12L);
        assertEquals(
                "error: heron.boat.json line 12, /parts/2/fill: \"fill\" is 1.4; allowed is from 0 to 1.",
                Wording.line(finding));
    }

    @Test
    void optionalPartsComeAndGoWithTheirValues() {
        Template template = new Template("found {found}[ in triangle {triangle}].");
        assertEquals("found NaN.", template.fill(Map.of("found", "NaN"), Measure.METRIC));
        assertEquals("found NaN in triangle 7.", template.fill(Map.of("found", "NaN", "triangle", 7), Measure.METRIC));
        assertEquals(Set.of("found"), template.needed());
    }

    @Test
    void numbersCarryTheUnitOfTheirName() {
        Map<String, Object> values =
                Map.of("gmMm", 0.0123456, "massG", 1234.56, "foundGPerCm3", 11.34, "heelDeg", -1.26);
        assertEquals(
                "0.0123 mm, 1234.6 g, 11.3 g/cm³, list 1.3° to port",
                new Template("{gmMm}, {massG}, {foundGPerCm3}, {heelDeg}").fill(values, Measure.METRIC));
    }

    @Test
    void oneIsSingular() {
        Template template = new Template("{count|triangle|triangles}");
        assertEquals("1 triangle", template.fill(Map.of("count", 1), Measure.METRIC));
        assertEquals("0 triangles", template.fill(Map.of("count", 0), Measure.METRIC));
        assertEquals("2 triangles", template.fill(Map.of("count", 2L), Measure.METRIC));
    }

    @Test
    void whatAUserWroteCannotMoveTheCursor() {
        String text =
                new Template("found {found}").fill(Map.of("found", "a\u001b[2Jb\r\nc $1 \\ {found}"), Measure.METRIC);
        assertEquals("found a [2Jb c $1 \\ {found}", text);
        assertFalse(text.chars().anyMatch(Character::isISOControl));
        assertTrue(text.startsWith("found"));
    }
}
