package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.plan.StripPlanTest.WET_LEAD;
import static trimwright.plan.StripPlanTest.lead;
import static trimwright.plan.StripPlanTest.list;
import static trimwright.plan.StripPlanTest.mirrored;
import static trimwright.plan.StripPlanTest.plan;
import static trimwright.plan.StripPlanTest.raft;
import static trimwright.plan.StripPlanTest.strip;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Targets;
import trimwright.boat.Zone;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/** What a raft shows when she is floated is asked for the next time, by hand. */
class StripPlanLearnTest {

    private static BallastPlan floated(Boat boat) {
        Condition condition = Condition.of(boat);
        boolean dives = condition.tankVolumeMm3() > 0;
        return new BallastPlan(
                false,
                List.of(),
                Map.of(),
                Map.of(),
                0,
                0,
                0,
                boat,
                Flotation.settling(condition),
                dives ? Optional.of(Flotation.settling(condition.withAllTanksAt(1))) : Optional.empty(),
                List.of(),
                Map.of(),
                new BallastPlan.Rounding(0, 0),
                List.of());
    }

    /** What was built floats 0.3 mm too deep by 12 g: 288 g are asked for the next time, and as much less again the time after. */
    @Test
    void whatFloatsTooDeepIsMadeLighter() {
        Strip keel = lead("keel", TestParts.box(50, -10, -12, 350, 10, 0), 100);
        StripPlan plan = plan(raft(1300, TestParts.at(200, 0, 25)), list(keel));
        plan.learn(floated(raft(1612, TestParts.at(200, 0, 25))));
        assertTrue(plan.solve());
        assertEquals(288 / WET_LEAD, keel.massG(), 0.51);
        plan.learn(floated(raft(1612, TestParts.at(200, 0, 25))));
        assertTrue(plan.solve());
        assertEquals(276 / WET_LEAD, keel.massG(), 0.51);
    }

    /**
     * What was built has its weight 2 mm too far ahead: 300 g in the water move aft by 1600 · 2 ∕ 300 mm, less what the draught of a boat with her G in
     * the waterplane's height would not show: the trim is the moment over the inertia of the waterplane less W · (G above B).
     */
    @Test
    void whatTrimsByTheBowIsLoadedAft() {
        Strip keel = lead("keel", TestParts.box(50, -10, -12, 350, 10, 0), 100);
        StripPlan plan = plan(raft(1300, TestParts.at(200, 0, 25)), list(keel));
        plan.learn(floated(raft(1600, TestParts.at(202, 0, 25))));
        assertTrue(plan.solve());
        double inertia = 100 * Math.pow(400, 3) / 12 / 1000;
        double trim = 1600 * 2 / (inertia - 1600 * 5);
        // Ends on whole mm.
        assertEquals(200 - trim * inertia / 300, keel.centreXMm(), 0.55);
    }

    /** List of tan = 0.5 ∕ GM to port, GM 20 + 100² ∕ 12 ∕ 40 − 25; it is taken as a moment for the GM of 4 mm that is wanted and what she weighs without the strips. */
    @Test
    void whatListsToPortIsLoadedToStarboard() {
        BoxShape run = TestParts.box(100, 5, -12, 300, 25, 0);
        Strip port = strip("bilge", Zone.Use.BALLAST, false, run, 100);
        Strip starboard = strip("bilge", Zone.Use.BALLAST, true, mirrored(run), 100);
        StripPlan plan = plan(raft(1300, TestParts.at(200, 0, 25)), list(port, starboard));
        plan.learn(floated(raft(1600, TestParts.at(200, 0.5, 25))));
        assertTrue(plan.solve());
        double gm = 20 + 100 * 100 / 12.0 / 40 - 25;
        double moment = Math.atan(0.5 / gm) * 1300 * 4;
        assertEquals(moment / 15 / WET_LEAD, starboard.massG() - port.massG(), 1.1);
        assertEquals(300 / WET_LEAD, starboard.massG() + port.massG(), 1.1);
    }

