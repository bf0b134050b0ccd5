package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Zone;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;

/** What is told about the ground of a plan, in zones whose room is known by hand. */
class PlanCheckTest {

    private static final Vector3D MIDDLE = TestParts.at(200, 0, 25);
    private static final Part SKIN =
            TestParts.hull("hull", Solids.box(0, -50, -90, 400, 50, 0), new HullBuild.Skin(2), 1.2);

    private static Zone zone(String id, Zone.Use use, BoxShape box) {
        return PlanBoats.zone(id, use, box, false);
    }

    private static List<String> told(Boat boat) {
        List<Room> rooms = Room.of(boat.zones(), boat.pieces(), WaterPlane.level(40));
        return PlanCheck.rooms(boat, rooms).stream().map(PlanCheckTest::short_).toList();
    }

    private static String short_(Finding f) {
        return f.code() + (f.place() instanceof Place.InZone z ? " " + z.zone() : "");
    }

    private static Part block(double fromZ) {
        return TestParts.solid("block", Kind.FITTING, TestParts.box(-1, -20, fromZ, 401, 20, 0), 1);
    }

    /** Room under the raft for both: nothing to tell. A zone of 10 mm of which a block leaves a quarter, less, or nothing. */
    @Test
    void howMuchIsFree() {
        Zone keel = zone("keel", Zone.Use.BALLAST, TestParts.box(100, -10, -10, 300, 10, 0));
        Zone sides = zone("sides", Zone.Use.FOAM, TestParts.box(100, 60, 0, 300, 70, 40));
        assertEquals(List.of(), told(PlanBoats.raft(1600, MIDDLE, List.of(keel, sides))));
        assertEquals(List.of(), told(PlanBoats.raft(1600, MIDDLE, List.of(keel, sides), block(-7.49))));
        Boat hardly = PlanBoats.raft(1600, MIDDLE, List.of(keel, sides), block(-7.5001));
        // Less than 2.5 mm cannot be cut.
        assertEquals(List.of("ZONE_WITHOUT_ROOM keel"), told(hardly));
        Zone high = zone("keel", Zone.Use.BALLAST, TestParts.box(100, -10, -20, 300, 10, 0));
        Boat some = PlanBoats.raft(1600, MIDDLE, List.of(high, sides), block(-15.1));
        assertEquals(List.of("ZONE_HARDLY_FREE keel"), told(some));
        Finding found = PlanCheck.rooms(some, Room.of(some.zones(), some.pieces(), WaterPlane.level(40)))
                .get(0);
        assertEquals(80.0, (double) found.values().get("wholeCm3"), 1e-6);
        assertEquals(4.9 * 4, (double) found.values().get("freeCm3"), 1e-6);
        assertEquals(List.of("block"), found.values().get("takenBy"));
    }

    @Test
    void oneMaterialAlone() {
        Zone keel = zone("keel", Zone.Use.BALLAST, TestParts.box(100, -10, -10, 300, 10, 0));
        Zone sides = zone("sides", Zone.Use.FOAM, TestParts.box(100, 60, 0, 300, 70, 40));
        for (Zone only : List.of(keel, sides)) {
            Boat boat = PlanBoats.raft(1600, MIDDLE, List.of(only));
            List<Finding> found = PlanCheck.rooms(boat, Room.of(boat.zones(), boat.pieces(), WaterPlane.level(40)));
            assertEquals(
                    List.of("PLAN_ONE_MATERIAL"),
                    found.stream().map(PlanCheckTest::short_).toList());
            assertEquals(
                    only == keel ? "foam" : "ballast", found.get(0).values().get("missing"));
        }
    }

    /** Zones that were found are named, and not held against her; twins are not told again. */
    @Test
    void zonesThatWereFound() {
        Boat boat = PlanBoats.raft(1600, MIDDLE, List.of()).withParts(List.of(SKIN));
        List<Zone> found = List.of(
                PlanBoats.zone("sides", Zone.Use.FOAM, TestParts.box(10, 10, -40, 390, 40, -10), true),
                zone("beyond", Zone.Use.BALLAST, TestParts.box(500, -10, -40, 600, 10, -10)));
        List<Finding> told = PlanCheck.rooms(boat, Room.of(found, boat.pieces(), WaterPlane.level(-20)));
        assertEquals(
                List.of("ZONES_FOUND"), told.stream().map(PlanCheckTest::short_).toList());
        assertEquals(List.of("sides", "beyond"), told.get(0).values().get("zones"));
    }

