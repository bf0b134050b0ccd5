package trimwright.plan.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trimwright.boat.Boat;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.plan.pool.PoolEstimate.Compared;

/** Readings that are right but for one that is wrong in a known way, and sums of squares whose chance is known in closed form. */
class DisagreementsTest {

    private static final Boat BOAT = PoolBoats.boat();
    private static final Vector3D BOW = new Vector3D(480, 0, 40);
    private static final Vector3D STERN = new Vector3D(20, 0, 40);

    /** With 2 degrees of freedom exp(−x ∕ 2), with 4 exp(−x ∕ 2) (1 + x ∕ 2). */
    @Test
    void chancesInClosedForm() {
        for (double x : new double[] {0, 0.3, 2, 9, 20}) {
            assertEquals(Math.exp(-x / 2), Disagreements.chance(x, 2), 1e-12);
            assertEquals(Math.exp(-x / 2) * (1 + x / 2), Disagreements.chance(x, 4), 1e-12);
        }
    }

    private static Compared compared(String reading, Sighting sighting, double times) {
        return new Compared(reading, sighting, Optional.empty(), Optional.empty(), times);
    }

    private static List<Finding> judged(double[] errors, double[] residuals, boolean settled, Sighting... sightings) {
        List<Compared> compared = new ArrayList<>();
        for (Sighting sighting : sightings) {
            compared.add(compared("r", sighting, 0));
        }
        Fit fit = new Fit(errors, residuals, new double[sightings.length][errors.length], settled);
        return Disagreements.of(BOAT, List.of(), List.of(), fit, compared);
    }

    /** Of two readings one in a hundred brings −2 ln 0.01 = 9.2103: half of it from the readings is their own doing, all of it from what is off is the file's. */
    @Test
    void oneInAHundred() {
        Sighting[] two = {PoolBoats.of(Quantity.LIST, 0), PoolBoats.of(Quantity.TRIM, 0)};
        double limit = -2 * Math.log(0.01);
        double below = Math.sqrt(limit - 0.01);
        double above = Math.sqrt(limit + 0.01);
        assertEquals(List.of(), judged(new double[1], new double[] {below, 0}, true, two));
        Finding against =
                judged(new double[1], new double[] {0, above}, true, two).get(0);
        assertEquals(Code.POOL_CONTRADICTION, against.code());
        assertEquals(9.2, against.values().get("limit"));
        assertEquals(9.2, against.values().get("chiSquare"));
        assertEquals(2, against.values().get("count"));
        assertEquals(
                100 * Math.exp(-(limit + 0.01) / 2), (Double) against.values().get("chancePercent"), 1e-9);
        List<Finding> file = judged(new double[] {above}, new double[2], true, two);
        assertEquals(
                List.of(Code.POOL_FILE_OFF), file.stream().map(Finding::code).toList());
        assertEquals(
                List.of(Code.POOL_FILE_OFF),
                judged(new double[] {1}, new double[] {below, 0}, true, two).stream()
                        .map(Finding::code)
                        .toList());
        assertEquals(
                List.of(Code.POOL_NOT_SETTLED),
                judged(new double[1], new double[2], false, two).stream()
                        .map(Finding::code)
                        .toList());
    }

    @Test
    void largeAngles() {
        List<Finding> found = judged(
                new double[1],
                new double[8],
                true,
                PoolBoats.of(Quantity.LIST, 19.9),
                PoolBoats.of(Quantity.LIST, 20),
                PoolBoats.of(Quantity.LIST, -20.5),
                PoolBoats.of(Quantity.TRIM, 9.9),
                PoolBoats.of(Quantity.TRIM, -10),
                PoolBoats.of(Quantity.TRIM, 10.5),
                PoolBoats.of(Quantity.HANGING, 500),
                PoolBoats.of(Quantity.RESTS_AT, 25));
        assertTrue(found.stream().allMatch(f -> f.code() == Code.POOL_LARGE_ANGLE));
        assertEquals(
                List.of(20.0, -20.5, -10.0, 10.5),
                found.stream().map(f -> f.values().get("foundDeg")).toList());
        assertEquals("heelDeg", found.get(0).values().get("quantity"));
    }

