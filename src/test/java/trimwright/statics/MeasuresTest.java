package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.TestParts.box;
import static trimwright.TestParts.weighed;
import static trimwright.statics.DiveBoats.boat;
import static trimwright.statics.DiveBoats.skin;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.immersion.Displacer;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.MeshImport;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Draughts, the deck edge and the room within hulls: against points and volumes by hand. */
class MeasuresTest {

    private static Vector3D deckEdge(Part... parts) {
        return DeckEdge.of(Condition.of(boat(parts))).orElseThrow();
    }

    private static Part hull(TriangleMesh mesh, HullBuild build, boolean mirror) {
        return new Part(
                "hull",
                Kind.HULL,
                Optional.of(new MeshShape("hull.stl", MeshImport.AS_IS, mesh)),
                Optional.of(build),
                Optional.empty(),
                Optional.of(1.2),
                Optional.empty(),
                Optional.empty(),
                mirror,
                0);
    }

    /** Of a flared section the corner that reaches furthest up and outboard together, 70 + 50, not the widest (20 + 60) nor the highest (75 + 40); no tower. */
    @Test
    void deckEdgeOfAFlaredHull() {
        TriangleMesh flared =
                TestMeshes.prism(0, 400, -20, 0, 20, 0, 60, 20, 50, 70, 40, 75, -40, 75, -50, 70, -60, 20);
        Vector3D edge =
                deckEdge(skin("hull", flared, 1, 1), skin("tower", Solids.box(180, -20, 75, 220, 20, 110), 1, 1));
        assertEquals(-50, edge.getY(), 0);
        assertEquals(70, edge.getZ(), 0);
    }

    /** On a round hull the shoulder at 45°. */
    @Test
    void deckEdgeOfARoundHull() {
        TriangleMesh round = TestMeshes.revolved(new double[] {0, 300}, new double[] {40, 40}, 48);
        Vector3D edge = deckEdge(skin("hull", round, 1, 1));
        assertEquals(-40 / Math.sqrt(2), edge.getY(), 1e-9);
        assertEquals(40 / Math.sqrt(2), edge.getZ(), 1e-9);
    }

    /** Of two floats, of which the file gives the one to port, the starboard one's outer edge. */
    @Test
    void deckEdgeOfAMirroredHull() {
        Vector3D edge = deckEdge(hull(Solids.box(0, 30, 0, 400, 60, 40), new HullBuild.Skin(1), true));
        assertEquals(-60, edge.getY(), 0);
        assertEquals(40, edge.getZ(), 0);
    }

    @Test
    void noHullNoDeckEdge() {
        Part bare = weighed("box", Kind.CYLINDER, box(0, -50, 0, 400, 50, 60), 100, new Vector3D(200, 0, 20));
        assertTrue(DeckEdge.of(Condition.of(boat(bare))).isEmpty());
    }

    /** Trimmed by tan θ = 0.05 about the middle, 200, at 30 there: 30 ∓ 10 at the ends of the hull, 30 ∓ 7.5 at the ends of a line from 50 to 350; keel at 4. */
    @Test
    void draughtsAtTheEndsAndAtTheLine() {
        double angle = Math.atan(0.05);
        Vector3D up = new Vector3D(Math.sin(angle), 0, Math.cos(angle));
        WaterPlane water = WaterPlane.of(up, up.dotProduct(new Vector3D(200, 0, 30)));
        Boat bare = boat(
                skin("hull", Solids.box(0, -50, 4, 400, 50, 60), 1, 1.2),
                // Hangs lower, but is no hull.
                weighed("fin", Kind.FITTING, box(180, -2, -40, 220, 2, 4), 10, new Vector3D(200, 0, -10)));
        Draughts ends = Draughts.of(bare, water).orElseThrow();
        assertEquals(new Draughts(400, 16, 0, 36, 4), rounded(ends));
        Draughts line = Draughts.of(DiveBoats.painted(bare, 25), water).orElseThrow();
        assertEquals(950, line.bowXMm(), 0);
        assertEquals(50, line.sternXMm(), 0);
        assertEquals(30 - 750 * 0.05 - 4, line.bowMm(), 1e-9);
        assertEquals(30 + 150 * 0.05 - 4, line.sternMm(), 1e-9);
    }

