package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.TestParts.box;
import static trimwright.TestParts.compact;
import static trimwright.TestParts.tank;
import static trimwright.TestParts.weighed;
import static trimwright.statics.DiveBoats.bar;
import static trimwright.statics.DiveBoats.boat;
import static trimwright.statics.DiveBoats.skin;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.mesh.Solids;

class RightingCurveTest {

    /** A box L × B × depth that draws T in water of density 1, with G at a height. */
    private static Condition barge(double l, double b, double depth, double t, double kg) {
        return Condition.of(boat(weighed(
                "barge",
                Kind.CYLINDER,
                box(0, -b / 2, 0, l, b / 2, depth),
                l * b * t / 1000,
                new Vector3D(l / 2, 0, kg))));
    }

    private static RightingCurve.Row at(RightingCurve curve, double heelDeg) {
        return curve.rows().stream()
                .filter(row -> Math.abs(row.heelDeg() - heelDeg) < 1e-9)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Wall-sided formula GZ = sin φ (GM + ½ BM tan² φ), exact until an edge enters or leaves. Box 65 × 12 × 8 m, draught 4 m, KG 4 m
     * (Barrass and Derrett, Ship Stability for Masters and Mates): 0.08816 m at 5° and 0.56046 m at 25°. Metres stand for mm.
     */
    @Test
    void wallSided() {
        RightingCurve curve = RightingCurve.surfaced(barge(65, 12, 8, 4, 4), 5).orElseThrow();
        double bm = 144 / 48.0;
        double gm = 2 + bm - 4;
        int compared = 0;
        for (RightingCurve.Row row : curve.rows()) {
            double phi = Math.toRadians(row.heelDeg());
            // Deck edge at 4/6, bilge at 4/6.
            if (Math.abs(phi) < Math.atan(4 / 6.0)) {
                double gz = Math.sin(phi) * (gm + 0.5 * bm * Math.pow(Math.tan(phi), 2));
                assertEquals(gz, row.gzMm(), 1e-9);
                assertEquals(gz * 65 * 12 * 4 / 1000, row.momentGmm(), 1e-9);
                assertEquals(0, row.trimDeg(), 1e-6);
                compared++;
            }
        }
        assertEquals(13, compared);
        assertEquals(0.08816, at(curve, 5).gzMm(), 5e-6);
        assertEquals(0.56046, at(curve, 25).gzMm(), 5e-6);
        assertEquals(-0.56046, at(curve, -25).gzMm(), 5e-6);
    }

    /** Rows 5°, 12° and 20° apart are rows of one curve, upright among them, with the same range, greatest lever and area; no step is no curve. */
    @Test
    void howFarApartTheRowsAreDoesNotMatter() {
        Condition barge = barge(65, 12, 8, 4, 4);
        RightingCurve fine = RightingCurve.surfaced(barge, 5).orElseThrow();
        for (double step : new double[] {12, 20}) {
            RightingCurve coarse = RightingCurve.surfaced(barge, step).orElseThrow();
            for (RightingCurve.Row row : coarse.rows()) {
                assertEquals(0, Math.IEEEremainder(row.heelDeg(), step), 1e-9);
            }
            double gm = 2 + 144 / 48.0 - 4;
            double phi = Math.toRadians(step);
            double gz = Math.sin(phi) * (gm + 0.5 * 3 * Math.pow(Math.tan(phi), 2));
            assertEquals(gz, at(coarse, step).gzMm(), 1e-9);
            assertEquals(0, at(coarse, 0).gzMm(), 1e-9);
            assertEquals(fine.summary().rangeDeg(), coarse.summary().rangeDeg(), 1e-6);
            assertEquals(fine.summary().areaMmRad(), coarse.summary().areaMmRad(), 1e-8);
            assertEquals(fine.summary().maxGzMm(), coarse.summary().maxGzMm(), 1e-6);
        }
        assertThrows(IllegalArgumentException.class, () -> RightingCurve.surfaced(barge, 0));
    }

    /** B 1, T 0.6, KG 0.48: loll 37.575° (closed form); GZ there is zero, rises beyond it and falls below it. */
    @Test
    void loll() {
        RightingCurve curve =
                RightingCurve.surfaced(barge(100, 10, 12, 6, 4.8), 0.5).orElseThrow();
        assertEquals(37.575, curve.equilibrium().heelDeg(), 1e-3);
        assertTrue(at(curve, 37.5).gzMm() < 0 && at(curve, 38).gzMm() > 0, "she rests where GZ rises through zero");
        assertTrue(at(curve, 1).gzMm() < 0, "upright she is driven away");
        assertEquals(37.575, curve.equilibrium().heelDeg(), 1e-3);
        assertTrue(curve.summary().rangeDeg() > 0);
    }

    /** A round hull has its metacentre on the axis at every list: GZ = distance of the axis above G × sin φ, and she comes back from 180°. */
    @Test
    void roundHull() {
        Condition round =
                Condition.of(boat(weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 1000, new Vector3D(250, 0, 33))));
        RightingCurve curve = RightingCurve.surfaced(round, 15).orElseThrow();
        assertEquals(25, curve.rows().size());
        for (RightingCurve.Row row : curve.rows()) {
            assertEquals(7 * Math.sin(Math.toRadians(row.heelDeg())), row.gzMm(), 1e-7);
        }
        RightingCurve.Summary summary = curve.summary();
        assertEquals(180, summary.rangeDeg(), 1e-5);
        assertEquals(7, summary.maxGzMm(), 1e-7);
        assertEquals(90, summary.maxGzAtDeg(), 1e-2);
        assertEquals(14, summary.areaMmRad(), 1e-7);
    }

