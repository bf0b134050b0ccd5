package trimwright.desktop.tank3d;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.Node;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.desktop.model.Pose;
import trimwright.mesh.TriangleMesh;

/** The boat in the pool as the rest of the window knows it, whether drawn in 3D or as a picture. */
public interface PoolView {

    /** A part is being dragged. */
    @FunctionalInterface
    interface Dragging {
        void dragging(String id, Vector3D byMm, double stepMm);
    }

    Node node();

    /** Whether it can be turned, and parts picked and dragged in it; otherwise it is a picture. */
    boolean isTurnable();

    /** Draws a boat; how she lies comes with {@link #show}. */
    void showBoat(Boat boat);

    /** Brings her to a pose. */
    void show(Pose pose);

    /** Marks a part as picked; empty for none. */
    void pick(String id);

    void onPicked(Consumer<String> listener);

    void onDragging(Dragging listener);

    void onDragged(BiConsumer<String, Vector3D> listener);

    void look(HullLook look);

    void look(View view);

    void fit();

    /** Turns and nears the view a little, for those without a pointer. */
    void nudge(double turnDeg, double heightDeg, double zoom);

    /** Cuts away what is nearer than a plane square to the view, 0 for nothing to 1 for everything, to look inside. */
    void cut(double share);

    void showMarks(boolean shown);

    void setDark(boolean dark);

    /**
     * Shows more bodies in the boat.
     *
     * @param planned whether they are pieces of a plan; otherwise the room there is
     */
    void extra(List<TriangleMesh> meshes, boolean planned);
}
