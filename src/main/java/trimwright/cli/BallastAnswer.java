package trimwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.file.PartJson;
import trimwright.finding.Finding;
import trimwright.plan.Aim;
import trimwright.plan.BallastPlan;
import trimwright.plan.LineRange;
import trimwright.plan.Miss;
import trimwright.plan.PlanRequest;
import trimwright.plan.Room;
import trimwright.plan.Shifted;
import trimwright.plan.TradeOff;
import trimwright.plan.Wanted;
import trimwright.plan.WayOut;
import trimwright.report.FloatVerdict;
import trimwright.report.Numbers;
import trimwright.report.PlanWords;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;
import trimwright.statics.Submerged;

/** A ballast plan, told. */
record BallastAnswer(
        PlanRequest request,
        BallastPlan plan,
        List<WayOut> ways,
        Optional<Shifted.Best> shifted,
        boolean pair,
        Optional<TradeOff> tradeOff,
        Optional<LineRange> lineRange,
        Optional<Path> written,
        List<Finding> findings)
        implements Answer {

    @Override
    public int exitCode() {
        return plan.feasible() ? ExitCode.DONE : ExitCode.NO;
    }

    @Override
    public String caution() {
        return Cautions.BALLAST;
    }

    @Override
    public void tell(Page page) {
        page.line(request.boat().name()).line(FloatText.loading(request.boat())).gap();
        if (plan.feasible()) {
            tellPlan(page);
        } else {
            tellConflict(page);
        }
        tellRooms(page);
        tradeOff.ifPresent(t -> tellTradeOff(page, t));
        lineRange.ifPresent(r -> tellLines(page, r));
        written.ifPresent(p -> page.heading("Saved as " + p));
    }

    private void tellPlan(Page page) {
        String added = "Add " + Numbers.g(plan.addedLeadG()) + " of lead and "
                + Numbers.fixed(plan.addedFoamMm3() / 1000, 0) + " cm³ of foam (" + Numbers.g(plan.addedFoamG())
                + "). ";
        boolean dives = plan.dived().isPresent();
        String outcome = pair
                ? "Her line and her dive stay as they are."
                : dives
                        ? "She then floats on her line, dives level and stands up by herself."
                        : "She then floats on her line and stands up by herself.";
        page.paragraph(added + outcome);
        shifted.ifPresent(s -> page.paragraph("Before that, "
                + (s.shiftMm() == 0
                        ? "leave what may be moved where it is."
                        : "move it " + Numbers.mm(Math.abs(s.shiftMm())) + (s.shiftMm() > 0 ? " forward." : " aft."))));
        page.heading("Cut list");
        double[] ends = ends();
        PlanWords.changes(request.boat(), plan, ends[0], ends[1]).forEach(page::point);
        tellState(page);
        tellWorth(page);
    }

    private void tellState(Page page) {
        Flotation before = Flotation.of(request.boat());
        Wanted w = request.wanted();
        TextTable table = TextTable.of("lrrl").head("", "before", "after", "wanted");
        Equilibrium after = plan.surfaced().settled().orElseThrow();
        Optional<Equilibrium> was = before.settled();
        PaintedOffset now = offset(after);
        Optional<PaintedOffset> then = was.map(this::offset);
        String line = "within " + Numbers.mm(w.offLineMm());
        table.row("Water above the line, bow", number(then.map(PaintedOffset::bowMm), 1), mm(now.bowMm()), line);
        table.row("Water above the line, stern", number(then.map(PaintedOffset::sternMm), 1), mm(now.sternMm()), line);
        table.row(
                "List, positive to starboard",
                number(was.map(Equilibrium::heelDeg), 1),
                Numbers.fixed(after.heelDeg(), 1) + "°",
                "within " + Numbers.degrees(w.listDeg()));
        table.row(
                "GM across, surfaced",
                number(was.map(Equilibrium::gmTransverseMm), 1),
                mm(after.gmTransverseMm()),
                "at least " + Numbers.mm(w.gmMm()));
        if (plan.dived().isPresent()) {
            Submerged under = plan.surfaced().submerged();
            table.row(
                    "B above G, dived",
                    Numbers.fixed(before.submerged().bgMm(), 1),
                    mm(under.bgMm()),
                    "at least " + Numbers.mm(w.bgMm()));
            table.row(
                    "Buoyancy left, dived",
                    Numbers.fixed(before.submerged().residualG(), 0),
                    Numbers.g(under.residualG()),
                    Numbers.g(w.residualG().least()) + " to "
                            + Numbers.g(w.residualG().greatest()));
            Optional<Equilibrium> down = plan.dived().get().settled();
            table.row(
                    "Trim dived, positive bow up",
                    "",
                    down.map(e -> Numbers.fixed(e.trimDeg(), 1) + "°").orElse("sinks"),
                    "within " + Numbers.degrees(w.divedTrimDeg()));
        }
        page.heading("What it brings").table(table);
        page.gap().paragraph(FloatVerdict.of(plan.surfaced()));
        page.paragraph("Rounding to pieces that can be cut and cast changed the added mass from "
                + Numbers.g(plan.rounding().idealMassG()) + " to "
                + Numbers.g(plan.rounding().roundedMassG()) + ".");
    }

    private PaintedOffset offset(Equilibrium e) {
        return request.offset(e.plane());
    }

    private static String number(Optional<Double> value, int decimals) {
        return value.map(v -> Numbers.fixed(v, decimals)).orElse("sinks");
    }

    private static String mm(double value) {
        return Numbers.fixed(value, 1) + " mm";
    }

    private void tellWorth(Page page) {
        for (Aim aim : List.of(Aim.BG, Aim.GM)) {
            Double grams = plan.worth().get(aim);
            if (grams != null) {
                String what = aim == Aim.BG ? "B 1 mm higher above G, dived," : "1 mm more GM, surfaced,";
                page.paragraph(
                        grams < 0.5
                                ? what + " would cost nothing: her line asks for this lead and foam anyway."
                                : what + " would ask for another " + Numbers.g(grams) + " of lead and foam.");
            }
        }
    }

    private void tellConflict(Page page) {
        page.paragraph(
                "There is no plan: what is wanted cannot all be had with the room, the tank and the line as they are.");
        page.heading("What gives way when as much as possible is met");
        if (plan.misses().isEmpty()) {
            page.point("no single aim: the room for lead and foam is of no use for any of them");
        }
        plan.misses().forEach(m -> page.point(PlanWords.of(m)));
        page.heading("Ways out, each one solved again, the easiest first");
        if (ways.isEmpty()) {
            page.point("no single change that was tried is enough; give her more room, or ease more than one aim");
        }
        ways.forEach(w -> page.point(PlanWords.of(w)));
    }

    private void tellRooms(Page page) {
        TextTable table =
                TextTable.of("llrrr").head("Zone", "for", "free below", "above the line", "can be cut as boxes");
        for (Room room : plan.rooms()) {
            table.row(
                    room.zone().id() + (room.twin() ? ", starboard" : ""),
                    room.zone().use().word(),
                    Numbers.fixed(room.belowLineMm3() / 1000, 0) + " cm³",
                    Numbers.fixed(room.aboveLineMm3() / 1000, 0) + " cm³",
                    Numbers.fixed(room.cellsMm3() / 1000, 0) + " cm³");
        }
        page.heading("Room").table(table);
    }

    private void tellTradeOff(Page page, TradeOff curve) {
        page.heading("What stability costs");
        if (curve.points().isEmpty()) {
            page.paragraph("Nothing can be told: even without any stability wanted there is no plan.");
            return;
        }
        TextTable table = TextTable.of("rrrl").head("added, g", "BG dived, mm", "GM surfaced, mm", "");
        for (int i = 0; i < curve.points().size(); i++) {
            TradeOff.Point p = curve.points().get(i);
            table.row(
                    Numbers.fixed(p.addedG(), 0),
                    plan.dived().isPresent() ? Numbers.fixed(p.bgMm(), 1) : "",
                    Numbers.fixed(p.gmMm(), 1),
                    i == curve.knee() ? "knee: from here each mm costs clearly more" : "");
        }
        page.table(table);
    }

    private void tellLines(Page page, LineRange range) {
        page.heading("Where the line could be painted");
        if (range.places().isEmpty()) {
            page.paragraph("Nowhere near: no line within reach has a plan.");
            return;
        }
        TextTable table = TextTable.of("rlr").head("line", "", "added, g");
        for (LineRange.Place p : range.places()) {
            String way = Numbers.roundsToZero(p.raisedMm(), 1)
                    ? "as it is"
                    : p.raisedMm() > 0 ? "mm higher than now" : "mm lower than now";
            table.row(Numbers.fixed(Math.abs(p.raisedMm()), 1), way, Numbers.fixed(p.addedG(), 0));
        }
        page.table(table);
    }

    /** x of the stern and z of the keel. */
    private double[] ends() {
        double aft = Double.POSITIVE_INFINITY;
        double keel = Double.POSITIVE_INFINITY;
        for (Piece piece : request.boat().pieces()) {
            boolean counts = piece.part().kind() == Kind.HULL
                    || request.boat().parts().stream().noneMatch(Part::isHull);
            if (counts && piece.displacer().isPresent()) {
                aft = Math.min(aft, piece.displacer().get().bottomMm(Vector3D.PLUS_I));
                keel = Math.min(keel, piece.displacer().get().bottomMm(Vector3D.PLUS_K));
            }
        }
        return new double[] {aft, keel};
    }

    @Override
    public JsonObject json() {
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
                    .number("massG", PlanWords.removedG(request.boat(), e.getKey(), e.getValue())));
        }
        json.list("takenOut", taken);
        List<JsonObject> moved = new ArrayList<>();
        plan.moves()
                .forEach((id, mm) -> moved.add(new JsonObject().text("id", id).number("aheadMm", mm)));
        json.list("moved", moved);
        shifted.ifPresent(s -> json.number("movedMm", s.shiftMm()));
        JsonObject conditions = new JsonObject().object("surfaced", FloatJson.of(plan.surfaced()));
        plan.dived()
                .ifPresent(d -> conditions
                        .object("submerged", FloatJson.of(plan.surfaced().submerged()))
                        .object("dived", FloatJson.of(d)));
        json.object("conditions", conditions)
                .list(
                        "conflicts",
                        plan.misses().stream().map(BallastAnswer::json).toList())
                .list("waysOut", ways.stream().map(BallastAnswer::json).toList());
        JsonObject worth = new JsonObject();
        plan.worth().forEach((aim, grams) -> worth.number(aim == Aim.BG ? "gramsPerMmBg" : "gramsPerMmGm", grams));
        json.object("worth", worth)
                .object(
                        "rounding",
                        new JsonObject()
                                .number("idealMassG", plan.rounding().idealMassG())
                                .number("roundedMassG", plan.rounding().roundedMassG()))
                .list("rooms", plan.rooms().stream().map(BallastAnswer::json).toList());
        tradeOff.ifPresent(t -> json.object(
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
        lineRange.ifPresent(r -> json.list(
                "lines",
                r.places().stream()
                        .map(p -> new JsonObject()
                                .number("raisedMm", p.raisedMm())
                                .number("addedG", p.addedG()))
                        .toList()));
        return json;
    }

    private static JsonObject json(Miss miss) {
        return new JsonObject()
                .text("target", miss.aim().key())
                .number("amount", miss.amount())
                .text("unit", miss.aim().unit())
                .text("reason", PlanWords.of(miss));
    }

    private static JsonObject json(WayOut way) {
        return new JsonObject()
                .text("change", way.kind().name().toLowerCase(Locale.ROOT))
                .text("subject", way.subject())
                .number("amount", way.amount())
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
