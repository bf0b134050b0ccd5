package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.TestParts.box;
import static trimwright.TestParts.tank;
import static trimwright.TestParts.weighed;
import static trimwright.statics.DiveBoats.boat;
import static trimwright.statics.DiveBoats.skin;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.finding.Code;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.MeshImport;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

class SurfacingRunTest {

    private static final double L = 400;
    private static final double B = 100;
    private static final double H = 90;
    private static final double WALL = 0.5;
    private static final double TOWER_G = 10;

    /**
     * A free-flooding box around a watertight one of 300 × 60 × 60 with its keel at 10 and a tank of 160 × 50 × 40; on its roof a tower of
     * 60 × 20 × 30, which alone stands out when she is dived.
     */
    private static Boat boxInBox(double massG, double gMm) {
        return boat(
                skin("hull", Solids.box(0, -B / 2, 0, L, B / 2, H), WALL, 1.0),
                weighed("cylinder", Kind.CYLINDER, box(50, -30, 10, 350, 30, 70), massG, new Vector3D(L / 2, 0, gMm)),
                tank("tank", box(120, -25, 20, 280, 25, 60), Optional.of("cylinder")),
                weighed(
                        "tower",
                        Kind.FITTING,
                        box(170, -10, H, 230, 10, H + 30),
                        TOWER_G,
                        new Vector3D(L / 2, 0, H + 15)));
    }

    private static double towerBelow(double h) {
        return 60 * 20 * Math.max(0, Math.min(h, H + 30) - H);
    }

    /** Volume of the shell up to a height by its prisms (first order): bottom, sides and ends, roof. */
    private static double shellBelow(double h) {
        double bottom = L * B * Math.min(h, WALL);
        double sides = 2 * (L + B) * WALL * Math.min(h, H);
        double roof = L * B * Math.max(0, Math.min(h, H) - (H - WALL));
        return bottom + sides + roof;
    }

    private static final double ROOM = L * B * H - shellBelow(H) - cylinderBelow(H);

    private static double cylinderBelow(double h) {
        return 300 * 60 * Math.max(0, Math.min(h, 70) - 10);
    }

    private static double roomBelow(double h) {
        // Below the roof; a hair of it, at the edges, the prisms of shell and roof count twice.
        return Math.min(L * B * Math.min(h, H) - shellBelow(h) - cylinderBelow(h), ROOM);
    }

