package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.mesh.Bounds;
import trimwright.mesh.Solids;

/** Lines in box hulls, and the room about a cylinder in one, by hand. */
class HullClearanceTest {

    private static final Part HULL =
            TestParts.hull("hull", Solids.box(0, -50, 0, 400, 50, 80), new HullBuild.Skin(2), 1.2);
    private static final Part TOWER =
            TestParts.hull("tower", Solids.box(150, -20, 80, 250, 20, 140), new HullBuild.Skin(1), 1.2);

    private static Boat boat(Part... parts) {
        return new Boat("b", Water.FRESH, Optional.empty(), List.of(parts), List.of(), Targets.NONE);
    }

    /** Inside is 96 × 76 mm: from (10, 30) it is 28 mm to the bottom, 38 to port. */
    @Test
    void distancesInABox() {
        HullClearance hull = new HullClearance(boat(HULL));
        HullClearance.Nearest nearest = hull.nearest(100, 200, 10, 30, false, 5);
        assertEquals(28, nearest.distanceMm(), 1e-9);
        assertEquals(2, nearest.pointMm().getZ(), 1e-9);
        assertEquals("hull", nearest.part());
        assertEquals(13, hull.nearest(100, 200, -35, 40, false, 5).distanceMm(), 1e-9);
        // A tip 1 mm beyond the wall at the stern: the middle of its half ball of 20 mm is 19 mm from there.
        assertEquals(19, hull.nearest(1, 200, 0, 40, true, 20).distanceMm(), 1e-9);
        assertEquals(28, hull.distanceMm(100, 200, 10, 30), 1e-9);
        assertTrue(hull.keepsClear(100, 200, 10, 30, 27.999));
        assertFalse(hull.keepsClear(100, 200, 10, 30, 28.001));
        assertTrue(hull.keepsClearRound(50, 200, -35, 40, 10, 2.999));
        assertFalse(hull.keepsClearRound(50, 200, -35, 40, 10, 3.001));
        assertFalse(hull.keepsClearRound(1, 200, 0, 40, 20, 0));
        assertEquals(new Bounds(0, -50, 0, 400, 50, 80), hull.bounds());
        assertEquals(
                Double.POSITIVE_INFINITY,
                hull.nearest(500, 600, 0, 40, false, 5).distanceMm());
        assertEquals("", hull.nearest(500, 600, 0, 40, false, 5).part());
        assertEquals(Double.POSITIVE_INFINITY, hull.distanceMm(500, 600, 0, 40));
    }

    @Test
    void insideAndBetween() {
        HullClearance hull = new HullClearance(boat(HULL));
        assertTrue(hull.inside(100, 10, 30));
        assertFalse(hull.inside(100, 10, -1));
        assertFalse(hull.inside(100, 10, 81));
        assertFalse(hull.inside(100, 51, 30));
        assertFalse(hull.inside(401, 10, 30));
        assertEquals(new HullClearance.Between(2, 78), hull.between(100, 0, 30));
        // Between the surfaces of a print that encloses its material.
        Part print = TestParts.hull(
                "print",
                TestMeshes.together(
                        Solids.box(0, -50, 0, 400, 50, 80),
                        Solids.box(3, -47, 3, 397, 47, 77).flipped()),
                new HullBuild.Printed(Optional.empty()),
                1.2);
        HullClearance inPrint = new HullClearance(boat(print));
        assertTrue(inPrint.inside(100, 0, 30));
        assertFalse(inPrint.inside(100, 0, 1));
        assertFalse(inPrint.inside(100, 0, 79));
        assertFalse(inPrint.inside(100, 0, -1));
        assertFalse(inPrint.inside(100, 0, 81));
        assertEquals(new HullClearance.Between(3, 77), inPrint.between(100, 0, 30));
        assertEquals(27, inPrint.nearest(100, 200, 0, 30, false, 5).distanceMm(), 1e-9);
    }

