package trimwright.desktop.tank3d;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.scene.Group;
import javafx.scene.SubScene;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Line;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.desktop.model.Pose;

/** B, G, M and other named points: a body in the scene and a label over it, with a leader between the two. */
final class Marks {

    /** A named point with where its label stands, px from the point. */
    private record Mark(MarkBody body, Label label, Line leader, double dx, double dy) {}

    private final Group bodies = new Group();
    private final Pane overlay = new Pane();
    private final Map<String, Mark> marks = new LinkedHashMap<>();
    private boolean shown = true;

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
        Label label = new Label(text);
        label.getStyleClass().addAll("tank-label", "mark-" + key);
        Line leader = new Line();
        leader.getStyleClass().add("tank-leader");
        bodies.getChildren().add(body.node());
        overlay.getChildren().addAll(leader, label);
        marks.put(key, new Mark(body, label, leader, dx, dy));
    }

    Group bodies() {
        return bodies;
    }

    Pane overlay() {
        return overlay;
    }

    void setShown(boolean visible) {
        shown = visible;
        bodies.setVisible(visible);
        overlay.setVisible(visible);
    }

    boolean isShown() {
        return shown;
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
        mark.label().setVisible(at.isPresent());
        mark.leader().setVisible(at.isPresent());
        at.ifPresent(p -> mark.body().place(p.subtract(middle), sizeMm));
    }

    /** Puts the labels over their points as they are seen now. */
    void follow(SubScene scene) {
        for (Mark mark : marks.values()) {
            if (!mark.label().isVisible()) {
                continue;
            }
            Point3D p = mark.body().node().localToScene(Point3D.ZERO, true);
            Point2D at = overlay.sceneToLocal(p.getX(), p.getY());
            mark.label().autosize();
            double x = at.getX() + mark.dx() - (mark.dx() < 0 ? mark.label().getWidth() : 0);
            double y = at.getY() + mark.dy() - mark.label().getHeight() / 2;
            double right = scene.getWidth() - mark.label().getWidth() - 4;
            double bottom = scene.getHeight() - mark.label().getHeight() - 4;
            mark.label().relocate(Math.max(4, Math.min(right, x)), Math.max(4, Math.min(bottom, y)));
            mark.leader().setStartX(at.getX());
            mark.leader().setStartY(at.getY());
            double labelX =
                    mark.label().getLayoutX() + (mark.dx() < 0 ? mark.label().getWidth() : 0);
            mark.leader().setEndX(labelX);
            mark.leader().setEndY(mark.label().getLayoutY() + mark.label().getHeight() / 2);
        }
    }
}
