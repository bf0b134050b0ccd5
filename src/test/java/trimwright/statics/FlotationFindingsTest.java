package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Targets;
import trimwright.finding.Code;
import trimwright.finding.Finding;

/** Warnings are given where the figures of boxes and round bars, by hand, miss what is wanted, and not a little on the other side. */
class FlotationFindingsTest {

    private static final double BM = 1e4 / 12 / 30;
    private static final double TUBE = Math.PI * 1600 * 500 / 1000;

    /** A box 400 × 100 × 60 that draws 30 and has M at 15 + BM. */
    private static Boat block(double kg) {
        return TestBoats.block(400, 100, 60, 1200, new Vector3D(0, 0, kg));
    }

    /** A round bar with its axis at 40. */
    private static Boat tube(double massG, double x, double y, double z) {
        return DiveBoats.boat(
                TestParts.weighed("tube", Kind.CYLINDER, DiveBoats.bar(0, 500, 40, 80), massG, new Vector3D(x, y, z)));
    }

    /** BG, GM, residual from and to, off the line, list, trim dived; NaN for what is not stated. */
    private static Boat wanting(Boat boat, double... wanted) {
        List<Optional<Double>> w = Arrays.stream(wanted)
                .mapToObj(v -> Double.isNaN(v) ? Optional.<Double>empty() : Optional.of(v))
                .toList();
        Targets targets = new Targets(
                w.get(0),
                w.get(1),
                w.get(2).map(least -> new Targets.Band(least, wanted[3])),
                w.get(4),
                w.get(5),
                w.get(6));
        return new Boat(boat.name(), boat.water(), boat.paintedLine(), boat.parts(), boat.zones(), targets);
    }

    private static final double NO = Double.NaN;

    private static List<Finding> afloat(Boat boat) {
        return FlotationFindings.of(Flotation.of(boat));
    }

    private static List<Finding> dived(Boat boat) {
        return FlotationFindings.ofDived(Flotation.of(boat));
    }

    private static Optional<Finding> one(List<Finding> findings, Code code) {
        return findings.stream().filter(f -> f.code() == code).findFirst();
    }

    private static double value(List<Finding> findings, Code code, String name) {
        return (Double) one(findings, code).orElseThrow().values().get(name);
    }

    @Test
    void aSmallGm() {
        assertEquals(1.5, value(afloat(block(15 + BM - 1.5)), Code.GM_SMALL, "gmMm"), 1e-9);
        assertTrue(one(afloat(block(15 + BM - 2.5)), Code.GM_SMALL).isEmpty());
        // What is wanted counts instead.
        Boat wants5 = wanting(block(15 + BM - 4.5), NO, 5, NO, NO, NO, NO, NO);
        assertEquals(4.5, value(afloat(wants5), Code.GM_BELOW_TARGET, "gmMm"), 1e-9);
        assertEquals(5, value(afloat(wants5), Code.GM_BELOW_TARGET, "wantedMm"), 0);
        List<Finding> enough = afloat(wanting(block(15 + BM - 1.5), NO, 1, NO, NO, NO, NO, NO));
        assertTrue(one(enough, Code.GM_BELOW_TARGET).isEmpty()
                && one(enough, Code.GM_SMALL).isEmpty());
    }

    /** tan² φ = −2 GM ∕ BM, wall-sided; a list to one side alone is no loll. */
    @Test
    void aLoll() {
        double loll = Math.toDegrees(Math.atan(Math.sqrt(2 / BM)));
        assertEquals(loll, value(afloat(block(15 + BM + 1)), Code.LOLLS, "angleDeg"), 1e-4);
        assertTrue(one(afloat(block(20)), Code.LOLLS).isEmpty());
        List<Finding> list = afloat(TestBoats.block(400, 100, 60, 1200, new Vector3D(0, 4, 20)));
        assertTrue(one(list, Code.LOLLS).isEmpty());
    }

    /** Upright G stands 25 above B, bottom up 5: she would rather lie there. */
    @Test
    void aLowerAttitude() {
        List<Finding> findings = afloat(block(40));
        assertEquals(180, Math.abs(value(findings, Code.LOWER_ATTITUDE, "heelDeg")), 1e-6);
        assertEquals(0, value(findings, Code.LOWER_ATTITUDE, "trimDeg"), 1e-6);
        assertTrue(one(afloat(block(20)), Code.LOWER_ATTITUDE).isEmpty());
    }

