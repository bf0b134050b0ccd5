/**
 * What lies below a water plane: exact volume, centroid, waterplane and wetted area of meshes and simple bodies, and the
 * tree that makes the cut of a big mesh fast. Lengths mm, in the frame of the boat.
 */
package trimwright.immersion;
