package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.mesh.Solids;

/** Walls of full density and a thinned inside, on a box whose parts have closed forms. */
class BlendTest {

    private final MeshSolid solid = MeshSolid.of(Solids.box(0, 0, 0, 100, 40, 30));
    private final MeshSkin walls = new MeshSkin(solid.tree(), 2);

    @Test
    void sharesAddUp() {
        Blend blend = new Blend(walls, 0.75, solid, 0.25);
        double shell = 2 * 2 * (4000 + 3000 + 1200);
        assertEquals(0.75 * shell + 0.25 * 120000, blend.volumeMm3(), 1e-8);
        Cuts.assertNear(new Vector3D(50, 20, 15), blend.centroidMm(), 1e-10, "centroid");
        Immersion cut = Cuts.below(WaterPlane.level(10), blend);
        double below = 2 * (4000 + 280 * 10);
        assertEquals(0.75 * below + 0.25 * 40000, cut.volumeMm3(), 1e-8);
        assertEquals(0.75 * 560 + 0.25 * 4000, cut.waterplaneMm2(), 1e-8);
        double moment = 0.75 * 2 * (4000 * 1 + 280 * 10 * 5) + 0.25 * 40000 * 5;
        assertEquals(moment / cut.volumeMm3(), cut.centroidMm().getZ(), 1e-10);
        assertEquals(32, blend.topMm(Vector3D.PLUS_K), 1e-12);
    }

    @Test
    void nothingOfBoth() {
        Blend blend = new Blend(walls, 0, solid, 0);
        assertEquals(0, blend.volumeMm3(), 0);
        assertEquals(Vector3D.ZERO, blend.centroidMm());
        assertEquals(0, Cuts.below(WaterPlane.level(10), blend).volumeMm3(), 0);
    }
}
