package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Copies of triangles, turned either way and begun at any corner, are found with their originals; nothing else is. */
class DuplicatesTest {

    private static List<Integer> list(IntList ints) {
        List<Integer> list = new ArrayList<>();
        for (int i = 0; i < ints.size(); i++) {
            list.add(ints.get(i));
        }
        return list;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 7, 40})
    void copiesOfABall(int copies) {
        TriangleMesh ball = Shapes.ball(3, 4, 5, 60, 9, 12);
        Random random = new Random(copies);
        int own = ball.corners().length;
        int[] corners = Arrays.copyOf(ball.corners(), own + 3 * copies);
        List<Integer> originals = new ArrayList<>();
        List<Integer> sameWay = new ArrayList<>();
        List<Integer> at = new ArrayList<>();
        for (int i = 0; i < copies; i++) {
            int original = random.nextInt(own / 3);
            int begin = random.nextInt(3);
            boolean same = random.nextBoolean();
            for (int k = 0; k < 3; k++) {
                int corner = same ? (begin + k) % 3 : (begin + 3 - k) % 3;
                corners[own + 3 * i + k] = corners[3 * original + corner];
            }
            originals.add(original);
            sameWay.add(same ? 1 : 0);
            at.add(own / 3 + i);
        }
        TriangleMesh mesh = TriangleMesh.owning(ball.xyz(), corners);
        Duplicates found = Duplicates.in(mesh, HalfEdges.of(mesh, new boolean[mesh.triangleCount()]));
        assertEquals(at, list(found.copies()));
        assertEquals(originals, list(found.originals()));
        assertEquals(sameWay, list(found.sameWay()));
        assertEquals(sameWay.stream().mapToInt(i -> i).sum(), found.sameWayCount());
    }

    /** A triangle alone with its own copy, as the two sides of a sheet: no third triangle helps to find it. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aSheetOfTwoSides(boolean same) {
        double[] xyz = {0, 0, 0, 9, 0, 0, 0, 9, 0, 50, 0, 0, 59, 0, 0, 50, 9, 0};
        int[] second = same ? new int[] {1, 2, 0} : new int[] {1, 0, 2};
        TriangleMesh mesh = TriangleMesh.owning(xyz, new int[] {3, 4, 5, 0, 1, 2, second[0], second[1], second[2]});
        Duplicates found = Duplicates.in(mesh, HalfEdges.of(mesh, new boolean[3]));
        assertEquals(List.of(2), list(found.copies()));
        assertEquals(List.of(1), list(found.originals()));
        assertEquals(List.of(same ? 1 : 0), list(found.sameWay()));
    }
}
