package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.boat.Zone;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;
import trimwright.statics.Flotation;

/** Zones found where the file gives none. */
class ZoneFinderTest {

    private static PlanRequest found(Boat boat, Wanted wanted) {
        return PlanRequest.of(boat.withZones(List.of()), wanted, Goal.LEAST_MASS);
    }

    /** The zones of the box submarine hold exactly what her hull encloses less the cylinder, by hand, and overlap nowhere. */
    @Test
    void theyShareOutTheInsideOfTheHull() {
        PlanRequest request = found(PlanBoats.submarine(88, 1250, 0), PlanBoats.WANTED);
        List<Room> rooms = Room.of(request.boat().zones(), request.boat().pieces(), request.line());
        double inside = 797 * 117 * 107 - Math.PI * 38 * 38 * 500;
        double error = rooms.stream().mapToDouble(Room::errorMm3).sum();
        double sum = rooms.stream().mapToDouble(Room::freeMm3).sum();
        assertEquals(inside, sum, error);
        assertTrue(error < 0.06 * inside, "stated error " + error);
        double below = rooms.stream().mapToDouble(Room::belowLineMm3).sum();
        assertEquals(797 * 117 * 82.5 - Math.PI * 38 * 38 * 500 + segmentAbove(84 - 50) * 500, below, error);
        for (Room room : rooms) {
            for (Room.Slice slice : room.slices()) {
                assertEquals(
                        slice.freeMm3(),
                        slice.portBelowMm3()
                                + slice.portAboveMm3()
                                + slice.starboardBelowMm3()
                                + slice.starboardAboveMm3(),
                        1e-6);
            }
        }
    }

    /** Area of the circle of radius 38 that lies more than {@code h} above its centre. */
    private static double segmentAbove(double h) {
        return 38 * 38 * Math.acos(h / 38) - h * Math.sqrt(38 * 38 - h * h);
    }

    @Test
    void aPlanInThemHolds() {
        Boat boat = PlanBoats.submarine(88, 1250, 1.5);
        BallastPlan plan = Planner.plan(found(boat, PlanBoats.WANTED));
        assertTrue(plan.feasible());
        PlannerTest.holds(plan, PlanBoats.WANTED);
        for (Part piece : plan.pieces()) {
            var box = piece.shape().orElseThrow().bounds();
            assertTrue(box.minX() >= 1.5 - 1 && box.maxX() <= 798.5 + 1, piece.toString());
            assertTrue(Math.max(-box.minY(), box.maxY()) <= 58.5 + 1e-9, piece.toString());
            assertTrue(box.minZ() >= 1.5 - 1e-9 && box.maxZ() <= 108.5 + 1e-9, piece.toString());
        }
    }

    private static Boat sealed(double sideMm, List<Zone> zones) {
        TriangleMesh mesh = Solids.box(0, -60, 0, 400, 60, 80);
        List<Part> parts = new ArrayList<>();
        parts.add(TestParts.hull("hull", mesh, new HullBuild.Sealed(Optional.of(2.0)), 1.2));
        parts.add(TestParts.inside(
                "hull",
                TestParts.weighed(
                        "battery",
                        Kind.FITTING,
                        TestParts.box(150, -30, 10, 250, 30, 40),
                        600.0,
                        TestParts.at(200, sideMm, 25))));
        return new Boat(
                "barge",
                Water.ofDensity(1),
                Optional.of(new PaintedLine(List.of(TestParts.at(10, 0, 40), TestParts.at(390, 0, 40)))),
                parts,
                zones,
                Targets.NONE);
    }

    private static final Wanted AFLOAT = new Wanted(0, 5, new Targets.Band(0, 1), 0.5, 0.3, 2);

