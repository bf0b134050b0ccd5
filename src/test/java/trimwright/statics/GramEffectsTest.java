package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.TestParts.box;
import static trimwright.TestParts.tank;
import static trimwright.TestParts.weighed;
import static trimwright.statics.DiveBoats.bar;
import static trimwright.statics.DiveBoats.boat;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;

class GramEffectsTest {

    /** A box 400 × 100 × 80 that draws 40, G at 20, of 1600 g, of which 300 g are a lead bar on her floor. */
    private static Boat barge() {
        Part lead = new Part(
                "lead",
                Kind.BALLAST,
                Optional.of(box(100, -10, 0, 300, 10, 1)),
                Optional.empty(),
                Optional.of(300.0),
                Optional.empty(),
                Optional.empty(),
                Optional.of("barge"),
                false,
                0);
        double z = (1600 * 20 - 300 * 0.5) / 1300;
        return boat(weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 80), 1300, new Vector3D(200, 0, z)), lead);
    }

    private static GramEffects.Row row(Boat boat, GramEffects.Change change) {
        List<GramEffects.Row> rows = GramEffects.of(Condition.of(boat)).rows();
        return rows.stream().filter(r -> r.change() == change).findFirst().orElseThrow();
    }

    /** Sinkage w / (ρ A) and list from w d = W GM tan φ (wall-sided, small), with 10 g at the ends of a box barge. */
    @Test
    void tenGramsOnABarge() {
        GramEffect bow = row(barge(), GramEffects.Change.WEIGHT_AT_BOW).afloat().orElseThrow();
        double sink = 10 * 1000.0 / 40000;
        double gml = 20.125 + 400 * 400 / 12.0 / 40.25 - 20;
        double trim = 10 * 200 / (1610 * gml);
        assertEquals(-Math.toDegrees(trim), bow.trimDeg(), 0.01 * Math.toDegrees(trim));
        assertEquals(sink + 200 * trim, bow.lineAtBowMm(), 1e-2);
        assertEquals(sink - 200 * trim, bow.lineAtSternMm(), 1e-2);
        GramEffect stern =
                row(barge(), GramEffects.Change.WEIGHT_AT_STERN).afloat().orElseThrow();
        assertEquals(-bow.trimDeg(), stern.trimDeg(), 1e-6);
        GramEffect side =
                row(barge(), GramEffects.Change.WEIGHT_TO_PORT).afloat().orElseThrow();
        double gm = 20.125 + 1e4 / 12 / 40.25 - 20;
        assertEquals(-Math.toDegrees(10 * 50 / (1610 * gm)), side.heelDeg(), 1e-3);
        GramEffect low = row(barge(), GramEffects.Change.WEIGHT_LOW).afloat().orElseThrow();
        // Draught 40.25 instead of 40, G lower by 10 × 20 / 1610.
        double before = 20 + 1e4 / 12 / 40 - 20;
        double after = 20.125 + 1e4 / 12 / 40.25 - (20 - 200 / 1610.0);
        assertEquals(after - before, low.firmnessMm(), 1e-6);
    }

    /** Moving 300 g of lead by 1 mm: tan φ = w d / (W GM), wall-sided and small. */
    @Test
    void leadMovedByAMillimetre() {
        GramEffects.Row port = row(barge(), GramEffects.Change.LEAD_TO_PORT);
        assertEquals("lead", port.part().orElseThrow());
        double gm = 20 + 1e4 / 12 / 40 - 20;
        assertEquals(
                -Math.toDegrees(300 / (1600 * gm)), port.afloat().orElseThrow().heelDeg(), 1e-4);
        GramEffects.Row up = row(barge(), GramEffects.Change.LEAD_UP);
        assertEquals(-300 / 1600.0, up.afloat().orElseThrow().firmnessMm(), 1e-6);
        // Dived B is the box's middle at 40, G at 20.
        assertEquals(-300 / 1600.0, up.dived().firmnessMm(), 1e-9);
    }

    /** Dived she hangs with B over G: 10 g at the bow trim her by tan θ = w d / (W BG) with the lever from B to the weight. */
    @Test
    void tenGramsDived() {
        GramEffect bow = row(barge(), GramEffects.Change.WEIGHT_AT_BOW).dived();
        assertEquals(-Math.toDegrees(Math.atan2(10 * 200 / 1610.0, 20)), bow.trimDeg(), 1e-9);
        GramEffect side = row(barge(), GramEffects.Change.WEIGHT_TO_PORT).dived();
        assertEquals(-Math.toDegrees(Math.atan2(10 * 50 / 1610.0, 20)), side.heelDeg(), 1e-9);
    }

    /** A dived boat is soft: 2 kg with BG 6 mm trims 1.9° for one gram at 400 mm, and for 500 g moved by 0.8 mm (docs/statics.md). */
    @Test
    void divedBoatIsSoft() {
        Condition soft = Condition.of(boat(
                weighed("tube", Kind.CYLINDER, bar(-400, 400, 40, 60), 2000, new Vector3D(0, 0, 34)),
                tank("t", bar(-50, 50, 34, 20), Optional.of("tube"))));
        Condition dry = Condition.of(
                boat(weighed("tube", Kind.CYLINDER, bar(-400, 400, 40, 60), 2000, new Vector3D(0, 0, 34))));
        assertTrue(Submerged.of(soft).bgMm() < 6 + 1e-9);
        double gram = Submerged.of(dry.carrying(1, new Vector3D(400, 0, 34))).trimDeg();
        double moved = Submerged.of(dry.shifted(new Vector3D(500 * 0.8, 0, 0))).trimDeg();
        assertEquals(-1.9, gram, 0.05);
        assertEquals(-1.9, moved, 0.05);
    }

    /** Where a line is painted, from 50 to 350, the water is taken at its ends and not at those of the hull; she turns about her middle, 200. */
    @Test
    void theLineIsTakenWhereItIsPainted() {
        Boat bare = barge();
        PaintedLine line = new PaintedLine(List.of(new Vector3D(50, 0, 40), new Vector3D(350, 0, 40)));
        Boat painted =
                new Boat(bare.name(), bare.water(), Optional.of(line), bare.parts(), bare.zones(), bare.targets());
        GramEffect bow = row(painted, GramEffects.Change.WEIGHT_AT_BOW).afloat().orElseThrow();
        double sink = 10 * 1000.0 / 40000;
        double trim = 10 * 200 / (1610 * (20.125 + 400 * 400 / 12.0 / 40.25 - 20));
        assertEquals(sink + 150 * trim, bow.lineAtBowMm(), 1e-2);
        assertEquals(sink - 150 * trim, bow.lineAtSternMm(), 1e-2);
    }

    /** 300 g of lead moved forward by 1 mm: tan θ = w d ∕ (W GM along), bow down. */
    @Test
    void leadMovedForward() {
        double gml = 20 + 400 * 400 / 12.0 / 40 - 20;
        GramEffects.Row forward = row(barge(), GramEffects.Change.LEAD_FORWARD);
        GramEffect afloat = forward.afloat().orElseThrow();
        assertEquals(-Math.toDegrees(300 / (1600 * gml)), afloat.trimDeg(), 1e-6);
        assertEquals(0, afloat.heelDeg(), 1e-9);
        // BG dived is 20.
        assertEquals(
                -Math.toDegrees(Math.atan2(300 / 1600.0, 20)), forward.dived().trimDeg(), 1e-9);
    }

    @Test
    void noLeadNoLeadRows() {
        Boat bare = boat(weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 80), 1600, new Vector3D(200, 0, 20)));
        List<GramEffects.Row> rows = GramEffects.of(Condition.of(bare)).rows();
        assertEquals(5, rows.size());
    }

    @Test
    void sinkingBoatHasDivedEffectsOnly() {
        Boat heavy = boat(weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 80), 4000, new Vector3D(200, 0, 20)));
        assertTrue(GramEffects.of(Condition.of(heavy)).rows().stream()
                .allMatch(r -> r.afloat().isEmpty()));
    }
}
