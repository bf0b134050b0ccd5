package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Zone;
import trimwright.statics.Condition;

/** Sizes and places of strips about the raft, by hand: 40 g and 1600 g to the mm of draught and to the line; lead of 11.34 weighs 1 − 1 ∕ 11.34 in the water. */
class StripPlanTest {

    static final double LEAD = 11.34e-3;
    static final double FOAM = 0.03e-3;
    static final double WET_LEAD = 1 - 1 / 11.34;

    private static PlanRequest request(Boat boat) {
        return PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
    }

    static Strip strip(String zone, Zone.Use use, boolean twin, BoxShape run, double grams) {
        double density = use == Zone.Use.BALLAST ? LEAD : FOAM;
        double middle = run.bounds().centreX();
        RoomCell cell = new RoomCell(zone, use, twin, Optional.empty(), 0, 0, run, true);
        return new Strip(cell, run, density, grams / density, middle);
    }

    static Strip lead(String zone, BoxShape run, double grams) {
        return strip(zone, Zone.Use.BALLAST, false, run, grams);
    }

    static StripPlan plan(Boat boat, List<Strip> strips) {
        PlanRequest request = request(boat);
        return new StripPlan(PlanBasis.of(Condition.of(boat), request), strips, List.of(), request);
    }

    static Boat raft(double massG, Vector3D centre) {
        return PlanBoats.raft(massG, centre, List.of());
    }

    /** The run on the other side, its lowest corner first. */
    static BoxShape mirrored(BoxShape run) {
        var b = run.mirrored().bounds();
        return TestParts.box(b.minX(), b.minY(), b.minZ(), b.maxX(), b.maxY(), b.maxZ());
    }

    static List<Strip> list(Strip... strips) {
        return new ArrayList<>(List.of(strips));
    }

    /** 300 g in the water under her middle: 329 g, cast to a gram, its ends on whole mm. */
    @Test
    void oneStripUnderTheMiddle() {
        Strip keel = lead("keel", TestParts.box(50, -10, -12, 350, 10, 0), 100);
        StripPlan plan = plan(raft(1300, TestParts.at(200, 0, 25)), list(keel));
        assertTrue(plan.solve());
        assertEquals(329, keel.massG(), 1e-9);
        assertEquals(329, plan.massG(Zone.Use.BALLAST), 1e-9);
        assertEquals(329 / LEAD, plan.volumeMm3(Zone.Use.BALLAST), 1e-6);
        assertEquals(0, plan.massG(Zone.Use.FOAM));
        assertEquals(200, keel.centreXMm(), 0.5);
        double end = keel.box().fromMm().getX();
        assertEquals(Math.rint(end), end, 1e-9);
        List<Part> parts = plan.parts(raft(1300, TestParts.at(200, 0, 25)));
        assertEquals(List.of("keel lead"), parts.stream().map(Part::id).toList());
        assertEquals(Optional.of(keel.box()), parts.get(0).shape());
    }

    /** G stands 10 mm ahead: the net weights m₁ and m₂ of two strips have m₁ + m₂ = 300 and their moment about the middle is −13 000 g·mm. */
    @Test
    void twoStripsAgainstATrim() {
        Strip aft = lead("aft", TestParts.box(20, -10, -12, 120, 10, 0), 150);
        Strip fore = lead("fore", TestParts.box(280, -10, -12, 380, 10, 0), 150);
        StripPlan plan = plan(raft(1300, TestParts.at(210, 0, 25)), list(aft, fore));
        assertTrue(plan.solve());
        double net = 0;
        double moment = 0;
        for (Strip s : List.of(aft, fore)) {
            assertEquals(Math.rint(s.massG()), s.massG(), 1e-9);
            double end = s.box().fromMm().getX();
            assertEquals(Math.rint(end), end, 1e-9);
            net += WET_LEAD * s.massG();
            moment += WET_LEAD * s.massG() * (s.centreXMm() - 200);
        }
        // Each is cast to a gram.
        assertEquals(300, net, 2 * 0.5);
        // 0.001 of what the line may be off, 0.5 mm at 200 mm, and half a mm for the strip that was placed last.
        double tolerance = 0.001 * 0.5 / 200 * 100 * Math.pow(400, 3) / 12 / 1000;
        assertEquals(-13_000, moment, tolerance + 0.5 * 150);
    }

    /**
     * G stands 3 mm to port: the strips on either side, 15 mm from the middle, differ by 1300 · 3 ∕ 15 = 260 g in the water, so 20 g lie to port and 280 to
     * starboard.
     */
    @Test
    void portAndStarboardAgainstAList() {
        BoxShape run = TestParts.box(100, 5, -12, 300, 25, 0);
        Strip port = strip("bilge", Zone.Use.BALLAST, false, run, 100);
        Strip starboard = strip("bilge", Zone.Use.BALLAST, true, mirrored(run), 100);
        StripPlan plan = plan(raft(1300, TestParts.at(200, 3, 25)), list(port, starboard));
        assertTrue(plan.solve());
        assertEquals(20 / WET_LEAD, port.massG(), 0.51);
        assertEquals(280 / WET_LEAD, starboard.massG(), 0.51);
        List<String> ids = plan.parts(raft(1300, TestParts.at(200, 3, 25))).stream()
                .map(Part::id)
                .sorted()
                .toList();
        assertEquals(List.of("bilge lead", "bilge lead starboard"), ids);
    }

