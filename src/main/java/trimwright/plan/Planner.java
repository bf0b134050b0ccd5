package trimwright.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Zone;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/**
 * Works out a ballast plan: the linear programme over all free cells tells whether and roughly where; strips that can be cut take over its amounts;
 * their sizes and places are solved once more, rounded, and the outcome is floated. What floating shows is fed back until the aims hold.
 */
public final class Planner {

    private static final int MOST_ROUNDS = 5;
    /** Strips in a zone: what a builder likes to cut, and what fills a zone that is needed to its last corner. */
    private static final int FEW = 3;

    private static final int MANY = 10;
    /** How many of the styles are tried where only whether there is a plan is asked. */
    private static final int STYLES_TRIED = 7;
    /**
     * Few pieces first; slivers, and more than one piece in a zone, only where she cannot do without them or gains by them. Spare strips make the
     * programmes several times larger and come only when nothing else holds.
     */
    private static final List<StripMaker.Style> STYLES = List.of(
            new StripMaker.Style(0.08, false, false, FEW),
            new StripMaker.Style(0.03, false, false, FEW),
            new StripMaker.Style(0.08, true, false, FEW),
            new StripMaker.Style(0.03, true, false, FEW),
            new StripMaker.Style(0.015, false, false, FEW),
            new StripMaker.Style(0, false, false, FEW),
            new StripMaker.Style(0, true, false, FEW),
            new StripMaker.Style(0, false, true, FEW),
            new StripMaker.Style(0, true, true, FEW),
            new StripMaker.Style(0, false, false, MANY));

    /** Share of the ideal mass by which pieces may differ from it without other pieces being tried. */
    private static final double CLOSE_SHARE = 0.03;
    /** Share of the ideal mass that one piece less is worth. */
    private static final double PIECE_SHARE = 0.01;
    /** Share of what is on board by which a plan must beat another to be worth taking more out for. */
    private static final double WORTH_CLEARING = 0.05;

    private final CellProgramme programme;
    private final PlanRequest request;
    private final PlanBasis basis;

    private Planner(CellProgramme programme) {
        this.programme = programme;
        request = programme.request();
        basis = programme.basis();
    }

    /**
     * Plans a boat. Takes from a tenth of a second to some seconds; may run on any thread.
     *
     * @throws CancellationException soon after the thread is interrupted; its interrupt status stays set
     */
    public static BallastPlan plan(PlanRequest request) {
        return plan(CellProgramme.of(request));
    }

    /**
     * Plans a boat, and where there is no plan looks for ways out, which takes some seconds more.
     *
     * @throws CancellationException soon after the thread is interrupted; its interrupt status stays set
     */
    public static Answer answer(PlanRequest request) {
        CellProgramme programme = CellProgramme.of(request);
        BallastPlan plan = plan(programme);
        if (plan.feasible()) {
            return new Answer(plan, List.of());
        }
        double allowed = request.goal().mostG();
        if (Double.isFinite(allowed)) {
            double needed = leastG(programme);
            if (needed > allowed) {
                Cause cause =
                        new Cause(Cause.Kind.MASS_LIMIT, Map.of("allowedG", allowed, "neededG", needed), List.of());
                WayOut more = new WayOut(WayOut.Kind.MASS_ALLOWED, "", needed - allowed, 0, needed, 1);
                return new Answer(plan.because(cause), List.of(more));
            }
        }
        return new Answer(plan, WaysOut.of(programme, plan));
    }

    /** The least mass, in whole grams, with which there is a plan when no limit is set; NaN where there is none. */
    private static double leastG(CellProgramme programme) {
        PlanRequest free = programme.request().withGoal(Goal.LEAST_MASS);
        return tried(programme.like(free))
                .map(p -> Math.ceil(p.rounding().roundedMassG()))
                .orElse(Double.NaN);
    }

    /**
     * A plan, or what would make one possible.
     *
     * @param waysOut the easiest first; empty where there is a plan
     */
    public record Answer(BallastPlan plan, List<WayOut> waysOut) {}

    private static BallastPlan plan(CellProgramme programme) {
        BallastPlan plan = planFor(programme);
        Goal goal = programme.request().goal();
        return plan.feasible() || !goal.exactly()
                ? plan
                : planFor(programme.like(programme.request().withGoal(goal.orLess())));
    }

    private static BallastPlan planFor(CellProgramme programme) {
        CellProgramme.Outline outline = programme.outline(List.of(), EnumSet.allOf(Aim.class));
        BallastPlan best = new Planner(programme).plan(outline);
        for (Set<String> cleared : clearings(programme, outline)) {
            BallastPlan other = cleared(programme.request(), cleared);
            if (other.feasible() && (!best.feasible() || onBoardG(other) < (1 - WORTH_CLEARING) * onBoardG(best))) {
                best = other;
            }
        }
        return best;
    }