    /** Without a hull everything with a shape counts; on her side beyond 60° she has none. */
    @Test
    void draughtsWithoutAHullAndOnHerSide() {
        Boat bare = boat(weighed("box", Kind.CYLINDER, box(0, -50, 0, 400, 50, 60), 100, new Vector3D(200, 0, 20)));
        assertEquals(
                new Draughts(400, 25, 0, 25, 0),
                rounded(Draughts.of(bare, WaterPlane.level(25)).orElseThrow()));
        assertTrue(Draughts.of(bare, WaterPlane.of(Equilibrium.up(59, 0), 5)).isPresent());
        assertTrue(Draughts.of(bare, WaterPlane.of(Equilibrium.up(61, 0), 5)).isEmpty());
        assertTrue(Draughts.of(boat(TestParts.compact("w", 5, Vector3D.ZERO)), WaterPlane.level(5))
                .isEmpty());
    }

    private static Draughts rounded(Draughts d) {
        return new Draughts(d.bowXMm(), tidy(d.bowMm()), d.sternXMm(), tidy(d.sternMm()), d.keelZMm());
    }

    private static double tidy(double mm) {
        return Math.rint(mm * 1e9) / 1e9;
    }

    /**
     * A printed ball of radius 50 with walls of 5 mm, off the origin: her room is the ball of 45 within, about its middle. Cells of 2 mm across measure the outside by
     * the midpoint rule: off by some 2 mm² ∕ 24 times the ball's curvature, well below 1 %.
     */
    @Test
    void roomInAPrintedBall() {
        TriangleMesh outer = TestMeshes.moved(TestMeshes.ellipsoid(50, 50, 50, 5), new Vector3D(120, 10, 60));
        TriangleMesh inner = TestMeshes.moved(TestMeshes.ellipsoid(45, 45, 45, 5), new Vector3D(120, 10, 60));
        TriangleMesh print = TestMeshes.together(outer, inner.flipped());
        Condition condition = Condition.of(boat(hull(print, new HullBuild.Printed(Optional.empty()), false)));
        Displacer room = HullRoom.of(condition).orElseThrow();
        assertEquals(inner.signedVolume(), room.volumeMm3(), 0.01 * inner.signedVolume());
        assertEquals(120, room.centroidMm().getX(), 0.05);
        assertEquals(10, room.centroidMm().getY(), 0.05);
        assertEquals(60, room.centroidMm().getZ(), 0.05);
    }

    /** A skin hull holds what it encloses less its skin and what stands in it; what stands outside takes nothing; a sealed hull does not flood. */
    @Test
    void roomInASkin() {
        Part shell = skin("hull", Solids.box(0, -50, 0, 400, 50, 60), 1, 1.2);
        Part within = weighed("core", Kind.CYLINDER, box(100, -20, 10, 200, 20, 40), 50, new Vector3D(150, 0, 20));
        Part outside = weighed("pod", Kind.FITTING, box(100, 60, 10, 200, 80, 40), 50, new Vector3D(150, 70, 20));
        double skinMm3 = 2 * (400 * 100 + 400 * 60 + 100 * 60);
        assertEquals(
                2400000 - skinMm3 - 120000,
                HullRoom.of(Condition.of(boat(shell, within, outside)))
                        .orElseThrow()
                        .volumeMm3(),
                1e-3 * skinMm3);
        Part sealed = hull(Solids.box(0, -50, 0, 400, 50, 60), new HullBuild.Sealed(Optional.empty()), false);
        assertTrue(HullRoom.of(Condition.of(boat(sealed, within))).isEmpty());
    }
}
