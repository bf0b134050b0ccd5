package trimwright.plan.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Sighting;
import trimwright.statics.Condition;

/** What a number may have meant, pairs as two parts, corrections as they are written down, and targets: by hand. */
class MixUpTest {

    /** She is 500 mm long and 112 mm wide over her foam. */
    private static final Boat BOAT = PoolBoats.boat();

    private static Map<MixUp, Sighting> meant(Sighting seen) {
        Map<MixUp, Sighting> all = new EnumMap<>(MixUp.class);
        MixUp.of(seen, Condition.of(BOAT)).forEach(m -> all.put(m.how(), m.sighting()));
        return all;
    }

    private static void assertMeant(Sighting seen, MixUp how, double value) {
        Sighting other = meant(seen).get(how);
        assertEquals(value, other.value(), 1e-9);
        assertEquals(seen.quantity(), other.quantity());
        assertEquals(seen.error(), other.error());
    }

    @Test
    void everythingThatMayHaveBeenMeant() {
        Sighting list = PoolBoats.of(Quantity.LIST, 56);
        assertMeant(list, MixUp.WITH_THE_OTHER_SIGN, -56);
        // 56 mm over a breadth of 112 are 30°.
        assertMeant(list, MixUp.AS_MM_ACROSS_HER_BREADTH, 30);
        assertEquals(2, meant(list).size());
        Sighting trim = PoolBoats.of(Quantity.TRIM, -250);
        assertMeant(trim, MixUp.WITH_THE_OTHER_SIGN, 250);
        assertMeant(trim, MixUp.AS_MM_ALONG_HER_LENGTH, -30);
        assertEquals(2, meant(trim).size());
        // Wherever x begins: of a boat from 100 to 140 a difference of 20 mm is 30°.
        Condition small = Condition.of(with(pair("a", false, Kind.BALLAST)));
        assertEquals(
                30,
                MixUp.of(PoolBoats.of(Quantity.TRIM, 20), small)
                        .get(1)
                        .sighting()
                        .value(),
                1e-9);
        // No boat shows more mm than she is wide.
        assertEquals(1, meant(PoolBoats.of(Quantity.LIST, 113)).size());
        Sighting loll = PoolBoats.of(Quantity.RESTS_AT, 56);
        assertMeant(loll, MixUp.AS_MM_ACROSS_HER_BREADTH, 30);
        assertEquals(1, meant(loll).size());
        assertEquals(Map.of(), meant(PoolBoats.of(Quantity.RESTS_AT, -56)));
        assertEquals(Map.of(), meant(PoolBoats.of(Quantity.RESTS_AT, 0)));
        assertEquals(Map.of(), meant(PoolBoats.of(Quantity.ROLL, 1)));
        // An ounce is 28.349523125 g, exact by the agreement of 1959.
        assertMeant(PoolBoats.of(Quantity.HANGING, 2), MixUp.IN_OUNCES, 56.69904625);
        assertEquals(1, meant(PoolBoats.of(Quantity.HANGING, 2)).size());
    }

    @Test
    void heightsOnTheLineMayBeOfTheOtherEnd() {
        Vector3D bow = new Vector3D(480, 0, 40);
        Vector3D stern = new Vector3D(20, 0, 40);
        for (Quantity quantity : List.of(Quantity.WATER_ABOVE, Quantity.FREEBOARD)) {
            Sighting seen = PoolBoats.at(quantity, 3, bow);
            assertMeant(seen, MixUp.WITH_THE_OTHER_SIGN, -3);
            assertMeant(seen, MixUp.IN_CM, 30);
            assertMeant(seen, MixUp.IN_INCHES, 76.2);
            assertMeant(seen, MixUp.AT_THE_OTHER_END, 3);
            assertEquals(4, meant(seen).size());
            assertEquals(
                    Optional.of(stern), meant(seen).get(MixUp.AT_THE_OTHER_END).atMm());
            assertEquals(
                    Optional.of(bow),
                    meant(PoolBoats.at(quantity, 3, stern))
                            .get(MixUp.AT_THE_OTHER_END)
                            .atMm());
            assertEquals(Optional.of(bow), meant(seen).get(MixUp.IN_CM).atMm());
            assertFalse(
                    meant(PoolBoats.at(quantity, 3, new Vector3D(250, 0, 40))).containsKey(MixUp.AT_THE_OTHER_END));
        }
    }

    private static Part pair(String id, boolean mirror, Kind kind) {
        return new Part(
                id,
                kind,
                Optional.of(PoolBoats.box(100, 10, 5, 140, 30, 15)),
                Optional.empty(),
                Optional.of(20.0),
                Optional.empty(),
                Optional.of(new Vector3D(120, 22, 9)),
                Optional.empty(),
                mirror,
                0);
    }

    private static Boat with(Part... parts) {
        return BOAT.withParts(List.of(parts));
    }

    /** A pair and its two pieces weigh and displace the same in the same places; the second has a name that nobody else has. */
    @Test
    void pairsAreTwoPieces() {
        Boat boat =
                with(pair("a", true, Kind.BALLAST), pair("a twin", false, Kind.BALLAST), pair("b", true, Kind.FOAM));
        Boat apart = Pairs.apart(boat);
        assertEquals(
                List.of("a", "a twin 2", "a twin", "b", "b twin"),
                apart.parts().stream().map(Part::id).toList());
        assertTrue(apart.parts().stream().noneMatch(Part::mirror));
        Condition one = Condition.of(boat);
        Condition two = Condition.of(apart);
        assertEquals(one.massG(), two.massG(), 1e-12);
        assertEquals(one.volumeMm3(), two.volumeMm3(), 1e-9);
        assertEquals(0, one.dryMomentGmm().distance(two.dryMomentGmm()), 1e-9);
        assertEquals(
                Optional.of(new Vector3D(120, -22, 9)),
                apart.part("b twin").orElseThrow().givenCentreMm());
        Part tank = pair("t", true, Kind.TANK);
        assertEquals(List.of(tank), Pairs.apart(with(tank)).parts());
    }

