package trimwright.cli;

import java.util.List;
import java.util.stream.Stream;
import trimwright.finding.Finding;

/**
 * A mesh file that was looked over.
 *
 * @param file its name
 * @param report what was found on its surface
 * @param reading what was found while reading it
 */
record MeshAnswer(String file, MeshReport report, List<Finding> reading) implements Answer {

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
        page.line(file);
        MeshText.tell(report, page);
    }

    @Override
    public JsonObject json() {
        return report.json(new JsonObject().text("file", file));
    }
}
