package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.boat.Zone;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;
import trimwright.mesh.Solids;

/** Zones with boxes standing in them whose sides lie on the grid of 1 mm, so that everything comes out exactly as by hand. */
class RoomSurveyTest {

    private static Part stands(String id, double x0, double y0, double z0, double x1, double y1, double z1) {
        return TestParts.weighed(id, Kind.FITTING, TestParts.box(x0, y0, z0, x1, y1, z1), 1, TestParts.at(0, 0, 0));
    }

    private static List<Room> rooms(List<Zone> zones, WaterPlane line, Part... parts) {
        Boat boat = new Boat("b", Water.FRESH, Optional.empty(), List.of(parts), zones, Targets.NONE);
        return Room.of(zones, boat.pieces(), line);
    }

    private static Zone zone(Zone.Use use, BoxShape box) {
        return PlanBoats.zone("z", use, box, false);
    }

    private static Room room(BoxShape box, double lineMm, Part... parts) {
        return rooms(List.of(zone(Zone.Use.FOAM, box)), WaterPlane.level(lineMm), parts)
                .get(0);
    }

    /** A zone of 96 × 20 × 36 mm: twelve slices of 8 mm, two layers of 10 mm below the line and one of 16 above; a box stands in the sixth slice. */
    @Test
    void slicesLayersAndSums() {
        Room room = room(TestParts.box(0, -10, 0, 96, 10, 36), 20, stands("box", 40, -10, 0, 48, 10, 5));
        assertEquals(96 * 20 * 20 - 8 * 20 * 5, room.belowLineMm3(), 1e-6);
        assertEquals(96 * 20 * 16, room.aboveLineMm3(), 1e-6);
        assertEquals(96 * 20 * 36 - 8 * 20 * 5, room.freeMm3(), 1e-6);
        double whole = 96 * 20 * 36;
        assertEquals((whole * 48 - 800 * 44) / (whole - 800), room.centroidMm().getX(), 1e-9);
        assertEquals(0, room.centroidMm().getY(), 1e-9);
        assertEquals((whole * 18 - 800 * 2.5) / (whole - 800), room.centroidMm().getZ(), 1e-9);
        // Columns differ by 5 mm along two sides of 20 mm; half a step of 1 mm.
        assertEquals(0.5 * 2 * 20 * 5, room.errorMm3(), 1e-9);
        assertEquals(12, room.slices().size());
        for (int s = 0; s < 12; s++) {
            Room.Slice slice = room.slices().get(s);
            assertEquals(8 * s, slice.fromXMm(), 1e-9);
            assertEquals(8 * s + 8, slice.toXMm(), 1e-9);
            double below = 8 * 10 * (s == 5 ? 15 : 20);
            assertEquals(below, slice.portBelowMm3(), 1e-9);
            assertEquals(below, slice.starboardBelowMm3(), 1e-9);
            assertEquals(1280, slice.portAboveMm3(), 1e-9);
            assertEquals(1280, slice.starboardAboveMm3(), 1e-9);
            assertEquals(2 * below + 2560, slice.freeMm3(), 1e-9);
        }
        assertEquals(36, room.cells().size());
        assertEquals(room.freeMm3(), room.cellsMm3(), 1e-6);
        for (RoomCell cell : room.cells()) {
            double[] heights = {0, 10, 20, 36};
            double bottom = cell.slice() == 5 && cell.layer() == 0 ? 5 : heights[cell.layer()];
            assertEquals(
                    TestParts.box(8 * cell.slice(), -10, bottom, 8 * cell.slice() + 8, 10, heights[cell.layer() + 1]),
                    cell.box());
            assertEquals(cell.layer() < 2, cell.belowLine());
            assertEquals("z", cell.zone());
        }
        assertEquals(List.of("box"), room.takenBy());
        assertEquals(false, room.insideKnown());
    }

