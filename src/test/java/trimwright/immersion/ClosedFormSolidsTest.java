package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Meshes of bodies whose immersed part has a closed form. Flat-faced bodies are exact to rounding, 1e-12 of their size. */
class ClosedFormSolidsTest {

    @ParameterizedTest
    @ValueSource(doubles = {1, 17.5, 30, 59.999999})
    void boxUpright(double depth) {
        Immersion cut = Cuts.below(5 + depth, Solids.box(-200, -50, 5, 200, 50, 65));
        assertEquals(400 * 100 * depth, cut.volumeMm3(), 1e-6);
        Cuts.assertNear(new Vector3D(0, 0, 5 + depth / 2), cut.centroidMm(), 1e-10, "B");
        assertEquals(400 * 100, cut.waterplaneMm2(), 1e-8);
        assertEquals(100 * Math.pow(400, 3) / 12, cut.inertiaAheadMm4(), 1e-3);
        assertEquals(400 * Math.pow(100, 3) / 12, cut.inertiaPortMm4(), 1e-4);
        assertEquals(0, cut.inertiaMixedMm4(), 1e-4);
    }

    /**
     * A wall-sided box heeled by φ about the middle of its waterplane: the volume stays, B moves by BM tan φ across and ½ BM tan² φ up
     * (wall-sided formula, closed form), and the waterplane grows by 1 / cos φ.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-20, 3, 15, 25})
    void boxHeeled(double heelDeg) {
        double phi = Math.toRadians(heelDeg);
        Vector3D up = new Vector3D(0, Math.sin(phi), Math.cos(phi));
        Vector3D axis = new Vector3D(0, 0, 30);
        Immersion cut =
                Cuts.below(WaterPlane.of(up, up.dotProduct(axis)), MeshSolid.of(Solids.box(-200, -50, 0, 200, 50, 60)));
        double bm = 100.0 * 100 / 12 / 30;
        assertEquals(400 * 100 * 30, cut.volumeMm3(), 1e-6);
        Vector3D b = new Vector3D(0, -bm * Math.tan(phi), 15 + 0.5 * bm * Math.pow(Math.tan(phi), 2));
        Cuts.assertNear(b, cut.centroidMm(), 1e-10, "B");
        assertEquals(400 * 100 / Math.cos(phi), cut.waterplaneMm2(), 1e-7);
        Cuts.assertNear(axis, cut.centreOfFlotationMm(), 1e-10, "F");
        assertEquals(400 * Math.pow(100 / Math.cos(phi), 3) / 12, cut.inertiaPortMm4(), 1e-3);
    }

    /** Cube with a corner down, cut half way up its diagonal: half the cube, and a regular hexagon of side a/√2 (closed form). */
    @Test
    void cubeOnItsCorner() {
        double a = 40;
        Vector3D up = new Vector3D(1, 1, 1);
        Immersion cut = Cuts.below(WaterPlane.of(up, a * Math.sqrt(3) / 2), MeshSolid.of(Solids.box(0, 0, 0, a, a, a)));
        assertEquals(a * a * a / 2, cut.volumeMm3(), 1e-8);
        double side = a / Math.sqrt(2);
        assertEquals(1.5 * Math.sqrt(3) * side * side, cut.waterplaneMm2(), 1e-9);
        double inertia = 5 * Math.sqrt(3) / 16 * Math.pow(side, 4);
        assertEquals(inertia, cut.inertiaAheadMm4(), 1e-7 * inertia / 1e2);
        assertEquals(inertia, cut.inertiaPortMm4(), 1e-7 * inertia / 1e2);
    }

