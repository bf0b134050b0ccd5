package trimwright.desktop.tank3d;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.desktop.model.Misfit;
import trimwright.desktop.model.Pose;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;

/** The boat in the pool as the rest of the window knows it, whether drawn in 3D or as a picture. */
public interface PoolView {

    /** Who is told what the hand does in the pool. */
    interface Handed {

        /** A part was clicked at; empty for none. */
        void picked(String id);

        boolean mayDrag(String id);

        /** A part is being dragged. */
        void dragging(String id, Vector3D byMm, double stepMm);

        /** A part was let go. */
        void dragged(String id, Vector3D byMm);

        /** A waterline is held elsewhere, or let go there. */
        void tried(WaterPlane plane, boolean released);
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

    /** Says who is told what the hand does. */
    void tell(Handed handed);

    /** Who takes the points of the hull that are clicked at, mm; while somebody does, a click on the hull picks no part. */
    void onPointed(Optional<Consumer<Vector3D>> listener);

    void look(HullLook look);

    void look(View view);

    void fit();

    /** Turns and nears the view a little, for those without a pointer. */
    void nudge(double turnDeg, double heightDeg, double zoom);

    /** Cuts away what is nearer than a plane square to the view, 0 for nothing to 1 for everything, to look inside. */
    void cut(double share);

    void showMarks(boolean shown);

    /** Marks what does not fit, where it is, until the boat is shown anew. */
    void misfits(List<Misfit> found);

    /** Shows grips by which the waterline is lifted and tilted, or takes them away. */
    void trial(boolean shown);

    void setDark(boolean dark);

    /**
     * Shows more bodies in the boat.
     *
     * @param planned whether they are pieces of a plan; otherwise the room there is
     */
    void extra(List<TriangleMesh> meshes, boolean planned);
}
