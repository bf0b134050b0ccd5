package trimwright.plan.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;
import trimwright.plan.pool.NextReading.Kind;
import trimwright.statics.Condition;

/** What one straight reading tells, in closed form, and what the next would tell, by the formula for one more row (Sherman and Morrison). */
class NextReadingTest {

    private static final Boat BOAT = PoolBoats.boat();

    /** Variance of her weight against her lift, g²: six pieces weighed to 1 g, foam of 2 × 43.2 g of lift cut to 2 %. */
    private static final double LIFT = 0.02 * 43.2;

    private static final double VARIANCE = 6 + 2 * LIFT * LIFT;

    private static Reading hanging(double offG, double errorG) {
        Reading dived = PoolBoats.plan().get(2);
        double expected = Sensitivity.of(BOAT, dived).orElseThrow().expected()[0];
        return dived.withSeen(List.of(new Sighting(Quantity.HANGING, expected + offG, errorG, Optional.empty())));
    }

    private static PoolEstimate estimate(Boat boat, Reading... readings) {
        return PoolEstimate.of(boat, new PoolTest("test", "", List.of(readings)));
    }

    /** Hanging 7 g heavier than she should: every piece gets its share by its variance, lead 7 ∕ (V + σ²), and is known the better for it (textbook Bayes). */
    @Test
    void aWeighingSharesOutWhatIsMissing() {
        double error = 2;
        double all = VARIANCE + error * error;
        PoolEstimate found = estimate(BOAT, hanging(7, error));
        assertEquals(6, found.parts().size());
        for (PoolEstimate.PartOff part : found.parts()) {
            assertEquals(7 / all, part.massG(), 1e-6);
            assertEquals(Math.sqrt(1 - 1 / all), part.massErrorG(), 1e-6);
            assertEquals(0, part.moveMm().getNorm(), 1e-6);
            boolean foam = part.part().startsWith("foam");
            // More foam lifts more: 2 % of it for each standard deviation.
            assertEquals(foam ? -2 * 7 * LIFT / all : 0, part.volumePercent(), 1e-5);
            assertEquals(7 / all, part.suspicion(), 1e-6);
        }
        assertEquals(49 / all, found.chiSquare(), 1e-6);
        // One degree of freedom: twice the tail of a normal distribution, 0.0304 at 2.1641 deviations (Commons Math).
        double tail = 2 * new NormalDistribution().cumulativeProbability(-7 / Math.sqrt(all));
        assertEquals(tail, found.chance(), 1e-6);
        PoolEstimate.Known mass = found.figures().get(Figure.MASS);
        assertEquals(7 * 6 / all, mass.after() - mass.before(), 1e-6);
        assertEquals(Math.sqrt(6), mass.beforeError(), 1e-9);
        assertEquals(Math.sqrt(6 - 36 / all), mass.afterError(), 1e-6);
        PoolEstimate.Compared seen = found.sightings().get(0);
        assertEquals("dived", seen.reading());
        assertEquals(seen.sighting().value() - 7, seen.before().orElseThrow(), 1e-9);
        assertEquals(
                seen.sighting().value() - 7 + 7 * VARIANCE / all, seen.after().orElseThrow(), 1e-6);
        assertEquals(7 / Math.sqrt(all), seen.timesItsError(), 1e-6);
    }

    /** Of her weight √(1 − 6 ∕ (V + σ²)) of what was unknown is left: more than 0.8 for a scale of ± 4 g, less for one of ± 3; where G lies across is as unknown as before. */
    @Test
    void whatIsStillUnknown() {
        for (double error : new double[] {3, 4}) {
            List<Figure> unknown = estimate(BOAT, hanging(0, error)).unknown();
            double left = Math.sqrt(1 - 6 / (VARIANCE + error * error));
            assertEquals(left > 0.8, unknown.contains(Figure.MASS), "left " + left);
            assertEquals(error == 4, left > 0.8);
            assertTrue(unknown.contains(Figure.G_TO_PORT));
        }
    }

