package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestMeshes;

/** An icosahedron with its 20 faces twice cut into four: 320 faces, by Euler 480 edges and 162 corners; five meet at each of the first twelve, six elsewhere. */
class SphereTest {

    private final Sphere sphere = new Sphere();

    @Test
    void cornersAndNeighboursAreThoseOfThePolyhedron() {
        assertEquals(162, sphere.size());
        int fives = 0;
        int ends = 0;
        for (int i = 0; i < sphere.size(); i++) {
            assertEquals(1, sphere.direction(i).getNorm(), 1e-15);
            Set<Integer> own = new HashSet<>(sphere.neighbours(i));
            assertEquals(own.size(), sphere.neighbours(i).size());
            fives += own.size() == 5 ? 1 : 0;
            ends += own.size();
            for (int j : own) {
                double angle = Vector3D.angle(sphere.direction(i), sphere.direction(j));
                assertTrue(angle > 0.2 && angle < Sphere.SPACING, "neighbours " + angle + " apart");
                assertTrue(sphere.neighbours(j).contains(i));
            }
        }
        assertEquals(12, fives);
        assertEquals(2 * 480, ends);
        for (int i = 0; i < 12; i++) {
            assertEquals(5, sphere.neighbours(i).size());
        }
    }

    /** No direction lies farther from all of them than the corners of a face are from its middle. */
    @Test
    void everyDirectionIsNearOne() {
        Random random = new Random(4);
        for (int n = 0; n < 2000; n++) {
            Vector3D any = TestMeshes.direction(random);
            double nearest = Math.PI;
            for (int i = 0; i < sphere.size(); i++) {
                nearest = Math.min(nearest, Vector3D.angle(any, sphere.direction(i)));
            }
            assertTrue(nearest < Sphere.SPACING / Math.sqrt(3), "a direction " + nearest + " from all");
        }
    }
}
