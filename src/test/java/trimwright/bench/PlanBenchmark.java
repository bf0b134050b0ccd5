package trimwright.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.boat.Boat;
import trimwright.file.BoatFile;
import trimwright.plan.BallastPlan;
import trimwright.plan.Goal;
import trimwright.plan.PlanRequest;
import trimwright.plan.Planner;
import trimwright.plan.Room;
import trimwright.plan.TradeOff;
import trimwright.plan.Wanted;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/**
 * Planning Heron, a skin of 105 412 triangles: in her own zones (144 cells) and in zones that are found (392 cells). The baseline floats her once as she is.
 * Each plan is checked to be one, and each room to be what it is known to be.
 *
 * <p>Run with {@code java -cp target/classes:target/test-classes:… org.openjdk.jmh.Main PlanBenchmark}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PlanBenchmark {

    private static final int POINTS = 20;
    /** Free volume of all of Heron's own zones, cm³, to 1 %: found by this program and kept, so that no benchmark measures something else. */
    private static final double ROOM_CM3 = 404;

    private Boat boat;
    private PlanRequest own;
    private PlanRequest found;

    @Setup
    public void read() {
        boat = BoatFile.read(Path.of("sample-meshes/heron.boat.json")).boat();
        Wanted wanted = Wanted.of(boat.targets(), Condition.of(boat).massG());
        own = PlanRequest.of(boat, wanted, Goal.LEAST_MASS);
        found = PlanRequest.of(boat.withZones(List.of()), wanted, Goal.LEAST_MASS);
    }

    @Benchmark
    public Flotation floatOnce() {
        Flotation afloat = Flotation.of(boat);
        require(afloat.settled().isPresent(), "she sinks");
        return afloat;
    }

    @Benchmark
    @Aim(ms = 500, baseline = "floatOnce")
    public BallastPlan plan() {
        return checked(Planner.plan(own));
    }

    @Benchmark
    @Aim(baseline = "floatOnce")
    public BallastPlan planInFoundZones() {
        return checked(Planner.plan(found));
    }

    @Benchmark
    @Aim(ms = 3000, baseline = "floatOnce")
    public TradeOff tradeOff() {
        TradeOff curve = TradeOff.of(own, POINTS);
        require(
                curve.points().size() == POINTS,
                "the curve has " + curve.points().size() + " points");
        return curve;
    }

    @Benchmark
    @Aim(ms = 1000)
    public List<Room> room() {
        List<Room> rooms = Room.of(boat.zones(), boat.pieces(), own.line());
        double cm3 = rooms.stream().mapToDouble(Room::freeMm3).sum() / 1000;
        require(Math.abs(cm3 - ROOM_CM3) < 0.01 * ROOM_CM3, cm3 + " cm³ are free");
        return rooms;
    }

    private static BallastPlan checked(BallastPlan plan) {
        require(plan.feasible(), "no plan");
        return plan;
    }

    private static void require(boolean right, String what) {
        if (!right) {
            throw new IllegalStateException(what);
        }
    }
}
