package trimwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import trimwright.statics.Course;
import trimwright.statics.CriticalPoint;
import trimwright.statics.DepthRun;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.FailSafe;
import trimwright.statics.FallsOver;
import trimwright.statics.GramEffect;
import trimwright.statics.GramEffects;
import trimwright.statics.LeakAllowance;
import trimwright.statics.Standing;
import trimwright.statics.Steadiness;
import trimwright.statics.SurfaceFilm;
import trimwright.statics.SurfacingRun;
import trimwright.statics.TankSizing;
import trimwright.statics.UnstableRange;
import trimwright.statics.WaterChange;

/** The JSON keys of a dive. Described in docs/commands.md. */
final class DiveJson {

    private static final double MM3_PER_CM3 = 1000;

    private DiveJson() {}

    static JsonObject of(DiveAnswer answer) {
        DiveRun run = answer.run();
        JsonObject json = course(run.course());
        json.object("submerged", FloatJson.of(run.submerged())).object("failSafe", of(run.failSafe()));
        answer.up().ifPresent(up -> json.object("surfacing", of(up)));
        json.list("grams", answer.grams().rows().stream().map(DiveJson::of).toList());
        answer.sizing().ifPresent(s -> json.object("tankSizing", of(s)));
        json.list("leaks", answer.leaks().stream().map(DiveJson::of).toList())
                .object("surfaceFilm", of(answer.film()))
                .list("waters", answer.waters().stream().map(DiveJson::of).toList());
        answer.depth().ifPresent(d -> json.object("depth", of(d)));
        return json;
    }

    /** How firmly she stands. */
    static JsonObject of(Steadiness s) {
        return new JsonObject()
                .text("stance", word(s.stance()))
                .number("heelDeg", s.heelDeg())
                .number("gmMm", s.gmMm())
                .number("wantedGmMm", s.wantedGmMm())
                .number("bgMm", s.bgMm())
                .number("bgToStandMm", s.bgToStandMm())
                .number("bgToStandFirmMm", s.bgToStandFirmMm());
    }

    private static JsonObject course(Course course) {
        JsonObject json = new JsonObject()
                .list("steps", course.steps().stream().map(DiveJson::of).toList());
        course.critical().ifPresent(c -> json.object("critical", of(c)));
        json.list("unstable", course.unstable().stream().map(DiveJson::of).toList())
                .list("falls", course.falls().stream().map(DiveJson::of).toList());
        course.largestTrim()
                .ifPresent(s -> json.object(
                        "largestTrim",
                        new JsonObject()
                                .number("fill", s.fill())
                                .number("trimDeg", s.settled().orElseThrow().trimDeg())));
        course.softestInTrim()
                .ifPresent(s -> json.object(
                        "softestInTrim",
                        new JsonObject()
                                .number("fill", s.fill())
                                .number(
                                        "gmLongitudinalMm",
                                        s.settled().orElseThrow().gmLongitudinalMm())));
        return json;
    }

    private static JsonObject of(DiveStep step) {
        JsonObject fills = new JsonObject();
        step.fillById().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(e -> fills.number(e.getKey(), e.getValue()));
        JsonObject json = new JsonObject().number("fill", step.fill()).object("fills", fills);
        json.all(FloatJson.of(step.flotation()));
        step.uprightGmMm().ifPresent(gm -> json.number("uprightGmMm", gm));
        return json.list("standing", step.standing().stream().map(DiveJson::of).toList())
                .number("heldWaterG", step.heldWaterG());
    }

    private static JsonObject of(Standing standing) {
        return new JsonObject()
                .text("part", standing.part())
                .number("aboveMm", standing.aboveMm())
                .vector("pointMm", standing.pointMm());
    }

    private static JsonObject of(CriticalPoint critical) {
        return new JsonObject().number("fill", critical.fill()).all(of(critical.steadiness()));
    }

    private static JsonObject of(UnstableRange range) {
        return new JsonObject()
                .number("fromFill", range.fromFill())
                .number("toFill", range.toFill())
                .number("greatestListDeg", range.greatestListDeg())
                .number("atFill", range.atFill());
    }

    private static JsonObject of(FallsOver fall) {
        return new JsonObject()
                .number("fill", fall.fill())
                .number("fromHeelDeg", fall.fromHeelDeg())
                .number("toHeelDeg", fall.toHeelDeg())
                .number("fromTrimDeg", fall.fromTrimDeg())
                .number("toTrimDeg", fall.toTrimDeg());
    }

    private static JsonObject of(FailSafe failSafe) {
        JsonObject json = new JsonObject().number("residualG", failSafe.residualG());
        failSafe.staysOut().ifPresent(s -> json.object("staysOut", of(s)));
        failSafe.sinksFromFill().ifPresent(f -> json.number("sinksFromFill", f));
        return json;
    }

