package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Zone;
import trimwright.statics.Condition;

/** The first programme over cells, and why it has no answer; on rafts, by hand. */
class CellProgrammeTest {

    private static final double WET_LEAD = 1 - 1 / 11.34;
    static final Vector3D MIDDLE = TestParts.at(200, 0, 25);

    static PlanRequest request(Boat boat) {
        return PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
    }

    static Zone zone(String id, Zone.Use use, BoxShape box) {
        return PlanBoats.zone(id, use, box, false);
    }

    /** Room under the middle for lead that weighs as much in the water as said. */
    static Zone keel(double netG) {
        return zone("keel", Zone.Use.BALLAST, TestParts.box(150, -10, -height(netG), 250, 10, 0));
    }

    private static double height(double netG) {
        return netG / (100 * 20 * 10.34e-3);
    }

    static CellProgramme programme(Boat boat) {
        return CellProgramme.of(request(boat));
    }

    static CellProgramme raft(double massG, Vector3D centre, Zone... zones) {
        return programme(PlanBoats.raft(massG, centre, List.of(zones)));
    }

    private static RoomCell cell(Zone.Use use, boolean twin, int slice, BoxShape box) {
        return new RoomCell("z", use, twin, Optional.empty(), slice, 0, box, true);
    }

    /**
     * Foam of 0.03 in cells of 800 mm³ to port and 600 to starboard, and a cell of lead: three quarters of the smaller side may be filled as a pair, a quarter of each side alone and dearer. One gram
     * displaces 33.3 cm³.
     */
    @Test
    void pairsAndSingles() {
        List<RoomCell> cells = List.of(
                cell(Zone.Use.FOAM, true, 0, TestParts.box(0, -16, 0, 10, -10, 10)),
                cell(Zone.Use.BALLAST, false, 1, TestParts.box(0, -2, 0, 10, 2, 5)),
                cell(Zone.Use.FOAM, false, 0, TestParts.box(0, 10, 0, 10, 18, 10)),
                cell(Zone.Use.FOAM, true, 7, TestParts.box(0, -16, 0, 10, -10, 10)));
        PlanRequest request = request(PlanBoats.raft(1500, MIDDLE, List.of()));
        CellChoices all = new CellChoices(cells, request, PlanBasis.of(Condition.of(request.boat()), request));
        Choice other = Choice.plain(new Unknown("other", Influence.NOTHING, 1, 1));
        List<Choice> choices = all.with(List.of(other));
        assertEquals(
                // mg: 1.5 · 18, a quarter of 18 and 24, 18, and 0.2 cm³ of lead.
                List.of(27_000L, 4_500L, 2_268_000L, 6_000L, 18_000L, 1_000_000L),
                choices.stream().map(c -> Math.round(1e6 * c.unknown().most())).toList());
        assertEquals(
                List.of(1.0, 1.3, 1.0, 1.3, 1.0, 1.0),
                choices.stream().map(c -> c.unknown().costPerUnit()).toList());
        Choice pair = choices.get(0);
        assertEquals(
                List.of(new Choice.Spot("z", Zone.Use.FOAM, false), new Choice.Spot("z", Zone.Use.FOAM, true)),
                pair.spots());
        assertEquals(1, pair.grams(), 1e-12);
        assertEquals(1, pair.unknown().perUnit().massG(), 1e-9);
        assertEquals(1000 / 0.03, pair.unknown().perUnit().surfacedMm3(), 1e-6);
        // Half of it to either side: (14 − 13) ∕ 2.
        assertEquals(0.5, pair.unknown().perUnit().massMoment().getY(), 1e-9);
        assertEquals(1000 / 11.34, choices.get(2).unknown().perUnit().surfacedMm3(), 1e-6);
        double[] amounts = all.amountsMm3(new double[] {0.006, 0.003, 1.134, 0.0015, 0.012, 99});
        double[] expected = {100 + 100, 100, 100 + 50, 400};
        for (int i = 0; i < 4; i++) {
            assertEquals(expected[i], amounts[i], 1e-9);
        }
        List<Choice> beyond = all.beyond(Zone.Use.FOAM, 10, 1000);
        assertEquals(4, beyond.size());
        assertEquals(10 * 2 * 0.75 * 0.6 * 0.03, beyond.get(0).unknown().most(), 1e-12);
        assertEquals(1000, beyond.get(0).unknown().costPerUnit());
        assertEquals(pair.spots(), beyond.get(0).spots());
        assertEquals(0.5, beyond.get(0).gramsEach());
        assertEquals(1, all.beyond(Zone.Use.BALLAST, 10, 1000).size());
    }

