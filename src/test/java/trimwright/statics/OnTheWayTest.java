package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.immersion.Immersion;

/**
 * On a way the last step of Newton's method is taken without another cut where it is short enough. Here every state is cut out once more, on boats
 * of every sort: it must be at rest all the same, and its metacentric height be the one told.
 */
class OnTheWayTest {

    private static final int BOATS = 400;
    private static final int STEPS = 12;
    /** Share of weight, and of weight times length, that may be left over. */
    private static final double LEFT = 1e-9;
    /** The same for a curve of levers, on which the trim of a boat that is soft in it matters most. */
    private static final double LEFT_OF_LEVER = 1e-8;
    /**
     * Share of a metacentric height, and of the waterplane's part in it, that may be missing: where the water reaches a flat face the
     * waterplane jumps, and with it GM, within a step that moves no boat by a billionth.
     */
    private static final double GM = 5e-4;

    private record Followed(int states, int cuts, List<String> faults) {}

    @Test
    void everyStateOfADiveIsAtRest() {
        List<Followed> dives = LongStream.range(0, BOATS)
                .parallel()
                .filter(seed -> RandomFleet.of(seed).parts().stream().anyMatch(Part::isTank))
                .mapToObj(OnTheWayTest::dive)
                .toList();
        assertEquals(List.of(), dives.stream().flatMap(d -> d.faults.stream()).toList());
        assertTrue(dives.stream().mapToInt(Followed::states).sum() > 10 * STEPS);
        assertTrue(
                dives.stream().mapToInt(Followed::cuts).sum()
                        < 6 * dives.stream().mapToInt(Followed::states).sum(),
                "cuts");
    }

    private static Followed dive(long seed) {
        Boat boat = RandomFleet.of(seed);
        Condition empty = Condition.of(boat);
        if (empty.withAllTanksAt(0).reserveG() <= 0) {
            return new Followed(0, 0, List.of());
        }
        List<String> faults = new ArrayList<>();
        int states = 0;
        int cuts = 0;
        for (DiveStep step : DiveRun.of(empty, STEPS).course().steps()) {
            if (step.settled().isPresent()) {
                Equilibrium told = step.settled().get();
                states++;
                cuts += told.cuts();
                judge(seed, empty.filled(step.fillById()), told, faults);
            }
        }
        return new Followed(states, cuts, faults);
    }

    private static void judge(long seed, Condition condition, Equilibrium told, List<String> faults) {
        Immersion sums = condition.below(told.plane());
        Trial again = Trial.of(condition, sums, null);
        double weight = condition.massG();
        double length = condition.lengthMm();
        double force = Math.abs(again.force) / weight;
        Vector3D lever = again.centreOfGravityMm().subtract(sums.centroidMm());
        double moment = lever.crossProduct(told.plane().up()).getNorm() / length;
        double gm = again.reducedPort() / weight;
        double metacentre = condition.densityGPerMm3() * sums.inertiaPortMm4() / weight;
        if (!(force <= LEFT) || !(moment <= LEFT)) {
            faults.add("seed " + seed + ": force " + force + ", moment " + moment);
        }
        if (!(Math.abs(gm - told.gmTransverseMm()) <= GM * (Math.abs(gm) + 0.01 * metacentre))) {
            faults.add("seed " + seed + ": GM " + gm + ", told " + told.gmTransverseMm());
        }
    }

    @Test
    void everyLeverIsThatOfABoatAtRest() {
        List<String> faults = LongStream.range(0, BOATS / 4)
                .parallel()
                .mapToObj(seed -> levers(seed, Condition.of(RandomFleet.of(seed))))
                .flatMap(List::stream)
                .toList();
        assertEquals(List.of(), faults);
    }

    private static List<String> levers(long seed, Condition condition) {
        List<String> faults = new ArrayList<>();
        if (condition.reserveG() <= 0) {
            return faults;
        }
        double length = condition.lengthMm();
        for (RightingCurve.Row row :
                RightingCurve.surfaced(condition, 10).orElseThrow().rows()) {
            Vector3D up = HeldList.direction(Math.toRadians(row.heelDeg()), Math.toRadians(row.trimDeg()));
            Trial again = TestBoats.held(condition, up);
            double cosTrim = Math.cos(Math.toRadians(row.trimDeg()));
            double gz = again.reducedSlopePort() / again.massG() * cosTrim;
            if (!(Math.abs(again.reducedSlopeAhead()) <= LEFT_OF_LEVER * again.massG() * length)) {
                faults.add("seed " + seed + " at " + row.heelDeg() + "°: trimming moment "
                        + again.reducedSlopeAhead() / again.massG() / length);
            }
            if (!(Math.abs(gz - row.gzMm()) <= LEFT_OF_LEVER * length)) {
                faults.add("seed " + seed + " at " + row.heelDeg() + "°: lever " + gz + ", told " + row.gzMm());
            }
        }
        return faults;
    }
}
