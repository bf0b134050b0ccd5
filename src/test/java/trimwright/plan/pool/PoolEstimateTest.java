package trimwright.plan.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;
import trimwright.finding.Code;
import trimwright.finding.UnusableInputException;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

class PoolEstimateTest {

    private static final int BOATS = 200;

    private static PoolEstimate estimate(Boat boat, List<Reading> readings) {
        return PoolEstimate.of(boat, new PoolTest("test", "", readings));
    }

    /**
     * Boats with errors drawn from their margins, read with errors drawn from those of the readings: figures are recovered within the stated
     * uncertainty, 68 % of them within one standard deviation and 95 % within two, and the chi-square of the fit has as many
     * degrees of freedom as there are readings (linear least squares with priors).
     */
    @Test
    void intervalsHoldTheTruthAsOftenAsTheySay() {
        Boat boat = PoolBoats.boat();
        List<Unknown> unknowns = Unknown.of(boat);
        Random random = new Random(20261126);
        Map<Figure, int[]> within = new EnumMap<>(Figure.class);
        double chi = 0;
        int sightings = 0;
        int unlikely = 0;
        for (int n = 0; n < BOATS; n++) {
            double[] errors =
                    unknowns.stream().mapToDouble(u -> random.nextGaussian()).toArray();
            Boat truth = Corrections.applied(boat, unknowns, errors);
            PoolEstimate found = estimate(boat, PoolBoats.seenOf(truth, PoolBoats.plan(), random));
            double[] true_ = Figure.all(Condition.of(truth));
            for (Map.Entry<Figure, PoolEstimate.Known> e : found.figures().entrySet()) {
                double z = (e.getValue().after() - true_[e.getKey().ordinal()])
                        / e.getValue().afterError();
                int[] count = within.computeIfAbsent(e.getKey(), f -> new int[2]);
                count[0] += Math.abs(z) < 1 ? 1 : 0;
                count[1] += Math.abs(z) < 2 ? 1 : 0;
            }
            chi += found.chiSquare();
            sightings = found.sightings().size();
            unlikely += found.chance() < 0.05 ? 1 : 0;
        }
        assertEquals(Figure.values().length, within.size());
        within.forEach((figure, count) -> {
            // 200 draws scatter by 3.3 % about 68 % and by 1.5 % about 95 %; four times that.
            assertEquals(0.683, count[0] / (double) BOATS, 0.13, figure + " within one");
            assertEquals(0.954, count[1] / (double) BOATS, 0.06, figure + " within two");
        });
        assertEquals(sightings, chi / BOATS, 4 * Math.sqrt(2.0 * sightings / BOATS));
        assertTrue(unlikely < 0.11 * BOATS, unlikely + " unlikely fits");
    }

    /** Readings without error of a boat that is as her file says leave her as she is, with chi-square zero. */
    @Test
    void aBoatThatIsRightIsLeftAlone() {
        Boat boat = PoolBoats.boat();
        Random none = new Random() {
            @Override
            public double nextGaussian() {
                return 0;
            }
        };
        PoolEstimate found = estimate(boat, PoolBoats.seenOf(boat, PoolBoats.plan(), none));
        assertEquals(0, found.chiSquare(), 1e-12);
        assertEquals(1, found.chance(), 1e-12);
        found.parts().forEach(p -> assertEquals(0, p.massG(), 1e-6));
        assertTrue(found.findings().stream().noneMatch(f -> f.code() == Code.POOL_OUTLIER));
    }

    /**
     * One reading of a quantity that depends on the unknowns in a straight line: posterior mean and variance in closed form, off = P Aᵀ r ∕ (1 + A P Aᵀ), and the
     * variance of the reading's own prediction a ∕ (1 + a), a = A P Aᵀ (textbook Bayes; here P = I).
     */
    @Test
    void oneStraightReadingInClosedForm() {
        Boat boat = PoolBoats.boat();
        Reading dived = PoolBoats.plan().get(2);
        double expected = Sensitivity.of(boat, dived).orElseThrow().expected()[0];
        Reading seen = new Reading(
                dived.id(),
                dived.fills(),
                dived.water(),
                dived.added(),
                dived.moved(),
                List.of(PoolBoats.of(Quantity.HANGING, expected + 7)));
        List<Unknown> unknowns = Unknown.of(boat);
        Fit fit = Fit.of(boat, unknowns, List.of(seen));
        double a = 0;
        for (double slope : fit.slopes()[0]) {
            a += slope * slope;
        }
        for (int k = 0; k < unknowns.size(); k++) {
            assertEquals(7 * fit.slopes()[0][k] / (1 + a), fit.errors()[k], 1e-6);
        }
        assertEquals(
                Math.sqrt(a / (1 + a)),
                Posterior.of(fit.slopes(), unknowns.size()).error(fit.slopes()[0]),
                1e-12);
    }