    /** 300 g are wanted: exactly where there is room, else as little as half of the tolerance of 20 g allows, else as 95 % of it does. */
    @ParameterizedTest
    @CsvSource({"310, 299.98", "295, 290", "285, 281"})
    void asStrictlyAsThereIsRoom(double room, double net) {
        CellProgramme programme = raft(1300, MIDDLE, keel(room));
        CellProgramme.Outline outline = programme.outline();
        assertTrue(outline.meetsAll());
        assertEquals(net / WET_LEAD, outline.addedG(), 1e-6);
        assertEquals(
                net / WET_LEAD / 11.34e-3,
                Arrays.stream(programme.amountsMm3(outline)).sum(),
                1e-3);
        assertEquals(List.of(), outline.misses());
    }

    @Test
    void whatGivesWayWhereThereIsNoRoom() {
        CellProgramme programme = raft(1300, MIDDLE, keel(270));
        assertFalse(programme.outline().meetsAll());
        assertFalse(programme.outline().solution().isOptimal());
        CellProgramme.Outline outline = programme.outline(List.of(), EnumSet.allOf(Aim.class));
        assertFalse(outline.meetsAll());
        assertTrue(outline.solution().isOptimal());
        assertEquals(-(30 / 40.0 - 0.475), outline.misses().get(0).amount(), 1e-6);
        CellProgramme.Outline line = programme.elastic(EnumSet.of(Aim.LINE));
        assertEquals(-(30 / 40.0 - 0.475), line.misses().get(0).amount(), 1e-6);
        assertFalse(programme.elastic(EnumSet.of(Aim.GM)).solution().isOptimal());
        // Nothing gives way that need not.
        assertEquals(
                List.of(),
                raft(1300, MIDDLE, keel(310))
                        .outline(List.of(), EnumSet.allOf(Aim.class))
                        .misses());
    }

    /** 100 of 300 g find room: the rest of 199.98 g in the water is 19.34 cm³ of lead; twice the room would not do. */
    @Test
    void howMuchMoreRoom() {
        CellProgramme programme = raft(1300, MIDDLE, keel(100));
        assertEquals(199.98 / 10.34e-3, programme.beyond(Zone.Use.BALLAST, 20).missingMm3(), 1e-3);
        assertEquals(Double.NaN, programme.beyond(Zone.Use.BALLAST, 1).missingMm3());
        assertEquals(Double.NaN, programme.beyond(Zone.Use.FOAM, 20).missingMm3());
        // 100 g too heavy, and 97 mm of foam 20 × 10 mm: 18.8 g. Foam lifts 0.97 to the cm³.
        CellProgramme heavy =
                raft(1700, MIDDLE, zone("deep", Zone.Use.FOAM, TestParts.box(151.5, -10, -10, 248.5, 10, 0)));
        assertEquals(
                (99.98 - 19.4 * 0.97) / 0.97e-3, heavy.beyond(Zone.Use.FOAM, 20).missingMm3(), 1e-3);
    }

    /** GM by hand for 329 g of lead 15 mm high under the raft; BG for one that dives. */
    @Test
    void firmness() {
        // As low a room as holds it: one layer.
        CellProgramme.Outline outline = raft(1300, MIDDLE, keel(310)).outline();
        double lead = 299.98 / WET_LEAD;
        double z = -height(310) / 2;
        double upright = 1600 * 20
                + lead / 11.34 * z
                + 400e6 / 12 / 1000
                - 1300 * 25
                - lead * z
                - 40 * (1600 + lead / 11.34 - 1300 - lead);
        assertEquals(upright / (1300 + lead), outline.firmnessMm(), 1e-6);
        Boat diver = PlanBoats.divingRaft(1600, MIDDLE, 385, List.of());
        assertEquals((1600 * 5 + 770 * 10) / 2370.0, programme(diver).outline().firmnessMm(), 1e-9);
    }

    /** 82.4 g too heavy with 200 g of loose lead, 182.4 in the water, under the middle: as much of it is taken out as that, or less of what lies in the way. */
    @Test
    void looseLeadIsTakenOut() {
        Part pig = TestParts.solid(
                "pig", Kind.BALLAST, TestParts.box(150, -10, -200 / 11.34e-3 / 2000, 250, 10, 0), 11.34);
        Boat boat = PlanBoats.raft(1500, MIDDLE, List.of(), pig);
        CellProgramme programme = CellProgramme.of(request(boat).withRemovable("pig"));
        CellProgramme.Outline outline = programme.outline();
        assertTrue(outline.meetsAll());
        double out = (200 * WET_LEAD - 100 - 0.02) / WET_LEAD;
        assertEquals(out, programme.takenOutG(outline, pig), 1e-6);
        assertEquals(0, programme.takenOutG(outline, boat.parts().get(0)));
        Loose.Changed changed = programme.changed(outline).get(0);
        assertEquals(out / 200, changed.share(), 1e-9);
        assertEquals(0, changed.movedMm(), 1e-9);
        assertEquals(0, outline.addedG());
        assertEquals(1, programme.loose().size());
        assertFalse(programme(boat).outline().meetsAll());
        assertEquals(2, outline.from(outline.model().choices().size() - 2).length);
    }

