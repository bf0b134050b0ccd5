package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;

/** Attitudes of floating bodies that have a closed form. */
class FloatingBodiesTest {

    static Boat block(double length, double beam, double depth, double massG, Vector3D centre) {
        Part part = new Part(
                "block",
                Kind.CYLINDER,
                Optional.of(new BoxShape(
                        new Vector3D(-length / 2, -beam / 2, 0), new Vector3D(length / 2, beam / 2, depth))),
                Optional.empty(),
                Optional.of(massG),
                Optional.empty(),
                Optional.of(centre),
                Optional.empty(),
                false,
                0);
        return new Boat("block", Water.ofDensity(1), Optional.empty(), List.of(part), List.of(), Targets.NONE);
    }

    /** Box barge: KB = T/2, BM = B²/12T, BM_L = L²/12T (closed form). */
    @Test
    void boxBarge() {
        Flotation f = Flotation.of(block(400, 100, 80, 400 * 100 * 30 / 1000.0, new Vector3D(0, 0, 20)));
        Equilibrium e = f.settled().orElseThrow();
        assertEquals(30, e.plane().heightMm(), 1e-9);
        assertEquals(15, e.centreOfBuoyancyMm().getZ(), 1e-9);
        assertEquals(15 + 100.0 * 100 / 12 / 30 - 20, e.gmTransverseMm(), 1e-9);
        assertEquals(15 + 400.0 * 400 / 12 / 30 - 20, e.gmLongitudinalMm(), 1e-8);
        assertTrue(e.cuts() <= 8, "cuts " + e.cuts());
    }

    /** Long square bar of specific gravity s (Reid, Am. J. Phys. 31, 565, 1963). */
    @ParameterizedTest
    @CsvSource({"0.15,0", "0.25,26.5651", "0.26,29.6305", "0.4,45", "0.74,29.6305", "0.75,26.5651", "0.85,0"})
    void squareBar(double s, double angleDeg) {
        Flotation f = Flotation.of(block(2000, 100, 100, s * 2000 * 100 * 100 / 1000.0, new Vector3D(0, 0, 50)));
        Equilibrium e = f.settled().orElseThrow();
        assertEquals(angleDeg, Math.abs(e.heelDeg()), 1e-4);
        int expected = angleDeg == 0 || angleDeg == 45 ? 4 : 8;
        assertEquals(expected, f.attitudes().size());
    }
}
