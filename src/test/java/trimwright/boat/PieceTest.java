package trimwright.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.MeshImport;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** What parts weigh and displace, by the rules of the boat file, on boxes and balls (closed forms). */
class PieceTest {

    /** 100 × 40 × 30 mm to port of the centreline: 120 cm³, area 164 cm². */
    private static final TriangleMesh BOX = Solids.box(0, 10, 5, 100, 50, 35);

    private static final Vector3D MIDDLE = new Vector3D(50, 30, 20);
    private static final Vector3D IMAGE = new Vector3D(50, -30, 20);
    private static final double AREA = 16400;

    private static Part hull(TriangleMesh mesh, HullBuild build, Optional<Double> massG, Optional<Double> density) {
        return new Part(
                "hull",
                Kind.HULL,
                Optional.of(new MeshShape("hull.stl", MeshImport.AS_IS, mesh)),
                Optional.of(build),
                massG,
                density,
                Optional.empty(),
                Optional.empty(),
                true,
                0);
    }

    private static Part part(
            Kind kind,
            Optional<Shape> shape,
            Optional<Double> massG,
            Optional<Double> density,
            Optional<Vector3D> centre,
            Optional<String> inside) {
        return new Part("part", kind, shape, Optional.empty(), massG, density, centre, inside, false, 0);
    }

    private static Optional<Double> some(double value) {
        return Optional.of(value);
    }

    private static void assertPieces(Part part, double massG, double displacedMm3, double tolerance) {
        List<Piece> pieces = Piece.of(part);
        assertEquals(2, pieces.size());
        for (int i = 0; i < 2; i++) {
            Piece piece = pieces.get(i);
            assertEquals(i == 1, piece.twin());
            assertEquals(massG, piece.massG(), tolerance * massG);
            assertNear(i == 0 ? MIDDLE : IMAGE, piece.centreMm());
            Displacer displacer = piece.displacer().orElseThrow();
            assertEquals(displacedMm3, displacer.volumeMm3(), tolerance * displacedMm3);
            assertNear(i == 0 ? MIDDLE : IMAGE, displacer.centroidMm());
            assertEquals(AREA, piece.surface().orElseThrow().areaMm2(), 1e-8);
        }
        assertEquals("hull", pieces.get(0).id());
        assertEquals("hull′", pieces.get(1).id());
    }

    private static void assertNear(Vector3D expected, Vector3D found) {
        assertEquals(0, expected.distance(found), 1e-9, () -> expected + " and " + found);
    }

    /** Watertight: displaces all, weighs area × thickness. */
    @Test
    void sealedHull() {
        HullBuild build = new HullBuild.Sealed(some(1.5));
        assertPieces(hull(BOX, build, Optional.empty(), some(1.24)), 16.4 * 1.5 * 1.24, 120000, 1e-12);
        assertPieces(hull(BOX, build, some(77), some(1.24)), 77, 120000, 1e-12);
    }

    /** Weighed and no thickness: the centroid of the surface, here of an open tray, stands for that of the shell. */
    @Test
    void sealedHullThatWasWeighed() {
        Part weighed = hull(tray(), new HullBuild.Sealed(Optional.empty()), some(50), Optional.empty());
        Piece piece = Piece.of(weighed).get(0);
        assertEquals(50, piece.massG(), 0);
        assertEquals(
                (4000 * 5 + 280 * 30 * 20) / (4000 + 280 * 30.0),
                piece.centreMm().getZ(),
                1e-10);
        assertEquals(30, piece.centreMm().getY(), 1e-10);
    }

    private static TriangleMesh tray() {
        boolean[] keep = new boolean[BOX.triangleCount()];
        for (int i = 0; i < keep.length; i++) {
            double z = 0;
            for (int k = 0; k < 3; k++) {
                z += TestMeshes.vertex(BOX, BOX.corners()[3 * i + k]).getZ();
            }
            keep[i] = z < 3 * 35;
        }
        return BOX.only(keep);
    }