    /** Seven readings that are right: the line with a weight ahead, list and trim, a list under a weight across, and her weight dived. */
    private static List<Reading> right() {
        List<Reading> plan = List.of(
                PoolBoats.reading(
                        "ahead",
                        0,
                        List.of(),
                        List.of(
                                new WeightMoved(200, new Vector3D(100, 0, 0)),
                                new WeightMoved(150, new Vector3D(0, -40, 0))),
                        PoolBoats.at(Quantity.WATER_ABOVE, 0, BOW),
                        PoolBoats.at(Quantity.FREEBOARD, 0, STERN),
                        PoolBoats.of(Quantity.LIST, 0),
                        PoolBoats.of(Quantity.TRIM, 0)),
                PoolBoats.reading(
                        "empty",
                        0,
                        List.of(),
                        List.of(),
                        PoolBoats.at(Quantity.FREEBOARD, 0, new Vector3D(250, 0, 60))),
                PoolBoats.reading(
                        "dived",
                        1,
                        List.of(new KnownWeight(800, new Vector3D(250, 0, 30), Optional.empty())),
                        List.of(),
                        PoolBoats.of(Quantity.HANGING, 0)),
                PoolBoats.reading(
                        "dived again",
                        1,
                        List.of(new KnownWeight(700, new Vector3D(250, 0, 30), Optional.empty())),
                        List.of(),
                        PoolBoats.of(Quantity.HANGING, 0)));
        List<Reading> seen = new ArrayList<>();
        for (Reading reading : plan) {
            double[] expected = Sensitivity.of(BOAT, reading).orElseThrow().expected();
            List<Sighting> sightings = new ArrayList<>();
            for (int i = 0; i < expected.length; i++) {
                Sighting s = reading.seen().get(i);
                sightings.add(new Sighting(s.quantity(), expected[i], s.error(), s.atMm()));
            }
            seen.add(reading.withSeen(sightings));
        }
        return seen;
    }

    private static Sighting sighting(List<Reading> readings, String id, int index) {
        return readings.stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow()
                .seen()
                .get(index);
    }

    private static List<Reading> with(List<Reading> readings, String id, int index, double value) {
        return readings.stream()
                .map(r -> {
                    if (!r.id().equals(id)) {
                        return r;
                    }
                    List<Sighting> seen = new ArrayList<>(r.seen());
                    Sighting s = seen.get(index);
                    seen.set(index, new Sighting(s.quantity(), value, s.error(), s.atMm()));
                    return r.withSeen(seen);
                })
                .toList();
    }

    private static List<Finding> findings(List<Reading> readings) {
        return PoolEstimate.of(BOAT, new PoolTest("test", "", readings)).findings();
    }

    @Test
    void whatIsRightIsLeftInPeace() {
        PoolEstimate estimate = PoolEstimate.of(BOAT, new PoolTest("test", "", right()));
        assertEquals(List.of(), estimate.findings());
        assertFalse(estimate.isDoubtful() || estimate.isContradictory());
    }

    /** How a number may be wrong, which it is, and what it was. */
    private enum Wrong {
        SIGN_OF_A_LIST(MixUp.WITH_THE_OTHER_SIGN, "ahead", 2, "heelDeg", "Deg"),
        MM_OF_A_LIST(MixUp.AS_MM_ACROSS_HER_BREADTH, "ahead", 2, "heelDeg", "Deg"),
        SIGN_OF_A_TRIM(MixUp.WITH_THE_OTHER_SIGN, "ahead", 3, "trimDeg", "Deg"),
        MM_OF_A_TRIM(MixUp.AS_MM_ALONG_HER_LENGTH, "ahead", 3, "trimDeg", "Deg"),
        SIGN_OF_A_HEIGHT(MixUp.WITH_THE_OTHER_SIGN, "ahead", 0, "aboveMm", "Mm"),
        CM_OF_A_HEIGHT(MixUp.IN_CM, "empty", 0, "freeboardMm", "Mm"),
        INCHES_OF_A_HEIGHT(MixUp.IN_INCHES, "empty", 0, "freeboardMm", "Mm"),
        OUNCES(MixUp.IN_OUNCES, "dived", 0, "hangingG", "G");

        private final MixUp how;
        private final String reading;
        private final int index;
        private final String key;
        private final String unit;

