package trimwright.plan.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Margins;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;

/** What may be off about a part and by how much, what it does to a boat that floats, and why a reading is refused: by hand. */
class UnknownTest {

    private static final Boat BOAT = PoolBoats.boat();
    private static final Vector3D CENTRE = new Vector3D(200, 0, 20);

    private static Part part(Kind kind, Shape shape, Double massG, Double density, String inside) {
        return new Part(
                "it",
                kind,
                Optional.ofNullable(shape),
                Optional.empty(),
                Optional.ofNullable(massG),
                Optional.ofNullable(density),
                massG == null ? Optional.empty() : Optional.of(CENTRE),
                Optional.ofNullable(inside),
                false,
                0);
    }

    private static Map<Unknown.What, Double> errors(Part part) {
        List<Part> parts = new ArrayList<>(BOAT.parts());
        parts.add(part);
        Map<Unknown.What, Double> errors = new EnumMap<>(Unknown.What.class);
        Unknown.of(BOAT.withParts(parts)).stream()
                .filter(u -> u.part().equals("it"))
                .forEach(u -> errors.put(u.what(), u.error()));
        return errors;
    }

    private static Map<Unknown.What, Double> weighed(double mass) {
        return Map.of(
                Unknown.What.MASS, mass, Unknown.What.AHEAD, 1.0, Unknown.What.TO_PORT, 1.0, Unknown.What.UP, 1.0);
    }

    /** A gram of what was weighed, a third of it at most, 3 % of what was computed; 2 % of the volume of foam that is a box or a bar outside; air and tanks of no weight are not off. */
    @Test
    void whatMayBeOff() {
        Shape box = PoolBoats.box(180, -10, 10, 220, 10, 30);
        assertEquals(weighed(1), errors(part(Kind.BALLAST, box, 50.0, null, null)));
        assertEquals(weighed(0.5), errors(part(Kind.BALLAST, box, 1.5, null, null)));
        assertEquals(Map.of(), errors(part(Kind.AIR, box, null, null, null)));
        assertEquals(Map.of(), errors(part(Kind.TANK, box, null, null, "box")));
        assertEquals(weighed(1), errors(part(Kind.TANK, box, 30.0, null, "box")));
        // 16 cm³ at 0.1 g/cm³.
        assertEquals(0.03 * 1.6, errors(part(Kind.FOAM, box, null, 0.1, null)).get(Unknown.What.MASS), 1e-12);
        Shape bar = new BarShape(new Vector3D(180, 0, 20), new Vector3D(220, 0, 20), 20, BarShape.Ends.FLAT);
        for (Shape shape : List.of(box, bar)) {
            assertEquals(0.02, errors(part(Kind.FOAM, shape, 3.0, null, null)).get(Unknown.What.VOLUME), 1e-15);
            assertFalse(errors(part(Kind.FOAM, shape, 3.0, null, "box")).containsKey(Unknown.What.VOLUME));
        }
        // A mass of nothing has no place.
        assertEquals(Map.of(Unknown.What.VOLUME, 0.02), errors(part(Kind.FOAM, box, 0.0, null, null)));
        Margins own = new Margins(Optional.of(4.0), Optional.of(2.5), Optional.of(7.0));
        assertEquals(
                Map.of(
                        Unknown.What.MASS,
                        4.0,
                        Unknown.What.AHEAD,
                        2.5,
                        Unknown.What.TO_PORT,
                        2.5,
                        Unknown.What.UP,
                        2.5,
                        Unknown.What.VOLUME,
                        0.07),
                errors(part(Kind.BALLAST, box, 50.0, null, null).withMargins(own)));
    }

    private static Load load(Part part, Unknown.What what, Optional<WaterPlane> water) {
        Boat boat = BOAT.withParts(List.of(part));
        return Unknown.of(boat).stream()
                .filter(u -> u.what() == what)
                .findFirst()
                .orElseThrow()
                .load(1e-3, water);
    }

    /** Foam of 16 cm³ about (200, 0, 20): one more volume lifts 16 g under water, 8 g at z = 15 half under, nothing above the surface. */
    @Test
    void foamLiftsByWhatIsUnderWater() {
        Part foam = part(Kind.FOAM, PoolBoats.box(180, -10, 10, 220, 10, 30), 3.0, null, null);
        assertLoad(-16, CENTRE, load(foam, Unknown.What.VOLUME, Optional.empty()));
        assertLoad(-16, CENTRE, load(foam, Unknown.What.VOLUME, Optional.of(WaterPlane.level(35))));
        assertLoad(-8, new Vector3D(200, 0, 15), load(foam, Unknown.What.VOLUME, Optional.of(WaterPlane.level(20))));
        assertLoad(0, CENTRE, load(foam, Unknown.What.VOLUME, Optional.of(WaterPlane.level(5))));
        // What it weighs acts where it is, whatever the water.
        assertLoad(1, CENTRE, load(foam, Unknown.What.MASS, Optional.of(WaterPlane.level(20))));
    }

