package trimwright.boat.pool;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One thing that was read.
 *
 * @param quantity what was read
 * @param value what was read, in the quantity's unit
 * @param error standard deviation of it; positive
 * @param atMm the point of the boat at which it was read; present for heights, and for nothing else
 */
public record Sighting(Quantity quantity, double value, double error, Optional<Vector3D> atMm) {

    /** @throws IllegalArgumentException when the error is not positive, or a point is missing or too many */
    public Sighting {
        if (!(error > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(quantity + " of " + value + " ± " + error);
        }
        if (atMm.isPresent() != quantity.isAtAPoint()) {
            throw new IllegalArgumentException(quantity + (atMm.isPresent() ? " at a point" : " without a point"));
        }
    }
}
