package trimwright.cli;

import java.util.List;
import java.util.Locale;
import trimwright.finding.Finding;
import trimwright.report.Wording;

/** Findings for scripts: code, severity, place, message, and the values it was made of. */
final class FindingJson {

    private FindingJson() {}

    static List<JsonObject> of(List<Finding> findings) {
        return findings.stream().map(FindingJson::of).toList();
    }

    static JsonObject of(Finding finding) {
        JsonObject json = new JsonObject()
                .text("code", finding.code().name())
                .text("severity", finding.severity().name().toLowerCase(Locale.ROOT))
                .text("place", Wording.place(finding.place()))
                .text("message", Wording.sentence(finding));
        JsonObject values = new JsonObject();
        finding.values().forEach(values::any);
        return json.object("values", values);
    }
}
