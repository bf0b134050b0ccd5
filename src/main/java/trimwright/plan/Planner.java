package trimwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    /** Few pieces first; slivers, and more than one piece in a zone, only where she cannot do without them. */
    private static final List<StripMaker.Style> STYLES = List.of(
            new StripMaker.Style(0.08, false),
            new StripMaker.Style(0.03, false),
            new StripMaker.Style(0.08, true),
            new StripMaker.Style(0.03, true),
            new StripMaker.Style(0.015, false),
            new StripMaker.Style(0, false),
            new StripMaker.Style(0, true));

    private static final double USED_UP_SHARE = 0.97;
    /** Cost of a gram beyond the room there is, in grams: so dear that as little as possible is put there. */
    private static final double BEYOND_COST = 1e3;

    private final PlanRequest request;
    private final Condition condition;
    private final PlanBasis basis;
    private final List<Room> rooms;
    private final List<RoomCell> cells;
    private final List<Removable> removables;
    private final CellChoices cellChoices;

    private Planner(PlanRequest request, List<Room> rooms) {
        this.request = request;
        condition = Condition.of(request.boat());
        basis = PlanBasis.of(condition, request.wanted(), request.line());
        this.rooms = rooms != null ? rooms : Room.of(request.boat().zones(), condition.pieces(), request.line());
        cells = this.rooms.stream().flatMap(r -> r.cells().stream()).toList();
        removables = Removable.of(condition.pieces(), request.removable(), basis);
        cellChoices = new CellChoices(cells, request, basis);
    }

    /** Plans a boat. */
    public static BallastPlan plan(PlanRequest request) {
        return new Planner(request, null).plan();
    }

    /** A planner for sweeps; {@code rooms} were measured before with the same line, or null to measure them now. */
    static Planner of(PlanRequest request, List<Room> rooms) {
        return new Planner(request, rooms);
    }

    /**
     * Amounts without pieces.
     *
     * @param solution the programme's answer: amounts per cell in g, then shares of what may be taken out, then whatever else was offered
     * @param model the model it came from
     * @param misses aims that the answer misses; empty when it meets all
     */
    record Outline(LinearProgramme.Solution solution, PlanModel model, List<Miss> misses) {

        boolean meetsAll() {
            return solution.isOptimal() && misses.isEmpty();
        }

        /** Mass added, g. */
        double addedG() {
            return model.addedG(solution.x());
        }

        /** The amounts of the choices from the one with this number on. */
        double[] from(int first) {
            return Arrays.copyOfRange(solution.x(), first, model.choices().size());
        }
    }

    PlanBasis basis() {
        return basis;
    }

    List<Room> rooms() {
        return rooms;
    }

    /**
     * The programme over cells.
     *
     * @param offered further unknowns, for asking what would help
     * @param yielding which aims may give way when not all can be met
     */
    Outline outline(List<Choice> offered, Set<Aim> yielding) {
        PlanModel model = model(offered);
        for (PlanModel.Hold hold : PlanModel.Hold.values()) {
            LinearProgramme.Solution solution =
                    model.programme(hold, request.goal()).solve();
            if (solution.isOptimal()) {
                return new Outline(solution, model, List.of());
            }
        }
        LinearProgramme.Solution elastic = model.elastic(yielding).solve();
        return new Outline(elastic, model, elastic.isOptimal() ? model.misses(elastic.x(), yielding) : List.of());
    }

    /**
     * The programme over cells with the room for lead or foam many times what it is, each gram beyond it dear.
     *
     * @return the answer, and the volume that it puts beyond the room there is, mm³; NaN when even that is not enough
     */
    Beyond beyond(Zone.Use use, double factor) {
        List<Choice> more = cellChoices.beyond(use, factor, BEYOND_COST);
        Outline outline = outline(more, EnumSet.noneOf(Aim.class));
        if (!outline.meetsAll()) {
            return new Beyond(outline, Double.NaN);
        }
        double[] x = outline.from(outline.model().choices().size() - more.size());
        double grams = 0;
        for (int i = 0; i < x.length; i++) {
            grams += x[i] * more.get(i).grams();
        }
        double density = use == Zone.Use.BALLAST ? request.leadGPerCm3() : request.foamGPerCm3();
        return new Beyond(outline, 1000 * grams / density);
    }

    /** Mass that an answer takes out of a part, g. */
    double takenOutG(Outline outline, Part part) {
        int first = cellChoices.with(List.of()).size();
        for (int k = 0; k < removables.size(); k++) {
            if (removables.get(k).part().id().equals(part.id())) {
                double share = outline.solution().x()[first + k];
                return -share * removables.get(k).unknown().perUnit().massG();
            }
        }
        throw new IllegalArgumentException(part.id() + " was not to be taken out");
    }

    /** An answer that needs more room than there is. */
    record Beyond(Outline outline, double missingMm3) {}

    private PlanModel model(List<Choice> offered) {
        List<Choice> others = new ArrayList<>();
        removables.forEach(r -> others.add(Choice.plain(r.unknown())));
        others.addAll(offered);
        List<Choice> all = cellChoices.with(others);
        return new PlanModel(basis, all, PlanLimits.of(request, all));
    }

    private BallastPlan plan() {
        Outline outline = outline(List.of(), EnumSet.allOf(Aim.class));
        if (!outline.meetsAll()) {
            return unplanned(outline.misses());
        }
        double[] amounts = cellChoices.amountsMm3(outline.solution().x());
        BallastPlan best = null;
        for (StripMaker.Style style : STYLES) {
            List<Strip> strips = StripMaker.strips(
                    cells, amounts, request.leadGPerCm3() / 1000, request.foamGPerCm3() / 1000, style);
            BallastPlan plan = cutTo(strips, outline);
            if (best == null || better(plan, best)) {
                best = plan;
            }
            if (best.feasible() && usesUp(best, outline)) {
                return best;
            }
        }
        return best;
    }

    /** A plan that holds beats one that does not; a firmest plan beats one that stands less firm. */
    private boolean better(BallastPlan plan, BallastPlan other) {
        if (plan.feasible() != other.feasible()) {
            return plan.feasible();
        }
        return plan.feasible() && request.goal().firmest() && plan.firmnessMm() > other.firmnessMm();
    }

    /** Whether there is no need to look for a plan of more pieces: a firmest plan must use what it may. */
    private boolean usesUp(BallastPlan plan, Outline outline) {
        return !request.goal().firmest() || plan.rounding().roundedMassG() > USED_UP_SHARE * outline.addedG();
    }

    private BallastPlan cutTo(List<Strip> strips, Outline outline) {
        StripPlan stripPlan = new StripPlan(basis, strips, removables, request);
        BallastPlan plan = unplanned(List.of());
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (!stripPlan.solve()) {
                return unplanned(stripPlan.misses());
            }
            plan = floated(stripPlan, outline);
            if (plan.feasible()) {
                return plan;
            }
            stripPlan.learn(plan);
        }
        return plan;
    }

    private BallastPlan floated(StripPlan strips, Outline outline) {
        Map<String, Double> removals = strips.removals();
        List<Part> pieces = strips.parts(request.boat());
        Boat planned = carriedOut(request.boat(), pieces, removals);
        Flotation surfaced = Flotation.of(planned);
        Optional<Flotation> dived =
                basis.dives ? Optional.of(Flotation.of(Condition.of(planned).withAllTanksAt(1))) : Optional.empty();
        List<Miss> misses = Verdict.misses(request, surfaced, dived);
        double lead = strips.massG(Zone.Use.BALLAST);
        double foam = strips.massG(Zone.Use.FOAM);
        return new BallastPlan(
                misses.isEmpty(),
                pieces,
                removals,
                lead,
                strips.volumeMm3(Zone.Use.FOAM),
                foam,
                planned,
                surfaced,
                dived,
                misses,
                worth(outline.model()),
                new BallastPlan.Rounding(outline.addedG(), lead + foam),
                rooms);
    }

    private BallastPlan unplanned(List<Miss> misses) {
        return new BallastPlan(
                false,
                List.of(),
                Map.of(),
                0,
                0,
                0,
                request.boat(),
                Flotation.of(condition),
                basis.dives ? Optional.of(Flotation.of(condition.withAllTanksAt(1))) : Optional.empty(),
                misses,
                new EnumMap<>(Aim.class),
                new BallastPlan.Rounding(0, 0),
                rooms);
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
        for (Aim aim : List.of(Aim.BG, Aim.GM)) {
            PlanModel more = new PlanModel(basis, model.choices(), model.caps());
            more.correct(aim, 1);
            LinearProgramme.Solution solution =
                    more.programme(PlanModel.Hold.EXACT, request.goal()).solve();
            if (solution.isOptimal()) {
                worth.put(aim, solution.value() - base.value());
            }
        }
        return worth;
    }

    static Boat carriedOut(Boat boat, List<Part> pieces, Map<String, Double> removals) {
        List<Part> parts = new ArrayList<>();
        for (Part part : boat.parts()) {
            double share = removals.getOrDefault(part.id(), 0.0);
            if (share == 0) {
                parts.add(part);
            } else if (share < 1) {
                parts.add(Removable.lessened(part, 1 - share));
            }
        }
        parts.addAll(pieces);
        return boat.withParts(parts);
    }
}