    /** A compact weight of 100 g and 4 g/cm³ displaces 25 g: a gram more of it weighs 0.75 under water, a millimetre of way moves 75 g·mm. */
    @Test
    void aCompactWeightIsLighterUnderWater() {
        Part weight = part(Kind.BALLAST, null, 100.0, 4.0, null);
        for (Optional<WaterPlane> under : List.of(Optional.<WaterPlane>empty(), Optional.of(WaterPlane.level(60)))) {
            assertLoad(0.75, CENTRE, load(weight, Unknown.What.MASS, under));
            assertEquals(0, load(weight, Unknown.What.AHEAD, under).massG());
            assertEquals(
                    new Vector3D(75, 0, 0),
                    load(weight, Unknown.What.AHEAD, under).momentGmm());
            assertEquals(
                    new Vector3D(0, 75, 0),
                    load(weight, Unknown.What.TO_PORT, under).momentGmm());
            assertEquals(
                    new Vector3D(0, 0, 75), load(weight, Unknown.What.UP, under).momentGmm());
        }
        Optional<WaterPlane> low = Optional.of(WaterPlane.level(-60));
        assertLoad(1, CENTRE, load(weight, Unknown.What.MASS, low));
        assertEquals(
                new Vector3D(100, 0, 0), load(weight, Unknown.What.AHEAD, low).momentGmm());
        // Inside the watertight box it displaces nothing.
        Part inside = part(Kind.BALLAST, null, 100.0, 4.0, "box");
        List<Part> parts = new ArrayList<>(BOAT.parts());
        parts.add(inside);
        Unknown mass = Unknown.of(BOAT.withParts(parts)).stream()
                .filter(u -> u.part().equals("it"))
                .findFirst()
                .orElseThrow();
        assertLoad(1, CENTRE, mass.load(1e-3, Optional.empty()));
    }

    private static void assertLoad(double massG, Vector3D at, Load load) {
        assertEquals(massG, load.massG(), 1e-9);
        assertEquals(0, load.momentGmm().distance(at.scalarMultiply(massG)), 1e-6);
    }

    /** Dived she has 578.4 g to spare: a scale holds nothing then, with 600 g more she sinks by 21.6 g; at a list of neither is nothing to rest at. */
    @Test
    void whyAReadingIsRefused() {
        Reading hangs = PoolBoats.reading("hangs", 1, List.of(), List.of(), PoolBoats.of(Quantity.HANGING, 20));
        Finding floats = Sensitivity.against(BOAT, hangs, 2.5);
        assertEquals(Code.POOL_NOTHING_HANGS, floats.code());
        assertEquals(578.4, (Double) floats.values().get("liftG"), 1e-6);
        assertEquals(2.5, floats.values().get("marginG"));
        assertEquals("hangs", floats.values().get("reading"));
        Reading list = PoolBoats.reading(
                "list",
                1,
                List.of(new KnownWeight(600, CENTRE, Optional.empty())),
                List.of(),
                PoolBoats.of(Quantity.LIST, 1));
        Finding sinks = Sensitivity.against(BOAT, list, 2.5);
        assertEquals(Code.POOL_READING_SINKS, sinks.code());
        assertEquals(21.6, (Double) sinks.values().get("deficitG"), 1e-6);
        Reading rests = PoolBoats.reading(
                "rests",
                0,
                List.of(),
                List.of(),
                PoolBoats.of(Quantity.LIST, 99),
                PoolBoats.of(Quantity.RESTS_AT, 3),
                PoolBoats.of(Quantity.RESTS_AT, 5));
        Finding lever = Sensitivity.against(BOAT, rests, 2.5);
        assertEquals(Code.POOL_NO_LEVER, lever.code());
        assertEquals(5.0, lever.values().get("foundDeg"));
    }

