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
        /** An aim given up in part, in the unit of the aim. */
        AIM_EASED
    }
}