    private static double heightOf(double volume, java.util.function.DoubleUnaryOperator below) {
        double low = 0;
        double high = H + 30;
        for (int i = 0; i < 200; i++) {
            double middle = 0.5 * (low + high);
            if (below.applyAsDouble(middle) < volume) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /**
     * Weights and volumes of the boxes by hand: the levels outside and inside follow from what is carried, and GM from KB, KG, the waterplane of the
     * whole box and the free surface inside (i/V, closed forms).
     */
    @Test
    void levelsAndGmOfABoxInABox() {
        double rho = 0.001;
        double mass = 760;
        double gMm = 12;
        double draining = 0.2;
        SurfacingRun run =
                SurfacingRun.of(Condition.of(boxInBox(mass, gMm)), 10, draining).orElseThrow();
        double tankMm3 = 160 * 50 * 40;
        double shellG = rho * shellBelow(H);
        double dived = heightOf(
                (mass + TOWER_G + shellG) / rho + tankMm3, h -> shellBelow(h) + cylinderBelow(h) + towerBelow(h));
        assertEquals(11, run.course().steps().size());
        int compared = 0;
        for (DiveStep step : run.course().steps()) {
            double fill = step.fill();
            double weight = mass + TOWER_G + shellG + rho * fill * tankMm3;
            double inside0 = roomBelow(dived);
            double outside = heightOf(
                    weight / rho + draining * inside0,
                    h -> shellBelow(h) + cylinderBelow(h) + towerBelow(h) + draining * roomBelow(h));
            double water = roomBelow(outside) + draining * (inside0 - roomBelow(outside));
            double inside = heightOf(water, SurfacingRunTest::roomBelow);
            Equilibrium rest = step.settled().orElseThrow();
            if (outside > H - 1) {
                continue;
            }
            double v = L * B * outside;
            boolean round = inside < 70;
            double across = roomSurface(L, B) - (round ? 300 * Math.pow(60, 3) / 12 : 0);
            double along = roomSurface(B, L) - (round ? 60 * Math.pow(300, 3) / 12 : 0);
            boolean free = fill > 0 && fill < 1;
            double tankAcross = free ? 160 * Math.pow(50, 3) / 12 : 0;
            double tankAlong = free ? 50 * Math.pow(160, 3) / 12 : 0;
            double whole = weight + rho * water;
            double shellKg = H / 2;
            double kg = (mass * gMm
                            + TOWER_G * (H + 15)
                            + shellG * shellKg
                            + rho * fill * tankMm3 * (20 + 20 * fill)
                            + rho * moment(inside))
                    / whole;
            double bg = outside / 2 - kg;
            double gmLong = bg + (B * Math.pow(L, 3) / 12 - along - tankAlong) / v;
            if (gmLong < 0) {
                // She lies over, the end or a side, which the figures by hand do not follow.
                assertTrue(Math.hypot(rest.trimDeg(), rest.heelDeg()) > 0.01, "at fill " + fill);
                continue;
            }
            assertEquals(0, rest.trimDeg(), 1e-6);
            double held = rho * (water - roomBelow(outside));
            double gm = bg + (L * Math.pow(B, 3) / 12 - across - tankAcross) / v;
            assertEquals(gm * whole / (weight + held), step.uprightGmMm().orElseThrow(), 1e-4, "at fill " + fill);
            if (gm > 0) {
                assertEquals(outside, rest.plane().heightMm(), 1e-6);
                assertEquals(held, step.heldWaterG(), 1e-4);
            } else {
                assertTrue(Math.abs(rest.heelDeg()) > 0.01, "at fill " + fill);
            }
            compared++;
        }
        assertTrue(compared >= 6, "states compared: " + compared);
        assertEquals(0, run.course().steps().get(0).heldWaterG(), 1e-6);
        assertTrue(run.mostHeldG() > 100);
    }

    /** Second moment of the box's section less that of its four walls, each with its middle half a wall inside the edge. */
    private static double roomSurface(double length, double breadth) {
        double y = breadth / 2 - WALL / 2;
        double sides = 2 * (length * WALL * y * y + length * Math.pow(WALL, 3) / 12);
        double ends = 2 * WALL * Math.pow(breadth, 3) / 12;
        return length * Math.pow(breadth, 3) / 12 - sides - ends;
    }

    /** First moment of the room below a height about the keel. */
    private static double moment(double h) {
        double whole = L * B * h * h / 2;
        double bottom = L * B * WALL * WALL / 2;
        double sides = 2 * (L + B) * WALL * h * h / 2;
        double top = Math.min(h, 70);
        double cylinder = top > 10 ? 300 * 60 * (top * top - 100) / 2 : 0;
        return whole - bottom - sides - cylinder;
    }

    /** With everything run out she comes up as she went down; at 760 g a step would end just at the cylinder's top, where GM jumps. */
    @Test
    void nothingHeldIsTheDiveBackwards() {
        Condition condition = Condition.of(boxInBox(762, 12));
        List<DiveStep> down = DiveRun.of(condition, 8).course().steps();
        List<DiveStep> up =
                SurfacingRun.of(condition, 8, 0).orElseThrow().course().steps();
        for (int i = 0; i < down.size(); i++) {
            DiveStep a = down.get(i);
            DiveStep b = up.get(up.size() - 1 - i);
            assertEquals(a.fill(), b.fill(), 1e-12);
            assertEquals(0, b.heldWaterG(), 1e-6);
            assertEquals(
                    a.settled().orElseThrow().plane().heightMm(),
                    b.settled().orElseThrow().plane().heightMm(),
                    1e-6);
            assertEquals(a.uprightGmMm().orElseThrow(), b.uprightGmMm().orElseThrow(), 1e-5);
        }
    }

    @Test
    void anOpenHullIsRefusedAndABoatWithoutHullHasNothingToRunOut() {
        TriangleMesh closed = Solids.box(0, -50, 0, 400, 50, 90);
        boolean[] keep = new boolean[12];
        java.util.Arrays.fill(keep, 2, 12, true);
        Boat open = boat(
                skin("hull", closed.only(keep), WALL, 1.0),
                weighed("cylinder", Kind.CYLINDER, box(50, -30, 10, 350, 30, 70), 700, new Vector3D(200, 0, 30)),
                tank("tank", box(120, -25, 20, 280, 25, 60), Optional.of("cylinder")));
        UnusableInputException refused =
                assertThrows(UnusableInputException.class, () -> SurfacingRun.of(Condition.of(open), 5, 0.5));
        assertEquals(Code.DRAINING_HULL_OPEN, refused.findings().get(0).code());
        Boat bare = boat(
                weighed("cylinder", Kind.CYLINDER, box(50, -30, 10, 350, 30, 70), 700, new Vector3D(200, 0, 30)),
                tank("tank", box(120, -25, 20, 280, 25, 60), Optional.of("cylinder")));
        assertTrue(SurfacingRun.of(Condition.of(bare), 5, 0.5).isEmpty());
    }

    /** Two halves that are open each, and closed together, enclose what the whole does. */
    @Test
    void twoHalvesEncloseTogether() {
        TriangleMesh closed = Solids.box(0, -50, 0, 400, 50, 90);
        boolean[] lower = new boolean[12];
        java.util.Arrays.fill(lower, 0, 6, true);
        boolean[] upper = new boolean[12];
        java.util.Arrays.fill(upper, 6, 12, true);
        Boat halves = boat(
                skin("one", closed.only(lower), WALL, 1.0),
                skin("other", closed.only(upper), WALL, 1.0),
                weighed("cylinder", Kind.CYLINDER, box(50, -30, 10, 350, 30, 70), 760, new Vector3D(L / 2, 0, 12)),
                tank("tank", box(120, -25, 20, 280, 25, 60), Optional.of("cylinder")));
        double whole =
                HullRoom.of(Condition.of(boxInBox(760, 12))).orElseThrow().volumeMm3();
        assertEquals(roomBelow(H), whole, 1e-6 * whole);
        assertEquals(whole, HullRoom.of(Condition.of(halves)).orElseThrow().volumeMm3(), 1e-9 * whole);
    }

    /** A print of 40 × 40 × 40 with walls of 4: what it encloses is 32³, less the cylinder of 10 × 10 × 10 in it (by hand). */
    @Test
    void aPrintEnclosesWhatLiesBetweenItsWalls() {
        TriangleMesh walls = TriangleMesh.joined(List.of(
                Solids.box(0, -20, 0, 40, 20, 40),
                Solids.box(4, -16, 4, 36, 16, 36).flipped()));
        Part print = new Part(
                "print",
                Kind.HULL,
                Optional.of(new MeshShape("print.stl", MeshImport.AS_IS, walls)),
                Optional.of(new HullBuild.Printed(Optional.empty())),
                Optional.empty(),
                Optional.of(1.2),
                Optional.empty(),
                Optional.empty(),
                false,
                0);
        Boat boat =
                boat(print, weighed("cylinder", Kind.CYLINDER, box(15, -5, 15, 25, 5, 25), 5, new Vector3D(20, 0, 20)));
        assertEquals(
                Math.pow(32, 3) - 1000,
                HullRoom.of(Condition.of(boat)).orElseThrow().volumeMm3(),
                1e-6);
    }
}
