package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.finding.Finding;
import trimwright.plan.BallastPlan;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.Tolerance;
import trimwright.report.Measure;
import trimwright.report.PlanWords;
import trimwright.report.WaterWords;
import trimwright.report.sheet.Sheet.Section;

/** Puts a trim sheet together. */
public final class SheetMaker {

    private final Request request;
    private final Boat boat;

    /**
     * What is to be on the sheet.
     *
     * @param boat the boat
     * @param date the day as it is to be printed
     * @param measure the units
     * @param findings what the figures rest on: notes and warnings about the file and its meshes
     * @param plan the ballast plan, where it belongs to it; the pictures then show the boat with the plan carried out
     * @param pool what the readings said, where they belong to it
     * @param draws how many boats are drawn to tell how far she may be off; 0 for none
     */
    public record Request(
            Boat boat,
            String date,
            Measure measure,
            List<Finding> findings,
            Optional<BallastPlan> plan,
            Optional<PoolEstimate> pool,
            int draws) {}

    private SheetMaker(Request request) {
        this.request = request;
        boat = request.plan()
                .filter(BallastPlan::feasible)
                .map(BallastPlan::planned)
                .orElse(request.boat());
    }

    /** The sheet; the same for any number of processors. */
    public static Sheet of(Request request) {
        return new SheetMaker(request).sheet();
    }

    /** Whether there is a plan that changes something. */
    private boolean isChanged() {
        return request.plan()
                .filter(BallastPlan::feasible)
                .filter(p -> !PlanWords.changes(request.boat(), p).isEmpty())
                .isPresent();
    }

    private Sheet sheet() {
        Measure measure = request.measure();
        // Whatever waits for nothing else is worked out meanwhile.
        Meanwhile<Optional<Tolerance>> tolerance = Meanwhile.of(
                () -> request.draws() > 0 ? Optional.of(Tolerance.of(boat, request.draws(), 1)) : Optional.empty());
        Subject subject = Subject.of(boat, measure);
        Meanwhile<Optional<Section>> righting = Meanwhile.of(() -> new SheetRighting(subject).section());
        SheetFirst first = new SheetFirst(subject);
        SheetTables tables = new SheetTables(subject);
        SheetPool pool = new SheetPool(subject);
        List<Block> page = new ArrayList<>(first.verdict(isChanged()));
        page.addAll(first.pictures());
        List<Section> rest = new ArrayList<>();
        request.plan().ifPresent(plan -> rest.add(new SheetPlan(request.boat(), plan, measure).section()));
        rest.add(new Section(
                "What it rests on",
                request.plan().isEmpty() ? Sheet.Pages.BEGINS_ONE : Sheet.Pages.RUNS_ON,
                List.of(tables.restsOn(request.findings()))));
        rest.add(new Section("What she weighs", Sheet.Pages.RUNS_ON, List.of(tables.weights())));
        rest.add(new SheetWaters(subject).section());
        new SheetPrints(subject).section().ifPresent(rest::add);
        subject.dive().ifPresent(run -> rest.add(new SheetDive(subject, run).section()));
        righting.get().ifPresent(rest::add);
        tolerance.get().ifPresent(t -> rest.add(new Section("How far it may be off", Sheet.Pages.RUNS_ON, pool.of(t))));
        request.pool().ifPresent(p -> rest.add(new Section("What the pool said", Sheet.Pages.RUNS_ON, pool.of(p))));
        rest.add(new Section("Cautions", Sheet.Pages.RUNS_ON, List.of(new Block.Points(SheetCautions.of(boat)))));
        rest.add(new Section("In the pool", Sheet.Pages.STAYS_ON_ONE, pool.checklist()));
        page.add(first.key(tolerance.get()));
        List<Section> sections = new ArrayList<>(List.of(new Section("", Sheet.Pages.RUNS_ON, page)));
        sections.addAll(rest);
        String under = WaterWords.of(boat.water()) + (request.date().isEmpty() ? "" : ". " + request.date() + ".");
        return new Sheet(boat.name(), under, sections);
    }
}