    /** The covariance against the plain inverse of the normal equations (Commons Math's LU decomposition). */
    @Test
    void posteriorIsTheInverseOfTheNormalEquations() {
        Random random = new Random(3);
        double[][] slopes = new double[5][8];
        for (double[] row : slopes) {
            for (int k = 0; k < row.length; k++) {
                row[k] = random.nextGaussian();
            }
        }
        RealMatrix a = MatrixUtils.createRealMatrix(slopes);
        RealMatrix inverse = MatrixUtils.inverse(
                MatrixUtils.createRealIdentityMatrix(8).add(a.transpose().multiply(a)));
        Posterior posterior = Posterior.of(slopes, 8);
        for (int k = 0; k < 8; k++) {
            assertEquals(Math.sqrt(inverse.getEntry(k, k)), posterior.left(k), 1e-12);
        }
    }

    /** A weight of 50 g moved by 0, 20, 40 mm lists the boat by tan φ = w d ∕ (W GM); errors worked by hand are those of the regression. */
    @Test
    void incliningGivesGm() {
        Boat boat = PoolBoats.boat();
        Condition condition = Condition.of(boat);
        List<Reading> readings = new ArrayList<>();
        for (double way : new double[] {0, 10, 20, -20}) {
            Reading r = PoolBoats.reading(
                    "way " + way,
                    0,
                    List.of(),
                    List.of(new WeightMoved(20, new Vector3D(0, -way, 0))),
                    PoolBoats.of(Quantity.LIST, 0));
            double list = Sensitivity.of(boat, r).orElseThrow().expected()[0];
            readings.add(PoolBoats.reading(r.id(), 0, List.of(), r.moved(), PoolBoats.of(Quantity.LIST, list)));
        }
        Inclining inclining = Inclining.of(boat, readings).orElseThrow();
        double gm = Figure.all(condition)[Figure.GM.ordinal()];
        double kg = Figure.all(condition)[Figure.G_UP.ordinal()];
        assertEquals(4, inclining.readings());
        // Wall-sided: W GM tan φ falls short by ½ BM tan³ φ, which at 1° is nothing.
        assertEquals(gm, inclining.gmMm(), 2e-3 * gm);
        assertEquals(kg, inclining.kgMm(), 0.05);
        assertTrue(Inclining.of(boat, readings.subList(0, 2)).isEmpty());
    }

    /** Slope and standard error of a straight line through four points as any textbook has them: se² = Σ r² ∕ (n − 2) ∕ Σ (x − x̄)². */
    @Test
    void incliningTellsHowSureItIs() {
        Boat boat = PoolBoats.boat();
        double[] ways = {0, 10, 20, -20};
        double[] listsDeg = {0.1, 0.6, 1.2, -1.1};
        List<Reading> readings = new ArrayList<>();
        double meanX = 0;
        double meanY = 0;
        for (int i = 0; i < ways.length; i++) {
            readings.add(PoolBoats.reading(
                    "way " + ways[i],
                    0,
                    List.of(),
                    List.of(new WeightMoved(20, new Vector3D(0, -ways[i], 0))),
                    PoolBoats.of(Quantity.LIST, listsDeg[i])));
            meanX += Math.tan(Math.toRadians(listsDeg[i])) / 4;
            meanY += 20 * ways[i] / 4;
        }
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (int i = 0; i < ways.length; i++) {
            double dx = Math.tan(Math.toRadians(listsDeg[i])) - meanX;
            double dy = 20 * ways[i] - meanY;
            sxx += dx * dx;
            sxy += dx * dy;
            syy += dy * dy;
        }
        double error = Math.sqrt((syy - sxy * sxy / sxx) / 2 / sxx);
        double weight = Condition.of(boat).massG();
        Inclining inclining = Inclining.of(boat, readings).orElseThrow();
        assertEquals(sxy / sxx / weight, inclining.gmMm(), 1e-9);
        assertEquals(error / weight, inclining.gmErrorMm(), 1e-9);
        assertEquals(error / weight, inclining.kgErrorMm(), 1e-9);
    }