    /** What was changed is written to 0.01 g and mm, what was not as it stood; a pair that is still one is one again. */
    @Test
    void correctionsAreRoundedWhereSomethingChanged() {
        Part odd = pair("odd", false, Kind.BALLAST)
                .withBody(
                        Optional.of(PoolBoats.box(0.001, 1, 2, 3, 4, 5)),
                        Optional.of(7.0049),
                        Optional.of(new Vector3D(1.0049, 2, 3)));
        Boat boat = with(pair("p", true, Kind.BALLAST), odd);
        Boat apart = Pairs.apart(boat);
        assertEquals(boat.parts(), Corrections.rounded(boat, apart).parts());
        List<Unknown> unknowns = List.of(
                unknown(apart, "p", Unknown.What.MASS),
                unknown(apart, "p twin", Unknown.What.MASS),
                unknown(apart, "odd", Unknown.What.UP));
        Boat alike = Corrections.applied(apart, unknowns, new double[] {0.3333, 0.3333, 0});
        Boat written = Corrections.rounded(boat, alike);
        assertEquals(List.of("p", "odd"), written.parts().stream().map(Part::id).toList());
        assertEquals(20.33, written.parts().get(0).weighedMassG().orElseThrow(), 0);
        assertTrue(written.parts().get(0).mirror());
        assertEquals(odd, written.parts().get(1));
        Boat unlike = Corrections.applied(apart, unknowns, new double[] {0, 0.5, 0.1234});
        Boat two = Corrections.rounded(boat, unlike);
        assertEquals(
                List.of("p", "p twin", "odd"),
                two.parts().stream().map(Part::id).toList());
        assertEquals(20.5, two.parts().get(1).weighedMassG().orElseThrow(), 0);
        Part moved = two.parts().get(2);
        // The mass and the place were put down by the correction, the body was not touched.
        assertEquals(odd.shape(), moved.shape());
        assertEquals(odd.weighedMassG(), moved.weighedMassG());
        assertEquals(Optional.of(new Vector3D(1, 2, 3.12)), moved.givenCentreMm());
    }

    private static Unknown unknown(Boat boat, String part, Unknown.What what) {
        return Unknown.of(boat).stream()
                .filter(u -> u.part().equals(part) && u.what() == what)
                .findFirst()
                .orElseThrow();
    }

    /** A part that a plan took out is gone, one that it added stands at the end. */
    @Test
    void partsThatAPlanTookOutOrAdded() {
        Part p = pair("p", true, Kind.BALLAST);
        Part added = pair("new", false, Kind.BALLAST);
        Boat boat = with(p, pair("q", false, Kind.BALLAST));
        Boat planned =
                Pairs.apart(with(p)).withParts(List.of(added, p.alone("p"), Pairs.mirrorImage(p.alone("p twin"))));
        assertEquals(
                List.of("p", "new"),
                Corrections.rounded(boat, planned).parts().stream()
                        .map(Part::id)
                        .toList());
        // Half of the pair taken out leaves one piece.
        Boat half = planned.withParts(List.of(p.alone("p")));
        Boat left = Corrections.rounded(boat, half);
        assertEquals(1, left.parts().size());
        assertFalse(left.parts().get(0).mirror());
    }

    /** Targets hold at their limits and not beyond; a figure that she has not meets none. */
    @Test
    void targetsAreMetUpToTheirLimits() {
        Targets targets = new Targets(
                Optional.of(4.0),
                Optional.of(6.0),
                Optional.of(new Targets.Band(-5, 20)),
                Optional.of(1.5),
                Optional.of(0.5),
                Optional.of(2.0));
        Aims aims =
                Aims.of(new Boat(BOAT.name(), BOAT.water(), BOAT.paintedLine(), BOAT.parts(), BOAT.zones(), targets));
        assertLimits(aims, Figure.BOW, -1.5, 1.5, true, true);
        assertLimits(aims, Figure.STERN, -1.5, 1.5, true, true);
        assertLimits(aims, Figure.LIST, -0.5, 0.5, true, true);
        assertLimits(aims, Figure.TRIM_DIVED, -2, 2, true, true);
        assertLimits(aims, Figure.RESIDUAL, -5, 20, true, true);
        assertLimits(aims, Figure.GM, 6, 1e9, true, false);
        assertLimits(aims, Figure.BG_DIVED, 4, 1e9, true, false);
        assertEquals(7, aims.figures().size());
        double[] all = new double[Figure.values().length];
        all[Figure.GM.ordinal()] = 6;
        all[Figure.BG_DIVED.ordinal()] = 4;
        assertTrue(aims.areMet(all));
        all[Figure.LIST.ordinal()] = 0.6;
        assertFalse(aims.areMet(all));
        Boat lineless = new Boat(BOAT.name(), BOAT.water(), Optional.empty(), BOAT.parts(), BOAT.zones(), targets);
        assertFalse(Aims.of(lineless).figures().contains(Figure.BOW));
        assertTrue(Aims.of(BOAT).figures().isEmpty());
    }

    private static void assertLimits(
            Aims aims, Figure figure, double least, double most, boolean below, boolean above) {
        double[] figures = new double[Figure.values().length];
        for (double value : new double[] {least, most, least - 0.01, most + 0.01, Double.NaN}) {
            figures[figure.ordinal()] = value;
            boolean outside = value < least && below || value > most && above || Double.isNaN(value);
            assertEquals(!outside, aims.isMet(figure, figures), figure + " of " + value);
        }
    }
}
