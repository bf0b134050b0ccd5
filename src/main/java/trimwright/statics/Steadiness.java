package trimwright.statics;

import java.util.Optional;

/**
 * How firmly she stands, in plain terms and in figures.
 *
 * @param stance what she does
 * @param heelDeg list at which she rests, positive to starboard; of two equal ones either
 * @param gmMm transverse metacentric height upright, free surfaces included; negative where she does not stay upright
 * @param wantedGmMm metacentric height from which she counts as firm
 * @param bgMm height of the centre of buoyancy above the centre of gravity, upright
 */
public record Steadiness(Stance stance, double heelDeg, double gmMm, double wantedGmMm, double bgMm) {

    /** What a boat does when she is left upright. */
    public enum Stance {
        /** She stays upright, with the metacentric height that is wanted. */
        STANDS_FIRM,
        /** She stays upright, but with less. */
        TENDER,
        /** She rests on one side or the other. */
        RESTS_ON_EITHER_SIDE,
        /** She goes over. */
        FALLS_OVER
    }

    /** Share of the beam over all that is wanted as metacentric height where the builder names none (common practice, no source). */
    public static final double WANTED_SHARE_OF_BEAM = 0.03;

    /** List beyond which she no longer rests on a side but has gone over. */
    private static final double OVER_DEG = 60;

    /**
     * A boat afloat with the fills that she states.
     *
     * @return empty when she sinks, or no trim is stable upright
     */
    public static Optional<Steadiness> afloat(Condition condition) {
        if (!Flotation.floats(condition)) {
            return Optional.empty();
        }
        Balance.Rest rest = Balance.rest(condition, Balance.upright(condition));
        return HeldList.held(condition, 0, rest.trial()).map(upright -> of(condition, upright, rest.equilibrium()));
    }

    /**
     * @param upright the boat held upright, height and trim free
     * @param settled where she comes to rest from there
     */
    static Steadiness of(Condition condition, Trial upright, Equilibrium settled) {
        double carried = condition.carriedG(upright.plane());
        double gm = upright.reducedPort() / carried;
        double wanted = wantedGmMm(condition);
        return new Steadiness(
                stance(gm, wanted, settled),
                settled.heelDeg(),
                gm,
                wanted,
                -upright.potentialHeightMm() * upright.massG() / carried);
    }

    private static Stance stance(double gm, double wanted, Equilibrium settled) {
        if (Math.abs(settled.heelDeg()) > OVER_DEG) {
            return Stance.FALLS_OVER;
        }
        if (gm <= 0) {
            return Stance.RESTS_ON_EITHER_SIDE;
        }
        return gm < wanted ? Stance.TENDER : Stance.STANDS_FIRM;
    }

    private static double wantedGmMm(Condition condition) {
        return condition.boat().targets().gmMm().orElse(WANTED_SHARE_OF_BEAM * condition.beamMm());
    }

    /** How far B has to stand above G for her just to stay upright, all else as it is. */
    public double bgToStandMm() {
        return bgMm - gmMm;
    }

    /** How far B has to stand above G for her to stand firm. */
    public double bgToStandFirmMm() {
        return bgMm - gmMm + wantedGmMm;
    }
}
