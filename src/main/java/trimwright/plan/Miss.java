package trimwright.plan;

/**
 * An aim that is missed.
 *
 * @param aim which
 * @param amount by how much, in the unit of the aim: what she has less what is allowed, so that its sign tells the side
 */
public record Miss(Aim aim, double amount) {}