    /** 100 g too heavy: foam of 10 × 40 mm on both sides carries 0.97 · 0.8 g for each mm; cut in pairs, to a mm. */
    @Test
    void foamOnBothSides() {
        BoxShape run = TestParts.box(100, 50, 0, 300, 60, 40);
        Strip port = strip("sides", Zone.Use.FOAM, false, run, 1);
        Strip starboard = strip("sides", Zone.Use.FOAM, true, mirrored(run), 1);
        StripPlan plan = plan(raft(1700, TestParts.at(200, 0, 25)), list(port, starboard));
        assertTrue(plan.solve());
        assertEquals(Math.rint(100 / 0.776), port.lengthMm(), 1e-9);
        assertEquals(Math.rint(100 / 0.776), starboard.lengthMm(), 1e-9);
        assertEquals(2 * 129 * 400 * FOAM, plan.massG(Zone.Use.FOAM), 1e-9);
    }

    /** Foam is cut no longer than whole mm of its run: 20 in 20.6, though it is wanted to the end. What is nothing once rounded is left out. */
    @Test
    void foamFillsItsRunToTheLastWholeMm() {
        Strip foam = strip("deep", Zone.Use.FOAM, false, TestParts.box(189.7, -50, -30, 210.3, 50, 0), 0);
        Strip tiny = strip("other", Zone.Use.FOAM, false, TestParts.box(199.8, -50, -60, 200.2, 50, -30), 0);
        // 20.6 · 3 cm³ and a little of 0.97 g.
        StripPlan plan = plan(raft(1600 + 61.8 * 0.97 + 0.5, TestParts.at(200, 0, 25)), list(foam, tiny));
        assertTrue(plan.solve());
        assertEquals(20, foam.lengthMm(), 1e-9);
        assertEquals(20 * 3000, plan.volumeMm3(Zone.Use.FOAM), 1e-6);
    }

    /** A run of 24 cm³ holds 248.16 g in the water, 51.84 less than wanted: she floats 1.296 mm too high, 0.475 of which are allowed. */
    @Test
    void whatCannotBeHeldIsMissed() {
        Strip keel = lead("keel", TestParts.box(150, -10, -12, 250, 10, 0), 100);
        StripPlan plan = plan(raft(1300, TestParts.at(200, 0, 25)), list(keel));
        assertFalse(plan.solve());
        assertEquals(1, plan.misses().size());
        assertEquals(Aim.LINE, plan.misses().get(0).aim());
        assertEquals(-((300 - 24 * 10.34) / 40 - 0.475), plan.misses().get(0).amount(), 1e-6);
    }

    /** G stands 3 mm to port: 20 g to port and 280 to starboard, in the water, where a run holds just 280 g, whether it is filled as one of a pair or alone. */
    @Test
    void aRunHoldsNoMoreHoweverItIsFilled() {
        double height = 280 / (200 * 20 * 10.34e-3);
        BoxShape run = TestParts.box(100, 5, -height, 300, 25, 0);
        Strip port = strip("bilge", Zone.Use.BALLAST, false, run, 100);
        Strip starboard = strip("bilge", Zone.Use.BALLAST, true, mirrored(run), 100);
        StripPlan plan = plan(raft(1300, TestParts.at(200, 3, 25)), list(port, starboard));
        assertTrue(plan.solve());
        assertEquals(starboard.capacityMm3(), starboard.volumeMm3(), 1 / LEAD);
        assertTrue(starboard.volumeMm3() <= starboard.capacityMm3() + 1e-6);
        // With G farther out nothing is left on the port side, and still she lists, and lies 20 g too high.
        Strip port2 = strip("bilge", Zone.Use.BALLAST, false, run, 100);
        Strip starboard2 = strip("bilge", Zone.Use.BALLAST, true, mirrored(run), 100);
        StripPlan more = plan(raft(1300, TestParts.at(200, 3.3, 25)), list(port2, starboard2));
        assertFalse(more.solve());
        assertEquals(
                List.of(Aim.LINE, Aim.LIST),
                more.misses().stream().map(Miss::aim).toList());
        assertEquals(-(20 / 40.0 - 0.475), more.misses().get(0).amount(), 1e-6);
        double left = 1300 * 3.3 - 15 * 280;
        assertEquals(
                -(Math.toDegrees(left / (1300 * 4)) - 0.95 * 0.3),
                more.misses().get(1).amount(),
                1e-6);
    }