    @Test
    void portAndStarboardAreToldApart() {
        Room room = room(TestParts.box(0, -10, 0, 8, 10, 10), 4, stands("box", 0, 2, 0, 8, 6, 7));
        Room.Slice slice = room.slices().get(0);
        assertEquals(1, room.slices().size());
        assertEquals(8 * 6 * 4, slice.portBelowMm3(), 1e-9);
        assertEquals(8 * (10 * 6 - 4 * 3), slice.portAboveMm3(), 1e-9);
        assertEquals(8 * 10 * 4, slice.starboardBelowMm3(), 1e-9);
        assertEquals(8 * 10 * 6, slice.starboardAboveMm3(), 1e-9);
        // Two sides of 8 mm, 7 high.
        assertEquals(0.5 * 2 * 8 * 7, room.errorMm3(), 1e-9);
    }

    /** At most sixteen slices, at least one; at most six layers of about 12 mm, none of less than 2.5 mm. */
    @ParameterizedTest
    @CsvSource({
        "300, 36, 0, 16, 3",
        "7, 36, 0, 1, 3",
        "24, 36, 0, 3, 3",
        "24, 29, 0, 3, 2",
        "24, 120, 0, 3, 6",
        "24, 2.5, 0, 3, 1",
        "24, 2.4, 0, 3, 0",
        "24, 36, 2, 3, 3",
        "24, 36, 36, 3, 3",
        "24, 36, 40, 3, 3",
        "24, 36, 35, 3, 3"
    })
    void howManyPieces(double length, double height, double line, int slices, int layers) {
        Room room = room(TestParts.box(0, 0, 0, length, 10, height), line);
        assertEquals(slices, room.slices().size());
        assertEquals(
                slices * layers,
                room.cells().stream()
                        .map(c -> c.slice() + 100 * c.layer())
                        .distinct()
                        .count());
        assertEquals(length * 10 * height, room.freeMm3(), 1e-6 * room.freeMm3());
    }

    /** A long wide zone has coarser columns, and the room in it is as large as by hand to what it says. */
    @Test
    void aLargeZone() {
        Room room = room(TestParts.box(0, -100, 0, 640, 100, 10), 20, stands("box", 100.3, -50.7, 0, 200.9, 60.1, 4));
        double free = 640 * 200 * 10 - 100.6 * 110.8 * 4;
        assertEquals(free, room.freeMm3(), room.errorMm3());
        assertTrue(room.errorMm3() < 0.01 * free, "stated " + room.errorMm3());
    }

    /** A line that slants 1 in 8 along the boat, from 10 to 22 mm: what lies below it, by the trapezium; cells keep below its lowest and above its highest corner. */
    @Test
    void aSlantedLine() {
        WaterPlane line = WaterPlane.of(TestParts.at(-1, 0, 8).normalize(), 10 * 8 / Math.sqrt(65));
        Room room = rooms(List.of(zone(Zone.Use.FOAM, TestParts.box(0, -10, 0, 96, 10, 36))), line)
                .get(0);
        assertEquals(10, Room.heightAt(line, 0, 3), 1e-9);
        assertEquals(22, Room.heightAt(line, 96, -7), 1e-9);
        assertEquals(96 * 20 * 16, room.belowLineMm3(), 1e-6);
        assertEquals(96 * 20 * 20, room.aboveLineMm3(), 1e-6);
        for (RoomCell cell : room.cells()) {
            assertTrue(
                    cell.belowLine()
                            ? cell.box().toMm().getZ() <= 10 + 1e-9
                            : cell.box().fromMm().getZ() >= 22 - 1e-9,
                    cell.toString());
        }
        assertEquals(96 * 20 * (10 + 14), room.cellsMm3(), 1e-6);
        double[] across = Room.heightsOver(
                WaterPlane.of(TestParts.at(0, -1, 4).normalize(), 10 * 4 / Math.sqrt(17)),
                new Bounds(0, -8, 0, 96, 12, 36));
        double[] other = Room.heightsOver(
                WaterPlane.of(TestParts.at(1, 1, 4).normalize(), 40 / Math.sqrt(18)), new Bounds(0, -8, 0, 16, 12, 36));
        assertEquals(10 - 3 - 4, other[0], 1e-9);
        assertEquals(10 + 2, other[1], 1e-9);
        assertEquals(8, across[0], 1e-9);
        assertEquals(13, across[1], 1e-9);
    }

