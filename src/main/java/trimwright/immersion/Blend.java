package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Two bodies in one place, each thinned to a share: what a print with infill displaces when its cells flood.
 *
 * @param first one body
 * @param firstShare what share of it counts, 0…1
 * @param second the other
 * @param secondShare what share of it counts, 0…1
 */
public record Blend(Displacer first, double firstShare, Displacer second, double secondShare) implements Displacer {

    @Override
    public void addBelow(Immersion sum) {
        sum.addScaled(sum.emptied().add(first), firstShare);
        sum.addScaled(sum.emptied().add(second), secondShare);
    }

    @Override
    public double volumeMm3() {
        return firstShare * first.volumeMm3() + secondShare * second.volumeMm3();
    }

    @Override
    public Vector3D centroidMm() {
        double volume = volumeMm3();
        if (volume == 0) {
            return Vector3D.ZERO;
        }
        return new Vector3D(
                firstShare * first.volumeMm3() / volume,
                first.centroidMm(),
                secondShare * second.volumeMm3() / volume,
                second.centroidMm());
    }

    @Override
    public double topMm(Vector3D up) {
        return Math.max(first.topMm(up), second.topMm(up));
    }

    @Override
    public Vector3D highestMm(Vector3D up) {
        Vector3D one = first.highestMm(up);
        Vector3D other = second.highestMm(up);
        return up.dotProduct(one) >= up.dotProduct(other) ? one : other;
    }

    /** Both bodies end at the same outer surface, so that one of them tells. */
    @Override
    public double outlineMm(WaterPlane plane) {
        return second.outlineMm(plane);
    }
}
