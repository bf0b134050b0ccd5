/**
 * From a loaded boat to the attitude in which she floats: equilibrium, every stable attitude, stability, the dive, righting levers.
 * An attitude is a water plane in the boat's frame; the mathematics is in docs/statics.md.
 */
package trimwright.statics;
