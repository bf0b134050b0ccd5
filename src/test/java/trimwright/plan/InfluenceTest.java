package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;

/** What weights and bodies do at the line and dived, by hand. */
class InfluenceTest {

    private static final WaterPlane LINE = WaterPlane.level(0);
    private static final WaterPlane DIVED = WaterPlane.level(4);
    /** 10 × 10 × 20 mm: half of it under the line, 14 mm of it under the other plane. */
    private static final BoxShape BOX = TestParts.box(0, -2, -10, 10, 8, 10);

    private static void same(Vector3D expected, Vector3D found) {
        assertEquals(0, expected.distance(found), 1e-9, expected + " and not " + found);
    }

    private static void same(Influence expected, Influence found) {
        assertEquals(expected.massG(), found.massG(), 1e-9);
        same(expected.massMoment(), found.massMoment());
        assertEquals(expected.tankG(), found.tankG(), 1e-9);
        same(expected.tankMoment(), found.tankMoment());
        assertEquals(expected.surfacedMm3(), found.surfacedMm3(), 1e-9);
        same(expected.surfacedMoment(), found.surfacedMoment());
        assertEquals(expected.divedMm3(), found.divedMm3(), 1e-9);
        same(expected.divedMoment(), found.divedMoment());
        assertEquals(expected.wholeMm3(), found.wholeMm3(), 1e-9);
        same(expected.wholeMoment(), found.wholeMoment());
    }

    private static Influence body(double volume, Vector3D centre, Influence mass) {
        Vector3D moment = centre.scalarMultiply(volume);
        return new Influence(
                mass.massG(),
                mass.massMoment(),
                mass.tankG(),
                mass.tankMoment(),
                volume,
                moment,
                volume,
                moment,
                volume,
                moment);
    }

    @Test
    void ofABoxThatBothPlanesCut() {
        Influence box = Influence.ofBody(BOX.solid(), LINE, DIVED);
        same(
                new Influence(
                        0,
                        Vector3D.ZERO,
                        0,
                        Vector3D.ZERO,
                        1000,
                        TestParts.at(5000, 3000, -5000),
                        1400,
                        TestParts.at(7000, 4200, -4200),
                        2000,
                        TestParts.at(10_000, 6000, 0)),
                box);
    }

    @Test
    void ofMassesAndTankWater() {
        same(
                new Influence(
                        3,
                        TestParts.at(6, 9, 12),
                        0,
                        Vector3D.ZERO,
                        0,
                        Vector3D.ZERO,
                        0,
                        Vector3D.ZERO,
                        0,
                        Vector3D.ZERO),
                Influence.ofMass(3, TestParts.at(2, 3, 4)));
        same(
                new Influence(
                        0,
                        Vector3D.ZERO,
                        3,
                        TestParts.at(2, 3, 4),
                        0,
                        Vector3D.ZERO,
                        0,
                        Vector3D.ZERO,
                        0,
                        Vector3D.ZERO),
                Influence.ofTankWater(3, TestParts.at(2, 3, 4)));
    }

    @Test
    void twiceTheSame() {
        Influence all = Influence.ofBody(BOX.solid(), LINE, DIVED)
                .plus(Influence.ofMass(3, TestParts.at(2, 3, 4)))
                .plus(Influence.ofTankWater(5, TestParts.at(6, 7, 8)));
        same(all.times(2), all.plus(all));
        assertEquals(10, all.times(2).tankG(), 1e-12);
        assertEquals(2800, all.times(2).divedMm3(), 1e-9);
    }

