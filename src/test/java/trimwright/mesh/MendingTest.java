package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
import trimwright.finding.Code;
import trimwright.finding.Finding;

/** Flat triangles and holes of bodies turned any way, against the volume and area of the body that they were. */
class MendingTest {

    private static final TriangleMesh TETRAHEDRON = TriangleMesh.owning(
            new double[] {0, 0, 0, 60, 0, 0, 0, 40, 0, 0, 0, 30}, new int[] {0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3});

    private static TriangleMesh placed(TriangleMesh mesh, Random random) {
        return TestMeshes.moved(TestMeshes.turned(mesh, TestMeshes.rotation(random)), new Vector3D(300, -200, 100));
    }

    /**
     * A tetrahedron with corners on one edge, which the triangle on one side has and that on the other has not: flat triangles close the gap. All are mended, wherever their
     * corners begin, and she is the tetrahedron that she was.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4})
    void flatTrianglesInARow(int between) {
        for (int first = 0; first < 3; first++) {
            List<double[]> points = new ArrayList<>();
            for (int v = 0; v < 4; v++) {
                points.add(new double[] {
                    TETRAHEDRON.xyz()[3 * v],
                    TETRAHEDRON.xyz()[3 * v + 1],
                    TETRAHEDRON.xyz()[3 * v + 2]
                });
            }
            // On the edge from 1 to 2; eighths, so that they lie on it to the last bit.
            for (int i = 1; i <= between; i++) {
                double share = i / 8.0;
                points.add(new double[] {60 * (1 - share), 40 * share, 0});
            }
            List<int[]> triangles =
                    new ArrayList<>(List.of(new int[] {0, 2, 1}, new int[] {0, 1, 3}, new int[] {0, 3, 2}));
            int last = 1;
            for (int i = 0; i < between; i++) {
                triangles.add(new int[] {last, 4 + i, 3});
                // The flat one between the long edge and the corner on it.
                triangles.add(new int[] {last, 2, 4 + i});
                last = 4 + i;
            }
            triangles.add(new int[] {last, 2, 3});
            int[] corners = new int[3 * triangles.size()];
            for (int t = 0; t < triangles.size(); t++) {
                for (int k = 0; k < 3; k++) {
                    corners[3 * t + k] = triangles.get(t)[(k + first) % 3];
                }
            }
            TriangleMesh mesh = TriangleMesh.owning(
                    points.stream().flatMapToDouble(Arrays::stream).toArray(), corners);
            assertEquals(between, FlatTriangles.count(mesh));
            assertTrue(Soundness.of(mesh).closed());
            TriangleMesh mended = FlatTriangles.mended(mesh);
            assertEquals(0, FlatTriangles.count(mended));
            assertTrue(Soundness.of(mended).closed(), Soundness.of(mended).findings()::toString);
            assertEquals(mesh.triangleCount(), mended.triangleCount());
            assertEquals(60 * 40 * 30 / 6.0, mended.signedVolume(), 1e-9);
            assertEquals(TETRAHEDRON.area(), mended.area(), 1e-9);
        }
    }

    /** A face left out of a tetrahedron in any place: the lid has its area, and she its volume again. */
    @Test
    void aHoleAnywhere() {
        Random random = new Random(3);
        for (int t = 0; t < 4; t++) {
            TriangleMesh whole = placed(TETRAHEDRON, random);
            RepairResult result = Repair.of(Shapes.without(whole, t), 100);
            assertTrue(result.after().sound());
            assertEquals(12000, result.after().volumeMm3().orElseThrow(), 1e-6);
            Finding closed = result.changes().get(0);
            assertEquals(Code.REPAIR_HOLE_CLOSED, closed.code());
            double area = whole.area() - Shapes.without(whole, t).area();
            assertEquals(area, (Double) closed.values().get("areaMm2"), 1e-9);
        }
    }

    /** The border of a square hole with two opposite corners raised by h leaves its mean plane by h ∕ 2: closed up to a twentieth of its side, and left beyond. */
    @Test
    void aHoleIsClosedUpToATwentiethFromFlat() {
        for (double side : new double[] {0.5, 30}) {
            assertEquals(1, changes(side, 0.09 * side));
            assertEquals(0, changes(side, 0.11 * side));
        }
    }

    private static int changes(double side, double h) {
        double[] xyz = {0, 0, h, side, 0, 0, side, side, h, 0, side, 0, side / 2, side / 2, -side};
        TriangleMesh cup = TriangleMesh.owning(xyz, new int[] {4, 1, 0, 4, 2, 1, 4, 3, 2, 4, 0, 3});
        return Repair.of(cup, 2 * side).changes().size();
    }

    /**
     * A flat four-cornered body of two triangles above: its hole below has four corners, and the diagonal of its lid must be the other one, for an edge there is already
     * between two of the corners. Otherwise it is left; never are there edges of more than two triangles.
     */
    @Test
    void aLidHasNoEdgeThatIsThereAlready() {
        Random random = new Random(5);
        double[] xyz = {0, 0, 0, 50, 0, 1, 50, 50, 0, 0, 50, 1};
        int closed = 0;
        for (int n = 0; n < 12; n++) {
            // Along the diagonal from 0 to 2, begun anywhere.
            TriangleMesh roof = TestMeshes.shuffled(TriangleMesh.owning(xyz, new int[] {0, 1, 2, 0, 2, 3}), random);
            RepairResult result = Repair.of(roof, 100);
            assertTrue(
                    result.after().findings().stream().noneMatch(f -> f.code() == Code.MESH_EDGE_OF_MANY),
                    result.after().findings().toString());
            if (!result.changes().isEmpty()) {
                closed++;
                assertTrue(result.after().closed());
                // A tetrahedron whose opposite edges are the diagonals, 1 mm apart: 50 · 50 · 2 ∕ 6 · 1.
                assertEquals(50 * 50 / 3.0, Math.abs(result.after().volumeMm3().orElseThrow()), 1e-6);
            }
        }
        assertTrue(closed > 0, "never closed");
    }
}