    @Test
    void theRoomIsMeasuredOnceForALine() {
        CellProgramme programme = raft(1300, MIDDLE, keel(310));
        PlanRequest firm = programme.request().withGoal(Goal.firmestFor(400));
        assertSame(programme.rooms(), programme.like(firm).rooms());
        assertSame(firm, programme.like(firm).request());
        assertNotSame(
                programme.rooms(),
                programme.like(programme.request().withLineRaised(1)).rooms());
        PlanRequest other = programme.request().withBoat(PlanBoats.raft(1400, MIDDLE, List.of(keel(310))));
        assertSame(programme.rooms(), programme.withSameRoom(other).rooms());
        assertEquals(199.98 / WET_LEAD, programme.withSameRoom(other).outline().addedG(), 1e-6);
        CellProgramme large = raft(1300, MIDDLE, keel(400));
        assertEquals(
                339.98 / WET_LEAD,
                large.like(large.request().withLineRaised(1)).outline().addedG(),
                1e-6);
    }

    private static Zone limited(String id, Zone.Use use, double mostG, boolean mirror) {
        return new Zone(id, use, TestParts.box(50, 5, -20, 350, 15, 0), Optional.of(mostG), mirror);
    }

    private static Map<String, String> caps(Goal goal, Zone... zones) {
        PlanRequest request = PlanBoats.request(PlanBoats.raft(1300, MIDDLE, List.of(zones)), PlanBoats.WANTED, goal);
        Unknown u = new Unknown("u", Influence.NOTHING, 1, 1);
        List<Choice.Spot> pair =
                List.of(new Choice.Spot("a", Zone.Use.BALLAST, false), new Choice.Spot("a", Zone.Use.BALLAST, true));
        List<Choice> choices = List.of(
                new Choice(u, pair, 0.5),
                new Choice(u, List.of(new Choice.Spot("a", Zone.Use.BALLAST, true)), 2),
                new Choice(u, List.of(new Choice.Spot("b", Zone.Use.FOAM, false)), 3),
                Choice.plain(u));
        Map<String, String> result = new java.util.TreeMap<>();
        for (PlanModel.Cap cap : PlanLimits.of(request, choices)) {
            result.merge(cap.name(), Arrays.toString(cap.weights()) + " " + cap.most(), (x, y) -> x + ", " + y);
        }
        return result;
    }

    /** Limits of a zone count for each of its sides; one that is not mirrored counts whole. Foam is given by its volume, 0.03 g to the cm³. */
    @Test
    void limits() {
        assertEquals(Map.of(), caps(Goal.LEAST_MASS));
        assertEquals(
                Map.of("a", "[0.5, 0.0, 0.0, 0.0] 100.0, [0.5, 2.0, 0.0, 0.0] 100.0"),
                caps(Goal.LEAST_MASS, limited("a", Zone.Use.BALLAST, 100, true)));
        assertEquals(
                Map.of("a", "[1.0, 2.0, 0.0, 0.0] 100.0", "b", "[0.0, 0.0, 3.0, 0.0] 50.0"),
                caps(
                        Goal.LEAST_MASS,
                        limited("a", Zone.Use.BALLAST, 100, false),
                        limited("b", Zone.Use.FOAM, 50, false)));
        assertEquals(Map.of("added mass", "[1.0, 2.0, 3.0, 0.0] 77.0"), caps(Goal.firmestFor(77)));
        assertEquals(
                Map.of("added lead", "[1.0, 2.0, 0.0, 0.0] 77.0, [-1.0, -2.0, -0.0, -0.0] -77.0"),
                caps(Goal.firmestWithLead(77)));
        assertEquals(
                Map.of("added foam", "[0.0, 0.0, 3.0, 0.0] 30.0, [-0.0, -0.0, -3.0, -0.0] -30.0"),
                caps(Goal.firmestWithFoam(1e6)));
        assertEquals(
                Map.of("added foam", "[0.0, 0.0, 3.0, 0.0] 30.0"),
                caps(Goal.firmestWithFoam(1e6).orLess()));
        assertTrue(Goal.firmestWithFoam(1).orLess().firmest());
    }
}
