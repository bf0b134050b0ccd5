package trimwright.mesh;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A connected piece of a mesh: triangles that hang together over edges with two triangles each. Lengths in the unit of the
 * mesh, mm once it was imported.
 *
 * @param number from 1, by falling area; areas that single precision cannot tell apart stand in the order of their first
 *     triangles
 * @param triangles how many; further copies of a triangle count, triangles with a vertex twice do not
 * @param areaMm2 area of its surface
 * @param volumeMm3 enclosed volume: negative when it is inside out, without meaning when it is not closed and oriented
 * @param bounds the box around it
 * @param closed whether an even number of its triangles meets at every edge
 * @param oriented whether its triangles agree on which side is outside
 * @param centroidMm centroid of its surface
 * @param firstTriangle its first triangle, from 0 in the order of the file
 */
public record Shell(
        int number,
        int triangles,
        double areaMm2,
        double volumeMm3,
        Bounds bounds,
        boolean closed,
        boolean oriented,
        Vector3D centroidMm,
        int firstTriangle) {}