    /**
     * The area under GZ is the difference of e*. Summed here by Simpson's rule from the rows, whose error over steps of 1° stays below
     * 1e-4 of the area where the curve has kinks in its slope (deck edge, bilge).
     */
    @Test
    void areaIsTheDifferenceOfEnergy() {
        Condition condition = barge(400, 100, 70, 40, 36);
        RightingCurve curve = RightingCurve.surfaced(condition, 1).orElseThrow();
        double end = curve.equilibrium().heelDeg() + curve.summary().rangeDeg();
        int last = (int) Math.floor(end / 2) * 2;
        double simpson = 0;
        for (int k = 0; k <= last - 2; k += 2) {
            simpson += Math.toRadians(2)
                    / 6
                    * (at(curve, k).gzMm()
                            + 4 * at(curve, k + 1).gzMm()
                            + at(curve, k + 2).gzMm());
        }
        simpson += Math.toRadians(end - last) / 2 * at(curve, last).gzMm();
        assertEquals(curve.summary().areaMmRad(), simpson, 1e-3 * simpson);
        assertTrue(curve.summary().maxGzMm()
                >= curve.rows().stream()
                        .filter(row -> row.heelDeg() >= 0 && row.heelDeg() <= end)
                        .mapToDouble(RightingCurve.Row::gzMm)
                        .max()
                        .orElseThrow());
    }

