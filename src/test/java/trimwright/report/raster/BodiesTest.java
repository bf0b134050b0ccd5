package trimwright.report.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.BarShape;
import trimwright.boat.BoxShape;
import trimwright.boat.Shape;
import trimwright.mesh.TriangleMesh;

/** Meshes for drawing are outward, closed and nearly as large as the bodies they show. */
class BodiesTest {

    /**
     * A polygon of step δ in a circle loses δ²/6 of the area: δ = 2π/96 around. From pole to pole δ = π/32 takes on average two
     * thirds of δ²/8 from each of the three dimensions of a ball.
     */
    private static final double FACET_LOSS = Math.pow(2 * Math.PI / 96, 2) / 6 + Math.pow(Math.PI / 32, 2) / 4 + 1e-5;

    private static void enclosesItsShape(Shape shape) {
        TriangleMesh mesh = Bodies.mesh(shape);
        double volume = shape.solid().volumeMm3();
        assertEquals(volume * (1 - FACET_LOSS / 2), mesh.signedVolume(), volume * FACET_LOSS / 2);
        double reach = FACET_LOSS * shape.bounds().diagonal();
        assertEquals(shape.bounds().maxX(), mesh.bounds().maxX(), reach);
        assertEquals(shape.bounds().minY(), mesh.bounds().minY(), reach);
        assertEquals(shape.bounds().maxZ(), mesh.bounds().maxZ(), reach);
    }

    @Test
    void shapes() {
        enclosesItsShape(new BoxShape(new Vector3D(10, 5, 3), new Vector3D(0, -5, 9)));
        Vector3D from = new Vector3D(20, 1, 2);
        Vector3D to = new Vector3D(90, 30, -8);
        enclosesItsShape(new BarShape(from, to, 25, BarShape.Ends.FLAT));
        enclosesItsShape(new BarShape(from, to, 25, BarShape.Ends.ROUND));
    }

    @Test
    void ballAndMarker() {
        Vector3D centre = new Vector3D(1, 2, 3);
        double ball = 4.0 / 3 * Math.PI * 1000;
        assertEquals(ball * (1 - FACET_LOSS / 2), Bodies.ball(centre, 10).signedVolume(), ball * FACET_LOSS / 2);
        // An octahedron of half diagonal r holds 4/3 r³.
        assertEquals(4.0 / 3 * 1000, Bodies.marker(centre, 10).signedVolume(), 1e-9);
    }
}
