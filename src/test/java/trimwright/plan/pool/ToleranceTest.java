package trimwright.plan.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.Margins;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.statics.Condition;

class ToleranceTest {

    private static Boat withTargets(Targets targets) {
        Boat boat = PoolBoats.boat();
        return new Boat(boat.name(), boat.water(), boat.paintedLine(), boat.parts(), boat.zones(), targets);
    }

    /**
     * The weight scatters by the root of the sum of squares of the parts' margins, and the chance to be within a limit is that of a normal distribution
     * (closed forms); the residual scatters by what foam adds as well.
     */
    @Test
    void spreadsOfSumsInClosedForm() {
        Targets targets = new Targets(
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Targets.Band(-1e9, residual())),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Tolerance t = Tolerance.of(withTargets(targets), 4000, 7);
        // Box, tower, lead and battery ± 1 g each, weighed; foam of 8 g ± 1 g twice; the compact battery lies inside.
        double error = Math.sqrt(6);
        assertEquals(error, t.spreads().get(Figure.MASS).error(), 4 * error / Math.sqrt(2 * 4000));
        // Foam of 400 × 6 × 18 mm, 43.2 g of lift ± 2 % each.
        double lift = 0.02 * 43.2;
        double residual = Math.sqrt(6 + 2 * lift * lift);
        assertEquals(residual, t.spreads().get(Figure.RESIDUAL).error(), 4 * residual / Math.sqrt(2 * 4000));
        assertEquals(0.5, t.within().orElseThrow(), 4 * 0.5 / Math.sqrt(4000));
        assertEquals(t.within().orElseThrow(), t.withinByFigure().get(Figure.RESIDUAL));
        assertEquals(0, t.sinks());
        assertEquals(1, t.causes().stream().mapToDouble(Tolerance.Cause::share).sum(), 1e-12);
        Tolerance.InHand inHand = t.inHand().orElseThrow();
        assertEquals(
                2 * 1.645 * residual,
                inHand.addG() + inHand.takeG(),
                0.5,
                "from the 5th to the 95th of a normal hundred");
        // She lacks lead whatever the draw, so that none has to come out; all that displaces lies about x = 250.
        assertTrue(inHand.takeG() < 0);
        assertEquals(inHand.addG(), inHand.adjustableG());
        assertEquals(250, inHand.aboutXMm(), 1e-9);
        // All of it at the end of its reach turns her as much as is needed at most.
        assertEquals(
                inHand.alongGmm(), inHand.adjustableG() * inHand.reachAlongMm().orElseThrow(), 1e-9);
        assertEquals(
                inHand.acrossGmm(),
                inHand.adjustableG() * inHand.reachAcrossMm().orElseThrow(),
                1e-9);
    }

    /**
     * On her line G lies 80 mm · 180 g ahead of B by the battery alone, and scatters by every mass times its arm and by every place times its mass; across by the
     * lift of foam as well. What 19 of 20 boats need at most of either is found on the normal distribution, both tails (Commons Math).
     */
    @Test
    void momentsInHandInClosedForm() {
        Tolerance.InHand inHand =
                Tolerance.of(PoolBoats.boat(), 1000, 5).inHand().orElseThrow();
        double places = 1000.0 * 1000 + 40 * 40 + 726 * 726 + 8 * 8 * 2 + 180 * 180;
        double along = Math.sqrt(places + 80 * 80);
        double across = Math.sqrt(places + 2 * 53 * 53 * (1 + Math.pow(0.02 * 43.2, 2)));
        // 1000 draws find the 95th of a hundred within 4 √(0.95 · 0.05 ∕ 1000) ∕ density, which is 0.10 ∕ σ there.
        assertEquals(most(14_400, along), inHand.alongGmm(), 0.27 * along);
        assertEquals(most(0, across), inHand.acrossGmm(), 0.27 * across);
    }

