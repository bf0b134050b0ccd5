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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.boat.Boat;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.file.BoatFile;
import trimwright.file.PoolFile;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.PoolOutcome;
import trimwright.plan.pool.Tolerance;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/**
 * Heron's first wetting with eight readings, and ten thousand boats drawn from her margins. The baseline settles her once, which both do
 * many times.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
public class PoolBenchmark {

    private static final int DRAWS = 10_000;
    private static final int READINGS = 8;

    private Boat boat;
    private PoolTest test;

    @Setup(Level.Trial)
    public void load() {
        boat = BoatFile.read(Path.of("sample-meshes/heron.boat.json")).boat();
        PoolTest seven = PoolFile.read(Path.of("sample-meshes/heron.pool.json"), boat);
        List<Reading> readings = new ArrayList<>(seven.readings());
        List<Sighting> surfaced = new ArrayList<>(readings.get(0).seen());
        surfaced.add(new Sighting(Quantity.TRIM, 0.3, Quantity.TRIM.usualError(), Optional.empty()));
        readings.set(0, readings.get(0).withSeen(surfaced));
        test = new PoolTest(seven.name(), seven.date(), readings);
        if (pool().sightings().size() != READINGS) {
            throw new IllegalStateException("not " + READINGS + " readings");
        }
    }

    @Benchmark
    @Aim(ms = 2000, baseline = "settlingBaseline")
    public PoolEstimate pool() {
        return PoolEstimate.of(boat, test);
    }

    /** The estimate with the change to make now. */
    @Benchmark
    @Aim(baseline = "settlingBaseline")
    public PoolOutcome poolWithTheChange() {
        return PoolOutcome.of(boat, test);
    }

    @Benchmark
    @Aim(ms = 20_000, baseline = "settlingBaseline")
    @Warmup(iterations = 1, time = 1)
    @Measurement(iterations = 3, time = 1)
    public Tolerance tenThousandBoats() {
        return Tolerance.of(boat, DRAWS, 1);
    }

    @Benchmark
    public Flotation settlingBaseline() {
        return Flotation.settling(Condition.of(boat));
    }
}