    /**
     * Loose parts that may be worth taking out altogether, so that their room can be used again: those of which much is taken out anyway, and all.
     */
    private static Set<Set<String>> clearings(CellProgramme programme, CellProgramme.Outline outline) {
        Set<String> much = new LinkedHashSet<>();
        if (outline.solution().isOptimal()) {
            programme.changed(outline).stream()
                    .filter(c -> c.share() > 0.5)
                    .forEach(c -> much.add(c.loose().part().id()));
        }
        Set<Set<String>> sets =
                new LinkedHashSet<>(List.of(much, programme.request().removable()));
        sets.remove(Set.of());
        return sets;
    }

    /** The plan for the boat without some loose parts, told as one for the boat as she is. */
    private static BallastPlan cleared(PlanRequest request, Set<String> ids) {
        Map<String, Double> all = new LinkedHashMap<>();
        request.boat().parts().stream().map(Part::id).filter(ids::contains).forEach(id -> all.put(id, 1.0));
        PlanRequest without = request.withoutParts(ids);
        CellProgramme programme = CellProgramme.of(without);
        return new Planner(programme)
                .plan(programme.outline(List.of(), EnumSet.allOf(Aim.class)))
                .alsoRemoving(all);
    }

    private static double onBoardG(BallastPlan plan) {
        return plan.planned().pieces().stream()
                .filter(p -> PlanRequest.isLeadOrFoam(p.part()))
                .mapToDouble(p -> p.massG())
                .sum();
    }

    /**
     * Whether a programme's amounts can be had in pieces, by trying the commonest ways to cut them.
     *
     * @return the plan, without what only a plan that is told needs; empty when there is none
     */
    static Optional<BallastPlan> tried(CellProgramme programme) {
        CellProgramme.Outline outline = programme.outline();
        if (!outline.meetsAll()) {
            return Optional.empty();
        }
        BallastPlan plan = new Planner(programme).inPieces(outline, STYLES.subList(0, STYLES_TRIED));
        return Optional.of(plan).filter(BallastPlan::feasible);
    }

    private BallastPlan plan(CellProgramme.Outline outline) {
        if (!outline.meetsAll()) {
            return unplanned(Causes.explained(programme, outline.model(), outline.misses()));
        }
        BallastPlan best = inPieces(outline, STYLES);
        return best.feasible()
                ? finished(best, outline)
                : best.because(new Cause(Cause.Kind.PIECES, Map.of(), List.of()));
    }

    private BallastPlan inPieces(CellProgramme.Outline outline, List<StripMaker.Style> styles) {
        double[] amounts = programme.amountsMm3(outline);
        BallastPlan best = null;
        Set<List<Strip.Start>> tried = new HashSet<>();
        for (StripMaker.Style style : styles) {
            if ((style.spare() || style.most() > FEW) && best != null && best.feasible()) {
                break;
            }
            List<Strip> strips = StripMaker.strips(
                    programme.cells(),
                    amounts,
                    request.leadGPerCm3() / 1000,
                    request.foamGPerCm3() / 1000,
                    basis.condition.volumeCentroidMm().getZ(),
                    style);
            if (!tried.add(strips.stream().map(Strip::start).toList())) {
                continue;
            }
            BallastPlan plan = cutTo(strips, outline);
            if (best == null || better(plan, best)) {
                best = plan;
            }
            if (best.feasible() && isClose(best)) {
                break;
            }
        }
        return best;
    }

    private boolean better(BallastPlan plan, BallastPlan other) {
        if (plan.feasible() != other.feasible()) {
            return plan.feasible();
        }
        return plan.feasible() ? demerit(plan) < demerit(other) : missed(plan) < missed(other);
    }

    /** By how many tolerances a plan misses its aims in all. */
    private double missed(BallastPlan plan) {
        PlanModel model = new PlanModel(basis, List.of(), List.of());
        return plan.misses().stream()
                .mapToDouble(m -> Math.abs(m.amount()) / model.tolerance(m.aim()))
                .sum();
    }

    /** What a plan is judged by: lead and foam, or want of firmness, and the number of pieces. */
    private double demerit(BallastPlan plan) {
        double ideal = plan.rounding().idealMassG();
        double pieces = PIECE_SHARE * ideal * plan.pieces().size();
        return request.goal().firmest() ? -plan.firmnessMm() : plan.rounding().roundedMassG() + pieces;
    }

