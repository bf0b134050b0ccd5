package trimwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The page of libraries and licences is made from the list of what the jar holds, which {@code mvn -Psbom verify} makes and compares;
 * {@code -Dtrimwright.write=true} writes the page anew. The ordinary tests see that the page and the build have the same versions.
 */
class LicencesTest {

    private static final Path PAGE = Path.of("docs/licences.md");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| ([^|:]+):([^|]+) \\| ([^|]+) \\| ([^|]+) \\|$");

    /** Licences under which a library may be passed on with this program; another one has to be thought about first. */
    private static final Set<String> KNOWN = Set.of(
            "Apache-2.0",
            "BSD-3-Clause",
            "GPL-2.0-with-classpath-exception",
            "GNU Library or Lesser General Public License (LGPL)");

    private static List<MatchResult> rows() throws IOException {
        return ROW.matcher(Files.readString(PAGE)).results().toList();
    }

    private static String made(JsonNode bill) {
        StringBuilder page = new StringBuilder("""
                # What the jar holds

                Every library in `trimwright.jar`, with its version and licence, as its authors state them. Made from the list that `mvn -Psbom verify` writes to `target/bom.json` (CycloneDX);
                what each is there for stands in [decisions/0001-dependencies.md](decisions/0001-dependencies.md).

                | library | version | licence |
                |---|---|---|
                """);
        Set<String> rows = new TreeSet<>();
        for (JsonNode component : bill.get("components")) {
            rows.add("| " + component.get("group").textValue() + ":"
                    + component.get("name").textValue() + " | "
                    + component.get("version").textValue() + " | " + licence(component) + " |\n");
        }
        rows.forEach(page::append);
        return page.toString();
    }

    private static String licence(JsonNode component) {
        Set<String> names = new TreeSet<>();
        for (JsonNode choice : component.path("licenses")) {
            JsonNode licence = choice.path("license");
            names.add(licence.path("id")
                    .asText(licence.path("name")
                            .asText(choice.path("expression").asText())));
        }
        return names.isEmpty() ? "none stated" : String.join(", ", names);
    }

    @Test
    void thePageIsThatOfTheBuild() throws IOException {
        String bill = System.getProperty("trimwright.bill");
        assumeTrue(bill != null, "made only with -Psbom");
        String made = made(new ObjectMapper().readTree(new File(bill)));
        if (Boolean.getBoolean("trimwright.write")) {
            Files.writeString(PAGE, made);
        }
        assertEquals(made, Files.readString(PAGE).replace("\r\n", "\n"));
    }

    @Test
    void theVersionsAreThoseOfTheBuild() throws IOException {
        Set<String> jars = Arrays.stream(OtherProcess.classPath().split(File.pathSeparator))
                .map(p -> String.valueOf(Path.of(p).getFileName()))
                .collect(Collectors.toSet());
        List<MatchResult> rows = rows();
        assertTrue(rows.size() > 30, "only " + rows.size() + " libraries");
        for (MatchResult row : rows) {
            String jar = row.group(2) + "-" + row.group(3);
            assertTrue(jars.stream().anyMatch(j -> j.startsWith(jar)), jar + " is not what is built with: " + jars);
        }
    }

    @Test
    void everyLicenceIsOneThatWasThoughtAbout() throws IOException {
        Set<String> others = rows().stream().map(r -> r.group(4)).collect(Collectors.toCollection(TreeSet::new));
        others.removeAll(KNOWN);
        assertEquals(Set.of(), others);
    }
}