    /** In the dry foam is of no use, and beside an open hull nobody knows what is inside. */
    @Test
    void dryFoamAndOpenHulls() {
        Part sealed = TestParts.hull(
                "hull", Solids.box(0, -50, -90, 400, 50, 0), new HullBuild.Sealed(Optional.of(2.0)), 1.2);
        List<Zone> zones = List.of(
                zone("dry foam", Zone.Use.FOAM, TestParts.box(10, -10, -40, 390, 10, -10)),
                zone("dry lead", Zone.Use.BALLAST, TestParts.box(10, -10, -80, 390, 10, -50)));
        Boat boat = PlanBoats.raft(1600, MIDDLE, zones);
        assertEquals(List.of("ZONE_FOAM_KEPT_DRY dry foam"), told(boat.withParts(List.of(sealed))));
        var mesh = Solids.box(0, -50, -90, 400, 50, 0);
        Part open = TestParts.hull(
                "hull",
                trimwright.mesh.TriangleMesh.owning(
                        mesh.xyz().clone(), java.util.Arrays.copyOf(mesh.corners(), mesh.corners().length - 3)),
                new HullBuild.Skin(2),
                1.2);
        assertEquals(
                List.of("ZONE_TAKEN_AS_GIVEN dry foam", "ZONE_TAKEN_AS_GIVEN dry lead"),
                told(boat.withParts(List.of(open))));
        assertEquals(
                List.of("PLAN_ZONES_OPEN_HULL"),
                PlanCheck.zones(boat.withZones(List.of()).withParts(List.of(open))).stream()
                        .map(PlanCheckTest::short_)
                        .toList());
    }

    private static List<String> before(Boat boat, Wanted wanted) {
        return PlanCheck.before(boat, wanted).stream()
                .map(PlanCheckTest::short_)
                .toList();
    }

    @Test
    void whatAPlanNeeds() {
        Boat raft = PlanBoats.raft(1600, MIDDLE, List.of());
        assertEquals(List.of("PLAN_WITHOUT_ZONES"), before(raft, PlanBoats.WANTED));
        assertEquals(List.of(), before(raft.withParts(List.of(SKIN)), PlanBoats.WANTED));
        Boat unpainted = new Boat("a", raft.water(), Optional.empty(), List.of(SKIN), List.of(), Targets.NONE);
        assertEquals(List.of("PLAN_WITHOUT_LINE"), before(unpainted, PlanBoats.WANTED));
        assertEquals(
                List.of("AIM_OUT_OF_RANGE"),
                before(raft.withParts(List.of(SKIN)), PlanBoats.WANTED.withStability(-1, 0)));
    }

    /** What is loose and yet not lead or foam that can be cut is named. */
    @Test
    void loosePartsThatStayWhole() {
        Part pig = TestParts.solid("pig", Kind.BALLAST, TestParts.box(0, 0, 0, 1, 1, 1), 11);
        Part motor = TestParts.solid("motor", Kind.FITTING, TestParts.box(0, 0, 0, 1, 1, 1), 11);
        Boat boat = PlanBoats.raft(1600, MIDDLE, List.of(), pig.loose(), motor.loose(), motor.alone("fixed"));
        List<Finding> found = PlanCheck.loose(boat);
        assertEquals(
                List.of(new Place.OnPart("motor")),
                found.stream().map(Finding::place).toList());
        assertEquals(List.of("pig", "motor"), List.copyOf(PlanRequest.looseParts(boat)));
    }

    /** A block that stands clear of another is moved into it: told. What was in the other already and is so no more than before is not. */
    @Test
    void whatIsRunInto() {
        Part a = TestParts.solid("a", Kind.CYLINDER, TestParts.box(0, 0, 0, 20, 20, 20), 1);
        Part b = TestParts.solid("b", Kind.CYLINDER, TestParts.box(30, 0, 0, 50, 20, 20), 1);
        Boat apart = PlanBoats.raft(1, MIDDLE, List.of()).withParts(List.of(a, b));
        Boat touching = Shifted.along(apart, "a", 15);
        Boat deeper = Shifted.along(apart, "a", 25);
        assertEquals(List.of(), PlanCheck.moved(apart, Shifted.along(apart, "a", -5)));
        assertEquals(1, PlanCheck.moved(apart, touching).size());
        assertEquals(1, PlanCheck.moved(touching, deeper).size());
        assertEquals(List.of(), PlanCheck.moved(deeper, touching));
        assertEquals(List.of(), PlanCheck.moved(touching, touching));
    }
}
