package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.HullForms;
import trimwright.TestMeshes;
import trimwright.boat.BarShape;
import trimwright.immersion.MeshSolid;
import trimwright.mesh.TriangleMesh;

/** Bodies that rest anywhere along a row of attitudes: one of them is named, and the search for it ends. */
class RowTest {

    /** A bar with its weight on its axis keeps any list: one row, with no metacentric height. */
    @ParameterizedTest
    @CsvSource({"0.1,0", "0.5,0", "0.9,0", "0.5,5", "0.1,-12"})
    void barAboutItsAxis(double s, double forward) {
        BarShape bar = TestBoats.bar(new Vector3D(-200, 30, 0), new Vector3D(200, 30, 0), 80);
        double mass = s * bar.solid().volumeMm3() / 1000;
        Flotation f = Flotation.of(TestBoats.boat(TestBoats.body("bar", bar, mass, new Vector3D(forward, 30, 0))));
        assertEquals(1, f.attitudes().size());
        Equilibrium e = f.attitudes().get(0);
        assertEquals(0, e.gmLeastMm(), 1e-9);
        assertTrue(e.plane().up().getZ() > 0.99, "nearest upright: " + e.heelDeg());
        assertTrue(e.cuts() < 20, "cuts " + e.cuts());
    }

    /** A ball with its weight in its centre keeps any attitude. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.5, 0.9})
    void ballAnyWay(double s) {
        BarShape ball = new BarShape(new Vector3D(-40, 0, 0), new Vector3D(40, 0, 0), 80, BarShape.Ends.ROUND);
        double mass = s * ball.solid().volumeMm3() / 1000;
        Flotation f = Flotation.of(TestBoats.boat(TestBoats.body("ball", ball, mass, Vector3D.ZERO)));
        assertEquals(1, f.attitudes().size());
        assertEquals(0, f.attitudes().get(0).gmLeastMm(), 1e-9);
    }

    /** The same of meshes, whose corners make ripples: N corners leave humps of some 1/N⁴, below a tenth of a micron from 64 on. */
    @ParameterizedTest
    @CsvSource({"64,0.3", "64,0.5", "128,0.5", "200,0.8"})
    void ripplesAreNoRests(int sides, double s) {
        TriangleMesh mesh = HullForms.suboff(40, sides);
        MeshSolid solid = MeshSolid.of(mesh);
        Flotation f =
                Flotation.of(TestBoats.boat(TestBoats.hull(mesh, s * solid.volumeMm3() / 1000, solid.centroidMm())));
        assertEquals(1, f.attitudes().size());
    }

    /** A cone leans the same way all round (small circle of directions), or stands on its base. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.4})
    void leaningCone(double s) {
        TriangleMesh mesh = TestMeshes.stoodUp(
                TestMeshes.revolved(new double[] {0, 100}, new double[] {0, 100 / Math.sqrt(3)}, 256));
        MeshSolid solid = MeshSolid.of(mesh);
        Flotation f =
                Flotation.of(TestBoats.boat(TestBoats.hull(mesh, s * solid.volumeMm3() / 1000, solid.centroidMm())));
        assertEquals(2, f.attitudes().size());
        assertEquals(-1, f.attitudes().get(0).plane().up().getZ(), 1e-9);
    }

    /** But two slight lolls stay two: a box a hair too high to stand upright. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1e-2, 0.1})
    void slightLollsStayTwo(double tooHigh) {
        double draught = 30;
        double metacentre = draught / 2 + 100.0 * 100 / 12 / draught;
        Flotation f =
                Flotation.of(TestBoats.block(400, 100, 60, 40 * draught, new Vector3D(0, 0, metacentre + tooHigh)));
        double bm = 100.0 * 100 / 12 / draught;
        double angle = Math.toDegrees(Math.atan(Math.sqrt(2 * tooHigh / bm)));
        long lolls = f.attitudes().stream()
                .filter(e -> Math.abs(Math.abs(e.heelDeg()) - angle) < 1e-3 * angle)
                .count();
        assertEquals(2, lolls);
    }
}