    /** What is left beside a box is cut where it is 2.5 mm wide or high, and not where it is less. */
    @ParameterizedTest
    @CsvSource({"7, 1", "8, 0"})
    void narrowRemainders(double toY, int cells) {
        // Boxes end in the middle of the first column beside: of 3 mm 2.5 are left.
        assertEquals(
                cells,
                room(TestParts.box(0, 0, 0, 8, 10, 12), 20, stands("b", 0, 0, 0, 8, toY, 12))
                        .cells()
                        .size());
    }

    private static boolean isFree(List<BoxShape> boxes, double y0, double y1, double z0, double z1) {
        for (BoxShape b : boxes) {
            if (b.fromMm().getY() < y1
                    && b.toMm().getY() > y0
                    && b.fromMm().getZ() < z1
                    && b.toMm().getZ() > z0) {
                return false;
            }
        }
        return true;
    }

    /**
     * Three boxes that stand or hang across one slice: the largest rectangle that is free, by trying every one between the middles of columns and the edges of
     * boxes. They stand in one half and hang in the other, so that none parts a column.
     */
    @Test
    void theLargestFreeBox() {
        Random random = new Random(3);
        int found = 0;
        for (int n = 0; n < 60; n++) {
            List<BoxShape> boxes = new ArrayList<>();
            List<Part> parts = new ArrayList<>();
            TreeSet<Double> heights = new TreeSet<>(List.of(0.0, 12.0));
            for (int i = 0; i < 3; i++) {
                boolean stands = random.nextBoolean();
                int width = 1 + random.nextInt(6);
                int y = stands ? random.nextInt(10 - width) : 10 + random.nextInt(10 - width);
                int height = 1 + random.nextInt(11);
                int z = stands ? 0 : 12 - height;
                Part part = stands("b" + i, -5, y, z, 13, y + width, z + height);
                parts.add(part);
                boxes.add((BoxShape) part.shape().orElseThrow());
                heights.add((double) z);
                heights.add(Math.min(12.0, z + height));
            }
            double best = 0;
            for (double low : heights) {
                for (double high : heights.tailSet(low + 2.5)) {
                    for (int from = 0; from < 20; from++) {
                        for (int to = from; to < 20; to++) {
                            double y0 = from == 0 ? 0 : from + 0.5;
                            double y1 = to == 19 ? 20 : to + 0.5;
                            // The columns that it touches must be free.
                            if (y1 - y0 >= 2.5 && isFree(boxes, from, to + 1, low, high)) {
                                best = Math.max(best, (y1 - y0) * (high - low));
                            }
                        }
                    }
                }
            }
            Room room = room(TestParts.box(0, 0, 0, 8, 20, 12), 50, parts.toArray(Part[]::new));
            assertEquals(8 * best, room.cellsMm3(), 1e-6, boxes.toString());
            for (RoomCell cell : room.cells()) {
                found++;
                BoxShape b = cell.box();
                assertTrue(isFree(
                        boxes,
                        b.fromMm().getY(),
                        b.toMm().getY(),
                        b.fromMm().getZ(),
                        b.toMm().getZ()));
            }
        }
        assertTrue(found > 50, "cells found: " + found);
    }

    /** 30.5 mm across are 31 columns, each 0.9839 mm wide; ten of them are taken, over half the slice and from 5 to 9 mm up. Layers are cut from the bottom of the zone, 10 mm up. */
    @Test
    void columnsThatAreNotWholeMm() {
        double step = 30.5 / 31;
        Room room = room(TestParts.box(0, 2, 10, 8, 32.5, 46), 3, stands("box", -1, -1, 15, 4, 2 + 10 * step, 19));
        assertEquals(8 * 30.5 * 36 - 4 * 10 * step * 4, room.freeMm3(), 1e-6);
        // Ten columns differ by 4 mm from those ahead of them, and four from those beside them.
        assertEquals(0.5 * 1 * step * (10 * 4 + 4 * 4), room.errorMm3(), 1e-6);
        List<BoxShape> boxes = room.cells().stream().map(RoomCell::box).toList();
        assertEquals(3, boxes.size());
        // Beside the box, from the middle of the first free column; over and under it the layer is free.
        double beside = 2 + 10.5 * step;
        assertEquals(0, TestParts.at(0, beside, 10).distance(boxes.get(0).fromMm()), 1e-9);
        assertEquals(0, TestParts.at(8, 32.5, 22).distance(boxes.get(0).toMm()), 1e-9);
        assertEquals(TestParts.box(0, 2, 22, 8, 32.5, 34), boxes.get(1));
        assertEquals(TestParts.box(0, 2, 34, 8, 32.5, 46), boxes.get(2));
    }

