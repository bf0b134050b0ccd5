package trimwright.cli;

import java.util.List;
import java.util.Optional;
import trimwright.plan.Aim;
import trimwright.plan.BallastPlan;
import trimwright.plan.Goal;
import trimwright.plan.LineRange;
import trimwright.plan.PlanRequest;
import trimwright.plan.Room;
import trimwright.plan.TradeOff;
import trimwright.plan.Wanted;
import trimwright.report.AttitudeWords;
import trimwright.report.FloatVerdict;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.PlanWords;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;
import trimwright.statics.Submerged;

/** A ballast plan for people. */
final class BallastText {

    /** Grams in which the worth of more lead and foam is told. */
    private static final double MORE_G = 100;
    /** Less than this is rounding, g. */
    private static final double NOTHING_G = 0.5;

    private final BallastAnswer answer;
    private final BallastPlan plan;
    private final PlanRequest request;
    private final Page page;

    BallastText(BallastAnswer answer, Page page) {
        this.answer = answer;
        this.page = page;
        plan = answer.plan();
        request = answer.request();
    }

    void tell() {
        page.line(request.boat().name()).line(FloatText.loading(request.boat())).gap();
        if (plan.feasible()) {
            tellPlan();
        } else {
            tellConflict();
        }
        tellRooms();
        answer.tradeOff().ifPresent(this::tellTradeOff);
        answer.lineRange().ifPresent(this::tellLines);
        answer.written().ifPresent(p -> page.heading("Saved as " + p));
    }

    private void tellPlan() {
        boolean nothing = plan.pieces().isEmpty()
                && plan.removals().isEmpty()
                && plan.moves().isEmpty();
        if (answer.pair() && isLess()) {
            page.paragraph("There is no room for as much as was asked for with what goes with it; this is the most.");
        }
        page.paragraph((nothing ? "Nothing need be added. As she is, she " : todo() + " She then ") + outcome());
        answer.shifted()
                .ifPresent(s -> page.paragraph("Before that, "
                        + (s.shiftMm() == 0
                                ? "leave " + s.id() + " where it is."
                                : "move " + s.id() + ", with all that stands in it, "
                                        + Numbers.mm(Math.abs(s.shiftMm()))
                                        + (s.shiftMm() > 0 ? " forward." : " aft."))));
        if (!nothing) {
            page.heading("Cut list");
            PlanWords.changes(request.boat(), plan).forEach(page::point);
        }
        tellState();
        if (!nothing) {
            tellRounding();
        }
        tellWorth();
    }

    /** Whether less is added than was asked for. */
    private boolean isLess() {
        Goal goal = request.goal();
        return plan.addedLeadG() < 0.98 * goal.mostLeadG() && plan.addedFoamMm3() < 0.98 * goal.mostFoamMm3();
    }

    private String todo() {
        String lead = Numbers.fixed(plan.addedLeadG(), 0) + " g of lead";
        String foam =
                Measure.METRIC.fineVolume(plan.addedFoamMm3()) + " of foam (" + Numbers.g(plan.addedFoamG()) + ")";
        if (plan.pieces().isEmpty()) {
            return "Change what is on board; nothing need be added.";
        }
        if (plan.addedFoamMm3() == 0) {
            return "Add " + lead + ".";
        }
        return "Add " + (plan.addedLeadG() == 0 ? foam : lead + " and " + foam) + ".";
    }

    private String outcome() {
        if (answer.pair()) {
            Equilibrium now = plan.surfaced().settled().orElseThrow();
            return "floats and dives as before: she keeps her waterline, "
                    + AttitudeWords.of(now.heelDeg(), now.trimDeg())
                    + ". A list or trim that she has stays, but for what she lists less by being firmer; a whole plan,"
                    + " without --add-lead and --add-foam, would take it away.";
        }
        return plan.dived().isPresent()
                ? "floats on her line, dives level and stands up by herself."
                : "floats on her line and stands up by herself.";
    }

    private void tellState() {
        Wanted w = request.wanted();
        TextTable table = TextTable.of("lrrlr").head("", "before", "after", "wanted", "to spare");
        Equilibrium after = plan.surfaced().settled().orElseThrow();
        Optional<Equilibrium> was = answer.before().settled();
        PaintedOffset now = request.offset(after.plane());
        Optional<PaintedOffset> then = was.map(e -> request.offset(e.plane()));
        within(table, "Water above the line, bow", then.map(PaintedOffset::bowMm), now.bowMm(), w.offLineMm(), " mm");
        within(
                table,
                "Water above the line, stern",
                then.map(PaintedOffset::sternMm),
                now.sternMm(),
                w.offLineMm(),
                " mm");
        within(table, "List, positive to starboard", then.map(PaintedOffset::listDeg), now.listDeg(), w.listDeg(), "°");
        atLeast(
                table,
                "GM across, surfaced",
                number(was.map(Equilibrium::gmTransverseMm), 1),
                after.gmTransverseMm(),
                answer.pair() ? 0 : w.gmMm());
        plan.dived().ifPresent(dived -> {
            Submerged under = plan.surfaced().submerged();
            atLeast(
                    table,
                    "B above G, dived",
                    Numbers.fixed(answer.before().submerged().bgMm(), 1),
                    under.bgMm(),
                    answer.pair() ? 0 : w.bgMm());
            double least = w.residualG().least();
            double most = w.residualG().greatest();
            table.row(
                    "Buoyancy left, dived",
                    Numbers.fixed(answer.before().submerged().residualG(), 0),
                    Numbers.g(under.residualG()),
                    Numbers.g(least) + " to " + Numbers.g(most),
                    Numbers.g(Math.min(under.residualG() - least, most - under.residualG())));
            Flotation sunk = Flotation.settling(answer.before().condition().withAllTanksAt(1));
            within(
                    table,
                    answer.pair() ? "Trim dived, against now" : "Trim dived, positive bow up",
                    Optional.of(request.divedTrimOffDeg(sunk)),
                    request.divedTrimOffDeg(dived),
                    w.divedTrimDeg(),
                    "°");
        });
        page.heading("What it brings").table(table);
        page.gap().paragraph(FloatVerdict.of(plan.surfaced()));
    }

