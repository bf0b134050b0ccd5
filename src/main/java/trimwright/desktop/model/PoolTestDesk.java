package trimwright.desktop.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Reading;
import trimwright.file.LoadedBoat;
import trimwright.plan.BallastPlan;
import trimwright.plan.pool.Corrections;
import trimwright.plan.pool.PoolOutcome;

/** What the readings say: asked for, looked at, and taken over or left. Nothing of the boat changes before it is taken over. */
public final class PoolTestDesk {

    /**
     * An outcome with what it rests on.
     *
     * @param of the boat it was worked out for
     * @param test the readings that count
     */
    public record Estimated(LoadedBoat of, PoolTest test, PoolOutcome outcome) {}

    private final Desk desk;
    private final ReadingsDesk readings;
    private final Background work;
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Estimated> estimated = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Problem> problem = new ReadOnlyObjectWrapper<>();
    private String takenReadings = "";
    private String boatBeforeTaking = "";

    public PoolTestDesk(Desk desk, ReadingsDesk readings, Executor workers, Executor front) {
        this.desk = desk;
        this.readings = readings;
        work = new Background(workers, front);
        // What was worked out of other readings, or for another boat, is worth nothing.
        desk.boat().addListener((o, was, now) -> stopAndForget());
        readings.readings().addListener((o, was, now) -> stopAndForget());
    }

    private void stopAndForget() {
        stop();
        estimated.set(null);
        problem.set(null);
    }

    /** Begins to work out what the readings say; those in which nothing was seen yet are left out. */
    public void run() {
        LoadedBoat boat = desk.boat().get();
        if (boat == null) {
            return;
        }
        estimated.set(null);
        problem.set(null);
        PoolTest all = readings.readings().get().test();
        List<Reading> seen =
                all.readings().stream().filter(r -> !r.seen().isEmpty()).toList();
        PoolTest test = new PoolTest(all.name(), all.date(), seen);
        if (readings.misfit().get() != null) {
            problem.set(readings.misfit().get());
            return;
        }
        if (seen.isEmpty()) {
            problem.set(new Problem(
                    "Nothing was read yet",
                    List.of("Add a reading and enter at least one number that was seen."),
                    Optional.empty()));
            return;
        }
        running.set(true);
        work.ask(
                () -> new Estimated(boat, test, PoolOutcome.of(boat.boat(), test)),
                done -> {
                    running.set(false);
                    estimated.set(done);
                },
                e -> {
                    running.set(false);
                    problem.set(Problem.of("Nothing can be said from these readings", e));
                });
    }

    /** Gives up; nothing of the work is kept. */
    public void stop() {
        if (running.get()) {
            work.giveUp();
            running.set(false);
        }
    }

    /** Puts what was found into the boat, as one step. */
    public Optional<String> takeCorrections() {
        Estimated taken = estimated.get();
        return taken == null
                ? Optional.of("Nothing was worked out yet.")
                : take(
                        "take over what was read",
                        taken,
                        taken.outcome().estimate().corrected());
    }

    /** Puts what was found into the boat and carries the change out, as one step. */
    public Optional<String> takeChange() {
        Estimated taken = estimated.get();
        Optional<BallastPlan> plan =
                Optional.ofNullable(taken).flatMap(e -> e.outcome().change()).filter(BallastPlan::feasible);
        return plan.isEmpty()
                ? Optional.of("There is no change to carry out.")
                : take("carry out the change", taken, carriedOut(plan.get()));
    }

    private static Boat carriedOut(BallastPlan plan) {
        List<Part> parts = new ArrayList<>(plan.planned().parts());
        plan.pieces().stream()
                .filter(p -> plan.planned().part(p.id()).isEmpty())
                .forEach(parts::add);
        return plan.planned().withParts(parts);
    }

    private Optional<String> take(String name, Estimated taken, Boat outcome) {
        // Known before the boat changes, for those who look at her then.
        takenReadings = readings.readings().get().text();
        boatBeforeTaking = taken.of().text();
        return desk.edit(name, boat -> boat.withPartsOf(Corrections.rounded(boat.boat(), outcome)));
    }

    /** Whether the boat at hand has in her already what these readings say: to take it over again would count them twice. */
    public boolean isTaken() {
        LoadedBoat boat = desk.boat().get();
        return boat != null
                && !takenReadings.isEmpty()
                && readings.readings().get().text().equals(takenReadings)
                && !boat.text().equals(boatBeforeTaking);
    }

    public ReadOnlyBooleanProperty running() {
        return running.getReadOnlyProperty();
    }

    /** What was worked out; null for nothing. */
    public ReadOnlyObjectProperty<Estimated> estimated() {
        return estimated.getReadOnlyProperty();
    }

    /** Why nothing came of it; null for no reason. */
    public ReadOnlyObjectProperty<Problem> problem() {
        return problem.getReadOnlyProperty();
    }
}