    /** Whether there is no need to try other pieces; a firmest plan must use what it may. */
    private boolean isClose(BallastPlan plan) {
        double off = plan.rounding().roundedMassG() - plan.rounding().idealMassG();
        return (request.goal().firmest() ? -off : off)
                <= CLOSE_SHARE * plan.rounding().idealMassG() + 1;
    }

    private BallastPlan cutTo(List<Strip> strips, CellProgramme.Outline outline) {
        StripPlan stripPlan = new StripPlan(basis, strips, programme.loose(), request);
        BallastPlan plan = null;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            CellProgramme.stopIfInterrupted();
            if (!stripPlan.solve()) {
                return plan == null ? unplanned(stripPlan.misses()) : plan;
            }
            plan = floated(stripPlan, outline);
            if (plan.feasible()) {
                return plan;
            }
            stripPlan.learn(plan);
        }
        return plan;
    }

    private BallastPlan floated(StripPlan strips, CellProgramme.Outline outline) {
        List<Part> pieces = strips.parts(request.boat());
        Condition planned = Condition.of(carriedOut(request.boat(), pieces, strips.changed()));
        Flotation surfaced = Flotation.settling(planned);
        Optional<Flotation> dived =
                basis.dives ? Optional.of(Flotation.settling(planned.withAllTanksAt(1))) : Optional.empty();
        List<Miss> misses = Verdict.misses(request, surfaced, dived);
        double lead = strips.massG(Zone.Use.BALLAST);
        double foam = strips.massG(Zone.Use.FOAM);
        Map<String, Double> removals = new LinkedHashMap<>();
        Map<String, Double> moves = new LinkedHashMap<>();
        for (Loose.Changed c : strips.changed()) {
            String id = c.loose().part().id();
            if (c.share() > 0) {
                removals.put(id, c.share());
            }
            if (c.share() < 1 && c.movedMm() != 0) {
                moves.put(id, c.movedMm());
            }
        }
        return new BallastPlan(
                misses.isEmpty(),
                pieces,
                removals,
                moves,
                lead,
                strips.volumeMm3(Zone.Use.FOAM),
                foam,
                planned.boat(),
                surfaced,
                dived,
                misses,
                new EnumMap<>(Aim.class),
                new BallastPlan.Rounding(outline.addedG(), lead + foam),
                programme.rooms());
    }

    private BallastPlan unplanned(List<Miss> misses) {
        Condition asSheIs = programme.condition();
        return new BallastPlan(
                false,
                List.of(),
                Map.of(),
                Map.of(),
                0,
                0,
                0,
                request.boat(),
                Flotation.settling(asSheIs),
                basis.dives ? Optional.of(Flotation.settling(asSheIs.withAllTanksAt(1))) : Optional.empty(),
                misses,
                new EnumMap<>(Aim.class),
                new BallastPlan.Rounding(0, 0),
                programme.rooms());
    }

    /** The plan with what only the plan that is told needs: every other attitude, and what each aim costs. */
    private BallastPlan finished(BallastPlan plan, CellProgramme.Outline outline) {
        return plan.finished(
                Flotation.of(plan.surfaced().condition()),
                plan.dived().map(d -> Flotation.of(d.condition())),
                worth(outline.model()));
    }

    /** Added mass per unit more of BG and of GM, by solving again with one more. */
    private Map<Aim, Double> worth(PlanModel model) {
        Map<Aim, Double> worth = new EnumMap<>(Aim.class);
        if (request.goal().firmest()) {
            return worth;
        }
        LinearProgramme.Solution base =
                model.programme(PlanModel.Hold.EXACT, request.goal()).solve();
        if (!base.isOptimal()) {
            return worth;
        }
        for (Aim aim : basis.dives ? List.of(Aim.BG, Aim.GM) : List.of(Aim.GM)) {
            PlanModel more = new PlanModel(basis, model.choices(), model.caps());
            more.correct(aim, 1);
            LinearProgramme.Solution solution =
                    more.programme(PlanModel.Hold.EXACT, request.goal()).solve();
            if (solution.isOptimal()) {
                worth.put(aim, model.addedG(solution.x()) - model.addedG(base.x()));
            }
        }
        return worth;
    }

    private static Boat carriedOut(Boat boat, List<Part> pieces, List<Loose.Changed> changed) {
        List<Part> parts = new ArrayList<>();
        for (Part part : boat.parts()) {
            Optional<Loose.Changed> own = changed.stream()
                    .filter(c -> c.loose().part().id().equals(part.id()))
                    .findFirst();
            (own.isPresent() ? own.get().part() : Optional.of(part)).ifPresent(parts::add);
        }
        parts.addAll(pieces);
        return boat.withParts(parts);
    }
}