    /** Both strips of a pair move together, and no farther than their runs: 300 g in the water, 10 mm too far ahead, in runs that let them go 6 mm back; and the other way round. */
    @Test
    void noFartherThanTheRuns() {
        double length = 300 / WET_LEAD / LEAD / (2 * 20 * 12);
        // 0.475 mm at the ends let 1267 g·mm pass, 4.2 mm of these strips.
        double off = (300 * 6.3 + 0.9 * 0.475 / 200 * 100 * Math.pow(400, 3) / 12 / 1000) / 1300;
        for (int way : new int[] {1, -1}) {
            double aft = way > 0 ? 6.3 : 20;
            BoxShape run = TestParts.box(200 - length / 2 - aft, 5, -12, 200 + length / 2 + 26.3 - aft, 25, 0);
            Strip port = strip("bilge", Zone.Use.BALLAST, false, run, 150 / WET_LEAD);
            Strip starboard = strip("bilge", Zone.Use.BALLAST, true, mirrored(run), 150 / WET_LEAD);
            StripPlan plan = plan(raft(1300, TestParts.at(200 + way * off, 0, 25)), list(port, starboard));
            assertTrue(plan.solve());
            double end = way > 0 ? run.fromMm().getX() : run.toMm().getX();
            assertEquals(
                    end,
                    way > 0 ? port.box().fromMm().getX() : port.box().toMm().getX(),
                    1);
            assertEquals(port.centreXMm(), starboard.centreXMm(), 1e-9);
            StripPlan other = plan(raft(1300, TestParts.at(200 + 2 * way * off, 0, 25)), list(port, starboard));
            assertFalse(other.solve());
            assertEquals(Aim.TRIM, other.misses().get(0).aim());
        }
    }

    /** Names that the boat does not use yet, counted on; lead before foam, from the stern, port before starboard. */
    @Test
    void namesOfPieces() {
        BoxShape run = TestParts.box(100, 5, -12, 300, 25, 0);
        Strip fore = lead("keel", TestParts.box(250, -10, -12, 350, 10, 0), 5);
        Strip aft = lead("keel", TestParts.box(50, -10, -12, 150, 10, 0), 5);
        Strip port = strip("sides", Zone.Use.FOAM, false, run, 1);
        Strip starboard = strip("sides", Zone.Use.FOAM, true, mirrored(run), 1);
        Boat boat = PlanBoats.raft(
                1300,
                TestParts.at(200, 0, 25),
                List.of(),
                TestParts.weighed(
                        "keel lead", Kind.BALLAST, TestParts.box(0, 0, 0, 1, 1, 1), 1, TestParts.at(0, 0, 0)));
        StripPlan plan = plan(boat, list(starboard, fore, port, aft));
        List<Part> parts = plan.parts(boat);
        assertEquals(
                List.of("keel lead 2", "keel lead 3", "sides foam", "sides foam starboard"),
                parts.stream().map(Part::id).toList());
        assertEquals(Optional.of(aft.box()), parts.get(0).shape());
        assertEquals(Optional.of(fore.box()), parts.get(1).shape());
    }

    /** 100 g too heavy in the water with loose lead 200 g heavy under the middle: it is cut to whole grams; where the trim asks for it, moved by whole mm. */
    @Test
    void looseLeadIsCutAndMoved() {
        Part pig = TestParts.solid("pig", Kind.BALLAST, TestParts.box(150, -10, -200 / LEAD / 2000, 250, 10, 0), 11.34)
                .loose();
        Boat boat = PlanBoats.raft(1500, TestParts.at(203, 0, 25), List.of(), pig);
        PlanRequest request = PlanRequest.of(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        PlanBasis basis = PlanBasis.of(Condition.of(boat), request);
        Loose found =
                Loose.of(basis.condition.pieces(), request.removable(), basis).get(0);
        Loose loose = new Loose(found.part(), found.whole(), found.massG(), 60, 60);
        StripPlan plan = new StripPlan(basis, new ArrayList<>(), List.of(loose), request);
        assertTrue(plan.solve());
        Loose.Changed changed = plan.changed().get(0);
        assertEquals(Math.rint((200 * WET_LEAD - 100) / WET_LEAD), changed.share() * 200, 1e-9);
        // 100 g in the water against 1500 · 3 g·mm; a thousandth of the line's tolerance may be left.
        assertEquals(-45, changed.movedMm(), 14);
        assertEquals(Math.rint(changed.movedMm()), changed.movedMm());
        // With a run astern of it there is less room to go.
        Strip astern = lead("aft", TestParts.box(20, -10, -5, 130, 10, 0), 0);
        StripPlan beside = new StripPlan(basis, list(astern), List.of(loose), request);
        assertTrue(beside.solve());
        assertTrue(
                beside.changed().get(0).movedMm() >= -20 - 1e-9,
                beside.changed().toString());
        assertTrue(beside.massG(Zone.Use.BALLAST) > 5);
    }
}
