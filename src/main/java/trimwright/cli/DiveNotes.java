package trimwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import trimwright.boat.Kind;
import trimwright.report.AttitudeWords;
import trimwright.report.DepthWords;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.WaterWords;
import trimwright.statics.DepthRun;
import trimwright.statics.GramEffect;
import trimwright.statics.GramEffects;
import trimwright.statics.LeakAllowance;
import trimwright.statics.SurfaceFilm;
import trimwright.statics.TankSizing;
import trimwright.statics.WaterChange;

/** What a dive rests on, as text: grams, the tank, leaks, the surface film, other waters, depth. */
final class DiveNotes {

    private static final double MM3_PER_CM3 = 1000;
    /** Parts told one by one above the line. */
    private static final int PARTS_TOLD = 8;

    private DiveNotes() {}

    static void tell(DiveAnswer answer, Page page) {
        grams(page, answer.grams());
        answer.sizing().ifPresent(sizing -> tank(page, sizing));
        leaks(page, answer.leaks());
        film(page, answer.film());
        waters(page, answer.waters());
        answer.depth().ifPresent(depth -> depths(page, depth));
    }

    private static void grams(Page page, GramEffects effects) {
        TextTable table = TextTable.of("lrrrrrrr");
        table.head("", "afloat", "", "", "", "dived", "", "");
        table.head("", "bow, mm", "stern, mm", "list, °", "trim, °", "list, °", "trim, °", "BG, mm");
        for (GramEffects.Row row : effects.rows()) {
            GramEffect dived = row.dived();
            table.row(
                    change(row),
                    row.afloat().map(e -> signed(e.lineAtBowMm(), 1)).orElse("sinks"),
                    row.afloat().map(e -> signed(e.lineAtSternMm(), 1)).orElse(""),
                    row.afloat().map(e -> signed(e.heelDeg(), 1)).orElse(""),
                    row.afloat().map(e -> signed(e.trimDeg(), 1)).orElse(""),
                    signed(dived.heelDeg(), 1),
                    signed(dived.trimDeg(), 1),
                    signed(dived.firmnessMm(), 2));
        }
        page.heading("What a gram does: the change of the line, and of list (+ to starboard) and trim (+ bow up)")
                .table(table);
    }

    private static String change(GramEffects.Row row) {
        String ten = Numbers.fixed(GramEffects.MASS_G, 0) + " g ";
        String moved = row.part().orElse("") + " " + Numbers.fixed(GramEffects.MOVE_MM, 0) + " mm ";
        return switch (row.change()) {
            case WEIGHT_AT_BOW -> ten + "at the bow";
            case WEIGHT_AT_STERN -> ten + "at the stern";
            case WEIGHT_TO_PORT -> ten + "on the port side";
            case WEIGHT_LOW -> ten + "low down";
            case WEIGHT_HIGH -> ten + "high up";
            case LEAD_FORWARD -> moved + "forward";
            case LEAD_TO_PORT -> moved + "to port";
            case LEAD_UP -> moved + "up";
        };
    }

    private static String signed(double value, int decimals) {
        return Numbers.roundsToZero(value, decimals) ? "0" : (value > 0 ? "+" : "") + Numbers.fixed(value, decimals);
    }

    private static void tank(Page page, TankSizing sizing) {
        page.heading("The tank");
        TextTable table = TextTable.of("lrl");
        int told = 0;
        double rest = 0;
        for (TankSizing.Above above : sizing.above()) {
            if (told++ < PARTS_TOLD) {
                table.row(
                        above.piece().id(),
                        cm3(above.volumeMm3()),
                        above.piece().part().kind() == Kind.FOAM
                                ? "cm³ of foam: it lifts only dived, and costs as much tank"
                                : "cm³");
            } else {
                rest += above.volumeMm3();
            }
        }
        if (rest > 0) {
            table.row("everything else", cm3(rest), "cm³");
        }
        table.row("above the line in all", cm3(sizing.aboveMm3()), "cm³ that have to go under");
        String stated = sizing.wanted().stated()
                ? "g, middle of the band wanted"
                : "g, three quarters of a per cent of her weight";
        table.row("reserve", Numbers.fixed(sizing.wanted().middleG(), 1), stated);
        table.row("tank needed", cm3(sizing.neededMm3()), "cm³ for that reserve when she floats on her line");
        table.row("tank there", cm3(sizing.thereMm3()), "cm³, " + comparison(sizing));
        page.line(sizing.painted() ? "Above the painted line stand" : "Above the line on which she floats stand")
                .table(table);
        if (sizing.wantedCentreMm().isPresent() && sizing.centreMm().isPresent()) {
            double wanted = sizing.wantedCentreMm().get().getX();
            double there = sizing.centreMm().get().getX();
            double off = there - wanted;
            page.paragraph("To take her under level the middle of the tank belongs at x "
                    + Numbers.mm(wanted) + "; it is at x " + Numbers.mm(there)
                    + (Numbers.roundsToZero(off, 1)
                            ? "."
                            : ", " + Numbers.mm(Math.abs(off)) + " too far " + (off > 0 ? "forward." : "aft.")));
        }
    }