    private static StripPlan stiffening(List<Strip> strips) {
        Boat boat = raft(1600, TestParts.at(200, 0, 25));
        Wanted wanted = new Wanted(6, 14, new Targets.Band(20, 40), 0.5, 0.3, 1.5);
        PlanRequest request = PlanBoats.request(boat, wanted, Goal.LEAST_MASS);
        return new StripPlan(PlanBasis.of(Condition.of(boat), request), strips, List.of(), request);
    }

    /**
     * GM without anything is 15.83 mm. Wanted are 14 mm, but what was built had only 12, so 16 are asked for: lead l and foam f, both in the water, l = f, lead 6 mm under her and foam 35 mm up. The upright
     * moment 1600 · 15.83 + l_mass-moment must be 16 mm times the weight: by hand about the origin below.
     */
    @Test
    void whatStandsTooSoftIsGivenMore() {
        Strip keel = lead("keel", TestParts.box(50, -10, -12, 350, 10, 0), 0);
        BoxShape run = TestParts.box(100, 50, 30, 300, 70, 40);
        Strip port = strip("sides", Zone.Use.FOAM, false, run, 0);
        Strip starboard = strip("sides", Zone.Use.FOAM, true, mirrored(run), 0);
        List<Strip> strips = list(keel, port, starboard);
        StripPlan plan = stiffening(strips);
        assertTrue(plan.solve());
        assertEquals(List.of(), strips);
        strips.addAll(List.of(keel, port, starboard));
        StripPlan again = stiffening(strips);
        // KM 40.83: with G at 28.83 her GM is 12.
        again.learn(floated(raft(1600, TestParts.at(200, 0, 20 + 100 * 100 / 480.0 - 12))));
        assertTrue(again.solve());
        // Moments about the origin: buoyancy of all 1600 · 20 − lead's own room · 6 + foam's · 35 + waterplane's
        // inertia, less weights.
        double lead = again.massG(Zone.Use.BALLAST);
        double foamMm3 = again.volumeMm3(Zone.Use.FOAM);
        assertEquals(lead * WET_LEAD, foamMm3 * 0.97e-3, 1.0);
        double weight = 1600 + lead + 0.03e-3 * foamMm3;
        double upright = 1600 * 20
                - lead / 11.34 * 6
                + foamMm3 * 1e-3 * 35
                + 400 * Math.pow(100, 3) / 12 / 1000
                - 1600 * 25
                + lead * 6
                - 0.03e-3 * foamMm3 * 35;
        assertTrue(lead > 5, "lead " + lead);
        assertEquals(16 * weight, upright, 40 * 0.97 * 0.5 + 20);
    }

    private static StripPlan diving(double tankMm, Wanted wanted, List<Strip> strips) {
        Boat boat = PlanBoats.divingRaft(1600, TestParts.at(200, 0, 25), tankMm, List.of());
        PlanRequest request = PlanBoats.request(boat, wanted, Goal.LEAST_MASS);
        return new StripPlan(PlanBasis.of(Condition.of(boat), request), strips, List.of(), request);
    }

    private static Boat dived(double tankMm, double x, double y, double z) {
        return PlanBoats.divingRaft(1600, TestParts.at(x, y, z), tankMm, List.of());
    }

    /**
     * Foam over the line, 60 to 70 mm up, is what stands out of the water dived. 10 g are left where 20 are wanted and 2 more for cutting: 12 ∕ 0.97 cm³; a boat that was 5 g short when
     * floated is given as much more, one that had 5 g too much as much less.
     */
    @Test
    void whatSinksTooDeepIsGivenFoam() {
        Wanted wanted = new Wanted(3, 3, new Targets.Band(20, 40), 0.5, 0.3, 1.5);
        double[] floatedMm = {0, 392.5, 377.5};
        double[] moreG = {0, 5, -5};
        for (int i = 0; i < 3; i++) {
            Strip foam = strip("above", Zone.Use.FOAM, false, TestParts.box(100, -50, 60, 300, 50, 70), 0);
            StripPlan plan = diving(395, wanted, list(foam));
            if (floatedMm[i] > 0) {
                plan.learn(floated(dived(floatedMm[i], 200, 0, 25)));
            }
            assertTrue(plan.solve());
            // Of foam over the line 0.97 cm³ count dived and its weight at the line; cut to a mm.
            assertEquals((12 + moreG[i]) / 0.97, foam.volumeMm3() / 1000, 0.51);
        }
        Strip foam = strip("above", Zone.Use.FOAM, false, TestParts.box(100, -50, 60, 300, 50, 70), 0);
        StripPlan plan = diving(395, wanted, list(foam));
        // 60 g were left where 40 may be: 20 less are asked for.
        plan.learn(floated(dived(370, 200, 0, 25)));
        assertTrue(plan.solve());
        assertEquals(0, plan.volumeMm3(Zone.Use.FOAM));
    }