    /** Free-flooding shell: displaces and weighs area × thickness, its layer inward of the surface. */
    @Test
    void skinHull() {
        Part skin = hull(BOX, new HullBuild.Skin(1.6), Optional.empty(), some(1.2));
        assertPieces(skin, 16.4 * 1.6 * 1.2, AREA * 1.6, 1e-12);
        Piece tray = Piece.of(hull(tray(), new HullBuild.Skin(2), Optional.empty(), some(1)))
                .get(0);
        assertEquals(12.4 * 2, tray.massG(), 1e-10);
        // The bottom's layer lies between z = 5 and 7.
        assertEquals((4000 * 6 + 280 * 30 * 20) / 12400.0, tray.centreMm().getZ(), 1e-10);
        assertTrue(tray.part().build().isPresent());
    }

    /** A print without infill is solid. */
    @Test
    void printedSolid() {
        HullBuild build = new HullBuild.Printed(Optional.empty());
        assertPieces(hull(BOX, build, Optional.empty(), some(1.24)), 120 * 1.24, 120000, 1e-12);
    }

    /** Walls of area × wall, the rest to its percentage; displaces all, unless it floods. */
    @Test
    void printedWithInfill() {
        double walls = AREA * 1.2;
        double plastic = walls + 0.2 * (120000 - walls);
        HullBuild dry = new HullBuild.Printed(Optional.of(new HullBuild.Infill(1.2, 20, false)));
        assertPieces(hull(BOX, dry, Optional.empty(), some(1.24)), plastic / 1000 * 1.24, 120000, 1e-12);
        HullBuild floods = new HullBuild.Printed(Optional.of(new HullBuild.Infill(1.2, 20, true)));
        assertPieces(hull(BOX, floods, Optional.empty(), some(1.24)), plastic / 1000 * 1.24, plastic, 1e-12);
        Displacer body = Piece.of(hull(BOX, floods, some(1), some(1.24)))
                .get(0)
                .displacer()
                .orElseThrow();
        double below = 1.2 * (4000 + 280 * 10);
        double expected = 0.8 * below + 0.2 * 40000;
        Immersion cut = Immersion.below(WaterPlane.level(15), MIDDLE).add(body);
        assertEquals(expected, cut.volumeMm3(), 1e-7);
    }

    /** Walls take at most the whole volume: 164 cm² × 8 mm would be more than the box. */
    @Test
    void wallsFillItUp() {
        HullBuild thick = new HullBuild.Printed(Optional.of(new HullBuild.Infill(8, 20, true)));
        assertPieces(hull(BOX, thick, Optional.empty(), some(1)), 120, 120000, 1e-12);
    }

    /** Bodies: box, bars, with the mass from the density or as weighed, the centre as given or the centroid. */
    @Test
    void bodies() {
        Shape box = new BoxShape(new Vector3D(0, 10, 5), new Vector3D(100, 50, 35));
        Piece lead = Piece.of(part(
                        Kind.BALLAST,
                        Optional.of(box),
                        Optional.empty(),
                        some(11.34),
                        Optional.empty(),
                        Optional.empty()))
                .get(0);
        assertEquals(120 * 11.34, lead.massG(), 1e-9);
        assertNear(MIDDLE, lead.centreMm());
        assertEquals(120000, lead.displacer().orElseThrow().volumeMm3(), 1e-7);
        assertTrue(lead.surface().isEmpty());
        assertTrue(lead.tankRoom().isEmpty());

        Vector3D from = new Vector3D(0, 0, 0);
        Vector3D to = new Vector3D(300, 0, 0);
        Shape round = new BarShape(from, to, 60, BarShape.Ends.ROUND);
        Piece cylinder = Piece.of(part(
                        Kind.CYLINDER,
                        Optional.of(round),
                        some(900),
                        Optional.empty(),
                        Optional.of(new Vector3D(140, 0, -9)),
                        Optional.empty()))
                .get(0);
        assertEquals(900, cylinder.massG(), 0);
        assertNear(new Vector3D(140, 0, -9), cylinder.centreMm());
        double volume = Math.PI * 900 * 240 + 4.0 / 3 * Math.PI * 27000;
        assertEquals(volume, cylinder.displacer().orElseThrow().volumeMm3(), 1e-8);
        assertNear(new Vector3D(150, 0, 0), cylinder.displacer().orElseThrow().centroidMm());
    }