    /** A margin of 4 g counts sixteenfold against those of 1 g: what is missing goes there, and what is left of it is told in grams. */
    @Test
    void ofTheWorstKnownMostIsLearnt() {
        Margins wide = new Margins(Optional.of(4.0), Optional.empty(), Optional.empty());
        Boat boat = BOAT.withParts(BOAT.parts().stream()
                .map(p -> p.id().equals("lead") ? p.withMargins(wide) : p)
                .toList());
        Reading dived = PoolBoats.plan().get(2);
        double expected = Sensitivity.of(boat, dived).orElseThrow().expected()[0];
        Reading seen = dived.withSeen(List.of(PoolBoats.of(Quantity.HANGING, expected + 7)));
        PoolEstimate found = PoolEstimate.of(boat, new PoolTest("test", "", List.of(seen)));
        double all = 5 + 16 + 2 * Math.pow(0.02 * 43.2, 2) + 1;
        PoolEstimate.PartOff lead = found.parts().get(0);
        assertEquals("lead", lead.part());
        assertEquals(7 * 16 / all, lead.massG(), 1e-6);
        assertEquals(4 * Math.sqrt(1 - 16 / all), lead.massErrorG(), 1e-6);
        assertEquals(7 * 4 / all, lead.suspicion(), 1e-6);
    }

    private static Reading hanging(double sinkerG) {
        return PoolBoats.reading(
                "hangs " + sinkerG,
                1,
                List.of(new KnownWeight(sinkerG, CENTRE, Optional.empty())),
                List.of(),
                PoolBoats.of(Quantity.HANGING, 1));
    }

    private static Reading afloat(double loadG) {
        return PoolBoats.reading(
                "floats " + loadG,
                1,
                List.of(new KnownWeight(loadG, new Vector3D(250, 0, 20), Optional.empty())),
                List.of(),
                PoolBoats.of(Quantity.LIST, 0));
    }

    /** How much heavier the search begins with her, against what she displaces. */
    private static double begun(Reading... readings) {
        List<Unknown> unknowns = Unknown.of(BOAT);
        double[] start = Start.of(BOAT, unknowns, List.of(readings));
        Reading dived = hanging(0);
        return Scene.of(BOAT, dived).reserveG()
                - Scene.of(Corrections.applied(BOAT, unknowns, start), dived).reserveG();
    }

    /**
     * She has 578.4 g to spare, known to √(6 + 2 · 0.864²) = 2.737 g. What hung though it should have floated by 3 g, or floated though it should have sunk
     * by 2, is begun with a fifth of that beyond the brink; where both were seen, half way between them at most.
     */
    @Test
    void theSearchBeginsBeyondTheBrink() {
        double clear = 0.2 * Math.sqrt(6 + 2 * 0.864 * 0.864);
        assertEquals(0, begun(hanging(600), afloat(500)), 1e-9);
        assertEquals(3 + clear, begun(hanging(575.4), hanging(590)), 1e-6);
        assertEquals(3 + clear, begun(hanging(575.4), hanging(577)), 1e-6);
        assertEquals(-2 - clear, begun(afloat(580.4), afloat(579)), 1e-6);
        assertEquals(3.2, begun(hanging(575.4), afloat(575)), 1e-6);
        assertEquals(-2.1, begun(hanging(580.6), afloat(580.4)), 1e-6);
        // Four deviations are 10.9 g.
        assertEquals(10 + clear, begun(hanging(568.4)), 1e-6);
        assertThrows(UnusableInputException.class, () -> begun(hanging(567)));
    }

    /** Masses and centres of the box boat, added up; dived as above. */
    @Test
    void figuresAddedUp() {
        double[] all = Figure.all(Condition.of(BOAT));
        assertEquals(1962, all[Figure.MASS.ordinal()], 1e-9);
        assertEquals((250.0 * 1782 + 330 * 180) / 1962, all[Figure.G_AHEAD.ordinal()], 1e-9);
        assertEquals(0, all[Figure.G_TO_PORT.ordinal()], 1e-9);
        assertEquals((28.0 * 1000 + 80 * 40 - 4 * 726 + 29 * 16 + 15 * 180) / 1962, all[Figure.G_UP.ordinal()], 1e-9);
        assertEquals(578.4, all[Figure.RESIDUAL.ordinal()], 1e-6);
        assertEquals(0, all[Figure.LIST.ordinal()], 1e-6);
        // The battery ahead brings her bow down, and the line there under water.
        assertTrue(all[Figure.TRIM.ordinal()] < -0.1);
        double slope = Math.tan(Math.toRadians(all[Figure.TRIM.ordinal()]));
        double along = all[Figure.BOW.ordinal()] - all[Figure.STERN.ordinal()];
        assertEquals(460 * Math.abs(slope), Math.abs(along), 1e-6);
        assertEquals(
                12,
                List.of(Figure.values()).stream().map(Figure::key).distinct().count());
        assertEquals("mm", Figure.GM.unit());
        assertEquals("gmTransverseMm", Figure.GM.key());
    }
}
