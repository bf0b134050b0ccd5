package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** Upright lines through a mesh of many leaves, where they meet edges and vertices exactly. */
class ColumnTest {

    /** In at the bottom and out at the top, through vertices, through edges and between them. */
    @ParameterizedTest
    @ValueSource(ints = {2, 4, 5})
    void aLineThroughEdgesAndVerticesMeetsABoxTwice(int divisions) {
        TriangleMesh mesh = Solids.box(-64, -32, 0, 64, 32, 16);
        for (int i = 0; i < divisions; i++) {
            mesh = TestMeshes.subdivided(mesh);
        }
        MeshTree tree = MeshTree.of(mesh);
        Column column = new Column();
        for (double x = -60; x <= 60; x += 2) {
            for (double y = -30; y <= 30; y += 1) {
                String where = x + ", " + y;
                column.through(tree, x, y);
                assertEquals(2, column.count(), where);
                assertEquals(0, column.heightMm(0), 1e-12, where);
                assertEquals(16, column.heightMm(1), 1e-12, where);
                assertEquals(1, column.turn(0), where);
                assertEquals(-1, column.turn(1), where);
            }
        }
    }

    /** Lines through bodies that lie in no order above each other, against each triangle's plane and its corners' shares. */
    @Test
    void aLineMeetsWhatEachTriangleMeets() {
        Random random = new Random(11);
        TriangleMesh mesh = TestMeshes.moved(TestMeshes.random(random, 2, 0.4), new Vector3D(300, -200, 50));
        for (double rise : new double[] {700, -300, 200, 450, -900, 1200, -600, 950, 20}) {
            TriangleMesh other = TestMeshes.random(random, 2, 0.4);
            mesh = TestMeshes.together(mesh, TestMeshes.moved(other, new Vector3D(300, -200, rise)));
        }
        MeshTree tree = MeshTree.of(mesh);
        Column column = new Column();
        int most = 0;
        for (int i = 0; i < 300; i++) {
            double x = 300 + 240 * (random.nextDouble() - 0.5);
            double y = -200 + 240 * (random.nextDouble() - 0.5);
            TreeMap<Double, Integer> expected = crossings(mesh, x, y);
            assertSame(column, column.through(tree, x, y));
            assertEquals(expected.size(), column.count());
            int at = 0;
            for (Map.Entry<Double, Integer> crossing : expected.entrySet()) {
                assertEquals(crossing.getKey(), column.heightMm(at), 1e-9);
                assertEquals(crossing.getValue(), column.turn(at));
                at++;
            }
            most = Math.max(most, at);
        }
        assertTrue(most > 16, "more than it has room for at first: " + most);
    }

    private static TreeMap<Double, Integer> crossings(TriangleMesh mesh, double x, double y) {
        TreeMap<Double, Integer> found = new TreeMap<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            Vector3D a = TestMeshes.vertex(mesh, mesh.corners()[3 * t]);
            Vector3D ab = TestMeshes.vertex(mesh, mesh.corners()[3 * t + 1]).subtract(a);
            Vector3D ac = TestMeshes.vertex(mesh, mesh.corners()[3 * t + 2]).subtract(a);
            double twice = ab.getX() * ac.getY() - ab.getY() * ac.getX();
            double s = ((x - a.getX()) * ac.getY() - (y - a.getY()) * ac.getX()) / twice;
            double r = (ab.getX() * (y - a.getY()) - ab.getY() * (x - a.getX())) / twice;
            if (s >= 0 && r >= 0 && s + r <= 1) {
                // A face that looks up is where a line going up leaves.
                found.put(a.getZ() + s * ab.getZ() + r * ac.getZ(), twice > 0 ? -1 : 1);
            }
        }
        return found;
    }
}
