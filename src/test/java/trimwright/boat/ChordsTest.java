package trimwright.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.BarShape.Ends;
import trimwright.mesh.MeshImport;
import trimwright.mesh.Solids;

class ChordsTest {

    private static Chords chords(double... ends) {
        return Chords.owning(ends);
    }

    private static void assertEnds(Chords chords, double... ends) {
        assertEquals(ends.length / 2, chords.count());
        for (int i = 0; i < chords.count(); i++) {
            assertEquals(ends[2 * i], chords.lowMm(i), 1e-12);
            assertEquals(ends[2 * i + 1], chords.highMm(i), 1e-12);
        }
    }

    @Test
    void stretchesAreIntersectedAndTakenAway() {
        Chords two = chords(0, 3, 5, 9);
        assertEnds(two.and(chords(2, 6, 7, 8)), 2, 3, 5, 6, 7, 8);
        assertEnds(two.without(chords(2, 6, 7, 8)), 0, 2, 6, 7, 8, 9);
        assertEnds(two.without(Chords.NONE), 0, 3, 5, 9);
        assertEnds(two.and(Chords.NONE));
        assertEnds(two.without(two));
        assertEquals(7, two.lengthMm());
        assertEnds(Chords.between(4, 4));
        assertEnds(Chords.between(4, 3));
    }

    /** Chord by chord, a solid adds up to its volume. The rule of midpoints over 64 columns a side is good to 0.5 %: worst is the
     * upright bar, whose circle of 64 columns across is only counted. */
    private static void assertVolume(double expectedMm3, Shape shape) {
        Shape around = new BoxShape(new Vector3D(-500, -500, -500), new Vector3D(500, 500, 500));
        assertEquals(
                expectedMm3, SampledVolume.shared(shape, around).volumeMm3(), 0.005 * expectedMm3, shape.toString());
    }

    @Test
    void chordsAddUpToTheVolumeOfTheSolid() {
        Vector3D[] tips = {
            new Vector3D(90, 0, 0), new Vector3D(0, 70, 0), new Vector3D(0, 0, -80), new Vector3D(40, -30, 60)
        };
        Vector3D start = new Vector3D(5, 7, -3);
        for (Vector3D tip : tips) {
            BarShape flat = new BarShape(start, start.add(tip), 30, Ends.FLAT);
            assertVolume(Math.PI * 225 * tip.getNorm(), flat);
            BarShape round = new BarShape(start, start.add(tip), 30, Ends.ROUND);
            assertVolume(Math.PI * 225 * (tip.getNorm() - 30) + Math.PI * 4 / 3 * 3375, round);
            BarShape ball = new BarShape(start, start.add(tip.normalize().scalarMultiply(30)), 30, Ends.ROUND);
            assertVolume(Math.PI * 4 / 3 * 3375, ball);
        }
        assertVolume(20 * 30 * 40, new MeshShape("box.stl", MeshImport.AS_IS, Solids.box(0, 0, 0, 20, 30, 40)));
    }

    @Test
    void aPointIsInASolidWhenAChordHoldsIt() {
        BarShape bar = new BarShape(Vector3D.ZERO, new Vector3D(100, 0, 0), 20, Ends.ROUND);
        assertTrue(bar.holds(new Vector3D(50, 0, 9.9)));
        assertFalse(bar.holds(new Vector3D(50, 0, 10.1)));
        assertTrue(bar.holds(new Vector3D(10, 9.9, 0)));
        // In the half ball: 8 mm from its centre along the axis leave 6 mm across.
        assertTrue(bar.holds(new Vector3D(2, 0, 5.9)));
        assertFalse(bar.holds(new Vector3D(2, 0, 6.1)));
    }
}