    private static double most(double mean, double error) {
        NormalDistribution normal = new NormalDistribution();
        double low = 0;
        double high = Math.abs(mean) + 5 * error;
        while (high - low > 1e-9 * error) {
            double q = 0.5 * (low + high);
            double within = normal.cumulativeProbability((q - mean) / error)
                    - normal.cumulativeProbability((-q - mean) / error);
            low = within < 0.95 ? q : low;
            high = within < 0.95 ? high : q;
        }
        return low;
    }

    /** As heavy as what she displaces, 3198.4 g with nothing in her tank: every other boat sinks, and the figures are those of the others. */
    @Test
    void everyOtherBoatSinks() {
        Boat boat = PoolBoats.boat();
        List<Part> parts = boat.parts().stream()
                .map(p -> p.id().equals("lead")
                        ? p.withBody(p.shape(), Optional.of(726 + 3198.4 - 1962 - 1e-6), p.givenCentreMm())
                        : p)
                .toList();
        Tolerance t = Tolerance.of(boat.withParts(parts), 300, 11);
        assertEquals(0.5, t.sinks(), 4 * 0.5 / Math.sqrt(300));
    }

    private static double residual() {
        return Figure.all(Condition.of(PoolBoats.boat()))[Figure.RESIDUAL.ordinal()];
    }

    @Test
    void theSameForAnyNumberOfThreadsAndAnotherForAnotherSeed() throws Exception {
        Boat boat = PoolBoats.boat();
        Tolerance one =
                new ForkJoinPool(1).submit(() -> Tolerance.of(boat, 200, 42)).get();
        Tolerance three =
                new ForkJoinPool(3).submit(() -> Tolerance.of(boat, 200, 42)).get();
        assertEquals(one, three);
        assertNotEquals(one.spreads(), Tolerance.of(boat, 200, 43).spreads());
        assertTrue(one.within().isEmpty());
        assertEquals(List.of(), List.copyOf(one.withinByFigure().keySet()));
    }

    /**
     * Two pieces at ± 35 mm, each ± 1 g and ± 1 mm on its own: G lies to one side by √(2 (35² + 90²)) ∕ W for 90 g each, in closed form; off alike she could not
     * list at all.
     */
    @Test
    void aPairListsHer() {
        Boat boat = PoolBoats.boat();
        Margins none = new Margins(Optional.of(0.0), Optional.of(0.0), Optional.of(0.0));
        List<Part> parts = new ArrayList<>();
        boat.parts().stream()
                .map(p -> p.withMargins(none).withFill(0))
                .filter(p -> !p.id().equals("battery"))
                .forEach(parts::add);
        Part pair =
                TestParts.twice(TestParts.inside("box", TestParts.compact("pair", 90.0, new Vector3D(330, 35, 15))));
        parts.add(pair);
        Tolerance t = Tolerance.of(boat.withParts(parts), 4000, 3);
        double weight = Condition.of(boat.withParts(parts)).dryMassG();
        double toPort = Math.sqrt(2 * (35.0 * 35 + 90.0 * 90)) / weight;
        assertEquals(toPort, t.spreads().get(Figure.G_TO_PORT).error(), 4 * toPort / Math.sqrt(2 * 4000));
        assertEquals(Math.sqrt(2), t.spreads().get(Figure.MASS).error(), 4 * Math.sqrt(2) / Math.sqrt(2 * 4000));
        // In the file she is one pair again where both pieces are corrected alike, otherwise two parts.
        Boat apart = Pairs.apart(boat.withParts(parts));
        assertEquals(boat.withParts(parts), Corrections.rounded(boat.withParts(parts), apart));
        Part heavier = apart.part("pair twin").orElseThrow();
        assertEquals(-35, heavier.givenCentreMm().orElseThrow().getY());
        List<Part> off = new ArrayList<>(apart.parts());
        off.set(off.indexOf(heavier), heavier.withBody(heavier.shape(), Optional.of(92.0), heavier.givenCentreMm()));
        Boat written = Corrections.rounded(boat.withParts(parts), apart.withParts(off));
        assertFalse(written.part("pair").orElseThrow().mirror());
        assertEquals(Optional.of(92.0), written.part("pair twin").orElseThrow().weighedMassG());
    }
}
