package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.TestParts.box;
import static trimwright.TestParts.compact;
import static trimwright.TestParts.solid;
import static trimwright.TestParts.tank;
import static trimwright.TestParts.twice;
import static trimwright.TestParts.weighed;
import static trimwright.statics.DiveBoats.boat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;

/** Tank sizes, and what lead and foam do to the dive (facts of the trade: common practice, no source). */
class TankSizingTest {

    private static final Targets RESIDUAL = new Targets(
            Optional.empty(),
            Optional.empty(),
            Optional.of(new Targets.Band(20, 40)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** A box with a small box for a tower, off her middle. */
    private static Boat boxBoat(Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                weighed("box", Kind.CYLINDER, box(0, -50, 0, 500, 50, 80), 3000, new Vector3D(250, 0, 25)),
                weighed("tower", Kind.FITTING, box(280, -15, 80, 360, 15, 130), 0, new Vector3D(320, 0, 100))));
        parts.addAll(List.of(more));
        Boat boat = new Boat("b", Water.ofDensity(1), Optional.empty(), parts, List.of(), RESIDUAL);
        return boat;
    }

    /** Volumes above the line by hand: she draws 60, so 20 mm of the box and all of the tower stand above it. */
    @Test
    void volumesAboveTheLine() {
        Boat boat = boxBoat(tank("t", box(200, -20, 10, 300, 20, 60), Optional.of("box")));
        TankSizing sizing = TankSizing.of(Condition.of(boat)).orElseThrow();
        assertFalse(sizing.painted());
        assertEquals(60, sizing.line().heightMm(), 1e-9);
        assertEquals(1e6 + 120000, sizing.aboveMm3(), 1e-3);
        assertEquals("box", sizing.above().get(0).piece().id());
        assertEquals(1e6, sizing.above().get(0).volumeMm3(), 1e-3);
        assertEquals(70, sizing.above().get(0).centroidMm().getZ(), 1e-6);
        assertEquals(120000, sizing.above().get(1).volumeMm3(), 1e-3);
        // Tank = what stands above the line less the reserve; 30 g is the middle of the band wanted.
        assertEquals(1.12e6 - 30000, sizing.neededMm3(), 1e-3);
        assertEquals(200000, sizing.thereMm3(), 1e-9);
        assertEquals(250, sizing.centreMm().orElseThrow().getX(), 1e-9);
        // 90 of the tower's 120 cm³ go under: its lower 37.5 mm.
        double x = (1e6 * 250 + 90000 * 320) / 1.09e6;
        assertEquals(x, sizing.wantedCentreMm().orElseThrow().getX(), 1e-6);
        assertEquals(0, sizing.wantedCentreMm().get().getY(), 1e-6);
    }

    /** A boat with just the tank that is asked for, in its place, dives level and keeps the reserve that is wanted. */
    @Test
    void tankAsAskedForDivesHerLevel() {
        TankSizing sizing = TankSizing.of(Condition.of(boxBoat())).orElseThrow();
        assertEquals(0, sizing.thereMm3(), 0);
        assertTrue(sizing.centreMm().isEmpty());
        double length = sizing.neededMm3() / (40 * 60);
        double x = sizing.wantedCentreMm().orElseThrow().getX();
        Boat fitted = boxBoat(tank("t", box(x - length / 2, -20, 5, x + length / 2, 20, 65), Optional.of("box")));
        DiveRun run = DiveRun.of(Condition.of(fitted), 20);
        assertEquals(30, run.failSafe().residualG(), 1e-6);
        DiveStep last = run.course().steps().get(20);
        assertEquals(0, last.settled().orElseThrow().trimDeg(), 1e-6);
        assertEquals("tower", run.failSafe().staysOut().orElseThrow().part());
        assertEquals(12.5, run.failSafe().staysOut().get().aboveMm(), 1e-6);
    }

    /** The largest part above the line stands first, wherever the file has it. */
    @Test
    void theLargestPartStandsFirst() {
        Boat boat = boxBoat();
        List<Part> turned = new ArrayList<>(boat.parts());
        Collections.reverse(turned);
        TankSizing sizing = TankSizing.of(Condition.of(boat.withParts(turned))).orElseThrow();
        assertEquals(
                List.of("box", "tower"),
                sizing.above().stream().map(a -> a.piece().id()).toList());
    }