    /**
     * By hand: 400 × 120 × 40 mm under water are 1920 g; the shell weighs its area of 179200 mm² × 2 mm × 1.2 g/cm³ = 430.08 g, the battery 600 g.
     * Lead in the dry displaces nothing, so 1920 − 1030.08 = 889.92 g are wanted, with their moment against the battery's 4 mm to port.
     */
    @Test
    void leadInAWatertightHullDisplacesNothing() {
        Boat boat = sealed(4, List.of());
        BallastPlan plan = Planner.plan(PlanRequest.of(boat, AFLOAT, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        assertEquals(1920 - 600 - 0.002 * 1.2 * (2 * (400 * 120 + 400 * 80 + 120 * 80)), plan.addedLeadG(), 24);
        assertEquals(0, plan.addedFoamMm3());
        double moment = 600 * 4;
        for (Part piece : plan.pieces()) {
            assertEquals(Optional.of("hull"), piece.inside());
            var box = piece.shape().orElseThrow().bounds();
            moment += box.centreY() * box.sizeX() * box.sizeY() * box.sizeZ() * 11.34e-3;
        }
        assertEquals(0, moment, 1920 * 20 * Math.toRadians(0.3));
        assertEquals(0, Flotation.of(plan.planned()).settled().orElseThrow().heelDeg(), 0.3);
    }

    @Test
    void foamIsNeverPutIntoTheDry() {
        List<Zone> zones = List.of(
                PlanBoats.zone("dry", Zone.Use.FOAM, TestParts.box(20, -50, 50, 140, 50, 70), false),
                PlanBoats.zone("bottom", Zone.Use.BALLAST, TestParts.box(20, -50, 2, 380, 50, 9), false));
        Boat boat = sealed(0, zones);
        BallastPlan plan = Planner.plan(PlanRequest.of(boat, AFLOAT, Goal.LEAST_MASS));
        assertTrue(plan.feasible());
        assertEquals(0, plan.addedFoamMm3());
        List<Code> codes =
                PlanCheck.rooms(boat, plan.rooms()).stream().map(Finding::code).toList();
        assertTrue(codes.contains(Code.ZONE_FOAM_KEPT_DRY), codes.toString());
    }

    /** A keel zone under a watertight hull lies in none of her rooms: lead there is wet, and weighs 1 − 1/11.34 of its mass. */
    @Test
    void leadUnderAWatertightHullIsWet() {
        List<Zone> zones =
                List.of(PlanBoats.zone("bulb", Zone.Use.BALLAST, TestParts.box(50, -15, -20, 350, 15, 0), false));
        BallastPlan plan = Planner.plan(PlanRequest.of(sealed(0, zones), AFLOAT, Goal.LEAST_MASS));
        assertTrue(plan.feasible(), plan.misses() + " " + plan.rooms());
        assertEquals(889.92 / (1 - 1 / 11.34), plan.addedLeadG(), 1);
        assertTrue(plan.pieces().stream().allMatch(p -> p.inside().isEmpty()));
    }

    @Test
    void ofAnOpenSkinNoneAreFoundAndItIsSaidWhy() {
        Boat closed = PlanBoats.submarine(88, 1250, 0).withZones(List.of());
        assertEquals(List.of(), PlanCheck.before(closed, PlanBoats.WANTED));
        Part hull = TestParts.hull("hull", holed(), new HullBuild.Skin(1.5), 1.2);
        List<Part> parts = new ArrayList<>(closed.parts());
        parts.set(0, hull);
        Boat open = closed.withParts(parts);
        assertEquals(
                List.of(Code.PLAN_ZONES_OPEN_HULL),
                PlanCheck.before(open, PlanBoats.WANTED).stream()
                        .map(Finding::code)
                        .toList());
        List<Part> noHull =
                new ArrayList<>(closed.parts().subList(1, closed.parts().size()));
        assertEquals(
                List.of(Code.PLAN_WITHOUT_ZONES),
                PlanCheck.before(closed.withParts(noHull), PlanBoats.WANTED).stream()
                        .map(Finding::code)
                        .toList());
        assertFalse(ZoneFinder.canFind(open));
    }

    /** A box with a hole of one triangle. */
    private static TriangleMesh holed() {
        TriangleMesh box = Solids.box(0, -60, 0, 800, 60, 110);
        return TriangleMesh.owning(box.xyz().clone(), Arrays.copyOf(box.corners(), box.corners().length - 3));
    }

    /** Where zones overlap, the first has the room. */
    @Test
    void overlappingZonesAreFilledOnce() {
        List<Zone> zones = List.of(
                PlanBoats.zone("a", Zone.Use.BALLAST, TestParts.box(100, -20, 2, 200, 20, 10), false),
                PlanBoats.zone("b", Zone.Use.BALLAST, TestParts.box(150, -20, 2, 260, 20, 10), false));
        List<Room> rooms = Room.of(
                zones,
                sealed(0, zones).pieces(),
                sealed(0, zones).paintedLine().orElseThrow().plane());
        assertEquals(100 * 40 * 8, rooms.get(0).freeMm3(), 1e-6 * 32000);
        // Of the second 100 mm of 110 - 50 are left, less where the battery's underside does not reach: none.
        assertEquals(60 * 40 * 8, rooms.get(1).freeMm3(), 40 * 8 * 1.0);
    }
}
