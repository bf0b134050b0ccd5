package trimwright.boat.pool;

import java.util.List;

/**
 * The readings of one session in the pool.
 *
 * @param name what the builder calls it
 * @param date the day as the builder writes it; empty text where none is given
 * @param readings at least one, except while they are being entered
 */
public record PoolTest(String name, String date, List<Reading> readings) {

    public PoolTest {
        readings = List.copyOf(readings);
    }
}