    /**
     * Cone, apex down, half angle 30°, immersed to height h: V = π h³ tan² α / 3, B at ¾ h, BM = ¾ h tan² α. Its N-cornered sections
     * hold sin(2π/N)/(2π/N) of the circle's area, and of the second moment that share times (2 + cos(2π/N))/3.
     */
    @ParameterizedTest
    @ValueSource(doubles = {10, 35, 80})
    void cone(double h) {
        int sides = 360;
        double tan = Math.tan(Math.toRadians(30));
        TriangleMesh mesh =
                TestMeshes.stoodUp(TestMeshes.revolved(new double[] {0, 100}, new double[] {0, 100 * tan}, sides));
        double step = 2 * Math.PI / sides;
        double areaShare = Math.sin(step) / step;
        double inertiaShare = areaShare * (2 + Math.cos(step)) / 3;
        Immersion cut = Cuts.below(h, mesh);
        double volume = Math.PI * Math.pow(h, 3) * tan * tan / 3 * areaShare;
        assertEquals(volume, cut.volumeMm3(), 1e-11 * volume);
        assertEquals(0.75 * h, cut.centroidMm().getZ(), 1e-10);
        double waterplane = Math.PI * h * h * tan * tan * areaShare;
        assertEquals(waterplane, cut.waterplaneMm2(), 1e-11 * waterplane);
        double inertia = Math.PI / 4 * Math.pow(h * tan, 4) * inertiaShare;
        assertEquals(inertia, cut.inertiaAheadMm4(), 1e-11 * inertia);
        assertEquals(inertia, cut.inertiaPortMm4(), 1e-11 * inertia);
        double bm = 0.75 * h * tan * tan;
        assertEquals(bm, cut.inertiaPortMm4() / cut.volumeMm3(), bm * step * step);
    }

    /** Wedge, apex down, half angle α: per length V = h² tan α, B at ⅔ h, BM = ⅔ h tan² α (closed form). */
    @ParameterizedTest
    @ValueSource(doubles = {10, 35, 80})
    void wedge(double h) {
        double tan = Math.tan(Math.toRadians(30));
        TriangleMesh mesh = TestMeshes.prism(0, 300, 0, 0, 100 * tan, 100, -100 * tan, 100);
        Immersion cut = Cuts.below(h, mesh);
        assertEquals(300 * h * h * tan, cut.volumeMm3(), 1e-12 * 300 * 100 * 100);
        Cuts.assertNear(new Vector3D(150, 0, 2 * h / 3), cut.centroidMm(), 1e-9, "B");
        assertEquals(2.0 / 3 * h * tan * tan, cut.inertiaPortMm4() / cut.volumeMm3(), 1e-10);
    }

    /**
     * Paraboloid of revolution y² = 2 p z: V = π p h², B at ⅔ h, and BM = p at every draught. Strips of height H/n miss
     * 1/(6 n²)·(H/h)² of the volume, sections of N corners (2π/N)²/6.
     */
    @ParameterizedTest
    @ValueSource(doubles = {25, 50, 100})
    void paraboloid(double h) {
        double p = 15;
        int stations = 200;
        int sides = 512;
        double[] z = new double[stations + 1];
        double[] r = new double[stations + 1];
        for (int i = 0; i <= stations; i++) {
            // Even steps of the radius, so that the round bottom is as fine as the rest.
            r[i] = Math.sqrt(2 * p * 120) * i / stations;
            z[i] = r[i] * r[i] / (2 * p);
        }
        Immersion cut = Cuts.below(h, TestMeshes.stoodUp(TestMeshes.revolved(z, r, sides)));
        double share = Math.pow(2 * Math.PI / sides, 2) + 2.0 / (stations * stations) * (120 / h);
        assertEquals(Math.PI * p * h * h, cut.volumeMm3(), share * Math.PI * p * h * h);
        assertEquals(2 * h / 3, cut.centroidMm().getZ(), share * h);
        assertEquals(p, cut.inertiaPortMm4() / cut.volumeMm3(), 2 * share * p);
        assertEquals(p, cut.inertiaAheadMm4() / cut.volumeMm3(), 2 * share * p);
    }

