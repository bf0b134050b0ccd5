package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestParts;
import trimwright.boat.BoxShape;
import trimwright.boat.Zone;

/** Strips out of cells of 10 × 8 × 5 mm, each by hand. A run must hold five quarters of what goes in. */
class StripMakerTest {

    private static final StripMaker.Style ONE = new StripMaker.Style(0, false, false, 1);
    private static final StripMaker.Style THREE = new StripMaker.Style(0, false, false, 3);
    private static final StripMaker.Style APART = new StripMaker.Style(0, true, false, 1);

    private static RoomCell cell(Zone.Use use, int slice, int layer, BoxShape box) {
        return new RoomCell("z", use, false, Optional.empty(), slice, layer, box, true);
    }

    private static RoomCell cell(int slice, int layer) {
        return cell(Zone.Use.BALLAST, slice, layer, box(slice, 5 * layer, 4, 5));
    }

    /** Over one slice. */
    private static BoxShape box(int slice, double z, double halfWidth, double height) {
        return TestParts.box(10 * slice, -halfWidth, z, 10 * slice + 10, halfWidth, z + height);
    }

    private static List<RoomCell> grid(Zone.Use use, int slices, int layers) {
        List<RoomCell> cells = new ArrayList<>();
        for (int layer = 0; layer < layers; layer++) {
            for (int slice = 0; slice < slices; slice++) {
                cells.add(cell(use, slice, layer, box(slice, 5 * layer, 4, 5)));
            }
        }
        return cells;
    }

    private static List<Strip> strips(List<RoomCell> cells, double[] amounts, StripMaker.Style style) {
        return StripMaker.strips(cells, amounts, 0.01134, 0.00003, 50, style);
    }

    /** An amount spread evenly over all cells. */
    private static List<Strip> spread(List<RoomCell> cells, double amountMm3, StripMaker.Style style) {
        double[] amounts = new double[cells.size()];
        Arrays.fill(amounts, amountMm3 / cells.size());
        return strips(cells, amounts, style);
    }

    /** An amount in one cell. */
    private static List<Strip> in(int cell, List<RoomCell> cells, double amountMm3, StripMaker.Style style) {
        double[] amounts = new double[cells.size()];
        amounts[cell] = amountMm3;
        return strips(cells, amounts, style);
    }

    private static void near(BoxShape expected, BoxShape found) {
        assertEquals(0, expected.fromMm().distance(found.fromMm()), 1e-9, found.toString());
        assertEquals(0, expected.toMm().distance(found.toMm()), 1e-9, found.toString());
    }

    /** A layer of four cells holds 1600 mm³, 1280 with a quarter to spare. */
    @ParameterizedTest
    @CsvSource({"1280, 1", "1281, 2", "2560, 2", "2561, 3", "4800, 3"})
    void leadLiesLowestAndFoamHighest(double amount, int layers) {
        Strip lead = spread(grid(Zone.Use.BALLAST, 4, 3), amount, ONE).get(0);
        near(TestParts.box(0, -4, 0, 40, 4, 5 * layers), lead.run);
        assertEquals(amount, lead.volumeMm3(), 1e-9);
        assertEquals(20, lead.centreXMm(), 1e-9);
        assertEquals(0.01134 * amount, lead.massG(), 1e-9);
        Strip foam = spread(grid(Zone.Use.FOAM, 4, 3), amount, ONE).get(0);
        near(TestParts.box(0, -4, 15 - 5 * layers, 40, 4, 15), foam.run);
        assertEquals(0.00003 * amount, foam.massG(), 1e-9);
    }

    /** The strip lies about the middle of what it takes over: of 300 mm³ in the second cell and 100 in the fourth that is at x = 20. */
    @Test
    void itLiesWhereTheAmountsWere() {
        Strip strip = strips(grid(Zone.Use.BALLAST, 4, 1), new double[] {0, 300, 0, 100}, ONE)
                .get(0);
        assertEquals(20, strip.centreXMm(), 1e-9);
        assertEquals(400, strip.volumeMm3(), 1e-9);
        assertEquals("z", strip.zone);
        assertEquals(Zone.Use.BALLAST, strip.use);
    }

