package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Seats against closed forms. */
class SeatFinderTest {

    private static CylinderSeat seat(
            TriangleMesh hull,
            double wall,
            double halfLength,
            double z,
            double diameter,
            BarShape.Ends ends,
            double gap) {
        Part cylinder = PlanBoats.weighed(
                "wtc",
                Kind.CYLINDER,
                new BarShape(PlanBoats.at(-halfLength, 0, z), PlanBoats.at(halfLength, 0, z), diameter, ends),
                100,
                PlanBoats.at(0, 0, z));
        Boat boat = new Boat(
                "seat",
                Water.FRESH,
                Optional.empty(),
                List.of(PlanBoats.hull("hull", hull, new HullBuild.Skin(wall), 1.2), cylinder),
                List.of(),
                Targets.NONE);
        return SeatFinder.seat(boat, cylinder, gap);
    }

    /** In a box 100 wide and 80 high of 2 mm wall, exact: lowest axis at wall + gap + radius, widest 76 less the gaps. */
    @Test
    void inABox() {
        CylinderSeat seat = seat(Solids.box(-200, -50, 0, 200, 50, 80), 2, 100, 40, 60, BarShape.Ends.FLAT, 1);
        assertTrue(seat.fits());
        assertEquals(40 - 2 - 30, seat.clearanceMm(), 1e-9);
        assertEquals(2 + 1 + 30, seat.lowestAxisMm().orElseThrow(), 1e-5);
        assertEquals(80 - 2 - 1 - 30, seat.highestAxisMm().orElseThrow(), 1e-5);
        assertEquals(2 * (40 - 2 - 1), seat.largestDiameterMm(), 1e-9);
        assertEquals(2 * (40 - 2 - 1), seat.largestAnywhereMm().diameterMm(), 1e-4);
        assertEquals(2 * 198, seat.longest().orElseThrow().lengthMm(), 1e-3);
    }

    /** In a tube of inner radius 45 (a prism of 256 sides), by hand: axis at most 45 − 30 below the tube's. */
    @Test
    void inATube() {
        TriangleMesh tube = TestMeshes.revolved(new double[] {-200, -200, 200, 200}, new double[] {0, 45, 45, 0}, 256);
        CylinderSeat seat = seat(tube, 0, 100, 0, 60, BarShape.Ends.FLAT, 0);
        double sagitta = 45 * (1 - Math.cos(Math.PI / 256));
        assertEquals(-15, seat.lowestAxisMm().orElseThrow(), sagitta + 1e-5);
        assertEquals(90, seat.largestDiameterMm(), 2 * sagitta + 1e-5);
    }

    /** In an ellipsoid 400 × 120 × 120 the ends touch first: radius there is 60 √(1 − (100/200)²). */
    @Test
    void inAnEllipsoid() {
        TriangleMesh mesh = TestMeshes.bigEllipsoid(200, 60, 60, 400, 256);
        CylinderSeat seat = seat(mesh, 0, 100, 0, 60, BarShape.Ends.FLAT, 0);
        double atEnds = 60 * Math.sqrt(1 - 0.25);
        assertEquals(2 * atEnds, seat.largestDiameterMm(), 0.05);
        assertEquals(-(atEnds - 30), seat.lowestAxisMm().orElseThrow(), 0.03);
        assertEquals(100, Math.abs(seat.touchesMm().getX()), 1e-6);
    }

    /** Round ends reach farther into the same ellipsoid than flat ones of the same length over all. */
    @Test
    void roundEndsFitWhereFlatOnesDoNot() {
        TriangleMesh mesh = TestMeshes.bigEllipsoid(200, 60, 60, 400, 256);
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
        assertEquals(least - 40, round.clearanceMm(), 0.02);
    }

    @Test
    void aCylinderTooThickFitsNowhere() {
        CylinderSeat seat = seat(Solids.box(-200, -50, 0, 200, 50, 80), 2, 100, 40, 90, BarShape.Ends.FLAT, 0);
        assertFalse(seat.fits());
        assertTrue(seat.lowestAxisMm().isEmpty());
        assertTrue(seat.clearanceMm() < 0);
        assertEquals(76, seat.largestDiameterMm(), 1e-9);
    }
}
