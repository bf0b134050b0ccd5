package trimwright.plan;

import java.util.Optional;

/**
 * An aim that is missed.
 *
 * @param aim which
 * @param amount by how much, in the unit of the aim: what she has less what is allowed, so that its sign tells the side
 * @param cause why, where it was looked for
 */
public record Miss(Aim aim, double amount, Optional<Cause> cause) {

    /** A miss whose cause was not looked for. */
    public Miss(Aim aim, double amount) {
        this(aim, amount, Optional.empty());
    }

    Miss because(Cause reason) {
        return new Miss(aim, amount, Optional.of(reason));
    }
}
