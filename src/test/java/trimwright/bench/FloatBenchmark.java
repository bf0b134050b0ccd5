package trimwright.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.analysis.MultivariateFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.file.BoatFile;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.MeshImport;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/**
 * Where she floats: the attitude she settles to from upright, and every attitude besides. Heron as shipped; a sealed boat of a million triangles
 * with G off to one side and aft. The baseline finds the same attitude with the general-purpose minimiser of Commons Math
 * (Nelder and Mead) on the same energy, list, trim and height, to a hundredth of a degree.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx3g")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FloatBenchmark {

    @Param({"heron", "million"})
    String boat;

    private Condition condition;
    private Equilibrium rest;
    private int baselineCuts;

    @Setup(Level.Trial)
    public void load() {
        condition = Condition.of(
                boat.equals("heron")
                        ? BoatFile.read(Path.of("sample-meshes/heron.boat.json"))
                                .boat()
                        : million());
        rest = settle();
    }

    private static Boat million() {
        Part hull = new Part(
                "hull",
                Kind.HULL,
                Optional.of(new MeshShape("hull.stl", MeshImport.AS_IS, BenchMeshes.spindle(1_000_000))),
                Optional.of(new HullBuild.Sealed(Optional.empty())),
                Optional.of(9000.0),
                Optional.empty(),
                Optional.of(new Vector3D(-12, 2, -15)),
                Optional.empty(),
                false,
                0);
        return new Boat("Spindle", Water.FRESH, Optional.empty(), List.of(hull), List.of(), Targets.NONE);
    }

    /** Says how many planes it took. */
    @TearDown(Level.Trial)
    public void tell() {
        System.out.println("# " + boat + ": " + rest.cuts() + " cuts, list " + rest.heelDeg() + "°, trim "
                + rest.trimDeg() + "°; the baseline takes " + baselineCuts);
    }

    @Benchmark
    @Aim(ms = 6, at = "million", baseline = "baselineGeneralMinimiser")
    public Equilibrium settle() {
        Flotation flotation = Flotation.settling(condition);
        Equilibrium found = flotation.settled().orElseThrow();
        if (!(flotation.wettedMm2() > 0) || !(Math.abs(found.residualForceG()) < 1e-9 * found.massG())) {
            throw new IllegalStateException("left over: " + found.residualForceG() + " g");
        }
        return found;
    }

    @Benchmark
    public Flotation everyAttitude() {
        return Flotation.of(condition);
    }

    @Benchmark
    public double[] baselineGeneralMinimiser() {
        baselineCuts = 0;
        double start = condition.centreOfGravityMm(WaterPlane.level(0)).getZ();
        MultivariateFunction energy = x -> {
            baselineCuts++;
            WaterPlane plane = WaterPlane.of(Equilibrium.up(x[0], x[1]), x[2]);
            Immersion below = condition.below(plane);
            double g = plane.up().dotProduct(condition.centreOfGravityMm(plane)) - x[2];
            return condition.massG() * g
                    - condition.densityGPerMm3() * plane.up().dotProduct(below.momentMm4());
        };
        PointValuePair least = new SimplexOptimizer(new SimpleValueChecker(1e-13, 1e-13))
                .optimize(
                        new MaxEval(2000),
                        new ObjectiveFunction(energy),
                        GoalType.MINIMIZE,
                        new InitialGuess(new double[] {0, 0, start + 20}),
                        new NelderMeadSimplex(new double[] {3, 1, 5}));
        double[] found = least.getPoint();
        if (!(Math.abs(found[0] - rest.heelDeg()) < 0.01 && Math.abs(found[1] - rest.trimDeg()) < 0.01)) {
            throw new IllegalStateException(
                    found[0] + "°, " + found[1] + "° instead of " + rest.heelDeg() + "°, " + rest.trimDeg() + "°");
        }
        return found;
    }
}
