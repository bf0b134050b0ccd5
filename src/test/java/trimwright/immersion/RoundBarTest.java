package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;

/** Round bars against closed forms; the quadrature promises 1e-12 of the bar's volume. */
class RoundBarTest {

    private static final double PROMISED = 1e-12;

    /** Segment of a circle, lying bar: V = L (R² acos(−d/R) + d √(R² − d²)), waterplane L × chord (closed form). */
    @ParameterizedTest
    @ValueSource(doubles = {-39.99, -20, 0, 7, 33, 39.99})
    void lyingBar(double d) {
        double r = 40;
        double length = 300;
        RoundBar bar = RoundBar.flat(new Vector3D(-100, 5, 60), new Vector3D(200, 5, 60), r);
        Immersion cut = Cuts.below(WaterPlane.level(60 + d), bar);
        double half = Math.sqrt(r * r - d * d);
        double segment = r * r * Math.acos(-d / r) + d * half;
        assertEquals(length * segment, cut.volumeMm3(), PROMISED * bar.volumeMm3());
        double depth = 2.0 / 3 * half * half * half / segment;
        double inB = PROMISED * 80 * bar.volumeMm3() / cut.volumeMm3();
        Cuts.assertNear(new Vector3D(50, 5, 60 - depth), cut.centroidMm(), inB, "B");
        // Where the chord opens, 1e-12 mm of height, which is rounding, are 2e-12 of the greatest area.
        assertEquals(length * 2 * half, cut.waterplaneMm2(), 10 * PROMISED * length * 2 * r);
        double transverse = length * Math.pow(2 * half, 3) / 12;
        double longitudinal = 2 * half * Math.pow(length, 3) / 12;
        assertEquals(transverse, cut.inertiaPortMm4(), PROMISED * length * Math.pow(2 * r, 3));
        assertEquals(longitudinal, cut.inertiaAheadMm4(), PROMISED * 2 * r * Math.pow(length, 3));
        // Metacentre in the axis at every draught.
        assertEquals(0, cut.inertiaPortMm4() / cut.volumeMm3() - depth, inB);
    }

    /** Standing bar: whole slices, and a circle for a waterplane. A lid in the surface is dry, its edge counts. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 50, 299.9, 300})
    void standingBar(double depth) {
        Random random = new Random(3);
        for (int i = 0; i < 40; i++) {
            double foot = 1e3 * random.nextGaussian();
            Vector3D low = new Vector3D(3, 5, foot);
            Vector3D high = new Vector3D(3, 5, foot + 300);
            for (RoundBar bar : List.of(RoundBar.flat(high, low, 40), RoundBar.flat(low, high, 40))) {
                Immersion cut = Cuts.below(WaterPlane.level(foot + depth), bar);
                double circle = Math.PI * 1600;
                assertEquals(circle * depth, cut.volumeMm3(), 1e-14 * circle * 1e4);
                Cuts.assertNear(new Vector3D(3, 5, foot + depth / 2), cut.centroidMm(), 1e-9, "B");
                assertEquals(circle, cut.waterplaneMm2(), 1e-8);
                assertEquals(circle * 400, cut.inertiaAheadMm4(), 1e-5);
                assertEquals(circle * 400, cut.inertiaPortMm4(), 1e-5);
            }
        }
    }

    /** Cylindrical wedge (ungula) on a half circle: V = ⅔ R² H, centroid at 3πR/16 across and 3πH/32 along (closed form). */
    @Test
    void ungula() {
        double r = 40;
        double rise = 70;
        RoundBar bar = RoundBar.flat(Vector3D.ZERO, new Vector3D(0, 0, 300), r);
        // Below the plane z = x · H/R lies, inside the bar, the ungula over the half circle x > 0.
        Vector3D up = new Vector3D(-rise / r, 0, 1);
        Immersion cut = Cuts.below(WaterPlane.of(up, 0), bar);
        assertEquals(2.0 / 3 * r * r * rise, cut.volumeMm3(), PROMISED * bar.volumeMm3());
        Vector3D centroid = new Vector3D(3 * Math.PI * r / 16, 0, 3 * Math.PI * rise / 32);
        Cuts.assertNear(centroid, cut.centroidMm(), 1e-8, "B");
        // Its water surface is half an ellipse.
        double stretch = Math.hypot(rise, r) / r;
        assertEquals(Math.PI * r * r / 2 * stretch, cut.waterplaneMm2(), 1e-8 * r * r);
    }

