package trimwright.cli;

import java.util.List;
import java.util.Optional;
import trimwright.statics.RightingCurve;

/** The JSON keys of the righting levers. Described in docs/commands.md. */
final class RightingJson {

    private RightingJson() {}

    static JsonObject of(RightingAnswer answer) {
        JsonObject json = new JsonObject()
                .list("surfaced", rows(answer.surfaced()))
                .list("submerged", rows(answer.submerged()))
                .object(
                        "summary",
                        new JsonObject()
                                .object("surfaced", summary(answer.surfaced()))
                                .object("submerged", summary(answer.submerged())));
        answer.steadiness().ifPresent(s -> json.object("steadiness", DiveJson.of(s)));
        answer.roll()
                .ifPresent(r -> json.object(
                        "rollPeriod",
                        new JsonObject()
                                .number("seconds", r.periodS())
                                .number("radiusOfGyrationMm", r.radiusOfGyrationMm())
                                .number("gmMm", r.gmMm())
                                .truth("estimate", true)));
        leaning(json, "torque", answer.torque());
        leaning(json, "shift", answer.shift());
        return json;
    }

    private static List<JsonObject> rows(RightingCurve curve) {
        return curve.rows().stream()
                .map(r -> new JsonObject()
                        .number("heelDeg", r.heelDeg())
                        .number("trimDeg", r.trimDeg())
                        .number("gzMm", r.gzMm())
                        .number("momentGmm", r.momentGmm()))
                .toList();
    }

    private static JsonObject summary(RightingCurve curve) {
        RightingCurve.Summary summary = curve.summary();
        JsonObject json = new JsonObject()
                .object(
                        "equilibrium",
                        new JsonObject()
                                .number("heelDeg", curve.equilibrium().heelDeg())
                                .number("trimDeg", curve.equilibrium().trimDeg()))
                .number("rangeDeg", summary.rangeDeg())
                .number("maxGzMm", summary.maxGzMm())
                .number("maxGzAtDeg", summary.maxGzAtDeg())
                .number("areaMmRad", summary.areaMmRad())
                .truth("endsWithoutTrim", summary.endsWithoutTrim())
                .number("deckEdgeUnderDeg", curve.deckEdgeUnderDeg());
        curve.topUnder()
                .ifPresent(t -> json.object(
                        "topUnder", new JsonObject().text("part", t.part()).number("heelDeg", t.heelDeg())));
        return json;
    }

    private static void leaning(JsonObject json, String key, Optional<RightingAnswer.Leaning> leaning) {
        leaning.ifPresent(l -> {
            JsonObject told = new JsonObject()
                    .number("momentGmm", l.momentGmm())
                    .truth("borne", l.heel().isPresent());
            l.heel().ifPresent(h -> told.number("heelDeg", h.heelDeg()).number("trimDeg", h.trimDeg()));
            json.object(key, told);
        });
    }
}
