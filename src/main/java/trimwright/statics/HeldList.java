package trimwright.statics;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;

/** A boat held at a list while height and trim are free: n(φ, θ) of docs/statics.md, section 3. */
final class HeldList {

    /** Trim beyond which she stands on end and a list has no meaning, rad; a boat that rests steeply comes near it long before. */
    private static final double ON_END = Math.toRadians(89.9);
    /** Share of weight, and of weight times length, that a held attitude may leave; of the length, by which a trim may be unstable. */
    static final double REST = 1e-9;

    private HeldList() {}

    /** The up direction at a list and trim, rad. */
    static Vector3D direction(double heel, double trim) {
        return new Vector3D(Math.sin(trim), Math.cos(trim) * Math.sin(heel), Math.cos(trim) * Math.cos(heel));
    }

    /**
     * Holds her at a list.
     *
     * @param heel list, rad
     * @param near an attitude near by: its trim and height are where the search starts
     * @return the boat at rest in height and trim; empty when no trim near by is stable
     */
    static Optional<Trial> held(Condition condition, double heel, Trial near) {
        return held(condition, heel, start(heel, near), near);
    }

    /** The plane from which a search at a list starts: the trim and the place of a trial near by. */
    static WaterPlane start(double heel, Trial near) {
        WaterPlane level = WaterPlane.of(direction(heel, trim(near.plane())), 0);
        return level.at(level.up().dotProduct(near.sums().centreOfFlotationMm()));
    }

    /**
     * The same from a better guess.
     *
     * @param guess a plane whose trim and height are near; its list is not asked
     * @param near an attitude near by, whose tank levels are where their search starts
     */
    static Optional<Trial> held(Condition condition, double heel, WaterPlane guess, Trial near) {
        WaterPlane start = WaterPlane.of(direction(heel, trim(guess)), guess.heightMm());
        Balance.Rest rest = Balance.restHeld(condition, start, near);
        Trial trial = rest.trial();
        boolean still = Math.abs(trial.force) <= REST * trial.massG()
                && Math.abs(trial.slopeAhead) <= REST * trial.massG() * condition.lengthMm();
        boolean stable = rest.gmLeastMm() > -REST * condition.lengthMm();
        Vector3D up = trial.plane().up();
        boolean sameList = Vector3D.angle(up, direction(heel, Math.asin(up.getX()))) < 1e-6;
        boolean onEnd = Math.abs(Math.asin(up.getX())) > ON_END;
        return still && sameList && !onEnd && stable ? Optional.of(trial) : Optional.empty();
    }

    private static double trim(WaterPlane plane) {
        return Math.asin(plane.up().getX());
    }
}
