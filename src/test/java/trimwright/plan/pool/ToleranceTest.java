package trimwright.plan.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Targets;

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
    }

    private static double residual() {
        return Figure.all(trimwright.statics.Condition.of(PoolBoats.boat()))[Figure.RESIDUAL.ordinal()];
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
}
