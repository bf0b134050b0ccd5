package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.TestParts.box;
import static trimwright.TestParts.solid;
import static trimwright.TestParts.tank;
import static trimwright.TestParts.weighed;
import static trimwright.statics.DiveBoats.bar;
import static trimwright.statics.DiveBoats.boat;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Softness;
import trimwright.boat.Water;

/** Surface film, other water, leaks and depth. */
class WaterAndDepthTest {

    /** IAPWS R1-76(2014): 300 K → 71.686 mN/m; 20 °C → 72.74 mN/m. */
    @ParameterizedTest
    @CsvSource({"26.85, 71.686, 0.0005", "20, 72.74, 0.005"})
    void surfaceTension(double temperatureC, double mNPerM, double tolerance) {
        assertEquals(mNPerM, SurfaceTension.mNPerM(temperatureC), tolerance);
    }

    /** At most 7.4 g for each metre of wetted outline in water of 20 °C. */
    @Test
    void filmHoldsGramsPerMetre() {
        assertEquals(7.417, SurfaceFilm.gramsHeld(SurfaceTension.mNPerM(20), 1000), 5e-4);
        Boat barge = boat(
                        weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 80), 2500, new Vector3D(200, 0, 20)),
                        tank("t", box(150, -40, 5, 250, 40, 55), Optional.of("barge")))
                .in(Water.of(20, 0));
        Condition condition = Condition.of(barge);
        SurfaceFilm film = SurfaceFilm.of(condition, DiveRun.of(condition, 5).course());
        assertEquals(1000, film.greatestOutlineMm(), 1e-6);
        assertEquals(7.417, film.greatestG(), 5e-4);
        assertTrue(film.temperatureStated());
        assertTrue(!film.salty());
    }

    /** What stands inside a hull does not add to her outline; what stands outside does. */
    @Test
    void outlineOfHullAndOfWhatStandsOutside() {
        Condition condition = Condition.of(boat(
                DiveBoats.skin("hull", trimwright.mesh.Solids.box(0, -50, 0, 400, 50, 80), 1, 1.2),
                weighed("core", Kind.CYLINDER, box(10, -40, 10, 390, 40, 70), 1000, new Vector3D(200, 0, 20)),
                weighed("pod", Kind.FITTING, bar(100, 200, 40, 20), 10, new Vector3D(150, 0, 40)),
                weighed("outrigger", Kind.FITTING, box(100, 80, 20, 200, 90, 60), 10, new Vector3D(150, 85, 40))));
        Exposed exposed = Exposed.of(condition);
        assertEquals(2, exposed.bodies().size());
        assertEquals(1000 + 220, exposed.outlineMm(trimwright.immersion.WaterPlane.level(40)), 1e-9);
    }

    /** Fresh water of 20 °C to sea water of 15 °C: 2.79 % more lift, 139 g on 5 kg (EOS-80). */
    @Test
    void freshToSea() {
        Boat boat = boat(
                        weighed("barge", Kind.CYLINDER, box(0, -60, 0, 500, 60, 100), 5000, new Vector3D(250, 0, 30)),
                        tank("t", box(100, -50, 5, 400, 50, 37), Optional.of("barge")))
                .in(Water.of(20, 0));
        Condition home = Condition.of(boat);
        double residual = home.withAllTanksAt(1).reserveG();
        WaterChange sea = WaterChange.of(home, List.of(Water.of(15, 35))).get(0);
        assertEquals(139.5, sea.gramsForLineG().orElseThrow(), 0.5);
        // The same volume less the tank's keeps the same residual.
        double density = Water.of(15, 35).densityGPerMm3() - home.densityGPerMm3();
        assertEquals(density * (6e6 - 0.96e6), sea.residualG() - residual, 1e-6);
        assertEquals(sea.residualG() - residual, sea.gramsForResidualG(), 1e-9);
        assertEquals(WaterChange.Verdict.STAYS_UP, sea.dive());
        // She floats higher by the ratio of the densities.
        assertEquals(
                5000 / (Water.of(15, 35).densityGPerMm3() * 60000),
                sea.settled().orElseThrow().plane().heightMm(),
                1e-8);
    }

    /** Warm fresh water carries less: with a small residual she sinks there, and the grams to take are said. */
    @Test
    void warmWaterSinksHer() {
        Boat boat = boat(
                        weighed("barge", Kind.CYLINDER, box(0, -60, 0, 500, 60, 100), 5000, new Vector3D(250, 0, 30)),
                        tank("t", box(100, -50, 5, 400, 50, 38.1), Optional.of("barge")))
                .in(Water.of(4, 0));
        Condition home = Condition.of(boat);
        double residual = home.withAllTanksAt(1).reserveG();
        assertTrue(residual > 0 && residual < 10, "residual " + residual);
        WaterChange warm = WaterChange.of(home, List.of(Water.of(28, 0))).get(0);
        assertEquals(WaterChange.Verdict.SINKS, warm.dive());
        assertTrue(warm.gramsForLineG().orElseThrow() < 0);
        assertEquals(
                WaterChange.Verdict.DIVES,
                WaterChange.of(home, List.of(Water.of(4, 0))).get(0).dive());
        assertEquals(6, WaterChange.of(home, WaterChange.USUAL).size());
    }

    private static final Part TUBE =
            weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 2000, new Vector3D(250, 0, 30));

    private static Part foam(Softness softness) {
        return solid("foam", Kind.FOAM, box(200, -10, 90, 300, 10, 95), 0.03).withSoftness(softness);
    }

    /** Boyle: half the lift of soft foam is gone where the water weighs as much as the atmosphere, 10.33 m (S). */
    @Test
    void softFoamFollowsBoyle() {
        Condition condition = Condition.of(boat(TUBE, foam(new Softness(Optional.empty(), true, Optional.empty()))));
        double head = DepthRun.headM(1e-3);
        assertEquals(10.33, head, 0.005);
        // The foam is the highest part: its middle lies 2.5 mm below the depth of the boat.
        DepthRun run = DepthRun.of(condition, head - 0.0025, head - 0.0025);
        double full = Submerged.of(condition).residualG();
        assertEquals(2, run.rows().size());
        assertEquals(full - 5, run.rows().get(1).residualG(), 1e-9);
        assertEquals(full - 10 * 0.0025 / (head + 0.0025), run.rows().get(0).residualG(), 1e-9);
        assertEquals(0, run.soakedG(), 0);
    }

    /** Air in a pocket follows the same law and weighs nothing. */
    @Test
    void trappedAirFollowsBoyle() {
        Part air = new Part(
                "air",
                Kind.AIR,
                Optional.of(box(200, -10, 90, 300, 10, 95)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                0);
        Condition with = Condition.of(boat(TUBE, air));
        Condition without = Condition.of(boat(TUBE));
        assertEquals(without.massG(), with.massG(), 0);
        assertEquals(10, with.reserveG() - without.reserveG(), 1e-9);
        DepthRun run = DepthRun.of(with, 5, 1);
        assertEquals(6, run.rows().size());
        for (DepthRun.Row row : run.rows()) {
            double head = DepthRun.headM(1e-3);
            double left = 10 * head / (head + row.depthM() + 0.0025);
            assertEquals(without.reserveG() + left, row.residualG(), 1e-9);
            // B comes down with the air that goes.
            double b = (Math.PI * 1600 * 500 * 40 + left * 1000 * 92.5) / (Math.PI * 1600 * 500 + left * 1000);
            assertEquals(b - 30, row.bgMm(), 1e-9);
        }
    }

    /** A linear compression of c per cent per metre spends a residual R at d = 100 R / (c V), and soaking takes its share at once. */
    @Test
    void depthOfNoReturn() {
        double volume = Math.PI * 1600 * 500 / 1000;
        Part heavy = weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), volume + 4, new Vector3D(250, 0, 30));
        Part foam = solid("foam", Kind.FOAM, box(200, -10, 90, 300, 10, 95), 0.1)
                .withSoftness(new Softness(Optional.of(10.0), false, Optional.of(20.0)));
        Condition condition = Condition.of(boat(heavy, foam));
        // Foam of 10 cm³ and 1 g carries 4 g of the tube: 5 g are left.
        assertEquals(5, Submerged.of(condition).residualG(), 1e-9);
        DepthRun run = DepthRun.of(condition, 2, 0.5);
        assertEquals(5 - 0.0025, run.noReturnM().orElseThrow(), 1e-5);
        assertEquals(2 * (1 - 0.1 * 0.0025), run.soakedG(), 1e-9);
        // Soaked: 0.8 × 10 (1 − 0.1 d) = 5.
        assertEquals(3.75 - 0.0025, run.noReturnSoakedM().orElseThrow(), 1e-5);
        Condition firm = Condition.of(boat(TUBE, foam(Softness.NONE)));
        assertTrue(DepthRun.of(firm, 2, 0.5).noReturnM().isEmpty());
        Condition sunk = Condition.of(
                boat(weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), volume + 1, new Vector3D(250, 0, 30))));
        assertEquals(0, DepthRun.of(sunk, 2, 0.5).noReturnM().orElseThrow(), 0);
    }

    /** Stiff PVC foam loses about 0.1…0.2 % at 5 m (C): with 0.03 % per metre it loses 0.15 % there. */
    @Test
    void stiffFoamHardlyGivesWay() {
        Condition condition = Condition.of(boat(TUBE, foam(new Softness(Optional.of(0.03), false, Optional.empty()))));
        DepthRun run = DepthRun.of(condition, 5, 5);
        double lost = Submerged.of(condition).residualG() - run.rows().get(1).residualG();
        assertEquals(10 * 0.0015, lost, 1e-5);
    }

    /** A cylinder may leak until reserve and water are equal; then she lies as the water lets her. */
    @Test
    void leakAllowance() {
        Boat boat = boat(
                weighed("tube", Kind.CYLINDER, bar(0, 500, 40, 80), 1800, new Vector3D(250, 0, 25)),
                tank("t", bar(200, 300, 40, 60), Optional.of("tube")),
                TestParts.inside("tube", TestParts.compact("battery", 180.0, new Vector3D(300, 0, 20))));
        Condition condition = Condition.of(boat);
        LeakAllowance leak = LeakAllowance.of(condition.withAllTanksAt(0.7)).get(0);
        double volume = Math.PI * 1600 * 500;
        double tank = Math.PI * 900 * 100;
        assertEquals("tube", leak.cylinder());
        assertEquals(volume - tank, leak.roomMm3(), 1e-6);
        assertEquals(List.of("battery"), leak.unknownVolumes());
        assertEquals(volume / 1000 - 1980, leak.allowanceG(), 1e-9);
        assertTrue(!leak.roomFillsFirst());
        Equilibrium end = leak.end().orElseThrow();
        assertEquals(volume / 1000 - LeakAllowance.LEFT_G, end.massG(), 1e-9);
        // The water runs to one end and takes it down.
        assertTrue(Math.abs(end.trimDeg()) > 5, "trim " + end.trimDeg());
    }

    /** A cylinder that is full before the reserve is spent does not sink her. */
    @Test
    void floodedCylinderDoesNotSinkHer() {
        Condition condition = Condition.of(boat(
                weighed("tube", Kind.CYLINDER, bar(100, 200, 40, 60), 200, new Vector3D(150, 0, 35)),
                solid("foam", Kind.FOAM, box(0, -60, 0, 300, 60, 60), 0.05)));
        LeakAllowance leak = LeakAllowance.of(condition).get(0);
        assertTrue(leak.roomFillsFirst());
        assertEquals(
                Math.PI * 900 * 100 / 1000 + 200 + 108, leak.end().orElseThrow().massG(), 1e-9);
    }

    /** A pair of cylinders, the file giving the one to port: each has its own allowance and its own battery within, and the other's takes no room. */
    @Test
    void eachOfAPairOfCylindersLeaksAlone() {
        Part tube = mirrored("tube", Kind.CYLINDER, 600, box(0, 30, 0, 500, 70, 50), Optional.empty());
        Part battery = mirrored("battery", Kind.FITTING, 100, box(200, 40, 5, 300, 60, 15), Optional.of("tube"));
        Condition condition = Condition.of(boat(tube, battery));
        List<LeakAllowance> leaks = LeakAllowance.of(condition);
        assertEquals(2, leaks.size());
        double reserve = 2 * (500 * 40 * 50 / 1000.0 - 700);
        for (LeakAllowance leak : leaks) {
            assertEquals(500 * 40 * 50 - 100 * 20 * 10, leak.roomMm3(), 1e-6);
            assertEquals(List.of(), leak.unknownVolumes());
            assertEquals(reserve, leak.allowanceG(), 1e-9);
            assertEquals(
                    1400 + reserve - LeakAllowance.LEFT_G,
                    leak.end().orElseThrow().massG(),
                    1e-6);
            // The course counts from no water to all of it.
            List<DiveStep> steps = leak.course().orElseThrow().steps();
            assertEquals(0, steps.get(0).fill(), 0);
            assertEquals(0.5, steps.get(10).fill(), 1e-12);
            assertEquals(1, steps.get(20).fill(), 0);
        }
        assertEquals(
                List.of("tube", "tube′"),
                leaks.stream().map(LeakAllowance::cylinder).toList());
        // She goes down on the side that leaks.
        double port = leaks.get(0).end().orElseThrow().heelDeg();
        double starboard = leaks.get(1).end().orElseThrow().heelDeg();
        assertTrue(port < -5 && starboard > 5, port + " and " + starboard);
    }

    private static Part mirrored(String id, Kind kind, double massG, Shape shape, Optional<String> in) {
        return new Part(
                id,
                kind,
                Optional.of(shape),
                Optional.empty(),
                Optional.of(massG),
                Optional.empty(),
                Optional.of(shape.solid().centroidMm()),
                in,
                true,
                0);
    }

    /** The water against the painted line, at home and in the sea, where a box draws less by the ratio of the densities. */
    @Test
    void theLineInOtherWater() {
        Boat boat = DiveBoats.painted(
                boat(weighed("barge", Kind.CYLINDER, box(0, -60, 0, 1000, 60, 100), 5000, new Vector3D(500, 0, 30))),
                40);
        Condition home = Condition.of(boat);
        PaintedOffset fresh = Flotation.of(home).fromPaintedLine().orElseThrow();
        assertEquals(5000 / 120.0 - 40, fresh.bowMm(), 1e-8);
        assertEquals(5000 / 120.0 - 40, fresh.sternMm(), 1e-8);
        Water sea = Water.of(15, 35);
        PaintedOffset salt =
                WaterChange.of(home, List.of(sea)).get(0).fromPaintedLine().orElseThrow();
        assertEquals(5000 / (120000 * sea.densityGPerMm3()) - 40, salt.bowMm(), 1e-8);
        assertEquals(5000 / (120000 * sea.densityGPerMm3()) - 40, salt.sternMm(), 1e-8);
    }

    /** Salt is what says so, or, where only a density is given, what is heavier than any fresh water. */
    @Test
    void saltWaterIsToldFromFresh() {
        Boat barge = boat(
                weighed("barge", Kind.CYLINDER, box(0, -50, 0, 400, 50, 80), 2500, new Vector3D(200, 0, 20)),
                tank("t", box(150, -40, 5, 250, 40, 25), Optional.of("barge")));
        assertTrue(film(barge.in(Water.of(20, 10))).salty());
        assertTrue(!film(barge.in(Water.of(4, 0))).salty());
        assertTrue(film(barge.in(Water.ofDensity(1.01))).salty());
        SurfaceFilm fresh = film(barge.in(Water.ofDensity(1)));
        assertTrue(!fresh.salty());
        assertTrue(!fresh.temperatureStated());
        assertEquals(20, fresh.temperatureC(), 0);
    }

    private static SurfaceFilm film(Boat boat) {
        Condition condition = Condition.of(boat);
        return SurfaceFilm.of(condition, DiveRun.of(condition, 2).course());
    }

    @Test
    void noCylinderNoAllowance() {
        assertTrue(LeakAllowance.of(Condition.of(boat(solid("foam", Kind.FOAM, box(0, -60, 0, 300, 60, 60), 0.05))))
                .isEmpty());
    }
}
