package trimwright.cli;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import trimwright.boat.Boat;
import trimwright.report.AttitudeWords;
import trimwright.report.Numbers;
import trimwright.report.StabilityWords;
import trimwright.statics.RightingCurve;
import trimwright.statics.Submerged;

/** Righting levers as text: how she stands in a sentence, what the curves come to, then the curves. */
final class RightingText {

    /** Difference between the levers of both sides from which both are told, mm. */
    private static final double ASYMMETRIC_MM = 0.05;

    private RightingText() {}

    static void tell(RightingAnswer answer, Page page) {
        Boat boat = answer.condition().boat();
        page.line(boat.name()).line(FloatText.loading(boat)).gap();
        page.paragraph(answer.steadiness()
                .map(StabilityWords::of)
                .orElse("Held upright she finds no trim that is stable: she stands on end or lies over."));
        page.paragraph(StabilityWords.of(Submerged.of(answer.condition())));
        page.heading("What it comes to, to starboard").table(summary(answer));
        leaning(page, answer);
        curve(page.heading("Righting lever, surfaced (positive brings her back)"), answer.surfaced());
        curve(page.heading("Dived, everything under water, tanks full"), answer.submerged());
    }

    private static void curve(Page page, RightingCurve curve) {
        if (curve.rows().isEmpty()) {
            page.paragraph("At no list is any trim stable: she goes on end.");
        } else {
            page.table(curve(curve));
        }
    }

    private static TextTable summary(RightingAnswer answer) {
        RightingCurve up = answer.surfaced();
        RightingCurve down = answer.submerged();
        TextTable table = TextTable.of("lrrl").head("", "surfaced", "dived", "");
        table.row("rests at", rest(up), rest(down), "list; S starboard, P port");
        table.row(
                "reaches",
                Numbers.fixed(up.summary().rangeDeg(), 1) + (up.summary().endsWithoutTrim() ? "*" : ""),
                Numbers.fixed(down.summary().rangeDeg(), 1) + (down.summary().endsWithoutTrim() ? "*" : ""),
                "degrees from there");
        table.row(
                "greatest lever",
                Numbers.fixed(up.summary().maxGzMm(), 2),
                Numbers.fixed(down.summary().maxGzMm(), 2),
                "mm");
        table.row(
                "  at",
                Numbers.fixed(up.summary().maxGzAtDeg(), 1),
                Numbers.fixed(down.summary().maxGzAtDeg(), 1),
                "degrees");
        table.row(
                "area under it",
                Numbers.fixed(up.summary().areaMmRad(), 2),
                Numbers.fixed(down.summary().areaMmRad(), 2),
                "mm·rad");
        table.row(
                "deck edge under at",
                up.deckEdgeUnderDeg().map(d -> Numbers.fixed(d, 1)).orElse("–"),
                "",
                "degrees");
        up.topUnder().ifPresent(t -> table.row(t.part() + " under at", Numbers.fixed(t.heelDeg(), 1), "", "degrees"));
        answer.roll()
                .ifPresent(r -> table.row(
                        "a roll, over and back",
                        Numbers.fixed(r.periodS(), 1),
                        "",
                        "s, an estimate from her masses alone"));
        return table;
    }

    private static String rest(RightingCurve curve) {
        double heel = curve.equilibrium().heelDeg();
        return Numbers.roundsToZero(heel, 1) ? "0.0" : Numbers.fixed(Math.abs(heel), 1) + (heel > 0 ? " S" : " P");
    }

    private static void leaning(Page page, RightingAnswer answer) {
        boolean pushed = answer.surfaced().summary().endsWithoutTrim()
                || answer.submerged().summary().endsWithoutTrim();
        if (pushed) {
            page.paragraph("* There no trim is stable any more: she goes over the end before she comes back.");
        }
        page.gap();
        leaning(page, "A steady moment of ", answer.torque(), "She cannot bear a steady moment of ");
        leaning(page, "A weight moved across by ", answer.shift(), "She sinks with a weight moved by ");
    }

    private static void leaning(Page page, String gives, Optional<RightingAnswer.Leaning> leaning, String tooMuch) {
        leaning.ifPresent(l -> {
            String moment =
                    Numbers.plain(Math.abs(l.momentGmm())) + " g·mm to " + (l.momentGmm() < 0 ? "port" : "starboard");
            page.paragraph(l.heel()
                    .map(h -> gives + moment + " lays her at " + AttitudeWords.of(h.heelDeg(), h.trimDeg()) + ".")
                    .orElse(tooMuch + moment + ": she goes over."));
        });
    }

    private static TextTable curve(RightingCurve curve) {
        Map<Double, RightingCurve.Row> port = new TreeMap<>();
        curve.rows().stream().filter(r -> r.heelDeg() <= 0).forEach(r -> port.put(-r.heelDeg() + 0.0, r));
        Map<Double, RightingCurve.Row> starboard = new TreeMap<>();
        curve.rows().stream().filter(r -> r.heelDeg() >= 0).forEach(r -> starboard.put(r.heelDeg(), r));
        boolean both = !symmetric(port, starboard);
        TextTable table = TextTable.of("rrrrrrr");
        table.head(
                "list",
                both ? "starboard" : "lever",
                both ? "" : "moment",
                both ? "" : "trim",
                both ? "port" : "",
                "",
                "");
        table.head("degrees", "mm", "g·mm", "bow up °", both ? "mm" : "", both ? "g·mm" : "", both ? "bow up °" : "");
        TreeMap<Double, RightingCurve.Row> lists = new TreeMap<>(starboard);
        port.forEach(lists::putIfAbsent);
        for (double list : lists.keySet()) {
            String[] right = cells(starboard.get(list), 1);
            String[] left = both ? cells(port.get(list), -1) : new String[] {"", "", ""};
            table.row(Numbers.plain(list), right[0], right[1], right[2], left[0], left[1], left[2]);
        }
        return table;
    }

    private static String[] cells(RightingCurve.Row row, int side) {
        return row == null
                ? new String[] {"–", "–", "–"}
                : new String[] {
                    Numbers.fixed(side * row.gzMm(), 2),
                    Numbers.fixed(side * row.momentGmm(), 0),
                    Numbers.fixed(row.trimDeg(), 1)
                };
    }

    private static boolean symmetric(Map<Double, RightingCurve.Row> port, Map<Double, RightingCurve.Row> starboard) {
        if (!port.keySet().equals(starboard.keySet())) {
            return false;
        }
        return port.entrySet().stream()
                .allMatch(e ->
                        Math.abs(e.getValue().gzMm() + starboard.get(e.getKey()).gzMm()) < ASYMMETRIC_MM);
    }
}