    /**
     * A gap parts the zone into a run of two cells, where the amount is wanted, and one of four that begins 25 mm from there. The near one holds 800 mm³; the far one
     * counts for five quarters of the amount ∕ (1 + 25 ∕ 40): more than that from 1040 mm³ on.
     */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aRunFartherOffMustHoldMore(boolean turned) {
        List<RoomCell> cells = new ArrayList<>();
        for (int slice : new int[] {0, 1, 3, 4, 5, 6}) {
            cells.add(cell(turned ? 6 - slice : slice, 0));
        }
        List<Strip> near = in(0, cells, 1030, THREE);
        assertEquals(2, near.size());
        near(turned ? box(50, 70) : box(0, 20), near.get(0).run);
        assertEquals(800, near.get(0).volumeMm3(), 1e-9);
        near(turned ? box(0, 40) : box(30, 70), near.get(1).run);
        assertEquals(230, near.get(1).volumeMm3(), 1e-9);
        // As near to where it is wanted as its run allows: 230 mm³ are 5.75 mm long.
        double centre = 30 + 5.75 / 2;
        assertEquals(turned ? 70 - centre : centre, near.get(1).centreXMm(), 1e-9);
        List<Strip> far = in(0, cells, 1050, THREE);
        assertEquals(1, far.size());
        near(turned ? box(0, 40) : box(30, 70), far.get(0).run);
        assertEquals(1050, far.get(0).volumeMm3(), 1e-9);
        double end = 30 + 1050 / 40.0 / 2;
        assertEquals(turned ? 70 - end : end, far.get(0).centreXMm(), 1e-9);
    }

    private static BoxShape box(double fromX, double toX) {
        return TestParts.box(fromX, -4, 0, toX, 4, 5);
    }

    /** Of two runs as near and as large the one farther from the middle of the boat's height is taken. */
    @ParameterizedTest
    @CsvSource({"50, 0", "-50, 30"})
    void aRunFarFromTheMiddleIsWorthMore(double middleZ, double fromX) {
        List<RoomCell> cells = new ArrayList<>();
        for (int slice : new int[] {0, 1, 3, 4}) {
            cells.add(cell(Zone.Use.BALLAST, slice, 0, box(slice, slice > 2 ? 10 : 0, 4, 5)));
        }
        Strip strip = StripMaker.strips(cells, new double[] {0, 50, 50, 0}, 0.01134, 0.00003, middleZ, ONE)
                .get(0);
        assertEquals(fromX, strip.run.fromMm().getX(), 1e-9);
    }

    /** A run goes on while three quarters of the section it began with are free: four cells 8 mm wide and a fifth at either end of them. */
    @ParameterizedTest
    @CsvSource({"6, 3, 50", "5.9, 4, 40"})
    void aRunMayShrinkByAQuarter(double last, double halfWidth, double length) {
        List<RoomCell> ahead = new ArrayList<>(grid(Zone.Use.BALLAST, 4, 1));
        ahead.add(cell(Zone.Use.BALLAST, 4, 0, box(4, 0, last / 2, 5)));
        near(
                TestParts.box(0, -halfWidth, 0, length, halfWidth, 5),
                in(0, ahead, 1600, ONE).get(0).run);
        List<RoomCell> astern = new ArrayList<>();
        astern.add(cell(Zone.Use.BALLAST, 0, 0, box(0, 0, last / 2, 5)));
        for (int slice = 1; slice < 5; slice++) {
            astern.add(cell(slice, 0));
        }
        near(
                TestParts.box(50 - length, -halfWidth, 0, 50, halfWidth, 5),
                in(4, astern, 1600, ONE).get(0).run);
    }

    /** Down to tenths below 10 mm, to halves from there; lead stays on the bottom of its run, foam under the top, both in the middle. */
    @ParameterizedTest
    @CsvSource({"8.7, 8.7", "8.79, 8.7", "9.97, 9.9", "10, 10", "10.49, 10", "12.5, 12.5", "12.7, 12.5"})
    void sectionsCanBeMeasured(double free, double cut) {
        for (Zone.Use use : Zone.Use.values()) {
            BoxShape room = TestParts.box(0, 1, 20, 10, 1 + free, 20 + free);
            Strip strip = in(0, List.of(cell(use, 0, 0, room)), 10, ONE).get(0);
            double z = use == Zone.Use.BALLAST ? 20 : 20 + free - cut;
            double middle = 1 + free / 2;
            near(TestParts.box(0, middle - cut / 2, z, 10, middle + cut / 2, z + cut), strip.run);
        }
    }

