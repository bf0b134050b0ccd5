package trimwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.PlaneConvexSubset;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.mesh.SimpleTriangleMesh;
import org.apache.commons.numbers.core.Precision;
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
import trimwright.immersion.MeshSolid;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;

/**
 * The same mesh cut by the same plane with a general-purpose library, Apache Commons Geometry: each face is split by its plane and what lies below is
 * summed as cones from a point of the plane. The volumes must agree. The library's other way, a region of binary space
 * partitions, takes minutes to set up for a mesh of this size.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx3g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class LibraryBenchmark {

    @Param({"100000", "1000000"})
    int triangles;

    private TriangleMesh mesh;
    private MeshSolid solid;
    private WaterPlane plane;
    private SimpleTriangleMesh theirs;
    private Plane theirPlane;
    private Vector3D onPlane;

    @Setup(Level.Trial)
    public void hull() {
        mesh = BenchMeshes.spindle(triangles);
        solid = MeshSolid.of(mesh);
        plane = WaterPlane.of(new org.apache.commons.math3.geometry.euclidean.threed.Vector3D(0.02, 0.1, 1), 7);
        Precision.DoubleEquivalence precision = Precision.doubleEquivalenceOfEpsilon(1e-9);
        SimpleTriangleMesh.Builder builder = SimpleTriangleMesh.builder(precision);
        double[] xyz = mesh.xyz();
        for (int v = 0; v < xyz.length; v += 3) {
            builder.addVertex(Vector3D.of(xyz[v], xyz[v + 1], xyz[v + 2]));
        }
        int[] corners = mesh.corners();
        for (int k = 0; k < corners.length; k += 3) {
            builder.addFace(corners[k], corners[k + 1], corners[k + 2]);
        }
        theirs = builder.build();
        Vector3D up =
                Vector3D.of(plane.up().getX(), plane.up().getY(), plane.up().getZ());
        onPlane = up.multiply(plane.heightMm());
        theirPlane = Planes.fromPointAndNormal(onPlane, up, precision);
    }

    @Benchmark
    public double baselineLibrary() {
        double six = 0;
        for (SimpleTriangleMesh.Face face : theirs.faces()) {
            PlaneConvexSubset below = face.getPolygon().split(theirPlane).getMinus();
            if (below != null) {
                six += cones(below.getVertices());
            }
        }
        return checked(six / 6);
    }

    private double cones(List<Vector3D> corners) {
        Vector3D a = corners.get(0).subtract(onPlane);
        double six = 0;
        for (int i = 2; i < corners.size(); i++) {
            Vector3D b = corners.get(i - 1).subtract(onPlane);
            six += a.dot(b.cross(corners.get(i).subtract(onPlane)));
        }
        return six;
    }

    @Benchmark
    @Aim(baseline = "baselineLibrary")
    public double brute() {
        Immersion sum = sums();
        BruteCut.addBelow(sum, mesh);
        return checked(sum.volumeMm3());
    }

    @Benchmark
    @Aim(baseline = "baselineLibrary")
    public double tree() {
        return checked(sums().add(solid).volumeMm3());
    }

    private Immersion sums() {
        return Immersion.below(plane, org.apache.commons.math3.geometry.euclidean.threed.Vector3D.ZERO);
    }

    /** Half of an ellipsoid and the slab above its middle, 7 mm less what the plane's tilt makes of it: between 0.50 and 0.58 of all. */
    private double checked(double volumeMm3) {
        double share = volumeMm3 / solid.volumeMm3();
        if (!(share > 0.5 && share < 0.58)) {
            throw new IllegalStateException("share below the plane: " + share);
        }
        return volumeMm3;
    }
}
