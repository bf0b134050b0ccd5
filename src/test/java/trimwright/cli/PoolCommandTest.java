package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PoolCommandTest {

    private static final String TANK = ", {\"id\": \"tank\", \"kind\": \"tank\", \"inside\": \"box\","
            + " \"box\": {\"fromMm\": [100, -20, 10], \"toMm\": [300, 20, 35]}}";

    @TempDir
    private Path folder;

    private Path boat() {
        return BoxBoat.of(folder, 1200, "[200, 0, 24]", TANK);
    }

    private Path readings(String readings) throws IOException {
        return Files.writeString(
                folder.resolve("first.pool.json"),
                "{\"version\": 1, \"date\": \"2026-05-17\", \"readings\": [" + readings + "]}");
    }

    private static String reading(String id, String more) {
        return "{\"id\": \"" + id + "\", \"fills\": {\"tank\": 0}, " + more + "}";
    }

    private Run pool(String readings, Object... more) throws IOException {
        Object[] args = new Object[more.length + 1];
        args[0] = readings(readings);
        System.arraycopy(more, 0, args, 1, more.length);
        return Run.json("pool", boat(), args);
    }

    /**
     * The box of 1200 ± 1 g, 400 × 100 mm, seen 0.1 mm deeper by ± 0.5 mm at both ends: 4 g more by the readings, whose mean is ± 0.354 mm or 14.1 g; the mean of file and readings, each
     * weighed by its precision, is 4 · 1 ∕ (1 + 14.14²) g more (Bayes by hand).
     */
    @Test
    void weighsTheFileAgainstTheReadings() throws IOException {
        Run run = pool(
                reading("s", "\"seen\": [{\"at\": \"bow\", \"aboveMm\": 0.1}, {\"at\": \"stern\", \"aboveMm\": 0.1}]"));
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        JsonNode mass = run.object().get("figures").get("massG");
        double readingsG = 40 * 0.5 / Math.sqrt(2);
        double more = 4 / (1 + readingsG * readingsG);
        assertEquals(1200, mass.get("before").doubleValue(), 1e-9);
        assertEquals(1, mass.get("beforeError").doubleValue(), 1e-6);
        assertEquals(1200 + more, mass.get("after").doubleValue(), 1e-4);
        assertEquals(
                1 / Math.sqrt(1 + 1 / (readingsG * readingsG)),
                mass.get("afterError").doubleValue(),
                1e-6);
        assertEquals(2, run.object().get("readings").size());
    }

    /** The corrected boat, written and floated, shows what the estimate says she would. */
    @Test
    void theWrittenBoatIsTheCorrectedOne() throws IOException {
        Path out = folder.resolve("corrected.boat.json");
        String seen = reading(
                "s",
                "\"seen\": [{\"at\": \"bow\", \"aboveMm\": 2, \"plusMinusMm\": 0.01},"
                        + " {\"at\": \"stern\", \"aboveMm\": 1, \"plusMinusMm\": 0.01}, {\"heelDeg\": 2, \"plusMinusDeg\": 0.01}]");
        Run run = pool(seen, "--write", out);
        JsonNode figures = run.object().get("figures");
        JsonNode floated = Run.json("float", out).object();
        assertEquals(
                figures.get("offBowMm").get("after").doubleValue(),
                floated.get("offPaintedLine").get("bowMm").doubleValue(),
                0.1);
        assertEquals(
                figures.get("offSternMm").get("after").doubleValue(),
                floated.get("offPaintedLine").get("sternMm").doubleValue(),
                0.1);
        assertEquals(
                figures.get("heelDeg").get("after").doubleValue(),
                floated.get("heelDeg").doubleValue(),
                0.05);
        byte[] first = Files.readAllBytes(out);
        Run again = pool(seen, "--write", out);
        assertEquals(ExitCode.UNUSABLE, again.exitCode());
        assertEquals(List.of(first.length), List.of(Files.readAllBytes(out).length));
    }

    @Test
    void heronsFirstWettingFitsAndIsKept() throws IOException {
        Path samples = Path.of("sample-meshes");
        for (String name : List.of("heron.boat.json", "heron-hull.stl", "heron.pool.json")) {
            Files.copy(samples.resolve(name), folder.resolve(name));
        }
        Run run = Run.of("pool", folder.resolve("heron.boat.json"), folder.resolve("heron.pool.json"), "--log");
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        assertTrue(run.out().replaceAll("\\s+", " ").contains("fit together well"), run.out());
        assertTrue(run.out().contains("What to change now"), run.out());
        assertTrue(run.out().contains("Inclining"), run.out());
        for (String line : run.out().split("\n")) {
            assertTrue(line.startsWith("Kept in ") || line.codePointCount(0, line.length()) <= Page.WIDTH, line);
        }
        Path log = folder.resolve("heron.pool-log");
        assertTrue(run.out()
                .startsWith(Files.readString(log.resolve("2026-05-17-1.txt")).substring(0, 200)));
        assertEquals(
                Files.readString(samples.resolve("heron.pool.json")),
                Files.readString(log.resolve("2026-05-17-1.pool.json")));
    }

    @Test
    void theSampleAgreesWithTheSchema() throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(mapper.readTree(Files.readString(Path.of("docs/pool-file.schema.json"))));
        String sample = Files.readString(Path.of("sample-meshes/heron.pool.json"));
        assertEquals(List.of(), schema.validate(mapper.readTree(sample)));
        String wrong = sample.replace("\"rollS\"", "\"trimDeg\": 1, \"rollS\"");
        assertFalse(schema.validate(mapper.readTree(wrong)).isEmpty());
    }

    /** A heel of 25 where the file and the other readings say next to nothing: named, and the answer is no. */
    @Test
    void aReadingInTheWrongUnitIsNamed() throws IOException {
        String good = reading("good", "\"seen\": [{\"heelDeg\": 0.1}, {\"heelDeg\": -0.2}]");
        String bad = reading("bad", "\"seen\": [{\"heelDeg\": 25}]");
        Run run = pool(good + ", " + bad);
        assertEquals(ExitCode.NO, run.exitCode());
        assertTrue(run.err().contains("the reading \"bad\" disagrees with everything else"), run.err());
        assertTrue(run.err().contains("is 25°, and -0.05° would fit"), run.err());
        assertFalse(run.object().has("plan"), "nothing is changed by readings that contradict each other");
        Run without = pool(good + ", " + bad, "--without", "bad");
        assertEquals(ExitCode.DONE, without.exitCode(), without.err());
        assertEquals(2, without.object().get("readings").size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "{\"id\": \"a\", \"seen\": []} | /readings/0/seen",
                "{\"id\": \"a\", \"seen\": [{\"heelMm\": 25}]} | heelDeg",
                "{\"id\": \"a\", \"seen\": [{\"heelDeg\": 2, \"plusMinusMm\": 1}]} | plusMinusDeg",
                "{\"id\": \"a\", \"seen\": [{\"heelDeg\": 2, \"trimDeg\": 1}]} | /readings/0/seen/0",
                "{\"id\": \"a\", \"seen\": [{\"aboveMm\": 2}]} | atMm",
                "{\"id\": \"a\", \"seen\": [{\"aboveMm\": 2, \"at\": \"middle\"}]} | stern",
                "{\"id\": \"a\", \"seen\": [{\"heelDeg\": 2, \"at\": \"bow\"}]} | heelDeg is read at no point",
                "{\"id\": \"a\", \"fills\": {\"tnk\": 1}, \"seen\": [{\"heelDeg\": 2}]} | tank",
                "{\"id\": \"a\", \"fills\": {\"tank\": 1.4}, \"seen\": [{\"heelDeg\": 2}]} | 1.4",
                "{\"id\": \"a\", \"seen\": [{\"heelDeg\": 2}]}, {\"id\": \"a\", \"seen\": [{\"heelDeg\": 2}]} | /readings/1/id",
                "{\"id\": \"a\", \"seen\": [{\"heelDeg\": 2}], \"added\": [{\"massG\": 4000, \"centreMm\": [0, 0, 0]}]} | sinks by",
                "{\"id\": \"a\", \"seen\": [{\"hangingG\": 2}]} | does not sink",
                "{\"id\": \"a\", \"seen\": [{\"rollS\": 0}]} | /readings/0/seen/0/rollS",
                "{\"id\": \"a\"} | seen"
            })
    void wrongReadingsAreRefusedWithTheirPlace(String readings, String told) throws IOException {
        Run run = pool(readings);
        assertEquals(ExitCode.UNUSABLE, run.exitCode(), run.out());
        assertEquals("", run.out());
        assertTrue(run.err().contains(told), run.err());
        assertFalse(run.err().contains("\tat "), run.err());
    }

    @Test
    void toleranceTellsSpreadsAndIsReproducible() {
        Run one = Run.json("float", boat(), "--tolerance", "--draws", 200, "--seed", 7);
        assertEquals(ExitCode.DONE, one.exitCode(), one.err());
        JsonNode spread = one.object().get("tolerance").get("figures").get("massG");
        // One part of ± 1 g.
        assertEquals(1, spread.get("error").doubleValue(), 4 / Math.sqrt(400));
        assertEquals(
                one.out(),
                Run.json("float", boat(), "--tolerance", "--draws", 200, "--seed", 7)
                        .out());
        assertEquals(
                ExitCode.UNUSABLE, Run.json("float", boat(), "--draws", 200).exitCode());
        assertEquals(
                ExitCode.UNUSABLE,
                Run.json("float", boat(), "--tolerance", "--draws", 3).exitCode());
        String text = Run.of("float", boat(), "--tolerance", "--draws", 200).out();
        assertTrue(text.contains("How far it may be off, from 200 boats"), text);
        assertTrue(Stream.of(text.split("\n")).allMatch(l -> l.codePointCount(0, l.length()) <= Page.WIDTH), text);
    }
}