    /**
     * A flat bar at any trim and any draught. With the axis along z, x downhill across it and the plane at z = t (x − c), what is below has
     * the length clamp(t (x − c), 0, L) over each x: closed forms by the integrals J of the circle's chords from c to R.
     */
    @Property(tries = 400, seed = "20240517")
    void flatBarAtAnyTrim(
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 89) double leanDeg,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.999) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 20) double slenderness,
            @ForAll int turn) {
        double r = 40;
        double length = slenderness * r;
        double lean = Math.toRadians(leanDeg);
        double t = Math.tan(lean);
        Vector3D up = new Vector3D(-Math.sin(lean), 0, Math.cos(lean));
        double lowest = -r * Math.sin(lean);
        double highest = r * Math.sin(lean) + length * Math.cos(lean);
        double height = lowest + share * (highest - lowest);
        double c = -height / Math.sin(lean);
        double top = c + length / t;
        double volume = t * (lengthOver(c, r) - lengthOver(top, r));
        double alongMoment =
                t * t / 2 * (squares(c, c, r) - squares(c, top, r)) + length * length / 2 * chords(0, top, r);
        double acrossMoment = t * (chords(2, c, r) - c * chords(1, c, r) - chords(2, top, r) + top * chords(1, top, r));
        Rotation turned = TestMeshes.rotation(new Random(turn));
        Vector3D foot = new Vector3D(13, -170, 55);
        RoundBar bar = RoundBar.flat(foot, foot.add(length, turned.applyTo(Vector3D.PLUS_K)), r);
        Vector3D turnedUp = turned.applyTo(up);
        Immersion cut = Cuts.below(WaterPlane.of(turnedUp, turnedUp.dotProduct(foot) + height), bar);
        double whole = bar.volumeMm3();
        assertEquals(volume, cut.volumeMm3(), PROMISED * whole);
        Vector3D moment = cut.centroidMm().subtract(foot).scalarMultiply(cut.volumeMm3());
        double size = length + r;
        assertEquals(
                acrossMoment, moment.dotProduct(turned.applyTo(Vector3D.PLUS_I)), PROMISED * whole * size, "across");
        assertEquals(0, moment.dotProduct(turned.applyTo(Vector3D.PLUS_J)), PROMISED * whole * size, "sideways");
        // Steep planes lose digits in the closed form: squares of the circle's size times t².
        double lost = 1e-15 * t * t * Math.pow(r, 4);
        assertEquals(
                alongMoment,
                moment.dotProduct(turned.applyTo(Vector3D.PLUS_K)),
                PROMISED * whole * size + lost,
                "along");
        // The waterplane, seen along the axis, is the circle between the chords at c and at top.
        double area = (chords(0, c, r) - chords(0, top, r)) / Math.cos(lean);
        // Rounding of heights, 1e-12 mm, moves a chord by that over the sine of the lean.
        double inArea = PROMISED * r * size + 2 * r * 1e-12 / Math.sin(lean);
        assertEquals(area, cut.waterplaneMm2(), inArea);
        double uphill = (chords(2, c, r) - chords(2, top, r)) / Math.pow(Math.cos(lean), 3);
        double sideways = (cubes(c, r) - cubes(top, r)) / Math.cos(lean);
        double firstUphill = (chords(1, c, r) - chords(1, top, r)) / Math.pow(Math.cos(lean), 2);
        double polar = uphill - firstUphill * firstUphill / area + sideways;
        double lostInPolar = 1e-15 * Math.pow(r, 4) / Math.pow(Math.cos(lean), 3) * Math.max(1, r * r / area);
        assertEquals(polar, cut.inertiaAheadMm4() + cut.inertiaPortMm4(), inArea * size * size + lostInPolar);
    }

    /** ∫ over the circle beyond the chord at c of (x − c). */
    private static double lengthOver(double c, double r) {
        return chords(1, c, r) - c * chords(0, c, r);
    }

    /** ∫ over the circle beyond the chord at {@code from} of (x − c)². */
    private static double squares(double c, double from, double r) {
        return chords(2, from, r) - 2 * c * chords(1, from, r) + c * c * chords(0, from, r);
    }

    /** ∫ xᵏ · 2 √(R² − x²) dx from c to R. */
    private static double chords(int k, double c, double r) {
        double from = Math.max(-r, Math.min(r, c));
        double half = Math.sqrt(r * r - from * from);
        double segment = r * r * Math.acos(from / r) - from * half;
        switch (k) {
            case 0:
                return segment;
            case 1:
                return 2 * half * half * half / 3;
            default:
                return r * r / 4 * segment + from * half * half * half / 2;
        }
    }

    /** ∫ ⅔ (R² − x²)^(3/2) dx from c to R. */
    private static double cubes(double c, double r) {
        double from = Math.max(-r, Math.min(r, c));
        double half = Math.sqrt(r * r - from * from);
        double atEnd = 3 * Math.pow(r, 4) / 8 * Math.PI / 2;
        double atFrom = from * (5 * r * r - 2 * from * from) * half / 8 + 3 * Math.pow(r, 4) / 8 * Math.asin(from / r);
        return 2.0 / 3 * (atEnd - atFrom);
    }

    /** Lying bar with round ends: a flat one between the end centres, and a ball (closed form). */
    @ParameterizedTest
    @ValueSource(doubles = {-39, -11, 0, 25, 39})
    void lyingBarWithRoundEnds(double d) {
        double r = 40;
        RoundBar bar = RoundBar.round(new Vector3D(-150, 0, 0), new Vector3D(150, 0, 0), r);
        Immersion cut = Cuts.below(WaterPlane.level(d), bar);
        double half = Math.sqrt(r * r - d * d);
        double depth = r + d;
        double cap = Math.PI * depth * depth * (3 * r - depth) / 3;
        double volume = 220 * (r * r * Math.acos(-d / r) + d * half) + cap;
        assertEquals(volume, cut.volumeMm3(), PROMISED * bar.volumeMm3());
        double area = 220 * 2 * half + Math.PI * half * half;
        assertEquals(area, cut.waterplaneMm2(), PROMISED * 300 * 80);
        double transverse = 220 * Math.pow(2 * half, 3) / 12 + Math.PI / 4 * Math.pow(half, 4);
        assertEquals(transverse, cut.inertiaPortMm4(), PROMISED * 300 * Math.pow(80, 3));
        assertEquals(0, cut.centroidMm().getZ() + cut.inertiaPortMm4() / cut.volumeMm3(), 1e-8);
        assertEquals(Math.PI * r * r * 220 + 4 * Math.PI / 3 * r * r * r, bar.volumeMm3(), 1e-8);
    }

    /**
     * Bars with round ends at any trim, against a mesh of the same body: 256 corners round miss (2π/256)²/6 = 1e-4, 64 steps of a
     * quarter circle about as much.
     */
    @Property(tries = 40, seed = "20240518")
    void roundEndsAtAnyTrim(
            @ForAll @Scale(6) @DoubleRange(min = -90, max = 90) double leanDeg,
            @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.98) double share,
            @ForAll @Scale(6) @DoubleRange(min = 2, max = 10) double slenderness) {
        double r = 40;
        double length = slenderness * r;
        int steps = 64;
        double[] x = new double[2 * steps + 2];
        double[] radius = new double[2 * steps + 2];
        for (int i = 0; i <= steps; i++) {
            double angle = Math.PI / 2 * i / steps;
            x[i] = r - r * Math.cos(angle);
            radius[i] = i == 0 ? 0 : r * Math.sin(angle);
            x[2 * steps + 1 - i] = length - x[i] + 1e-9 * r;
            radius[2 * steps + 1 - i] = radius[i];
        }
        MeshSolid mesh = MeshSolid.of(TestMeshes.revolved(x, radius, 256));
        RoundBar bar = RoundBar.round(Vector3D.ZERO, new Vector3D(length, 0, 0), r);
        double lean = Math.toRadians(leanDeg);
        Vector3D up = new Vector3D(Math.sin(lean), 0, Math.cos(lean));
        double bottom = bar.bottomMm(up);
        WaterPlane plane = WaterPlane.of(up, bottom + share * (bar.topMm(up) - bottom));
        Cuts.assertSame(
                Cuts.below(plane, bar), Immersion.below(plane, bar.centroidMm()).add(mesh), length, 3e-4);
    }

    /** A bar hardly longer than thick is a ball cut along slices that lie askew: caps and end caps by the closed form. */
    @Property(tries = 400, seed = "20240520")
    void capsAtAnyTrim(
            @ForAll @Scale(6) @DoubleRange(min = -90, max = 90) double leanDeg,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1.999) double depth) {
        double r = 25;
        RoundBar ball = RoundBar.round(Vector3D.ZERO, new Vector3D(2 * r * (1 + 1e-12), 0, 0), r);
        double lean = Math.toRadians(leanDeg);
        Vector3D up = new Vector3D(Math.sin(lean), 0, Math.cos(lean));
        WaterPlane plane = WaterPlane.of(up, up.dotProduct(ball.centroidMm()) + r * (depth - 1));
        Immersion askew = Cuts.below(plane, ball);
        Immersion upright = askew.emptied().add(RoundBar.ball(ball.centroidMm(), r));
        Cuts.assertSame(upright, askew, 2 * r, 10 * PROMISED);
    }

    /** A ball is the same from every side: its caps by the closed form, to rounding. */
    @Property(tries = 100, seed = "20240519")
    void ballFromEverySide(@ForAll int seed, @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1.999) double depth) {
        Vector3D centre = new Vector3D(400, -30, 22);
        RoundBar ball = RoundBar.ball(centre, 25);
        Vector3D up = TestMeshes.direction(new Random(seed));
        Immersion cut = Cuts.below(WaterPlane.of(up, up.dotProduct(centre) + 25 * (depth - 1)), ball);
        double h = 25 * depth;
        double volume = Math.PI * h * h * (75 - h) / 3;
        assertEquals(volume, cut.volumeMm3(), 1e-12 * ball.volumeMm3());
        double circle = Math.PI * h * (50 - h);
        assertEquals(circle, cut.waterplaneMm2(), 1e-11 * 625);
        double down = circle * circle / (4 * Math.PI) / volume;
        Cuts.assertNear(centre.add(-down, up), cut.centroidMm(), 1e-9 * 50 / depth, "B");
    }

    @Test
    void refusesBarsThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> RoundBar.flat(Vector3D.ZERO, Vector3D.PLUS_I, 0));
        assertThrows(IllegalArgumentException.class, () -> RoundBar.flat(Vector3D.ZERO, Vector3D.ZERO, 1));
        assertThrows(IllegalArgumentException.class, () -> RoundBar.round(Vector3D.ZERO, Vector3D.PLUS_I, 1));
    }
}