    @Test
    void offHerLine() {
        Boat painted = DiveBoats.painted(block(20), 31);
        List<Finding> off = afloat(wanting(painted, NO, NO, NO, NO, 0.9, NO, NO));
        assertEquals(-1, value(off, Code.OFF_PAINTED_LINE, "bowOffMm"), 1e-8);
        assertEquals(-1, value(off, Code.OFF_PAINTED_LINE, "sternOffMm"), 1e-8);
        assertTrue(afloat(wanting(painted, NO, NO, NO, NO, 1.1, NO, NO)).isEmpty());
        assertTrue(afloat(painted).isEmpty());
        // G 0.5 to port and 7 under the axis: tan φ = 0.5 ∕ 7.
        double list = Math.toDegrees(Math.atan(0.5 / 7));
        Boat listing = DiveBoats.painted(tube(1000, 250, 0.5, 33), 30);
        List<Finding> beyond = afloat(wanting(listing, NO, NO, NO, NO, NO, list - 0.1, NO));
        assertEquals(list, value(beyond, Code.LIST_BEYOND_TARGET, "listDeg"), 1e-6);
        assertTrue(one(afloat(wanting(listing, NO, NO, NO, NO, NO, list + 0.1, NO)), Code.LIST_BEYOND_TARGET)
                .isEmpty());
    }

    @Test
    void divedFiguresByHand() {
        assertEquals(1.5, value(dived(tube(2000, 250, 0, 38.5)), Code.DIVED_BG_SMALL, "bgMm"), 1e-9);
        assertTrue(dived(tube(2000, 250, 0, 37.5)).isEmpty());
        Boat wants5 = wanting(tube(2000, 250, 0, 36), 5, NO, NO, NO, NO, NO, NO);
        assertEquals(4, value(dived(wants5), Code.DIVED_BG_BELOW_TARGET, "bgMm"), 1e-9);
        assertTrue(dived(wanting(tube(2000, 250, 0, 38.5), 1, NO, NO, NO, NO, NO, NO))
                .isEmpty());
        assertEquals(180, Math.abs(value(dived(tube(1000, 250, 0, 45)), Code.DIVED_TURNS_OVER, "heelDeg")), 1e-9);
        // G 1 forward of B and 10 below it.
        double trim = -Math.toDegrees(Math.atan(0.1));
        Boat byTheBow = tube(2000, 251, 0, 30);
        List<Finding> beyond = dived(wanting(byTheBow, NO, NO, NO, NO, NO, NO, 5.6));
        assertEquals(trim, value(beyond, Code.DIVED_TRIM_BEYOND_TARGET, "trimDeg"), 1e-9);
        assertTrue(dived(wanting(byTheBow, NO, NO, NO, NO, NO, NO, 5.8)).isEmpty());
    }

    @Test
    void buoyancyThatIsLeftDived() {
        assertEquals(5, value(dived(tube(TUBE + 5, 250, 0, 30)), Code.DIVED_SINKS, "deficitG"), 1e-9);
        for (double left : new double[] {5, 15, 25}) {
            List<Finding> findings = dived(wanting(tube(TUBE - left, 250, 0, 30), NO, NO, 10, 20, NO, NO, NO));
            if (left == 15) {
                assertTrue(findings.isEmpty());
            } else {
                assertEquals(left, value(findings, Code.DIVED_RESIDUAL_OFF_TARGET, "residualG"), 1e-9);
                assertEquals(10.0, value(findings, Code.DIVED_RESIDUAL_OFF_TARGET, "leastG"), 0);
                assertEquals(20.0, value(findings, Code.DIVED_RESIDUAL_OFF_TARGET, "greatestG"), 0);
            }
        }
    }

    /** A boat without tanks is not looked at dived, one with a tank is. */
    @Test
    void onlyABoatWithTanksDives() {
        Boat without = tube(1000, 250, 0, 39);
        assertTrue(one(afloat(without), Code.DIVED_BG_SMALL).isEmpty());
        Boat with = DiveBoats.boat(
                without.parts().get(0), TestParts.tank("t", DiveBoats.bar(200, 300, 40, 40), Optional.of("tube")));
        double tank = Math.PI * 400 * 100 / 1000;
        assertEquals(1000 / (1000 + tank), value(afloat(with), Code.DIVED_BG_SMALL, "bgMm"), 1e-9);
    }
}