    /** A list of 25 where 0.2° fits: the reading is named, and all together are told to contradict. */
    @Test
    void areadingInTheWrongUnitIsNamed() {
        Boat boat = PoolBoats.boat();
        List<Reading> readings = new ArrayList<>(PoolBoats.seenOf(boat, PoolBoats.plan(), new Random(5)));
        Reading first = readings.get(0);
        List<Sighting> seen = new ArrayList<>(first.seen());
        seen.set(2, PoolBoats.of(Quantity.LIST, 25));
        readings.set(0, new Reading(first.id(), first.fills(), first.water(), first.added(), first.moved(), seen));
        PoolEstimate found = estimate(boat, readings);
        assertTrue(found.findings().stream()
                .anyMatch(f -> f.code() == Code.POOL_OUTLIER
                        && "heelDeg".equals(f.values().get("quantity"))));
        assertTrue(found.findings().stream().anyMatch(f -> f.code() == Code.POOL_CONTRADICTION));
        assertEquals(1 - new ChiSquaredDistribution(6).cumulativeProbability(found.chiSquare()), found.chance(), 1e-15);
    }

    /** With the line read alone nothing is known of how high G stands; the weight across or the roll would tell. */
    @Test
    void whatIsUnknownIsToldAndWhatWouldTellIt() {
        Boat boat = PoolBoats.boat();
        List<Reading> line =
                List.of(PoolBoats.seenOf(boat, PoolBoats.plan(), new Random(6)).get(0));
        PoolEstimate found = estimate(boat, line);
        assertTrue(found.unknown().contains(Figure.GM), found.unknown().toString());
        assertTrue(found.next().size() >= 5);
        for (NextReading next : found.next()) {
            assertTrue(next.gain() >= -1e-9 && next.gain() <= 1, next.toString());
        }
        assertTrue(found.next().get(0).gain() > 0.05);
    }

    /**
     * A boat that lolls: tan² φ = −2 GM ∕ BM while wall-sided, so that the list on either side tells the height of G; roll and freeboard readings of a boat
     * that stands agree with her own figures.
     */
    @Test
    void theListOnEitherSideTellsTheHeightOfG() {
        Boat boat = PoolBoats.boat();
        Reading top = PoolBoats.reading(
                "top weight",
                0,
                List.of(new KnownWeight(350, new Vector3D(250, 0, 175), Optional.empty())),
                List.of(),
                PoolBoats.of(Quantity.RESTS_AT, 5));
        Condition there = Scene.of(boat, top);
        double loll = Math.abs(Flotation.settling(there).settled().orElseThrow().heelDeg());
        assertTrue(loll > 3 && loll < 20, "she lolls by " + loll);
        Reading exact = PoolBoats.reading(
                "top weight", 0, top.added(), List.of(), new Sighting(Quantity.RESTS_AT, loll, 0.1, Optional.empty()));
        assertEquals(loll, Sensitivity.of(boat, exact).orElseThrow().expected()[0], 1e-4);
        PoolEstimate same = estimate(boat, List.of(exact));
        assertEquals(0, same.chiSquare(), 1e-6);
        // A larger list is a higher G.
        Reading further = PoolBoats.reading(
                "top weight",
                0,
                top.added(),
                List.of(),
                new Sighting(Quantity.RESTS_AT, loll + 1, 0.1, Optional.empty()));
        PoolEstimate higher = estimate(boat, List.of(further));
        PoolEstimate.Known g = higher.figures().get(Figure.G_UP);
        assertTrue(g.after() > g.before() + 0.01, g.toString());
        assertTrue(g.afterError() < 0.9 * g.beforeError(), g.toString());
        Condition corrected = Scene.of(higher.corrected(), further);
        double now =
                Math.abs(Flotation.settling(corrected).settled().orElseThrow().heelDeg());
        assertEquals(loll + 1, now, 0.3);
    }

    @Test
    void aStateInWhichSheSinksIsRefused() {
        Boat boat = PoolBoats.boat();
        Reading sinking = PoolBoats.reading(
                "sinks",
                1,
                List.of(new KnownWeight(3000, new Vector3D(250, 0, 30), Optional.empty())),
                List.of(),
                PoolBoats.of(Quantity.LIST, 0));
        UnusableInputException refused =
                assertThrows(UnusableInputException.class, () -> estimate(boat, List.of(sinking)));
        assertEquals(Code.POOL_READING_SINKS, refused.findings().get(0).code());
    }