    private static JsonObject of(SurfacingRun up) {
        return new JsonObject()
                .number("draining", up.draining())
                .number("roomCm3", up.roomMm3() / MM3_PER_CM3)
                .number("mostHeldG", up.mostHeldG())
                .number("atFill", up.atFill())
                .all(course(up.course()));
    }

    private static JsonObject of(GramEffects.Row row) {
        JsonObject json = new JsonObject().text("change", word(row.change()));
        row.part().ifPresent(p -> json.text("part", p));
        row.afloat().ifPresent(e -> json.object("afloat", afloat(e)));
        return json.object(
                "dived",
                new JsonObject()
                        .number("heelDeg", row.dived().heelDeg())
                        .number("trimDeg", row.dived().trimDeg())
                        .number("bgMm", row.dived().firmnessMm()));
    }

    private static JsonObject afloat(GramEffect effect) {
        return new JsonObject()
                .number("bowMm", effect.lineAtBowMm())
                .number("sternMm", effect.lineAtSternMm())
                .number("heelDeg", effect.heelDeg())
                .number("trimDeg", effect.trimDeg())
                .number("gmTransverseMm", effect.firmnessMm());
    }

    private static JsonObject of(TankSizing sizing) {
        JsonObject json = new JsonObject()
                .truth("paintedLine", sizing.painted())
                .list(
                        "above",
                        sizing.above().stream()
                                .map(a -> new JsonObject()
                                        .text("part", a.piece().id())
                                        .number("volumeCm3", a.volumeMm3() / MM3_PER_CM3)
                                        .vector("centroidMm", a.centroidMm()))
                                .toList())
                .number("aboveCm3", sizing.aboveMm3() / MM3_PER_CM3)
                .list(
                        "residualG",
                        List.of(sizing.wanted().leastG(), sizing.wanted().greatestG()))
                .number("neededCm3", sizing.neededMm3() / MM3_PER_CM3)
                .number("thereCm3", sizing.thereMm3() / MM3_PER_CM3);
        sizing.wantedCentreMm().ifPresent(c -> json.vector("wantedCentreMm", c));
        sizing.centreMm().ifPresent(c -> json.vector("centreMm", c));
        return json;
    }

    private static JsonObject of(LeakAllowance leak) {
        JsonObject json = new JsonObject()
                .text("cylinder", leak.cylinder())
                .number("roomCm3", leak.roomMm3() / MM3_PER_CM3)
                .list("unknownVolumes", leak.unknownVolumes())
                .number("allowanceG", leak.allowanceG())
                .truth("roomFillsFirst", leak.roomFillsFirst());
        leak.end().ifPresent(e -> json.number("heelDeg", e.heelDeg()).number("trimDeg", e.trimDeg()));
        return json;
    }

    private static JsonObject of(SurfaceFilm film) {
        return new JsonObject()
                .number("tensionMNPerM", film.tensionMNPerM())
                .number("temperatureC", film.temperatureC())
                .number("greatestOutlineMm", film.greatestOutlineMm())
                .number("atFill", film.atFill())
                .number("greatestG", film.greatestG());
    }

    private static JsonObject of(WaterChange change) {
        JsonObject json = new JsonObject()
                .number("densityGPerCm3", change.water().densityGPerCm3())
                .number("temperatureC", change.water().temperatureC())
                .number("salinityGPerKg", change.water().salinityGPerKg());
        change.fromPaintedLine()
                .ifPresent(o -> json.object(
                        "offPaintedLine",
                        new JsonObject()
                                .number("bowMm", o.bowMm())
                                .number("sternMm", o.sternMm())
                                .number("listDeg", o.listDeg())));
        return json.number("gramsForLineG", change.gramsForLineG())
                .number("residualG", change.residualG())
                .number("gramsForResidualG", change.gramsForResidualG())
                .text("dive", word(change.dive()));
    }

    private static JsonObject of(DepthRun depth) {
        JsonObject json = new JsonObject()
                .list(
                        "rows",
                        depth.rows().stream()
                                .map(r -> new JsonObject()
                                        .number("depthM", r.depthM())
                                        .number("residualG", r.residualG())
                                        .number("soakedResidualG", r.soakedResidualG())
                                        .number("bgMm", r.bgMm())
                                        .number("trimDeg", r.trimDeg()))
                                .toList())
                .number("soakedG", depth.soakedG());
        depth.noReturnM().ifPresent(m -> json.number("noReturnM", m));
        depth.noReturnSoakedM().ifPresent(m -> json.number("noReturnSoakedM", m));
        return json;
    }

    /** As in "rests on either side". */
    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
