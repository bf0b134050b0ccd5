package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.TestParts;
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

    static CylinderSeat seat(
            TriangleMesh hull,
            double wall,
            double halfLength,
            double z,
            double diameter,
            BarShape.Ends ends,
            double gap) {
        Part cylinder = TestParts.weighed(
                "wtc",
                Kind.CYLINDER,
                new BarShape(TestParts.at(-halfLength, 0, z), TestParts.at(halfLength, 0, z), diameter, ends),
                100,
                TestParts.at(0, 0, z));
        Boat boat = new Boat(
                "seat",
                Water.FRESH,
                Optional.empty(),
                List.of(TestParts.hull("hull", hull, new HullBuild.Skin(wall), 1.2), cylinder),
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
        assertEquals(2 * 198, seat.longestAnywhere().orElseThrow().stretch().lengthMm(), 1e-3);
        assertEquals("hull", seat.touches().hullPart());
        // The room over its length of 200 mm, 96 × 76 mm across inside the wall, less half the cylinder above and
        // below.
        double half = Math.PI * 30 * 30 / 2 * 200;
        // Columns are 1.3 mm wide, and at each wall half a one may count too much or too little.
        double error = 1.3 * 200 * 45;
        SeatRoom room = seat.rooms().get(0);
        assertEquals(200 * 96 * 38 - half, room.underMm3(), error);
        assertEquals(200 * 96 * 38 - half, room.overMm3(), error);
        assertEquals(0, room.aboveLineMm3(), 1e-9);
        // Lowest: the axis 33 mm up, so 31 mm of room are left under it.
        assertEquals(200 * 96 * 31 - half, seat.rooms().get(1).underMm3(), error);
        assertEquals(200 * 96 * 45 - half, seat.rooms().get(1).overMm3(), error);
    }

    @Test
    void aPartInTheWayOfASeatIsNamed() {
        Part cylinder = TestParts.weighed(
                "wtc",
                Kind.CYLINDER,
                new BarShape(TestParts.at(-100, 0, 45), TestParts.at(100, 0, 45), 60, BarShape.Ends.FLAT),
                100,
                TestParts.at(0, 0, 45));
        Part lead = TestParts.weighed(
                "keel lead", Kind.BALLAST, TestParts.box(-50, -8, 2, 50, 8, 8), 100, TestParts.at(0, 0, 5));
        Part beside = TestParts.weighed(
                "bilge lead", Kind.BALLAST, TestParts.box(-50, 38, 2, 50, 46, 8), 100, TestParts.at(0, 42, 5));
        Boat boat = new Boat(
                "seat",
                Water.FRESH,
                Optional.empty(),
                List.of(
                        TestParts.hull("hull", Solids.box(-200, -50, 0, 200, 50, 80), new HullBuild.Skin(2), 1.2),
                        cylinder,
                        lead,
                        beside),
                List.of(),
                Targets.NONE);
        CylinderSeat seat = SeatFinder.seat(boat, cylinder, 0);
        assertEquals(List.of(), seat.rooms().get(0).inTheWay());
        assertEquals(32, seat.rooms().get(1).axisZMm(), 1e-5);
        assertEquals(List.of("keel lead"), seat.rooms().get(1).inTheWay());
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

    /** In a box both ends stand at its walls, round or flat; a bar with round ends that is thicker than the box is long fits nowhere. */
    @Test
    void inABoxRoundEndsReachTheWallsToo() {
        TriangleMesh box = Solids.box(-200, -50, 0, 200, 50, 80);
        CylinderSeat seat = seat(box, 2, 100, 40, 60, BarShape.Ends.ROUND, 0);
        assertEquals(2 * 198, seat.longest().orElseThrow().lengthMm(), 1e-3);
        CylinderSeat inShort = seat(Solids.box(-20, -50, 0, 20, 50, 80), 0, 60, 40, 60, BarShape.Ends.ROUND, 0);
        assertTrue(inShort.longest().isEmpty());
        assertTrue(inShort.longestAnywhere().isEmpty());
    }

    @Test
    void aCylinderTooThickFitsNowhere() {
        CylinderSeat seat = seat(Solids.box(-200, -50, 0, 200, 50, 80), 2, 100, 40, 90, BarShape.Ends.FLAT, 0);
        assertFalse(seat.fits());
        assertTrue(seat.lowestAxisMm().isEmpty());
        assertTrue(seat.clearanceMm() < 0);
        assertTrue(seat.longestAnywhere().isEmpty());
        assertEquals(76, seat.largestDiameterMm(), 1e-9);
    }

    /** A hull of three sides, 100 mm wide at the bottom and 120 high: the widest cylinder is its incircle, r = area ∕ half the outline, at that height. */
    @Test
    void theWidestInATriangleIsItsIncircle() {
        TriangleMesh prism = TestMeshes.prism(-200, 200, -50, 0, 50, 0, 0, 120);
        double radius = 0.5 * 100 * 120 / (0.5 * (100 + 2 * 130));
        for (double gap : new double[] {0, 2}) {
            CylinderSeat seat = seat(prism, 0, 100, 20, 20, BarShape.Ends.FLAT, gap);
            assertEquals(2 * (radius - gap), seat.largestAnywhereMm().diameterMm(), 1e-3);
            assertEquals(radius, seat.largestAnywhereMm().axisZMm(), 1e-3);
            // At 20 mm it is the bottom that is near; at 60 the sides: (120 − z) · 50 ∕ 130.
            assertEquals(2 * (20 - gap), seat.largestDiameterMm(), 1e-9);
            CylinderSeat high = seat(prism, 0, 100, 60, 20, BarShape.Ends.FLAT, gap);
            assertEquals(2 * (60 * 50 / 130.0 - gap), high.largestDiameterMm(), 1e-9);
            assertEquals(10 + gap, high.lowestAxisMm().orElseThrow(), 1e-5);
            assertEquals(120 - (10 + gap) * 130 / 50, high.highestAxisMm().orElseThrow(), 1e-4);
            CylinderSeat round = seat(prism, 0, 100, 60, 20, BarShape.Ends.ROUND, gap);
            assertEquals(2 * (60 * 50 / 130.0 - gap), round.largestDiameterMm(), 1e-3);
            assertEquals(2 * (radius - gap), round.largestAnywhereMm().diameterMm(), 1e-3);
        }
        // No thicker than it is long.
        assertEquals(16, seat(prism, 0, 8, 30, 10, BarShape.Ends.ROUND, 0).largestDiameterMm(), 1e-3);
    }

    /** A box whose ends lean in by 1 in 1, 400 mm long at the bottom: the longest cylinder lies lowest, with its upper edge at the ends. */
    @Test
    void theLongestUnderLeaningEnds() {
        TriangleMesh box = TestMeshes.mapped(
                Solids.box(-200, -50, 0, 200, 50, 80),
                p -> TestParts.at(p.getX() * (1 - p.getZ() / 200), p.getY(), p.getZ()));
        CylinderSeat seat = seat(box, 0, 60, 40, 22, BarShape.Ends.FLAT, 0);
        CylinderSeat.Longest longest = seat.longestAnywhere().orElseThrow();
        assertEquals(2 * (200 - 22), longest.stretch().lengthMm(), 0.1);
        assertEquals(11, longest.axisZMm(), 0.05);
        assertEquals(2 * (200 - 51), seat.longest().orElseThrow().lengthMm(), 1e-3);
        // With a gap the axis lies higher, and the gap is kept from the ends as well.
        CylinderSeat gap = seat(box, 0, 60, 40, 22, BarShape.Ends.FLAT, 2);
        assertEquals(
                2 * (200 - 26), gap.longestAnywhere().orElseThrow().stretch().lengthMm(), 0.1);
        assertEquals(2 * (200 - 53), gap.longest().orElseThrow().lengthMm(), 1e-3);
    }
}
