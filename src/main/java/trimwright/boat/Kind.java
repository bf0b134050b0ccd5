package trimwright.boat;

import java.util.Locale;
import java.util.Optional;

/** What a part is, as the boat file writes it. */
public enum Kind {
    /** A hull or a part of one, given by its mesh. */
    HULL,
    /** The watertight cylinder with motors, radio and ballast tank. */
    CYLINDER,
    /** A ballast tank: water is free to move in it. */
    TANK,
    /** Lead or another weight. */
    BALLAST,
    /** Foam: displaces much, weighs little. */
    FOAM,
    /** Air trapped under a deck: displaces, weighs nothing, and gives way to the pressure of the water. */
    AIR,
    /** Anything else that has a mass: battery, motor, propeller, rudder. */
    FITTING;

    /** The kind as the boat file writes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Kind> ofWord(String word) {
        for (Kind kind : values()) {
            if (kind.word().equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
