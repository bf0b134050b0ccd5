package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What an open hull lacks, and its volume in bounds, on boxes of which a lid was taken: the closed forms are those of the whole box and of its lid. */
class MissingTest {

    /** 200 × 60 × 50 mm, aside of the origin. */
    private static final TriangleMesh BOX = Solids.box(300, -130, 40, 500, -70, 90);

    /** Without the faces at a height along an axis (0 x, 1 y, 2 z). */
    private static TriangleMesh without(TriangleMesh mesh, int axis, double at) {
        boolean[] keep = new boolean[mesh.triangleCount()];
        for (int t = 0; t < keep.length; t++) {
            for (int k = 0; k < 3; k++) {
                keep[t] |= mesh.xyz()[3 * mesh.corners()[3 * t + k] + axis] != at;
            }
        }
        return mesh.only(keep);
    }

    private static Map<String, Double> values(TriangleMesh mesh) {
        List<Object> list = new Missing(mesh).values();
        Map<String, Double> values = new HashMap<>();
        for (int i = 0; i < list.size(); i += 2) {
            values.put((String) list.get(i), ((Number) list.get(i + 1)).doubleValue());
        }
        return values;
    }

    /** Two thirds of area times height, the height being the area over π times the half diagonal. */
    private static double dome(double a, double b) {
        return 2.0 / 3 * a * b * a * b / (Math.PI * Math.hypot(a / 2, b / 2));
    }

    @Test
    void aBoxWithoutItsDeck() {
        Map<String, Double> values = values(without(BOX, 2, 90));
        assertEquals(1, values.get("openings"));
        assertEquals(520, values.get("borderMm"), 1e-9);
        assertEquals(600_000, values.get("flatMm3"), 1e-6);
        assertEquals(600_000 - dome(200, 60), values.get("leastMm3"), 1e-6);
        assertEquals(600_000 + dome(200, 60), values.get("mostMm3"), 1e-6);
        assertEquals(5, values.size());
    }

    /** Two openings add up, wherever they look. */
    @Test
    void aBoxWithoutBowAndStern() {
        Map<String, Double> values = values(without(without(BOX, 0, 300), 0, 500));
        assertEquals(2, values.get("openings"));
        assertEquals(440, values.get("borderMm"), 1e-9);
        assertEquals(600_000, values.get("flatMm3"), 1e-6);
        assertEquals(600_000 + 2 * dome(60, 50), values.get("mostMm3"), 1e-6);
        Map<String, Double> side = values(without(BOX, 1, -70));
        assertEquals(600_000, side.get("flatMm3"), 1e-6);
        assertEquals(600_000 - dome(200, 50), side.get("leastMm3"), 1e-6);
    }

    /** Over a round opening the dome is half a ball, but for the corners of its border. */
    @Test
    void overARoundOpeningHalfABall() {
        int sides = 90;
        double[] xyz = new double[3 * (sides + 1)];
        int[] corners = new int[3 * sides];
        for (int i = 0; i < sides; i++) {
            xyz[3 * i] = 30 * Math.cos(2 * Math.PI * i / sides);
            xyz[3 * i + 1] = 30 * Math.sin(2 * Math.PI * i / sides);
            corners[3 * i] = (i + 1) % sides;
            corners[3 * i + 1] = i;
            corners[3 * i + 2] = sides;
        }
        xyz[3 * sides + 2] = -80;
        Map<String, Double> values = values(TriangleMesh.owning(xyz, corners));
        double cone = Math.PI * 900 * 80 / 3;
        double halfBall = 2.0 / 3 * Math.PI * 27_000;
        assertEquals(cone, values.get("flatMm3"), 2e-3 * cone);
        assertEquals(halfBall, values.get("mostMm3") - values.get("flatMm3"), 4e-3 * halfBall);
    }

    /** Where more than a lid is missing no volume is told. */
    @Test
    void withTrianglesTurnedOrEdgesOfManyThereAreNoBounds() {
        TriangleMesh open = without(BOX, 2, 90);
        int[] turned = open.corners().clone();
        int last = turned.length - 1;
        int corner = turned[last];
        turned[last] = turned[last - 1];
        turned[last - 1] = corner;
        Map<String, Double> values = values(TriangleMesh.owning(open.xyz(), turned));
        assertEquals(1, values.get("openings"));
        assertFalse(values.containsKey("flatMm3"));
        assertEquals(true, values.get("turned") > 0);
        // A page on an edge of the keel.
        int[] more = java.util.Arrays.copyOf(open.corners(), open.corners().length + 3);
        double[] xyz = java.util.Arrays.copyOf(open.xyz(), open.xyz().length + 3);
        more[more.length - 3] = open.corners()[0];
        more[more.length - 2] = open.corners()[1];
        more[more.length - 1] = xyz.length / 3 - 1;
        Map<String, Double> page = values(TriangleMesh.owning(xyz, more));
        assertEquals(1, page.get("many"));
        assertFalse(page.containsKey("flatMm3"));
        assertEquals(Map.of(), values(BOX));
    }
}
