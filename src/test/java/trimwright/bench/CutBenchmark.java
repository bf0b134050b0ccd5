package trimwright.bench;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
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
import trimwright.immersion.BruteCut;
import trimwright.immersion.Immersion;
import trimwright.immersion.MeshSkin;
import trimwright.immersion.MeshSolid;
import trimwright.immersion.MeshTree;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;

/**
 * One cut of a closed hull, triangle by triangle and by the tree, as a solid and as a skin of 1.5 mm; and building the tree. The plain sum is
 * the baseline of the tree; {@link LibraryBenchmark} has one for the plain sum. Every volume is checked: half of the spindle lies below a plane through
 * its middle, less or more by the slab between that plane and the one that cuts, here by the tree against the plain sum.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx3g")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CutBenchmark {

    private static final double SKIN_MM = 1.5;

    @Param({"100000", "1000000", "5000000"})
    int triangles;

    private TriangleMesh mesh;
    private MeshSolid solid;
    private MeshSkin skin;
    private WaterPlane plane;
    private double volumeMm3;

    @Setup(Level.Trial)
    public void hull() {
        mesh = BenchMeshes.spindle(triangles);
        MeshTree tree = MeshTree.of(mesh);
        solid = new MeshSolid(tree);
        skin = new MeshSkin(tree, SKIN_MM);
        // No axis of the mesh lies in the plane or square to it.
        plane = WaterPlane.of(new Vector3D(0.02, 0.1, 1), 7);
        Immersion sum = sums();
        BruteCut.addBelow(sum, mesh);
        volumeMm3 = sum.volumeMm3();
    }

    private Immersion sums() {
        return Immersion.below(plane, Vector3D.ZERO);
    }

    @Benchmark
    @Aim(ms = 0.7, at = "100000")
    @Aim(ms = 7, at = "1000000")
    @Aim(ms = 35, at = "5000000")
    public Immersion brute() {
        Immersion sum = sums();
        BruteCut.addBelow(sum, mesh);
        return checked(sum);
    }

    @Benchmark
    @Aim(ms = 1, at = "1000000", baseline = "brute")
    @Aim(ms = 2.5, at = "5000000")
    public Immersion tree() {
        return checked(sums().add(solid));
    }

    @Benchmark
    @Aim(ms = 1, at = "1000000", baseline = "brute")
    @Aim(ms = 2.5, at = "5000000")
    public Immersion treeOfSkin() {
        Immersion sum = sums().add(skin);
        // More than half of the shell: the plane lies above the middle.
        if (!(sum.volumeMm3() > 0.5 * skin.volumeMm3() && sum.volumeMm3() < 0.6 * skin.volumeMm3())) {
            throw new IllegalStateException("skin below the plane: " + sum.volumeMm3());
        }
        return sum;
    }

    @Benchmark
    @Aim(ms = 300, at = "1000000")
    @Aim(ms = 1500, at = "5000000")
    public MeshTree buildTree() {
        return MeshTree.of(mesh);
    }

    private Immersion checked(Immersion sum) {
        if (!(Math.abs(sum.volumeMm3() - volumeMm3) < 1e-10 * volumeMm3)) {
            throw new IllegalStateException(sum.volumeMm3() + " mm³ instead of " + volumeMm3);
        }
        return sum;
    }
}
