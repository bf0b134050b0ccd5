package trimwright.statics;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/** The bottom of the energy on the straightest way between two directions, by a cubic through energies and slopes. */
final class Trough {

    private Trough() {}

    /** The direction, at height 0, if both slope down to each other. */
    static Optional<WaterPlane> between(Condition condition, Trial here, Trial there) {
        Vector3D from = here.plane().up();
        Vector3D to = there.plane().up();
        double angle = Vector3D.angle(from, to);
        double slope = angle * slope(here, to);
        double slopeAtEnd = -angle * slope(there, from);
        if (!(slope < 0 && slopeAtEnd > 0)) {
            return Optional.empty();
        }
        double rise = there.energyAfloat(condition) - here.energyAfloat(condition);
        double share = bottom(rise, slope, slopeAtEnd);
        Vector3D up = new Vector3D(Math.sin((1 - share) * angle), from, Math.sin(share * angle), to);
        return Optional.of(WaterPlane.of(up.normalize(), 0));
    }

    /** How the energy rises as she turns toward another direction, g·mm per rad. */
    private static double slope(Trial trial, Vector3D toward) {
        double ahead = toward.dotProduct(trial.plane().ahead());
        double port = toward.dotProduct(trial.plane().port());
        return (trial.reducedSlopeAhead() * ahead + trial.reducedSlopePort() * port) / Math.hypot(ahead, port);
    }

    /**
     * Where in 0…1 a cubic is lowest that rises in all by so much, falls at the beginning and rises at the end.
     *
     * @param slope at 0, negative
     * @param slopeAtEnd at 1, positive
     */
    static double bottom(double rise, double slope, double slopeAtEnd) {
        double cubic = slope + slopeAtEnd - 2 * rise;
        double square = 3 * rise - 2 * slope - slopeAtEnd;
        // The slope is 3 cubic t² + 2 square t + slope. It changes its sign once; only rounding can put the root's
        // discriminant below 0.
        double root = Math.sqrt(Math.max(0, square * square - 3 * cubic * slope));
        return square > 0 ? -slope / (square + root) : (root - square) / (3 * cubic);
    }
}