    /** Of two hulls the nearer surface counts; a point may lie in either. */
    @Test
    void twoHulls() {
        for (boolean towerFirst : new boolean[] {false, true}) {
            HullClearance hulls = new HullClearance(towerFirst ? boat(TOWER, HULL) : boat(HULL, TOWER));
            assertEquals(new Bounds(0, -50, 0, 400, 50, 140), hulls.bounds());
            assertTrue(hulls.inside(200, 0, 100));
            assertTrue(hulls.inside(200, 0, 40));
            assertFalse(hulls.inside(100, 0, 100));
            HullClearance.Nearest up = hulls.nearest(160, 240, 5, 110, false, 5);
            assertEquals(14, up.distanceMm(), 1e-9);
            assertEquals("tower", up.part());
            assertEquals(14, hulls.distanceMm(160, 240, 5, 110), 1e-9);
            HullClearance.Nearest down = hulls.nearest(160, 240, 5, 20, false, 5);
            assertEquals(18, down.distanceMm(), 1e-9);
            assertEquals("hull", down.part());
            assertFalse(hulls.keepsClear(160, 240, 5, 110, 15));
            assertFalse(hulls.keepsClear(160, 240, 5, 20, 19));
            assertFalse(hulls.keepsClearRound(160, 240, 5, 110, 10, 5));
            assertFalse(hulls.keepsClearRound(160, 240, 5, 20, 10, 9));
            assertTrue(hulls.keepsClearRound(160, 240, 5, 20, 10, 7));
            assertEquals(new HullClearance.Between(2, 78), hulls.between(200, 0, 40));
        }
    }

    private static Part cylinder(double z, double diameter) {
        return TestParts.weighed(
                "wtc",
                Kind.CYLINDER,
                new BarShape(TestParts.at(100, 0, z), TestParts.at(300, 0, z), diameter, BarShape.Ends.FLAT),
                100,
                TestParts.at(200, 0, z));
    }

    private static Boat painted(double mm, Part... parts) {
        Boat bare = boat(parts);
        PaintedLine line = new PaintedLine(List.of(TestParts.at(0, 0, mm), TestParts.at(400, 0, mm)));
        return new Boat(bare.name(), bare.water(), Optional.of(line), bare.parts(), List.of(), Targets.NONE);
    }

    /** Over the cylinder's 200 mm the room is 96 × 76 mm; it takes a thin bar of 4 mm, which hardly counts, and the line parts what is over it. */
    @Test
    void roomAboutASeat() {
        Part wtc = cylinder(30, 4);
        double bar = 200 * Math.PI * 4;
        // Columns of 1.29 mm: at each wall half a one more or less.
        double error = 1.3 * 200 * 76 + bar;
        SeatRoom at = SeatRoom.of(painted(60, HULL, wtc), wtc, 30);
        assertTrue(at.known());
        assertEquals(30, at.axisZMm());
        assertEquals(200 * 96 * 28, at.underMm3(), error);
        assertEquals(200 * 96 * 30, at.overMm3(), error);
        assertEquals(200 * 96 * 18, at.aboveLineMm3(), error);
        SeatRoom higher = SeatRoom.of(painted(60, HULL, wtc), wtc, 66);
        assertEquals(200 * 96 * 64, higher.underMm3(), error);
        assertEquals(0, higher.overMm3(), bar);
        assertEquals(200 * 96 * 12, higher.aboveLineMm3(), error);
        SeatRoom unpainted = SeatRoom.of(boat(HULL, wtc), wtc, 30);
        assertEquals(200 * 96 * 48, unpainted.overMm3(), error);
        assertEquals(0, unpainted.aboveLineMm3(), 1e-9);
    }