    /** A piece weighs; what it displaces counts only where it stands in the water. */
    @Test
    void ofPieces() {
        Part wet = TestParts.weighed("wet", Kind.FITTING, BOX, 7, TestParts.at(5, 3, 1));
        Boat boat = new Boat(
                "two",
                PlanBoats.raft(1, Vector3D.ZERO, List.of()).water(),
                Optional.empty(),
                List.of(wet),
                List.of(),
                trimwright.boat.Targets.NONE);
        Influence wetOne = Influence.ofPiece(boat.pieces().get(0), LINE, DIVED);
        assertEquals(7, wetOne.massG(), 1e-12);
        same(TestParts.at(35, 21, 7), wetOne.massMoment());
        assertEquals(1400, wetOne.divedMm3(), 1e-9);
        Part dry = PlanBoats.tank("dry", "hull", BOX);
        same(
                Influence.NOTHING,
                Influence.ofPiece(boat.withParts(List.of(dry)).pieces().get(0), LINE, DIVED));
    }

    @Test
    void perMm3() {
        Influence one = Influence.perMm3(BOX.solid(), 0.01, LINE, DIVED);
        same(
                Influence.ofBody(BOX.solid(), LINE, DIVED).plus(Influence.ofMass(20, TestParts.at(5, 3, 0))),
                one.times(2000));
        assertEquals(0.5, one.surfacedMm3(), 1e-12);
        assertEquals(1, one.wholeMm3(), 1e-12);
    }

    /** A box wholly under both planes moved aside does what it did before and what the move adds. */
    @Test
    void movingAddsWhatItMoves() {
        Vector3D shift = TestParts.at(3, -4, -7);
        Vector3D centre = TestParts.at(5, 3, -40);
        Influence tank = Influence.ofTankWater(11, centre.scalarMultiply(11));
        Influence before = body(2000, centre, Influence.ofMass(20, centre).plus(tank));
        Vector3D there = centre.add(shift);
        Influence after = body(
                2000, there, Influence.ofMass(20, there).plus(Influence.ofTankWater(11, there.scalarMultiply(11))));
        same(after, before.plus(before.whenMoved(shift)));
    }

