package trimwright.cli;

import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.report.Wording;

/** Findings for scripts: code, severity, where, message, and the values it was made of. */
final class FindingJson {

    private FindingJson() {}

    static List<JsonObject> of(List<Finding> findings) {
        return findings.stream().map(FindingJson::of).toList();
    }

    static JsonObject of(Finding finding) {
        JsonObject values = new JsonObject();
        finding.values().forEach(values::any);
        return new JsonObject()
                .text("code", finding.code().name())
                .text("severity", finding.severity().name().toLowerCase(Locale.ROOT))
                .text("place", Wording.place(finding.place()))
                .object("at", at(finding.place()))
                .text("message", Wording.sentence(finding))
                .object("values", values);
    }

    private static JsonObject at(Place place) {
        JsonObject at = new JsonObject();
        if (place instanceof Place.InFile in) {
            return at.text("file", in.file());
        }
        if (place instanceof Place.InDocument in) {
            return at.text("file", in.file()).text("pointer", in.pointer());
        }
        if (place instanceof Place.AtLine line) {
            return at.text("file", line.file()).count("line", line.line());
        }
        if (place instanceof Place.AtByte b) {
            return at.text("file", b.file()).count("byte", b.offset());
        }
        if (place instanceof Place.AtOption option) {
            return at.text("option", option.option());
        }
        if (place instanceof Place.AtTriangle t) {
            return at.count("triangle", t.triangle()).vector("pointMm", new Vector3D(t.xMm(), t.yMm(), t.zMm()));
        }
        if (place instanceof Place.AtEdge e) {
            return at.vector("fromMm", new Vector3D(e.x0Mm(), e.y0Mm(), e.z0Mm()))
                    .vector("toMm", new Vector3D(e.x1Mm(), e.y1Mm(), e.z1Mm()));
        }
        if (place instanceof Place.AtPoint p) {
            return at.vector("pointMm", new Vector3D(p.xMm(), p.yMm(), p.zMm()));
        }
        if (place instanceof Place.OnShell on) {
            return at.count("shell", on.shell());
        }
        if (place instanceof Place.OnPart on) {
            return at.text("part", on.part());
        }
        if (place instanceof Place.BetweenParts between) {
            return at.text("part", between.part()).text("otherPart", between.other());
        }
        if (place instanceof Place.InZone in) {
            return at.text("zone", in.zone());
        }
        return at;
    }
}