    /** A painted line is taken instead of the one she floats on. */
    @Test
    void paintedLineCounts() {
        TankSizing sizing =
                TankSizing.of(Condition.of(DiveBoats.painted(boxBoat(), 50))).orElseThrow();
        assertTrue(sizing.painted());
        assertEquals(1.5e6 + 120000, sizing.aboveMm3(), 1e-3);
    }

    @Test
    void noLineNoSize() {
        Boat sunk = boxBoat(compact("w", 5000, new Vector3D(250, 0, 20)));
        assertTrue(TankSizing.of(Condition.of(sunk)).isEmpty());
    }

    /** Foam above the line acts only dived; it is to be swallowed by the tank and costs its own volume there. */
    @Test
    void foamAboveTheLineActsOnlyDived() {
        Boat without = boxBoat(tank("t", box(200, -20, 10, 300, 20, 60), Optional.of("box")));
        Part foam = solid("top foam", Kind.FOAM, box(100, -20, 90, 160, 20, 100), 1e-9);
        List<Part> parts = new ArrayList<>(without.parts());
        parts.add(foam);
        Condition before = Condition.of(without);
        Condition after = Condition.of(without.withParts(parts));
        Equilibrium afloat = Balance.settle(before, Balance.upright(before));
        Equilibrium withFoam = Balance.settle(after, Balance.upright(after));
        assertEquals(afloat.plane().heightMm(), withFoam.plane().heightMm(), 1e-6);
        assertEquals(afloat.trimDeg(), withFoam.trimDeg(), 1e-6);
        double volume = 60 * 40 * 10;
        assertEquals(
                volume,
                TankSizing.of(after).orElseThrow().neededMm3()
                        - TankSizing.of(before).orElseThrow().neededMm3(),
                1e-3);
        assertEquals(
                volume / 1000,
                Submerged.of(after).residualG() - Submerged.of(before).residualG(),
                1e-6);
        // Aft of her middle it lifts the stern when dived.
        assertTrue(Submerged.of(after).trimDeg() < Submerged.of(before).trimDeg());
    }

    /**
     * Doubling the keel lead and adding the foam that carries it, at the same station and under the waterline, leaves the waterline where it
     * was (less than 0.1 mm) and raises GM and BG.
     */
    @Test
    void leadAndFoamThatCancel() {
        Boat trimmed = DiveBoats.submarine(60, 40);
        Part lead = solid("more lead", Kind.BALLAST, box(400, -6, 8, 520, 6, 14), 11.34);
        double leadMm3 = 120 * 12 * 6;
        double foamMm3 = leadMm3 * (11.34 - 1) / (1 - 0.03);
        double length = foamMm3 / 2 / (8 * 18);
        double middle = 460;
        Part foam = twice(
                solid("more foam", Kind.FOAM, box(middle - length / 2, 30, 62, middle + length / 2, 38, 80), 0.03));
        List<Part> parts = new ArrayList<>(trimmed.parts());
        parts.add(lead);
        parts.add(foam);
        Condition before = Condition.of(trimmed);
        Condition after = Condition.of(trimmed.withParts(parts));
        Equilibrium a = Balance.settle(before, Balance.upright(before));
        Equilibrium b = Balance.settle(after, Balance.upright(after));
        PaintedOffset one = PaintedOffset.of(trimmed.paintedLine().orElseThrow(), a.plane());
        PaintedOffset other = PaintedOffset.of(trimmed.paintedLine().orElseThrow(), b.plane());
        assertEquals(one.bowMm(), other.bowMm(), 0.1);
        assertEquals(one.sternMm(), other.sternMm(), 0.1);
        assertTrue(b.gmTransverseMm() > a.gmTransverseMm() + 0.5);
        assertTrue(b.bgMm() > a.bgMm() + 0.5);
        assertTrue(Submerged.of(after).bgMm() > Submerged.of(before).bgMm() + 0.5);
    }
}
