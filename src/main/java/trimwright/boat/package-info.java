/**
 * The boat as immutable values: parts, shapes, materials, water, painted line, zones, targets; what each part weighs and
 * displaces. The boat's frame is right-handed: x toward the bow, y to port, z up; lengths mm, masses g.
 */
package trimwright.boat;