    /** Two heights at the wrong ends: neither is right alone, both fit when interchanged. */
    @Test
    void interchangedEndsAreNoticed() {
        Boat boat = PoolBoats.boat();
        Reading first = PoolBoats.seenOf(boat, PoolBoats.plan(), new Random(8)).get(0);
        Vector3D bow = boat.paintedLine().orElseThrow().foremostMm();
        Vector3D stern = boat.paintedLine().orElseThrow().aftmostMm();
        // 200 g moved ahead by 100 mm trims her by the bow by some 4 mm at either end.
        Reading trimmed = PoolBoats.reading(
                "trimmed",
                0,
                List.of(),
                List.of(new WeightMoved(200, new Vector3D(100, 0, 0))),
                PoolBoats.at(Quantity.WATER_ABOVE, 0, bow),
                PoolBoats.at(Quantity.WATER_ABOVE, 0, stern));
        double[] shown = Sensitivity.of(boat, trimmed).orElseThrow().expected();
        assertTrue(shown[0] > 2 && shown[1] < -2, shown[0] + " " + shown[1]);
        Reading wrong = trimmed.withSeen(List.of(
                PoolBoats.at(Quantity.WATER_ABOVE, shown[1], bow),
                PoolBoats.at(Quantity.WATER_ABOVE, shown[0], stern)));
        PoolEstimate found = estimate(boat, List.of(first, wrong));
        assertTrue(
                found.findings().stream()
                        .anyMatch(f ->
                                f.code() == Code.POOL_MIXED_UP && f.values().get("meant") == MixUp.AT_THE_OTHER_END),
                found.findings().toString());
    }

    /**
     * The file has her sink by 2 g in a state in which she was seen afloat: its margins of √(6 + …) g allow that, so the reading counts. A boat that is
     * said to sink by ten times as much is refused.
     */
    @Test
    void aBoatThatWouldSinkByLessThanHerMarginsIsFloated() {
        Boat boat = PoolBoats.boat();
        double reserve = Condition.of(boat).withAllTanksAt(1).reserveG();
        Vector3D top = new Vector3D(250, 0, 100);
        for (double beyond : new double[] {2, 40}) {
            Reading dived = PoolBoats.reading(
                    "dived",
                    1,
                    List.of(new KnownWeight(reserve + beyond, new Vector3D(250, 0, 30), Optional.empty())),
                    List.of(),
                    PoolBoats.at(Quantity.FREEBOARD, 5, top));
            if (beyond > 10) {
                assertThrows(UnusableInputException.class, () -> estimate(boat, List.of(dived)));
                continue;
            }
            PoolEstimate found = estimate(boat, List.of(dived));
            PoolEstimate.Compared tower = found.sightings().get(0);
            assertEquals(Optional.empty(), tower.before(), "the boat of the file shows nothing: she sinks");
            // 5 mm of a tower of 60 × 20 mm are 6 g, 8 with what is missing; her margins draw her back by 0.6² ∕ (0.6²
            // + 7.5) of it, 0.4 g or 0.3 mm.
            assertEquals(5, tower.after().orElseThrow(), 0.8);
            PoolEstimate.Known residual = found.figures().get(Figure.RESIDUAL);
            double out = Scene.of(found.corrected(), dived).reserveG();
            assertTrue(out > 0, "the corrected boat floats there");
            assertEquals(beyond + out, residual.after() - residual.before(), 1e-6);
        }
    }

    /** Numbers far from any boat end in words, not in a failure of the search. */
    @Test
    void absurdReadingsAreAnswered() {
        Boat boat = PoolBoats.boat();
        Vector3D bow = boat.paintedLine().orElseThrow().foremostMm();
        Vector3D stern = boat.paintedLine().orElseThrow().aftmostMm();
        for (double mm : new double[] {15, 40, 400}) {
            Reading absurd = PoolBoats.reading(
                    "absurd",
                    0,
                    List.of(),
                    List.of(),
                    PoolBoats.at(Quantity.WATER_ABOVE, mm, bow),
                    PoolBoats.at(Quantity.WATER_ABOVE, -mm, stern),
                    PoolBoats.of(Quantity.LIST, 170));
            PoolEstimate found = estimate(boat, List.of(absurd));
            assertTrue(found.isContradictory(), found.findings().toString());
            assertTrue(found.findings().stream().anyMatch(f -> f.code() == Code.POOL_LARGE_ANGLE));
        }
    }
}
