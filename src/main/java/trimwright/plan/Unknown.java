package trimwright.plan;

/**
 * One thing a plan may choose an amount of.
 *
 * @param name what it is, for messages
 * @param perUnit what one unit of it weighs and displaces
 * @param most the most that may be chosen; 0 is the least
 * @param costPerUnit what one unit costs, in grams of added mass
 */
record Unknown(String name, Influence perUnit, double most, double costPerUnit) {}
