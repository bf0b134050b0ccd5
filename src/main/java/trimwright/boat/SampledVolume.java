package trimwright.boat;

import java.util.function.DoubleBinaryOperator;
import trimwright.mesh.Bounds;

/**
 * A volume summed over upright columns on a regular grid, along each of which it is exact. Only columns through which the outline
 * runs, seen from above, count more or less than their share; each is wrong by at most its own volume, and the errors
 * go either way. The same shapes always give the same number.
 *
 * @param volumeMm3 the volume
 * @param columnMm3 volume of one column of the sampled region: what is smaller can be missed
 */
record SampledVolume(double volumeMm3, double columnMm3) {

    static final SampledVolume NONE = new SampledVolume(0, 0);

    /** Columns along each side of the region. */
    static final int FINE = 64;

    /** Columns along each side where an open surface is asked, which takes a thousand times as long. */
    static final int COARSE = 12;

    /** The volume that two shapes share. */
    static SampledVolume shared(Shape one, Shape other) {
        Bounds box = one.bounds().intersection(other.bounds());
        if (!(box.sizeX() > 0 && box.sizeY() > 0 && box.sizeZ() > 0)) {
            return NONE;
        }
        return sum(box, FINE, (x, y) -> one.chords(x, y).and(other.chords(x, y)).lengthMm());
    }

    /**
     * Sums over the columns that stand on a box.
     *
     * @param columns along each side of it
     * @param lengthMm what counts of the upright line through a point (x, y)
     */
    static SampledVolume sum(Bounds box, int columns, DoubleBinaryOperator lengthMm) {
        double dx = box.sizeX() / columns;
        double dy = box.sizeY() / columns;
        double length = 0;
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < columns; j++) {
                length += lengthMm.applyAsDouble(box.minX() + (i + 0.5) * dx, box.minY() + (j + 0.5) * dy);
            }
        }
        return new SampledVolume(length * dx * dy, dx * dy * box.sizeZ());
    }

    SampledVolume plus(SampledVolume other) {
        return new SampledVolume(volumeMm3 + other.volumeMm3, Math.max(columnMm3, other.columnMm3));
    }
}
