package trimwright.cli;

import trimwright.plan.pool.Figure;
import trimwright.plan.pool.Tolerance;
import trimwright.plan.pool.Tolerance.Spread;
import trimwright.report.Numbers;
import trimwright.report.PoolWords;

/** How far a boat may be off, as text and for scripts. */
final class ToleranceText {

    /** Parts told one by one. */
    private static final int PARTS_TOLD = 5;

    private ToleranceText() {}

    static void tell(Tolerance t, Page page) {
        page.heading("How far it may be off, from " + t.draws() + " boats with the margins of her parts");
        t.within().ifPresent(share -> page.paragraph(PoolWords.chance(t)));
        if (t.sinks() > 0) {
            page.paragraph(PoolWords.percent(t.sinks()) + " of them sink surfaced.");
        }
        TextTable table = TextTable.of("lrrrrlr");
        table.head(
                "",
                "file",
                "±",
                "5 % below",
                "5 % above",
                "",
                t.withinByFigure().isEmpty() ? "" : "as wanted");
        for (Figure figure : Figure.values()) {
            Spread s = t.spreads().get(figure);
            if (s != null) {
                table.row(
                        PoolWords.of(figure),
                        Numbers.fixed(s.asGiven(), 1),
                        Numbers.fixed(s.error(), 1),
                        Numbers.fixed(s.low(), 1),
                        Numbers.fixed(s.high(), 1),
                        figure.unit(),
                        t.withinByFigure().containsKey(figure)
                                ? PoolWords.percent(t.withinByFigure().get(figure))
                                : "");
            }
        }
        page.table(table);
        page.gap().line("What scatters line, list and dive most:");
        t.causes().stream()
                .limit(PARTS_TOLD)
                .forEach(c -> page.point(c.part() + ": " + PoolWords.percent(c.share()) + " of all scatter"));
        t.inHand().ifPresent(i -> page.gap().paragraph(PoolWords.of(i)));
    }

    static JsonObject json(Tolerance t) {
        JsonObject spreads = new JsonObject();
        for (Figure figure : Figure.values()) {
            Spread s = t.spreads().get(figure);
            if (s != null) {
                JsonObject spread = new JsonObject()
                        .number("asGiven", s.asGiven())
                        .number("error", s.error())
                        .number("low5", s.low())
                        .number("high95", s.high());
                if (t.withinByFigure().containsKey(figure)) {
                    spread.number("within", t.withinByFigure().get(figure));
                }
                spreads.object(figure.key(), spread);
            }
        }
        JsonObject json = new JsonObject()
                .count("draws", t.draws())
                .count("seed", t.seed())
                .object("figures", spreads)
                .number("within", t.within())
                .number("sinks", t.sinks())
                .list(
                        "causes",
                        t.causes().stream()
                                .map(c ->
                                        new JsonObject().text("part", c.part()).number("share", c.share()))
                                .toList());
        t.inHand()
                .ifPresent(i -> json.object(
                        "inHand",
                        new JsonObject()
                                .number("addG", i.addG())
                                .number("takeG", i.takeG())
                                .number("alongGmm", i.alongGmm())
                                .number("acrossGmm", i.acrossGmm())
                                .number("aboutXMm", i.aboutXMm())
                                .number("reachAlongMm", i.reachAlongMm())
                                .number("reachAcrossMm", i.reachAcrossMm())));
        return json;
    }
}
