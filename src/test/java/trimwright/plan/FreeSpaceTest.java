package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.mesh.Bounds;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Upright lines through boxes, by hand. */
class FreeSpaceTest {

    private static final TriangleMesh OUTER = Solids.box(0, -20, 0, 100, 20, 30);

    private static List<Piece> pieces(Part... parts) {
        return new Boat("b", Water.FRESH, Optional.empty(), List.of(parts), List.of(), Targets.NONE).pieces();
    }

    private static Part hull(HullBuild build, TriangleMesh mesh) {
        return TestParts.hull("hull", mesh, build, 1.2);
    }

    private static FreeSpace flooded(Part... parts) {
        return FreeSpace.of(pieces(parts), Optional.empty(), Set.of());
    }

    private static List<Double> column(FreeSpace space, double x, double y) {
        Stretches column = space.column(x, y, -10, 40);
        List<Double> ends = new ArrayList<>();
        for (int i = 0; i < column.count(); i++) {
            ends.add(1e-6 * Math.rint(1e6 * column.low(i)));
            ends.add(1e-6 * Math.rint(1e6 * column.high(i)));
        }
        return ends;
    }

    @Test
    void insideASkin() {
        FreeSpace space = flooded(hull(new HullBuild.Skin(2), OUTER));
        assertTrue(space.hasWalls());
        assertTrue(space.insideKnown());
        assertEquals(Optional.empty(), space.container());
        assertEquals(List.of(2.0, 28.0), column(space, 50, 3));
        assertEquals(List.of(), column(space, 1, 3));
        assertEquals(List.of(), column(space, 50, -19));
        assertEquals(List.of(), column(space, 110, 3));
        // Without a thickness there is no wall.
        assertEquals(List.of(0.0, 30.0), column(flooded(hull(new HullBuild.Skin(0), OUTER)), 50, 3));
    }

    /** Of an open skin only its material is taken: its inside is not known. */
    @Test
    void anOpenSkin() {
        // The last two triangles are the end at the bow.
        TriangleMesh open =
                TriangleMesh.owning(OUTER.xyz().clone(), Arrays.copyOf(OUTER.corners(), OUTER.corners().length - 6));
        FreeSpace space = flooded(hull(new HullBuild.Skin(2), open));
        assertTrue(space.hasWalls());
        assertFalse(space.insideKnown());
        assertEquals(List.of(-10.0, 0.0, 2.0, 28.0, 30.0, 40.0), column(space, 50, 3));
        assertEquals(List.of(-10.0, 40.0), column(space, 110, 3));
    }

    /** A print of walls 3 mm thick with a bulkhead: what lies between its outer surfaces and is not plastic. */
    @Test
    void aPrintThatEnclosesItsMaterial() {
        TriangleMesh aft = Solids.box(3, -17, 3, 48, 17, 27).flipped();
        TriangleMesh fore = Solids.box(52, -17, 3, 97, 17, 12).flipped();
        TriangleMesh over = Solids.box(52, -17, 15, 97, 17, 27).flipped();
        TriangleMesh mesh = TestMeshes.together(TestMeshes.together(OUTER, aft), TestMeshes.together(fore, over));
        FreeSpace space = flooded(hull(new HullBuild.Printed(Optional.empty()), mesh));
        assertTrue(space.insideKnown());
        assertEquals(List.of(3.0, 27.0), column(space, 20, 3));
        assertEquals(List.of(3.0, 12.0, 15.0, 27.0), column(space, 70, 3));
        assertEquals(List.of(), column(space, 50, 3));
        assertEquals(List.of(), column(space, 110, 3));
    }

    /** A hull with a tower on it: one room, less the material between. */
    @Test
    void twoHullsAreOneRoom() {
        Part tower = TestParts.hull("tower", Solids.box(40, -5, 20, 60, 5, 36), new HullBuild.Skin(1), 1.2);
        FreeSpace space = flooded(hull(new HullBuild.Skin(2), OUTER), tower);
        assertEquals(List.of(2.0, 20.0, 21.0, 28.0, 30.0, 35.0), column(space, 50, 3));
        // Two hulls one over the other leave nothing between them.
        Part upper = TestParts.hull("upper", Solids.box(0, -20, 34, 100, 20, 50), new HullBuild.Skin(1), 1.2);
        assertEquals(List.of(2.0, 28.0, 35.0, 40.0), column(flooded(hull(new HullBuild.Skin(2), OUTER), upper), 50, 3));
    }