    /**
     * Two layers that touch are cut as one where what they share is more than the larger of them: 8 × 5 mm below, and above it a narrower one of 5 mm that shares all its
     * width.
     */
    @ParameterizedTest
    @CsvSource({"4.2, 5, 4.2, 10", "4, 5, 8, 5", "4.2, 5.1, 8, 5", "3.9, 5, 8, 5"})
    void layersAreStacked(double upperWidth, double upperZ, double width, double height) {
        for (boolean upperFirst : new boolean[] {false, true}) {
            List<RoomCell> cells = new ArrayList<>();
            cells.add(cell(0, 0));
            BoxShape above = TestParts.box(0, -upperWidth / 2, upperZ, 10, upperWidth / 2, upperZ + 5);
            cells.add(upperFirst ? 0 : 1, cell(Zone.Use.BALLAST, 0, 1, above));
            // 330 mm³ and a quarter are more than the 400 of the lower layer.
            Strip strip = spread(cells, 330, ONE).get(0);
            near(TestParts.box(0, -width / 2, 0, 10, width / 2, height), strip.run);
        }
    }

    /** A wider layer above a narrow one: the wide one alone where it holds more than both. */
    @Test
    void theLargerOfTwoLayersThatDoNotFitTogether() {
        for (double z : new double[] {5, 5.5}) {
            List<RoomCell> cells = List.of(
                    cell(Zone.Use.BALLAST, 0, 0, box(0, 0, 1.5, 5)), cell(Zone.Use.BALLAST, 0, 1, box(0, z, 4, 5)));
            near(TestParts.box(0, -4, z, 10, 4, z + 5), spread(cells, 330, ONE).get(0).run);
        }
    }

    /** Layers beside each other share the width between them. */
    @Test
    void layersThatAreSetOff() {
        List<RoomCell> cells = List.of(
                cell(Zone.Use.BALLAST, 0, 0, TestParts.box(0, -4, 0, 10, 3, 5)),
                cell(Zone.Use.BALLAST, 0, 1, TestParts.box(0, -3, 5, 10, 4, 10)));
        near(TestParts.box(0, -3, 0, 10, 3, 10), spread(cells, 400, ONE).get(0).run);
    }

    /** Runs end where a slice is missing, and where what neighbours share is too small. */
    @Test
    void aRunIsSharedByAllItsSlices() {
        List<RoomCell> cells = List.of(
                cell(Zone.Use.BALLAST, 0, 0, TestParts.box(0, -5, 0, 10, 4, 6)),
                cell(Zone.Use.BALLAST, 1, 0, TestParts.box(10, -4, 0.5, 20, 5, 6.5)));
        near(TestParts.box(0, -4, 0.5, 20, 4, 6), spread(cells, 100, ONE).get(0).run);
    }

    @Test
    void everyZoneSideAndKindOfRoomHasItsOwn() {
        List<RoomCell> cells = List.of(
                cell(0, 0),
                new RoomCell("y", Zone.Use.BALLAST, false, Optional.empty(), 0, 0, box(0, 0, 4, 5), true),
                new RoomCell("z", Zone.Use.BALLAST, true, Optional.empty(), 0, 0, box(0, 0, 4, 5), true),
                new RoomCell("z", Zone.Use.BALLAST, false, Optional.of("hull"), 0, 0, box(0, 0, 4, 5), true),
                new RoomCell("z", Zone.Use.BALLAST, false, Optional.empty(), 0, 0, box(0, 0, 4, 5), false));
        List<Strip> strips = strips(cells, new double[] {10, 20, 30, 40, 50}, ONE);
        assertEquals(
                List.of(10, 20, 30, 40, 50),
                strips.stream()
                        .map(s -> (int) Math.rint(s.volumeMm3()))
                        .sorted()
                        .toList());
        assertEquals("y", strips.get(0).zone);
        assertEquals(
                2, strips.stream().filter(s -> s.twin || s.inside.isPresent()).count());
    }

