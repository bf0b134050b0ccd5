package trimwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import trimwright.finding.Code;
import trimwright.finding.Severity;

/**
 * The catalogue of all findings is made from their codes, what the codes say of their values, and the wording. {@code mvn test
 * -Dtest=FindingsCatalogueTest -Dtrimwright.write=true} writes it anew.
 */
class FindingsCatalogueTest {

    private static final Path CATALOGUE = Path.of("docs/findings.md");
    private static final Path CODES = Path.of("src/main/java/trimwright/finding/Code.java");
    private static final Pattern ITEM = Pattern.compile(
            "(?<section>(?:^ {4}// [^\\n]*\\n)+)|/\\*\\*(?<doc>.*?)\\*/\\s*(?<code>[A-Z0-9_]+)\\(Severity",
            Pattern.DOTALL | Pattern.MULTILINE);

    /** Errors and warnings of which the sentence about what is allowed says all that there is to do. */
    private static final Set<Code> ENOUGH = EnumSet.of(
            Code.NUMBER_OUT_OF_RANGE,
            Code.WRONG_TYPE,
            Code.WRONG_LENGTH,
            Code.WORD_NOT_ALLOWED,
            Code.MESH_MORE_OF_THE_SAME,
            Code.WATER_NOT_UNDERSTOOD,
            Code.FILL_NOT_UNDERSTOOD,
            Code.FILL_OF_NO_TANK,
            Code.FILL_OUT_OF_RANGE,
            Code.PICTURE_FORMAT_UNKNOWN,
            Code.PLOT_NOTHING,
            Code.NOT_REMOVABLE,
            Code.NOT_MOVABLE);

    private static final Pattern NEXT_STEP = Pattern.compile("[.?:] (?=[A-Z\"])|\\? [A-Z]|\\?$");

    private static String catalogue() throws IOException {
        StringBuilder out = new StringBuilder("""
                # All findings

                Everything that the program can find, by the code that scripts see with `--json`, with how much it matters as a rule, and how it is said. `{name}` is a value of the
                finding; what stands in brackets is left out where it does not apply. About meshes [meshes.md](meshes.md) says more.

                An *error* stops the command with exit code 2; with a *warning* the answer stands, but may not be what you mean; a *note* is worth knowing.

                This page is made from the program; do not edit it by hand.
                """);
        String source = Files.readString(CODES);
        Matcher item = ITEM.matcher(source.substring(source.indexOf("enum Code")));
        while (item.find()) {
            if (item.group("section") != null) {
                section(out, item.group("section"));
            } else {
                row(out, Code.valueOf(item.group("code")), item.group("doc"));
            }
        }
        return out.toString();
    }

    private static void section(StringBuilder out, String comment) {
        String text = comment.replaceAll("\\s*//\\s*", " ").strip();
        int end = text.indexOf(". ");
        out.append("\n## ").append(end < 0 ? text : text.substring(0, end)).append("\n\n");
        if (end >= 0) {
            out.append(text.substring(end + 2)).append("\n\n");
        }
        out.append("| finding | | what is said | what it means, and its values |\n|---|---|---|---|\n");
    }

    private static void row(StringBuilder out, Code code, String doc) {
        String meaning = doc.replaceAll("\\s*\\n\\s*\\*?\\s*", " ")
                .replaceAll("\\{@code\\s+([^}]*)}", "`$1`")
                .strip();
        out.append("| `")
                .append(code)
                .append("` | ")
                .append(severity(code))
                .append(" | ")
                .append(said(code))
                .append(" | ")
                .append(meaning)
                .append(" |\n");
    }

    private static String severity(Code code) {
        return code.severity().name().toLowerCase(Locale.ROOT);
    }

    /** The sentence with its values by name, words for one and for several as for several. */
    private static String said(Code code) {
        String whole = (Wording.template(code).text() + " " + Wording.advice(code)).strip();
        return whole.replaceAll("\\{(\\w+)\\|[^|}]*\\|([^|}]*)}", "{$1} $2").replace("|", "\\|");
    }

    @Test
    void theCatalogueIsThatOfTheProgram() throws IOException {
        String made = catalogue();
        if (Boolean.getBoolean("trimwright.write")) {
            Files.writeString(CATALOGUE, made);
        }
        assertEquals(made, Files.readString(CATALOGUE).replace("\r\n", "\n"));
    }

    @Test
    void everyCodeHasItsRow() throws IOException {
        String made = catalogue();
        for (Code code : Code.values()) {
            assertTrue(made.contains("\n| `" + code + "` | "), code + " is not in the catalogue");
        }
        assertEquals(
                Code.values().length,
                made.lines().filter(l -> l.startsWith("| `")).count());
    }

    @Test
    void everyErrorAndWarningSaysWhatToDoNext() {
        Set<Code> withoutNextStep = new TreeSet<>();
        for (Code code : Code.values()) {
            boolean matters = code.severity() != Severity.NOTE && !ENOUGH.contains(code);
            if (matters
                    && !NEXT_STEP.matcher(said(code).replaceAll("[\\[\\]]", "")).find()) {
                withoutNextStep.add(code);
            }
        }
        assertEquals(List.of(), List.copyOf(withoutNextStep));
    }
}
