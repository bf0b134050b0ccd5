package trimwright.plan;

/**
 * One change that would make a plan possible, found by solving with it.
 *
 * @param kind what to change
 * @param subject the part, zone or aim concerned; empty for the whole boat
 * @param amount how much, in the unit of the kind; its sign tells the way
 * @param shiftMm with {@link Kind#TANK_REPLACED} also how far to move it ahead; otherwise 0
 * @param addedG mass that the plan then adds
 * @param effort how far it goes, as a share of what a builder would think little: ways out are ranked by it
 */
public record WayOut(Kind kind, String subject, double amount, double shiftMm, double addedG, double effort) {

    /** Effort of taking out a gram. */
    private static final double EASY_TAKEN_SHARE = 0.2;
    /** How finely mm and degrees are told. */
    private static final double TENTH = 0.1;

    /**
     * The same way, a little farther; told as finely as its words tell it, rounded away from nothing.
     *
     * @param more how much farther, as a share of the way, or of {@code mostStep} where that is less
     */
    WayOut farther(double more, double mostStep) {
        double step = Math.min(Math.abs(amount), mostStep);
        double gone = amount + Math.copySign(more * step, amount);
        boolean volume = kind == Kind.TANK_VOLUME || kind == Kind.TANK_REPLACED || kind == Kind.MORE_ROOM;
        boolean grams = kind == Kind.AIM_EASED && subject.equals(Aim.RESIDUAL.key());
        return new WayOut(
                kind,
                subject,
                volume || grams ? away(gone, twoDigits(gone)) : away(gone, TENTH),
                away(shiftMm * (1 + more), TENTH),
                addedG,
                effort * (amount == 0 ? 1 : gone / amount));
    }

    /** The unit of the second digit that counts. */
    private static double twoDigits(double value) {
        return value == 0 ? 1 : Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 1);
    }

    private static double away(double value, double step) {
        // A hair less, so that what is rounded already stays as it is.
        return Math.copySign(Math.ceil(Math.abs(value) / step - 1e-6) * step, value);
    }

    /** Some of the lead or foam on board taken out. */
    static WayOut takingOut(String part, double massG) {
        return new WayOut(Kind.TAKEN_OUT, part, massG, 0, 0, Math.max(1, EASY_TAKEN_SHARE * massG));
    }

    /** The same way with what the plan adds then. */
    WayOut adding(double massG) {
        return new WayOut(kind, subject, amount, shiftMm, massG, effort);
    }

    /** What can be changed. */
    public enum Kind {
        /** Another volume of the tank, cm³. */
        TANK_VOLUME,
        /** A tank of another volume, cm³, in another place. */
        TANK_REPLACED,
        /** The tank farther ahead, mm. */
        TANK_SHIFT,
        /** The line painted higher, mm. */
        LINE_RAISED,
        /** Lead or foam on board taken out, g. */
        TAKEN_OUT,
        /** More room in the zones for lead or foam, cm³. */
        MORE_ROOM,
        /** More mass allowed to be added, g. */
        MASS_ALLOWED,
        /** An aim given up in part, in the unit of the aim. */
        AIM_EASED
    }
}
