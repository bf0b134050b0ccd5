package trimwright.boat.pool;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A known weight aboard that was moved for a reading.
 *
 * @param massG its mass
 * @param byMm how it was moved
 */
public record WeightMoved(double massG, Vector3D byMm) {}
