package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.TestMeshes;
import trimwright.mesh.TriangleMesh;

/** The waterplane's sums are the slopes of the immersed volume and its moment, which is what the equilibrium leans on. */
class SlopesTest {

    /**
     * Between two neighbouring vertices' heights the waterplane is a second degree, its first moments a third degree polynomial of the
     * height: Simpson's rule over it must give the growth of volume and moment, to rounding.
     */
    @Property(tries = 60, seed = "20240721")
    void volumeGrowsByTheWaterplane(@ForAll int seed) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.random(random, 1, 0.6);
        MeshSolid body = MeshSolid.of(mesh);
        Vector3D up = TestMeshes.direction(random);
        double[] heights = DoubleStream.concat(
                        IntStream.range(0, mesh.vertexCount())
                                .mapToDouble(v -> up.dotProduct(TestMeshes.vertex(mesh, v))),
                        DoubleStream.of(-200, 200))
                .sorted()
                .toArray();
        double size = mesh.bounds().diagonal();
        for (int i = 1; i < heights.length; i++) {
            double low = heights[i - 1];
            double high = heights[i];
            Immersion a = at(up, low, body);
            Immersion m = at(up, 0.5 * (low + high), body);
            Immersion b = at(up, high, body);
            double step = (high - low) / 6;
            double volume = step * (a.waterplaneMm2() + 4 * m.waterplaneMm2() + b.waterplaneMm2());
            assertEquals(volume, b.volumeMm3() - a.volumeMm3(), 1e-12 * size * size * size);
            double ahead = step * (a.waterplaneAheadMm3() + 4 * m.waterplaneAheadMm3() + b.waterplaneAheadMm3());
            double moment =
                    b.momentMm4().subtract(a.momentMm4()).dotProduct(a.plane().ahead());
            assertEquals(ahead, moment, 1e-12 * Math.pow(size, 4));
            double port = step * (a.waterplanePortMm3() + 4 * m.waterplanePortMm3() + b.waterplanePortMm3());
            double across =
                    b.momentMm4().subtract(a.momentMm4()).dotProduct(a.plane().port());
            assertEquals(port, across, 1e-12 * Math.pow(size, 4));
        }
    }

    private static Immersion at(Vector3D up, double height, Displacer body) {
        return Immersion.below(WaterPlane.of(up, height), Vector3D.ZERO).add(body);
    }

    /**
     * Turning the plane by dθ toward t about its reference changes the volume by −A_t dθ and the moment by −(A_tu, A_tv) dθ. Central
     * differences over ±ε miss terms of ε², with ε = 1e-4 and a mesh of 1280 faces; bodies of radius 80 at most.
     */
    @Property(tries = 60, seed = "20240722")
    void momentTurnsByTheSecondMoments(@ForAll int seed) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.random(random, 3, 0);
        double angle = 1e-4;
        double size = mesh.bounds().diagonal();
        WaterPlane plane = WaterPlane.of(TestMeshes.direction(random), 10 * random.nextGaussian());
        Vector3D pivot = plane.dropped(Vector3D.ZERO);
        for (Displacer body : new Displacer[] {
            MeshSolid.of(mesh), RoundBar.flat(TestMeshes.direction(random).scalarMultiply(40), Vector3D.ZERO, 17)
        }) {
            Immersion still = Immersion.below(plane, pivot).add(body);
            for (Vector3D toward : new Vector3D[] {plane.ahead(), plane.port()}) {
                boolean ahead = toward == plane.ahead();
                Immersion plus = turned(plane, pivot, toward, angle, body);
                Immersion minus = turned(plane, pivot, toward, -angle, body);
                double first = ahead ? still.waterplaneAheadMm3() : still.waterplanePortMm3();
                double slope = (plus.volumeMm3() - minus.volumeMm3()) / (2 * angle);
                assertEquals(-first, slope, 1e-4 * size * size * size);
                Vector3D moment = plus.momentMm4().subtract(minus.momentMm4()).scalarMultiply(1 / (2 * angle));
                double uu = ahead ? still.secondMomentAheadMm4() : still.secondMomentMixedMm4();
                double vv = ahead ? still.secondMomentMixedMm4() : still.secondMomentPortMm4();
                assertEquals(-uu, moment.dotProduct(plane.ahead()), 1e-4 * Math.pow(size, 4));
                assertEquals(-vv, moment.dotProduct(plane.port()), 1e-4 * Math.pow(size, 4));
                assertEquals(0, moment.dotProduct(plane.up()), 1e-4 * Math.pow(size, 4));
            }
        }
    }

    private static Immersion turned(WaterPlane plane, Vector3D pivot, Vector3D toward, double angle, Displacer body) {
        Vector3D up = new Vector3D(Math.cos(angle), plane.up(), Math.sin(angle), toward);
        return Immersion.below(WaterPlane.of(up, up.dotProduct(pivot)), pivot).add(body);
    }

    /** The plane's axes stay unit vectors square to each other, however nearly she stands on end. */
    @Property(tries = 200, seed = "20240723")
    void planeAxes(@ForAll int seed) {
        Random random = new Random(seed);
        double tilt = Math.pow(10, -12 * random.nextDouble());
        double side = 2 * Math.PI * random.nextDouble();
        Vector3D up = new Vector3D(random.nextBoolean() ? 1 : -1, tilt * Math.cos(side), tilt * Math.sin(side));
        WaterPlane plane = WaterPlane.of(up, 7);
        assertEquals(1, plane.ahead().getNorm(), 1e-15);
        assertEquals(1, plane.port().getNorm(), 1e-15);
        assertEquals(0, plane.ahead().dotProduct(plane.up()), 1e-15);
        assertEquals(0, plane.port().dotProduct(plane.up()), 1e-15);
        assertEquals(0, plane.port().dotProduct(plane.ahead()), 1e-15);
        Cuts.assertNear(plane.up(), plane.ahead().crossProduct(plane.port()), 1e-15, "right-handed");
    }
}