    /** Slices 0, 1 and 3, 4 hold something, slice 2 does not; whatever lies in another zone, side or room in slice 2 makes no difference. */
    @Test
    void whatLiesApartMayStayApart() {
        List<RoomCell> cells = new ArrayList<>(grid(Zone.Use.BALLAST, 5, 1));
        cells.add(new RoomCell("y", Zone.Use.BALLAST, false, Optional.empty(), 2, 0, box(2, 0, 4, 5), true));
        cells.add(new RoomCell("z", Zone.Use.BALLAST, true, Optional.empty(), 2, 0, box(2, 0, 4, 5), true));
        cells.add(new RoomCell("z", Zone.Use.BALLAST, false, Optional.of("hull"), 2, 0, box(2, 0, 4, 5), true));
        cells.add(new RoomCell("z", Zone.Use.BALLAST, false, Optional.empty(), 2, 0, box(2, 0, 4, 5), false));
        // Less than a millionth of a cell is nothing.
        double[] amounts = {100, 100, 3e-4, 100, 100, 1, 1, 1, 1};
        List<Strip> apart = strips(cells, amounts, APART).stream()
                .filter(s -> s.volumeMm3() > 10)
                .toList();
        assertEquals(10, apart.get(0).centreXMm(), 1e-3);
        assertEquals(40, apart.get(1).centreXMm(), 1e-3);
        assertEquals(200, apart.get(0).volumeMm3(), 1e-3);
        assertEquals(200, apart.get(1).volumeMm3(), 1e-9);
        List<Strip> together = strips(cells, amounts, ONE).stream()
                .filter(s -> s.volumeMm3() > 10)
                .toList();
        assertEquals(1, together.size());
        assertEquals(25, together.get(0).centreXMm(), 1e-3);
        // With a little in slice 2 nothing lies apart.
        amounts[2] = 0.01;
        assertEquals(
                1,
                strips(cells, amounts, APART).stream()
                        .filter(s -> s.volumeMm3() > 10)
                        .count());
    }

    @Test
    void slicesThatBeginEmptyAreNoSecondPlace() {
        List<RoomCell> cells = grid(Zone.Use.BALLAST, 4, 1);
        List<Strip> strips = strips(cells, new double[] {0, 0, 100, 100}, APART);
        assertEquals(1, strips.size());
        near(box(20, 40), strips.get(0).run);
    }

    /** Of 1000 mm³ of lead the least strip worth having is 80 mm³; foam does not count with it. */
    @ParameterizedTest
    @CsvSource({"79, 1", "80, 2"})
    void sliversAreLeftOut(double small, int kept) {
        List<RoomCell> cells = new ArrayList<>(grid(Zone.Use.BALLAST, 5, 1));
        cells.add(new RoomCell("y", Zone.Use.BALLAST, false, Optional.empty(), 0, 0, box(0, 0, 4, 5), true));
        cells.add(new RoomCell("x", Zone.Use.FOAM, false, Optional.empty(), 0, 0, box(0, 0, 4, 5), true));
        double one = (1000 - small) / 5;
        double[] amounts = {one, one, one, one, one, small, 1};
        List<Strip> strips = strips(cells, amounts, new StripMaker.Style(0.08, false, false, 1));
        assertEquals(
                kept, strips.stream().filter(s -> s.use == Zone.Use.BALLAST).count());
        assertEquals(1, strips.stream().filter(s -> s.use == Zone.Use.FOAM).count());
    }

    @Test
    void nextToNothingIsNothing() {
        assertEquals(List.of(), in(0, grid(Zone.Use.BALLAST, 4, 1), 1599e-6, ONE));
        assertEquals(1, in(0, grid(Zone.Use.BALLAST, 4, 1), 1601e-6, ONE).size());
    }

