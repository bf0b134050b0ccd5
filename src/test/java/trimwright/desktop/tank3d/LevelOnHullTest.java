package trimwright.desktop.tank3d;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;

/** A waterline taken by its ends and sides. */
class LevelOnHullTest {

    private static final Bounds HULL = new Bounds(100, -40, 0, 1100, 60, 200);

    private static LevelOnHull level(double heightMm) {
        return LevelOnHull.of(WaterPlane.level(heightMm), HULL).orElseThrow();
    }

    private static double above(WaterPlane plane, double x, double y, double z) {
        return plane.up().dotProduct(new Vector3D(x, y, z)) - plane.heightMm();
    }

    @Test
    void liftedAtTheBowTheSternStays() {
        WaterPlane plane = level(80).tiltedAtEnd(1, 30).plane();
        assertEquals(0, above(plane, 1100, 10, 110), 1e-9);
        assertEquals(0, above(plane, 100, 10, 80), 1e-9);
        assertTrue(plane.up().getX() < 0, "the water higher at the bow is the bow lower in the water");
    }

    @Test
    void liftedAtTheSternTheBowStays() {
        WaterPlane plane = level(80).tiltedAtEnd(-1, 30).plane();
        assertEquals(0, above(plane, 100, 10, 110), 1e-9);
        assertEquals(0, above(plane, 1100, 10, 80), 1e-9);
    }

    @Test
    void liftedAtASideHerMiddleStays() {
        WaterPlane plane = level(80).tiltedAtSide(1, 10).plane();
        assertEquals(0, above(plane, 600, 10, 80), 1e-9);
        assertEquals(0, above(plane, 600, 60, 90), 1e-9);
    }

    @Test
    void aPlaneComesBackAsItWas() {
        WaterPlane plane = WaterPlane.of(new Vector3D(0.1, -0.2, 1).normalize(), 120);
        WaterPlane back = LevelOnHull.of(plane, HULL).orElseThrow().plane();
        assertEquals(0, back.up().distance(plane.up()), 1e-12);
        assertEquals(plane.heightMm(), back.heightMm(), 1e-9);
    }

    @Test
    void itIsNotLiftedOffTheHull() {
        assertEquals(200, level(80).lifted(1e6).heightMm(), 0);
        assertEquals(0, level(80).lifted(-1e6).heightMm(), 0);
    }

    @Test
    void onHerSideThereIsNothingToTakeHoldOf() {
        assertEquals(Optional.empty(), LevelOnHull.of(WaterPlane.of(Vector3D.PLUS_J, 0), HULL));
    }
}
