package trimwright.boat.pool;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A weight that is known, laid on the boat or moved about on her for a reading.
 *
 * @param massG its mass; negative where something was taken away
 * @param centreMm where it was laid
 * @param densityGPerCm3 its density, where it lies in the water and its own lift counts; empty where it lies dry
 */
public record KnownWeight(double massG, Vector3D centreMm, Optional<Double> densityGPerCm3) {}
