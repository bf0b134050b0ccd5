package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;

/**
 * Every answer about a boat of {@link RandomFleet} is truly at rest, and none is missed. Forces and moments are worked out anew from the sums below the plane that was
 * answered. {@code -Dtrimwright.boats=100000} tries more boats; what was found then stands in {@code docs/reliability.md}.
 */
class RandomFleetTest {

    private static final int BOATS = Integer.getInteger("trimwright.boats", 600);

    /** Of every so many boats all attitudes are looked at, and of every so many a dense search is made too. */
    private static final int ALL_ATTITUDES = 10;

    private static final int DENSE = Integer.getInteger("trimwright.dense", 200);

    /** Share of weight, and of weight times length, that may be left over. */
    private static final double LEFT = 1e-9;

    /** How far from a rest the energy is looked at, rad, and by what share of the length rounding may lower it there. */
    private static final double PROBE = 1e-3;

    private static final double ROUNDING = 1e-11;

    /** 2562 directions, 4° apart. */
    private static final TriangleMesh DIRECTIONS = TestMeshes.ball(4);

    /** Attitudes whose potential heights differ by less than this share of the length may be a row, of which one is told. */
    private static final double ROW = 2e-7;

    private record Outcome(long seed, boolean floats, int cuts, int attitudes, List<String> faults) {}

    @Test
    void everyAnswerIsAtRestAndNoneIsMissed() {
        List<Outcome> outcomes = LongStream.range(0, BOATS)
                .parallel()
                .mapToObj(RandomFleetTest::tried)
                .toList();
        List<String> faults = outcomes.stream()
                .flatMap(o -> o.faults.stream().map(f -> "seed " + o.seed + ": " + f))
                .toList();
        long floating = outcomes.stream().filter(Outcome::floats).count();
        assertTrue(floating > 0.7 * BOATS && floating < BOATS, floating + " of " + BOATS + " float");
        tell(outcomes, floating);
        assertEquals(List.of(), faults);
    }

    /**
     * Boats with a rest in a trough so narrow that it lies between the directions looked at: upside down or square to others (the first five), or
     * on the bottom of a trough between two directions, or in a dent of the floor of a valley (the last four).
     */
    @ParameterizedTest
    @ValueSource(longs = {102243, 109544, 950, 98700, 101018, 40400, 102943, 90100, 301457, 305633, 319408})
    void sheRestsInNarrowTroughsToo(long seed) {
        Condition condition = Condition.of(RandomFleet.of(seed));
        List<String> faults = new ArrayList<>();
        searchDensely(condition, Flotation.of(condition).attitudes(), faults);
        assertEquals(List.of(), faults);
    }

    /** The figures for the documentation, where they are asked for. */
    private static void tell(List<Outcome> outcomes, long floating) {
        int[] cuts = outcomes.stream()
                .filter(Outcome::floats)
                .mapToInt(Outcome::cuts)
                .sorted()
                .toArray();
        if (Boolean.getBoolean("trimwright.figures")) {
            System.out.printf(
                    "%d boats, %d float; water planes tried to settle: median %d, 99 %% %d, most %d; attitudes looked at %d%n",
                    outcomes.size(),
                    floating,
                    cuts[cuts.length / 2],
                    cuts[(int) (0.99 * cuts.length)],
                    cuts[cuts.length - 1],
                    outcomes.stream().mapToInt(Outcome::attitudes).sum());
        }
    }

    private static Outcome tried(long seed) {
        Condition condition = Condition.of(RandomFleet.of(seed));
        List<String> faults = new ArrayList<>();
        if (condition.reserveG() <= 0) {
            return new Outcome(seed, false, 0, 0, faults);
        }
        try {
            boolean all = seed % ALL_ATTITUDES == 0;
            Flotation flotation = all ? Flotation.of(condition) : Flotation.settling(condition);
            for (Equilibrium rest : flotation.attitudes()) {
                judge(condition, rest, faults);
            }
            if (seed % DENSE == 0) {
                searchDensely(condition, flotation.attitudes(), faults);
            }
            Equilibrium settled = flotation.settled().orElseThrow();
            return new Outcome(seed, true, settled.cuts(), flotation.attitudes().size(), faults);
        } catch (RuntimeException | AssertionError e) {
            faults.add(e.toString());
            return new Outcome(seed, true, 0, 0, faults);
        }
    }

    private static void judge(Condition condition, Equilibrium rest, List<String> faults) {
        double weight = condition.massG();
        double length = condition.lengthMm();
        WaterPlane plane = rest.plane();
        double force = condition.densityGPerMm3() * condition.below(plane).volumeMm3() - weight;
        Vector3D lever = rest.centreOfBuoyancyMm().subtract(condition.centreOfGravityMm(plane));
        double moment = lever.crossProduct(plane.up()).getNorm();
        if (!(Math.abs(force) <= LEFT * weight)) {
            faults.add("force " + force / weight + " of the weight");
        }
        if (!(moment <= LEFT * length)) {
            faults.add("moment " + moment / length + " of weight times length");
        }
        if (!(rest.gmLeastMm() >= -LEFT * length)) {
            faults.add("no minimum, GM " + rest.gmLeastMm());
        }
        for (double[] aside : new double[][] {{1, 0}, {0, 1}, {-1, 0}, {0, -1}, {0.7, 0.7}, {-0.7, 0.7}}) {
            Vector3D up = plane.up().add(PROBE * aside[0], plane.ahead()).add(PROBE * aside[1], plane.port());
            double fall =
                    rest.energyMm() - TestBoats.held(condition, up.normalize()).potentialHeightMm();
            if (!(fall <= ROUNDING * length)) {
                faults.add("lies lower aside by " + fall / length + " of the length");
            }
        }
    }

    private static void searchDensely(Condition condition, List<Equilibrium> found, List<String> faults) {
        int[][] neighbours = neighbours();
        Trial[] trials = new Trial[neighbours.length];
        for (int v = 0; v < trials.length; v++) {
            trials[v] = TestBoats.held(condition, TestMeshes.vertex(DIRECTIONS, v));
        }
        for (Trial trial : lowest(trials, neighbours)) {
            Equilibrium rest = Balance.settle(condition, trial.plane());
            double row = ROW * condition.lengthMm();
            boolean known = found.stream()
                    .anyMatch(e -> Vector3D.angle(e.plane().up(), rest.plane().up()) < PROBE
                            || Math.abs(e.energyMm() - rest.energyMm()) < row);
            if (!known) {
                faults.add("missed: heel " + rest.heelDeg() + ", trim " + rest.trimDeg());
            }
        }
    }

    private static List<Trial> lowest(Trial[] trials, int[][] neighbours) {
        List<Trial> lowest = new ArrayList<>();
        for (int v = 0; v < trials.length; v++) {
            double own = trials[v].potentialHeightMm();
            if (Arrays.stream(neighbours[v]).allMatch(n -> own <= trials[n].potentialHeightMm())) {
                lowest.add(trials[v]);
            }
        }
        return lowest;
    }

    private static int[][] neighbours() {
        List<List<Integer>> all = new ArrayList<>();
        for (int v = 0; v < DIRECTIONS.vertexCount(); v++) {
            all.add(new ArrayList<>());
        }
        int[] corners = DIRECTIONS.corners();
        for (int k = 0; k < corners.length; k++) {
            all.get(corners[k]).add(corners[k % 3 == 2 ? k - 2 : k + 1]);
        }
        return all.stream()
                .map(n -> n.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }
}
