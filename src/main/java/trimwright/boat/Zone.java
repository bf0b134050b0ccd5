package trimwright.boat;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A place in the boat that the builder offers for lead or foam.
 *
 * @param id unique among the zones
 * @param use what may go there
 * @param box its extent
 * @param maxG the most that may go there, per side; empty for as much as there is room
 * @param mirror whether a twin lies at -y
 */
public record Zone(String id, Use use, BoxShape box, Optional<Double> maxG, boolean mirror) {

    /** What may go into a zone. */
    public enum Use {
        BALLAST,
        FOAM;

        /** The word in the boat file. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Use> ofWord(String word) {
            return Arrays.stream(values()).filter(u -> u.word().equals(word)).findFirst();
        }
    }
}
