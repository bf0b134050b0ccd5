package trimwright.bench;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.boat.Boat;
import trimwright.boat.pool.PoolTest;
import trimwright.file.BoatFile;
import trimwright.file.PoolFile;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.Tolerance;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/**
 * Heron's first wetting with seven readings, and a thousand boats drawn from her margins. The baseline settles her once, which both do
 * many times.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
public class PoolBenchmark {

    private static final int DRAWS = 1000;

    private Boat boat;
    private PoolTest test;

    @Setup(Level.Trial)
    public void load() {
        boat = BoatFile.read(Path.of("sample-meshes/heron.boat.json")).boat();
        test = PoolFile.read(Path.of("sample-meshes/heron.pool.json"), boat);
    }

    @Benchmark
    public PoolEstimate pool() {
        return PoolEstimate.of(boat, test);
    }

    @Benchmark
    public Tolerance thousandBoats() {
        return Tolerance.of(boat, DRAWS, 1);
    }

    @Benchmark
    public Flotation settlingBaseline() {
        return Flotation.settling(Condition.of(boat));
    }
}
