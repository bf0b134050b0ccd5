package trimwright.desktop.tank3d;

/** From where the boat is looked at. */
public enum View {
    /** From starboard, level. */
    SIDE("Side", 0, 0),
    /** From above, the bow to the right. */
    PLAN("Plan", 0, 90),
    /** From ahead, level. */
    END("End", -90, 0),
    /** From over the starboard bow. */
    FREE("Free", -28, 16);

    private final String title;
    private final double turnDeg;
    private final double heightDeg;

    View(String title, double turnDeg, double heightDeg) {
        this.title = title;
        this.turnDeg = turnDeg;
        this.heightDeg = heightDeg;
    }

    public String title() {
        return title;
    }

    double turnDeg() {
        return turnDeg;
    }

    double heightDeg() {
        return heightDeg;
    }
}