    /** Without a shape: a ball of its mass over its density about its centre. */
    @Test
    void compactPiece() {
        Vector3D centre = new Vector3D(15, -3, 40);
        Piece propeller = Piece.of(part(
                        Kind.FITTING, Optional.empty(), some(24), some(8.5), Optional.of(centre), Optional.empty()))
                .get(0);
        Displacer ball = propeller.displacer().orElseThrow();
        assertEquals(24, propeller.massG(), 0);
        assertEquals(24 / 8.5 * 1000, ball.volumeMm3(), 1e-9);
        assertNear(centre, ball.centroidMm());
        double radius = Math.cbrt(3 * 24 / 8.5 * 1000 / (4 * Math.PI));
        assertEquals(40 + radius, ball.topMm(Vector3D.PLUS_K), 1e-10);
        assertEquals(15 - radius, ball.bottomMm(Vector3D.PLUS_I), 1e-10);
    }

    /** Inside something watertight it weighs but displaces nothing. */
    @Test
    void insideDisplacesNothing() {
        Shape box = new BoxShape(new Vector3D(0, 10, 5), new Vector3D(100, 50, 35));
        Piece battery = Piece.of(part(
                        Kind.FITTING,
                        Optional.of(box),
                        some(180),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("wtc")))
                .get(0);
        assertEquals(180, battery.massG(), 0);
        assertNear(MIDDLE, battery.centreMm());
        assertTrue(battery.displacer().isEmpty());
    }

    /** A tank weighs nothing itself, displaces its shape unless it stands inside, and its room is its shape. */
    @Test
    void tanks() {
        Shape bar = new BarShape(new Vector3D(0, 0, 0), new Vector3D(100, 0, 0), 50, BarShape.Ends.FLAT);
        double volume = Math.PI * 625 * 100;
        Piece open = Piece.of(part(
                        Kind.TANK,
                        Optional.of(bar),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))
                .get(0);
        assertEquals(0, open.massG(), 0);
        assertEquals(volume, open.displacer().orElseThrow().volumeMm3(), 1e-9);
        assertEquals(volume, open.tankRoom().orElseThrow().volumeMm3(), 1e-9);
        Piece inside = Piece.of(part(
                        Kind.TANK,
                        Optional.of(bar),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("wtc")))
                .get(0);
        assertTrue(inside.displacer().isEmpty());
        assertEquals(volume, inside.tankRoom().orElseThrow().volumeMm3(), 1e-9);
    }

    /** A twin stands at −y; mass is per piece. */
    @Test
    void twins() {
        Shape bar = new BarShape(new Vector3D(0, 20, 3), new Vector3D(100, 30, 3), 8, BarShape.Ends.FLAT);
        Part foam = new Part(
                "foam",
                Kind.FOAM,
                Optional.of(bar),
                Optional.empty(),
                some(5),
                Optional.empty(),
                Optional.of(new Vector3D(40, 26, 2)),
                Optional.empty(),
                true,
                0);
        Boat boat = new Boat("b", Water.FRESH, Optional.empty(), List.of(foam), List.of(), Targets.NONE);
        List<Piece> pieces = boat.pieces();
        assertEquals(2, pieces.size());
        assertEquals(5, pieces.get(1).massG(), 0);
        assertNear(new Vector3D(40, -26, 2), pieces.get(1).centreMm());
        assertNear(
                new Vector3D(50, -25, 3),
                pieces.get(1).displacer().orElseThrow().centroidMm());
    }
}
