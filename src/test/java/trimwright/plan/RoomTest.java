package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import trimwright.boat.Zone;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Room against closed forms; errors are those of a grid of about 1 mm, which the result states itself. */
class RoomTest {

    private static Room room(List<Part> parts, Zone zone, double lineMm) {
        Boat boat = new Boat("room", Water.FRESH, Optional.empty(), parts, List.of(zone), Targets.NONE);
        return Room.of(boat.zones(), boat.pieces(), WaterPlane.level(lineMm)).get(0);
    }

    /** A box hull of 2 mm: inside it is 396 × 96 × 56 mm; the line cuts it at 30. */
    @Test
    void insideOfABox() {
        Part hull = TestParts.hull("hull", Solids.box(0, -50, 0, 400, 50, 60), new HullBuild.Skin(2), 1.2);
        Room room = room(
                List.of(hull),
                PlanBoats.zone("all", Zone.Use.FOAM, TestParts.box(-10, -60, -10, 410, 60, 70), false),
                30);
        double slice = 96 * 56;
        assertEquals(396 * slice, room.freeMm3(), room.errorMm3());
        assertTrue(room.errorMm3() < 0.03 * room.freeMm3(), "stated error " + room.errorMm3());
        assertEquals(room.freeMm3() * 28 / 56, room.belowLineMm3(), 1e-6 * room.freeMm3());
        assertEquals(200, room.centroidMm().getX(), 1);
        assertEquals(30, room.centroidMm().getZ(), 1e-6);
        for (RoomCell cell : room.cells()) {
            assertTrue(cell.box().fromMm().getZ() >= 2 - 1e-9);
            assertTrue(cell.box().toMm().getZ() <= 58 + 1e-9);
            assertTrue(Math.abs(cell.box().fromMm().getY()) <= 48 + 1e-9);
        }
    }

    /** A zone with a bar lying through it: its volume less that of the bar. */
    @Test
    void aBarTakesItsRoom() {
        Part bar = TestParts.weighed(
                "bar",
                Kind.CYLINDER,
                new BarShape(TestParts.at(0, 3, 1), TestParts.at(300, 3, 1), 40, BarShape.Ends.FLAT),
                100,
                TestParts.at(150, 0, 0));
        Room room = room(
                List.of(bar), PlanBoats.zone("z", Zone.Use.FOAM, TestParts.box(50, -40, -40, 250, 40, 40), false), 100);
        double expected = 200 * (80 * 80 - Math.PI * 20 * 20);
        // Mid-ordinate rule over 80 columns across: the circle's chord area is off by less than a part in 500.
        assertEquals(expected, room.freeMm3(), 0.002 * expected);
        assertEquals(expected, room.freeMm3(), room.errorMm3());
    }

    /** An ellipsoid of 300 × 80 × 60 mm, sealed with no wall: all of it is room. */
    @Test
    void insideOfAnEllipsoid() {
        TriangleMesh mesh = TestMeshes.ellipsoid(150, 40, 30, 5);
        Part hull = TestParts.hull("hull", mesh, new HullBuild.Skin(1e-6), 1.2);
        Room room = room(
                List.of(hull),
                PlanBoats.zone("z", Zone.Use.FOAM, TestParts.box(-160, -45, -35, 160, 45, 35), false),
                0);
        assertEquals(mesh.signedVolume(), room.freeMm3(), 0.003 * mesh.signedVolume());
        assertEquals(mesh.signedVolume(), room.freeMm3(), room.errorMm3());
        assertEquals(room.belowLineMm3(), room.aboveLineMm3(), 0.003 * mesh.signedVolume());
        assertTrue(room.cellsMm3() < room.freeMm3());
    }

    /** A wall of 20 mm in the middle of a zone 80 mm wide leaves 30 mm on either side: boxes to port and to starboard. */
    @Test
    void bothSidesOfWhatStandsInTheMiddleAreCut() {
        Part wall = TestParts.weighed(
                "wall", Kind.CYLINDER, TestParts.box(-10, -10, -20, 310, 10, 60), 100, TestParts.at(150, 0, 0));
        Room room = room(
                List.of(wall), PlanBoats.zone("z", Zone.Use.FOAM, TestParts.box(0, -40, 0, 300, 40, 12), false), 100);
        double side = 300 * 30 * 12;
        for (boolean starboard : new boolean[] {false, true}) {
            double volume = 0;
            for (RoomCell cell : room.cells()) {
                if (cell.twin() == starboard) {
                    double y = 0.5
                            * (cell.box().fromMm().getY() + cell.box().toMm().getY());
                    assertTrue(starboard ? y < 0 : y > 0, "middle at " + y);
                    assertTrue(Math.abs(cell.box().fromMm().getY()) >= 10
                            && Math.abs(cell.box().toMm().getY()) >= 10);
                    volume += cell.volumeMm3();
                }
            }
            // Half a grid step is kept from the wall.
            assertEquals(side, volume, 0.03 * side);
        }
    }
}
