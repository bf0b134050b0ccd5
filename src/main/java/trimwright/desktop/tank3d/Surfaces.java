package trimwright.desktop.tank3d;

import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Meshes of ours as meshes of the toolkit. */
final class Surfaces {

    /** Above this many triangles a coarser mesh is shown: a frame would take longer than the eye forgives. */
    static final int MOST_AT_REST = 300_000;
    /** The same for what moves, where a software renderer must keep up with the hand; a hull of glass is drawn twice. */
    static final int MOST_MOVING = 8_000;

    private Surfaces() {}

    /**
     * A mesh about a point, shaded smoothly where the surface is smooth.
     *
     * @param middleMm the point that becomes the origin
     * @param creaseDeg neighbours that meet at more than this show an edge
     * @param mostTriangles with more than this the mesh is made coarser
     */
    static TriangleMesh of(trimwright.mesh.TriangleMesh mesh, Vector3D middleMm, double creaseDeg, int mostTriangles) {
        trimwright.mesh.TriangleMesh shown = Coarser.of(mesh, mostTriangles);
        TriangleMesh made = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
        double[] xyz = shown.xyz();
        float[] points = new float[xyz.length];
        for (int i = 0; i < xyz.length; i += 3) {
            points[i] = (float) (xyz[i] - middleMm.getX());
            points[i + 1] = (float) (xyz[i + 1] - middleMm.getY());
            points[i + 2] = (float) (xyz[i + 2] - middleMm.getZ());
        }
        Normals normals = Normals.of(shown, Math.cos(Math.toRadians(creaseDeg)));
        int[] corners = shown.corners();
        int[] faces = new int[3 * corners.length];
        for (int i = 0; i < corners.length; i++) {
            faces[3 * i] = corners[i];
            faces[3 * i + 1] = normals.indices()[i];
        }
        made.getPoints().setAll(points);
        made.getNormals().setAll(normals.vectors());
        made.getTexCoords().setAll(0, 0);
        made.getFaces().setAll(faces);
        return made;
    }
}
