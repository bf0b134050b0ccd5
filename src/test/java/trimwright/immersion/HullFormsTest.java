package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.HullForms;
import trimwright.mesh.TriangleMesh;

/**
 * Hull forms with published particulars.
 *
 * <p>A cross-section of N corners on a circle holds sin(2π/N)/(2π/N) of its area: (2π/N)²/6 is missing, of a length sin(π/N)/(π/N)
 * (a quarter of that). Lengthwise, chords of n divisions miss less than 1/n². Tolerances are these shares and half of the last
 * printed digit.
 */
class HullFormsTest {

    private static final int SIDES = 1024;
    private static final int STATIONS = 300;
    private static final double SHARE = Math.pow(2 * Math.PI / SIDES, 2) / 6 + 1.0 / (STATIONS * STATIONS);

    private static double tolerance(double value, double share, double halfDigit) {
        return Math.abs(value) * share + halfDigit;
    }

    /**
     * DARPA SUBOFF bare hull: Groves, Huang, Chang, DTRC/SHD-1298-01, 1989, Tables 1 and 2 (length, diameter); wetted surface,
     * volume and centroid computed from its formula to the digits given.
     */
    @Test
    void suboffAllUnder() {
        TriangleMesh mesh = HullForms.suboff(STATIONS, SIDES);
        MeshSolid hull = MeshSolid.of(mesh);
        assertEquals(4356.1, mesh.bounds().sizeX(), 0.05);
        assertEquals(508, mesh.bounds().sizeZ(), 508 * SHARE);
        assertEquals(0.69921e9, hull.volumeMm3(), tolerance(0.69921e9, SHARE, 0.000005e9));
        assertEquals(5.9883e6, hull.tree().areaMm2(), tolerance(5.9883e6, SHARE, 0.00005e6));
        double fromNose = HullForms.SUBOFF_LENGTH_MM - hull.centroidMm().getX();
        assertEquals(2008.61, fromNose, tolerance(2008.61, SHARE, 0.005));
    }

    /** The same, afloat with the water on its axis; values computed from the formula to the digits given. */
    @Test
    void suboffOnItsAxis() {
        MeshSolid hull = MeshSolid.of(HullForms.suboff(STATIONS, SIDES));
        Immersion half = Cuts.below(WaterPlane.level(0), hull);
        assertEquals(0.349605e9, half.volumeMm3(), tolerance(0.349605e9, SHARE, 0.0000005e9));
        assertEquals(-103.11, half.centroidMm().getZ(), tolerance(103.11, SHARE, 0.005));
        assertEquals(1.884272e6, half.waterplaneMm2(), tolerance(1.884272e6, SHARE, 0.0000005e6));
        double lcf = HullForms.SUBOFF_LENGTH_MM - half.centreOfFlotationMm().getX();
        assertEquals(2033.49, lcf, tolerance(2033.49, SHARE, 0.005));
        double bmTransverse = half.inertiaPortMm4() / half.volumeMm3();
        double bmLongitudinal = half.inertiaAheadMm4() / half.volumeMm3();
        assertEquals(103.11, bmTransverse, tolerance(103.11, SHARE, 0.005));
        assertEquals(6484.6, bmLongitudinal, tolerance(6484.6, SHARE, 0.05));
        assertEquals(0.5 * hull.tree().areaMm2(), hull.tree().areaBelowMm2(WaterPlane.level(0)), 1);
    }

    /** Halving every triangle's size divides the error by four. */
    @Test
    void suboffConvergesWithTheSquareOfTheMesh() {
        double[] volume = new double[4];
        for (int i = 0; i < volume.length; i++) {
            volume[i] = MeshSolid.of(HullForms.suboff(12 << i, 32 << i)).volumeMm3();
        }
        for (int i = 2; i < volume.length; i++) {
            assertEquals(4, (volume[i - 1] - volume[i - 2]) / (volume[i] - volume[i - 1]), 0.2);
        }
    }

    /** A body of revolution with its axis level has its transverse metacentre on the axis at every draught (closed form). */
    @Test
    void metacentreOfRevolutionLiesOnTheAxis() {
        MeshSolid hull = MeshSolid.of(HullForms.suboff(50, 256));
        double share = Math.pow(2 * Math.PI / 256, 2);
        for (double height = -200; height <= 200; height += 50) {
            Immersion cut = Cuts.below(WaterPlane.level(height), hull);
            double metacentre = cut.centroidMm().getZ() + cut.inertiaPortMm4() / cut.volumeMm3();
            assertEquals(0, metacentre, 254 * share, "draught to " + height);
        }
    }

    /** Wigley hull (Wigley 1934), closed form. Linear pieces miss (1/n² + 1/(4 m²)) of a product of parabolas. */
    @Test
    void wigley() {
        double length = 1000;
        double beam = 100;
        double draught = 62.5;
        int n = 200;
        int m = 100;
        double share = 3 * (1.0 / (n * n) + 1.0 / (4 * m * m));
        Immersion cut = Cuts.below(0, HullForms.wigley(length, beam, draught, 20, n, m));
        double volume = length * beam * draught * 4 / 9;
        assertEquals(volume, cut.volumeMm3(), volume * share);
        assertEquals(5.0 / 8 * draught - draught, cut.centroidMm().getZ(), draught * share);
        assertEquals(2.0 / 3 * length * beam, cut.waterplaneMm2(), length * beam * share);
        double transverse = 4.0 / 105 * length * Math.pow(beam, 3);
        double longitudinal = beam * Math.pow(length, 3) / 30;
        // The third power of the half breadth triples its error; x² weighs the ends, where the error is no smaller.
        assertEquals(transverse, cut.inertiaPortMm4(), 3 * transverse * share);
        assertEquals(longitudinal, cut.inertiaAheadMm4(), 3 * longitudinal * share);
        double bmTransverse = 3.0 / 35 * beam * beam / draught;
        double bmLongitudinal = 3.0 / 40 * length * length / draught;
        assertEquals(bmTransverse, cut.inertiaPortMm4() / cut.volumeMm3(), 3 * bmTransverse * share);
        assertEquals(bmLongitudinal, cut.inertiaAheadMm4() / cut.volumeMm3(), 3 * bmLongitudinal * share);
        assertEquals(0, cut.inertiaMixedMm4(), transverse * 1e-12);
        assertTrue(share < 3e-4);
    }

    /** Myring body, constants after Prestero, MIT/WHOI 2001; volume and centroid computed from the formula. */
    @Test
    void myring() {
        MeshSolid body = MeshSolid.of(HullForms.myring(STATIONS, SIDES));
        assertEquals(0.031655e9, body.volumeMm3(), tolerance(0.031655e9, SHARE, 0.0000005e9));
        double fromNose = body.tree().bounds().maxX() - body.centroidMm().getX();
        assertEquals(605.84, fromNose, tolerance(605.84, SHARE, 0.005));
        // About 317 N of lift in sea water: three printed digits, 1025 kg/m³ against 1030 are in them.
        assertEquals(317, body.volumeMm3() * 1e-9 * 1025 * 9.80665, 317 * 0.005);
    }
}