        Wrong(MixUp how, String reading, int index, String key, String unit) {
            this.how = how;
            this.reading = reading;
            this.index = index;
            this.key = key;
            this.unit = unit;
        }

        double written(double right) {
            return switch (how) {
                case WITH_THE_OTHER_SIGN, AT_THE_OTHER_END -> -right;
                case AS_MM_ACROSS_HER_BREADTH -> 112 * Math.sin(Math.toRadians(right));
                case AS_MM_ALONG_HER_LENGTH -> 500 * Math.sin(Math.toRadians(right));
                case IN_CM -> right / 10;
                case IN_INCHES -> right / 25.4;
                case IN_OUNCES -> right / 28.349523125;
            };
        }
    }

    /** The reading is named alone, with what the others say, which are right, and with what was meant. */
    @ParameterizedTest
    @EnumSource
    void oneThatIsWrongIsNamed(Wrong wrong) {
        List<Reading> right = right();
        double truth = sighting(right, wrong.reading, wrong.index).value();
        double written = wrong.written(truth);
        List<Finding> found = findings(with(right, wrong.reading, wrong.index, written));
        List<Finding> outliers = found.stream()
                .filter(f -> f.code() == Code.POOL_OUTLIER || f.code() == Code.POOL_SUSPECT)
                .toList();
        assertEquals(1, outliers.size(), found::toString);
        Map<String, Object> values = outliers.get(0).values();
        assertEquals(Code.POOL_OUTLIER, outliers.get(0).code());
        assertEquals(wrong.reading, values.get("reading"));
        assertEquals(wrong.key, values.get("quantity"));
        assertEquals(written, values.get("found"));
        assertEquals(written, values.get("found" + wrong.unit));
        assertEquals(truth, (Double) values.get("others" + wrong.unit), 0.0051);
        assertTrue((Double) values.get("times") > 3);
        List<Object> meant = found.stream()
                .filter(f -> f.code() == Code.POOL_MIXED_UP)
                .map(f -> f.values().get("meant"))
                .toList();
        assertTrue(meant.contains(wrong.how), found::toString);
    }

    /**
     * Ounces for grams, and δ g beside it: within 2.5 deviations of what the other weighing says it was meant so. That one leaves V σ² ∕ (V + σ²) of the
     * variance V of her weight (textbook Bayes), V = 6 + 2 (0.02 · 43.2)² g², and its own error of 1 g comes on top.
     */
    @Test
    void howNearItMustComeIfItWasMeantOtherwise() {
        double v = 6 + 2 * Math.pow(0.02 * 43.2, 2);
        double limit = 2.5 * Math.sqrt(1 + v / (v + 1));
        List<Reading> weighings =
                right().stream().filter(r -> r.id().startsWith("dived")).toList();
        double truth = sighting(weighings, "dived", 0).value();
        for (double share : new double[] {-1.02, -0.98, 0.98, 1.02}) {
            List<Finding> found = findings(with(weighings, "dived", 0, (truth + share * limit) / 28.349523125));
            boolean meant = found.stream()
                    .anyMatch(f -> f.code() == Code.POOL_MIXED_UP && f.values().get("meant") == MixUp.IN_OUNCES);
            assertEquals(Math.abs(share) < 1, meant, share + " of " + limit + ": " + found);
        }
    }

    /** A number that is simply wrong was not meant otherwise. Of a straight reading it is off by √(1 − h) of its errors, h what the others leave of it. */
    @Test
    void oneThatIsWrongInNoKnownWay() {
        List<Reading> right = right();
        double truth = sighting(right, "dived", 0).value();
        List<Reading> wrong = with(right, "dived", 0, truth + 12);
        PoolEstimate estimate = PoolEstimate.of(BOAT, new PoolTest("test", "", wrong));
        List<Unknown> unknowns = Unknown.of(BOAT);
        Fit fit = Fit.of(BOAT, unknowns, right);
        int row = 5;
        double h = Posterior.of(fit.slopes(), unknowns.size()).variance(fit.slopes()[row]);
        double times = 12 * Math.sqrt(1 - h);
        assertEquals(times, estimate.sightings().get(row).timesItsError(), 0.02);
        Finding outlier = estimate.findings().stream()
                .filter(f -> f.code() == Code.POOL_OUTLIER)
                .findFirst()
                .orElseThrow();
        assertEquals(Math.rint(10 * times) / 10, (Double) outlier.values().get("times"), 0.1001);
        assertFalse(estimate.findings().stream().anyMatch(f -> f.code() == Code.POOL_MIXED_UP));
        assertTrue(estimate.isContradictory() && estimate.isDoubtful());
    }

