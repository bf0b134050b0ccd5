package trimwright.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import trimwright.immersion.SecondOpinion;
import trimwright.report.picture.Plot;
import trimwright.statics.StaticsChecks;

/**
 * The validation report is made from the checks themselves. {@code mvn test -Dtest=ValidationReportTest -Dtrimwright.write=true} writes it
 * anew.
 */
class ValidationReportTest {

    private static final Path REPORT = Path.of("docs/validation.md");
    private static final Path PLOT = Path.of("docs/pictures/validation-convergence.svg");
    private static final int MESHES = 24;
    private static final int PLANES = 8;
    private static final double SECOND_OPINION = 1e-9;

    @Test
    void everyCheckHoldsAndTheReportSaysSo() throws IOException {
        Map<String, List<Check>> sections = new LinkedHashMap<>();
        sections.put("Hull forms with published particulars", HullChecks.all());
        sections.put("Floating bodies in closed form", StaticsChecks.floatingBodies());
        sections.put("A handbook's examples", StaticsChecks.handbook());
        sections.put("Water", StaticsChecks.water());
        for (List<Check> checks : sections.values()) {
            for (Check check : checks) {
                assertTrue(check.holds(), () -> check.what() + ": " + check);
            }
        }
        List<double[]> convergence = HullChecks.convergence();
        assertConverges(convergence);
        double greatest = SecondOpinion.greatestDifference(MESHES, PLANES);
        assertTrue(greatest < SECOND_OPINION, () -> "volumes differ by " + greatest);
        String report = report(sections, convergence);
        if (Boolean.getBoolean("trimwright.write")) {
            Files.writeString(REPORT, report);
            plot(convergence).write(PLOT, true);
        }
        assertEquals(Files.readString(REPORT), report, "docs/validation.md is not what the checks say");
    }

    /** A quarter of the error at each halving, to within a fifth of that where terms of higher order still count. */
    private static void assertConverges(List<double[]> rows) {
        for (int i = 1; i < rows.size() - 1; i++) {
            assertEquals(4, rows.get(i - 1)[2] / rows.get(i)[2], 0.8, "step " + i);
        }
    }

    private static String report(Map<String, List<Check>> sections, List<double[]> convergence) {
        StringBuilder out = new StringBuilder("""
                # Validation

                What the program says beside values from outside it, with where they are from. A tolerance is what the printed digits and the mesh explain, not what was needed. Every row is
                held by a test; this page is made from those tests and must not be edited by hand. More is held property by property, against slower sums and against other libraries
                ([statics.md](statics.md) names the tests), and over random boats ([reliability.md](reliability.md)).

                """);
        int count = sections.values().stream().mapToInt(List::size).sum();
        out.append(count).append(" values, all within their tolerance.\n");
        sections.forEach((title, checks) -> out.append("\n## ")
                .append(title)
                .append(
                        "\n\n| what | published | ours | difference | tolerance | on | source |\n|---|---|---|---|---|---|---|\n")
                .append(checks.stream().map(Check::row).collect(Collectors.joining())));
        out.append("""

                ## How fast a mesh comes near its hull

                The volume of SUBOFF on finer and finer meshes, beside the limit that the last two foretell. A chord misses the square of its length, so that the error falls to a quarter each
                time the triangles get half as long: this one of 110 000 triangles lacks one part in eight thousand of her volume, 0.6 g in a boat
                of 5 kg.

                ![error over the number of triangles](pictures/validation-convergence.svg)

                | triangles | volume, m³ | missing |
                |---|---|---|
                """);
        for (double[] row : convergence) {
            out.append(String.format(
                            Locale.ROOT, "| %d | %.6f | %.2g %% |%n", (long) row[0], row[1], 100 * row[2] / row[1])
                    .replace(System.lineSeparator(), "\n"));
        }
        return out.append("""

                ## A second opinion

                """)
                .append(MESHES)
                .append(" random meshes, from smooth to so rough that they are hollow all over, each cut by ")
                .append(PLANES)
                .append(
                        " planes at random and given to Apache Commons Geometry, which splits them in its own way: no immersed volume differs by more than a billionth of the cube of the mesh's size. ")
                .append("`LibraryBenchmark` compares the times.\n")
                .toString();
    }

    private static Plot plot(List<double[]> rows) {
        double[] x = rows.stream().mapToDouble(r -> Math.log10(r[0])).toArray();
        double[] y = rows.stream().mapToDouble(r -> Math.log10(r[2] / r[1])).toArray();
        return new Plot(
                "Volume of SUBOFF on finer meshes",
                List.of(new Plot.Panel(
                        "triangles, as a power of ten",
                        "share missing, as a power of ten",
                        List.of(new Plot.Curve("missing", x, y)),
                        List.of())));
    }
}