    /** Ball of radius 1: V 0.654498/2.094395/3.534292 and BM 0.675/0.375/0.125 at depth 0.5/1/1.5 (closed form). */
    @ParameterizedTest
    @CsvSource({"0.5,0.654498,0.675", "1,2.094395,0.375", "1.5,3.534292,0.125"})
    void ball(double depth, double volume, double bm) {
        Immersion exact = Cuts.below(WaterPlane.level(depth - 1), RoundBar.ball(Vector3D.ZERO, 1));
        assertEquals(volume, exact.volumeMm3(), 5e-7);
        assertEquals(bm, exact.inertiaPortMm4() / exact.volumeMm3(), 1e-12);
        assertEquals(0, exact.centroidMm().getZ() + bm, 1e-12);
        // Six divisions: 81920 triangles, sides of 0.018; chords miss about a quarter of that squared, corners as much
        // again.
        Immersion mesh = Cuts.below(depth - 1, TestMeshes.ball(6));
        double share = 0.5 * 0.018 * 0.018;
        assertEquals(volume, mesh.volumeMm3(), 4 * share);
        assertEquals(bm, mesh.inertiaPortMm4() / mesh.volumeMm3(), 4 * share);
        assertEquals(0, mesh.centroidMm().getZ() + mesh.inertiaPortMm4() / mesh.volumeMm3(), 4 * share);
    }

    /** Wetted area of a box and of a wedge (closed form). */
    @Test
    void wettedArea() {
        MeshTree box = MeshTree.of(Solids.box(0, 0, 0, 100, 40, 30));
        assertEquals(100 * 40 + 2 * 12 * 140, box.areaBelowMm2(WaterPlane.level(12)), 1e-9);
        assertEquals(0, box.areaBelowMm2(WaterPlane.level(0)), 0);
        assertEquals(100 * 40 + 2 * 30 * 140, box.areaBelowMm2(WaterPlane.level(30)), 1e-9);
        assertEquals(2 * (100 * 40 + 30 * 140), box.areaBelowMm2(WaterPlane.level(31)), 1e-9);
        Vector3D up = new Vector3D(0, 1, 1);
        double middle = up.normalize().dotProduct(new Vector3D(50, 20, 15));
        assertEquals(100 * 40 + 30 * 140, box.areaBelowMm2(WaterPlane.of(up, middle)), 1e-9);
    }

    /** What is shut in by nothing: below the keel nothing, above the masthead everything. */
    @Test
    void dryAndDrowned() {
        TriangleMesh mesh = TestMeshes.ellipsoid(80, 20, 30, 3);
        MeshSolid body = MeshSolid.of(mesh);
        Immersion dry = Cuts.below(-31, mesh);
        assertEquals(0, dry.volumeMm3(), 0);
        assertEquals(0, dry.waterplaneMm2(), 0);
        Immersion drowned = Cuts.below(31, mesh);
        assertEquals(body.volumeMm3(), drowned.volumeMm3(), 1e-12 * body.volumeMm3());
        Cuts.assertNear(body.centroidMm(), drowned.centroidMm(), 1e-11, "B");
        assertEquals(0, drowned.waterplaneMm2(), 0);
    }

    /** A deck in the water's surface counts as dry: the waterplane is the value just below it, the bottom just below nothing. */
    @Test
    void deckInTheSurface() {
        for (double z : new double[] {0, 0.1, 0.3, 80, -7.7, 1e5 + 0.1}) {
            TriangleMesh box = Solids.box(0, 0, z - 33.3, 100, 40, z);
            for (Vector3D near :
                    new Vector3D[] {Vector3D.ZERO, new Vector3D(0.1, 0.7, 0.9), new Vector3D(1e3, 77.7, 5)}) {
                WaterPlane plane = WaterPlane.level(z);
                Immersion tree = Immersion.below(plane, near).add(MeshSolid.of(box));
                assertEquals(4000, tree.waterplaneMm2(), 1e-8, "deck at " + z);
                Immersion brute = Immersion.below(plane, near);
                BruteCut.addBelow(brute, box);
                assertEquals(4000, brute.waterplaneMm2(), 1e-8, "deck at " + z);
                Immersion bottom = Immersion.below(WaterPlane.level(box.bounds().minZ()), near)
                        .add(MeshSolid.of(box));
                assertEquals(0, bottom.waterplaneMm2(), 0);
                assertEquals(0, bottom.volumeMm3(), 0);
            }
        }
    }
}
