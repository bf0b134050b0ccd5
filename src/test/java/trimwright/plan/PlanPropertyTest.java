package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.lifecycle.AfterContainer;
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
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/** Random boats: whatever is called a plan holds when she is floated, and its pieces lie where there is room. */
class PlanPropertyTest {

    private static final AtomicInteger FEASIBLE = new AtomicInteger();

    private static Part tower(double lengthMm, double middleXMm, double deckMm) {
        return TestParts.weighed(
                "tower",
                Kind.FITTING,
                TestParts.box(middleXMm - lengthMm / 10, -12, deckMm, middleXMm + lengthMm / 10, 12, deckMm + 45),
                50,
                TestParts.at(middleXMm, 0, deckMm + 20));
    }

    /** A box submarine of any proportions whose tank holds about what stands above her line, without zones. */
    private static Boat boat(
            double length, double beam, double height, double share, double tankShare, double massShare, double aside) {
        double line = share * height;
        double radius = 0.42 * Math.min(beam, line);
        double axis = radius + 0.12 * height;
        double aft = 0.2 * length;
        double fore = 0.8 * length;
        double middle = 0.52 * length;
        List<Part> parts = new ArrayList<>();
        parts.add(TestParts.hull(
                "hull", Solids.box(0, -beam / 2, 0, length, beam / 2, height), new HullBuild.Skin(1.5), 1.2));
        parts.add(tower(length, middle, height));
        BarShape cylinder =
                new BarShape(TestParts.at(aft, 0, axis), TestParts.at(fore, 0, axis), 2 * radius, BarShape.Ends.FLAT);
        double displacedG = cylinder.solid().volumeMm3() / 1000;
        parts.add(TestParts.weighed(
                "wtc", Kind.CYLINDER, cylinder, massShare * displacedG, TestParts.at(middle, aside, axis - 4)));
        double above = 1.5 * (2 * (length + beam) * (height - line) + length * beam) + length / 5 * 24 * 45;
        double bore = Math.PI * 0.92 * 0.92 * radius * radius;
        double tank = tankShare * above / bore;
        parts.add(PlanBoats.tank(
                "tank",
                "wtc",
                new BarShape(
                        TestParts.at(middle - tank / 2, 0, axis),
                        TestParts.at(middle + tank / 2, 0, axis),
                        2 * 0.92 * radius,
                        BarShape.Ends.FLAT)));
        return new Boat(
                "random",
                Water.FRESH,
                Optional.of(new PaintedLine(
                        List.of(TestParts.at(0.03 * length, 0, line), TestParts.at(0.97 * length, 0, line)))),
                parts,
                List.of(),
                Targets.NONE);
    }

    @Property(
            tries = 14,
            seed = "20261126",
            edgeCases = net.jqwik.api.EdgeCasesMode.NONE,
            shrinking = net.jqwik.api.ShrinkingMode.OFF)
    void everyFeasiblePlanHoldsWhenFloated(
            @ForAll @DoubleRange(min = 400, max = 1200) double length,
            @ForAll @DoubleRange(min = 70, max = 150) double beam,
            @ForAll @DoubleRange(min = 80, max = 140) double height,
            @ForAll @DoubleRange(min = 0.65, max = 0.85) double line,
            @ForAll @DoubleRange(min = 0.85, max = 1.05) double tank,
            @ForAll @DoubleRange(min = 0.5, max = 0.85) double mass,
            @ForAll @DoubleRange(min = -3, max = 3) double aside) {
        Boat boat = boat(length, beam, height, line, tank, mass, aside);
        Wanted wanted = new Wanted(4, 3, new Targets.Band(10, 80), 0.8, 0.5, 2);
        PlanRequest request = PlanRequest.of(boat, wanted, Goal.LEAST_MASS);
        BallastPlan plan = Planner.plan(request);
        if (!plan.feasible()) {
            assertFalse(plan.misses().isEmpty());
            plan.misses().forEach(m -> assertTrue(Double.isFinite(m.amount()), m.toString()));
            return;
        }
        FEASIBLE.incrementAndGet();
        Flotation afloat = Flotation.of(plan.planned());
        Equilibrium rest = afloat.settled().orElseThrow();
        assertEquals(0, afloat.fromPaintedLine().orElseThrow().bowMm(), 0.8);
        assertEquals(0, afloat.fromPaintedLine().orElseThrow().sternMm(), 0.8);
        assertEquals(0, rest.heelDeg(), 0.5);
        assertTrue(rest.gmTransverseMm() >= 3);
        assertTrue(afloat.submerged().bgMm() >= 4);
        assertTrue(afloat.submerged().residualG() >= 10 && afloat.submerged().residualG() <= 80);
        Equilibrium dived =
                Flotation.of(plan.planned().withAllTanksAt(1)).settled().orElseThrow();
        assertEquals(0, dived.trimDeg(), 2);
        liesInItsRoom(plan, boat, length, beam, height);
    }

    /** Inside the hull's wall, and neither in each other nor in the cylinder; along the boat columns of 1 to 2 mm let half of one pass. */
    private static void liesInItsRoom(BallastPlan plan, Boat boat, double length, double beam, double height) {
        double step = 1.1;
        List<Part> pieces = plan.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Bounds b = pieces.get(i).shape().orElseThrow().bounds();
            assertTrue(b.minX() >= 1.5 - step && b.maxX() <= length - 1.5 + step, b.toString());
            assertTrue(Math.max(-b.minY(), b.maxY()) <= beam / 2 - 1.5 + 1e-6, b.toString());
            assertTrue(b.minZ() >= 1.5 - 1e-6 && b.maxZ() <= height - 1.5 + 1e-6, b.toString());
            Bounds cylinder =
                    boat.part("wtc").orElseThrow().shape().orElseThrow().bounds();
            double radius = cylinder.sizeZ() / 2;
            boolean beside = b.maxX() <= cylinder.minX() + step || b.minX() >= cylinder.maxX() - step;
            double dy = Math.max(0, Math.max(b.minY(), -b.maxY()));
            double dz = Math.max(0, Math.max(b.minZ() - cylinder.centreZ(), cylinder.centreZ() - b.maxZ()));
            // Across, boxes end in the middle of a column, so they keep clear of the round.
            assertTrue(beside || Math.hypot(dy, dz) >= radius - 0.05, b + " in the cylinder");
            for (int j = i + 1; j < pieces.size(); j++) {
                Bounds shared =
                        b.intersection(pieces.get(j).shape().orElseThrow().bounds());
                boolean apart = shared.sizeX() <= step || shared.sizeY() <= 1e-6 || shared.sizeZ() <= 1e-6;
                assertTrue(apart, pieces.get(i).id() + " in " + pieces.get(j).id());
            }
        }
    }

    @AfterContainer
    static void enoughWereFeasible() {
        assertTrue(FEASIBLE.get() >= 5, "only " + FEASIBLE.get() + " random boats had a plan");
    }
}