    /** Of pieces with one mass each: that which is off most in its own margins comes first. */
    @Test
    void theLikeliestComesFirst() {
        Reading list = PoolBoats.reading("list", 0, List.of(), List.of(), PoolBoats.of(Quantity.LIST, 3));
        List<PoolEstimate.PartOff> parts = estimate(BOAT, list).parts();
        for (int i = 1; i < parts.size(); i++) {
            assertTrue(parts.get(i - 1).suspicion() >= parts.get(i).suspicion());
        }
        // The box weighs most: 1000 g off to starboard by 1 mm list her more than anything else does.
        assertEquals("box", parts.get(0).part());
        assertTrue(parts.get(0).moveMm().getY() < 0);
        assertEquals(0, parts.get(0).moveMm().getX() / parts.get(0).moveMm().getY(), 0.05);
        assertTrue(parts.get(0).suspicion() > parts.get(parts.size() - 1).suspicion());
    }

    /** 1962 g of boat, 2 % in steps of 5 g; 0.3 of 112 mm; dived 3198.4 g of lift less 2620 are 578.4 g, and 20 g more than the next ten to hang on the scale. */
    @Test
    void whatIsProposed() {
        Map<Kind, NextReading> next = next(estimate(BOAT, hanging(0, 1)));
        assertEquals(Kind.values().length, next.size());
        assertEquals(40, next.get(Kind.WEIGHT_MOVED_ACROSS).massG());
        assertEquals(34, next.get(Kind.WEIGHT_MOVED_ACROSS).wayMm());
        assertEquals(600, next.get(Kind.WEIGHED_DIVED).massG());
        assertEquals(0, next.get(Kind.WEIGHED_DIVED).wayMm());
        assertEquals(
                List.of(1.0, 1.0, 2.0, 2.0, 3.0, 1.0),
                List.of(Kind.values()).stream().map(k -> next.get(k).effort()).toList());
        Boat lineless =
                new Boat(BOAT.name(), BOAT.water(), Optional.empty(), BOAT.parts(), BOAT.zones(), BOAT.targets());
        Map<Kind, NextReading> less = next(estimate(lineless, hanging(0, 1)));
        assertFalse(less.containsKey(Kind.LINE_SURFACED) || less.containsKey(Kind.LINE_DIVED));
        assertEquals(4, less.size());
        List<Part> dry = BOAT.parts().stream().filter(p -> !p.isTank()).toList();
        Reading list = new Reading(
                "list", Map.of(), Optional.empty(), List.of(), List.of(), List.of(PoolBoats.of(Quantity.LIST, 0)));
        Map<Kind, NextReading> tankless = next(estimate(BOAT.withParts(dry), list));
        assertFalse(tankless.containsKey(Kind.WEIGHED_DIVED) || tankless.containsKey(Kind.LINE_DIVED));
        assertEquals(4, tankless.size());
    }

    private static Map<Kind, NextReading> next(PoolEstimate estimate) {
        Map<Kind, NextReading> next = new EnumMap<>(Kind.class);
        estimate.next().forEach(n -> next.put(n.kind(), n));
        assertEquals(next.size(), estimate.next().size());
        for (int i = 1; i < estimate.next().size(); i++) {
            NextReading before = estimate.next().get(i - 1);
            NextReading after = estimate.next().get(i);
            assertTrue(before.gain() / before.effort() >= after.gain() / after.effort());
        }
        return next;
    }