    /** A boat that is not the same on both sides: the lever is that of a weight moved back, and vanishes at her list. */
    @Test
    void offCentreWeight() {
        Condition condition = Condition.of(boat(
                weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 1000, new Vector3D(250, 0, 33)),
                compact("w", 50, new Vector3D(250, 10, 40))));
        // G lies at y = 500/1050, 7 × 1000/1050 below the axis.
        double y = 500 / 1050.0;
        double z = 7000 / 1050.0;
        RightingCurve curve = RightingCurve.surfaced(condition, 10).orElseThrow();
        assertEquals(-Math.toDegrees(Math.atan(y / z)), curve.equilibrium().heelDeg(), 1e-6);
        for (RightingCurve.Row row : curve.rows()) {
            double phi = Math.toRadians(row.heelDeg());
            assertEquals(z * Math.sin(phi) + y * Math.cos(phi), row.gzMm(), 1e-7);
        }
    }

    /** The same with her list to starboard: GZ = a sin (φ − φ₀), which vanishes 180° further, beyond 180°; the area is 2 a. */
    @Test
    void starboardSideGoesOnBeyond180() {
        Condition condition = Condition.of(boat(
                weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 1000, new Vector3D(250, 0, 33)),
                compact("w", 50, new Vector3D(250, -10, 40))));
        double a = Math.hypot(500 / 1050.0, 7000 / 1050.0);
        for (double step : new double[] {7, 45}) {
            RightingCurve.Summary summary =
                    RightingCurve.surfaced(condition, step).orElseThrow().summary();
            assertEquals(180, summary.rangeDeg(), 1e-4);
            assertEquals(2 * a, summary.areaMmRad(), 1e-7);
            assertEquals(a, summary.maxGzMm(), 1e-7);
        }
    }

    /** Bottom up she rests beyond the last row, 170°, on either side; the rows are there all the same. */
    @Test
    void restsBeyondTheLastRow() {
        for (double side : new double[] {-1, 1}) {
            Condition condition = Condition.of(boat(
                    weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 1000, new Vector3D(250, 0, 47)),
                    compact("w", 50, new Vector3D(250, -side * 5, 60))));
            RightingCurve curve = RightingCurve.surfaced(condition, 17).orElseThrow();
            assertTrue(side * curve.equilibrium().heelDeg() > 176, "she rests at " + curve.equilibrium());
            assertEquals(21, curve.rows().size());
            assertEquals(170, curve.rows().get(20).heelDeg(), 1e-12);
            assertEquals(180, curve.summary().rangeDeg(), 1e-4);
        }
    }

    /** The lever of a symmetrical barge vanishes on the way over and again at 180°: the summary ends at the first, whatever rows are asked for. */
    @Test
    void summaryDoesNotHangOnTheRows() {
        Condition condition = barge(400, 100, 70, 40, 40);
        RightingCurve.Summary fine =
                RightingCurve.surfaced(condition, 1).orElseThrow().summary();
        assertTrue(fine.rangeDeg() < 175, "the lever vanishes before 180°");
        for (double step : new double[] {5, 7, 45}) {
            RightingCurve curve = RightingCurve.surfaced(condition, step).orElseThrow();
            assertEquals(2 * (int) (180 / step) + 1, curve.rows().size());
            assertEquals(fine.rangeDeg(), curve.summary().rangeDeg(), 1e-4);
            assertEquals(fine.maxGzMm(), curve.summary().maxGzMm(), 1e-7);
            assertEquals(fine.areaMmRad(), curve.summary().areaMmRad(), 1e-7);
        }
    }

    /** A round spar stands by its n_z alone, so that its trim is stable to a list of 90° and no further, whatever the step. */
    @Test
    void rangeEndsWhereTheTrimDoes() {
        BarShape spar = new BarShape(new Vector3D(0, 0, -200), new Vector3D(0, 0, 200), 40, BarShape.Ends.FLAT);
        Condition condition = Condition.of(boat(weighed("spar", Kind.CYLINDER, spar, 300, new Vector3D(0, 0, -120))));
        for (double step : new double[] {5, 7, 40}) {
            RightingCurve.Summary summary =
                    RightingCurve.surfaced(condition, step).orElseThrow().summary();
            assertTrue(summary.endsWithoutTrim());
            assertEquals(90, summary.rangeDeg(), 0.01);
        }
    }

    /**
     * A floating ball has its metacentre in its middle, like a body wholly under water: with d from G to there and a = d_z, the trim at a list φ is
     * tan θ = d_x / (a cos φ) and GZ = a² sin φ cos φ / √(d_x² + a² cos² φ). This one rests at 84.3° and comes close to on end early.
     */
    @Test
    void aSteepBoatHasHerLeverToTheEnd() {
        BarShape ball = new BarShape(new Vector3D(-40, 0, 0), new Vector3D(40, 0, 0), 80, BarShape.Ends.ROUND);
        Condition condition = Condition.of(boat(weighed("ball", Kind.CYLINDER, ball, 150, new Vector3D(-20, 0, -2))));
        RightingCurve curve = RightingCurve.surfaced(condition, 5).orElseThrow();
        int compared = 0;
        for (RightingCurve.Row row : curve.rows()) {
            double phi = Math.toRadians(row.heelDeg());
            double q = 2 * Math.cos(phi);
            assertEquals(Math.toDegrees(Math.atan2(20, q)), row.trimDeg(), 1e-5);
            assertEquals(2 * Math.sin(phi) * q / Math.hypot(20, q), row.gzMm(), 1e-6);
            compared++;
        }
        assertEquals(35, compared);
        assertTrue(curve.summary().endsWithoutTrim());
        assertEquals(90, curve.summary().rangeDeg(), 1.1);
    }

    /** Free surface in the tank: the lever near upright has the slope of the fluid GM, i/V less than the solid one. */
    @Test
    void freeSurfaceTakesFromTheLever() {
        Boat wet = boat(
                weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 120), 1600, new Vector3D(200, 0, 20)),
                tank("tank", box(100, -30, 5, 300, 30, 45), Optional.of("barge")));
        RightingCurve curve = RightingCurve.surfaced(Condition.of(wet.withAllTanksAt(0.5)), 0.01)
                .orElseThrow();
        double v = (1600 + 240) * 1000;
        double t = v / 4e4;
        double gm = t / 2 + 1e4 / 12 / t - (1600 * 20 + 240 * 15) / 1840.0 - 200 * Math.pow(60, 3) / 12 / v;
        assertEquals(gm * Math.toRadians(0.01), at(curve, 0.01).gzMm(), 1e-6);
    }

    /** Dived: GZ = BG sin φ about any axis (statics of a body wholly under water), as far as the trim is stable, that is to 90°. */
    @Test
    void submergedIsBgSine() {
        Condition condition = Condition.of(boat(
                weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 2000, new Vector3D(250, 0, 33)),
                tank("tank", bar(200, 300, 40, 60), Optional.of("tube"))));
        Submerged s = Submerged.of(condition);
        double tankG = Math.PI * 900 * 100 / 1000;
        assertEquals(7 * 2000 / (2000 + tankG), s.bgMm(), 1e-9);
        RightingCurve curve = RightingCurve.submerged(condition, 5);
        assertEquals(35, curve.rows().size());
        for (RightingCurve.Row row : curve.rows()) {
            double gz = s.bgMm() * Math.sin(Math.toRadians(row.heelDeg()));
            assertEquals(gz, row.gzMm(), 1e-9);
            assertEquals(gz * (2000 + tankG), row.momentGmm(), 1e-6);
        }
        assertEquals(90, curve.summary().rangeDeg(), 0);
        assertEquals(s.bgMm(), curve.summary().maxGzMm(), 1e-9);
        assertEquals(90, curve.summary().maxGzAtDeg(), 1e-9);
        assertEquals(s.bgMm(), curve.summary().areaMmRad(), 1e-9);
        assertTrue(curve.summary().endsWithoutTrim());
    }

    /** With B before G as well, the greatest lever and the area agree with the rows. */
    @Test
    void submergedWithTrim() {
        Condition condition =
                Condition.of(boat(weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 2400, new Vector3D(247, 1, 33))));
        RightingCurve curve = RightingCurve.submerged(condition, 0.1);
        double most =
                curve.rows().stream().mapToDouble(RightingCurve.Row::gzMm).max().orElseThrow();
        // Within a step of the peak the rows fall short by less than its curvature times the square of the step.
        assertEquals(most, curve.summary().maxGzMm(), 1e-4);
        double area = 0;
        for (RightingCurve.Row row : curve.rows()) {
            area += row.heelDeg() > curve.equilibrium().heelDeg() ? row.gzMm() * Math.toRadians(0.1) : 0;
        }
        assertEquals(area, curve.summary().areaMmRad(), 1e-3 * area);
        RightingCurve.Row peak = curve.rows().stream()
                .filter(row -> row.gzMm() == most)
                .findFirst()
                .orElseThrow();
        assertEquals(peak.heelDeg(), curve.summary().maxGzAtDeg(), 0.1);
    }

    /** The deck edge of a box at half breadth b with freeboard f goes under at tan φ = f/b; a tower on it later. */
    @Test
    void deckEdgeAndTowerGoUnder() {
        Boat hull = new Boat(
                "hull",
                Water.ofDensity(1),
                Optional.empty(),
                List.of(
                        skin("hull", Solids.box(0, -50, 0, 400, 50, 70), 1, 1),
                        skin("tower", Solids.box(180, -10, 70, 220, 10, 110), 1, 1),
                        weighed("core", Kind.CYLINDER, box(5, -49, 1, 395, 49, 69), 1300, new Vector3D(200, 0, 12))),
                List.of(),
                Targets.NONE);
        Condition condition = Condition.of(hull);
        RightingCurve curve = RightingCurve.surfaced(condition, 3).orElseThrow();
        Equilibrium rest = Balance.settle(condition, Balance.upright(condition));
        double freeboard = 70 - rest.plane().heightMm();
        // The waterline turns about the centreline of a wall-sided body; the skin's few grams move it by less than
        // 0.1°.
        assertEquals(
                Math.toDegrees(Math.atan(freeboard / 50)),
                curve.deckEdgeUnderDeg().orElseThrow(),
                0.3);
        assertEquals("tower", curve.topUnder().orElseThrow().part());
        assertTrue(curve.topUnder().get().heelDeg() > curve.deckEdgeUnderDeg().get() + 20);
    }

    @Test
    void sinkingBoatHasNoCurve() {
        Condition heavy =
                Condition.of(boat(weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 3000, new Vector3D(250, 0, 33))));
        assertTrue(RightingCurve.surfaced(heavy, 5).isEmpty());
    }

    /** A weight w moved across by d lists a round hull by tan φ = w d / (W a), a the height of the axis above G (exact). */
    @Test
    void weightMovedAcross() {
        Condition round =
                Condition.of(boat(weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 1000, new Vector3D(250, 0, 33))));
        SteadyHeel heel = SteadyHeel.withWeightMoved(round, 100, 30).orElseThrow();
        assertEquals(Math.toDegrees(Math.atan(100 * 30 / 7000.0)), heel.heelDeg(), 1e-7);
    }

    /** A steady torque M lists her by sin φ = M / (W a); more than W a she cannot bear. */
    @Test
    void torque() {
        Condition round =
                Condition.of(boat(weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 1000, new Vector3D(250, 0, 33))));
        for (double share : new double[] {0.1, -0.5, 0.97}) {
            SteadyHeel heel = SteadyHeel.underTorque(round, share * 7000).orElseThrow();
            assertEquals(Math.toDegrees(Math.asin(share)), heel.heelDeg(), 1e-5);
        }
        assertTrue(SteadyHeel.underTorque(round, 7100).isEmpty());
        assertEquals(0, SteadyHeel.underTorque(round, 0).orElseThrow().heelDeg(), 1e-9);
    }

    /** T = 2π k / √(g GM): a solid round bar of radius r about an axis a below its own, k² = r²/2 + 0 about its own centre of mass. */
    @Test
    void rollPeriodOfARoundBar() {
        Condition round =
                Condition.of(boat(weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 1000, new Vector3D(250, 0, 33))));
        Equilibrium rest = Balance.settle(round, Balance.upright(round));
        RollPeriod period = RollPeriod.of(round, rest).orElseThrow();
        assertEquals(40 / Math.sqrt(2), period.radiusOfGyrationMm(), 1e-9);
        assertEquals(2 * Math.PI * 40 / Math.sqrt(2) / Math.sqrt(9806.65 * 7), period.periodS(), 1e-9);
    }

    /** Two point masses m at ±d about the axis between them: k = d; a thin shell of a box from ∫ (y² + z²) dA. */
    @Test
    void radiusOfGyrationOfPointsAndShells() {
        Condition condition = Condition.of(boat(
                weighed("buoy", Kind.CYLINDER, box(0, -50, 0, 400, 50, 120), 0, new Vector3D(200, 0, 0)),
                compact("a", 400, new Vector3D(200, 30, 10)),
                compact("b", 400, new Vector3D(200, -30, 10))));
        Equilibrium rest = Balance.settle(condition, Balance.upright(condition));
        assertEquals(30, RollPeriod.of(condition, rest).orElseThrow().radiusOfGyrationMm(), 1e-9);

        double a = 300;
        double b = 120;
        double c = 30;
        Condition shell = Condition.of(boat(skin("shell", Solids.box(0, -b / 2, 0, a, b / 2, c), 0.5, 0.5)));
        double area = 2 * (a * b + a * c + b * c);
        double decks = 2 * a * b * (b * b / 12 + c * c / 4);
        double sides = 2 * a * c * (c * c / 12 + b * b / 4);
        double ends = 2 * b * c * (b * b + c * c) / 12;
        Equilibrium afloat = Balance.settle(shell, Balance.upright(shell));
        assertEquals(0, afloat.heelDeg(), 1e-6);
        RollPeriod period = RollPeriod.of(shell, afloat).orElseThrow();
        assertEquals(Math.sqrt((decks + sides + ends) / area), period.radiusOfGyrationMm(), 1e-6);
    }
}
