package trimwright.desktop.tank3d;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Point3D;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** What is drawn and pointed at, checked on bodies whose volumes and sides are known. */
class DrawnTest {

    private static final TriangleMesh BOX = Solids.box(0, 0, 0, 40, 20, 10);

    @Test
    void theWaterInALevelBoxIsABox() {
        TriangleMesh water = WaterBody.below(BOX, WaterPlane.level(4));
        assertEquals(40 * 20 * 4, water.signedVolume(), 1e-6);
        assertEquals(4, water.bounds().maxZ(), 1e-9);
    }

    /** A plane through the middle of a box halves it, however it is tilted. */
    @Test
    void theWaterInATiltedBoxIsHalfOfIt() {
        Vector3D up = new Vector3D(0.1, 0.15, 1).normalize();
        WaterPlane plane = WaterPlane.of(up, up.dotProduct(new Vector3D(20, 10, 5)));
        // Strips end square: each is off by less than a strip.
        assertEquals(40 * 20 * 5, WaterBody.below(BOX, plane).signedVolume(), 40 * 20 * 5 * 0.01);
    }

    /** A section of two pieces: its surface has no skin between them. */
    @Test
    void theWaterInATankOfTwoLegsHasTwoSurfaces() {
        TriangleMesh legs = TriangleMesh.joined(List.of(BOX, Solids.box(0, 60, 0, 40, 80, 10)));
        assertEquals(2 * 40 * 20 * 4, WaterBody.below(legs, WaterPlane.level(4)).signedVolume(), 1e-6);
    }

    @Test
    void theNearSideIsPointedAt() {
        Ray ray = new Ray(new Vector3D(20, -100, 5), new Vector3D(0, 1, 0), 1);
        assertEquals(0, ray.firstOn(List.of(BOX)).orElseThrow().distance(new Vector3D(20, 0, 5)), 1e-9);
        Ray behind = new Ray(new Vector3D(20, -100, 5), new Vector3D(0, 1, 0), 110);
        assertEquals(
                20,
                behind.firstOn(List.of(BOX)).orElseThrow().getY(),
                1e-9,
                "where the near side is cut away, the far one is meant");
        assertEquals(
                Optional.empty(), new Ray(new Vector3D(50, -100, 5), new Vector3D(0, 1, 0), 1).firstOn(List.of(BOX)));
    }

    @Test
    void fromTheSceneBackToTheBoatIsTheWayUndone() {
        Stance stance = new Stance(new Vector3D(0.2, -0.3, 0.9).normalize(), 17);
        Point3D there = stance.scene(new Vector3D(3, -5, 7));
        Point3D back = stance.toBoat().transform(there);
        assertTrue(back.distance(new Point3D(3, -5, 7)) < 1e-9, back.toString());
    }

    @Test
    void aCoarserMeshKeepsToItsMeasure() {
        TriangleMesh fine = trimwright.report.raster.Bodies.ball(new Vector3D(0, 0, 0), 50);
        javafx.scene.shape.TriangleMesh shown = Surfaces.of(fine, Vector3D.ZERO, 40, 500);
        int triangles = shown.getFaces().size() / shown.getFaceElementSize();
        assertTrue(triangles <= 500 && triangles > 100, triangles + " of " + fine.triangleCount());
    }
}
