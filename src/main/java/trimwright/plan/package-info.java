/**
 * What to put where: the room left in the hull, the ballast plan as a linear programme verified by floating its outcome, the seat of the
 * cylinder. Works on boats, never on files.
 */
package trimwright.plan;