    /** A step along the slice is free only as far as in all of its columns. */
    @Test
    void theWholeLengthOfASliceIsFree() {
        Room room = room(
                TestParts.box(0, 0, 0, 8, 10, 12),
                50,
                stands("low", 0, 0, 0, 4, 10, 3),
                stands("high", 4, 0, 8, 8, 10, 12));
        assertEquals(
                List.of(TestParts.box(0, 0, 3, 8, 10, 8)),
                room.cells().stream().map(RoomCell::box).toList());
        // Of two stretches the longer, also where the other begins lower.
        Room shelf = room(TestParts.box(0, 0, 0, 8, 10, 12), 50, stands("shelf", 3, 0, 4, 5, 10, 5));
        assertEquals(
                List.of(TestParts.box(0, 0, 5, 8, 10, 12)),
                shelf.cells().stream().map(RoomCell::box).toList());
    }

    /** Boxes on either side of a wall are cut where together they hold a fifth more than one across: 2 · 7.5 · 12 beside the wall, 20 · (12 − height) over it. */
    @ParameterizedTest
    @CsvSource({"5, 1", "4, 1", "6, 2"})
    void cutApartWhereItIsWorthIt(double height, int cells) {
        Room room = room(TestParts.box(0, -10, 0, 8, 10, 12), 50, stands("wall", -1, -2, 0, 9, 2, height));
        // 180 against 20 · (12 − 5) = 140: 1.286 times as much; 160: 1.125.
        assertEquals(height == 4 ? 1 : 2, room.cells().size());
        if (height != 4) {
            assertEquals(1, room.cells().stream().filter(RoomCell::twin).count());
            assertEquals(8 * 2 * 7.5 * 12, room.cellsMm3(), 1e-6);
        }
    }

    @Test
    void twinsAndZonesToOneSideAreCutInOne() {
        Zone side = PlanBoats.zone("side", Zone.Use.FOAM, TestParts.box(0, 3, 0, 8, 13, 12), true);
        List<Room> rooms = rooms(List.of(side), WaterPlane.level(50));
        assertEquals(List.of(false, true), rooms.stream().map(Room::twin).toList());
        assertEquals(
                TestParts.box(0, 3, 0, 8, 13, 12), rooms.get(0).cells().get(0).box());
        assertEquals(
                TestParts.box(0, -13, 0, 8, -3, 12), rooms.get(1).cells().get(0).box());
        assertEquals(true, rooms.get(1).cells().get(0).twin());
        for (double y : new double[] {3, -13}) {
            Room one = room(TestParts.box(0, y, 0, 8, y + 10, 12), 50);
            assertEquals(1, one.cells().size());
            assertEquals(false, one.cells().get(0).twin());
        }
    }

    /** The part of a zone that an earlier one covers is the earlier one's, upright and across; so is that of a zone's twin. */
    @Test
    void theFirstZoneHasTheRoom() {
        List<Zone> zones = List.of(
                PlanBoats.zone("a", Zone.Use.FOAM, TestParts.box(0, 0, 0, 16, 10, 12), true),
                PlanBoats.zone("b", Zone.Use.BALLAST, TestParts.box(8, -20, 4, 24, 20, 8), false));
        List<Room> rooms = rooms(zones, WaterPlane.level(50));
        assertEquals(16 * 10 * 12, rooms.get(0).freeMm3(), 1e-6);
        assertEquals(16 * 10 * 12, rooms.get(1).freeMm3(), 1e-6);
        assertEquals((16 * 40 - 8 * 20) * 4, rooms.get(2).freeMm3(), 1e-6);
        assertEquals("b", rooms.get(2).zone().id());
        List<Zone> aside = List.of(
                PlanBoats.zone("a", Zone.Use.FOAM, TestParts.box(4, 1, 0, 12, 11, 12), false),
                PlanBoats.zone("b", Zone.Use.FOAM, TestParts.box(0, -20, 4, 24, 20, 8), false));
        Room second = rooms(aside, WaterPlane.level(50)).get(1);
        assertEquals((24 * 40 - 8 * 10) * 4, second.freeMm3(), 1e-6);
        assertEquals(
                (24 * 40 * 12 - 80 * 8) / (24 * 40 - 80.0), second.centroidMm().getX(), 1e-9);
        assertEquals(-80 * 6 / (24 * 40 - 80.0), second.centroidMm().getY(), 1e-9);
    }

