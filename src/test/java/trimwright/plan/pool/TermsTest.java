package trimwright.plan.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Part;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.RollPeriod;

/** The terms in which readings are compared, the states they were taken in, and what is off made into loads: by hand and by differences. */
class TermsTest {

    private static Sighting sighting(Quantity quantity, double value, double error) {
        return new Sighting(quantity, value, error, Optional.empty());
    }

    /** A roll is compared as 1∕T², whose error is 2 σ ∕ T³ by the slope of that. */
    @Test
    void aRollIsComparedByItsInverseSquare() {
        Sighting roll = sighting(Quantity.ROLL, 0.8, 0.01);
        assertEquals(1 / 0.64, Expectation.seen(roll), 1e-15);
        double slope = (1 / (0.8001 * 0.8001) - 1 / (0.7999 * 0.7999)) / 2e-4;
        assertEquals(-slope * 0.01, Expectation.error(roll), 1e-8);
        assertEquals(0.8, Expectation.inItsUnit(roll, 1 / 0.64).orElseThrow(), 1e-15);
        assertTrue(Expectation.inItsUnit(roll, -0.1).isEmpty());
        assertTrue(Expectation.inItsUnit(roll, 0).isEmpty());
        Condition condition = Condition.of(PoolBoats.boat());
        Optional<Equilibrium> rest = Flotation.rest(condition);
        double t = RollPeriod.afloat(condition).orElseThrow().periodS();
        assertEquals(1 / (t * t), Expectation.of(condition, rest, roll).orElseThrow(), 1e-9);
        assertTrue(Expectation.of(condition, Optional.empty(), roll).isEmpty());
    }

    /** A list on either side is none where she would stand upright; all others may have either sign. */
    @Test
    void onlyAListOnEitherSideHasToBePositive() {
        assertTrue(
                Expectation.inItsUnit(sighting(Quantity.RESTS_AT, 5, 1), -0.1).isEmpty());
        assertEquals(Optional.of(4.0), Expectation.inItsUnit(sighting(Quantity.RESTS_AT, 5, 1), 4));
        assertEquals(Optional.of(-4.0), Expectation.inItsUnit(sighting(Quantity.LIST, 5, 1), -4));
    }

    /** With a weight across, a point at the side: the water above it along the boat's z axis, and the freeboard down the plumb line. */
    @Test
    void heightsOnABoatThatLists() {
        Boat boat = PoolBoats.boat();
        Reading across = PoolBoats.reading(
                "across",
                0,
                List.of(),
                List.of(new WeightMoved(250, new Vector3D(0, -40, 0))),
                PoolBoats.of(Quantity.LIST, 0));
        Condition condition = Scene.of(boat, across);
        Equilibrium rest = Flotation.rest(condition).orElseThrow();
        double phi = Math.toRadians(rest.heelDeg());
        assertTrue(phi > 0.05, "she lists");
        Vector3D port = new Vector3D(250, 50, 60);
        // By list φ and trim θ the plane is x sin θ + cos θ (y sin φ + z cos φ) = h: listed to starboard the port side
        // comes out of it.
        double theta = Math.toRadians(rest.trimDeg());
        double z = (rest.plane().heightMm() - 250 * Math.sin(theta)) / Math.cos(theta) / Math.cos(phi)
                - 50 * Math.tan(phi);
        double above = z - 60;
        assertEquals(
                above,
                Expectation.of(condition, Optional.of(rest), PoolBoats.at(Quantity.WATER_ABOVE, 0, port))
                        .orElseThrow(),
                1e-6);
        assertEquals(
                -above * Math.cos(theta) * Math.cos(phi),
                Expectation.of(condition, Optional.of(rest), PoolBoats.at(Quantity.FREEBOARD, 0, port))
                        .orElseThrow(),
                1e-6);
    }