    /**
     * With one more row r the covariance P loses P r rᵀ P ∕ (1 + rᵀ P r), so that a figure of slopes g loses (gᵀ P r)² ∕ (1 + rᵀ P r) of its variance; what is
     * open is the sum over the figures, each over what it should be known by: 0.5 mm at bow and stern, 0.3°, 0.5 mm of BG, 1° dived, 5 g.
     */
    @Test
    void whatTheNextWouldTell() {
        PoolEstimate found = estimate(BOAT, hanging(0, 1));
        List<Unknown> unknowns = Unknown.of(BOAT);
        double[][] figures = Slopes.ofFigures(BOAT, unknowns);
        Map<Figure, Double> wanted = Map.of(
                Figure.BOW,
                0.5,
                Figure.STERN,
                0.5,
                Figure.LIST,
                0.3,
                Figure.BG_DIVED,
                0.5,
                Figure.TRIM_DIVED,
                1.0,
                Figure.RESIDUAL,
                5.0);
        Map<Kind, Reading> readings = new EnumMap<>(Kind.class);
        Vector3D bow = new Vector3D(480, 0, 40);
        Vector3D stern = new Vector3D(20, 0, 40);
        Sighting list = PoolBoats.of(Quantity.LIST, 0);
        Sighting[] line = {PoolBoats.at(Quantity.WATER_ABOVE, 0, bow), PoolBoats.at(Quantity.WATER_ABOVE, 0, stern)};
        readings.put(Kind.LINE_SURFACED, PoolBoats.reading("r", 0, List.of(), List.of(), line));
        readings.put(Kind.LINE_DIVED, PoolBoats.reading("r", 1, List.of(), List.of(), line));
        readings.put(Kind.LIST_SURFACED, PoolBoats.reading("r", 0, List.of(), List.of(), list));
        readings.put(
                Kind.WEIGHT_MOVED_ACROSS,
                PoolBoats.reading("r", 0, List.of(), List.of(new WeightMoved(40, new Vector3D(0, -34, 0))), list));
        readings.put(Kind.ROLL_TIMED, PoolBoats.reading("r", 0, List.of(), List.of(), PoolBoats.of(Quantity.ROLL, 1)));
        Vector3D middle = Condition.of(BOAT).volumeCentroidMm();
        readings.put(
                Kind.WEIGHED_DIVED,
                PoolBoats.reading(
                        "r",
                        1,
                        List.of(new KnownWeight(600, middle, Optional.empty())),
                        List.of(),
                        PoolBoats.of(Quantity.HANGING, 20)));
        for (NextReading next : found.next()) {
            RealMatrix p = MatrixUtils.createRealIdentityMatrix(unknowns.size());
            List<double[]> rows = new ArrayList<>();
            rows.addAll(rows(hanging(0, 1), unknowns));
            int known = rows.size();
            rows.addAll(rows(readings.get(next.kind()), unknowns));
            double before = 0;
            for (int i = 0; i < rows.size(); i++) {
                if (i == known) {
                    before = open(p, figures, wanted);
                }
                RealVector pr = p.operate(new ArrayRealVector(rows.get(i)));
                double scale = 1 + pr.dotProduct(new ArrayRealVector(rows.get(i)));
                p = p.subtract(pr.outerProduct(pr).scalarMultiply(1 / scale));
            }
            assertEquals(
                    1 - open(p, figures, wanted) / before,
                    next.gain(),
                    1e-6,
                    next.kind().toString());
        }
    }

    private static List<double[]> rows(Reading reading, List<Unknown> unknowns) {
        List<double[]> rows = new ArrayList<>();
        double[][] slopes = Sensitivity.of(BOAT, reading).orElseThrow().slopes(unknowns);
        for (int i = 0; i < slopes.length; i++) {
            Sighting sighting = reading.seen().get(i);
            // 1 ∕ T² of a roll of 1 s is known to twice the error of T.
            double error = sighting.quantity() == Quantity.ROLL ? 2 * sighting.error() : sighting.error();
            rows.add(new ArrayRealVector(slopes[i]).mapDivide(error).toArray());
        }
        return rows;
    }

    private static double open(RealMatrix p, double[][] figures, Map<Figure, Double> wanted) {
        double sum = 0;
        for (Map.Entry<Figure, Double> want : wanted.entrySet()) {
            RealVector g = new ArrayRealVector(figures[want.getKey().ordinal()]);
            sum += p.operate(g).dotProduct(g) / (want.getValue() * want.getValue());
        }
        return sum;
    }
}
