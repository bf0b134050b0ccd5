package trimwright.desktop.tank3d;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.DepthTest;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.MisfitRoom;
import trimwright.desktop.model.Misfit;
import trimwright.mesh.Bounds;

/**
 * What does not fit, where it is: in stripes of two tones, seen through everything, and with a label. Stripes and the sign on the label
 * tell it apart from parts without colour.
 */
final class MisfitMarks {

    /** With more labels than this nothing else is seen; the list at the side has them all. */
    private static final int MOST_LABELS = 6;

    /** Where the first label stands, px from the top, under the buttons, and how much lower every other. */
    private static final double FIRST_LABEL = 46;

    private static final double NEXT_LABEL = 28;
    /** Least extent of what is drawn, as a share of the boat's length: a sliver would not be seen. */
    private static final double LEAST_SHARE = 0.004;
    /** Stripes along the room. */
    private static final int STRIPES = 8;

    private static final int[][] QUADS = {
        {0, 1, 3, 2}, {4, 6, 7, 5}, {0, 4, 5, 1}, {2, 3, 7, 6}, {0, 2, 6, 4}, {1, 5, 7, 3}
    };

    private final Group bodies = new Group();
    private final Pane overlay = new Pane();
    private final List<Tag> tags = new ArrayList<>();

    MisfitMarks() {
        overlay.setMouseTransparent(true);
        bodies.setMouseTransparent(true);
        bodies.setDepthTest(DepthTest.DISABLE);
    }

    /** To be drawn last. */
    Group bodies() {
        return bodies;
    }

    Pane overlay() {
        return overlay;
    }

    /**
     * Shows these and no others.
     *
     * @param middleMm the boat's middle, which is the origin of the scene's boat
     */
    void show(List<Misfit> misfits, Vector3D middleMm, double lengthMm) {
        bodies.getChildren().clear();
        overlay.getChildren().clear();
        tags.clear();
        for (Misfit misfit : misfits) {
            misfit.room().ifPresent(room -> add(misfit.brief(), room, middleMm, lengthMm));
        }
    }

    private void add(String brief, MisfitRoom room, Vector3D middle, double lengthMm) {
        Node anchor = anchor(room.middleMm().subtract(middle), LEAST_SHARE * lengthMm);
        bodies.getChildren().add(anchor);
        Bounds all = room.slices().stream()
                .flatMap(List::stream)
                .reduce(Bounds::union)
                .orElse(null);
        int stripe = Math.max(1, room.slices().size() / STRIPES);
        for (int tone = 0; tone < 2; tone++) {
            List<Bounds> boxes = new ArrayList<>();
            for (int i = 0; i < room.slices().size(); i++) {
                if (i / stripe % 2 == tone) {
                    boxes.addAll(room.slices().get(i));
                }
            }
            if (!boxes.isEmpty()) {
                MeshView view = new MeshView(mesh(boxes, all, middle));
                view.setCullFace(CullFace.BACK);
                view.setMaterial(Paints.glowing(tone == 0 ? Paints.MISFIT : Color.WHITE));
                bodies.getChildren().add(view);
            }
        }
        if (tags.size() < MOST_LABELS) {
            Tag tag = new Tag(anchor, "▲ " + brief, 0, 0, "mark-misfit");
            tag.addTo(overlay);
            tags.add(tag);
        }
    }

    /** What the label points to, seen where the room itself is too small for the eye. */
    private static Node anchor(Vector3D at, double sizeMm) {
        MarkBody body = new MarkBody(MarkBody.Form.DIAMOND, Paints.MISFIT);
        body.place(at, sizeMm);
        return body.node();
    }

    /** Walls between the stripes are left out: nothing hides them, and they would cover the other tone. */
    private static TriangleMesh mesh(List<Bounds> boxes, Bounds all, Vector3D middle) {
        float[] points = new float[boxes.size() * 24];
        int[] faces = new int[boxes.size() * 72];
        int p = 0;
        int f = 0;
        for (Bounds b : boxes) {
            int first = p / 3;
            for (int corner = 0; corner < 8; corner++) {
                points[p++] = (float) (((corner & 4) == 0 ? b.minX() : b.maxX()) - middle.getX());
                points[p++] = (float) (((corner & 2) == 0 ? b.minY() : b.maxY()) - middle.getY());
                points[p++] = (float) (((corner & 1) == 0 ? b.minZ() : b.maxZ()) - middle.getZ());
            }
            for (int[] q : QUADS) {
                if (q == QUADS[0] && b.minX() > all.minX() || q == QUADS[1] && b.maxX() < all.maxX()) {
                    continue;
                }
                for (int k : new int[] {0, 1, 2, 0, 2, 3}) {
                    faces[f] = first + q[k];
                    f += 2;
                }
            }
        }
        TriangleMesh mesh = new TriangleMesh();
        mesh.getPoints().setAll(points);
        mesh.getTexCoords().setAll(0, 0);
        mesh.getFaces().setAll(faces, 0, f);
        return mesh;
    }

    /** Ties the labels to their points as they are seen now. */
    void follow(Region screen) {
        for (int i = 0; i < tags.size(); i++) {
            tags.get(i).stack(overlay, screen, FIRST_LABEL + i * NEXT_LABEL);
        }
    }
}
