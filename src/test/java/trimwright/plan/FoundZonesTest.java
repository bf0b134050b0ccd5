package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.plan.RaftCurvesTest.KEEL;
import static trimwright.plan.RaftCurvesTest.MIDDLE;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Zones found in box hulls, by hand. */
class FoundZonesTest {

    private static List<String> zones(double lineMm, HullBuild build, Part... others) {
        return zones(lineMm, Solids.box(0, -50, 0, 400, 50, 80), build, others);
    }

    private static List<String> zones(double lineMm, TriangleMesh mesh, HullBuild build, Part... others) {
        List<Part> parts = new java.util.ArrayList<>(List.of(others));
        parts.add(TestParts.hull("hull", mesh, build, 1.2));
        Boat boat = PlanBoats.raft(1, MIDDLE, List.of()).withParts(parts);
        return ZoneFinder.withZones(boat, WaterPlane.level(lineMm)).zones().stream()
                .map(z -> {
                    var b = z.box().bounds();
                    return z.id() + " " + z.use().word() + (z.mirror() ? " twice " : " ") + (int) b.minX() + ".."
                            + (int) b.maxX() + " " + (int) b.minY() + ".." + (int) b.maxY() + " " + (int) b.minZ()
                            + ".." + (int) b.maxZ();
                })
                .toList();
    }

    private static Part cylinder(double z, double diameter) {
        BarShape bar = new BarShape(TestParts.at(150, 4, z), TestParts.at(260, 4, z), diameter, BarShape.Ends.FLAT);
        return TestParts.solid("wtc", Kind.CYLINDER, bar, 1);
    }

    /** 400 × 100 × 80 mm with the line at 40: a quarter at either end, and 15 % of the draught for the keel where no cylinder says more. */
    @Test
    void zonesOfAFloodedHull() {
        HullBuild skin = new HullBuild.Skin(2);
        assertEquals(
                List.of(
                        "keel ballast 0..400 -50..50 0..6",
                        "stern foam 0..100 -50..50 6..40",
                        "bow foam 300..400 -50..50 6..40",
                        "sides foam twice 100..300 0..50 6..40",
                        "above the line foam 0..400 -50..50 40..80"),
                zones(40, skin));
        // Its underside is 10 mm up; half of how far it reaches to a side, 24 mm, over it.
        assertEquals(
                List.of(
                        "keel ballast 0..400 -50..50 0..10",
                        "stern foam 0..150 -50..50 10..40",
                        "bow foam 260..400 -50..50 10..40",
                        "above the cylinder foam 150..260 -12..12 50..80",
                        "sides foam twice 150..260 0..50 10..40",
                        "above the line foam 0..400 -50..50 40..80"),
                zones(40, skin, cylinder(30, 40)));
        // Too low or too high to say how high the keel is.
        assertEquals(
                "keel ballast 0..400 -50..50 0..6",
                zones(40, skin, cylinder(24, 40)).get(0));
        assertEquals(
                "keel ballast 0..400 -50..50 0..6",
                zones(40, skin, cylinder(60, 40)).get(0));
        // Hardly any draught: 4 mm all the same; and no more than there is.
        assertEquals("keel ballast 0..400 -50..50 0..4", zones(20, skin).get(0));
        assertEquals(List.of("above the line foam 0..400 -50..50 3..80"), zones(3, skin));
        // A line over the deck: nothing is above it.
        assertEquals(
                List.of("keel", "stern", "bow", "sides"),
                zones(100, skin).stream()
                        .map(z -> z.substring(0, z.indexOf(' ')))
                        .toList());
    }

    @Test
    void zonesOfAWatertightHull() {
        HullBuild sealed = new HullBuild.Sealed(Optional.of(2.0));
        assertEquals(
                List.of(
                        "keel ballast 0..400 -16..16 0..16",
                        "stern ballast 0..100 -50..50 16..40",
                        "bow ballast 300..400 -50..50 16..40",
                        "sides ballast twice 100..300 0..50 0..40"),
                zones(40, sealed));
        // One flooded hull makes her flooded.
        Part other = TestParts.hull("other", Solids.box(400, -50, 0, 440, 60, 80), new HullBuild.Skin(1), 1);
        assertEquals(
                "keel ballast 0..440 -50..60 0..6", zones(40, sealed, other).get(0));
        assertEquals(
                "sides foam twice 110..330 0..60 6..40",
                zones(40, sealed, other).get(3));
    }

    /** Whose bottom lies 10 mm up and which reaches farther to starboard. */
    @Test
    void zonesOfAHullAside() {
        TriangleMesh mesh = Solids.box(0, -60, 10, 400, 40, 90);
        assertEquals(
                List.of(
                        "keel ballast 0..400 -60..40 10..16",
                        "stern foam 0..100 -60..40 16..50",
                        "bow foam 300..400 -60..40 16..50",
                        "sides foam twice 100..300 0..60 16..50",
                        "above the line foam 0..400 -60..40 50..90"),
                zones(50, mesh, new HullBuild.Skin(2)));
        assertEquals(
                List.of(
                        "keel ballast 0..400 -20..20 10..26",
                        "stern ballast 0..100 -60..40 26..50",
                        "bow ballast 300..400 -60..40 26..50",
                        "sides ballast twice 100..300 0..60 10..50"),
                zones(50, mesh, new HullBuild.Sealed(Optional.of(2.0))));
    }

    @Test
    void whereZonesAreFound() {
        Boat boat = PlanBoats.raft(1, MIDDLE, List.of());
        assertFalse(ZoneFinder.canFind(boat));
        assertEquals(boat, ZoneFinder.withZones(boat, WaterPlane.level(40)));
        Boat own = PlanBoats.raft(
                1,
                MIDDLE,
                List.of(KEEL),
                TestParts.hull("h", Solids.box(0, -9, 0, 99, 9, 9), new HullBuild.Skin(1), 1));
        assertEquals(
                List.of(KEEL), ZoneFinder.withZones(own, WaterPlane.level(4)).zones());
        assertTrue(ZoneFinder.canFind(own));
        assertFalse(ZoneFinder.hasOpenHull(own));
        assertEquals(Set.of(), PlanRequest.looseParts(own));
        assertEquals(Targets.NONE, own.targets());
    }
}
