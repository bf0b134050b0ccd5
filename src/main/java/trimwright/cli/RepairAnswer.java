package trimwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trimwright.finding.Finding;
import trimwright.mesh.RepairResult;
import trimwright.mesh.Soundness;
import trimwright.report.Numbers;
import trimwright.report.Wording;

/**
 * A mesh that was mended into a new file.
 *
 * @param from the original
 * @param to the new file
 * @param repaired what was changed
 * @param report the mended mesh looked over
 * @param reading what was found while reading the original
 */
record RepairAnswer(String from, String to, RepairResult repaired, MeshReport report, List<Finding> reading)
        implements Answer {

    private static final double MM2_PER_CM2 = 100;
    private static final double MM3_PER_CM3 = 1000;

    @Override
    public int exitCode() {
        return report.good() ? ExitCode.DONE : ExitCode.NO;
    }

    @Override
    public List<Finding> findings() {
        return Stream.concat(reading.stream(), report.notes().stream()).toList();
    }

    @Override
    public void tell(Page page) {
        page.paragraph("Mended " + from + " into " + to + "; the original is as it was.")
                .gap();
        if (repaired.changes().isEmpty()) {
            page.paragraph(
                    "Nothing was found that can be mended without guessing; the new file holds the same surface.");
        }
        repaired.changes().forEach(change -> page.point(Wording.of(change)));
        page.gap().table(moved()).gap();
        page.heading("The mended mesh");
        MeshText.tell(report, page);
    }

    private TextTable moved() {
        Soundness before = repaired.before();
        Soundness after = repaired.after();
        TextTable table = TextTable.of("lrrr").head("", "Before", "After", "Change");
        table.row(
                "Triangles",
                String.valueOf(before.triangles()),
                String.valueOf(after.triangles()),
                String.valueOf(after.triangles() - before.triangles()));
        row(
                table,
                "Area, cm²",
                Optional.of(before.areaMm2() / MM2_PER_CM2),
                Optional.of(after.areaMm2() / MM2_PER_CM2));
        row(
                table,
                "Volume, cm³",
                before.volumeMm3().map(v -> v / MM3_PER_CM3),
                after.volumeMm3().map(v -> v / MM3_PER_CM3));
        return table;
    }

    private static void row(TextTable table, String what, Optional<Double> before, Optional<Double> after) {
        table.row(
                what,
                before.map(v -> Numbers.fixed(v, 2)).orElse("none"),
                after.map(v -> Numbers.fixed(v, 2)).orElse("none"),
                before.isPresent() && after.isPresent() ? Numbers.fixed(after.get() - before.get(), 2) : "");
    }

    @Override
    public JsonObject json() {
        Soundness before = repaired.before();
        JsonObject original = new JsonObject()
                .truth("closed", before.closed())
                .truth("oriented", before.oriented())
                .count("triangles", before.triangles())
                .number("areaCm2", before.areaMm2() / MM2_PER_CM2)
                .number("volumeCm3", before.volumeMm3().map(v -> v / MM3_PER_CM3));
        return report.json(new JsonObject()
                .text("file", from)
                .text("repairedFile", to)
                .object("before", original)
                .list("changes", FindingJson.of(repaired.changes())));
    }
}
