package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.TestParts.box;
import static trimwright.TestParts.tank;
import static trimwright.TestParts.weighed;
import static trimwright.statics.DiveBoats.boat;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Shape;

/** Moments of inertia of solid bodies as any textbook of mechanics has them, and T = 2π k ∕ √(g GM). */
class RollPeriodTest {

    private static final double G = 9806.65;

    /** A buoy without mass, 400 × 100 × 120, that carries what stands in it. */
    private static final Part BUOY =
            weighed("buoy", Kind.CYLINDER, box(0, -50, 0, 400, 50, 120), 0, new Vector3D(200, 0, 60));

    /** A solid within the buoy, which displaces nothing of its own. */
    private static Part inside(String id, Shape shape, double massG) {
        return TestParts.inside(
                "buoy",
                TestParts.weighed(id, Kind.FITTING, shape, massG, shape.solid().centroidMm()));
    }

    private static RollPeriod of(Part... parts) {
        return RollPeriod.afloat(Condition.of(boat(parts))).orElseThrow();
    }

    /** About the x axis through its middle a solid bar has I = m (cos² a r²∕2 + sin² a (3 r² + l²)∕12), a the angle between its axis and x. */
    @ParameterizedTest
    @CsvSource({"0, 60", "30, 60", "90, 60", "90, 10"})
    void aSolidBar(double degrees, double length) {
        double a = Math.toRadians(degrees);
        Vector3D half = new Vector3D(0.5 * length, new Vector3D(Math.cos(a), Math.sin(a), 0));
        Vector3D middle = new Vector3D(200, 0, 15);
        BarShape bar = new BarShape(middle.subtract(half), middle.add(half), 24, BarShape.Ends.FLAT);
        double along = Math.pow(Math.cos(a), 2);
        double k2 = along * 12 * 12 / 2.0 + (1 - along) * (3 * 12 * 12 + length * length) / 12;
        assertEquals(Math.sqrt(k2), of(BUOY, inside("bar", bar, 1200)).radiusOfGyrationMm(), 1e-6);
    }

    /** A solid box: I = m (b² + c²)∕12, whatever its length. */
    @Test
    void aSolidBox() {
        RollPeriod roll = of(BUOY, inside("box", box(150, -30, 5, 250, 30, 25), 1200));
        assertEquals(Math.sqrt((60 * 60 + 20 * 20) / 12.0), roll.radiusOfGyrationMm(), 1e-6);
        // She draws 30: GM = 15 + 100² ∕ 12 ∕ 30 − 15.
        double gm = 10000 / 12.0 / 30;
        assertEquals(gm, roll.gmMm(), 1e-9);
        assertEquals(2 * Math.PI * Math.sqrt(4000 / 12.0) / Math.sqrt(G * gm), roll.periodS(), 1e-9);
    }

    /** Parallel axes (Steiner): boxes of 400 and 800 g, 30 and 15 mm from their common G across, and 8 and 4 upward. */
    @Test
    void twoBoxesApart() {
        RollPeriod roll = of(
                BUOY,
                inside("light", box(180, 25, 20, 220, 35, 30), 400),
                inside("heavy", box(180, -20, 10, 220, -10, 16), 800));
        double own = (400 * (10 * 10 + 10 * 10) + 800 * (10 * 10 + 6 * 6)) / 12.0;
        double apart = 400 * (30 * 30 + 8 * 8) + 800 * (15 * 15 + 4 * 4);
        assertEquals(Math.sqrt((own + apart) / 1200), roll.radiusOfGyrationMm(), 1e-6);
    }

    /** Tank water counts as a point where it lies: 240 g in the lower half of a tank, whose centroid is 10 mm up, on G's own upright. */
    @Test
    void tankWaterCountsAsAPoint() {
        Part tank = tank("tank", box(100, -30, 0, 300, 30, 40), Optional.of("buoy"));
        Part lead = inside("box", box(150, -20, 25, 250, 20, 35), 1200);
        Condition half = Condition.of(boat(BUOY, lead, tank)).withAllTanksAt(0.5);
        double g = (1200 * 30 + 240 * 10) / 1440.0;
        double sum = 1200 * ((40 * 40 + 10 * 10) / 12.0 + Math.pow(30 - g, 2)) + 240 * Math.pow(g - 10, 2);
        assertEquals(
                Math.sqrt(sum / 1440), RollPeriod.afloat(half).orElseThrow().radiusOfGyrationMm(), 1e-6);
        Condition empty = half.withAllTanksAt(0);
        assertEquals(
                Math.sqrt((40 * 40 + 10 * 10) / 12.0),
                RollPeriod.afloat(empty).orElseThrow().radiusOfGyrationMm(),
                1e-6);
    }

    /** 1∕T² is g GM ∕ (4π² k²): that of the period where she stands, and negative where she does not. */
    @Test
    void perSecondSquared() {
        Condition condition = Condition.of(boat(BUOY, inside("box", box(150, -30, 5, 250, 30, 25), 1200)));
        Equilibrium rest = Balance.settle(condition, Balance.upright(condition));
        double t = RollPeriod.of(condition, rest).orElseThrow().periodS();
        assertEquals(1 / (t * t), RollPeriod.perSecondSquared(condition, rest), 1e-12);
        // The same box higher than her metacentre, 15 + 27.78 up, and held upright there.
        Condition top = Condition.of(boat(BUOY, inside("box", box(150, -30, 53, 250, 30, 73), 1200)));
        Equilibrium upright = Equilibrium.of(TestBoats.held(top, Vector3D.PLUS_K), 0, 0);
        double gm = 15 + 10000 / 12.0 / 30 - 63;
        assertEquals(G * gm / (4 * Math.PI * Math.PI * 4000 / 12), RollPeriod.perSecondSquared(top, upright), 1e-9);
        assertTrue(RollPeriod.of(top, upright).isEmpty());
    }

    @Test
    void aSunkenBoatDoesNotRoll() {
        assertTrue(RollPeriod.afloat(Condition.of(boat(BUOY, inside("box", box(150, -30, 5, 250, 30, 25), 5000))))
                .isEmpty());
    }
}