    private static String comparison(TankSizing sizing) {
        double over = sizing.thereMm3() - sizing.neededMm3();
        if (Numbers.roundsToZero(over / MM3_PER_CM3, 1)) {
            return "just right";
        }
        return cm3(Math.abs(over)) + " cm³ "
                + (over > 0 ? "more: less than the reserve wanted is left" : "less: more of her stays out");
    }

    private static String cm3(double mm3) {
        return Numbers.fixed(mm3 / MM3_PER_CM3, 1);
    }

    private static void leaks(Page page, List<LeakAllowance> leaks) {
        if (leaks.isEmpty()) {
            return;
        }
        page.heading("A leak");
        for (LeakAllowance leak : leaks) {
            page.point(leak(leak));
        }
    }

    private static String leak(LeakAllowance leak) {
        String lies = leak.end()
                .map(e -> "; she then lies " + AttitudeWords.of(e.plane().up()))
                .orElse("");
        if (leak.allowanceG() < 0) {
            return leak.cylinder() + ": she does not float with empty tanks even when it is dry.";
        }
        String unknown = leak.unknownVolumes().isEmpty()
                ? ""
                : " Parts of unknown volume in it count as room: "
                        + leak.unknownVolumes().stream().collect(Collectors.joining(", ")) + ".";
        if (leak.roomFillsFirst()) {
            return leak.cylinder() + ": full of water (" + Numbers.g(leak.roomMm3() / MM3_PER_CM3)
                    + ") she still floats with blown tanks" + lies + "." + unknown;
        }
        return leak.cylinder() + ": " + Numbers.g(leak.allowanceG())
                + " of water in it are all that she can bring up with blown tanks" + lies + "." + unknown;
    }

    private static void film(Page page, SurfaceFilm film) {
        if (film.greatestOutlineMm() == 0) {
            return;
        }
        page.heading("The film on the water")
                .paragraph("It can hold her up with at most " + Numbers.g(film.greatestG()) + ", at "
                        + Numbers.fixed(100 * film.atFill(), 0) + " % full, where "
                        + Numbers.fixed(film.greatestOutlineMm(), 0)
                        + " mm of outline meet the water: so much push she may need to go under ("
                        + Numbers.fixed(film.tensionMNPerM(), 1) + " mN/m at "
                        + Numbers.plain(film.temperatureC()) + " °C" + (film.temperatureStated() ? "" : ", assumed")
                        + (film.salty() ? "; salt water holds one or two per cent more" : "") + ").");
    }

    private static void waters(Page page, List<WaterChange> waters) {
        TextTable table = TextTable.of("lrrrrrl");
        table.head("", "g/cm³", "off line", "", "for line", "dived", "");
        table.head("", "", "bow mm", "stern", "g", "g", "");
        for (WaterChange change : waters) {
            table.row(
                    WaterWords.brief(change.water()),
                    Numbers.fixed(change.water().densityGPerCm3(), 4),
                    change.fromPaintedLine().map(o -> signed(o.bowMm(), 1)).orElse("–"),
                    change.fromPaintedLine().map(o -> signed(o.sternMm(), 1)).orElse("–"),
                    change.gramsForLineG().map(g -> signed(g, 1)).orElse("–"),
                    Numbers.fixed(change.residualG(), 1),
                    dives(change));
        }
        page.heading("In other water: the line, what to add to float on it as at home, what is left dived")
                .table(table);
    }

    private static String dives(WaterChange change) {
        return switch (change.dive()) {
            case DIVES -> "dives and comes back";
            case STAYS_UP -> "stays up: add " + Numbers.g(change.gramsForResidualG());
            case SINKS -> "sinks when dived";
        };
    }

    private static void depths(Page page, DepthRun depth) {
        boolean soaks = depth.soakedG() > 0;
        TextTable table = TextTable.of("rrrrr");
        table.head("depth", "left", soaks ? "left when soaked" : "", "B above G", "trim");
        table.head("m", "g", soaks ? "g" : "", "mm", "degrees");
        for (DepthRun.Row row : depth.rows()) {
            table.row(
                    Numbers.fixed(row.depthM(), 1),
                    Numbers.fixed(row.residualG(), 1),
                    soaks ? Numbers.fixed(row.soakedResidualG(), 1) : "",
                    Numbers.fixed(row.bgMm(), 1),
                    Numbers.fixed(row.trimDeg(), 1));
        }
        page.heading("With depth").table(table);
        page.paragraph(DepthWords.noReturn(depth, Measure.METRIC));
        DepthWords.soaking(depth, Measure.METRIC).ifPresent(page::paragraph);
    }
}