    /** Named once is what the cylinder runs into at that height: not the hull, itself, what stands in it, or what it only nears. */
    @Test
    void whatIsInTheWay() {
        Part wtc = cylinder(60, 20);
        Part keel = TestParts.solid("keel", Kind.BALLAST, TestParts.box(50, -5, 2, 350, 5, 12), 11);
        Part bilge = TestParts.twice(TestParts.solid("bilge", Kind.FOAM, TestParts.box(50, 5, 12, 350, 15, 20), 0.03));
        Part beyond = TestParts.solid("beyond", Kind.FITTING, TestParts.box(301, -5, 2, 350, 5, 70), 1);
        Part corner = TestParts.solid("corner", Kind.FITTING, TestParts.box(50, 9, 2, 350, 12, 13), 1);
        Part inside = PlanBoats.tank("tank", "wtc", TestParts.box(150, -5, 15, 200, 5, 25));
        Boat boat = boat(HULL, wtc, keel, bilge, beyond, corner, inside);
        assertEquals(List.of(), SeatRoom.of(boat, wtc, 60).inTheWay());
        assertEquals(List.of("keel", "bilge"), SeatRoom.of(boat, wtc, 20).inTheWay());
        assertEquals(List.of("bilge"), SeatRoom.of(boat, wtc, 23).inTheWay());
    }

    /** Of an open hull nothing is known but what is in the way. */
    @Test
    void roomInAnOpenHull() {
        var mesh = Solids.box(0, -50, 0, 400, 50, 80);
        Part open = TestParts.hull(
                "hull",
                trimwright.mesh.TriangleMesh.owning(
                        mesh.xyz().clone(), java.util.Arrays.copyOf(mesh.corners(), mesh.corners().length - 3)),
                new HullBuild.Skin(2),
                1.2);
        Part wtc = cylinder(60, 20);
        Part keel = TestParts.solid("keel", Kind.BALLAST, TestParts.box(50, -5, 2, 350, 5, 12), 11);
        SeatRoom room = SeatRoom.of(boat(open, wtc, keel), wtc, 20);
        assertEquals(new SeatRoom(20, 0, 0, 0, List.of("keel"), false), room);
    }

    private static CylinderSeat seat(Part part, double gap, Part... others) {
        List<Part> parts = new ArrayList<>(List.of(others));
        parts.add(part);
        return SeatFinder.seat(boat(parts.toArray(Part[]::new)), part, gap);
    }

    /** 120 stations of a box; at each the inner surface 2 mm from the outer and the greatest diameter up to the nearest wall but for the gap, less at the ends where the wall across stands in the way. */
    @Test
    void theProfileOfABox() {
        CylinderSeat seat = seat(cylinder(30, 20), 1, HULL);
        assertEquals(120, seat.profile().size());
        CylinderSeat.Station middle = seat.profile().get(60);
        assertEquals(60.5 / 120 * 400, middle.xMm(), 1e-9);
        assertEquals(2, middle.bottomZMm(), 1e-9);
        assertEquals(78, middle.topZMm(), 1e-9);
        assertEquals(2 * (28 - 1), middle.diameterMm(), 1e-9);
        assertEquals(0.5 / 120 * 400, seat.profile().get(0).xMm(), 1e-9);
        assertEquals(0, seat.profile().get(0).diameterMm(), 1e-9);
        assertEquals(
                0,
                seat.touches()
                        .pointMm()
                        .distance(TestParts.at(seat.touches().pointMm().getX(), 0, 2)),
                1e-9);
        assertEquals(30, seat.touches().axisZMm());
        assertEquals(2 * 27, seat.largestDiameterMm(), 1e-9);
        assertEquals(40, seat.largestAnywhereMm().axisZMm(), 0.1);
        assertEquals(2 * 37, seat.largestAnywhereMm().diameterMm(), 1e-4);
        assertEquals(13, seat.lowestTouches().orElseThrow().axisZMm(), 1e-5);
        // At its own height it finds room from wall to wall.
        assertEquals(2, seat.longest().orElseThrow().fromXMm(), 1e-3);
        assertEquals(398, seat.longest().orElseThrow().toXMm(), 1e-3);
        assertEquals(3, seat.rooms().size());
    }