    /** Dry room of a watertight hull: lead may lie there, foam is of no use; a zone outside of her is wet, and one that reaches into her and out of her is dry only. */
    @Test
    void watertightHulls() {
        Part hull =
                TestParts.hull("hull", Solids.box(0, -20, 0, 80, 20, 30), new HullBuild.Sealed(Optional.of(2.0)), 1.2);
        BoxShape within = TestParts.box(10, -10, 0, 26, 10, 12);
        BoxShape under = TestParts.box(10, -10, -12, 26, 10, 0);
        BoxShape both = TestParts.box(10, -10, -12, 26, 10, 12);
        for (Zone.Use use : Zone.Use.values()) {
            Room dry = rooms(List.of(zone(use, within)), WaterPlane.level(50), hull)
                    .get(0);
            assertEquals(Optional.of("hull"), dry.inside());
            assertEquals(16 * 20 * 10, dry.freeMm3(), 1e-6);
            assertEquals(use == Zone.Use.FOAM, dry.cells().isEmpty());
            assertTrue(dry.insideKnown());
            List<Room> wet = rooms(List.of(zone(use, under)), WaterPlane.level(50), hull);
            assertEquals(1, wet.size());
            assertEquals(Optional.empty(), wet.get(0).inside());
            assertEquals(16 * 20 * 12, wet.get(0).freeMm3(), 1e-6);
            List<Room> over = rooms(List.of(zone(use, both)), WaterPlane.level(50), hull);
            assertEquals(
                    List.of(Optional.of("hull")),
                    over.stream().map(Room::inside).toList());
        }
        // Full to the last corner: told of the hull that it lies in, at the middle of the zone.
        Part lump = new Part(
                "lump",
                Kind.FITTING,
                Optional.of(TestParts.box(0, -20, 0, 80, 20, 30)),
                Optional.empty(),
                Optional.of(1.0),
                Optional.empty(),
                Optional.empty(),
                Optional.of("hull"),
                false,
                0);
        Part keel = stands("keel", 0, -20, -20, 80, 20, 0);
        List<Room> full = rooms(List.of(zone(Zone.Use.BALLAST, both)), WaterPlane.level(50), hull, lump, keel);
        assertEquals(1, full.size());
        assertEquals(0, full.get(0).freeMm3());
        assertEquals(List.of(), full.get(0).cells());
        assertEquals(Optional.of("hull"), full.get(0).inside());
        assertEquals(TestParts.at(18, 0, 0), full.get(0).centroidMm());
        assertEquals(List.of("lump"), full.get(0).takenBy());
    }

    /** A zone through a flooded hull and a watertight one beside it has room in both. */
    @Test
    void floodedAndWatertight() {
        Part dry = TestParts.hull("dry", Solids.box(0, 0, 0, 80, 20, 30), new HullBuild.Sealed(Optional.of(1.0)), 1.2);
        Part wet = TestParts.hull("wet", Solids.box(0, -20, 0, 80, 0, 30), new HullBuild.Skin(1), 1.2);
        List<Room> rooms = rooms(
                List.of(zone(Zone.Use.BALLAST, TestParts.box(8, -30, 0, 24, 30, 30))), WaterPlane.level(50), dry, wet);
        assertEquals(
                List.of(Optional.empty(), Optional.of("dry")),
                rooms.stream().map(Room::inside).toList());
        assertEquals(16 * 18 * 28, rooms.get(0).freeMm3(), 1e-6);
        assertEquals(16 * 18 * 28, rooms.get(1).freeMm3(), 1e-6);
    }
}
