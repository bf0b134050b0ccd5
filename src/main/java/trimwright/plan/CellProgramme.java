package trimwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import trimwright.boat.Part;
import trimwright.boat.Zone;
import trimwright.statics.Condition;

/**
 * The first programme of a plan, over all free cells: whether the aims can be met, with how much of what, and what stands in the way.
 */
final class CellProgramme {

    /** Cost of a gram beyond the room there is, in grams: so dear that as little as possible is put there. */
    private static final double BEYOND_COST = 1e3;

    private final PlanRequest request;
    private final Condition condition;
    private final PlanBasis basis;
    private final RoomColumns columns;
    private final List<Room> rooms;
    private final List<RoomCell> cells;
    private final List<Loose> loose;
    private final CellChoices cellChoices;

    private CellProgramme(PlanRequest request, Condition condition, RoomColumns columns, List<Room> rooms) {
        this.request = request;
        this.condition = condition;
        this.columns = columns;
        this.rooms = rooms;
        basis = PlanBasis.of(condition, request);
        cells = rooms.stream().flatMap(r -> r.cells().stream()).toList();
        loose = Loose.of(condition.pieces(), request.removable(), basis);
        cellChoices = new CellChoices(cells, request, basis);
    }

    /** The programme of a request, with the room measured for it. */
    static CellProgramme of(PlanRequest request) {
        Condition condition = Condition.of(request.boat());
        RoomColumns columns = new RoomColumns(request.boat().zones(), condition.pieces());
        return new CellProgramme(request, condition, columns, columns.rooms(request.line()));
    }

    /** The programme of a like request for the same boat; only her line may be another. */
    CellProgramme like(PlanRequest other) {
        boolean sameLine = other.line().equals(request.line());
        return new CellProgramme(other, condition, columns, sameLine ? rooms : columns.rooms(other.line()));
    }

    /** The programme of a request for a boat that differs only in what leaves the room in her as it is. */
    CellProgramme withSameRoom(PlanRequest other) {
        return new CellProgramme(other, Condition.of(other.boat()), columns, rooms);
    }

    /**
     * Amounts without pieces.
     *
     * @param solution the programme's answer: amounts per cell in g, then what becomes of loose parts, then whatever else was offered
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

        /** BG dived, or for a boat without tanks GM surfaced, mm. */
        double firmnessMm() {
            PlanModel.Stability s = model.stability(solution.x());
            return model.dives() ? s.bgMm() : s.gmMm();
        }

        /** The amounts of the choices from the one with this number on. */
        double[] from(int first) {
            return Arrays.copyOfRange(solution.x(), first, model.choices().size());
        }
    }

    PlanRequest request() {
        return request;
    }

    Condition condition() {
        return condition;
    }

    PlanBasis basis() {
        return basis;
    }

    List<Room> rooms() {
        return rooms;
    }

    List<RoomCell> cells() {
        return cells;
    }

    List<Loose> loose() {
        return loose;
    }

    /** Volume that an answer puts into each cell, mm³. */
    double[] amountsMm3(Outline outline) {
        return cellChoices.amountsMm3(outline.solution().x());
    }

    /** The answer when nothing else is offered and no aim may give way. */
    Outline outline() {
        return outline(List.of(), EnumSet.noneOf(Aim.class));
    }

    /**
     * The answer.
     *
     * @param offered further unknowns, for asking what would help
     * @param yielding which aims may give way when not all can be met
     * @throws CancellationException when the thread was interrupted
     */
    Outline outline(List<Choice> offered, Set<Aim> yielding) {
        stopIfInterrupted();
        PlanModel model = model(offered);
        LinearProgramme.Solution exact = solved(model, PlanModel.Hold.EXACT);
        if (exact.isOptimal()) {
            return new Outline(exact, model, List.of());
        }
        // The widest is asked before what lies between: mostly that is not to be had either.
        LinearProgramme.Solution wide = solved(model, PlanModel.Hold.WIDE);
        if (wide.isOptimal()) {
            LinearProgramme.Solution band = solved(model, PlanModel.Hold.BAND);
            return new Outline(band.isOptimal() ? band : wide, model, List.of());
        }
        if (yielding.isEmpty()) {
            return new Outline(wide, model, List.of());
        }
        return elastic(model, yielding);
    }

    /** The answer with aims that may give way, without asking first whether they must. */
    Outline elastic(Set<Aim> yielding) {
        stopIfInterrupted();
        return elastic(model(List.of()), yielding);
    }

    private static Outline elastic(PlanModel model, Set<Aim> yielding) {
        LinearProgramme.Solution elastic = model.elastic(yielding).solve();
        return new Outline(elastic, model, elastic.isOptimal() ? model.misses(elastic.x(), yielding) : List.of());
    }

    private LinearProgramme.Solution solved(PlanModel model, PlanModel.Hold hold) {
        return model.programme(hold, request.goal()).solve();
    }

    /** @throws CancellationException when the thread was interrupted */
    static void stopIfInterrupted() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("the plan was given up");
        }
    }

    /**
     * The answer with the room for lead or foam many times what it is, each gram beyond it dear.
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

    /** An answer that needs more room than there is. */
    record Beyond(Outline outline, double missingMm3) {}

    /** What an answer makes of the loose parts. */
    List<Loose.Changed> changed(Outline outline) {
        int next = cellChoices.with(List.of()).size();
        List<Loose.Changed> changed = new ArrayList<>();
        for (Loose part : loose) {
            changed.add(part.changed(outline.solution().x(), next));
            next += part.choices().size();
        }
        return changed;
    }

    /** Mass that an answer takes out of a part, g. */
    double takenOutG(Outline outline, Part part) {
        return changed(outline).stream()
                .filter(c -> c.loose().part().id().equals(part.id()))
                .mapToDouble(c -> c.share() * c.loose().massG())
                .sum();
    }

    private PlanModel model(List<Choice> offered) {
        List<Choice> others = new ArrayList<>();
        loose.forEach(l -> others.addAll(l.choices()));
        others.addAll(offered);
        List<Choice> all = cellChoices.with(others);
        List<PlanModel.Cap> caps = PlanLimits.of(request, all);
        int next = all.size() - others.size();
        for (Loose part : loose) {
            caps.addAll(part.caps(next, all.size()));
            next += part.choices().size();
        }
        return new PlanModel(basis, all, caps);
    }
}
