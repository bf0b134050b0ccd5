package trimwright.boat;

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
        FOAM
    }
}
