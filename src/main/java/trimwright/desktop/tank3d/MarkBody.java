package trimwright.desktop.tank3d;

import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.Box;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.Shape3D;
import javafx.scene.shape.Sphere;
import javafx.scene.shape.TriangleMesh;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A small body that marks a point; forms differ, so that they are told apart without colour. */
final class MarkBody {

    /** What it looks like. */
    enum Form {
        BALL,
        CUBE,
        DIAMOND
    }

    private final Shape3D node;

    MarkBody(Form form, Color colour) {
        node = switch (form) {
            case BALL -> new Sphere(1, 16);
            case CUBE -> new Box(1.7, 1.7, 1.7);
            case DIAMOND -> diamond();
        };
        node.setMaterial(Paints.lit(colour, 1));
    }

    private static MeshView diamond() {
        float r = 1.35f;
        TriangleMesh mesh = new TriangleMesh();
        mesh.getPoints().setAll(r, 0, 0, -r, 0, 0, 0, r, 0, 0, -r, 0, 0, 0, r, 0, 0, -r);
        mesh.getTexCoords().setAll(0, 0);
        int[][] faces = {{0, 2, 4}, {2, 1, 4}, {1, 3, 4}, {3, 0, 4}, {2, 0, 5}, {1, 2, 5}, {3, 1, 5}, {0, 3, 5}};
        for (int[] f : faces) {
            mesh.getFaces().addAll(f[0], 0, f[1], 0, f[2], 0);
        }
        return new MeshView(mesh);
    }

    Node node() {
        return node;
    }

    void place(Vector3D at, double sizeMm) {
        node.setTranslateX(at.getX());
        node.setTranslateY(at.getY());
        node.setTranslateZ(at.getZ());
        node.setScaleX(sizeMm);
        node.setScaleY(sizeMm);
        node.setScaleZ(sizeMm);
    }
}
