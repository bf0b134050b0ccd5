package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.TestMeshes;

/**
 * What a cut touches, counted: a guard on speed that no busy machine upsets. A plane meets about √n of n triangles, and with them the
 * neighbours that share their leaves.
 */
class OperationCountTest {

    /** Counts what one cut looks at. */
    private static final class Count extends PlaneWalk {

        private int nodes;
        private int triangles;

        Count(MeshTree tree, WaterPlane plane) {
            super(tree, plane.up(), tree.cutHeight(plane), 0);
        }

        @Override
        void node(int at, double share, double perMm) {
            nodes++;
        }

        @Override
        void leaf(int firstTriangle, int endTriangle) {
            triangles += endTriangle - firstTriangle;
        }

        @Override
        boolean isOnePatch(int at) {
            return false;
        }
    }

    private static Count cut(int rings, double inward) {
        MeshTree tree = MeshTree.of(TestMeshes.bigEllipsoid(500, 100, 100, rings, rings));
        Count count = new Count(tree, WaterPlane.of(new Vector3D(0.02, 0.1, 1), 7));
        count.run(inward);
        return count;
    }

    /** Four times the triangles, twice as many touched; at most 30 √n, for a solid and for a skin of 1.5 mm while triangles are no finer than that. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1.5})
    void aCutTouchesAboutTheRootOfAll(double inward) {
        int before = 0;
        for (int rings = 64; rings <= 256; rings *= 2) {
            Count count = cut(rings, inward);
            double n = 2.0 * rings * rings;
            int triangles = count.triangles;
            int nodes = count.nodes;
            assertTrue(triangles < 30 * Math.sqrt(n), () -> triangles + " triangles touched of " + n);
            assertTrue(nodes < 2 * Math.sqrt(n), () -> nodes + " nodes taken whole of " + n);
            int last = before;
            assertTrue(last == 0 || triangles < 2.4 * last, () -> triangles + " after " + last);
            before = triangles;
        }
    }
}
