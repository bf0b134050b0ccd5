package trimwright.report.raster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.jme3.math.Vector3f;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** From mm to pixels. */
class ViewTest {

    /** Float carries 24 bits: over 2000 mm at 1 px/mm a few units of 2000 · 2⁻²³ px from turn, sum and shift. */
    private static final double TOLERANCE_PX = 8 * 2000 * Math.scalb(1.0, -23);

    /** From starboard: the bow points right, up is up, starboard is nearer. */
    @Test
    void fromStarboard() {
        View view = View.of(new Vector3D(500, 0, 60), Vector3D.PLUS_I, Vector3D.PLUS_K, 0.5, 300, 200);
        Vector3f p = view.project(new Vector3D(700, -20, 100));
        assertEquals(400, p.x, TOLERANCE_PX);
        assertEquals(180, p.y, TOLERANCE_PX);
        assertEquals(-10, p.z, TOLERANCE_PX);
    }

    @Test
    void anyAttitudeAgreesWithTheFormula() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            WaterPlane water =
                    WaterPlane.of(new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()), 0);
            Vector3D centre = new Vector3D(random.nextDouble() * 500, random.nextDouble() * 500, 10);
            View view = View.of(centre, water.port(), water.up(), 1, 640, 300);
            Vector3D point = new Vector3D(random.nextDouble() * 1000, random.nextDouble() * 200, 70);
            Vector3D offset = point.subtract(centre);
            Vector3f p = view.project(point);
            assertEquals(640 + offset.dotProduct(water.port()), p.x, TOLERANCE_PX);
            assertEquals(300 - offset.dotProduct(water.up()), p.y, TOLERANCE_PX);
            assertEquals(-offset.dotProduct(water.ahead()), p.z, TOLERANCE_PX);
        }
    }

    /** A boat a kilometre from her origin looks as she does at home: mm are taken off in double. */
    @Test
    void farFromTheOriginNothingIsLost() {
        double far = 1 << 20;
        TriangleMesh home = Solids.box(0, -0.125, 0, 0.5, 0.125, 0.25);
        TriangleMesh away = Solids.box(far, far - 0.125, far, far + 0.5, far + 0.125, far + 0.25);
        View here = View.of(Vector3D.ZERO, Vector3D.PLUS_I, Vector3D.PLUS_K, 100, 0, 0);
        View there = View.of(new Vector3D(far, far, far), Vector3D.PLUS_I, Vector3D.PLUS_K, 100, 0, 0);
        assertArrayEquals(here.project(home), there.project(away));
    }

    @Test
    void meshAndPointAgree() {
        TriangleMesh mesh = Solids.box(-30, -20, -10, 40, 50, 60);
        WaterPlane water = WaterPlane.of(new Vector3D(0.1, -0.3, 0.9), 0);
        View view = View.of(new Vector3D(5, 6, 7), water.ahead(), water.up(), 2.5, 100, 90);
        float[] pixels = view.project(mesh);
        for (int v = 0; v < mesh.vertexCount(); v++) {
            Vector3f p = view.project(new Vector3D(mesh.xyz()[3 * v], mesh.xyz()[3 * v + 1], mesh.xyz()[3 * v + 2]));
            assertEquals(p.x, pixels[3 * v], TOLERANCE_PX);
            assertEquals(p.y, pixels[3 * v + 1], TOLERANCE_PX);
            assertEquals(p.z, pixels[3 * v + 2], TOLERANCE_PX);
        }
    }
}
