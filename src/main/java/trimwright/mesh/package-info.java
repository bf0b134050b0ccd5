/**
 * Triangle meshes: the mesh itself, reading and writing open formats, soundness findings, repair on request, primitive
 * solids. Lengths are in mm once a mesh has been imported; a file that states no unit is read as written.
 */
package trimwright.mesh;
