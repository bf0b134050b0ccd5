package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.plan.SeatFinderTest.seat;

import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.boat.BarShape;
import trimwright.mesh.TriangleMesh;

/** Seats in an ellipsoid against closed forms. */
class EllipsoidSeatTest {

    /** In an ellipsoid 400 × 120 × 120 the ends touch first: radius there is 60 √(1 − (100/200)²). */
    @Test
    void inAnEllipsoid() {
        TriangleMesh mesh = TestMeshes.bigEllipsoid(200, 60, 60, 400, 256);
        CylinderSeat seat = seat(mesh, 0, 100, 0, 60, BarShape.Ends.FLAT, 0);
        double atEnds = 60 * Math.sqrt(1 - 0.25);
        assertEquals(2 * atEnds, seat.largestDiameterMm(), 0.05);
        assertEquals(-(atEnds - 30), seat.lowestAxisMm().orElseThrow(), 0.03);
        assertEquals(100, Math.abs(seat.touches().pointMm().getX()), 1e-6);
        // Longest where it lies in the middle: the ellipsoid is 30 mm from its axis at 200 √(1 − (30/60)²).
        CylinderSeat.Longest longest = seat.longestAnywhere().orElseThrow();
        assertEquals(2 * 200 * Math.sqrt(0.75), longest.stretch().lengthMm(), 0.2);
        assertEquals(0, longest.axisZMm(), 1);
        assertEquals(2 * 200 * Math.sqrt(0.75), seat.longest().orElseThrow().lengthMm(), 0.2);
    }

    /** Round ends reach farther into the same ellipsoid than flat ones of the same length over all. */
    @Test
    void roundEndsFitWhereFlatOnesDoNot() {
        TriangleMesh mesh = TestMeshes.bigEllipsoid(200, 60, 60, 120, 96);
        CylinderSeat flat = seat(mesh, 0, 170, 0, 80, BarShape.Ends.FLAT, 0);
        CylinderSeat round = seat(mesh, 0, 170, 0, 80, BarShape.Ends.ROUND, 0);
        assertFalse(flat.fits());
        assertTrue(round.fits());
        // A ball of radius 40 about x = 130: least distance from there to the ellipse, found by scanning it.
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 100000; i++) {
            double t = Math.PI * i / 100000;
            least = Math.min(least, Math.hypot(200 * Math.cos(t) - 130, 60 * Math.sin(t)));
        }
        // A mesh of 96 sides lies up to 60 (1 − cos π ∕ 96) inside.
        assertEquals(least - 40, round.clearanceMm(), 0.035);
    }

    /**
     * In the same ellipsoid, by hand: a point of the long axis at c is 60 √(1 − c² / (200² − 60²)) from the surface. Half balls of radius 30 find room up to the c where that
     * is 30, and their tips stand 30 farther; flat ends stop where the ellipsoid is 30 mm from its axis.
     */
    @Test
    void roundEndsReachFartherThanFlatOnes() {
        TriangleMesh mesh = TestMeshes.bigEllipsoid(200, 60, 60, 120, 96);
        CylinderSeat seat = seat(mesh, 0, 100, 0, 60, BarShape.Ends.ROUND, 0);
        double tips = 2 * (Math.sqrt((200 * 200 - 60 * 60) * 0.75) + 30);
        assertTrue(tips > 2 * 200 * Math.sqrt(0.75) + 40);
        assertEquals(tips, seat.longest().orElseThrow().lengthMm(), 1);
        assertEquals(tips, seat.longestAnywhere().orElseThrow().stretch().lengthMm(), 1);
    }
}
