package trimwright.desktop.model;

/**
 * One reading: what it is called, what it was before the last change, and what it is now.
 *
 * @param name what it is called
 * @param before what it was; the same as {@code now} when nothing changed
 * @param now what it is
 * @param standing how it stands against what is wanted
 * @param wanted what is wanted, in words; empty where nothing is
 */
public record Figure(String name, String before, String now, Standing standing, String wanted) {

    /** How a reading stands against what is wanted. Told by shape and word as well as by colour. */
    public enum Standing {
        /** As wanted. */
        GOOD("✓"),
        /** Not as wanted. */
        OFF("▲"),
        /** She is lost: she sinks, or falls over. */
        LOST("✖"),
        /** Nothing is wanted of it. */
        PLAIN("");

        private final String sign;

        Standing(String sign) {
            this.sign = sign;
        }

        public String sign() {
            return sign;
        }
    }

    public boolean hasChanged() {
        return !before.equals(now);
    }
}