    @Test
    void partsTakeTheirRoomUnlessLeftOut() {
        Part box = TestParts.weighed("box", Kind.FITTING, TestParts.box(40, -5, 5, 60, 5, 9), 1, TestParts.at(0, 0, 0));
        BarShape shape = new BarShape(TestParts.at(0, 0, 20), TestParts.at(100, 0, 20), 10, BarShape.Ends.FLAT);
        Part bar = TestParts.weighed("bar", Kind.CYLINDER, shape, 1, TestParts.at(0, 0, 0));
        Part dry = TestParts.inside(
                "bar",
                TestParts.weighed(
                        "dry", Kind.FITTING, TestParts.box(0, -20, 0, 100, 20, 30), 1, TestParts.at(0, 0, 0)));
        List<Piece> all = pieces(hull(new HullBuild.Skin(2), OUTER), box, bar, dry);
        FreeSpace space = FreeSpace.of(all, Optional.empty(), Set.of());
        // At 3 mm from the bar's axis its chord is 4 mm up and down.
        assertEquals(List.of(2.0, 5.0, 9.0, 16.0, 24.0, 28.0), column(space, 50, 3));
        assertEquals(List.of(2.0, 16.0, 24.0, 28.0), column(space, 39, 3));
        assertEquals(List.of(2.0, 5.0, 9.0, 15.0, 25.0, 28.0), column(space, 60, 0));
        assertEquals(List.of(2.0, 28.0), column(space, 60, 5.5));
        assertEquals(List.of(2.0, 28.0), column(space, 61, -6));
        assertEquals(List.of(2.0, 16.0, 24.0, 28.0), column(FreeSpace.of(all, Optional.empty(), Set.of("box")), 50, 3));
        assertEquals(List.of("box", "bar"), space.bodiesIn(new Bounds(0, -20, 0, 100, 20, 30)));
        assertEquals(List.of("bar"), space.bodiesIn(new Bounds(0, -20, 9, 100, 20, 30)));
        assertEquals(List.of("box"), space.bodiesIn(new Bounds(0, -20, 0, 100, 20, 15)));
        assertEquals(List.of("bar"), space.bodiesIn(new Bounds(0, -20, 0, 40, 20, 30)));
        assertEquals(List.of(), space.bodiesIn(new Bounds(0, 5, 0, 100, 20, 30)));
    }

    /** A compact piece of 4/3 π 6³ mm³ is a ball of 6 mm; one whose volume is not known takes nothing. */
    @Test
    void compactPiecesAreBalls() {
        Part lead = TestParts.twice(TestParts.compact(
                "lead", Kind.BALLAST, 4 / 3.0 * Math.PI * 216 / 100, Optional.of(10.0), TestParts.at(50, 3, 15)));
        Part motor = TestParts.compact("motor", 100.0, TestParts.at(50, 3, 15));
        FreeSpace space = flooded(hull(new HullBuild.Skin(2), OUTER), lead, motor);
        assertEquals(List.of(2.0, 9.0, 21.0, 28.0), column(space, 50, 3));
        assertEquals(List.of(2.0, 9.0, 21.0, 28.0), column(space, 50, -3));
        double half = Math.sqrt(36 - 16);
        assertEquals(
                List.of(2.0, 1e-6 * Math.rint(1e6 * (15 - half)), 1e-6 * Math.rint(1e6 * (15 + half)), 28.0),
                column(space, 54, -3));
    }

    /** The inside of a watertight hull, and of a box that holds others, with what stands in it; the water is elsewhere. */
    @Test
    void theInsideOfWatertightParts() {
        Part battery = TestParts.inside(
                "hull",
                TestParts.weighed(
                        "battery", Kind.FITTING, TestParts.box(40, -5, 5, 60, 5, 9), 1, TestParts.at(0, 0, 0)));
        Part keel =
                TestParts.weighed("keel", Kind.FITTING, TestParts.box(40, -5, -5, 60, 5, 0), 1, TestParts.at(0, 0, 0));
        List<Piece> boat = pieces(hull(new HullBuild.Sealed(Optional.of(2.0)), OUTER), battery, keel);
        FreeSpace dry = FreeSpace.of(boat, Optional.of("hull"), Set.of());
        assertTrue(dry.insideKnown());
        assertEquals(Optional.of("hull"), dry.container());
        assertEquals(List.of(2.0, 5.0, 9.0, 28.0), column(dry, 50, 3));
        FreeSpace wet = FreeSpace.of(boat, Optional.empty(), Set.of());
        assertFalse(wet.hasWalls());
        assertFalse(wet.insideKnown());
        assertEquals(List.of(-10.0, -5.0, 30.0, 40.0), column(wet, 50, 3));
        assertFalse(FreeSpace.floods(battery));
        assertFalse(FreeSpace.floods(boat.get(0).part()));
        assertTrue(FreeSpace.floods(hull(new HullBuild.Skin(2), OUTER)));
        Part box = TestParts.weighed(
                "box", Kind.CYLINDER, TestParts.box(0, -20, 0, 100, 20, 30), 1, TestParts.at(0, 0, 0));
        FreeSpace within = FreeSpace.of(pieces(box, TestParts.inside("box", battery)), Optional.of("box"), Set.of());
        assertTrue(within.hasWalls());
        assertTrue(within.insideKnown());
        assertEquals(List.of(0.0, 5.0, 9.0, 30.0), column(within, 50, 3));
        assertEquals(List.of(), column(within, 110, 3));
        assertEquals(List.of(), column(within, 50, 21));
    }
}
