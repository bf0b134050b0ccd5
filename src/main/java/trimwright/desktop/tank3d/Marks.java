package trimwright.desktop.tank3d;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.desktop.model.Pose;

/** B, G and M: a body in the scene and a label over it. */
final class Marks {

    private record Mark(MarkBody body, Tag tag) {}

    private final Group bodies = new Group();
    private final Pane overlay = new Pane();
    private final Map<String, Mark> marks = new LinkedHashMap<>();

    Marks() {
        overlay.setMouseTransparent(true);
        overlay.getStyleClass().add("tank-labels");
        bodies.setMouseTransparent(true);
        add("G", "G  weight", Paints.GRAVITY, MarkBody.Form.CUBE, -64, 42);
        add("B", "B  buoyancy", Paints.BUOYANCY, MarkBody.Form.BALL, 34, 42);
        add("M", "M  metacentre", Paints.METACENTRE, MarkBody.Form.DIAMOND, 40, -52);
    }

    private void add(String key, String text, Color colour, MarkBody.Form form, double dx, double dy) {
        MarkBody body = new MarkBody(form, colour);
        Tag tag = new Tag(body.node(), text, dx, dy, "mark-" + key);
        bodies.getChildren().add(body.node());
        tag.addTo(overlay);
        marks.put(key, new Mark(body, tag));
    }

    Group bodies() {
        return bodies;
    }

    Pane overlay() {
        return overlay;
    }

    void setShown(boolean visible) {
        bodies.setVisible(visible);
        overlay.setVisible(visible);
    }

    /** Puts the points where a pose has them. */
    void put(Pose pose, Vector3D middle, double sizeMm) {
        put("G", pose.centreOfGravityMm(), middle, sizeMm);
        put("B", pose.centreOfBuoyancyMm(), middle, sizeMm);
        put("M", pose.metacentreMm(), middle, sizeMm);
    }

    private void put(String key, Optional<Vector3D> at, Vector3D middle, double sizeMm) {
        Mark mark = marks.get(key);
        mark.body().node().setVisible(at.isPresent());
        mark.tag().setVisible(at.isPresent());
        at.ifPresent(p -> mark.body().place(p.subtract(middle), sizeMm));
    }

    /** Puts the labels over their points as they are seen now. */
    void follow(Region screen) {
        marks.values().forEach(m -> m.tag().follow(overlay, screen));
    }
}