    /** Two that are wrong, neither right alone: both are suspects, the worse first, and nobody says what they should be. */
    @Test
    void twoThatAreWrong() {
        List<Reading> right = right();
        double list = sighting(right, "ahead", 2).value();
        double height = sighting(right, "empty", 0).value();
        List<Finding> found = findings(with(with(right, "ahead", 2, list + 9), "empty", 0, height + 30));
        List<Finding> suspects =
                found.stream().filter(f -> f.code() == Code.POOL_SUSPECT).toList();
        assertTrue(suspects.size() >= 2, found::toString);
        assertTrue(found.stream().noneMatch(f -> f.code() == Code.POOL_OUTLIER || f.code() == Code.POOL_MIXED_UP));
        for (int i = 1; i < suspects.size(); i++) {
            assertTrue((Double) suspects.get(i - 1).values().get("times")
                    >= (Double) suspects.get(i).values().get("times"));
        }
        assertEquals("", suspects.get(0).values().get("othersMm"));
        List<Object> named =
                suspects.stream().map(f -> f.values().get("quantity")).toList();
        assertTrue(named.contains("heelDeg") && named.contains("freeboardMm"), named::toString);
    }

    /** Both ends of the line in the other's place: each alone looks wrong, together they are interchanged. */
    @Test
    void severalOfOneReadingMeantInOneWay() {
        Reading trimmed = PoolBoats.reading(
                "trimmed",
                0,
                List.of(),
                List.of(new WeightMoved(200, new Vector3D(100, 0, 0))),
                PoolBoats.at(Quantity.WATER_ABOVE, 0, BOW),
                PoolBoats.at(Quantity.WATER_ABOVE, 0, STERN),
                PoolBoats.of(Quantity.LIST, 0));
        double[] shown = Sensitivity.of(BOAT, trimmed).orElseThrow().expected();
        Reading wrong = trimmed.withSeen(List.of(
                PoolBoats.at(Quantity.WATER_ABOVE, shown[1], BOW),
                PoolBoats.at(Quantity.WATER_ABOVE, shown[0], STERN),
                PoolBoats.of(Quantity.LIST, shown[2])));
        List<Reading> all = new ArrayList<>(right());
        all.add(wrong);
        List<Finding> meant = findings(all).stream()
                .filter(f -> f.code() == Code.POOL_MIXED_UP)
                .toList();
        assertEquals(
                2,
                meant.stream()
                        .filter(f -> f.values().get("meant") == MixUp.AT_THE_OTHER_END)
                        .count());
        assertTrue(meant.stream().allMatch(f -> f.values().get("reading").equals("trimmed")));
        assertTrue(meant.stream().noneMatch(f -> f.values().get("meant") == MixUp.IN_CM));
    }

    /** All readings right of a boat whose lead is 25 times its margin too heavy: the file is off, the readings are not. */
    @Test
    void aBoatFarFromHerFile() {
        Boat truth = BOAT.withParts(BOAT.parts().stream()
                .map(p -> p.id().equals("lead") ? p.withBody(p.shape(), Optional.of(751.0), p.givenCentreMm()) : p)
                .toList());
        List<Reading> seen = new ArrayList<>();
        for (Reading reading : right()) {
            double[] expected = Sensitivity.of(truth, reading).orElseThrow().expected();
            Reading there = reading;
            for (int i = 0; i < expected.length; i++) {
                there = with(List.of(there), there.id(), i, expected[i]).get(0);
            }
            seen.add(there);
        }
        PoolEstimate estimate = PoolEstimate.of(BOAT, new PoolTest("test", "", seen));
        assertTrue(estimate.findings().stream().anyMatch(f -> f.code() == Code.POOL_FILE_OFF));
        assertTrue(estimate.isDoubtful());
        assertFalse(estimate.isContradictory());
    }
}
