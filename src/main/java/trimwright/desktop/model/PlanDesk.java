package trimwright.desktop.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.file.LoadedBoat;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;
import trimwright.plan.BallastPlan;
import trimwright.plan.CylinderSeat;
import trimwright.plan.Goal;
import trimwright.plan.PlanCheck;
import trimwright.plan.PlanRequest;
import trimwright.plan.Planner;
import trimwright.plan.SeatFinder;
import trimwright.plan.Wanted;
import trimwright.plan.WayOut;
import trimwright.report.Measure;
import trimwright.report.Wording;
import trimwright.statics.Condition;

/** Ballast plans and cylinder seats: asked for, looked at, and taken or left. Nothing of the boat changes before a plan is taken. */
public final class PlanDesk {

    /**
     * A plan with what it rests on.
     *
     * @param of the boat it was made for
     * @param plan the plan
     * @param ways what would help, when there is no plan
     * @param findings what is worth knowing about the room it used
     */
    public record Planned(
            LoadedBoat of, PlanRequest request, BallastPlan plan, List<WayOut> ways, List<Finding> findings) {}

    private final Desk desk;
    private final Background planning;
    private final Background seating;
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Planned> planned = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Problem> problem = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<CylinderSeat> seat = new ReadOnlyObjectWrapper<>();

    public PlanDesk(Desk desk, Executor workers, Executor front) {
        this.desk = desk;
        planning = new Background(workers, front);
        seating = new Background(workers, front);
        desk.boat().addListener((o, was, now) -> {
            // A plan for another boat than the one at hand is worth nothing.
            planned.set(null);
            seat.set(null);
            stop();
        });
    }

    /** What is wanted of the boat, with nothing left open. */
    public Optional<Wanted> wanted() {
        return Optional.ofNullable(desk.flotation().get()).map(Figures::wanted);
    }

    /** Puts what is wanted into her file, as a step. */
    public Optional<String> want(Targets targets) {
        return desk.edit("what is wanted", b -> Edits.targets(b, targets));
    }

    /** Begins to plan. */
    public void run(Goal goal) {
        LoadedBoat boat = desk.boat().get();
        if (boat == null) {
            return;
        }
        planned.set(null);
        problem.set(null);
        running.set(true);
        planning.ask(
                () -> plan(boat, goal),
                done -> {
                    running.set(false);
                    planned.set(done);
                },
                e -> {
                    running.set(false);
                    problem.set(Problem.of("There is no plan", e));
                });
    }

    private static Planned plan(LoadedBoat loaded, Goal goal) {
        Boat boat = loaded.boat();
        Wanted wanted = Wanted.of(boat.targets(), Condition.of(boat).massG());
        List<Finding> against = PlanCheck.before(boat, wanted);
        if (!against.isEmpty()) {
            throw new UnusableInputException(against);
        }
        PlanRequest request = PlanRequest.of(boat, wanted, goal);
        Planner.Answer answer = Planner.answer(request);
        BallastPlan plan = answer.plan();
        List<WayOut> ways = answer.waysOut();
        List<Finding> findings = new ArrayList<>(PlanCheck.rooms(boat, plan.rooms()));
        findings.addAll(PlanCheck.loose(boat));
        return new Planned(loaded, request, plan, ways, findings);
    }

    /** Gives up planning; nothing of it is kept. */
    public void stop() {
        if (running.get()) {
            planning.giveUp();
            seating.giveUp();
            running.set(false);
        }
    }

    /** Throws the plan away. */
    public void leave() {
        planned.set(null);
        problem.set(null);
        desk.lookAt(null);
    }

    /** Carries the plan out, as one step. */
    public Optional<String> take() {
        Planned taken = planned.get();
        if (taken == null || !taken.plan().feasible()) {
            return Optional.of("There is no plan to carry out.");
        }
        return desk.edit(
                "carry out the ballast plan",
                b -> Edits.planned(b, taken.plan().planned(), taken.plan().pieces()));
    }

    /** The first cylinder whose seat can be found. */
    public Optional<Part> cylinder() {
        return desk.boat().get() == null
                ? Optional.empty()
                : desk.boat().get().boat().parts().stream()
                        .filter(SeatFinder::canSeat)
                        .findFirst();
    }

    /** Looks for the seat of a cylinder. */
    public void findSeat(Part cylinder, double gapMm) {
        Boat boat = desk.boat().get().boat();
        running.set(true);
        seating.ask(
                () -> SeatFinder.seat(boat, cylinder, gapMm),
                found -> {
                    running.set(false);
                    seat.set(found);
                },
                e -> {
                    running.set(false);
                    problem.set(Problem.of("There is no seat", e));
                });
    }

    /** Lowers the cylinder, and what stands in it, to the lowest seat found; as one step. */
    public Optional<String> lower() {
        CylinderSeat found = seat.get();
        if (found == null || found.lowestAxisMm().isEmpty()) {
            return Optional.of("There is no seat to lower it to.");
        }
        double now = found.part().shape().orElseThrow().bounds().centreZ();
        // A hundredth of a millimetre of air, so that it does not touch by rounding.
        double up = Math.ceil((found.lowestAxisMm().get() - now) * 100) / 100;
        String id = found.part().id();
        return desk.edit("lower " + id, b -> Edits.moved(b, id, new Vector3D(0, 0, up)));
    }

    /** A finding in words. */
    public static String words(Finding finding, Measure measure) {
        return Wording.of(finding, measure);
    }

    public ReadOnlyBooleanProperty running() {
        return running.getReadOnlyProperty();
    }

    /** The plan that lies on the desk; null for none. */
    public ReadOnlyObjectProperty<Planned> planned() {
        return planned.getReadOnlyProperty();
    }

    /** Why nothing came of the last request; null for no reason. */
    public ReadOnlyObjectProperty<Problem> problem() {
        return problem.getReadOnlyProperty();
    }

    /** The seat that was found; null for none. */
    public ReadOnlyObjectProperty<CylinderSeat> seat() {
        return seat.getReadOnlyProperty();
    }
}