    private static void within(
            TextTable table, String name, Optional<Double> before, double after, double most, String unit) {
        table.row(
                name,
                number(before, 1),
                Numbers.fixed(after, 1) + unit,
                "within " + Numbers.fixed(most, 1) + unit,
                Numbers.fixed(most - Math.abs(after), 1) + unit);
    }

    private static void atLeast(TextTable table, String name, String before, double after, double least) {
        table.row(
                name,
                before,
                Numbers.mm(after),
                least > 0 ? "at least " + Numbers.mm(least) : "",
                least > 0 ? Numbers.mm(after - least) : "");
    }

    private static String number(Optional<Double> value, int decimals) {
        return value.map(v -> Numbers.fixed(v, decimals)).orElse("");
    }

    private void tellRounding() {
        double ideal = plan.rounding().idealMassG();
        double rounded = plan.rounding().roundedMassG();
        if (Math.abs(rounded - ideal) > NOTHING_G) {
            page.paragraph(
                    "Pieces of any size, anywhere in the room there is, would come to " + Numbers.g(ideal)
                            + "; these, which can be cut and cast, come to " + Numbers.g(rounded)
                            + ". Places are rounded to whole millimetres, lead to grams, and the others take up what that leaves.");
        }
    }

    private void tellWorth() {
        for (Aim aim : List.of(Aim.BG, Aim.GM)) {
            Double grams = plan.worth().get(aim);
            if (grams != null) {
                String what = aim == Aim.BG ? "B above G, dived," : "GM, surfaced,";
                page.paragraph(
                        grams < NOTHING_G
                                ? what + " could be 1 mm more for nothing: her line asks for these pieces anyway."
                                : what + " grows by " + Numbers.fixed(MORE_G / grams, 1) + " mm with another "
                                        + Numbers.fixed(MORE_G, 0) + " g of lead and its foam: " + Numbers.g(grams)
                                        + " a millimetre.");
            }
        }
    }

    private void tellConflict() {
        page.paragraph(
                "There is no plan: what is wanted cannot all be had with the room, the tank and the line as they are.");
        page.heading("What gives way when as much as possible is met");
        if (plan.misses().isEmpty()) {
            page.point("no single aim: the room for lead and foam is of no use for any of them");
        }
        plan.misses().forEach(m -> page.point(PlanWords.of(m)));
        page.heading("Ways out, each one solved again, the easiest first");
        if (answer.ways().isEmpty()) {
            page.point("no single change that was tried is enough; give her more room, or ease more than one aim");
        }
        answer.ways().forEach(w -> page.point(PlanWords.of(w)));
    }

    private void tellRooms() {
        TextTable table = TextTable.of("llrrrr")
                .head("Zone", "for", "free below", "above the line", "off by at most", "can be cut as boxes");
        for (Room room : plan.rooms()) {
            table.row(
                    room.zone().id() + (room.twin() ? ", starboard" : ""),
                    room.zone().use().word(),
                    cm3(room.belowLineMm3()),
                    cm3(room.aboveLineMm3()),
                    Numbers.fixed(room.errorMm3() / 1000, 1) + " cm³",
                    cm3(room.cellsMm3()));
        }
        page.heading("Room").table(table);
    }

    /** Less room than this comes of rounding. */
    private static final double LEAST_MM3 = 1;

    private static String cm3(double mm3) {
        return mm3 < LEAST_MM3 ? "0 cm³" : Measure.METRIC.fineVolume(mm3);
    }

    private void tellTradeOff(TradeOff curve) {
        page.heading("What stability costs");
        if (curve.points().isEmpty()) {
            page.paragraph("Nothing can be told: even without any stability wanted there is no plan.");
            return;
        }
        boolean dives = plan.dived().isPresent();
        TextTable table = dives
                ? TextTable.of("rrrl").head("added, g", "BG dived, mm", "GM surfaced, mm", "")
                : TextTable.of("rrl").head("added, g", "GM surfaced, mm", "");
        for (int i = 0; i < curve.points().size(); i++) {
            TradeOff.Point p = curve.points().get(i);
            String added = Numbers.fixed(p.addedG(), 0);
            String gm = Numbers.fixed(p.gmMm(), 1);
            String note = i == curve.knee() ? "knee: from here each mm costs clearly more" : "";
            if (dives) {
                table.row(added, Numbers.fixed(p.bgMm(), 1), gm, note);
            } else {
                table.row(added, gm, note);
            }
        }
        page.table(table);
    }

    private void tellLines(LineRange range) {
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
}