    /** BG 6.62 mm is enough for the 6 that are wanted; what hung with 5.07 is asked for 0.93 mm more, by lead and the foam that carries it. */
    @Test
    void whatHangsTooSoftIsGivenMore() {
        Strip keel = lead("keel", TestParts.box(50, -10, -12, 350, 10, 0), 0);
        Strip foam = strip("deep", Zone.Use.FOAM, false, TestParts.box(100, -50, 30, 300, 50, 40), 0);
        List<Strip> strips = list(keel, foam);
        StripPlan plan = diving(385, PlanBoats.WANTED, strips);
        // G of the dry raft 2.5 mm higher.
        double z = 25 + 1.55 * 2370 / 1600;
        plan.learn(floated(dived(385, 200, 0, z)));
        assertTrue(plan.solve());
        double lead = plan.massG(Zone.Use.BALLAST);
        double foamCm3 = plan.volumeMm3(Zone.Use.FOAM) / 1000;
        double bg = (1600 * 5 + 770 * 10 + lead * WET_LEAD * 36 + 0.97 * foamCm3 * 5) / (2370 + lead + 0.03 * foamCm3);
        double had = (1600 * 5 + 770 * 10) / 2370.0 - 1.55;
        assertEquals(6 + (6 - had), bg, 0.03);
    }

    /**
     * What trimmed or listed dived is asked for half as much the other way the next time, half of the tolerance less. Foam between the line and the dived plane, ahead of the bow or at the port side, does
     * that: 0.97 g to the cm³ at 210 or 55 mm against 2401 g with BG 6 mm.
     */
    @Test
    void whatLiesAskewDivedIsSetRight() {
        BoxShape ahead = TestParts.box(405, -5, 45, 415, 5, 55);
        BoxShape aside = TestParts.box(150, 50, 45, 250, 60, 55);
        Wanted sunk = new Wanted(6, 4, new Targets.Band(-5, 5), 0.5, 0.3, 1.5);
        for (boolean along : new boolean[] {true, false}) {
            Strip foam = strip("above", Zone.Use.FOAM, false, along ? ahead : aside, 0);
            StripPlan plan = diving(400.5, sunk, list(foam));
            double x = along ? 1 : 0;
            double y = along ? 0 : 0.3;
            var tank = PlanBoats.tank("tank", "raft", TestParts.box(x - 0.25, y - 40, 7.5, x + 400.25, y + 40, 32.5));
            BallastPlan before = floated(PlanBoats.raft(1600, TestParts.at(200, 0, 25), List.of(), tank));
            plan.learn(before);
            assertTrue(plan.solve());
            PlanRequest request = PlanBoats.request(before.planned(), sunk, Goal.LEAST_MASS);
            double off = along
                    ? request.divedTrimOffDeg(before.dived().orElseThrow())
                    : request.divedListOffDeg(before.dived().orElseThrow());
            double hanging = Math.toDegrees(Math.atan(801 * (x + y) / (1600 * 5 + 801 * 10)));
            assertEquals(-hanging, off, 1e-3);
            double moment = Math.toRadians(hanging / 2 - 0.5 * (along ? 1.5 : 0.3)) * 2401 * 6;
            double cm3 = moment / 0.97 / (along ? 210 : 55);
            // Cut to a mm of 0.1 cm³; ahead it may move by the rest of its run.
            assertEquals(cm3, plan.volumeMm3(Zone.Use.FOAM) / 1000, 0.051 + (along ? 0.03 * cm3 : 0));
        }
    }
}
