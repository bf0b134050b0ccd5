package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import trimwright.file.PartJson;
import trimwright.plan.Aim;
import trimwright.plan.BallastPlan;
import trimwright.plan.Miss;
import trimwright.plan.Room;
import trimwright.plan.WayOut;
import trimwright.report.PlanWords;

/** A ballast plan for scripts. */
final class BallastJson {

    private BallastJson() {}

    /** The whole answer. */
    static JsonObject of(BallastAnswer answer) {
        BallastPlan plan = answer.plan();
        JsonObject json = new JsonObject()
                .truth("feasible", plan.feasible())
                .list("pieces", plan.pieces().stream().map(PartJson::of).toList())
                .number("addedLeadG", plan.addedLeadG())
                .number("addedFoamCm3", plan.addedFoamMm3() / 1000)
                .number("addedFoamG", plan.addedFoamG());
        List<JsonObject> taken = new ArrayList<>();
        for (Map.Entry<String, Double> e : plan.removals().entrySet()) {
            taken.add(new JsonObject()
                    .text("id", e.getKey())
                    .number("share", e.getValue())
                    .number("massG", PlanWords.removedG(answer.request().boat(), e.getKey(), e.getValue())));
        }
        json.list("takenOut", taken);
        List<JsonObject> moved = new ArrayList<>();
        plan.moves()
                .forEach((id, mm) -> moved.add(new JsonObject().text("id", id).number("aheadMm", mm)));
        json.list("moved", moved);
        answer.shifted().ifPresent(s -> json.number("movedMm", s.shiftMm()));
        JsonObject conditions = new JsonObject().object("surfaced", FloatJson.of(plan.surfaced()));
        plan.dived()
                .ifPresent(d -> conditions
                        .object("submerged", FloatJson.of(plan.surfaced().submerged()))
                        .object("dived", FloatJson.of(d)));
        json.object("conditions", conditions)
                .list("conflicts", plan.misses().stream().map(BallastJson::json).toList())
                .list("waysOut", answer.ways().stream().map(BallastJson::json).toList());
        JsonObject worth = new JsonObject();
        plan.worth().forEach((aim, grams) -> worth.number(aim == Aim.BG ? "gramsPerMmBg" : "gramsPerMmGm", grams));
        json.object("worth", worth)
                .object(
                        "rounding",
                        new JsonObject()
                                .number("idealMassG", plan.rounding().idealMassG())
                                .number("roundedMassG", plan.rounding().roundedMassG()))
                .list("rooms", plan.rooms().stream().map(BallastJson::json).toList());
        answer.tradeOff()
                .ifPresent(t -> json.object(
                        "tradeOff",
                        new JsonObject()
                                .list(
                                        "points",
                                        t.points().stream()
                                                .map(p -> new JsonObject()
                                                        .number("addedG", p.addedG())
                                                        .number("bgMm", p.bgMm())
                                                        .number("gmMm", p.gmMm()))
                                                .toList())
                                .count("knee", t.knee())));
        answer.lineRange()
                .ifPresent(r -> json.list(
                        "lines",
                        r.places().stream()
                                .map(p -> new JsonObject()
                                        .number("raisedMm", p.raisedMm())
                                        .number("addedG", p.addedG()))
                                .toList()));
        return json;
    }

    private static JsonObject json(Miss miss) {
        JsonObject json = new JsonObject()
                .text("target", miss.aim().key())
                .number("amount", miss.amount())
                .text("unit", miss.aim().unit())
                .text("reason", PlanWords.of(miss));
        miss.cause().ifPresent(c -> {
            JsonObject figures = new JsonObject();
            new TreeMap<>(c.figures()).forEach(figures::number);
            json.text("cause", c.kind().name().toLowerCase(Locale.ROOT))
                    .object("figures", figures)
                    .list("parts", c.parts());
        });
        return json;
    }

    private static JsonObject json(WayOut way) {
        return new JsonObject()
                .text("change", way.kind().name().toLowerCase(Locale.ROOT))
                .text("subject", way.subject())
                .number("amount", way.amount())
                .number("shiftMm", way.shiftMm())
                .number("addedG", way.addedG())
                .text("words", PlanWords.of(way));
    }

    private static JsonObject json(Room room) {
        return new JsonObject()
                .text("zone", room.zone().id())
                .text("for", room.zone().use().word())
                .truth("twin", room.twin())
                .number("belowLineCm3", room.belowLineMm3() / 1000)
                .number("aboveLineCm3", room.aboveLineMm3() / 1000)
                .number("errorCm3", room.errorMm3() / 1000)
                .number("boxesCm3", room.cellsMm3() / 1000)
                .vector("centroidMm", room.centroidMm())
                .list(
                        "slices",
                        room.slices().stream()
                                .map(s -> new JsonObject()
                                        .number("fromXMm", s.fromXMm())
                                        .number("toXMm", s.toXMm())
                                        .number("freeCm3", s.freeMm3() / 1000)
                                        .number("portBelowCm3", s.portBelowMm3() / 1000)
                                        .number("portAboveCm3", s.portAboveMm3() / 1000)
                                        .number("starboardBelowCm3", s.starboardBelowMm3() / 1000)
                                        .number("starboardAboveCm3", s.starboardAboveMm3() / 1000))
                                .toList());
    }
}
