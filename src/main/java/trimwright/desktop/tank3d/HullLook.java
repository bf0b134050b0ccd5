package trimwright.desktop.tank3d;

/** How the hull is drawn. */
public enum HullLook {
    GLASS("Glass"),
    SOLID("Solid"),
    WIRE("Wire");

    private final String title;

    HullLook(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