    private static PlanBasis basis(Boat boat) {
        return PlanBasis.of(Condition.of(boat), PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS));
    }

    /**
     * The raft at her line: 40 mm · 400 · 100 under water, the waterplane's inertias, and dived on the plane above which the middle of the residual band, 30 g, stands. Her tank
     * holds 770 g, a quarter of which is in it now.
     */
    @Test
    void aDivingRaftAsSheIs() {
        Boat boat = PlanBoats.divingRaft(1500, TestParts.at(190, 2, 25), 385, List.of());
        Part tank = boat.part("tank").orElseThrow().withFill(0.25);
        PlanBasis basis = basis(boat.withParts(List.of(
                boat.parts().get(1 - boat.parts().indexOf(boat.part("tank").orElseThrow())), tank)));
        assertEquals(59.25, basis.dived.heightMm(), 1e-6);
        assertEquals(40_000, basis.waterplaneMm2, 1e-6);
        same(TestParts.at(200, 0, 40), basis.surfacedCentre);
        assertEquals(1500 + 192.5, basis.boat.massG(), 1e-9);
        same(
                TestParts.at(
                        1500 * 190 + 192.5 * 200,
                        3000,
                        1500 * 25
                                + basis.condition
                                        .tankLoad(basis.surfaced)
                                        .momentGmm()
                                        .getZ()),
                basis.boat.massMoment());
        // A quarter of the tank's height is full.
        assertEquals(
                192.5 * (7.5 + 25 / 8.0),
                basis.condition.tankLoad(basis.surfaced).momentGmm().getZ(),
                1e-6);
        assertEquals(770 - 192.5, basis.boat.tankG(), 1e-9);
        assertEquals(
                770 * 20 - 192.5 * (7.5 + 25 / 8.0), basis.boat.tankMoment().getZ(), 1e-6);
        assertEquals(1.6e6, basis.boat.surfacedMm3(), 1e-6);
        assertEquals(2.37e6, basis.boat.divedMm3(), 1e-3);
        assertEquals(2.4e6, basis.boat.wholeMm3(), 1e-6);
        // The free surface of 385 × 80 mm takes its own inertia off.
        assertEquals(100 * Math.pow(400, 3) / 12 - 80 * Math.pow(385, 3) / 12, basis.inertiaAheadMm4, 1);
        assertEquals(400 * Math.pow(100, 3) / 12 - 385 * Math.pow(80, 3) / 12, basis.inertiaPortMm4, 1);
        Map<String, Double> above = basis.standingAboveMm3(LINE.at(40));
        assertEquals(Set.of("raft"), above.keySet());
        assertEquals(0.8e6, above.get("raft"), 1e-6);
    }

    @Test
    void dryLeadDisplacesNothing() {
        PlanBasis basis = basis(PlanBoats.raft(1500, TestParts.at(190, 2, 25), List.of()));
        same(Influence.ofMass(0.01, TestParts.at(5, 3, 0)), basis.perMm3(BOX.solid(), Optional.of("hull"), 0.01));
        assertEquals(1, basis.perMm3(BOX.solid(), Optional.empty(), 0.01).surfacedMm3(), 1e-9);
        same(Influence.NOTHING, basis.with(Influence.NOTHING).boat);
    }

    /** Moments surfaced about the centre of flotation, dived about the middle of everything; positive where they lift bow or port side or set her up. */
    @Test
    void effectsOfWeightsTanksAndBodies() {
        Effects effects = new Effects(basis(PlanBoats.divingRaft(1500, TestParts.at(190, 2, 25), 385, List.of())));
        Influence weight = Influence.ofMass(10, TestParts.at(260, 7, 12));
        assertEquals(-10, effects.force(weight), 1e-9);
        assertEquals(-600, effects.trim(weight), 1e-9);
        assertEquals(-70, effects.list(weight), 1e-9);
        assertEquals(280, effects.uprightingSurfaced(weight), 1e-9);
        assertEquals(-10, effects.residual(weight), 1e-9);
        assertEquals(-600, effects.divedTrim(weight), 1e-9);
        assertEquals(-70, effects.divedList(weight), 1e-9);
        assertEquals(180, effects.uprightingDived(weight), 1e-9);
        Influence water = Influence.ofTankWater(10, TestParts.at(2600, 70, 120));
        assertEquals(0, effects.force(water), 1e-9);
        assertEquals(0, effects.trim(water), 1e-9);
        assertEquals(-10, effects.residual(water), 1e-9);
        assertEquals(-600, effects.divedTrim(water), 1e-9);
        assertEquals(-70, effects.divedList(water), 1e-9);
        assertEquals(180, effects.uprightingDived(water), 1e-9);
        // 2 cm³ from 30 to 50 mm, half under the line, all under the dived plane.
        Influence body = Influence.ofBody(
                TestParts.box(255, 2, 30, 265, 12, 50).solid(), WaterPlane.level(40), WaterPlane.level(59.25));
        assertEquals(1, effects.force(body), 1e-9);
        assertEquals(60, effects.trim(body), 1e-9);
        assertEquals(7, effects.list(body), 1e-9);
        assertEquals(-5, effects.uprightingSurfaced(body), 1e-9);
        assertEquals(2, effects.residual(body), 1e-9);
        assertEquals(120, effects.divedTrim(body), 1e-9);
        assertEquals(14, effects.divedList(body), 1e-9);
        assertEquals(20, effects.uprightingDived(body), 1e-9);
        // Half of it above the dived plane: its moments dived are those of what is under, but set her up as a whole.
        Influence high = Influence.ofBody(
                TestParts.box(255, 2, 49.25, 265, 12, 69.25).solid(), WaterPlane.level(40), WaterPlane.level(59.25));
        assertEquals(60, effects.divedTrim(high), 1e-6);
        assertEquals(7, effects.divedList(high), 1e-6);
        assertEquals(2, effects.residual(high), 1e-9);
        assertEquals(2 * 29.25, effects.uprightingDived(high), 1e-9);
    }
}
