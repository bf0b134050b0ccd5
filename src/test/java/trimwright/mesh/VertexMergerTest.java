package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Equal points get equal numbers, in the order in which they first come: against a hash map of the Java library. */
class VertexMergerTest {

    /** However few were expected. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 20, 3000, 20_000})
    void pointsAreNumberedAsTheyCome(int expected) {
        Random random = new Random(9);
        VertexMerger merger = new VertexMerger(expected);
        Map<List<Double>, Integer> numbers = new HashMap<>();
        List<Double> coordinates = new ArrayList<>();
        for (int i = 0; i < 20_000; i++) {
            // A grid with its mirror images, points that differ in one coordinate alone, and zeros of both signs.
            double x = (20 - random.nextInt(41)) * (random.nextBoolean() ? 0.5 : -0.5);
            double y = (20 - random.nextInt(41)) * (random.nextBoolean() ? 1e-3 : -1e-3);
            double z = random.nextInt(9) == 0 ? -0.0 : 1e5 * (random.nextInt(5) - 2);
            List<Double> point = List.of(x + 0.0, y + 0.0, z + 0.0);
            Integer known = numbers.putIfAbsent(point, numbers.size());
            if (known == null) {
                coordinates.addAll(point);
            }
            assertEquals(known == null ? numbers.size() - 1 : known, merger.add(x, y, z));
        }
        assertArrayEquals(coordinates.stream().mapToDouble(Double::doubleValue).toArray(), merger.toArray());
    }
}