    /** One that sticks out of the bottom by 3 mm, one with its axis below the hull. */
    @Test
    void whatSticksOut() {
        CylinderSeat low = seat(cylinder(9, 20), 0, HULL);
        assertFalse(low.fits());
        assertEquals(-3, low.clearanceMm(), 1e-9);
        assertEquals(12, low.lowestAxisMm().orElseThrow(), 1e-5);
        assertTrue(low.longest().isEmpty());
        CylinderSeat under = seat(cylinder(-9, 20), 0, HULL);
        assertFalse(under.fits());
        assertEquals(-11 - 10, under.clearanceMm(), 1e-9);
        assertEquals(0, under.largestDiameterMm());
        assertEquals(76, under.largestAnywhereMm().diameterMm(), 1e-3);
        // It fits as it is with no gap, and not with one.
        assertTrue(seat(cylinder(12, 20), 0, HULL).fits());
        assertFalse(seat(cylinder(12, 20), 0.01, HULL).fits());
    }

    /** A post of the hull at x = 250 to 260 from the bottom to 40 mm: under it the hull is parted in two, over it a cylinder goes from end to end. */
    @Test
    void aHullWithABulkhead() {
        Part bulkhead = TestParts.hull(
                "bulkhead", Solids.box(250, -50, 0, 260, 50, 40), new HullBuild.Printed(Optional.empty()), 1.2);
        Part wtc = TestParts.weighed(
                "wtc",
                Kind.CYLINDER,
                new BarShape(TestParts.at(50, 0, 20), TestParts.at(200, 0, 20), 20, BarShape.Ends.FLAT),
                100,
                TestParts.at(125, 0, 20));
        CylinderSeat seat = seat(wtc, 0, HULL, bulkhead);
        assertEquals(2, seat.longest().orElseThrow().fromXMm(), 1e-3);
        assertEquals(250, seat.longest().orElseThrow().toXMm(), 1e-3);
        CylinderSeat.Longest over = seat.longestAnywhere().orElseThrow();
        assertEquals(396, over.stretch().lengthMm(), 1e-3);
        assertTrue(over.axisZMm() > 50 - 1e-6 && over.axisZMm() < 68 + 1e-6, "at " + over.axisZMm());
    }

    @Test
    void whichPartsHaveASeat() {
        assertTrue(SeatFinder.canSeat(cylinder(30, 20)));
        assertFalse(SeatFinder.canSeat(TestParts.solid("a", Kind.CYLINDER, TestParts.box(0, 0, 0, 1, 1, 1), 1)));
        BarShape along = new BarShape(TestParts.at(0, 0, 0), TestParts.at(9, 0, 0), 4, BarShape.Ends.FLAT);
        assertFalse(SeatFinder.canSeat(TestParts.solid("a", Kind.FITTING, along, 1)));
        for (double[] off : new double[][] {{1, 0}, {0, 1}}) {
            BarShape askew =
                    new BarShape(TestParts.at(0, 0, 0), TestParts.at(9, off[0], off[1]), 4, BarShape.Ends.FLAT);
            assertFalse(SeatFinder.canSeat(TestParts.solid("a", Kind.CYLINDER, askew, 1)));
        }
        // Turned round it is the same.
        BarShape back = new BarShape(TestParts.at(300, 0, 30), TestParts.at(100, 0, 30), 20, BarShape.Ends.FLAT);
        CylinderSeat seat = seat(TestParts.weighed("wtc", Kind.CYLINDER, back, 100, TestParts.at(0, 0, 0)), 1, HULL);
        assertEquals(18, seat.clearanceMm(), 1e-9);
        assertEquals(13, seat.lowestAxisMm().orElseThrow(), 1e-5);
    }
}