    /** A second strip of no length beside the first, where one is asked for and there is room: it lies clear of the first. */
    @Test
    void aSpareStripBesideTheFirst() {
        StripMaker.Style spare = new StripMaker.Style(0, false, true, 3);
        List<Strip> strips = spread(grid(Zone.Use.BALLAST, 4, 2), 1000, spare);
        assertEquals(2, strips.size());
        near(box(0, 40), strips.get(0).run);
        assertEquals(1000, strips.get(0).volumeMm3(), 1e-9);
        near(TestParts.box(0, -4, 5, 40, 4, 10), strips.get(1).run);
        assertEquals(0, strips.get(1).volumeMm3());
        assertEquals(20, strips.get(1).centreXMm(), 1e-9);
        assertEquals(1, spread(grid(Zone.Use.BALLAST, 4, 1), 1000, spare).size());
        // No higher than a fifth of the amount needs, and of foam under the first.
        near(
                TestParts.box(0, -4, 5, 40, 4, 10),
                spread(grid(Zone.Use.BALLAST, 4, 3), 1000, spare).get(1).run);
        near(
                TestParts.box(0, -4, 5, 40, 4, 10),
                spread(grid(Zone.Use.FOAM, 4, 3), 1000, spare).get(1).run);
        StripMaker.Style single = new StripMaker.Style(0, false, true, 1);
        assertEquals(1, spread(grid(Zone.Use.BALLAST, 4, 2), 1000, single).size());
    }

    /** Three runs of one cell each, all needed: no more strips than may be, and the rest is left for the sizes to take up. */
    @ParameterizedTest
    @CsvSource({"1, 400", "2, 800", "3, 1200", "4, 1200"})
    void noMoreStripsThanMayBe(int most, double held) {
        List<RoomCell> cells = List.of(cell(0, 0), cell(2, 0), cell(4, 0));
        List<Strip> strips = spread(cells, 1200, new StripMaker.Style(0, false, false, most));
        assertEquals(held, strips.stream().mapToDouble(Strip::volumeMm3).sum(), 1e-6);
        assertEquals(held / 400, strips.size());
    }

    /** Two wide cells and two narrow ones beyond them, either way round: the second strip begins where the first ends. */
    @Test
    void aStripAheadAndOneAstern() {
        for (boolean wideAft : new boolean[] {true, false}) {
            List<RoomCell> cells = new ArrayList<>();
            for (int slice = 0; slice < 4; slice++) {
                boolean wide = slice < 2 == wideAft;
                cells.add(cell(Zone.Use.BALLAST, slice, 0, box(slice, 0, wide ? 4 : 1.9, 5)));
            }
            List<Strip> strips = spread(cells, 1150, THREE);
            near(wideAft ? box(0, 20) : box(20, 40), strips.get(0).run);
            double from = wideAft ? 20 : 0;
            near(TestParts.box(from, -1.9, 0, from + 20, 1.9, 5), strips.get(1).run);
            assertEquals(1150, strips.get(0).volumeMm3() + strips.get(1).volumeMm3(), 1e-6);
        }
    }

    /** What turns her most per mm is what differs most from the water it displaces: 100 mm³ of lead 1.034 g, 1000 mm³ of foam 0.97 g, 90 mm³ of lead 0.931 g. */
    @Test
    void theHeaviestInTheWaterComesFirst() {
        Strip lead = new Strip(cell(0, 0), box(0, 40), 0.01134, 100, 20);
        Strip less = new Strip(cell(0, 0), box(0, 40), 0.01134, 90, 20);
        Strip foam = new Strip(cell(Zone.Use.FOAM, 0, 0, box(0, 40)), box(0, 40), 0.00003, 1000, 20);
        RoomCell twin = new RoomCell("z", Zone.Use.FOAM, true, Optional.empty(), 0, 0, box(0, 40), true);
        Strip image = new Strip(twin, box(0, 40), 0.00003, 1000, 20);
        RoomCell first = new RoomCell("a", Zone.Use.FOAM, true, Optional.empty(), 0, 0, box(0, 40), true);
        Strip named = new Strip(first, box(0, 40), 0.00003, 1000, 20);
        List<Strip> order = new ArrayList<>(List.of(less, image, foam, named, lead));
        order.sort(StripMaker.HEAVIEST_FIRST);
        assertEquals(List.of(lead, named, foam, image, less), order);
    }
}
