package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of each shell of a mesh, on tetrahedra whose corners are plain numbers. */
class ShellsTest {

    /** Corners (100, 50, 20) and 30 mm along each axis from there: 4500 mm³, three faces of 450 mm² and one of 450 √3. */
    private static final double[] CORNERS = {100, 50, 20, 130, 50, 20, 100, 80, 20, 100, 50, 50};

    private static final int[] FACES = {0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3};

    private static final double SLANT = 450 * Math.sqrt(3);

    private static TriangleMesh mesh(double[] xyz, int... corners) {
        return TriangleMesh.owning(xyz, corners);
    }

    private static double[] with(double... more) {
        double[] xyz = java.util.Arrays.copyOf(CORNERS, CORNERS.length + more.length);
        System.arraycopy(more, 0, xyz, CORNERS.length, more.length);
        return xyz;
    }

    private static int[] and(int... more) {
        int[] corners = java.util.Arrays.copyOf(FACES, FACES.length + more.length);
        System.arraycopy(more, 0, corners, FACES.length, more.length);
        return corners;
    }

    private static List<Shell> shells(TriangleMesh mesh) {
        return Soundness.quick(mesh).numbering().list();
    }

    @Test
    void aTetrahedronFarFromTheOrigin() {
        Shell shell = shells(mesh(CORNERS.clone(), FACES)).get(0);
        assertEquals(1, shell.number());
        assertEquals(4, shell.triangles());
        assertEquals(3 * 450 + SLANT, shell.areaMm2(), 1e-9);
        assertEquals(4500, shell.volumeMm3(), 1e-9);
        assertTrue(shell.closed() && shell.oriented());
        // Of the square faces two have their centroid 10 mm along an axis, one has it at 0; the slanted one at 10.
        double along = (2 * 450 * 10 + SLANT * 10) / (3 * 450 + SLANT);
        assertEquals(0, shell.centroidMm().distance(new Vector3D(100 + along, 50 + along, 20 + along)), 1e-9);
        assertEquals(new Bounds(100, 50, 20, 130, 80, 50), shell.bounds());
    }

    /**
     * A lid without a floor, its rim on three edges of a whole tetrahedron: three triangles meet at each of these, and nothing says which of them belong together.
     * No edge is bare, and yet no piece is closed.
     */
    @Test
    void aLidOnATetrahedronIsNoClosedShell() {
        // Its tip stands before the slanted face.
        TriangleMesh mesh = mesh(with(200, 150, 120), and(1, 2, 4, 2, 3, 4, 3, 1, 4));
        assertFalse(Soundness.quick(mesh).closed());
        List<Shell> pieces = shells(mesh);
        assertEquals(List.of(3, 3, 1), pieces.stream().map(Shell::triangles).toList());
        assertEquals(List.of(4, 0, 3), pieces.stream().map(Shell::firstTriangle).toList());
        for (Shell piece : pieces) {
            assertFalse(piece.closed(), piece.toString());
            assertTrue(piece.oriented(), piece.toString());
        }
    }

    /** Two tetrahedra that share an edge, where four triangles meet: each is a body of its own, whichever way the other is turned. */
    @Test
    void bodiesThatTouchAlongAnEdge() {
        // On the edge from corner 0 to corner 3, away from the first.
        double[] xyz = with(70, 50, 20, 100, 20, 20);
        for (boolean flipped : new boolean[] {false, true}) {
            int[] other = flipped
                    ? new int[] {0, 4, 5, 0, 3, 4, 0, 5, 3, 4, 3, 5}
                    : new int[] {0, 5, 4, 0, 4, 3, 0, 3, 5, 4, 5, 3};
            List<Shell> shells = shells(mesh(xyz.clone(), and(other)));
            assertEquals(2, shells.size());
            for (Shell shell : shells) {
                assertTrue(shell.closed() && shell.oriented(), flipped + ": " + shell);
            }
            assertEquals(4500, shells.get(0).volumeMm3(), 1e-9);
            assertEquals(flipped ? -4500 : 4500, shells.get(1).volumeMm3(), 1e-9);
        }
    }

    /** Pages of a book, on one edge: as many should run along it one way as the other, but for the odd one. */
    @ParameterizedTest
    @CsvSource({
        "++++, false",
        "+++-, false",
        "++--, true",
        "+-+-, true",
        "-++-, true",
        "+++, false",
        "++-, true",
        "-+-, true",
        "+++--, true",
        "++++-, false"
    })
    void pagesOnOneEdge(String ways, boolean oriented) {
        double[] xyz = java.util.Arrays.copyOf(new double[] {0, 0, 0, 0, 0, 9}, 6 + 3 * ways.length());
        int[] corners = new int[3 * ways.length()];
        for (int i = 0; i < ways.length(); i++) {
            xyz[6 + 3 * i] = 10 * Math.cos(i + 0.5);
            xyz[7 + 3 * i] = 10 * Math.sin(i + 0.5);
            boolean up = ways.charAt(i) == '+';
            corners[3 * i] = up ? 0 : 1;
            corners[3 * i + 1] = up ? 1 : 0;
            corners[3 * i + 2] = 2 + i;
        }
        assertEquals(oriented, Soundness.quick(mesh(xyz, corners)).oriented());
    }

    /** A triangle with all corners in a row has no area to have a centroid: the middle of its box stands for it. */
    @Test
    void aShellWithoutAreaLiesInTheMiddleOfItsBox() {
        List<Shell> shells = shells(mesh(with(0, 0, 0, 4, 4, 8, 10, 10, 20), and(4, 5, 6)));
        Shell line = shells.get(1);
        assertEquals(0, line.areaMm2(), 0);
        assertEquals(new Vector3D(5, 5, 10), line.centroidMm());
    }

    @Test
    void thereIsNoShellBeyondTheLast() {
        List<Shell> shells = shells(mesh(CORNERS.clone(), FACES));
        assertThrows(IndexOutOfBoundsException.class, () -> shells.get(1));
        assertThrows(IndexOutOfBoundsException.class, () -> shells.get(-1));
    }
}
