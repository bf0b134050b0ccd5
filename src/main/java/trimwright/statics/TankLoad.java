package trimwright.statics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The water in all tanks together, lying level.
 *
 * @param massG its mass
 * @param momentGmm first moment of that mass about the origin
 * @param inertiaAheadMm4 sum of the second moments of its surfaces about their own centroids, ahead: resists nothing, takes off trim stiffness
 * @param inertiaPortMm4 the same to port
 */
public record TankLoad(double massG, Vector3D momentGmm, double inertiaAheadMm4, double inertiaPortMm4) {}
