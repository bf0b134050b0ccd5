package trimwright.cli;

import java.util.Locale;
import trimwright.file.PartJson;
import trimwright.plan.BallastPlan;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.PoolEstimate.Compared;
import trimwright.plan.pool.PoolEstimate.Known;
import trimwright.plan.pool.PoolEstimate.PartOff;
import trimwright.report.PlanWords;

/** The JSON keys of a pool test. Described in docs/commands.md. */
final class PoolJson {

    private static final double MM3_PER_CM3 = 1000;

    private PoolJson() {}

    static JsonObject of(PoolAnswer answer) {
        PoolEstimate estimate = answer.estimate();
        JsonObject figures = new JsonObject();
        for (Figure figure : Figure.values()) {
            Known known = estimate.figures().get(figure);
            if (known != null) {
                figures.object(figure.key(), of(known));
            }
        }
        JsonObject json = new JsonObject()
                .object("figures", figures)
                .list("unknown", estimate.unknown().stream().map(Figure::key).toList())
                .list("parts", estimate.parts().stream().map(PoolJson::of).toList())
                .list(
                        "readings",
                        estimate.sightings().stream().map(PoolJson::of).toList())
                .number("chiSquare", estimate.chiSquare())
                .number("chance", estimate.chance());
        estimate.inclining()
                .ifPresent(i -> json.object(
                        "inclining",
                        new JsonObject()
                                .count("readings", i.readings())
                                .number("gmMm", i.gmMm())
                                .number("gmErrorMm", i.gmErrorMm())
                                .number("kgMm", i.kgMm())
                                .number("kgErrorMm", i.kgErrorMm())));
        json.list(
                "next",
                estimate.next().stream()
                        .map(n -> new JsonObject()
                                .text(
                                        "reading",
                                        n.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                                .number("massG", n.massG())
                                .number("wayMm", n.wayMm())
                                .number("effort", n.effort())
                                .number("gain", n.gain()))
                        .toList());
        answer.plan().ifPresent(p -> json.object("plan", of(p)));
        return json;
    }

    private static JsonObject of(Known known) {
        return new JsonObject()
                .number("before", known.before())
                .number("beforeError", known.beforeError())
                .number("after", known.after())
                .number("afterError", known.afterError());
    }

    private static JsonObject of(PartOff part) {
        return new JsonObject()
                .text("part", part.part())
                .number("massG", part.massG())
                .number("massErrorG", part.massErrorG())
                .vector("moveMm", part.moveMm())
                .number("volumePercent", part.volumePercent())
                .number("suspicion", part.suspicion());
    }

    private static JsonObject of(Compared c) {
        return new JsonObject()
                .text("reading", c.reading())
                .text("quantity", c.sighting().quantity().key())
                .number("seen", c.sighting().value())
                .number("error", c.sighting().error())
                .number("before", c.before())
                .number("after", c.after())
                .number("timesItsError", c.timesItsError());
    }

    private static JsonObject of(BallastPlan plan) {
        return new JsonObject()
                .truth("feasible", plan.feasible())
                .list("pieces", plan.pieces().stream().map(PartJson::of).toList())
                .number("addedLeadG", plan.addedLeadG())
                .number("addedFoamCm3", plan.addedFoamMm3() / MM3_PER_CM3)
                .list("conflicts", plan.misses().stream().map(PlanWords::of).toList());
    }
}
