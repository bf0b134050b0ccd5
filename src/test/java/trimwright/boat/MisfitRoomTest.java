package trimwright.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.finding.Finding;
import trimwright.mesh.Bounds;
import trimwright.mesh.MeshImport;
import trimwright.mesh.Solids;

/** Where parts do not fit. Of boxes what they share, and what lies outside, is known by subtraction. */
class MisfitRoomTest {

    private final List<Part> parts = new ArrayList<>();

    private void add(String id, Kind kind, Shape shape, String inside, boolean mirror) {
        Optional<HullBuild> build = kind == Kind.HULL ? Optional.of(new HullBuild.Skin(1)) : Optional.empty();
        parts.add(new Part(
                id,
                kind,
                Optional.of(shape),
                build,
                Optional.of(10.0),
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(inside),
                mirror,
                0));
    }

    private static Shape box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new BoxShape(new Vector3D(x0, y0, z0), new Vector3D(x1, y1, z1));
    }

    private MisfitRoom only() {
        Boat boat = new Boat("Coot", Water.FRESH, Optional.empty(), parts, List.of(), Targets.NONE);
        List<Finding> findings = FitCheck.of(boat);
        assertEquals(1, findings.size(), findings.toString());
        return MisfitRoom.of(boat, findings).get(0).orElseThrow();
    }

    private static void assertBounds(Bounds expected, MisfitRoom room) {
        Bounds found = room.slices().stream()
                .flatMap(List::stream)
                .reduce(Bounds::union)
                .orElseThrow();
        double[] want = {
            expected.minX(), expected.minY(), expected.minZ(), expected.maxX(), expected.maxY(), expected.maxZ()
        };
        double[] is = {found.minX(), found.minY(), found.minZ(), found.maxX(), found.maxY(), found.maxZ()};
        // A column is one of 48 along each side of what was looked through.
        for (int i = 0; i < want.length; i++) {
            assertEquals(want[i], is[i], 100.0 / 48);
        }
    }

    @Test
    void whatTwoPartsShareIsShown() {
        add("a", Kind.FITTING, box(0, 0, 0, 100, 20, 20), null, false);
        add("b", Kind.FITTING, box(90, 10, 5, 150, 40, 60), null, false);
        MisfitRoom room = only();
        assertBounds(new Bounds(90, 10, 5, 100, 20, 20), room);
        assertEquals(95, room.middleMm().getX(), 0.2);
    }

    @Test
    void whatSticksOutIsShown() {
        add("cylinder", Kind.CYLINDER, box(0, -30, 0, 200, 30, 60), null, false);
        add("battery", Kind.FITTING, box(150, -10, 10, 220, 10, 30), "cylinder", false);
        assertBounds(new Bounds(200, -10, 10, 220, 10, 30), only());
    }

    @Test
    void ofAPairTheOneToPortIsPointedTo() {
        add(
                "hull",
                Kind.HULL,
                new MeshShape("hull.stl", MeshImport.AS_IS, Solids.box(0, -50, 0, 300, 50, 80)),
                null,
                false);
        add("foam", Kind.FOAM, box(100, 40, 20, 140, 60, 40), null, true);
        MisfitRoom room = only();
        assertBounds(new Bounds(100, -60, 20, 140, 60, 40), room);
        assertTrue(room.middleMm().getY() > 50, room.middleMm().toString());
        assertTrue(
                room.slices().stream().flatMap(List::stream).noneMatch(b -> b.minY() < 0 && b.maxY() > 0),
                "nothing between the two is marked");
    }

    @Test
    void aCentreThatCannotBeIsAPoint() {
        parts.add(TestParts.weighed("bell", Kind.FITTING, box(0, 0, 0, 10, 10, 10), 5.0, new Vector3D(50, 1, 2)));
        MisfitRoom room = only();
        assertTrue(room.slices().isEmpty());
        assertEquals(new Vector3D(50, 1, 2), room.middleMm());
    }
}
