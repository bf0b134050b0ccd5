package trimwright.bench;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.MeshImport;
import trimwright.mesh.TriangleMesh;
import trimwright.report.picture.BoatPicture;
import trimwright.report.raster.Canvas;
import trimwright.report.raster.View;

/**
 * How long pictures take. The baseline is the projection alone, which every renderer pays. Every run looks at a pixel inside the
 * hull and at one outside.
 *
 * <p>Run with {@code java -cp target/classes:target/test-classes:… org.openjdk.jmh.Main RasterBenchmark}. With the mixing of samples done
 * one by one in arrays of three the image alone took 40 ms of a processor; by rows, red and blue at one go, it takes 17 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(value = 1, jvmArgs = "-Djava.awt.headless=true")
public class RasterBenchmark {

    private static final int WIDTH = 1200;
    private static final int HEIGHT = 800;
    private static final int GROUND = 0xffffff;

    @Param({"20000", "200000", "1000000"})
    int triangles;

    private TriangleMesh mesh;
    private View view;
    private BoatPicture.Scene scene;

    @Setup
    public void hull() {
        mesh = spindle(triangles);
        view = View.of(Vector3D.ZERO, Vector3D.PLUS_I, Vector3D.PLUS_K, 1, WIDTH / 2.0, HEIGHT / 2.0);
        Part hull = new Part(
                "hull",
                Kind.HULL,
                Optional.of(new MeshShape("hull.stl", MeshImport.AS_IS, mesh)),
                Optional.of(new HullBuild.Skin(1.5)),
                Optional.of(900.0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                0);
        Boat boat = new Boat("Spindle", Water.FRESH, Optional.empty(), List.of(hull), List.of(), Targets.NONE);
        scene = new BoatPicture.Scene(
                boat,
                WaterPlane.level(0),
                Optional.empty(),
                Optional.of(new Vector3D(0, 0, -50)),
                Optional.of(new Vector3D(0, 0, -60)),
                Optional.of(Vector3D.ZERO),
                "Spindle",
                "A verdict");
    }

    /** From mm to pixels, nothing drawn. */
    @Benchmark
    public float[] baselineProjection() {
        return view.project(mesh);
    }

    /** One hull into one layer of 1200 × 800 px with 2 × 2 samples, and out as an image. */
    @Benchmark
    @Aim(baseline = "baselineProjection")
    public BufferedImage oneLayer() {
        Canvas canvas = new Canvas(WIDTH, HEIGHT, GROUND);
        canvas.layer(0).surface(view.project(mesh), mesh.corners(), 0xff808080);
        BufferedImage image = canvas.image();
        boolean right = (image.getRGB(WIDTH / 2, HEIGHT / 2) & 0xffffff) != GROUND
                && (image.getRGB(WIDTH / 2, 10) & 0xffffff) == GROUND;
        if (!right) {
            throw new IllegalStateException("the hull is not where it must be");
        }
        return image;
    }

    /** The whole picture with both views, outlines, key and letters. */
    @Benchmark
    @Aim(baseline = "baselineProjection")
    public BufferedImage picture() {
        return BoatPicture.draw(scene, WIDTH);
    }

    /** An ellipsoid 1000 mm long and 200 mm thick of about so many triangles. */
    private static TriangleMesh spindle(int triangles) {
        int around = (int) Math.sqrt(triangles / 4.0);
        int along = triangles / (2 * around);
        double[] xyz = new double[3 * (along + 1) * around];
        int[] corners = new int[6 * along * around];
        int next = 0;
        for (int i = 0; i <= along; i++) {
            double latitude = Math.PI * i / along;
            for (int k = 0; k < around; k++) {
                double longitude = 2 * Math.PI * k / around;
                int at = 3 * (i * around + k);
                xyz[at] = -500 * Math.cos(latitude);
                xyz[at + 1] = 100 * Math.sin(latitude) * Math.cos(longitude);
                xyz[at + 2] = 100 * Math.sin(latitude) * Math.sin(longitude);
                if (i < along) {
                    int a = i * around + k;
                    int b = i * around + (k + 1) % around;
                    for (int corner : new int[] {a, b, a + around, b, b + around, a + around}) {
                        corners[next++] = corner;
                    }
                }
            }
        }
        return TriangleMesh.owning(xyz, corners);
    }
}
