package trimwright.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.file.BoatFile;
import trimwright.statics.Condition;
import trimwright.statics.DiveBoats;
import trimwright.statics.DiveRun;
import trimwright.statics.RightingCurve;
import trimwright.statics.Steadiness;
import trimwright.statics.SurfacingRun;

/**
 * A whole dive and a whole righting curve, warm: Heron, and a free-flooding boat of a million triangles. The baseline of the dive settles every
 * state from upright instead of from the state before, and looks neither for the critical point nor for falls.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx3g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class DiveBenchmark {

    private static final int STEPS = 50;

    @Param({"heron", "million"})
    String boat;

    private Condition condition;

    @Setup(Level.Trial)
    public void load() {
        condition = Condition.of(
                boat.equals("heron")
                        ? BoatFile.read(Path.of("sample-meshes/heron.boat.json"))
                                .boat()
                        : DiveBoats.submarine(1000, 500));
    }

    /** 50 steps, each with both GM, what stands out and the line. */
    @Benchmark
    @Aim(ms = 60, at = "heron", baseline = "diveBaseline")
    @Aim(ms = 1000, at = "million")
    public DiveRun dive() {
        return DiveRun.of(condition, STEPS);
    }

    @Benchmark
    public List<Optional<Steadiness>> diveBaseline() {
        List<Optional<Steadiness>> states = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            states.add(Steadiness.afloat(condition.withAllTanksAt((double) i / STEPS)));
        }
        return states;
    }

    /** By 2 degrees, 180° to both sides. */
    @Benchmark
    @Aim(ms = 240, at = "heron")
    @Aim(ms = 2000, at = "million")
    public Optional<RightingCurve> righting() {
        return RightingCurve.surfaced(condition, 2);
    }

    /** The way up with half of the water not run out. */
    @Benchmark
    public Optional<SurfacingRun> surfacing() {
        return SurfacingRun.of(condition, STEPS, 0.5);
    }
}
