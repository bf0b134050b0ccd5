package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
}
