package trimwright.desktop.tank3d;

import javafx.scene.Camera;
import javafx.scene.Group;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.layout.Region;

/** On which the pool is seen: with smooth edges, or with plain ones where that would take too long. The toolkit cannot change its mind on one. */
final class Screen extends Region {

    private final Group world;
    private final Camera camera;
    private final SubScene smooth = made(SceneAntialiasing.BALANCED);
    private final SubScene plain = made(SceneAntialiasing.DISABLED);
    private SubScene shown = smooth;

    Screen(Group world, Camera camera) {
        this.world = world;
        this.camera = camera;
        plain.setVisible(false);
        smooth.setRoot(world);
        smooth.setCamera(camera);
        getChildren().addAll(smooth, plain);
    }

    private static SubScene made(SceneAntialiasing edges) {
        SubScene scene = new SubScene(new Group(), 400, 300, true, edges);
        // Also where nothing is drawn the hand turns the view.
        scene.setPickOnBounds(true);
        scene.setManaged(false);
        return scene;
    }

    /** Draws smooth edges or plain ones from now on. */
    void setSmooth(boolean wanted) {
        SubScene next = wanted ? smooth : plain;
        if (next == shown) {
            return;
        }
        shown.setRoot(new Group());
        shown.setCamera(null);
        shown.setVisible(false);
        next.setRoot(world);
        next.setCamera(camera);
        next.setVisible(true);
        shown = next;
    }

    @Override
    protected void layoutChildren() {
        for (SubScene scene : new SubScene[] {smooth, plain}) {
            scene.setWidth(getWidth());
            scene.setHeight(getHeight());
        }
    }
}
