package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;

/** Polygons anywhere in space: their area, how far they are from flat, and that their triangles have their area and their turn. */
class PolygonsTest {

    private final Random random = new Random(12);

    /** The corners turned any way and moved off the origin. */
    private double[] placed(double... xyz) {
        Rotation turn = TestMeshes.rotation(random);
        Vector3D by = new Vector3D(70, -40, 25);
        double[] placed = new double[xyz.length];
        for (int i = 0; i < xyz.length; i += 3) {
            Vector3D p =
                    turn.applyTo(new Vector3D(xyz[i], xyz[i + 1], xyz[i + 2])).add(by);
            System.arraycopy(p.toArray(), 0, placed, i, 3);
        }
        return placed;
    }

    private static int[] ring(int size) {
        int[] ring = new int[size];
        for (int i = 0; i < size; i++) {
            ring[i] = i;
        }
        return ring;
    }

    /** Twice the area of a triangle as a vector. */
    private static Vector3D twiceArea(double[] xyz, int a, int b, int c) {
        Vector3D[] p = new Vector3D[3];
        int k = 0;
        for (int v : new int[] {a, b, c}) {
            p[k++] = new Vector3D(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
        }
        return p[1].subtract(p[0]).crossProduct(p[2].subtract(p[0]));
    }

    /** An L of three unit squares, begun at any corner and turned any way: four triangles turned alike, 3 in all. */
    @Test
    void aHollowPolygonAnywhere() {
        double[][] corners = {{2, 1}, {1, 1}, {1, 2}, {0, 2}, {0, 0}, {2, 0}};
        for (int n = 0; n < 60; n++) {
            double[] flat = new double[18];
            for (int i = 0; i < 6; i++) {
                flat[3 * i] = corners[(i + n) % 6][0];
                flat[3 * i + 1] = corners[(i + n) % 6][1];
            }
            double[] xyz = placed(flat);
            double[] area = Polygons.areaVector(xyz, ring(6), 6);
            Vector3D whole = new Vector3D(area);
            assertEquals(6, whole.getNorm(), 1e-12);
            IntList out = new IntList(12);
            assertTrue(Polygons.triangulate(xyz, ring(6), 6, out));
            assertEquals(12, out.size());
            double sum = 0;
            for (int k = 0; k < 12; k += 3) {
                double own = twiceArea(xyz, out.get(k), out.get(k + 1), out.get(k + 2))
                        .dotProduct(whole.normalize());
                assertTrue(own > -1e-12, "a triangle of " + own);
                sum += own;
            }
            assertEquals(6, sum, 1e-12);
        }
    }

    /** A regular polygon of eight with two opposite corners lifted by h keeps its normal by symmetry; the mean rises by a quarter of it. */
    @Test
    void howFarFromFlat() {
        for (double h : new double[] {0.3, -0.3, 0}) {
            double[] xyz = new double[24];
            for (int i = 0; i < 8; i++) {
                xyz[3 * i] = 10 * Math.cos(Math.PI * i / 4);
                xyz[3 * i + 1] = 10 * Math.sin(Math.PI * i / 4);
                xyz[3 * i + 2] = i % 4 == 0 ? h : 0;
            }
            for (int n = 0; n < 10; n++) {
                assertEquals(0.75 * Math.abs(h), Polygons.gap(placed(xyz), ring(8), 8), 1e-12);
            }
        }
        assertEquals(0, Polygons.gap(new double[] {1, 1, 1, 2, 2, 2, 3, 3, 3}, ring(3), 3), 0);
    }

    /** Out and back along a line has no area and hides nothing; two loops that wind round alike, one each way, have none either but cross themselves. */
    @Test
    void ringsWithoutArea() {
        double[] line = {0, 0, 0, 1, 2, 3, 3, 6, 9, 2, 4, 6};
        IntList out = new IntList(6);
        assertTrue(Polygons.triangulate(line, ring(4), 4, out));
        assertEquals(6, out.size());
        double[] bowTie = {0, 0, 1, 4, 4, 1, 4, 0, 1, 0, 4, 1};
        IntList other = new IntList(6);
        assertFalse(Polygons.triangulate(bowTie, ring(4), 4, other));
        assertEquals(6, other.size());
    }

    /** A star of five points turns left at every corner and goes round twice: no polygon. */
    @Test
    void aStarThatGoesRoundTwice() {
        double[] star = new double[15];
        for (int i = 0; i < 5; i++) {
            star[3 * i] = Math.cos(4 * Math.PI * i / 5);
            star[3 * i + 1] = Math.sin(4 * Math.PI * i / 5);
        }
        IntList out = new IntList(9);
        assertFalse(Polygons.triangulate(placed(star), ring(5), 5, out));
        assertEquals(9, out.size());
    }

    /** A ring given the wrong way round has no ear at all: it is told, and still no corner is lost. */
    @Test
    void noEarAtAll() {
        double[] clockwise = {0, 0, 0, 2, 1, 3, 3, 1, 2, 0};
        IntList out = new IntList(9);
        assertFalse(new Ears(clockwise, ring(5), 5).cut(out));
        assertEquals(9, out.size());
    }

    /** All corners on one line: triangles without area, one for each corner but two. */
    @Test
    void onlyStraightCorners() {
        IntList out = new IntList(9);
        assertTrue(new Ears(new double[] {0, 0, 1, 0, 3, 0, 5, 0, 2, 0}, ring(5), 5).cut(out));
        assertEquals(9, out.size());
    }
}