    /**
     * From a list seen near by one step leads to the loll φ₀, whichever side of it it was seen. Small levers go by φ (φ² − φ₀²), whose chord over half a
     * degree misses the zero by 1.5 ∕ φ₀ times the ways from both its ends.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-0.6, -0.2, 0.4})
    void aLollFromNearBy(double off) {
        Reading top = PoolBoats.reading(
                "top weight",
                0,
                List.of(new KnownWeight(350, new Vector3D(250, 0, 175), Optional.empty())),
                List.of(),
                PoolBoats.of(Quantity.RESTS_AT, 5));
        Condition condition = Scene.of(PoolBoats.boat(), top);
        Optional<Equilibrium> rest = Flotation.rest(condition);
        double loll = Math.abs(rest.orElseThrow().heelDeg());
        double found = Expectation.of(condition, rest, sighting(Quantity.RESTS_AT, loll + off, 1))
                .orElseThrow();
        assertEquals(loll, found, 1.5 / loll * Math.abs(off * (off + 0.5)) + 1e-4);
    }

    /** A weight of known density displaces its own volume, one without a density nothing; both lie where they are said to. */
    @Test
    void weightsLaidOnHer() {
        Boat boat = PoolBoats.boat();
        Condition plain = Condition.of(boat);
        Vector3D place = new Vector3D(100, 20, 30);
        Condition dry = Scene.of(boat, laid(new KnownWeight(50, place, Optional.empty())));
        assertEquals(plain.massG() + 50, dry.massG(), 1e-9);
        assertEquals(plain.volumeMm3(), dry.volumeMm3(), 1e-9);
        Condition lead = Scene.of(boat, laid(new KnownWeight(50, place, Optional.of(10.0))));
        assertEquals(plain.massG() + 50, lead.massG(), 1e-9);
        assertEquals(plain.volumeMm3() + 5000, lead.volumeMm3(), 1e-6);
        for (Condition there : List.of(dry, lead)) {
            Vector3D moment = there.dryMomentGmm().subtract(plain.dryMomentGmm());
            assertEquals(0, moment.distance(place.scalarMultiply(50)), 1e-6);
        }
        // What is taken off takes no volume along.
        Condition off = Scene.of(boat, laid(new KnownWeight(-50, place, Optional.of(10.0))));
        assertEquals(plain.massG() - 50, off.massG(), 1e-9);
        assertEquals(plain.volumeMm3(), off.volumeMm3(), 1e-9);
    }

    private static Reading laid(KnownWeight weight) {
        return PoolBoats.reading("laid", 0, List.of(weight), List.of(), PoolBoats.of(Quantity.LIST, 0));
    }

    /** What one unit of anything that is off adds as a load is what the boat with so much of it off weighs more, less what it lifts more, and their moments. */
    @Test
    void whatIsOffActsAsALoad() {
        Boat boat = PoolBoats.boat();
        double density = boat.water().densityGPerMm3();
        Condition plain = Condition.of(boat);
        for (Unknown unknown : Unknown.of(boat)) {
            double by = 1e-3 * unknown.error();
            List<Part> parts = boat.parts().stream()
                    .map(p -> p.id().equals(unknown.part()) ? unknown.applied(p, by) : p)
                    .toList();
            Condition off = Condition.of(boat.withParts(parts));
            Load load = unknown.load(density, Optional.empty());
            double weight = off.dryMassG() - plain.dryMassG() - density * (off.volumeMm3() - plain.volumeMm3());
            assertEquals(weight, load.massG() * by, 1e-6 * by, unknown.toString());
            Vector3D lift = off.volumeCentroidMm()
                    .scalarMultiply(off.volumeMm3())
                    .subtract(plain.volumeCentroidMm().scalarMultiply(plain.volumeMm3()))
                    .scalarMultiply(density);
            Vector3D moment = off.dryMomentGmm().subtract(plain.dryMomentGmm()).subtract(lift);
            assertEquals(
                    0,
                    moment.distance(load.momentGmm().scalarMultiply(by)),
                    1e-3 * by * load.momentGmm().getNorm(),
                    unknown.toString());
        }
    }

    /** A body of so many times the volume is of the same proportions about the same middle. */
    @Test
    void bodiesAreScaledAboutTheirMiddle() {
        BoxShape box = (BoxShape) Scaling.of(PoolBoats.box(10, -20, 5, 40, 0, 65), 8);
        assertEquals(0, box.fromMm().distance(new Vector3D(-5, -30, -25)), 1e-12);
        assertEquals(0, box.toMm().distance(new Vector3D(55, 10, 95)), 1e-12);
        BarShape bar = (BarShape) Scaling.of(
                new BarShape(new Vector3D(0, 0, 0), new Vector3D(30, 40, 0), 12, BarShape.Ends.ROUND), 0.125);
        assertEquals(6, bar.diameterMm(), 1e-12);
        assertEquals(BarShape.Ends.ROUND, bar.ends());
        assertEquals(0, bar.fromMm().distance(new Vector3D(7.5, 10, 0)), 1e-12);
        assertEquals(0, bar.toMm().distance(new Vector3D(22.5, 30, 0)), 1e-12);
        BarShape rounded = (BarShape) Scaling.rounded(
                new BarShape(new Vector3D(0.004, 1.006, -2.3349), new Vector3D(9, 9, 9), 4.128, BarShape.Ends.FLAT));
        assertEquals(new Vector3D(0, 1.01, -2.33), rounded.fromMm());
        assertEquals(4.13, rounded.diameterMm(), 0);
        BoxShape roundedBox = (BoxShape) Scaling.rounded(PoolBoats.box(0.004, 1.006, -2.3349, 4.999, 9, 9));
        assertEquals(new Vector3D(5, 9, 9), roundedBox.toMm());
        assertEquals(new Vector3D(0, 1.01, -2.33), roundedBox.fromMm());
    }
}
