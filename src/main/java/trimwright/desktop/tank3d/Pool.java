package trimwright.desktop.tank3d;

import javafx.scene.AmbientLight;
import javafx.scene.Group;
import javafx.scene.PointLight;
import javafx.scene.paint.Color;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;

/** The water and the light. The surface lies at height 0; what is seen through it is tinted, from above and from the sides. */
final class Pool {

    private static final double LONG = 0.66;
    private static final double WIDE = 0.24;
    private static final double DEEP = 0.17;

    private final MeshView surface = new MeshView();
    private final MeshView sides = new MeshView();
    private final Group water = new Group(surface, sides);
    private final Group lights = new Group();

    Pool() {
        water.setMouseTransparent(true);
        surface.setCullFace(CullFace.NONE);
        sides.setCullFace(CullFace.BACK);
        PointLight sun = new PointLight(Color.gray(0.62));
        sun.setTranslateX(-4000);
        sun.setTranslateY(-9000);
        sun.setTranslateZ(-7000);
        AmbientLight day = new AmbientLight(Color.gray(0.55));
        // The water is the same colour all over, whichever way its sides face.
        AmbientLight clear = new AmbientLight(Color.WHITE);
        clear.getScope().add(water);
        day.getExclusionScope().add(water);
        sun.getExclusionScope().add(water);
        lights.getChildren().addAll(day, clear, sun);
        setDark(false);
    }

    /** To be drawn after everything else. */
    Group water() {
        return water;
    }

    Group lights() {
        return lights;
    }

    /** Makes the pool as large as suits a boat. */
    void suit(double lengthMm, double heightMm) {
        float x = (float) (LONG * lengthMm);
        float z = (float) (WIDE * lengthMm);
        float depth = (float) Math.max(DEEP * lengthMm, 1.4 * heightMm);
        TriangleMesh top = new TriangleMesh();
        top.getPoints().setAll(-x, 0, -z, x, 0, -z, x, 0, z, -x, 0, z);
        top.getTexCoords().setAll(0, 0);
        top.getFaces().setAll(0, 0, 1, 0, 2, 0, 0, 0, 2, 0, 3, 0);
        surface.setMesh(top);
        TriangleMesh walls = new TriangleMesh();
        walls.getPoints()
                .setAll(-x, 0, -z, x, 0, -z, x, 0, z, -x, 0, z, -x, depth, -z, x, depth, -z, x, depth, z, -x, depth, z);
        walls.getTexCoords().setAll(0, 0);
        int[][] quads = {{0, 4, 5, 1}, {1, 5, 6, 2}, {2, 6, 7, 3}, {3, 7, 4, 0}, {4, 7, 6, 5}};
        for (int[] q : quads) {
            walls.getFaces().addAll(q[0], 0, q[1], 0, q[2], 0, q[0], 0, q[2], 0, q[3], 0);
        }
        sides.setMesh(walls);
    }

    /** Where the near side is cut away, the far one shows where the water is. */
    void setCut(boolean cut) {
        sides.setCullFace(cut ? CullFace.NONE : CullFace.BACK);
    }

    void setDark(boolean dark) {
        Color colour = dark ? Color.web("#2f86c4") : Color.web("#3d9ad8");
        surface.setMaterial(Paints.lit(colour, dark ? 0.36 : 0.3));
        sides.setMaterial(Paints.lit(colour, dark ? 0.46 : 0.4));
    }
}
