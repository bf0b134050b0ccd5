package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class RepairPropertyTest {

    @Property(tries = 40)
    void anyTurnsCopiesAndSmallHolesAreUndone(@ForAll long random, @ForAll @IntRange(min = 0, max = 6) int holes) {
        TriangleMesh ball = Shapes.ball(3, 4, 5, 200, 40, 60);
        double volume = ball.signedVolume();
        Random dice = new Random(random);
        int n = ball.triangleCount();
        int[] corners = Arrays.copyOf(ball.corners(), 3 * (n + 5));
        for (int i = 0; i < 5; i++) {
            System.arraycopy(corners, 3 * dice.nextInt(n), corners, 3 * (n + i), 3);
        }
        TriangleMesh broken = TriangleMesh.owning(ball.xyz().clone(), corners);
        for (int i = 0; i < 20; i++) {
            broken = Shapes.turned(broken, dice.nextInt(n));
        }
        int[] away = dice.ints(holes, 0, n).toArray();
        double[] before = broken.xyz().clone();
        int[] beforeCorners = broken.corners().clone();
        RepairResult result = Repair.of(Shapes.without(broken, away), 50);
        assertTrue(result.after().sound(), result.after().findings()::toString);
        // A lid over two neighbouring triangles may take the other diagonal: that moves the volume by less than one
        // triangle's
        // sagitta, about 0.5 mm, times its area of 330 mm², for each hole.
        assertEquals(volume, result.after().volumeMm3().orElseThrow(), 200 * holes + 1e-6);
        assertArrayEquals(before, broken.xyz(), 0);
        assertArrayEquals(beforeCorners, broken.corners());
        RepairResult again = Repair.of(result.mesh(), 50);
        assertEquals(List.of(), again.changes());
    }
}
